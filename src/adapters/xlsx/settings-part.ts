import { setContentType } from './content-types';
import type { Package } from './package';
import { addRelation, relationsOf, TRANSITIONAL } from './relations';
import { escapeAttribute, escapeXml, utf8 } from './xml-text';
import { childrenOf, parseTree, textOf } from './xml-tree';

const SPACE = 'urn:channelwright:settings:1';
const PROPERTIES_SPACE = 'http://schemas.openxmlformats.org/officeDocument/2006/customXml';
const PROPERTIES_TYPE = 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml';
/** Fixed, so that the part is recognised whatever a program names it when it saves the file again. */
const ITEM_ID = '{6C1B7E0D-52A3-4F0E-9C55-0B7D31C4A9E2}';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Our private settings, kept in a custom XML part that every spreadsheet program carries along. */
export function readSettings(pkg: Package, workbook: string): Map<string, string> {
  const part = findPart(pkg, workbook);
  if (part === undefined) return new Map();
  const bytes = pkg.read(part);
  return new Map(
    childrenOf(parseTree(bytes, part), 'setting').map((setting) => [
      setting.attributes.get('key') ?? '',
      textOf(bytes, setting),
    ]),
  );
}

export function writeSetting(pkg: Package, workbook: string, key: string, json: string | undefined): void {
  const settings = readSettings(pkg, workbook);
  if (settings.get(key) === json) return;
  if (json === undefined) settings.delete(key);
  else settings.set(key, json);
  const body = [...settings].map(([k, text]) => `<setting key="${escapeAttribute(k)}">${escapeXml(text)}</setting>`);
  const xml = `${DECLARATION}<settings xmlns="${SPACE}">${body.join('')}</settings>`;
  pkg.write(findPart(pkg, workbook) ?? addPart(pkg, workbook), utf8(xml));
}

function findPart(pkg: Package, workbook: string): string | undefined {
  return relationsOf(pkg, workbook).find(
    ({ kind, target }) => kind === 'customXml' && pkg.has(target) && isOurs(pkg, target),
  )?.target;
}

/** Custom XML parts may hold anything, so only the start of a small one is looked at. */
function isOurs(pkg: Package, part: string): boolean {
  const start = new TextDecoder().decode(pkg.read(part).subarray(0, 400));
  return new RegExp(`^[^<]*(?:<\\?[^>]*>\\s*)?<settings [^>]*"${SPACE}"`).test(start);
}

function addPart(pkg: Package, workbook: string): string {
  let n = 1;
  while (pkg.has(`customXml/item${n}.xml`) || pkg.has(`customXml/itemProps${n}.xml`)) n++;
  const part = `customXml/item${n}.xml`;
  const properties = `customXml/itemProps${n}.xml`;
  pkg.write(part, utf8(`<settings xmlns="${SPACE}"/>`));
  const schema = `<ds:schemaRefs><ds:schemaRef ds:uri="${SPACE}"/></ds:schemaRefs>`;
  pkg.write(
    properties,
    utf8(
      `${DECLARATION}<ds:datastoreItem ds:itemID="${ITEM_ID}" xmlns:ds="${PROPERTIES_SPACE}">${schema}</ds:datastoreItem>`,
    ),
  );
  setContentType(pkg, part, 'application/xml');
  setContentType(pkg, properties, PROPERTIES_TYPE);
  addRelation(pkg, part, `${TRANSITIONAL}/customXmlProps`, properties);
  addRelation(pkg, workbook, `${TRANSITIONAL}/customXml`, part);
  return part;
}
