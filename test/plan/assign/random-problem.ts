import type { AssignProblem, InputPool, Place, Pool } from '../../../src/plan/assign/problem';
import type { InputMode } from '../../../src/plan/fields';

/** Repeatable numbers from 0 to 1 (a linear congruential generator with the constants of Numerical Recipes). */
export const randomFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
};

export interface Shape {
  readonly triax: boolean;
  readonly groups: boolean;
  readonly runs: boolean;
  readonly inputs: boolean;
}

const AXES = ['x', 'y', 'z'];
const MODES: readonly InputMode[] = ['IEPE', 'charge', 'voltage'];

/** Small plans of every shape, often short of sensors. Costs are multiples of 1/4, so that sums are exact. */
export const randomProblem = (seed: number, { triax, groups, runs, inputs }: Shape): AssignProblem => {
  const random = randomFrom(seed * 7919 + 17);
  const upTo = (n: number) => Math.floor(random() * n);
  const slots = runs ? 1 + upTo(3) : 1;
  const pools = Array.from({ length: 1 + upTo(4) }, (_, p): Pool => ({
    type: random() < 0.2 && p > 0 ? p - 1 : p,
    count: upTo(4),
    axes: triax && random() < 0.5 ? 2 + upTo(2) : 1,
    pieceCost: upTo(3) / 4,
    mode: inputs ? MODES[upTo(3)] : undefined,
  }));
  const kinds = Array.from({ length: 1 + upTo(4) }, () => {
    const costs = new Map<number, number>();
    pools.forEach((_, p) => random() < 0.6 && costs.set(p, upTo(40) / 4));
    return costs;
  });
  const places = Array.from({ length: 1 + upTo(9) }, (): Place => {
    const first = upTo(slots);
    const isStatic = runs && random() < 0.2;
    const hasSite = triax && random() < 0.85;
    return {
      slots: isStatic ? { first: 0, last: slots - 1 } : { first, last: first },
      group: groups && random() < 0.8 ? `group ${upTo(2)}` : undefined,
      site: hasSite ? `point ${upTo(3)}` : undefined,
      axis: hasSite ? AXES[upTo(3)] : undefined,
      unservedCost: upTo(3),
      costs: kinds[upTo(kinds.length)]!,
    };
  });
  const rooms = Array.from({ length: 1 + upTo(3) }, (): InputPool => ({
    modes: MODES.filter(() => random() < 0.6),
    channels: upTo(6),
  }));
  return { places, pools, slots, mixing: groups ? 1 + upTo(12) / 4 : 0, inputs: inputs ? rooms : undefined };
};

/** As JSON for a program that knows nothing of ours. */
export const plainProblem = ({ places, pools, slots, mixing, inputs }: AssignProblem) => ({
  slots,
  mixing,
  inputs: inputs ?? null,
  pools,
  places: places.map(({ slots: { first, last }, group, site, axis, unservedCost, costs }) => ({
    first,
    last,
    group: group ?? null,
    site: site ?? null,
    axis: axis ?? null,
    unservedCost,
    costs: [...costs],
  })),
});
