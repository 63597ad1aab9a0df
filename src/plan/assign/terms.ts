import type { SensorType } from '../model';
import { fromSi } from '../../core/units';
import type { Assigned, Term } from './assignment';
import type { Weights } from './options';
import { thinness } from './plan-problem';
import type { AssignProblem } from './problem';
import type { Answer } from './formulate';

/** The parts that the cost is made of; those that do not occur are left out. */
export const costTerms = (
  { places, pools }: AssignProblem,
  { housings, unserved }: Answer,
  assigned: readonly Assigned[],
  sensors: readonly SensorType[],
  isOverdue: (pool: number) => boolean,
  weights: Weights,
): readonly Term[] => {
  const groups = new Map<string, Set<number>>();
  let grams = 0;
  let late = 0;
  for (const { pool, places: held } of housings) {
    const { type } = pools[pool]!;
    grams += fromSi(sensors[type]!.mass ?? 0, 'gram');
    if (isOverdue(pool)) late += 1;
    for (const i of held) {
      const { group } = places[i]!;
      if (group !== undefined) groups.set(group, (groups.get(group) ?? new Set()).add(type));
    }
  }
  const mixed = [...groups.values()].reduce((sum, types) => sum + types.size - 1, 0);
  const counts: readonly (readonly [Term['term'], number])[] = [
    ['warn', assigned.filter(({ verdict }) => verdict === 'WARN').length],
    ['incomplete', assigned.filter(({ verdict }) => verdict === 'INCOMPLETE').length],
    ['calibration', late],
    ['mixing', mixed],
    ['margin', assigned.reduce((sum, { margin }) => sum + thinness(margin), 0)],
    ['mass', grams],
    ['housing', housings.length],
    ['control', unserved.filter((i) => places[i]!.unservedCost > (places[i]!.isKept ? weights.kept : 0)).length],
    ['kept', unserved.filter((i) => places[i]!.isKept).length],
  ];
  return counts.flatMap(([term, count]) => (count > 0 ? [{ term, count, cost: count * weights[term] }] : []));
};
