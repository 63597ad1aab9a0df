import { rangeAddress } from '../../workbook/address';
import type { SheetFrame } from '../../workbook/whole-sheet';
import { freePartName, setContentType } from './content-types';
import type { Package } from './package';
import { addRelation } from './relations';
import { parseTree } from './xml-tree';
import { escapeAttribute, utf8, writeCellText } from './xml-text';

const TABLE_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

type NewTable = NonNullable<SheetFrame['tables']>[number];

/** Adds the parts of a new sheet's tables; returns the section by which the sheet names them. */
export const addTables = (
  pkg: Package,
  sheet: { readonly part: string; readonly relationSpace: string; readonly space: string },
  tables: readonly NewTable[],
): string => {
  if (tables.length === 0) return '';
  let id = Math.max(0, ...tableIds(pkg));
  const parts = tables.map((table) => {
    const part = freePartName(pkg, 'xl/tables/table', 'xml');
    pkg.write(part, utf8(tableXml(table, ++id, sheet.space)));
    setContentType(pkg, part, TABLE_TYPE);
    return `<tablePart r:id="${addRelation(pkg, sheet.part, `${sheet.relationSpace}/table`, part)}"/>`;
  });
  return `<tableParts xmlns:r="${sheet.relationSpace}" count="${parts.length}">${parts.join('')}</tableParts>`;
};

const tableIds = (pkg: Package): number[] =>
  pkg
    .names()
    .filter((name) => /(^|\/)tables\/[^/]+\.xml$/i.test(name))
    .map((name) => Number(parseTree(pkg.read(name), name).attributes.get('id')) || 0);

const tableXml = ({ name, range, headings }: NewTable, id: number, space: string): string => {
  const at = rangeAddress(range);
  const written = (heading: string): string => escapeAttribute(writeCellText(heading).replaceAll('\n', '_x000a_'));
  const columns = headings.map((heading, i) => `<tableColumn id="${i + 1}" name="${written(heading)}"/>`);
  return (
    `${DECLARATION}<table xmlns="${space}" id="${id}" name="${escapeAttribute(name)}" displayName="${escapeAttribute(name)}" ref="${at}">` +
    `<autoFilter ref="${at}"/><tableColumns count="${columns.length}">${columns.join('')}</tableColumns>` +
    '<tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="0" showColumnStripes="0"/></table>'
  );
};
