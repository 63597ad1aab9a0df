import fc from 'fast-check';
import { callFunction } from '../../src/engine/call';
import type { Argument } from '../../src/engine/arguments';
import { describeIssue } from '../../src/engine/messages';
import type { AnyFunction } from '../../src/functions/define';

export const number = (fn: AnyFunction, args: readonly Argument[]): number => {
  const called = callFunction(fn, args);
  if (!called.ok) throw new Error(`unexpected issue: ${describeIssue(called.issue)}`);
  return called.value as number;
};
export const block = (fn: AnyFunction, args: readonly Argument[]): readonly (readonly (number | string)[])[] => {
  const called = callFunction(fn, args);
  if (!called.ok) throw new Error(`unexpected issue: ${describeIssue(called.issue)}`);
  return called.value as (number | string)[][];
};
export const issueOf = (fn: AnyFunction, args: readonly Argument[]) => {
  const called = callFunction(fn, args);
  if (called.ok) throw new Error(`unexpected answer: ${JSON.stringify(called.value)}`);
  return called.issue;
};

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A forward and an inverse function of the same quantities: `there` answers what `back` was asked to keep. */
export interface Pair {
  readonly title: string;
  /** Ranges of random inputs, as typed in the documented units. */
  readonly inputs: readonly (readonly [number, number])[];
  readonly target: (inputs: readonly number[]) => number;
  readonly reached: (inputs: readonly number[]) => number;
}

export const describeInverses = (family: string, pairs: readonly Pair[]): void => {
  describe(`${family}: an inverse answers what keeps the limit exactly`, () => {
    it.each(pairs.map((pair) => [pair.title, pair] as const))('%s', (_, { inputs, target, reached }) => {
      fc.assert(
        fc.property(fc.tuple(...inputs.map(([min, max]) => between(min, max))), (given) => {
          const wanted = target(given);
          expect(Math.abs(reached(given) - wanted)).toBeLessThanOrEqual(1e-8 * Math.max(1e-9, Math.abs(wanted)));
        }),
        { numRuns: 50 },
      );
    });
  });
};
