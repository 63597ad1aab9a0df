import { callFunction } from '../engine/call';
import { describeIssue } from '../engine/messages';
import type { AnyFunction, Block, Cell, Example } from '../functions/define';
import { exampleFormula, resultUnitOf } from '../functions/describe';
import { sourceText } from '../functions/describe';

/** One worked example of a worksheet function, with what the program answers to it. */
export interface WorkedExample {
  readonly family: string;
  readonly name: string;
  readonly args: Example['args'];
  readonly value: Cell | Block;
  readonly expected: number | string | readonly (readonly (number | string)[])[];
  /** Largest relative difference that counts as agreement; absolute where zero is expected. */
  readonly room: number;
  readonly unit: string;
  readonly from: string;
  readonly source: string;
}

/** Last digits that sums in another order may change. */
export const LEAST_ROOM = 1e-12;

const worked = (namespace: string, fn: AnyFunction, example: Example): WorkedExample => {
  const name = `${namespace}.${fn.name}`;
  const called = callFunction(fn, example.args);
  if (!called.ok) throw new Error(`${exampleFormula(name, example)} has no value: ${describeIssue(called.issue)}`);
  return {
    family: fn.family,
    name,
    args: example.args,
    value: called.value,
    expected: example.result,
    room: Math.max(example.within ?? 0, LEAST_ROOM),
    unit: resultUnitOf(fn),
    from: example.from,
    source: sourceText(fn.source),
  };
};

/** Every example of every function, in the order of the catalogue. */
export const workedExamples = (functions: readonly AnyFunction[], namespace: string): readonly WorkedExample[] =>
  functions.flatMap((fn) => fn.examples.map((example) => worked(namespace, fn, example)));

export type Agreement = 'agree' | 'differ' | 'not calculated';

/** The same rule as `agreementFormula`, for the values that are stored in the file. */
export const agreementOf = (value: Cell, expected: number | string, room: number): Agreement => {
  if (typeof value === 'object' && value !== null) return 'not calculated';
  if (typeof expected === 'string') return String(value ?? '') === expected ? 'agree' : 'differ';
  if (typeof value !== 'number') return 'differ';
  return Math.abs(value - expected) <= room * (expected === 0 ? 1 : Math.abs(expected)) ? 'agree' : 'differ';
};

/** Ordinary functions of any spreadsheet, so that the comparison does not rest on the add-in that it judges. */
export const agreementFormula = (value: string, expected: string, room: string): string =>
  `=IF(ISERROR(${value}),"not calculated",IF(ISNUMBER(${expected}),IF(ISNUMBER(${value}),` +
  `IF(ABS(${value}-${expected})<=${room}*IF(${expected}=0,1,ABS(${expected})),"agree","differ"),"differ"),` +
  `IF(EXACT(${value},${expected}),"agree","differ")))`;

export const isBlock = (value: Cell | Block): value is Block => Array.isArray(value);

/** A stored empty text is taken for no value by some readers, so that nothing is said by words. */
const NOTHING = '(nothing)';
export const said = <T>(value: T): T | string => (value === '' ? NOTHING : value);
export const saying = (formula: string, expected: unknown): string =>
  expected === '' ? `=IF(${formula.slice(1)}="","${NOTHING}",${formula.slice(1)})` : formula;
