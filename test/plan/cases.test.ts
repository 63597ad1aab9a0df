import fixture from '../fixtures/cases.json';
import { checkChannels } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';
import { jsonResult } from '../../src/plan/json-result';

/** Relative; the fixture holds full double precision, the span edges were solved numerically on both sides. */
const TOLERANCE = 1e-6;

const differences = (expected: unknown, given: unknown, path: string): string[] => {
  if (typeof expected === 'number' && typeof given === 'number')
    return Math.abs(given - expected) <= TOLERANCE * Math.abs(expected) ? [] : [`${path}: ${given}, not ${expected}`];
  if (Array.isArray(expected) && Array.isArray(given) && expected.length === given.length)
    return expected.flatMap((entry, i) => differences(entry, given[i], `${path}[${i}]`));
  if (isRecord(expected) && isRecord(given)) {
    const keys = new Set([...Object.keys(expected), ...Object.keys(given)]);
    return [...keys].flatMap((key) => differences(expected[key], given[key], `${path}.${key}`));
  }
  return Object.is(expected, given) ? [] : [`${path}: ${JSON.stringify(given)}, not ${JSON.stringify(expected)}`];
};
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const { plan, misreads } = readJsonPlan({ ...fixture, panel_sums: undefined });
const checks = checkChannels(plan.channels, plan.limits);

describe('twelve worked channels, computed independently with Python/scipy', () => {
  it('are read without a complaint', () => {
    expect(misreads).toEqual([]);
    expect(checks).toHaveLength(12);
  });

  it.each(fixture.cases.map((worked, i) => [worked.id, worked, i] as const))(
    '%s has every number and verdict of the independent computation',
    (_id, worked, i) => {
      const given = { ...jsonResult(checks[i]!, plan.limits), provenance: worked.expected.provenance };
      expect(differences(worked.expected, given, worked.id)).toEqual([]);
    },
  );
});
