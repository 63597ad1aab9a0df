import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FileSpreadsheet } from '../../src/adapters/xlsx/spreadsheet';
import type { Curve } from '../../src/core/curve';
import { toSi } from '../../src/core/units';
import { fieldByKey, TABLES, type Field, type TableName } from '../../src/plan/fields';
import { dateText } from '../../src/plan/json-date';
import { OTHER_END, rangeEnds, readCell } from '../../src/plan/table-cell';
import { listsOf } from '../../src/workbook/channel-lists';
import { dittosOf } from '../../src/workbook/dittos';
import { judgePlan } from '../../src/workbook/plan-of';
import type { Notice } from '../../src/workbook/plan-view';
import { recognise, type SheetToRead } from '../../src/workbook/recognise';
import { SheetCells } from '../../src/workbook/sheet-cells';
import type { RecognisedTable } from '../../src/workbook/tables';
import { laidOutAgain, stockOf } from './stock/read-back';

type Meant = number | string | null;
interface RowTruth {
  readonly row: number;
  readonly values: Readonly<Record<string, Meant>>;
  /** Must end as a question, or be read as meant and told. */
  readonly ask: readonly string[];
  /** Read as meant, and told. */
  readonly told: readonly string[];
}
export interface TableTruth {
  readonly table: TableName;
  readonly sheet: string;
  readonly columns: Readonly<Record<string, number>>;
  readonly rows: readonly RowTruth[];
}
export interface BookTruth {
  readonly tables: readonly TableTruth[];
  readonly stock?: {
    readonly types: Readonly<Record<string, Readonly<Record<string, Meant | { x: number[]; y: number[] }>>>>;
  };
}

export interface Tally {
  readonly name: string;
  readonly fields: { right: number; asked: string[]; missing: string[]; wrong: string[] };
  readonly values: { right: number; asked: string[]; wrong: string[]; untold: string[] };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(1e-6, Math.abs(a), Math.abs(b));

/** Whether a value in SI is what was meant, which is written in the field's documented unit. */
export const isMeant = (field: Field, read: unknown, meant: unknown): boolean => {
  if (meant === null || meant === undefined) return read === null || read === undefined;
  if (field.kind === 'date') return typeof read === 'number' && dateText(read) === meant;
  const inSi = (value: number, unit = field.unit): number => (unit ? toSi(value, unit) : value);
  if (field.kind === 'curve') {
    const curve = read as Curve | null;
    if (typeof meant === 'number') return !!curve?.y?.length && curve.y.every((y) => near(y, inSi(meant)));
    const { x, y } = meant as { x: number[]; y: number[] };
    return !!curve && x.every((at, i) => near(curve.x[i]!, inSi(at, field.xUnit)) && near(curve.y[i]!, inSi(y[i]!)));
  }
  if (field.kind === 'list') return near((read as number[] | null)?.[0] ?? NaN, inSi(meant as number));
  if (typeof meant === 'number' && field.unit) return typeof read === 'number' && near(read, inSi(meant));
  return String(read) === String(meant).trim();
};

const NAMES = new Set(['sensor', 'mount', 'cable', 'input']);

class TableTally {
  readonly cells: SheetCells;
  constructor(
    private readonly truth: TableTruth,
    private readonly table: RecognisedTable,
    private readonly sheet: SheetToRead,
    private readonly notices: readonly Notice[],
    private readonly readings: readonly Notice[],
    private readonly into: Tally,
  ) {
    this.cells = new SheetCells(sheet.content);
  }

  private has(list: readonly Notice[], row: number, column: number): boolean {
    return list.some(({ at }) => at?.sheet === this.truth.sheet && at.row === row && at.column === column);
  }
  private label(key: string, row?: number): string {
    return `${this.truth.table}.${key}${row === undefined ? '' : ` row ${row + 1}`}`;
  }

  rows(): void {
    const skipped = new Set(this.table.skippedRows);
    const isRead = (row: number) => row >= this.table.firstRow && row <= this.table.lastRow && !skipped.has(row);
    const meant = new Set(this.truth.rows.map(({ row }) => row));
    const { wrong } = this.into.values;
    for (const row of meant) if (!isRead(row)) wrong.push(`row ${row + 1} of ${this.truth.table} left out`);
    for (let row = this.table.firstRow; row <= this.table.lastRow; row++)
      if (
        isRead(row) &&
        !meant.has(row) &&
        !this.notices.some(({ at }) => at?.sheet === this.truth.sheet && at.row === row)
      )
        wrong.push(`row ${row + 1} taken for one of ${this.truth.table}`);
  }

  private useOf(key: string) {
    const own = this.table.columns.get(key);
    const ends = rangeEnds(key);
    const other = ends && this.table.columns.get(ends[0] === key ? ends[1] : ends[0]);
    return own ?? (other?.column === this.truth.columns[key] ? other : undefined);
  }

  private value(key: string, row: number): { value: unknown; refused: boolean } {
    const field = fieldByKey(this.truth.table, key);
    const use = this.useOf(key)!;
    const ditto = dittosOf(this.table, this.sheet.content)
      .get(row)
      ?.find((one) => one.column === use.column);
    const read = readCell(field, ditto ? ditto.meant : this.cells.at(row, use.column), use);
    if (read.kind === 'range') return { value: OTHER_END[key] ? read.low : read.high, refused: false };
    return { value: read.kind === 'value' ? read.value : null, refused: read.kind === 'refused' };
  }

  fields(): void {
    const { fields } = this.into;
    for (const [key, column] of Object.entries(this.truth.columns)) {
      const use = this.useOf(key);
      if (!use) (this.table.unsure.has(key) ? fields.asked : fields.missing).push(this.label(key));
      else if (use.column !== column) fields.wrong.push(`${this.label(key)} from "${use.heading}"`);
      else {
        fields.right++;
        for (const row of this.truth.rows) this.cell(key, row, column);
      }
    }
    for (const [key, use] of this.table.columns) {
      if (key in this.truth.columns) continue;
      if (
        this.truth.rows.some(
          ({ row }) => !this.has(this.notices, row, use.column) && this.cells.at(row, use.column) !== null,
        )
      )
        fields.wrong.push(`${this.label(key)} from "${use.heading}", which is not that`);
    }
  }

  private cell(key: string, { row, values, ask, told }: RowTruth, column: number): void {
    const { values: out } = this.into;
    const { value, refused } = this.value(key, row);
    const isNoticed = refused || (!NAMES.has(key) && this.has(this.notices, row, column));
    const isTold = this.has(this.readings, row, column);
    const label = `${this.label(key, row)} "${String(this.cells.at(row, column))}" as ${JSON.stringify(value)}`;
    if (isMeant(fieldByKey(this.truth.table, key), value, values[key] ?? null)) {
      out.right++;
      if (ask.includes(key) && !isNoticed && !isTold) out.wrong.push(`${label}, no question`);
      else if (told.includes(key) && !isTold && !isNoticed) out.untold.push(label);
    } else if (isNoticed) out.asked.push(label);
    else if (isTold) out.asked.push(`${label}, told`);
    else out.wrong.push(label);
  }
}

export const tallyOf = async (folder: string, name: string, truth: BookTruth): Promise<Tally> => {
  const book = new FileSpreadsheet(await openFile(join(folder, `${name}.xlsx`), []));
  const sheets: SheetToRead[] = [];
  for (const info of await book.sheets()) sheets.push({ info, content: await book.readSheet(info.name) });
  const tables = recognise(sheets);
  const sheetOf = (sheet: string) => sheets.find(({ info }) => info.name === sheet)!;
  const { unread, readings } = judgePlan(tables, (sheet) => sheetOf(sheet).content);
  const tally: Tally = {
    name,
    fields: { right: 0, asked: [], missing: [], wrong: [] },
    values: { right: 0, asked: [], wrong: [], untold: [] },
  };
  for (const part of truth.tables) {
    const table = listsOf(tables, part.table).find(
      ({ sheet, firstColumn, lastColumn, firstRow }) =>
        sheet === part.sheet &&
        Object.values(part.columns).some((column) => column >= firstColumn && column <= lastColumn) &&
        firstRow <= part.rows[0]!.row,
    );
    if (!table) {
      const isAsked = tables.channels?.further?.some(({ sheet }) => sheet === part.sheet) ?? false;
      (isAsked ? tally.fields.asked : tally.fields.missing).push(
        ...Object.keys(part.columns).map((key) => `${part.table}.${key}`),
      );
      continue;
    }
    const one = new TableTally(part, table, sheetOf(part.sheet), unread, readings, tally);
    one.rows();
    one.fields();
  }
  for (const kind of TABLES)
    for (const table of listsOf(tables, kind))
      if (!truth.stock && !truth.tables.some((part) => part.table === kind && part.sheet === table.sheet))
        tally.fields.wrong.push(
          `a list of ${kind} seen on "${table.sheet}": ${[...table.columns].map(([k, { heading }]) => `${k}=${heading}`).join(', ')}`,
        );
  return tally;
};

export const readTruth = (file: string): Record<string, BookTruth> =>
  JSON.parse(readFileSync(file, 'utf8')) as Record<string, BookTruth>;

/** The same for a list of sensors in another shape, by what is laid out of it. */
export const stockTally = (path: string, name: string, { stock }: BookTruth): Tally => {
  const tally: Tally = {
    name,
    fields: { right: 0, asked: [], missing: [], wrong: [] },
    values: { right: 0, asked: [], wrong: [], untold: [] },
  };
  const found = stockOf(path);
  const plan = found && laidOutAgain(found, name);
  for (const [type, values] of Object.entries(stock!.types)) {
    const read = plan?.plan.sensors.get(type) as unknown as Record<string, unknown> | undefined;
    for (const [key, meant] of Object.entries(values)) {
      const field = fieldByKey('sensors', key);
      if (read?.[key] === undefined) tally.fields.missing.push(`${type} ${key}`);
      else if (isMeant(field, read[key], meant)) {
        tally.fields.right++;
        tally.values.right++;
      } else tally.values.wrong.push(`${type} ${key}: ${JSON.stringify(read[key])} for ${JSON.stringify(meant)}`);
    }
  }
  return tally;
};

const UNSEEN = join(process.cwd(), 'test/fixtures/lists');

/** All lists of the three rounds, whose names begin with u, v and w. */
export const unseenTallies = async (): Promise<readonly Tally[]> => {
  const truth = Object.entries(readTruth(join(UNSEEN, 'unseen-truth.json')));
  return Promise.all(
    truth.map(([name, one]) =>
      one.stock ? stockTally(`unseen/${name}.xlsx`, name, one) : tallyOf(join(UNSEEN, 'unseen'), name, one),
    ),
  );
};
