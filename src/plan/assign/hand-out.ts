import type { Housing } from './problem';
import type { SiteClass } from './sites';

/** How many of each pool go to the sites of a class. */
export interface ClassFlow {
  readonly sites: SiteClass;
  /** Per member: channels by pool, served by a housing each. */
  readonly single: readonly ReadonlyMap<number, number>[];
  /** Housings by pool that may serve several members of a site, and what they serve per member. */
  readonly shared: ReadonlyMap<number, { readonly pieces: number; readonly served: readonly number[] }>;
}

/** Turns counts into single pieces: the sites of a class are alike, so any of them may take any share. */
export const handOut = (
  parts: readonly ClassFlow[],
): { readonly housings: readonly Housing[]; readonly unserved: readonly number[] } => {
  const housings: Housing[] = [];
  const unserved: number[] = [];
  for (const { sites, single, shared } of parts) {
    const { members, slots, count } = sites;
    const isServed = members.map(() => new Array<boolean>(count).fill(false));
    let next = 0;
    for (const [pool, { pieces, served }] of shared) {
      const held = Array.from({ length: pieces }, (): number[] => []);
      // Going round spreads the members evenly: no housing gets two on one axis, nor more than it has axes.
      let turn = 0;
      members.forEach((places, d) => {
        for (let n = 0; n < served[d]!; n++, turn++) {
          const piece = turn % pieces;
          const site = count === 1 ? 0 : next + piece;
          held[piece]!.push(places[site]!);
          isServed[d]![site] = true;
        }
      });
      for (const places of held) if (places.length > 0) housings.push({ pool, slots, places });
      next += pieces;
    }
    members.forEach((places, d) => {
      const rest = [...places.keys()].filter((site) => !isServed[d]![site]);
      for (const [pool, n] of single[d]!)
        for (const site of rest.splice(0, n)) housings.push({ pool, slots, places: [places[site]!] });
      unserved.push(...rest.map((site) => places[site]!));
    });
  }
  return { housings, unserved: unserved.sort((a, b) => a - b) };
};
