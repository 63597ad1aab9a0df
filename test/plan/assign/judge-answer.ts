import type { Answer } from '../../../src/plan/assign/formulate';
import type { AssignProblem } from '../../../src/plan/assign/problem';

/** Cost of an answer by its housings alone, and every rule that it breaks. Knows nothing of the model. */
export const judgeAnswer = ({ places, pools, slots, mixing, inputs }: AssignProblem, answer: Answer) => {
  const faults: string[] = [];
  let cost = 0;
  const served = new Set<number>();
  const inUse = pools.map(() => new Array<number>(slots).fill(0));
  const types = new Map<string, Set<number>>();
  const modes = Array.from({ length: slots }, () => new Map<string, number>());
  for (const { pool: p, slots: at, places: held } of answer.housings) {
    const pool = pools[p]!;
    cost += pool.pieceCost;
    if (held.length === 0 || held.length > pool.axes) faults.push(`${held.length} channels on ${pool.axes} axes`);
    if (held.length > 1) {
      const axes = new Set(held.map((i) => places[i]!.axis));
      const sites = new Set(held.map((i) => JSON.stringify([places[i]!.site, places[i]!.group, places[i]!.slots])));
      if (axes.size < held.length || axes.has(undefined)) faults.push('one axis twice');
      if (sites.size > 1 || held.some((i) => places[i]!.site === undefined)) faults.push('one housing at two sites');
    }
    for (let slot = at.first; slot <= at.last; slot++) inUse[p]![slot]! += 1;
    for (const i of held) {
      const place = places[i]!;
      if (served.has(i)) faults.push('served twice');
      served.add(i);
      if (place.slots.first !== at.first || place.slots.last !== at.last) faults.push('wrong run');
      const price = place.costs.get(p);
      if (price === undefined) faults.push('not admissible');
      cost += price ?? 0;
      if (place.group !== undefined) types.set(place.group, (types.get(place.group) ?? new Set()).add(pool.type));
      for (let slot = at.first; slot <= at.last; slot++)
        modes[slot]!.set(pool.mode ?? '', (modes[slot]!.get(pool.mode ?? '') ?? 0) + 1);
    }
  }
  inUse.forEach((perSlot, p) => perSlot.forEach((n) => n > pools[p]!.count && faults.push('more than in stock')));
  for (const group of types.values()) cost += mixing * (group.size - 1);
  for (const i of answer.unserved) {
    if (served.has(i)) faults.push('served and not');
    cost += places[i]!.unservedCost;
  }
  if (served.size + answer.unserved.length !== places.length) faults.push('forgotten');
  // Hall's condition: the channels of any set of modes need as many inputs that take one of them.
  if (inputs)
    for (const use of modes)
      for (let set = 1; set < 1 << use.size; set++) {
        const chosen = [...use.keys()].filter((_, k) => set & (1 << k));
        const need = chosen.reduce((sum, mode) => sum + use.get(mode)!, 0);
        const room = inputs.filter((input) => input.modes.some((mode) => chosen.includes(mode)));
        if (need > room.reduce((sum, { channels }) => sum + channels, 0)) faults.push('too few inputs');
      }
  return { cost, faults };
};
