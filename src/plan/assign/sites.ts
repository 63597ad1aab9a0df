import type { AssignProblem, Place, Slots } from './problem';

/** Sites that ask the same, answered together: `members[d]` lists the d-th channel of each of them. */
export interface SiteClass {
  readonly slots: Slots;
  readonly group?: string;
  readonly members: readonly (readonly number[])[];
  /** Members on one axis have one number. */
  readonly axes: readonly number[];
  /** How many sites. Sites with two channels on one axis stand alone. */
  readonly count: number;
}

/** Two places with equal keys may stand for each other. Groups only count where mixing costs. */
const placeKeys = ({ places, mixing }: AssignProblem): readonly string[] => {
  const costKeys = new Map<object, string>();
  return places.map(({ slots, group, unservedCost, isKept, costs }) => {
    let key = costKeys.get(costs);
    if (key === undefined) {
      key = [...costs].sort(([a], [b]) => a - b).join(';');
      costKeys.set(costs, key);
    }
    return [slots.first, slots.last, mixing > 0 ? (group ?? '') : '', unservedCost, isKept === true, key].join('|');
  });
};

/** Places by site; a place without site or axis is alone. */
const sitesOf = (places: readonly Place[]): number[][] => {
  const sites: number[][] = [];
  const byName = new Map<string, number[]>();
  places.forEach(({ site, axis, slots, group }, i) => {
    if (site === undefined || axis === undefined) return void sites.push([i]);
    const name = [slots.first, slots.last, group ?? '', site].join('|');
    const known = byName.get(name);
    if (known) return void known.push(i);
    const fresh = [i];
    byName.set(name, fresh);
    sites.push(fresh);
  });
  return sites;
};

/** True where one housing could serve two channels of the site; elsewhere its channels need no telling together. */
const canShare = ({ places, pools }: AssignProblem, site: readonly number[]): boolean =>
  site.length > 1 &&
  pools.some(
    ({ axes }, pool) =>
      axes > 1 && new Set(site.filter((i) => places[i]!.costs.has(pool)).map((i) => places[i]!.axis)).size > 1,
  );

export const siteClasses = (problem: AssignProblem): readonly SiteClass[] => {
  const { places } = problem;
  const keys = placeKeys(problem);
  const classes = new Map<string, { slots: Slots; group?: string; members: number[][]; axes: number[]; count: number }>(); // prettier-ignore
  const sites = sitesOf(places).flatMap((site) => (canShare(problem, site) ? [site] : site.map((i) => [i])));
  sites.forEach((site, s) => {
    const ordered = [...site].sort((a, b) => (keys[a]! < keys[b]! ? -1 : keys[a]! > keys[b]! ? 1 : a - b));
    const axisNames = ordered.map((i) => places[i]!.axis);
    const hasRepeats = site.length > 1 && new Set(axisNames).size < site.length;
    if (hasRepeats) ordered.sort((a, b) => (places[a]!.axis! < places[b]!.axis! ? -1 : 1));
    const names = ordered.map((i) => places[i]!.axis);
    const key = hasRepeats ? `alone ${s}` : ordered.map((i) => keys[i]).join('\n');
    const { slots, group } = places[site[0]!]!;
    let found = classes.get(key);
    if (!found) {
      const axes = names.map((name, d) => (hasRepeats ? names.indexOf(name) : d));
      classes.set(key, (found = { slots, group, members: ordered.map(() => []), axes, count: 0 }));
    }
    ordered.forEach((place, d) => found.members[d]!.push(place));
    found.count += 1;
  });
  return [...classes.values()];
};
