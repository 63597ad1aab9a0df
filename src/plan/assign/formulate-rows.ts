import { INPUT_MODES, type InputMode } from '../fields';
import type { ModelBuilder } from './model-builder';
import type { AssignProblem, Slots } from './problem';
import type { SiteClass } from './sites';

export type Entry = readonly [row: number, value: number];

const range = ({ first, last }: Slots): number[] => Array.from({ length: last - first + 1 }, (_, i) => first + i);

/** One row per pool and run: no more pieces at once than there are. */
export const stockRows = ({ pools, slots }: AssignProblem, build: ModelBuilder) => {
  const rows = pools.map(({ count }) =>
    count === Infinity ? [] : Array.from({ length: slots }, () => build.row(-Infinity, count)),
  );
  return {
    during: (pool: number, at: Slots): readonly number[] =>
      rows[pool]!.length === 0 ? [] : range(at).map((slot) => rows[pool]![slot]!),
    all: (pool: number): readonly number[] => rows[pool]!,
  };
};

/** One row per mode and run; inputs with several modes lend their channels to the modes. */
export const inputRows = ({ inputs, slots }: AssignProblem, build: ModelBuilder) => {
  const rows = new Map<InputMode, readonly number[]>();
  const perSlot = <T>(make: (slot: number) => T): T[] => Array.from({ length: slots }, (_, slot) => make(slot));
  if (inputs) {
    for (const mode of INPUT_MODES) {
      const own = inputs.filter(({ modes }) => modes.length === 1 && modes[0] === mode);
      const channels = own.reduce((sum, input) => sum + input.channels, 0);
      rows.set(
        mode,
        perSlot(() => build.row(-Infinity, channels)),
      );
    }
    for (const { modes, channels } of inputs)
      if (modes.length > 1)
        perSlot((slot) => {
          const shared = build.row(-Infinity, channels);
          for (const mode of new Set(modes)) {
            const entries: Entry[] = [
              [shared, 1],
              [rows.get(mode)![slot]!, -1],
            ];
            // Given whole uses of the modes this is a transport problem, which has whole solutions by itself.
            build.column(0, channels, false, entries);
          }
        });
  }
  return {
    during: (mode: InputMode | undefined, at: Slots): readonly number[] => {
      const own = mode && rows.get(mode);
      return own ? range(at).map((slot) => own[slot]!) : [];
    },
    all: (mode: InputMode): readonly number[] => rows.get(mode) ?? [],
  };
};

/**
 * A column per group and type says whether the type is used there; the first type of a group is free. One row per group
 * and pool links it to all pieces there together: where stock is scarce that bounds the cost far better than a row per
 * kind of channel, of which there would be many more.
 */
export const mixingRows = (
  { mixing, pools, slots }: AssignProblem,
  classes: readonly SiteClass[],
  build: ModelBuilder,
) => {
  const groups = new Map<string, number>();
  for (const { group } of classes) if (group !== undefined && !groups.has(group)) groups.set(group, build.row(0, Infinity)); // prettier-ignore
  const uses = new Map<string, Entry[]>();
  const links = new Map<string, Link>();
  return {
    /** Entries of a column of up to `count` pieces of a pool in a group. */
    link: (group: string | undefined, pool: number, count: number): readonly Entry[] => {
      if (group === undefined) return [];
      const key = `${pools[pool]!.type}\n${group}`;
      const of = uses.get(key) ?? [[groups.get(group)!, 1]];
      uses.set(key, of);
      const at = `${pool}\n${group}`;
      let link = links.get(at);
      if (!link) links.set(at, (link = { row: build.row(-Infinity, 0), of, pool, most: 0 }));
      link.most += count;
      return [[link.row, 1]];
    },
    /** Adds the columns once all links are known. */
    close: (): void => {
      for (const { row, of, pool, most } of links.values()) of.push([row, -Math.min(most, slots * pools[pool]!.count)]);
      for (const entries of uses.values()) build.column(mixing, 1, true, entries);
      // Takes the first type's cost off, but only where the group has a type at all.
      for (const row of groups.values()) build.column(-mixing, 1, false, [[row, -1]]);
    },
  };
};

interface Link {
  readonly row: number;
  readonly pool: number;
  /** Entries of the column that it belongs to. */
  readonly of: Entry[];
  /** Pieces that its columns can come to. */
  most: number;
}

export type StockRows = ReturnType<typeof stockRows>;
export type InputRows = ReturnType<typeof inputRows>;
export type MixingRows = ReturnType<typeof mixingRows>;
