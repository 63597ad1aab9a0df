import type { Language } from '../core/language';
import { checkChannels, type ChannelCheck } from '../plan/check';
import { cautionsFor } from '../plan/cautions';
import { TABLES, type TableName } from '../plan/fields';
import { planFromTables } from '../plan/from-tables';
import type { Limits } from '../plan/limits';
import type { Plan } from '../plan/model';
import { describeMisread, type Misread } from '../plan/misread';
import { PieceIndex } from '../plan/pieces';
import { acrossLines } from '../plan/across-groups';
import { acrossRows } from '../plan/rules-across';
import { sentenceOf } from '../plan/sentence';
import type { TableReading } from '../plan/table-reading';
import { dittosOf, withDittos } from './dittos';
import type { CautionView, Notice, Place } from './plan-view';
import { channelLists, channelSheets, isSpread, listsOf, placeOfRow, rowIdOf } from './channel-lists';
import { LIST_WORDS } from './list-words';
import type { SheetContent } from './port';
import { readingsOf } from './readings';
import type { RecognisedTables } from './recognise';
import { joinedRows } from './stock/joined-rows';
import { serialHint } from './stock/serial-hint';
import type { RecognisedTable } from './tables';

/** A plan judged as a whole. Rows are 0-based rows of the channel sheet; of several sheets, see `rowIdOf`. */
export interface JudgedPlan {
  readonly plan: Plan;
  readonly limits: Limits;
  readonly byRow: ReadonlyMap<number, ChannelCheck>;
  readonly unread: readonly Notice[];
  readonly readings: readonly Notice[];
  readonly across: readonly Notice[];
  readonly cautions: readonly CautionView[];
}

const readingOf = (table: RecognisedTable, content: SheetContent, isPart: boolean): TableReading => {
  const skipped = new Set(table.skippedRows);
  const dittos = dittosOf(table, content);
  const rows = [];
  const at = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (skipped.has(row)) continue;
    rows.push(withDittos(content.values[row - content.row] ?? [], dittos.get(row), content.column));
    at.push(row + 1);
  }
  const columns = new Map(
    [...table.columns].map(([key, use]) => [key, { ...use, column: use.column - content.column }]),
  );
  return { name: table.table, columns, rows, at, ...(isPart && { sheet: table.sheet, part: table.part }) };
};

/** The cell that a misreading speaks of. */
const placeOf = (place: Misread['place'], tables: RecognisedTables): Place | undefined => {
  if (place.kind !== 'cell' || place.row === undefined) return undefined;
  const lists = place.table === 'channels' ? channelLists(tables) : [tables[place.table]];
  const table = lists.find((list) => place.sheet === undefined || list?.sheet === place.sheet);
  const use = place.key === undefined ? undefined : table?.columns.get(place.key);
  return table && { sheet: table.sheet, row: place.row - 1, column: use?.column ?? table.firstColumn };
};

/** Lists beside the plan, but for those that somebody left out. */
const notRead = ({ channels }: RecognisedTables, language: Language): Notice[] =>
  (channels?.further ?? [])
    .filter(({ because }) => because !== 'left out')
    .map((list) => ({
      text: LIST_WORDS[language].notRead(list.sheet, list.headerRow + 1, list.because),
      at: { sheet: list.sheet, row: list.headerRow, column: list.column },
    }));

/** Reads the recognised tables as a plan and looks at all of it. */
export const judgePlan = (
  tables: RecognisedTables,
  contentOf: (sheet: string) => SheetContent,
  language: Language = 'en',
): JudgedPlan => {
  const readings = TABLES.flatMap((name: TableName) => {
    const isPart = name === 'channels' && isSpread(tables);
    return listsOf(tables, name).map((table) => readingOf(table, contentOf(table.sheet), isPart));
  });
  const { plan, misreads, joins, at, sheets } = planFromTables(readings);
  const pieces = new PieceIndex(plan.sensors.values());
  const { limits } = plan;
  const checks = checkChannels(plan.channels, limits);
  const places = channelSheets(tables);
  const rowOf = (channel: number): number =>
    rowIdOf(Math.max(0, places.indexOf(sheets[channel] ?? '')), (at[channel] ?? 1) - 1);
  return {
    plan,
    limits,
    byRow: new Map(checks.map((check, i) => [rowOf(i), check])),
    unread: [
      ...notRead(tables, language),
      ...misreads.map((misread) => ({
        text: [describeMisread(misread, language), serialHint(misread, pieces, language)].filter(Boolean).join(' '),
        at: placeOf(misread.place, tables),
      })),
    ],
    readings: [
      ...readingsOf(tables, contentOf, language),
      ...joinedRows(joins, language).map(({ text, first: { row, by } }) => ({
        text,
        at: placeOf({ kind: 'cell', table: 'channels', sheet: row.sheet, row: row.at, heading: '', key: by }, tables),
      })),
    ],
    across: acrossLines(acrossRows(checks, limits), language).map(({ text, rows, parts }) => ({
      text,
      at: parts.length > 0 ? undefined : placeOfRow(tables, rowOf(rows[0] ?? 0)),
      parts: parts.map(({ finding, rows: of }) => ({
        text: sentenceOf(finding, language),
        at: placeOfRow(tables, rowOf(of[0] ?? 0)),
      })),
    })),
    cautions: cautionsFor(checks, language).map(({ caution }) => caution),
  };
};
