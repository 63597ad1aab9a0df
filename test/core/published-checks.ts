import { readFileSync } from 'node:fs';
import { join } from 'node:path';

// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Inputs = any;
export interface Check {
  readonly id: string;
  readonly quantity: string;
  readonly function_family: string;
  readonly inputs: Inputs;
  readonly expected: number;
  readonly unit: string;
  readonly tolerance: { readonly relative?: number; readonly absolute?: number; readonly factor?: number };
  readonly source: { readonly kind: string; readonly cite: string };
}
/** From a check's inputs to the number in the check's unit. */
export type Calls = Readonly<Record<string, (inputs: Inputs) => number>>;

const ALL: readonly Check[] = JSON.parse(readFileSync(join(__dirname, '../fixtures/checks.json'), 'utf8'));
export const checksOf = (family: string): readonly Check[] => ALL.filter((check) => check.function_family === family);

export const isWithin = (actual: number, { expected, tolerance }: Pick<Check, 'expected' | 'tolerance'>): boolean => {
  const { relative, absolute, factor } = tolerance;
  if (factor !== undefined) {
    const share = Math.abs(actual / expected);
    return share <= factor && share >= 1 / factor;
  }
  return Math.abs(actual - expected) <= Math.max((relative ?? 0) * Math.abs(expected), absolute ?? 0);
};

/** One test per check of a family. A quantity that nothing calculates fails. */
export const describeChecks = (family: string, calls: Calls): void => {
  const checks = checksOf(family);
  describe(`${family}, against published values and independent computations`, () => {
    it.each(
      checks.map(
        (check) => [`${check.id} ${check.quantity} (${check.source.kind}: ${check.source.cite})`, check] as const,
      ),
    )('%s', (_, check) => {
      const call = calls[check.quantity];
      if (!call) throw new Error(`nothing calculates “${check.quantity}”`);
      const actual = call(check.inputs);
      if (!isWithin(actual, check)) throw new Error(`${actual} ${check.unit}, expected ${check.expected}`);
    });

    it('covers every check of the family, and calculates nothing that is not checked', () => {
      expect(checks.length).toBeGreaterThan(0);
      expect(Object.keys(calls).sort()).toEqual([...new Set(checks.map((check) => check.quantity))].sort());
    });
  });
};
