import type { Curve } from '../core/curve';
import { failure, outcome, type Issue, type Outcome, type Problem } from '../core/issue';
import { readCurve } from '../core/text/curve';
import { readList } from '../core/text/list';
import { readQuantity } from '../core/text/quantity';
import { readRange } from '../core/text/range';
import { fromSi, toSi, UNITS } from '../core/units';
import {
  isCellError,
  type ArgSpec,
  type Block,
  type Cell,
  type ChoiceArg,
  type CurveArg,
  type ListArg,
  type QuantityArg,
} from '../functions/define';

export type Argument = Cell | Block | undefined;

const isBlock = (given: Argument): given is Block => Array.isArray(given);
const isBlank = (cell: Cell | undefined): cell is null | undefined | '' =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');
export const toBlock = (given: Argument): Block => (isBlock(given) ? given : [[given ?? null]]);

const shape = (block: Block): string => `${block.length} × ${block[0]?.length ?? 0} cells`;
const asIssue = (problem: Problem, arg: string): Issue => ({ ...problem, arg });

/** The one cell that an argument stands for; a larger range is an issue. */
const single = (given: Argument, arg: string): Outcome<Cell> => {
  if (!isBlock(given)) return outcome(given ?? null);
  if (given.length === 1 && given[0]?.length === 1) return outcome(given[0][0] ?? null);
  return failure({ code: 'wrong-size', arg, given: shape(given), rule: 'one cell' });
};

const within = (si: number, spec: QuantityArg | ListArg, arg: string): Issue | undefined => {
  const value = fromSi(si, spec.unit);
  const bounds = spec as QuantityArg;
  const out = (rule: string): Issue => ({
    code: 'out-of-range',
    arg,
    given: value,
    unit: UNITS[spec.unit].label || '1',
    rule,
  });
  if (spec.above !== undefined && !(value > spec.above)) return out(`> ${spec.above}`);
  if (spec.atLeast !== undefined && !(value >= spec.atLeast)) return out(`≥ ${spec.atLeast}`);
  if (bounds.below !== undefined && !(value < bounds.below)) return out(`< ${bounds.below}`);
  if (bounds.atMost !== undefined && !(value <= bounds.atMost)) return out(`≤ ${bounds.atMost}`);
  return undefined;
};

const readLevelText = (text: string, spec: QuantityArg, arg: string): Outcome<number> => {
  const reading = readQuantity(text, spec.unit);
  if (!reading.ok) return failure(asIssue(reading.problem, arg));
  const { si, statistic } = reading.value;
  if (!statistic || !spec.statistic || statistic === spec.statistic) return outcome(si);
  if (spec.statistic === 'peak' && statistic === 'peak-to-peak') return outcome(si / 2);
  return failure({ code: 'wrong-statistic', arg, given: text, expected: spec.statistic });
};

const readQuantityArg = (cell: Cell, spec: QuantityArg, arg: string): Outcome<number | undefined> => {
  let reading: Outcome<number>;
  if (isBlank(cell)) {
    if (spec.default !== undefined) return outcome(toSi(spec.default, spec.unit));
    return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
  } else if (isCellError(cell)) return failure({ code: 'cell-error', arg, given: cell.error });
  else if (typeof cell === 'number') reading = outcome(toSi(cell, spec.unit));
  else if (typeof cell === 'boolean')
    return failure({ code: 'not-a-number', arg, given: String(cell).toUpperCase(), unit: spec.unit });
  else reading = readLevelText(cell, spec, arg);
  if (!reading.ok) return reading;
  const issue = within(reading.value, spec, arg);
  return issue ? failure(issue) : reading;
};

const readCurveArg = (given: Argument, spec: CurveArg, arg: string): Outcome<Curve | undefined> => {
  const block = toBlock(given);
  if (block.length === 1 && block[0]?.length === 1) {
    const cell = block[0][0] ?? null;
    if (isBlank(cell)) return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
    if (isCellError(cell)) return failure({ code: 'cell-error', arg, given: cell.error });
    const reading = readCurve(String(cell), spec.x, spec.y);
    return reading.ok ? outcome(reading.value) : failure(asIssue(reading.problem, arg));
  }
  const columns = block[0]?.length ?? 0;
  if (columns !== 2 && block.length !== 2)
    return failure({ code: 'wrong-size', arg, given: shape(block), rule: 'two columns or two rows' });
  const pairs = (
    columns === 2 ? block.map((row) => [row[0], row[1]]) : (block[0] ?? []).map((x, i) => [x, block[1]?.[i]])
  ).filter(([x, y]) => !(isBlank(x) && isBlank(y)));
  return curveOfPairs(pairs, spec, arg);
};

const curveOfPairs = (
  pairs: readonly (readonly (Cell | undefined)[])[],
  spec: CurveArg,
  arg: string,
): Outcome<Curve | undefined> => {
  const x: number[] = [];
  const y: number[] = [];
  for (const [xCell = null, yCell = null] of pairs) {
    const left = readQuantityArg(xCell, { unit: spec.x, text: '' }, arg);
    if (!left.ok) return left;
    const right = readQuantityArg(yCell, { unit: spec.y, text: '' }, arg);
    if (!right.ok) return right;
    x.push(left.value as number);
    y.push(right.value as number);
  }
  if (x.length === 0) return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
  if (x.some((value, i) => i > 0 && value < (x[i - 1] as number)))
    return failure({ code: 'bad-curve', arg, given: x.join('; '), rule: 'rising values in the first column' });
  return outcome({ x, y });
};

const readListArg = (
  givens: readonly Argument[],
  spec: ListArg,
  arg: string,
): Outcome<readonly number[] | undefined> => {
  const values: number[] = [];
  let said = false;
  for (const cell of givens.flatMap((given) => toBlock(given).flat())) {
    if (isBlank(cell)) continue;
    said = true;
    if (isCellError(cell)) return failure({ code: 'cell-error', arg, given: cell.error });
    if (typeof cell === 'number') values.push(toSi(cell, spec.unit));
    else {
      const reading = readList(String(cell), spec.unit);
      if (!reading.ok) return failure(asIssue(reading.problem, arg));
      values.push(...reading.value);
    }
  }
  if (!said) return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
  for (const value of values) {
    const issue = within(value, spec, arg);
    if (issue) return failure(issue);
  }
  return outcome(values);
};

const readChoiceArg = (cell: Cell, spec: ChoiceArg, arg: string): Outcome<string | undefined> => {
  if (isBlank(cell)) {
    if (spec.default !== undefined) return outcome(spec.default);
    return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
  }
  if (isCellError(cell)) return failure({ code: 'cell-error', arg, given: cell.error });
  const wanted = String(cell).trim().toLowerCase();
  const choice = spec.choices.find((c) => c.toLowerCase() === wanted);
  return choice === undefined
    ? failure({ code: 'unknown-choice', arg, given: String(cell), choices: spec.choices })
    : outcome(choice);
};

/** Reads what the cells of one argument hold. `givens` has several entries only for a repeating argument. */
export const readArgument = (spec: ArgSpec, givens: readonly Argument[], arg: string): Outcome<unknown> => {
  if (spec.kind === 'list') return readListArg(givens, spec, arg);
  if (spec.kind === 'block')
    return outcome(spec.repeating ? givens.filter((g) => g !== undefined).map(toBlock) : toBlock(givens[0]));
  const given = givens[0];
  if (spec.kind === 'curve') return readCurveArg(given, spec, arg);
  const cell = single(given, arg);
  if (!cell.ok) return cell;
  if (spec.kind === 'cell') return cell;
  if (spec.kind === 'text') {
    if (isCellError(cell.value)) return failure({ code: 'cell-error', arg, given: cell.value.error });
    if (!isBlank(cell.value)) return outcome(String(cell.value));
    return spec.optional ? outcome(undefined) : failure({ code: 'missing', arg });
  }
  const reading =
    spec.kind === 'choice' ? readChoiceArg(cell.value, spec, arg) : readQuantityArg(cell.value, spec, arg);
  return spec.forgiving && !reading.ok ? outcome(undefined) : reading;
};

/**
 * A range text such as "-54..121 °C" in the first of two paired arguments fills both when the second is blank.
 * Returns undefined when the cell is not such a text.
 */
export const readRangePair = (
  [lowSpec, low, lowKey]: readonly [QuantityArg, Argument, string],
  [highSpec, high, highKey]: readonly [QuantityArg, Argument, string],
): Outcome<readonly [number, number]> | undefined => {
  const text = isBlock(low) ? low[0]?.[0] : low;
  const other = isBlock(high) ? high[0]?.[0] : high;
  if (typeof text !== 'string' || !isBlank(other)) return undefined;
  const reading = readRange(text, lowSpec.unit);
  if (!reading.ok) return reading.problem.code === 'ambiguous' ? failure(asIssue(reading.problem, lowKey)) : undefined;
  const ends = reading.value;
  const issue = within(ends.low, lowSpec, lowKey) ?? within(ends.high, highSpec, highKey);
  return issue ? failure(issue) : outcome([ends.low, ends.high]);
};
