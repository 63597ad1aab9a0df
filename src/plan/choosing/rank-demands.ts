import type { Limits } from '../limits';
import type { Channel, Requirement } from '../model';

/** Channels that ask the same and name the same parts. */
export interface Demand {
  /** The first of them. */
  readonly channel: Channel;
  /** Places in the list. */
  readonly channels: readonly number[];
}

/**
 * Equal requirements are answered once, in each structure part where limits differ by part. The sensor that a row names
 * does not count: it is what is being chosen.
 */
export const demandsOf = (channels: readonly Channel[], limits?: Limits): readonly Demand[] => {
  const isByPart = limits?.scoped?.some(({ group }) => group !== undefined) ?? false;
  const known = new Map<Requirement, string>();
  const demands = new Map<string, { channel: Channel; channels: number[] }>();
  const identities = new Map<object, number>();
  const identity = (part: object | undefined): number => {
    if (part === undefined) return 0;
    const before = identities.get(part);
    if (before !== undefined) return before;
    identities.set(part, identities.size + 1);
    return identities.size;
  };
  channels.forEach((channel, i) => {
    const { requirement, mount, cable, input, named, group } = channel;
    let asked = known.get(requirement);
    if (asked === undefined) known.set(requirement, (asked = JSON.stringify(sorted(requirement))));
    const parts = [mount, cable, input].map(identity);
    const key = JSON.stringify([asked, parts, named?.mount, named?.cable, named?.input, isByPart ? group : undefined]);
    const demand = demands.get(key);
    if (demand) demand.channels.push(i);
    else demands.set(key, { channel, channels: [i] });
  });
  return [...demands.values()];
};

const sorted = (requirement: Requirement) =>
  Object.entries(requirement)
    .filter(([, value]) => value !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
