import type { DocumentProperties } from '../../../workbook/share/choices';
import { setContentType } from '../content-types';
import type { Package } from '../package';
import { addRelation, relationsOf } from '../relations';
import { sectionsNamed } from '../sheet-sections';
import { Splice } from '../splice';
import type { SheetEntry } from '../workbook-part';
import { parseTree, textOf } from '../xml-tree';
import { escapeXml, utf8 } from '../xml-text';
import { layoutOf } from './layout-of';
import { dropPathLinks } from './metadata-pass';
import { dropRelations } from './sweep';
import { isPath, stripWorkbook } from './workbook-pass';

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const CORE = 'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties';
const CORE_TYPE = 'application/vnd.openxmlformats-package.core-properties+xml';
const APP_SPACE = 'http://schemas.openxmlformats.org/officeDocument/2006/extended-properties';

/** Kinds of parts beside the workbook that tell of people, machines and programs, or that a customer has no use for. */
const OF_FILE = /^(?:custom-properties|thumbnail|classificationlabels|webextensiontaskpanes|origin|metadata)$/;
const OF_WORKBOOK = /^(?:customXml|revisionHeaders|usernames|volatileDependencies|wsSortMap)$/;

const namedValues = (pkg: Package, part: string | undefined): ReadonlyMap<string, string> => {
  if (part === undefined || !pkg.has(part)) return new Map();
  const bytes = pkg.read(part);
  return new Map(parseTree(bytes, part).children.map((element) => [element.local, textOf(bytes, element)]));
};

/** "2026-09-18" as the format keeps a time; undefined for anything else. */
const timeOf = (date: string | undefined): string | undefined =>
  date !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(date) && !Number.isNaN(Date.parse(date))
    ? `${date}T00:00:00Z`
    : undefined;

/** Writes the document's properties anew: what was chosen, and of the old ones only what names nobody. */
const writeProperties = (pkg: Package, chosen: DocumentProperties, keepPeople: boolean): void => {
  const root = relationsOf(pkg, '');
  const core = root.find(({ kind }) => kind === 'core-properties')?.target;
  const before = namedValues(pkg, core);
  const values: readonly (readonly [tag: string, text: string | undefined])[] = [
    ['dc:title', chosen.title ?? before.get('title')],
    ['dc:subject', chosen.subject ?? before.get('subject')],
    ['dc:creator', chosen.prepared ?? (keepPeople ? before.get('creator') : undefined)],
    ['cp:lastModifiedBy', keepPeople ? before.get('lastModifiedBy') : undefined],
    ['cp:keywords', keepPeople ? before.get('keywords') : undefined],
    ['dc:description', keepPeople ? before.get('description') : undefined],
    ['cp:version', chosen.revision ?? (keepPeople ? before.get('version') : undefined)],
  ];
  const time = timeOf(chosen.date);
  const body = values.map(([tag, text]) => (text === undefined || text === '' ? '' : `<${tag}>${escapeXml(text)}</${tag}>`)); // prettier-ignore
  const times = ['created', 'modified'].map((kind) => (time === undefined ? '' : `<dcterms:${kind} xsi:type="dcterms:W3CDTF">${time}</dcterms:${kind}>`)); // prettier-ignore
  const xml =
    `${DECLARATION}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">` +
    `${body.join('')}${times.join('')}</cp:coreProperties>`;
  const part = core ?? 'docProps/core.xml';
  pkg.write(part, utf8(xml));
  setContentType(pkg, part, CORE_TYPE);
  if (core === undefined) addRelation(pkg, '', CORE, part);
  const app = root.find(({ kind }) => kind === 'extended-properties')?.target;
  if (app === undefined || !pkg.has(app)) return;
  const kept = namedValues(pkg, app);
  const rest = ['Application', ...(keepPeople ? ['Manager', 'Company'] : []), 'AppVersion'].map((tag) => {
    const text = kept.get(tag);
    return text === undefined || text === '' ? '' : `<${tag}>${escapeXml(text)}</${tag}>`;
  });
  pkg.write(app, utf8(`${DECLARATION}<Properties xmlns="${APP_SPACE}">${rest.join('')}</Properties>`));
};

/** Printers that somebody had are named in parts of their own. */
const dropPrinters = (pkg: Package, sheets: readonly SheetEntry[]): void => {
  for (const { part } of sheets) {
    const gone = new Set(dropRelations(pkg, part, ({ kind }) => kind === 'printerSettings').map(({ id }) => id));
    if (gone.size === 0) continue;
    const layout = layoutOf(pkg.read(part), part);
    const splice = new Splice(layout.bytes);
    for (const setup of sectionsNamed(layout, 'pageSetup'))
      for (const [name, value] of setup.attributes)
        if (name.endsWith(':id') && gone.has(value)) splice.setAttribute(setup, name, undefined);
    if (!splice.isEmpty) pkg.write(part, splice.apply());
  }
};

/** A section of a sheet together with the parts that belong to it alone. */
const dropSection = (pkg: Package, { part }: SheetEntry, local: string, relation: string): void => {
  dropRelations(pkg, part, ({ kind }) => kind === relation);
  const layout = layoutOf(pkg.read(part), part);
  const splice = new Splice(layout.bytes);
  for (const section of sectionsNamed(layout, local)) splice.remove(section);
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};

/** Other views of the sheets carry the names of those who made them. */
const dropViews = (pkg: Package, workbook: string, sheets: readonly SheetEntry[]): void => {
  stripWorkbook(pkg, workbook, ({ local }) => local === 'customWorkbookViews');
  for (const sheet of sheets) dropSection(pkg, sheet, 'customSheetViews', '');
};

/** Takes out whatever tells of paths, machines, programs and (unless wanted) people, and writes the properties. */
export const passPrivate = (
  pkg: Package,
  workbook: string,
  sheets: readonly SheetEntry[],
  { properties, keepPeople }: { readonly properties: DocumentProperties; readonly keepPeople: boolean },
): void => {
  dropRelations(pkg, '', ({ kind, external }) => external || OF_FILE.test(kind));
  dropRelations(pkg, workbook, ({ kind }) => OF_WORKBOOK.test(kind));
  stripWorkbook(
    pkg,
    workbook,
    (element) => isPath(element) || ['revisionPtr', 'fileSharing', 'webPublishing'].includes(element.local),
  );
  if (!keepPeople) dropViews(pkg, workbook, sheets);
  dropPrinters(pkg, sheets);
  for (const sheet of sheets) {
    dropPathLinks(pkg, sheet);
    dropSection(pkg, sheet, 'customProperties', 'customProperty');
  }
  writeProperties(pkg, properties, keepPeople);
};
