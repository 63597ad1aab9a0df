import { rangeAddress } from '../../../workbook/address';
import type { Package } from '../package';
import { parseRange } from '../cell-reference';
import { Splice } from '../splice';
import { tablesOf } from '../tables';
import { child, childrenOf, parseTree, textOf, type XmlElement } from '../xml-tree';
import type { LeftOut } from './left-out';

interface Sheet {
  readonly name: string;
  readonly part: string;
}

/** Last columns of a table that a customer does not get, such as our working columns, are taken off the table. */
export const shrinkTables = (pkg: Package, sheet: Sheet, isGone: (column: number) => boolean): void => {
  for (const { part, range } of tablesOf(pkg, sheet.part)) {
    let columns = range.columns;
    while (columns > 1 && isGone(range.column + columns - 1)) columns--;
    if (columns === range.columns) continue;
    const bytes = pkg.read(part);
    const root = parseTree(bytes, part);
    const splice = new Splice(bytes);
    const list = child(root, 'tableColumns');
    if (!list) continue;
    for (const column of childrenOf(list, 'tableColumn').slice(columns)) splice.remove(column);
    splice.setAttribute(list, 'count', String(columns));
    splice.setAttribute(root, 'ref', rangeAddress({ ...range, columns }));
    const filter = child(root, 'autoFilter');
    const filtered = parseRange(filter?.attributes.get('ref') ?? '');
    if (filter && filtered) {
      splice.setAttribute(filter, 'ref', rangeAddress({ ...filtered, columns: Math.min(filtered.columns, columns) }));
      for (const item of childrenOf(filter, 'filterColumn'))
        if (Number(item.attributes.get('colId')) >= columns) splice.remove(item);
    }
    pkg.write(part, splice.apply());
  }
};

/** Names columns of tables that are left out, and drops formulas, filters and orders that read them. Returns the headings. */
export const passTables = (
  pkg: Package,
  { name: sheet, part: sheetPart }: Sheet,
  leftOut: LeftOut,
  nameOf: (n: number) => string,
  freezeAll: boolean,
): ((row: number, column: number) => string | undefined) => {
  const headings = new Map<string, string>();
  for (const { part, range, hasHeader } of tablesOf(pkg, sheetPart)) {
    const bytes = pkg.read(part);
    const root = parseTree(bytes, part);
    const splice = new Splice(bytes);
    const columns = childrenOf(child(root, 'tableColumns'), 'tableColumn');
    const taken = new Set(columns.map((column) => (column.attributes.get('name') ?? '').toLowerCase()));
    let n = 0;
    const isGone = (i: number): boolean => leftOut.hasColumn(sheet, range.column + i);
    columns.forEach((column, i) => {
      const formulas = column.children.filter(({ local }) => /^(calculatedColumn|totalsRow)Formula$/.test(local));
      const isBroken = (f: XmlElement) => freezeAll || leftOut.breaks(textOf(bytes, f), sheet);
      for (const formula of formulas) if (isGone(i) || isBroken(formula)) splice.remove(formula);
      if (formulas.some((f) => f.local === 'totalsRowFormula' && (isGone(i) || isBroken(f))))
        splice.setAttribute(column, 'totalsRowFunction', undefined);
      if (!isGone(i)) return;
      let name: string;
      do name = nameOf(++n);
      while (taken.has(name.toLowerCase()));
      splice.setAttribute(column, 'name', name);
      for (const key of ['totalsRowLabel', 'uniqueName', 'queryTableFieldId', 'dataDxfId'])
        if (column.attributes.has(key)) splice.setAttribute(column, key, undefined);
      if (hasHeader) headings.set(`${range.row} ${range.column + i}`, name);
    });
    const filter = child(root, 'autoFilter');
    for (const item of childrenOf(filter, 'filterColumn'))
      if (isGone(Number(item.attributes.get('colId')))) splice.remove(item);
    const sort = child(root, 'sortState');
    if (sort && columns.some((_, i) => isGone(i))) splice.remove(sort);
    if (!splice.isEmpty) pkg.write(part, splice.apply());
  }
  return (row, column) => headings.get(`${row} ${column}`);
};
