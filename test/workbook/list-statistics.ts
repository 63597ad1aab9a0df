import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FileSpreadsheet } from '../../src/adapters/xlsx/spreadsheet';
import type { Cell } from '../../src/functions/define';
import { fieldByKey } from '../../src/plan/fields';
import { readCell } from '../../src/plan/table-cell';
import { channelLists } from '../../src/workbook/channel-lists';
import { dittosOf } from '../../src/workbook/dittos';
import { judgePlan } from '../../src/workbook/plan-of';
import { recognise, type SheetToRead } from '../../src/workbook/recognise';
import { SheetCells } from '../../src/workbook/sheet-cells';
import type { RecognisedTable } from '../../src/workbook/tables';

const FOLDER = join(process.cwd(), 'test/fixtures/lists');

interface ListTruth {
  readonly tables: readonly {
    readonly sheet: string;
    readonly columns: Readonly<Record<string, number>>;
    readonly rows: readonly {
      readonly row: number;
      readonly values: Readonly<Record<string, number | string | null>>;
    }[];
  }[];
  /** What must end as a question: whole fields, or [row, field] of single cells. */
  readonly open: { readonly fields?: readonly string[]; readonly cells?: readonly (readonly [number, string])[] };
}

export interface ListResult {
  readonly name: string;
  readonly fields: number;
  readonly right: number;
  readonly asked: readonly string[];
  /** Not taken, without a candidate: shown as not found. */
  readonly missing: readonly string[];
  /** Taken otherwise than meant, without a question. */
  readonly wrong: readonly string[];
}

const isNear = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b))
    : String(a) === String(b);

const valueAt = (table: RecognisedTable, cells: SheetCells, key: string, row: number) => {
  const use = table.columns.get(key);
  const ditto = dittosOf(table, cells.content)
    .get(row)
    ?.find((found) => found.key === key);
  const cell: Cell = ditto ? ditto.meant : use ? cells.at(row, use.column) : null;
  return use && readCell(fieldByKey('channels', key), cell, use);
};

export const readList = async (name: string, truth: ListTruth): Promise<ListResult> => {
  const book = new FileSpreadsheet(await openFile(join(FOLDER, 'files', `${name}.xlsx`), []));
  const sheets: SheetToRead[] = [];
  for (const info of await book.sheets()) sheets.push({ info, content: await book.readSheet(info.name) });
  const tables = recognise(sheets);
  const found = tables.channels;
  const contentOf = (sheet: string) => sheets.find(({ info }) => info.name === sheet)!.content;
  const { unread: notices, readings } = judgePlan(tables, contentOf);
  const asked: string[] = [];
  const missing: string[] = [];
  const wrong: string[] = [];
  let right = 0;
  let fields = 0;
  for (const part of truth.tables) {
    const keys = Object.keys(part.columns);
    fields += keys.length;
    const table = channelLists(tables).find(({ sheet }) => sheet === part.sheet);
    if (!table) {
      (found?.further?.some(({ sheet }) => sheet === part.sheet) ? asked : missing).push(
        ...keys.map((key) => `${part.sheet}: ${key}`),
      );
      continue;
    }
    const cells = new SheetCells(contentOf(part.sheet));
    const isNoticed = (row: number, column: number): boolean =>
      notices.some(({ at }) => at?.sheet === part.sheet && at.row === row && at.column === column);
    /** Read as it was meant, and told at the cell. */
    const isTold = (row: number, column: number): boolean =>
      readings.some(({ at }) => at?.sheet === part.sheet && at.row === row && at.column === column);
    const skipped = new Set(table.skippedRows);
    const isRead = (row: number): boolean => row >= table.firstRow && row <= table.lastRow && !skipped.has(row);
    const rows = new Set(part.rows.map(({ row }) => row));
    for (const row of rows) if (!isRead(row)) wrong.push(`row ${row} left out`);
    for (let row = table.firstRow; row <= table.lastRow; row++)
      if (isRead(row) && !rows.has(row)) wrong.push(`row ${row} taken for a channel`);
    const isOpen = (key: string, row: number): boolean =>
      (truth.open.fields?.includes(key) ?? false) ||
      (truth.open.cells?.some(([r, k]) => r === row && k === key) ?? false);
    for (const key of keys) {
      const use = table.columns.get(key);
      if (!use) (table.unsure.has(key) ? asked : missing).push(key);
      else if (use.column !== part.columns[key]) wrong.push(`${key}: column "${use.heading}"`);
      else {
        const silent: string[] = [];
        const refused: string[] = [];
        for (const { row, values } of part.rows) {
          const read = valueAt(table, cells, key, row);
          const value = read?.kind === 'value' ? read.value : null;
          if (isOpen(key, row)) {
            const isRight = isTold(row, use.column) && isNear(value, values[key] ?? null);
            if (!isNoticed(row, use.column) && !isRight) silent.push(`row ${row} taken silently`);
          } else if (!isNear(value, values[key] ?? null))
            (read?.kind === 'refused' ? refused : silent).push(`row ${row}: ${JSON.stringify(read)}`);
        }
        if (silent.length > 0) wrong.push(`${key}: ${silent[0]}`);
        else if (refused.length > 0) asked.push(`${key}: ${refused[0]}`);
        else right++;
      }
    }
    for (const [key, use] of table.columns) {
      if (key in part.columns) continue;
      const isSilent = part.rows.some(({ row }) => !isNoticed(row, use.column));
      if (isSilent) wrong.push(`${key}: column "${use.heading}" is not that`);
    }
  }
  for (const { sheet } of channelLists(tables))
    if (!truth.tables.some((part) => part.sheet === sheet)) wrong.push(`sheet "${sheet}" taken for a part`);
  return { name, fields, right, asked, missing, wrong };
};

export const allLists = async (): Promise<readonly ListResult[]> => {
  const truth = JSON.parse(readFileSync(join(FOLDER, 'truth.json'), 'utf8')) as Record<string, ListTruth>;
  const names = readdirSync(join(FOLDER, 'files')).map((file) => file.replace(/\.xlsx$/, ''));
  return Promise.all(names.sort().map((name) => readList(name, truth[name]!)));
};
