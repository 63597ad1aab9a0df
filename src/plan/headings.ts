import type { UnitId } from '../core/units';
import { fieldsOf, type Field, type TableName } from './fields';
import { assignColumns } from './heading-assignment';
import { cellsNameUnit, countsRows, evidenceFor, holdsRanges, sampleOf, type CellValue } from './heading-evidence';
import { tellsOther, tellsPart } from './heading-phrases';
import { scoreWords } from './heading-score';
import { foldWords, unitFits, unitIdOf, type HeadingText } from './heading-text';
import { viewsOf, type HeadingViews } from './heading-views';

export type { CellValue } from './heading-evidence';

export interface ColumnCandidate {
  readonly column: number;
  /** 0..1 */
  readonly confidence: number;
}

export interface ColumnMatch extends ColumnCandidate {
  /** The heading's unit when it is one of ours. */
  readonly unit?: UnitId;
  /** The heading's unit as written, for numbers that must be read as "number unit" (kHz, °F, V/g …). */
  readonly unitText?: string;
  /** The statistic that the heading names. */
  readonly statistic?: 'rms' | 'peak';
  /** Why, in words for the user. */
  readonly evidence: string;
  readonly alternatives: readonly ColumnCandidate[];
}

export interface HeadingMatches {
  /** By field key; at most one field per column. */
  readonly columns: ReadonlyMap<string, ColumnMatch>;
  /** Fields with candidates, none of them sure enough: the user must be asked. */
  readonly unsure: ReadonlyMap<string, readonly (ColumnCandidate & { readonly evidence: string })[]>;
  readonly unused: readonly number[];
}

export interface ColumnEvidence {
  /** The cells below each heading, in the order of the headings. */
  readonly columns: readonly (readonly CellValue[])[];
  /** What stands in each column alone, where the heading of a group was joined to it. */
  readonly own?: readonly (string | undefined)[];
}

interface Scored {
  readonly score: number;
  readonly evidence: string;
}

/** From here on a column is taken; below it down to ASK_FROM the user is asked. */
const TAKE_FROM = 0.7;
const ASK_FROM = 0.5;
/** Two ways to map that are closer than this are a question, not an answer. */
const MARGIN = 0.04;
/** Cells that contradict a heading outweigh its words. */
const AGREEMENT_NEEDED = 0.5;

const NOTHING: Scored = { score: 0, evidence: '' };

/** What a heading is worth by its words, its unit and the cells below. */
const scoreReading = (field: Field, heading: HeadingText, sample: readonly (number | string)[]): Scored => {
  const { unitText, statistic } = heading;
  const fits = unitText !== undefined && field.unit !== undefined && unitFits(unitText, field.unit);
  if (unitText !== undefined && !fits) return NOTHING;
  const words = scoreWords(`${field.table}.${field.key}`, field.title, heading, {
    isQuantity: field.kind === 'quantity',
    unitFits: fits || (unitText === undefined && cellsNameUnit(sample, field)),
    hasRanges: () => holdsRanges(sample, field),
  });
  if (words.score < ASK_FROM / 1.5) return fits ? byUnitAlone(field, heading, sample) : NOTHING;
  let { score } = words;
  const reasons = [`reads as "${words.phrase}"`];
  if (fits) {
    score += (1 - score) * 0.3;
    reasons.push(`unit ${unitText} fits`);
  } else if (field.kind === 'quantity' && field.unit !== undefined && field.unit !== '1') {
    score *= 0.97;
    reasons.push(`no unit in the heading, plain numbers are taken in ${field.unit}`);
  }
  if (field.statistic && statistic && statistic !== field.statistic) {
    score *= statistic === 'peak-to-peak' ? 0.6 : 0.85;
    reasons.push(`the heading says ${statistic}, wanted is ${field.statistic}`);
  }
  const agreement = evidenceFor(sample, field, unitText);
  if (agreement !== undefined) {
    if (agreement < AGREEMENT_NEEDED) return NOTHING;
    score *= 0.8 + 0.2 * agreement;
    reasons.push(agreement === 1 ? 'all cells agree' : `${Math.round(100 * agreement)} % of the cells agree`);
  }
  return { score: Math.min(1, score), evidence: reasons.join('; ') };
};

/** Fields worth a question where a column has their unit and words that nobody knows. */
const ASKED_BY_UNIT = new Set([
  ...['levelLow', 'levelHigh', 'bandLow', 'bandHigh', 'temperatureLow', 'temperatureHigh', 'localMass'],
  ...['sensitivity', 'chargeSensitivity', 'fullScale', 'mass', 'resonance', 'temperatureMin', 'temperatureMax'],
]);
const byUnitAlone = (field: Field, heading: HeadingText, sample: readonly (number | string)[]): Scored => {
  const { words, unitText } = heading;
  if (!ASKED_BY_UNIT.has(field.key) || tellsPart(words) || words.some((word) => /^[\d.]+$/.test(word))) return NOTHING;
  const agreement = evidenceFor(sample, field, unitText) ?? 0;
  return agreement < 1 ? NOTHING : { score: ASK_FROM, evidence: `unit ${unitText} fits; all cells agree` };
};

/** A heading below that of its group, or said in two languages, may be worth slightly less than one that says all. */
const ALONE = 0.98;
const OF_A_PART = 0.75;
const TWICE = 0.97;

/** A mere "No." names the rows where it counts them; over other cells it may number anything. */
const isLooseNumber = (field: Field, { score }: Scored, sample: readonly (number | string)[]): boolean =>
  field.table === 'channels' && field.key === 'channel' && score < SURE_NUMBER && !countsRows(sample);
const SURE_NUMBER = 0.75;
const LOOSE = 0.9;

const scoreColumn = (field: Field, views: HeadingViews, cells: readonly CellValue[] | undefined): Scored => {
  const { whole, own, groupWords, halves } = views;
  const isQuantity = field.kind === 'quantity';
  const isPlanned = field.table === 'channels' && isQuantity;
  if (isPlanned && tellsOther([...whole.words, ...whole.asides])) return NOTHING;
  const sample = cells === undefined ? [] : sampleOf(cells);
  let best = scoreReading(field, whole, sample);
  const take = ({ score, evidence }: Scored, factor: number): void => {
    if (score * factor > best.score) best = { score: score * factor, evidence };
  };
  // "Sensor temp. max": of the part, or of the channel? A limit is a channel's own where the field is one.
  if (isPlanned && tellsPart(whole.words) && !tellsPart(foldWords(field.title)))
    best = { ...best, score: best.score * OF_A_PART };
  if (own && !(isPlanned && tellsPart(groupWords))) take(scoreReading(field, own, sample), ALONE);
  if (halves.length > 1) {
    const scored = halves.map((half) => scoreReading(field, half, sample));
    take(
      scored.reduce((least, one) => (one.score < least.score ? one : least)),
      TWICE,
    );
  }
  return isLooseNumber(field, best, sample) ? { ...best, score: best.score * LOOSE } : best;
};

const bestScores = new Map<string, number>();
/** The best score that the heading's words alone reach in the table: enough to tell a header row from data. */
export const headingScore = (table: TableName, heading: string): number => {
  if (heading.trim() === '') return 0;
  const key = `${table}\n${heading}`;
  let best = bestScores.get(key);
  if (best === undefined) {
    const views = viewsOf(heading);
    best = Math.max(...fieldsOf(table).map((field) => scoreColumn(field, views, undefined).score));
    if (bestScores.size > 20_000) bestScores.clear();
    bestScores.set(key, best);
  }
  return best;
};

const total = (scores: readonly (readonly number[])[], chosen: readonly (number | undefined)[]): number =>
  chosen.reduce<number>((sum, column, row) => sum + (column === undefined ? 0 : (scores[row]?.[column] ?? 0)), 0);

/** How much the whole mapping loses when this pair may not be. */
const marginOf = (scores: readonly (readonly number[])[], best: number, row: number, column: number): number => {
  const line = scores[row] ?? [];
  const isContested =
    line.some((score, j) => j !== column && score > 0) ||
    scores.some((other, i) => i !== row && (other[column] ?? 0) > 0);
  if (!isContested) return line[column] ?? 0;
  const without = scores.map((other, i) => (i === row ? other.map((score, j) => (j === column ? 0 : score)) : other));
  return best - total(without, assignColumns(without, line.length));
};

const toMatch = (
  field: Field,
  heading: HeadingText,
  column: number,
  scored: Scored,
  alternatives: readonly ColumnCandidate[],
): ColumnMatch => ({
  column,
  confidence: scored.score,
  unit: heading.unitText === undefined || !field.unit ? undefined : unitIdOf(heading.unitText, field.unit),
  unitText: heading.unitText,
  statistic: field.statistic === undefined || heading.statistic === 'peak-to-peak' ? undefined : heading.statistic,
  evidence: scored.evidence,
  alternatives,
});

/** Finds for each field of a table the column that holds it. A wrong column is worse than none. */
export const matchHeadings = (
  table: TableName,
  headings: readonly string[],
  evidence?: ColumnEvidence,
): HeadingMatches => {
  const fields = fieldsOf(table);
  const read = headings.map((heading, i) => viewsOf(heading, evidence?.own?.[i]));
  const scored = fields.map((field) =>
    read.map((views, column) =>
      headings[column]?.trim() ? scoreColumn(field, views, evidence?.columns[column]) : NOTHING,
    ),
  );
  // Only columns that some field wants take part: sheets can be very wide.
  const wanted = headings.map((_, i) => i).filter((i) => scored.some((line) => (line[i]?.score ?? 0) >= TAKE_FROM));
  const scores = scored.map((line) => wanted.map((i) => (line[i]!.score >= TAKE_FROM ? line[i]!.score : 0)));
  const chosen = assignColumns(scores, wanted.length);
  const best = total(scores, chosen);

  const columns = new Map<string, ColumnMatch>();
  const unsure = new Map<string, (ColumnCandidate & { evidence: string })[]>();
  fields.forEach((field, row) => {
    const candidates = scored[row]!.map(({ score, evidence: why }, column) => ({
      column,
      confidence: score,
      evidence: why,
    }))
      .filter(({ confidence }) => confidence >= ASK_FROM)
      .sort((a, b) => b.confidence - a.confidence || a.column - b.column);
    const at = chosen[row];
    const column = at === undefined ? undefined : wanted[at];
    if (at !== undefined && column !== undefined && marginOf(scores, best, row, at) >= MARGIN) {
      const others = candidates.filter((other) => other.column !== column);
      columns.set(field.key, toMatch(field, read[column]!.whole, column, scored[row]![column]!, others));
    } else if (candidates.length > 0) unsure.set(field.key, candidates);
  });
  const taken = new Set([...columns.values()].map(({ column }) => column));
  for (const [key, candidates] of unsure) {
    const free = candidates.filter(({ column }) => !taken.has(column));
    if (free.length > 0) unsure.set(key, free);
    else unsure.delete(key);
  }
  return { columns, unsure, unused: headings.map((_, i) => i).filter((i) => !taken.has(i)) };
};
