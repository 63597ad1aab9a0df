import type { AssignProblem, Place, Pool } from '../../../src/plan/assign/problem';
import type { InputMode } from '../../../src/plan/fields';
import { randomFrom } from './random-problem';

const MODES: readonly InputMode[] = ['IEPE', 'IEPE', 'charge', 'voltage'];
const PART = 40;

/** A plan of full size: structure parts of 40 channels with four kinds of requirement each, three directions per point. */
export const largeProblem = (
  channels: number,
  types: number,
  { triax = false, mixing = 0, kinds = 40 }: { triax?: boolean; mixing?: number; kinds?: number } = {},
): AssignProblem => {
  const random = randomFrom(20261);
  const pools = Array.from({ length: types }, (_, p): Pool => ({
    type: p,
    count: 3 + Math.floor(random() * 10),
    axes: triax && p % 4 === 0 ? 3 : 1,
    pieceCost: Math.round(50 + random() * 200) / 1000,
    mode: MODES[p % 4],
  }));
  const costs = Array.from({ length: kinds }, () => {
    const own = new Map<number, number>();
    for (let p = 0; p < types; p++)
      if (random() < 0.4) own.set(p, Math.round(random() * 100) / 100 + (random() < 0.3 ? 10 : 0));
    return own;
  });
  const places = Array.from({ length: channels }, (_, i): Place => {
    const part = Math.floor(i / PART);
    const point = Math.floor(i / 3);
    return {
      slots: { first: 0, last: 0 },
      group: `part ${part}`,
      site: triax ? `point ${point}` : undefined,
      axis: 'xyz'[i % 3],
      unservedCost: 0,
      costs: costs[kinds >= channels ? i : (part * 3 + ((triax ? point : i) % 4)) % kinds]!,
    };
  });
  const inputs = [
    { modes: ['IEPE' as const], channels: 0.7 * channels },
    { modes: ['charge' as const], channels: 0.3 * channels },
    { modes: ['voltage' as const], channels: 0.3 * channels },
  ];
  return { places, pools, slots: 1, mixing, inputs };
};
