import { callFunction } from '../../engine/call';
import { errorValueOf, type ErrorValue } from '../../engine/errors';
import { describeIssue } from '../../engine/messages';
import type { Argument } from '../../engine/arguments';
import { isCellError, type AnyFunction, type ArgSpec, type Block, type Cell } from '../../functions/define';
import { isRepeating } from '../../functions/describe';
import { TIED } from './facts';

/** The part of Excel's custom functions runtime that we use. */
export interface FunctionsRuntime {
  associate(id: string, body: (...given: unknown[]) => unknown): void;
  /** What a cell shows as that error, with words where Excel has room for them. */
  error(value: string, message?: string): object;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isErrorText = (value: unknown): value is string => typeof value === 'string' && value.startsWith('#');

/**
 * One cell as Excel hands it over: a plain value, null for a blank, an error as an object with its code, or a rich value
 * (a currency, a date, a card) that says its plain value as basicValue.
 */
export const cellFromExcel = (given: unknown): Cell => {
  if (given === null || given === undefined || given === '') return null;
  if (typeof given === 'number' || typeof given === 'string' || typeof given === 'boolean') return given;
  if (!isObject(given)) return { error: '#VALUE!' };
  if (isErrorText(given.code)) return { error: given.code };
  if (given.type === 'Empty' || given.basicType === 'Empty') return null;
  if (given.type === 'Error' || given.basicType === 'Error')
    return { error: isErrorText(given.basicValue) ? given.basicValue : '#VALUE!' };
  return isObject(given.basicValue) ? { error: '#VALUE!' } : cellFromExcel(given.basicValue);
};

const blockFromExcel = (given: unknown): Block =>
  Array.isArray(given)
    ? given.map((row: unknown) => (Array.isArray(row) ? row.map(cellFromExcel) : [cellFromExcel(row)]))
    : [[cellFromExcel(given)]];

const fromExcel = (given: unknown, spec: ArgSpec): Argument => {
  if (!Array.isArray(given)) return cellFromExcel(given);
  const block = blockFromExcel(given);
  const [first] = block;
  if (block.length !== 1 || first?.length !== 1) return block;
  // Older desktop versions hand over 0 for an argument left out, and 0 alone is never a curve.
  return spec.kind === 'curve' && first[0] === 0 ? null : (first[0] ?? null);
};

/** A repeating argument arrives as one array of ranges. */
const repeatedFromExcel = (given: unknown, spec: ArgSpec): Argument[] => {
  if (given === null || given === undefined) return [];
  const isListOfRanges =
    Array.isArray(given) && given.every((range) => Array.isArray(range) && range.every(Array.isArray));
  return isListOfRanges ? given.map((range) => fromExcel(range, spec)) : [fromExcel(given, spec)];
};

/** The arguments of a call. Excel appends an invocation object, which no function of ours needs. */
export const argumentsFromExcel = (fn: AnyFunction, given: readonly unknown[]): Argument[] =>
  (Object.values(fn.args) as ArgSpec[]).flatMap((spec, i) =>
    isRepeating(spec) ? repeatedFromExcel(given[i], spec) : [fromExcel(given[i], spec)],
  );

/** Excel shows a message with these two only. */
const SAYS_WHY = { '#VALUE!': true, '#N/A': true, '#NUM!': false } as const satisfies Record<ErrorValue, boolean>;

const toExcel = (runtime: FunctionsRuntime, cell: Cell): unknown => {
  // A null would show as 0.
  if (cell === null) return '';
  return isCellError(cell) ? runtime.error(cell.error) : cell;
};

/** The function as Excel calls it. */
export const excelFunction = (runtime: FunctionsRuntime, fn: AnyFunction) => {
  const spills = fn.result.kind === 'row' || fn.result.kind === 'block';
  return (...given: unknown[]): unknown => {
    const called = callFunction(fn, argumentsFromExcel(fn, given));
    if (!called.ok) {
      const value = errorValueOf(called.issue.code);
      throw runtime.error(value, SAYS_WHY[value] ? describeIssue(called.issue) : undefined);
    }
    const { value } = called;
    if (Array.isArray(value)) return value.map((row) => row.map((cell) => toExcel(runtime, cell)));
    return spills ? [[toExcel(runtime, value)]] : toExcel(runtime, value);
  };
};

/** Ties every id of functions.json to its function. Must run while the page loads, or cells show #VALUE!. */
export const associateFunctions = (runtime: FunctionsRuntime, functions: readonly AnyFunction[]): void => {
  for (const fn of functions) runtime.associate(fn.name, excelFunction(runtime, fn));
  Reflect.set(globalThis, TIED, functions.length);
};
