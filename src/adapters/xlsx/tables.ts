import type { RangeAddress } from '../../workbook/port';
import { cellAddress, rangeAddress } from '../../workbook/address';
import { overlap, parseRange } from './cell-reference';
import { LAST_COLUMN } from './limits';
import type { Package } from './package';
import { refuse } from './refuse';
import { relationsOf } from './relations';
import { Splice } from './splice';
import { child, childrenOf, parseTree, tagName, type XmlElement } from './xml-tree';
import { escapeAttribute, readCellText, writeCellText } from './xml-text';

export interface Table {
  readonly name: string;
  readonly part: string;
  readonly range: RangeAddress;
  readonly hasHeader: boolean;
}

export function tablesOf(pkg: Package, sheetPart: string): Table[] {
  return relationsOf(pkg, sheetPart).flatMap((relation) => {
    if (relation.kind !== 'table' || !pkg.has(relation.target)) return [];
    const { attributes } = parseTree(pkg.read(relation.target), relation.target);
    const range = parseRange(attributes.get('ref') ?? '');
    const name = attributes.get('displayName') ?? attributes.get('name') ?? '';
    return range ? [{ name, part: relation.target, range, hasHeader: attributes.get('headerRowCount') !== '0' }] : [];
  });
}

/** What a header cell is going to hold after the edit: undefined where it stays as it is. */
export type HeaderText = (row: number, column: number) => string | null | undefined;

/**
 * Brings the tables of a sheet in line with its edited header cells, and takes `more` columns right of each into it.
 * `present` reads the header cells that stay as they are.
 */
export function updateTables(
  pkg: Package,
  sheet: string,
  tables: readonly Table[],
  more: ReadonlyMap<string, number>,
  changed: HeaderText,
  present: (row: number, column: number) => string,
): void {
  for (const table of tables) {
    const columns = table.range.columns + (more.get(table.name) ?? 0);
    const range = { ...table.range, columns };
    if (range.column + columns > LAST_COLUMN + 1)
      refuse('unsupported', `Table ${table.name} has no room for more columns.`);
    const neighbour = tables.find((other) => other !== table && overlap(other.range, range));
    if (neighbour && columns > table.range.columns)
      refuse('occupied', `Table ${neighbour.name} on sheet ${sheet} is in the way of table ${table.name}.`);
    updateTable(pkg, sheet, table, range, changed, present);
  }
}

function updateTable(
  pkg: Package,
  sheet: string,
  table: Table,
  range: RangeAddress,
  changed: HeaderText,
  present: (row: number, column: number) => string,
): void {
  const bytes = pkg.read(table.part);
  const root = parseTree(bytes, table.part);
  const list = child(root, 'tableColumns');
  const columns = childrenOf(list, 'tableColumn');
  if (!list || columns.length !== table.range.columns)
    refuse('unsupported', `${table.part} is damaged: its columns do not fit.`);
  const splice = new Splice(bytes);
  const names = columns.map((column) => readCellText(column.attributes.get('name') ?? ''));
  let id = Math.max(0, ...columns.map((column) => Number(column.attributes.get('id')) || 0));
  let added = '';
  for (let n = 0; n < range.columns; n++) {
    const column = columns[n];
    const header = table.hasHeader ? changed(range.row, range.column + n) : undefined;
    if (header === undefined && column) continue;
    if (header === null || header === '')
      refuse(
        'occupied',
        `Cell ${cellAddress(range.row, range.column + n)} of sheet ${sheet} is a heading of table ${table.name}.`,
      );
    const name = header ?? (table.hasHeader ? present(range.row, range.column + n) : `Column${n + 1}`);
    if (name === '') refuse('unsupported', `Table ${table.name} cannot take in a column without a heading.`);
    if (name === names[n]) continue;
    if (names.some((other, k) => k !== n && other.toLowerCase() === name.toLowerCase()))
      refuse('occupied', `Table ${table.name} on sheet ${sheet} has a column "${name}" already.`);
    names[n] = name;
    const written = writeCellText(name).replaceAll('\n', '_x000a_');
    if (column) splice.setAttribute(column, 'name', written);
    else added += `<${tagName(root, 'tableColumn')} id="${++id}" name="${escapeAttribute(written)}"/>`;
  }
  if (added !== '') {
    splice.append(list, added);
    splice.setAttribute(list, 'count', String(range.columns));
    splice.setAttribute(root, 'ref', rangeAddress(range));
    growFilter(splice, root, table.range, range);
  }
  if (!splice.isEmpty) pkg.write(table.part, splice.apply());
}

function growFilter(splice: Splice, root: XmlElement, before: RangeAddress, after: RangeAddress): void {
  const filter = child(root, 'autoFilter');
  const old = parseRange(filter?.attributes.get('ref') ?? '');
  if (filter && old && old.column === before.column && old.columns === before.columns)
    splice.setAttribute(filter, 'ref', rangeAddress({ ...old, columns: after.columns }));
}
