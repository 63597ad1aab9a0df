import { fieldsOf } from './fields';
import { joinName } from './join-name';
import { channelField } from './item-fields';
import type { Channel } from './model';

/** By what two rows were taken for the same channel. */
export type MatchedBy = 'name' | 'content' | 'point' | 'place' | 'order';

export interface Pair {
  /** Places in the old and the new list. */
  readonly before: number;
  readonly after: number;
  readonly by: MatchedBy;
  /** The names differ: a proposal that a person must confirm. */
  readonly isRename: boolean;
}
export interface Matching {
  readonly pairs: readonly Pair[];
  readonly removed: readonly number[];
  readonly added: readonly number[];
}

/** Stands in for a name where a row has none. */
const NAMELESS = /^row \d+$/;
const folded = (text: string | undefined): string => joinName(text ?? '');
const nameOf = ({ id }: Channel): string | undefined =>
  NAMELESS.test(id) || folded(id) === '' ? undefined : folded(id);

const pointOf = ({ point, direction, group }: Channel): string | undefined =>
  folded(point) === '' ? undefined : [point, direction, group].map(folded).join('\n');
const placeOf = ({ location, direction, group }: Channel): string | undefined =>
  folded(location) === '' ? undefined : [location, direction, group].map(folded).join('\n');

/**
 * Finds each channel of the old list in the new one: by its name, then by point, direction and structure part, then by
 * place in words, direction and part; and rows without a name that stay over, in their order. What is there more than
 * once decides nothing, but for rows that are the same in every field, and for a name that both lists give equally often
 * to rows in the same order.
 */
export const matchChannels = (before: readonly Channel[], after: readonly Channel[]): Matching => {
  const matcher = new Matcher(before, after);
  matcher.by('name', nameAndPoint);
  matcher.by('name', nameOf);
  matcher.asMany('content', allOf);
  matcher.inOrder('name', nameOf);
  matcher.by('point', pointOf);
  matcher.by('place', placeOf);
  matcher.inOrder('order', (channel) => (nameOf(channel) === undefined ? '' : undefined));
  return matcher.matching;
};

const nameAndPoint = (channel: Channel): string | undefined => {
  const [name, point] = [nameOf(channel), pointOf(channel)];
  return name === undefined || point === undefined ? undefined : `${name}\n${point}`;
};

const CONTENT = fieldsOf('channels').map(({ key }) => key);
/** Everything that a row says; two such rows are one channel wherever they stand. */
const allOf = (channel: Channel): string => {
  const held = CONTENT.map((key) => (key === 'channel' ? (nameOf(channel) ?? null) : channelField(channel, key)));
  return JSON.stringify([held, channel.requirement.unread ?? []]);
};

type KeyOf = (channel: Channel) => string | undefined;

class Matcher {
  private readonly pairs: Pair[] = [];
  private readonly left: Set<number>;
  private readonly right: Set<number>;

  constructor(
    private readonly before: readonly Channel[],
    private readonly after: readonly Channel[],
  ) {
    this.left = new Set(before.keys());
    this.right = new Set(after.keys());
  }

  /** Joins what has a key that nothing else left over has, on either side. */
  by(by: MatchedBy, keyOf: KeyOf): void {
    this.joined(by, keyOf, ([before], [after], isOnly) => (isOnly ? [[before!, after!]] : []));
  }

  /** Joins equal numbers of rows with one key in the order of the lists. */
  inOrder(by: MatchedBy, keyOf: KeyOf): void {
    this.joined(by, keyOf, (before, after) =>
      before.length === after.length ? before.map((place, i) => [place, after[i]!] as const) : [],
    );
  }

  /** Joins rows with one key in their order until either side has no more of them. */
  asMany(by: MatchedBy, keyOf: KeyOf): void {
    this.joined(by, keyOf, (before, after) =>
      before.slice(0, after.length).map((place, i) => [place, after[i]!] as const),
    );
  }

  get matching(): Matching {
    const pairs = [...this.pairs].sort((a, b) => a.after - b.after);
    return { pairs, removed: [...this.left], added: [...this.right] };
  }

  private joined(
    by: MatchedBy,
    keyOf: KeyOf,
    choose: (
      before: readonly number[],
      after: readonly number[],
      isOnly: boolean,
    ) => readonly (readonly [number, number])[],
  ): void {
    const [olds, news] = [grouped(this.left, this.before, keyOf), grouped(this.right, this.after, keyOf)];
    for (const [key, before] of olds) {
      const after = news.get(key) ?? [];
      if (after.length === 0) continue;
      for (const [from, to] of choose(before, after, before.length === 1 && after.length === 1)) {
        const [old, fresh] = [nameOf(this.before[from]!), nameOf(this.after[to]!)];
        this.pairs.push({ before: from, after: to, by, isRename: old !== fresh });
        this.left.delete(from);
        this.right.delete(to);
      }
    }
  }
}

const grouped = (places: ReadonlySet<number>, channels: readonly Channel[], keyOf: KeyOf) => {
  const groups = new Map<string, number[]>();
  for (const place of places) {
    const key = keyOf(channels[place]!);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(place);
    else groups.set(key, [place]);
  }
  return groups;
};
