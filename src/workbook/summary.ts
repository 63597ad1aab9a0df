import type { Language } from '../core/language';
import { VERDICTS } from '../core/verdict';
import { VERDICT_COLOURS } from './check';
import type { Change, MarkRule, RangeAddress, SheetContent } from './port';
import type { ReportContent } from './report/content';
import type { Line, Typed } from './report/section';
import { COPY_WORDS } from './share/told-words';
import { CHART_ROWS, summaryCharts, type PlacedSection } from './summary-charts';

export const SUMMARY_SHEET = 'Check summary';
/** Remembers which sheet is our summary, so that one of the user's with that name is never taken for it. */
export const SUMMARY_SETTING = 'channelwright.summary';
export const storedSummary = (json: string | undefined): string | undefined => {
  try {
    const name: unknown = JSON.parse(json ?? 'null');
    return typeof name === 'string' ? name : undefined;
  } catch {
    return undefined;
  }
};

/** The name of our summary sheet: the one used before, or the first free one. */
export const summarySheetName = (sheets: readonly string[], setting: string | undefined): string => {
  const before = storedSummary(setting);
  const taken = new Set(sheets.map((name) => name.toLowerCase()));
  if (before?.startsWith(SUMMARY_SHEET)) return before;
  for (let n = 1; ; n++) {
    const name = n === 1 ? SUMMARY_SHEET : `${SUMMARY_SHEET} ${n}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

/** All that a sheet of ours held until now, and a row more. */
export const usedRange = ({ row, column, values }: SheetContent): RangeAddress | undefined => {
  const columns = values.reduce((most, line) => Math.max(most, line.length), 0);
  return columns === 0 ? undefined : { row: 0, column: 0, rows: row + values.length + 1, columns: column + columns };
};

/** Widths in characters. */
export const SUMMARY_COLUMNS: readonly number[] = [22, 66, 13, 13, 13, 13, 13];
const WIDTH = SUMMARY_COLUMNS.length;
const PAPER = { ground: '#fdfcf8', ink: '#1f2a2e', align: 'left', vertical: 'top' } as const;
export const HAIRLINE = '#c9d3d1';
const HEADING = { bold: true, ink: '#0f4c4a', ground: '#e6efee' } as const;

/** A text from the plan is never a formula, whatever it begins with. */
export const inert = <T extends Typed | boolean>(typed: T): T | string =>
  typeof typed === 'string' && typed.startsWith('=') ? ` ${typed}` : typed;

/** The summary sheet; `before` is what it held until now. Nothing in it depends on the day, so equal plans give equal sheets. */
export const summaryPage = (
  sheet: string,
  content: ReportContent,
  before: RangeAddress | undefined,
  language: Language,
): readonly Change[] => {
  const { title, outcome, aid, facts, sections } = content;
  const lines: Line[] = [[title, outcome], ['', aid], ...facts];
  const placed: PlacedSection[] = [];
  const looks: Change[] = [];
  const rules: MarkRule[] = [];
  const block = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });
  const look = (range: RangeAddress, given: Extract<Change, { kind: 'look' }>['look']) =>
    looks.push({ kind: 'look', sheet, range, look: given });
  look(block(0, 0, 1, WIDTH), { bold: true, ink: HEADING.ink });
  const chartRow = lines.length + 1;
  for (let n = 0; n <= CHART_ROWS; n++) lines.push([]);
  // What to ask a supplier for is no business of a customer, who gets this sheet.
  for (const section of sections.filter(({ key }) => key !== 'asked')) {
    const inColumns = section.verdicts === 'columns';
    lines.push([]);
    look(block(lines.length, 0, 1, WIDTH), HEADING);
    look(block(lines.length, 2, 1, WIDTH - 2), { align: inColumns ? 'center' : 'right', wrap: true });
    placed.push({ section, row: lines.length });
    lines.push([section.title, section.text, ...section.columns]);
    const at = lines.length;
    const rows = section.lines.length;
    lines.push(...section.lines);
    if (section.verdicts) rules.push(...marks(block(at, inColumns ? 2 : 0, rows, inColumns ? 5 : 1)));
    look(block(at, 2, rows, WIDTH - 2), inColumns ? { align: 'center', bold: true } : { align: 'right' });
    if (section.hasTotal) look(block(lines.length - 1, 0, 1, WIDTH), { bold: true });
  }
  const cells = lines.map((line) => SUMMARY_COLUMNS.map((_, i) => inert(line[i] === '' ? null : (line[i] ?? null))));
  return [
    { kind: 'sheet', name: sheet, reading: { foot: COPY_WORDS[language].page } },
    ...(before ? [{ kind: 'clear', sheet, range: before } as const] : []),
    { kind: 'cells', sheet, row: 0, column: 0, cells },
    { kind: 'look', sheet, range: block(0, 0, lines.length + 1, WIDTH), look: PAPER },
    ...[
      block(0, 0, chartRow, WIDTH),
      block(chartRow + CHART_ROWS + 1, 0, lines.length - chartRow - CHART_ROWS - 1, WIDTH),
    ].map((range): Change => ({ kind: 'look', sheet, range, look: { hairline: HAIRLINE } })),
    { kind: 'look', sheet, range: block(0, 0, lines.length, 2), look: { wrap: true } },
    ...looks,
    ...SUMMARY_COLUMNS.map((characters, column): Change => ({ kind: 'width', sheet, column, columns: 1, characters })),
    { kind: 'fit', sheet, row: 0, rows: lines.length },
    { kind: 'marks', sheet, rules },
    { kind: 'drawings', sheet, drawings: summaryCharts(placed, chartRow, content.unit) },
  ];
};

export const marks = (range: RangeAddress): MarkRule[] =>
  VERDICTS.map((verdict) => ({ range, equals: verdict, ...VERDICT_COLOURS[verdict] }));
