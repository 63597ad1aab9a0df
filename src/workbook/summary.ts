import { fromSi } from '../core/units';
import { VERDICTS, type Verdict } from '../core/verdict';
import { cautionsFor } from '../plan/cautions';
import { planningAid } from '../plan/words/cautions';
import type { ChannelCheck } from '../plan/check';
import { PURPOSES } from '../plan/fields';
import type { Bound, Limits } from '../plan/limits';
import { LIMIT_UNITS } from '../plan/limits-table';
import { acrossRows } from '../plan/rules-across';
import { sentenceOf } from '../plan/sentence';
import { reasonsOf, worstFirst } from './annotate';
import { cellAddress } from './address';
import { VERDICT_COLOURS } from './check';
import type { JudgedPlan } from './plan-of';
import type { Change, MarkRule, RangeAddress } from './port';
import { HEADLINES } from './results';

export const SUMMARY_SHEET = 'Check summary';

/** What every reader of a verdict must know. */
export const LEGEND: Readonly<Record<Verdict, string>> = {
  FAIL: 'At least one number is beyond its limit: decide about sensor, mount, input or requirement before the test.',
  INCOMPLETE: 'Something that the check needs is missing or cannot be read. Not a pass.',
  WARN: 'Usable with care: within the outer limit only, or only after a correction.',
  PASS: 'All four checks (level, mass, thermal, frequency) hold for the numbers given.',
};

/** More rows than this would bury those that matter; the channel list holds them all. */
const MOST_DECISIONS = 200;
const MOST_NAMES = 6;
const WORST_FIRST = [...VERDICTS].reverse();
/** Widths in characters. */
export const SUMMARY_COLUMNS: readonly number[] = [22, 66, 13, 13, 13, 13, 13];
const WIDTH = SUMMARY_COLUMNS.length;
const PAPER = { ground: '#fdfcf8', ink: '#1f2a2e' } as const;
const HEADING = { bold: true, ink: '#0f4c4a', ground: '#e6efee' } as const;

type Typed = number | string | null;
type Line = readonly Typed[];

interface Section {
  readonly title: string;
  readonly text: string;
  readonly columns: readonly string[];
  readonly lines: readonly Line[];
  /** Columns right of the text hold verdicts. */
  readonly isMarked?: true;
}

const countsOf = (checks: readonly ChannelCheck[]): number[] => [
  ...WORST_FIRST.map((wanted) => checks.filter(({ verdict }) => verdict === wanted).length),
  checks.length,
];

export const verdictCounts = (checks: readonly { readonly verdict: Verdict }[]): string =>
  WORST_FIRST.map((wanted) => `${checks.filter(({ verdict }) => verdict === wanted).length} ${wanted}`).join(', ');

const shortList = (names: readonly string[]): string =>
  names.length <= MOST_NAMES
    ? names.join(', ')
    : `${names.slice(0, MOST_NAMES).join(', ')} and ${names.length - MOST_NAMES} more`;

const partsSection = (checks: readonly ChannelCheck[]): Section => {
  const parts = new Map<string, ChannelCheck[]>();
  for (const check of checks) {
    const part = check.channel.group?.trim() ?? '';
    const of = parts.get(part);
    if (of) of.push(check);
    else parts.set(part, [check]);
  }
  const open = (of: readonly ChannelCheck[]) =>
    shortList(
      of.filter(({ verdict }) => verdict === 'FAIL' || verdict === 'INCOMPLETE').map(({ channel }) => channel.id),
    );
  return {
    title: 'Structure part',
    text: 'Channels that FAIL or are INCOMPLETE',
    columns: [...WORST_FIRST, 'All'],
    lines: [
      ...[...parts].map(([part, of]): Line => [part || '(none given)', open(of) || 'none', ...countsOf(of)]),
      ['All channels', '', ...countsOf(checks)],
    ],
  };
};

const decisionsSection = (checks: readonly ChannelCheck[], limits: Limits): Section => {
  const open = checks.filter(({ verdict }) => verdict !== 'PASS').sort(worstFirst);
  const lines = open.slice(0, MOST_DECISIONS).map((check): Line => [
    check.channel.id,
    reasonsOf(check, limits)
      .map(({ sentence }) => sentence)
      .join(' '),
    check.verdict,
    ...HEADLINES.map((headline) => check[headline].verdict),
  ]);
  const more = open.length - lines.length;
  return {
    title: 'To decide first',
    text: 'Reason, limit and what would help',
    columns: ['Channel', 'Level', 'Mass', 'Thermal', 'Frequency'],
    lines: [
      ...lines,
      ...(more > 0 ? [['', `… and ${more} more rows that are not PASS in the channel list.`]] : []),
      ...(open.length === 0 ? [['', 'Nothing: every channel is PASS.']] : []),
    ],
    isMarked: true,
  };
};

const togetherSection = (checks: readonly ChannelCheck[], limits: Limits): Section => ({
  title: 'Rows taken together',
  text: 'What shows only when rows are looked at together',
  columns: ['Verdict'],
  lines: acrossRows(checks, limits)
    .filter(({ finding }) => finding.verdict !== 'PASS')
    .sort((a, b) => worstFirst(a.finding, b.finding))
    .slice(0, MOST_DECISIONS)
    .map(({ finding, rows }): Line => [
      shortList(rows.slice(0, MOST_NAMES + 1).map((row) => checks[row]!.channel.id)),
      sentenceOf(finding),
      finding.verdict,
    ]),
  isMarked: true,
});

const unreadSection = ({ unread }: JudgedPlan): Section => ({
  title: 'Could not be read',
  text: 'What was read and what is expected; such a cell counts as not known',
  columns: [],
  lines: unread
    .slice(0, MOST_DECISIONS)
    .map(({ text, at }): Line => [at ? `${at.sheet}!${cellAddress(at.row, at.column)}` : '', text]),
});

const boundsOf = (limits: Limits): readonly (readonly [name: string, bound: Bound])[] => [
  ['Signal to noise', limits.signalToNoise],
  ['Headroom', limits.headroom],
  ...PURPOSES.map((purpose) => [`Mass ratio, ${purpose}`, limits.massRatio[purpose]] as const),
  ['Thermal tolerance', limits.thermalTolerance],
  ['Span tolerance', limits.spanTolerance],
];

/** Each limit in the unit of the limits sheet: name, bounds, unit and where it comes from. */
export const limitLines = (limits: Limits) =>
  boundsOf(limits).map(([name, { pass, warn, origin, reason }]) => {
    const unit = LIMIT_UNITS[name] ?? '1';
    const shown = (si: number | undefined) => (si === undefined ? null : Number(fromSi(si, unit).toPrecision(12)));
    return { name, pass: shown(pass), warn: shown(warn), unit: unit === '1' ? '' : unit, origin, reason };
  });

const limitsSection = (limits: Limits): Section => ({
  title: 'Limits used',
  text: 'Where the limit comes from; a row may state its own tolerances',
  columns: ['PASS', 'WARN', 'Unit'],
  lines: limitLines(limits).map(({ name, pass, warn, unit, origin, reason }) => [
    name,
    origin.includes('default') ? `${origin}: ${reason}` : origin,
    pass,
    warn,
    unit,
  ]),
});

const sectionsOf = (judged: JudgedPlan): readonly Section[] => {
  const checks = [...judged.byRow.values()];
  return [
    partsSection(checks),
    decisionsSection(checks, judged.limits),
    togetherSection(checks, judged.limits),
    unreadSection(judged),
    {
      title: 'Cautions',
      text: 'What can hurt people or the article; local rules and licensed practice decide',
      columns: [],
      lines: cautionsFor(checks).map(({ caution }) => [caution.title, caution.text]),
    },
    limitsSection(judged.limits),
    {
      title: 'Verdict',
      text: 'What it means',
      columns: [],
      lines: WORST_FIRST.map((verdict) => [verdict, LEGEND[verdict]]),
    },
  ].filter(({ lines }) => lines.length > 0);
};

/** A text from the plan is never a formula, whatever it begins with. */
export const inert = <T extends Typed | boolean>(typed: T): T | string =>
  typeof typed === 'string' && typed.startsWith('=') ? ` ${typed}` : typed;

/** Fills the summary sheet; `before` is what it held until now. Nothing in it depends on the day, so equal plans give equal sheets. */
export const summaryChanges = (
  sheet: string,
  source: string,
  judged: JudgedPlan,
  before: RangeAddress | undefined,
): readonly Change[] => {
  const lines: Line[] = [
    ['Check summary', `“${source}”: ${judged.byRow.size} channels, ${verdictCounts([...judged.byRow.values()])}`],
    ['', planningAid('en')],
  ];
  const looks: Change[] = [];
  const rules: MarkRule[] = [];
  const block = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });
  const look = (range: RangeAddress, given: Extract<Change, { kind: 'look' }>['look']) =>
    looks.push({ kind: 'look', sheet, range, look: given });
  look(block(0, 0, 1, WIDTH), { bold: true, ink: HEADING.ink });
  for (const { title, text, columns, lines: rows, isMarked } of sectionsOf(judged)) {
    lines.push([]);
    look(block(lines.length, 0, 1, WIDTH), HEADING);
    look(block(lines.length, 2, 1, WIDTH - 2), { align: isMarked ? 'center' : 'right' });
    lines.push([title, text, ...columns]);
    const at = lines.length;
    lines.push(...rows);
    if (isMarked || title === 'Verdict')
      rules.push(...marks(block(at, isMarked ? 2 : 0, rows.length, isMarked ? 5 : 1)));
    if (isMarked) look(block(at, 2, rows.length, WIDTH - 2), { align: 'center', bold: true });
    else look(block(at, 2, rows.length, WIDTH - 2), { align: 'right' });
    if (rows.at(-1)?.[0] === 'All channels') look(block(lines.length - 1, 0, 1, WIDTH), { bold: true });
  }
  const cells = lines.map((line) => SUMMARY_COLUMNS.map((_, i) => inert(line[i] === '' ? null : (line[i] ?? null))));
  return [
    { kind: 'sheet', name: sheet },
    ...(before ? [{ kind: 'clear', sheet, range: before } as const] : []),
    { kind: 'cells', sheet, row: 0, column: 0, cells },
    { kind: 'look', sheet, range: block(0, 0, lines.length + 1, WIDTH), look: { ...PAPER, align: 'left' } },
    { kind: 'look', sheet, range: block(1, 0, lines.length - 1, 2), look: { wrap: true } },
    ...looks,
    ...SUMMARY_COLUMNS.map((characters, column): Change => ({ kind: 'width', sheet, column, columns: 1, characters })),
    { kind: 'marks', sheet, rules },
  ];
};

const marks = (range: RangeAddress): MarkRule[] =>
  VERDICTS.map((verdict) => ({ range, equals: verdict, ...VERDICT_COLOURS[verdict] }));
