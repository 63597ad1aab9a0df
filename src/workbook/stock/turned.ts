import { fieldByKey } from '../../plan/fields';
import type { SheetContent } from '../port';

const turnedBlock = <T>(block: readonly (readonly T[])[], empty: T): T[][] => {
  const width = block.reduce((most, line) => Math.max(most, line.length), 0);
  return Array.from({ length: width }, (_, c) => block.map((line) => line[c] ?? empty));
};

/** What stands over the names of the properties says nothing of the types beside it. */
const CORNER =
  /^(merkmal|eigenschaft|kenngröße|größe|property|properties|parameter|characteristics?|item|data|propriété|caractéristiques?|grandeur|paramètre|propiedad|característica|parámetro|magnitud|proprietà|caratteristica|parametro|grandezza)s?$/iu;
const UNITS = /^(einheit|unit|unité|unidad|unità)(s|en|és|es)?$/iu;
const named = (values: SheetContent['values']): SheetContent['values'] =>
  values.map((line) => {
    const at = line.findIndex((cell) => typeof cell === 'string' && CORNER.test(cell.trim()));
    if (at < 0) return line;
    return line.map((cell, i) =>
      i === at ? TYPE_NAME : i > at && typeof cell === 'string' && UNITS.test(cell.trim()) ? null : cell,
    );
  });
/** The title of the field that names a type. */
const TYPE_NAME = fieldByKey('sensors', 'sensor').title;

/** A sheet with rows and columns changed about, for lists whose properties stand in rows. */
export const turnedSheet = (content: SheetContent): SheetContent => ({
  ...content,
  row: content.column,
  column: content.row,
  values: turnedBlock(named(content.values), null),
  formulas: turnedBlock(content.formulas, ''),
  tables: [],
  merged: content.merged.map(({ row, column, rows, columns }) => ({ row: column, column: row, rows: columns, columns: rows })), // prettier-ignore
  hiddenRows: [],
});
