import { freePartName, setContentType } from './content-types';
import type { Package } from './package';
import { addRelation, relationOf, TRANSITIONAL } from './relations';
import { Splice } from './splice';
import { utf8 } from './xml-text';
import { child, childrenOf, descendants, onOff, parseTree, tagName, type XmlElement } from './xml-tree';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DYNAMIC = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';
const CONTENT_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml';
const TYPE = 'XLDAPR';
const ORDER = 'metadataTypes metadataStrings mdxMetadata futureMetadata cellMetadata valueMetadata extLst'.split(' ');

/** Index (from 1) of the cell metadata that says "this formula spills"; made when the workbook has none. */
export function spillMetadata(pkg: Package, workbook: string): string {
  const existing = relationOf(pkg, workbook, 'sheetMetadata')?.target;
  if (existing === undefined || !pkg.has(existing)) {
    const name = pkg.has('xl/metadata.xml') ? freePartName(pkg, 'xl/metadata', 'xml') : 'xl/metadata.xml';
    pkg.write(name, utf8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${MAIN}"/>`));
    setContentType(pkg, name, CONTENT_TYPE);
    addRelation(pkg, workbook, `${TRANSITIONAL}/sheetMetadata`, name);
  }
  return findOrAdd(pkg, relationOf(pkg, workbook, 'sheetMetadata')!.target);
}

function findOrAdd(pkg: Package, part: string): string {
  const bytes = pkg.read(part);
  const root = parseTree(bytes, part);
  const t = (local: string): string => tagName(root, local);
  const splice = new Splice(bytes);
  const add = (
    element: XmlElement | undefined,
    local: string,
    attributes: string,
    xml: string,
    count: number,
  ): void => {
    if (element) {
      splice.append(element, xml);
      return splice.setAttribute(element, 'count', String(count));
    }
    const after = root.children.find((c) => ORDER.indexOf(c.local) > ORDER.indexOf(local));
    const whole = `<${t(local)}${attributes} count="${count}">${xml}</${t(local)}>`;
    if (after) splice.insert(after.start, whole);
    else splice.append(root, whole);
  };

  const types = child(root, 'metadataTypes');
  const type = childrenOf(types, 'metadataType').findIndex((entry) => entry.attributes.get('name') === TYPE) + 1;
  const typeIndex = type || (types?.children.length ?? 0) + 1;
  if (type === 0) add(types, 'metadataTypes', '', typeXml(t('metadataType')), typeIndex);

  const future = childrenOf(root, 'futureMetadata').find((entry) => entry.attributes.get('name') === TYPE);
  const dynamic = childrenOf(future, 'bk').findIndex(isDynamic);
  const futureIndex = dynamic >= 0 ? dynamic : childrenOf(future, 'bk').length;
  if (dynamic < 0) add(future, 'futureMetadata', ` name="${TYPE}"`, dynamicXml(t), futureIndex + 1);

  const cells = child(root, 'cellMetadata');
  const found = childrenOf(cells, 'bk').findIndex((block) => {
    const [record, more] = childrenOf(block, 'rc');
    const { attributes } = record ?? { attributes: new Map<string, string>() };
    return !more && attributes.get('t') === String(typeIndex) && attributes.get('v') === String(futureIndex);
  });
  const cellIndex = found >= 0 ? found + 1 : childrenOf(cells, 'bk').length + 1;
  const record = `<${t('bk')}><${t('rc')} t="${typeIndex}" v="${futureIndex}"/></${t('bk')}>`;
  if (found < 0) add(cells, 'cellMetadata', '', record, cellIndex);
  if (!splice.isEmpty) pkg.write(part, splice.apply());
  return String(cellIndex);
}

const isDynamic = (block: XmlElement): boolean =>
  [...descendants(block)].some(
    (e) =>
      e.local === 'dynamicArrayProperties' &&
      onOff(e.attributes.get('fDynamic')) &&
      !onOff(e.attributes.get('fCollapsed')),
  );

const typeXml = (tag: string): string =>
  `<${tag} name="${TYPE}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" ` +
  'rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';

const dynamicXml = (t: (local: string) => string): string =>
  `<${t('bk')}><${t('extLst')}><${t('ext')} uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">` +
  `<xda:dynamicArrayProperties xmlns:xda="${DYNAMIC}" fDynamic="1" fCollapsed="0"/></${t('ext')}></${t('extLst')}></${t('bk')}>`;
