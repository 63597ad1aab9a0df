import type { Language } from '../../core/language';
import { VERDICTS, type Verdict } from '../../core/verdict';
import { isCellError, type Cell } from '../../functions/define';
import type { ChannelCheck } from '../../plan/check';
import { findingsOf } from '../../plan/findings';
import { reasonText } from '../../plan/sentence';
import { clearVerdicts, noteChanges } from '../annotate';
import { placeOwnBlock, VERDICT_COLOURS } from '../check';
import { OWN_COLUMNS, ownIndex, type OwnKey } from '../own-columns';
import type { JudgedPlan } from '../plan-of';
import { cellAddress } from '../address';
import type { CellLook, Change, RangeAddress, SheetContent } from '../port';
import type { PlanTables } from '../row-sources';
import { rowValues } from '../row-values';
import { inert } from '../summary';
import { groupedBy } from '../report/section';
import { listedPlaces, type ToldWords } from './told-words';
import { SHARED_COLUMNS, sharedHeadings } from './own-headings';

const HEADER_LOOK: CellLook = { bold: true, ink: '#0f4c4a', ground: '#e6efee', wrap: true };
const REASON_CHARACTERS = 84;
const HAIRLINE = '#c9d3d1';
/** Bold letters are wider than the digits that widths count. */
const BOLD = 1.1;

/** No word of a heading is broken. */
const charactersFor = (heading: string, least: number): number =>
  Math.max(least, Math.ceil(BOLD * Math.max(...heading.split(/[\s-]/).map(({ length }) => length))));

export interface OwnChanges {
  readonly changes: readonly Change[];
  /** One on every row that is not PASS. */
  readonly notes: readonly Extract<Change, { kind: 'note' }>[];
  /** Our columns as the copy has them, headings and rows. */
  readonly block: RangeAddress;
  /** Columns of ours that a customer does not get, where an earlier check has written them. */
  readonly working: readonly number[];
  /** Columns of an earlier check that get another heading. */
  readonly renamed: readonly number[];
  /** The reason of each row, to make room for it. */
  readonly texts: ReadonlyMap<number, { readonly text: string; readonly characters: number }>;
  readonly told: (words: ToldWords) => readonly string[];
}

/** A row of which the cells of the plan say another verdict than the plan as a whole. */
interface Differing {
  readonly place: string;
  readonly shown: string;
  readonly verdict: Verdict;
}

/** Shown in front of the word, for readers who see no colour. */
export const VERDICT_SIGN: Readonly<Record<Verdict, string>> = { PASS: '✓', WARN: '△', FAIL: '✕', INCOMPLETE: '▨' };

/** Our columns as exact values under headings of the customer's language, with static marks and a note on every row that is not PASS. */
export const ownChanges = (
  tables: PlanTables,
  contentOf: (sheet: string) => SheetContent,
  judged: JudgedPlan,
  language: Language,
): OwnChanges => {
  const { channels } = tables;
  const { sheet, firstRow, lastRow, skippedRows } = channels;
  const content = contentOf(sheet);
  const { column, headingRow, isThere } = placeOwnBlock(tables, content);
  const columns = SHARED_COLUMNS.length;
  const valuesOf = rowValues(tables, column, contentOf);
  const skipped = new Set(skippedRows);
  const name = (row: number): string => `${sheet}!${cellAddress(row, channels.columns.get('channel')?.column ?? 0)}`;
  const differing: Differing[] = [];
  const cells = Array.from({ length: lastRow - firstRow + 1 }, (_, i) => {
    const row = firstRow + i;
    if (skipped.has(row)) return SHARED_COLUMNS.map(() => null);
    const values = valuesOf(row);
    const shown = values[ownIndex('verdict')];
    const verdict = judged.byRow.get(row)?.verdict;
    if (verdict && shown !== verdict) differing.push({ place: name(row), shown: String(shown), verdict });
    return sharedCells(values, judged, row, language);
  });
  const written = cells.reduce((sum, line) => sum + line.filter((cell) => cell !== null).length, 0);
  return {
    changes: blockChanges(tables, content, cells, language),
    notes: noteChanges(channels, column + ownIndex('verdict'), judged, language),
    block: { row: headingRow, column, rows: lastRow - headingRow + 1, columns },
    working: isThere ? OWN_COLUMNS.slice(columns).map((_, i) => column + columns + i) : [],
    renamed: isThere && language !== 'en' ? SHARED_COLUMNS.map((_, i) => column + i) : [],
    texts: new Map(
      cells.map((line, i) => [
        firstRow + i,
        { text: String(line[ownIndex('reason')] ?? ''), characters: REASON_CHARACTERS },
      ]),
    ),
    told: (words) => [
      words.values(written),
      ...[...groupedBy(differing, ({ shown, verdict }) => `${shown} ${verdict}`).values()].map((of) => {
        const { shown, verdict } = of[0]!;
        const places = listedPlaces(of.map(({ place }) => place), words); // prettier-ignore
        return shown === 'INCOMPLETE' && verdict === 'FAIL'
          ? words.proved(places)
          : words.differs(places, shown, verdict);
      }),
    ],
  };
};

const blockChanges = (
  tables: PlanTables,
  content: SheetContent,
  cells: readonly (readonly (number | string | boolean | null)[])[],
  language: Language,
): readonly Change[] => {
  const { channels } = tables;
  const { sheet, firstRow, lastRow, listObject } = channels;
  const { column, headingRow, clear } = placeOwnBlock(tables, content);
  const columns = SHARED_COLUMNS.length;
  const table = content.tables.find(({ name }) => name === listObject);
  const missing = table ? column + columns - (table.range.column + table.range.columns) : 0;
  const headings = freeHeadings(content, headingRow, column, language);
  const rowsOf = (i: number): RangeAddress => ({
    row: firstRow,
    column: column + i,
    rows: lastRow - firstRow + 1,
    columns: 1,
  });
  return [
    ...clear.map((c): Change => ({
      kind: 'clear',
      sheet,
      range: { row: headingRow, column: c, rows: lastRow - headingRow + 1, columns: 1 },
    })),
    ...(table && missing > 0 ? [{ kind: 'extend-table', sheet, table: table.name, columns: missing } as const] : []),
    { kind: 'cells', sheet, row: headingRow, column, cells: [headings] },
    clearVerdicts(channels, column),
    { kind: 'cells', sheet, row: firstRow, column, cells },
    look(sheet, { row: headingRow, column, rows: 1, columns }, HEADER_LOOK),
    ...SHARED_COLUMNS.flatMap(({ kind, numberFormat, key, characters }, i): Change[] => [
      ...(kind === 'verdict' ? [look(sheet, rowsOf(i), { bold: true, align: 'center', hairline: HAIRLINE })] : []),
      ...(kind === 'text' ? [look(sheet, rowsOf(i), { align: 'left', wrap: true, hairline: HAIRLINE })] : []),
      ...(numberFormat ? [look(sheet, rowsOf(i), { numberFormat, align: 'right', hairline: HAIRLINE })] : []),
      { kind: 'width', sheet, column: column + i, columns: 1, characters: charactersFor(headings[i]!, key === 'reason' ? REASON_CHARACTERS : characters) }, // prettier-ignore
    ]),
    { kind: 'marks', sheet, rules: marksOn(rowsOf) },
  ];
};

const look = (sheet: string, range: RangeAddress, given: CellLook): Change => ({
  kind: 'look',
  sheet,
  range,
  look: given,
});

/**
 * Reasons in the customer's language, numbers as the cells have them. Verdicts are those of the plan, as in note and
 * overview: the cells may leave open what the plan has proved already.
 */
const sharedCells = (values: readonly Cell[], { byRow, limits }: JudgedPlan, row: number, language: Language) => {
  const check = byRow.get(row);
  const verdicts = check && verdictsOf(check);
  return SHARED_COLUMNS.map(({ key }, i) => {
    const value = values[i] ?? null;
    const verdict = verdicts?.[key];
    if (verdict) return verdict;
    if (key === 'reason' && check) return inert(reasonText(findingsOf(check, limits), language)) || null;
    return isCellError(value) ? null : inert(value);
  });
};

const verdictsOf = ({ verdict, level, mass, thermal, frequency }: ChannelCheck): Partial<Record<OwnKey, Verdict>> => ({
  verdict,
  levelVerdict: level.verdict,
  massVerdict: mass.verdict,
  thermalVerdict: thermal.verdict,
  frequencyVerdict: frequency.verdict,
});

/** A heading that the list has already gets a star, for columns of a table must differ. */
const freeHeadings = (content: SheetContent, row: number, column: number, language: Language): string[] => {
  const others = new Set(
    (content.values[row - content.row] ?? []).flatMap((cell, i) => {
      const at = content.column + i;
      return at >= column && at < column + OWN_COLUMNS.length ? [] : [String(cell ?? '').toLowerCase()];
    }),
  );
  return sharedHeadings(language).map((heading) => (others.has(heading.toLowerCase()) ? `${heading} *` : heading));
};

const marksOn = (range: (i: number) => RangeAddress) =>
  SHARED_COLUMNS.flatMap(({ kind }, i) =>
    kind === 'verdict'
      ? VERDICTS.map((verdict) => ({
          range: range(i),
          equals: verdict,
          sign: VERDICT_SIGN[verdict],
          ...VERDICT_COLOURS[verdict],
        }))
      : [],
  );
