import type { InLanguages, Language } from '../core/language';
import { checkChannels, type ChannelCheck } from '../plan/check';
import { cautionsFor } from '../plan/cautions';
import { TABLES, type TableName } from '../plan/fields';
import { planFromTables } from '../plan/from-tables';
import type { Limits } from '../plan/limits';
import type { Plan } from '../plan/model';
import { describeMisread, type Misread } from '../plan/misread';
import { acrossRows } from '../plan/rules-across';
import { sentenceOf } from '../plan/sentence';
import type { TableReading } from '../plan/table-reading';
import type { CautionView, Notice, Place } from './plan-view';
import type { SheetContent } from './port';
import { readingsOf } from './readings';
import type { RecognisedTables } from './recognise';
import type { RecognisedTable } from './tables';

/** A plan judged as a whole. Rows are 0-based rows of the channel sheet. */
export interface JudgedPlan {
  readonly plan: Plan;
  readonly limits: Limits;
  readonly byRow: ReadonlyMap<number, ChannelCheck>;
  readonly unread: readonly Notice[];
  readonly readings: readonly Notice[];
  readonly across: readonly Notice[];
  readonly cautions: readonly CautionView[];
}

const readingOf = (table: RecognisedTable, content: SheetContent): TableReading => {
  const skipped = new Set(table.skippedRows);
  const rows = [];
  const at = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (skipped.has(row)) continue;
    rows.push(content.values[row - content.row] ?? []);
    at.push(row + 1);
  }
  const columns = new Map(
    [...table.columns].map(([key, use]) => [key, { ...use, column: use.column - content.column }]),
  );
  return { name: table.table, columns, rows, at };
};

/** The cell that a misreading speaks of. */
const placeOf = ({ place }: Misread, tables: RecognisedTables): Place | undefined => {
  if (place.kind !== 'cell' || place.row === undefined) return undefined;
  const table = tables[place.table];
  const use = place.key === undefined ? undefined : table?.columns.get(place.key);
  return table && { sheet: table.sheet, row: place.row - 1, column: use?.column ?? table.firstColumn };
};

const NOT_READ: InLanguages<(sheet: string, row: number) => string> = {
  en: (sheet, row) =>
    `The list on sheet "${sheet}" (header in row ${row}) looks like a channel list too and is not part of this plan.`,
  de: (sheet, row) =>
    `Die Liste auf dem Blatt „${sheet}“ (Kopf in Zeile ${row}) sieht auch wie eine Kanalliste aus und gehört nicht zu diesem Plan.`,
  fr: (sheet, row) =>
    `La liste de la feuille « ${sheet} » (en-tête à la ligne ${row}) ressemble aussi à une liste de voies et ne fait pas partie de ce plan.`,
};

const notRead = ({ channels }: RecognisedTables, language: Language): Notice[] =>
  (channels?.further ?? []).map(({ sheet, headerRow, column }) => ({
    text: NOT_READ[language](sheet, headerRow + 1),
    at: { sheet, row: headerRow, column },
  }));

/** Reads the recognised tables as a plan and looks at all of it. */
export const judgePlan = (
  tables: RecognisedTables,
  contentOf: (sheet: string) => SheetContent,
  language: Language = 'en',
): JudgedPlan => {
  const readings = TABLES.flatMap((name: TableName) => {
    const table = tables[name];
    return table ? [readingOf(table, contentOf(table.sheet))] : [];
  });
  const { plan, misreads, at } = planFromTables(readings);
  const { limits } = plan;
  const checks = checkChannels(plan.channels, limits);
  const rowOf = (channel: number): number => (at[channel] ?? 1) - 1;
  const { channels } = tables;
  const nameColumn = channels?.columns.get('channel')?.column ?? channels?.firstColumn ?? 0;
  return {
    plan,
    limits,
    byRow: new Map(checks.map((check, i) => [rowOf(i), check])),
    unread: [
      ...notRead(tables, language),
      ...misreads.map((misread) => ({ text: describeMisread(misread, language), at: placeOf(misread, tables) })),
    ],
    readings: readingsOf(tables, contentOf, language),
    across: acrossRows(checks, limits)
      .filter(({ finding }) => finding.verdict !== 'PASS')
      .map(({ finding, rows }) => ({
        text: sentenceOf(finding, language),
        at: channels && { sheet: channels.sheet, row: rowOf(rows[0] ?? 0), column: nameColumn },
      })),
    cautions: cautionsFor(checks, language).map(({ caution }) => caution),
  };
};
