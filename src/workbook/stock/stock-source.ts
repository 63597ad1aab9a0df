import { readRows, type RowReading } from '../../plan/table-row';
import { fieldsOf } from '../../plan/fields';
import { readHeading } from '../../plan/heading-text';
import { matchHeadings } from '../../plan/headings';
import { recognise, type SheetToRead } from '../recognise';
import { SheetCells } from '../sheet-cells';
import type { ColumnUse, RecognisedTable } from '../tables';
import { temperatureColumns, type TemperatureColumn } from './deviation';
import { turnedSheet } from './turned';

/** A sensor list in whatever shape it was found. */
export interface StockSource {
  readonly table: RecognisedTable;
  readonly cells: SheetCells;
  /** Properties stand in rows, one type per column. */
  readonly isTurned: boolean;
  readonly temperatures: readonly TemperatureColumn[];
  /** Full scale as the output voltage at full scale. */
  readonly fullScaleVolts?: { readonly column: number; readonly unitText: string };
}

const columnIn = (
  headings: ReadonlyMap<number, string>,
  taken: ReadonlySet<number>,
  is: (heading: string) => boolean,
): number | undefined => [...headings].find(([column, heading]) => !taken.has(column) && is(heading))?.[0];

const SURE = 0.8;

/** "Full scale output" is the full scale, told at the output. */
const OUTPUT_WORDS = new Set(['output', 'voltage', 'ausgang', 'ausgangsspannung', 'spannung', 'sortie', 'tension']);

const voltsIn = (heading: string): string | undefined => {
  const { unitText, words } = readHeading(heading);
  if (unitText === undefined || !/^(?:m|µ)?V$/i.test(unitText)) return undefined;
  const match = matchHeadings('sensors', [words.filter((word) => !OUTPUT_WORDS.has(word)).join(' ')]).columns.get(
    'fullScale',
  );
  return (match?.confidence ?? 0) >= SURE ? unitText : undefined;
};

const sourceOf = (table: RecognisedTable, sheet: SheetToRead, isTurned: boolean): StockSource => {
  const temperatures = temperatureColumns(table.headings);
  const isTemperature = new Set(temperatures.map(({ column }) => column));
  const columns = new Map<string, ColumnUse>([...table.columns].filter(([, { column }]) => !isTemperature.has(column)));
  const taken = new Set([...columns.values()].map(({ column }) => column));
  const volts = columns.has('fullScale')
    ? undefined
    : columnIn(table.headings, taken, (heading) => voltsIn(heading) !== undefined);
  return {
    table: { ...table, columns },
    cells: new SheetCells(sheet.content),
    isTurned,
    temperatures,
    ...(volts !== undefined && {
      fullScaleVolts: { column: volts, unitText: voltsIn(table.headings.get(volts) ?? '') ?? 'V' },
    }),
  };
};

/** The sensor list of these sheets, upright or turned, whichever reads as more fields; the named sheet alone, if any. */
export const stockSourceIn = (all: readonly SheetToRead[], named?: string): StockSource | undefined => {
  const sheets = named === undefined ? all.filter(({ info }) => info.visible) : all.filter(({ info }) => info.name === named); // prettier-ignore
  const found = sheets.flatMap((sheet) =>
    [false, true].flatMap((isTurned) => {
      // The sheet alone, so that no other list of the workbook takes its place; its name may say what it is.
      const one = isTurned ? { ...sheet, content: turnedSheet(sheet.content) } : sheet;
      const { sensors } = recognise([one]);
      return sensors && sensors.lastRow >= sensors.firstRow ? [sourceOf(sensors, one, isTurned)] : [];
    }),
  );
  return found.sort((a, b) => b.table.columns.size - a.table.columns.size)[0];
};

/** The rows of the list as they are read; what could not be read is told when the plan reads it. */
export const rowsOf = ({ table, cells }: StockSource): readonly RowReading[] => {
  const skipped = new Set(table.skippedRows);
  const at = Array.from({ length: table.lastRow - table.firstRow + 1 }, (_, i) => table.firstRow + i).filter(
    (row) => !skipped.has(row),
  );
  const keys = fieldsOf('sensors').map(({ key }) => key);
  const width = Math.max(...[...table.columns.values()].map(({ column }) => column)) + 1;
  return readRows(
    {
      name: 'sensors',
      columns: new Map([...table.columns].filter(([key]) => keys.includes(key))),
      rows: at.map((row) => Array.from({ length: width }, (_, column) => cells.at(row, column))),
      at: at.map((row) => row + 1),
    },
    [],
    {},
  );
};
