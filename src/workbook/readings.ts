import type { InLanguages, Language } from '../core/language';
import { formatQuantity } from '../core/text/format';
import { readQuantity } from '../core/text/quantity';
import { readRange } from '../core/text/range';
import { UNITS, type UnitId } from '../core/units';
import { fieldsOf, TABLES, type Field } from '../plan/fields';
import { readCell } from '../plan/table-cell';
import { channelLists, listsOf } from './channel-lists';
import { LIST_WORDS } from './list-words';
import { cellAddress } from './address';
import { dittosOf } from './dittos';
import type { Notice } from './plan-view';
import type { SheetContent } from './port';
import type { RecognisedTables } from './recognise';
import { SheetCells } from './sheet-cells';
import type { ColumnUse, RecognisedTable } from './tables';

interface ReadingWords {
  readonly unit: (heading: string, unit: string) => string;
  readonly statistic: (heading: string, statistic: 'rms' | 'peak') => string;
  readonly cell: (text: string, value: string) => string;
  readonly crossed: (row: number) => string;
  readonly ditto: (text: string, meant: string, cell: string) => string;
  readonly more: (count: number) => string;
}
const WORDS: InLanguages<ReadingWords> = {
  en: {
    unit: (heading, unit) => `"${heading}" names no unit: plain numbers are taken in ${unit}.`,
    statistic: (heading, statistic) =>
      `"${heading}" does not say which level: numbers are taken as ${statistic === 'rms' ? 'r.m.s.' : 'peak'}.`,
    cell: (text, value) => `"${text}" is read as ${value}.`,
    crossed: (row) => `Row ${row} is crossed out and left out of the plan.`,
    ditto: (text, meant, cell) => `${text} stands for "${meant}" of ${cell} above.`,
    more: (count) => `${count} more cells are read otherwise than they are written.`,
  },
  de: {
    unit: (heading, unit) => `„${heading}“ nennt keine Einheit: reine Zahlen gelten in ${unit}.`,
    statistic: (heading, statistic) =>
      `„${heading}“ sagt nicht, welcher Pegel gemeint ist: Zahlen gelten als ${statistic === 'rms' ? 'Effektivwert' : 'Spitzenwert'}.`,
    cell: (text, value) => `„${text}“ wird als ${value.replaceAll('.', ',')} gelesen.`,
    crossed: (row) => `Zeile ${row} ist durchgestrichen und gehört nicht zum Plan.`,
    ditto: (text, meant, cell) => `${text} steht für „${meant}“ aus ${cell} darüber.`,
    more: (count) => `${count} weitere Zellen werden anders gelesen, als sie geschrieben sind.`,
  },
  fr: {
    unit: (heading, unit) => `« ${heading} » n’indique pas d’unité : les nombres seuls sont pris en ${unit}.`,
    statistic: (heading, statistic) =>
      `« ${heading} » ne dit pas de quel niveau il s’agit : les nombres sont pris en ${statistic === 'rms' ? 'valeur efficace' : 'valeur crête'}.`,
    cell: (text, value) => `« ${text} » est lu comme ${value.replaceAll('.', ',')}.`,
    crossed: (row) => `La ligne ${row} est barrée et ne fait pas partie du plan.`,
    ditto: (text, meant, cell) => `${text} vaut « ${meant} » de ${cell} au-dessus.`,
    more: (count) => `${count} autres cellules sont lues autrement qu’elles ne sont écrites.`,
  },
};

const MOST_CELLS = 100;

/** Whether a number in the column hangs on the unit, or on the statistic, that its heading left open. */
const leftOpen = (field: Field, use: ColumnUse, cells: readonly unknown[]) => {
  const isBare = (cell: unknown, what: 'unitText' | 'statistic'): boolean => {
    if (typeof cell === 'number') return true;
    if (typeof cell !== 'string' || !field.unit) return false;
    const reading = readQuantity(cell, field.unit);
    return reading.ok && reading.value[what] === undefined;
  };
  return {
    unit: field.unit !== '1' && use.unitText === undefined && cells.some((cell) => isBare(cell, 'unitText')),
    statistic:
      field.statistic !== undefined && use.statistic === undefined && cells.some((cell) => isBare(cell, 'statistic')),
  };
};

/** A text of which more was taken than stands there, and what became of it. */
const assumedValue = (field: Field, unit: UnitId, cell: unknown, use: ColumnUse): string | undefined => {
  if (typeof cell !== 'string') return undefined;
  const read = readCell(field, cell, use);
  const shown = (si: number) => formatQuantity(si, unit, 6);
  if (read.kind === 'range') {
    const range = readRange(cell, unit);
    return range.ok && range.value.assumed ? `${shown(read.low)} … ${shown(read.high)}` : undefined;
  }
  if (read.kind !== 'value' || typeof read.value !== 'number') return undefined;
  const told = readQuantity(cell, unit);
  return told.ok && told.value.assumed !== undefined ? shown(read.value) : undefined;
};

const readingsIn = (table: RecognisedTable, content: SheetContent, words: ReadingWords): [Notice[], Notice[]] => {
  const cells = new SheetCells(content);
  const skipped = new Set(table.skippedRows);
  const rows: number[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) if (!skipped.has(row)) rows.push(row);
  const columns: Notice[] = [];
  const single: Notice[] = [];
  const { sheet, headerRow } = table;
  for (const field of fieldsOf(table.table)) {
    const use = table.columns.get(field.key);
    if (!use || field.kind !== 'quantity' || !field.unit) continue;
    const { column, heading } = use;
    const open = leftOpen(
      field,
      use,
      rows.map((row) => cells.at(row, column)),
    );
    const at = { sheet, row: headerRow, column };
    if (open.unit) columns.push({ text: words.unit(heading, UNITS[field.unit].label), at });
    if (open.statistic && field.statistic) columns.push({ text: words.statistic(heading, field.statistic), at });
    for (const row of rows) {
      const cell = cells.at(row, column);
      const value = assumedValue(field, field.unit, cell, use);
      if (value !== undefined) single.push({ text: words.cell(String(cell), value), at: { sheet, row, column } });
    }
  }
  for (const row of table.crossedRows ?? [])
    single.push({ text: words.crossed(row + 1), at: { sheet, row, column: table.firstColumn } });
  for (const line of dittosOf(table, content).values())
    for (const { row, column, typed, origin, meant } of line)
      single.push({
        text: words.ditto(typed.trim(), String(meant), cellAddress(origin, column)),
        at: { sheet, row, column },
      });
  return [columns, single];
};

/** Sheets whose name stands for the structure part. */
const partReadings = (tables: RecognisedTables, language: Language): Notice[] =>
  channelLists(tables).flatMap(({ sheet, part, headerRow, firstColumn }) =>
    part === undefined
      ? []
      : [{ text: LIST_WORDS[language].partOf(part), at: { sheet, row: headerRow, column: firstColumn } }],
  );

/** All that is taken otherwise than it stands on the sheets: what a heading leaves open, texts read with an assumption. */
export const readingsOf = (
  tables: RecognisedTables,
  contentOf: (sheet: string) => SheetContent,
  language: Language = 'en',
): readonly Notice[] => {
  const words = WORDS[language];
  const found = TABLES.flatMap((name) => {
    const lists = listsOf(tables, name);
    return lists.map((table) => readingsIn(table, contentOf(table.sheet), words));
  });
  const single = found.flatMap(([, cells]) => cells);
  const left = single.length - MOST_CELLS;
  return [
    ...partReadings(tables, language),
    ...found.flatMap(([columns]) => columns),
    ...single.slice(0, MOST_CELLS),
    ...(left > 0 ? [{ text: words.more(left) }] : []),
  ];
};
