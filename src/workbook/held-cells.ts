import { isOtherWithComma, showsDecimalComma } from '../core/text/decimal';
import { fieldByKey } from '../plan/fields';
import type { HeldReading } from '../plan/table-reading';
import { cellAddress } from './address';
import { channelLists } from './channel-lists';
import type { SheetContent } from './port';
import type { RecognisedTables } from './recognise';
import { SheetCells } from './sheet-cells';
import type { ColumnUse, RecognisedTable } from './tables';

/** What was typed before the spreadsheet made a date of it: day and month either way, or month and year. */
const typedBefore = (iso: string, serial: number): HeldReading => {
  if (!/^\d{4}-\d{2}-\d{2}/.test(iso)) return { shown: iso, readings: [iso, String(serial)] };
  const [year = '', month = 0, day = 0] = [iso.slice(2, 4), Number(iso.slice(5, 7)), Number(iso.slice(8, 10))];
  const daily = `${day}-${month}`;
  return { shown: iso, readings: [daily, day === 1 ? `${month}-${year}` : `${month}-${day}`] };
};

const withComma = (text: string): HeldReading => ({
  shown: text.trim(),
  readings: [text.trim(), text.trim().replace('.', '')],
});

const MEASURED = new Set(['quantity', 'curve', 'list']);

const rowsOf = (table: RecognisedTable): number[] => {
  const skipped = new Set(table.skippedRows);
  const rows: number[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) if (!skipped.has(row)) rows.push(row);
  return rows;
};

const heldIn = (table: RecognisedTable, content: SheetContent): RecognisedTable => {
  const cells = new SheetCells(content);
  const rows = rowsOf(table);
  const uses = [...table.columns].map(([key, use]) => ({ key, use, kind: fieldByKey(table.table, key).kind }));
  const texts = uses.flatMap(({ use, kind }) =>
    MEASURED.has(kind) ? rows.map((row) => cells.at(row, use.column)) : [],
  );
  const hasCommas = showsDecimalComma(texts);
  const heldOf = (kind: string, { column }: ColumnUse): ReadonlyMap<number | string, HeldReading> => {
    const held = new Map<number | string, HeldReading>();
    for (const row of rows) {
      const cell = cells.at(row, column);
      const date = typeof cell === 'number' && kind !== 'date' && content.dates?.get(cellAddress(row, column));
      if (date) held.set(cell, typedBefore(date, cell));
      if (hasCommas && MEASURED.has(kind) && typeof cell === 'string' && isOtherWithComma(cell))
        held.set(cell, withComma(cell));
    }
    return held;
  };
  const columns = new Map(
    uses.map(({ key, use, kind }) => {
      const held = heldOf(kind, use);
      return [key, held.size > 0 || use.held ? { ...use, held: held.size > 0 ? held : undefined } : use] as const;
    }),
  );
  return { ...table, columns };
};

/**
 * Cells that a number or a name cannot be taken from although one stands there: "3-4" that became a date, "1.500" in a
 * list that writes decimals with a comma. They are asked about, in the plan and in the formulas alike.
 */
export const withHeldCells = (
  tables: RecognisedTables,
  contentOf: (sheet: string) => SheetContent,
): RecognisedTables => {
  const held: Record<string, RecognisedTable> = {};
  for (const [name, table] of Object.entries(tables)) held[name] = heldIn(table, contentOf(table.sheet));
  const { channels } = tables;
  if (channels?.parts)
    held['channels'] = {
      ...held['channels']!,
      parts: channelLists(tables)
        .slice(1)
        .map((part) => heldIn(part, contentOf(part.sheet))),
    };
  return held;
};
