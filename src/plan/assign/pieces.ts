import type { Housing } from './problem';

/** The piece that a housing has already: by its number in the pool. A kept one is its own, another only if it is free. */
export interface Wish {
  readonly piece: number;
  readonly isKept: boolean;
}

/**
 * Numbers the pieces of each pool from 0: a piece that a run has freed is used again in a later one. First those that
 * are kept, then those that rows have already, then the lowest free number in
 * the order of the places, housings of many runs before those of one.
 * `sizes` is how many pieces a pool has: numbers from there on stand for none.
 */
export const numberPieces = (
  housings: readonly Housing[],
  wishes: readonly (Wish | undefined)[] = [],
  sizes: readonly number[] = [],
): readonly number[] => {
  const numbers = numbered(housings, wishes);
  const fits = housings.every(({ pool }, h) => numbers[h]! < (sizes[pool] ?? Infinity));
  // A piece that somebody would rather have may be the one that a housing of many runs needs.
  return fits ? numbers : numbered(housings, wishes.map((wish) => (wish?.isKept ? wish : undefined))); // prettier-ignore
};

const numbered = (housings: readonly Housing[], wishes: readonly (Wish | undefined)[]): readonly number[] => {
  const numbers = new Array<number>(housings.length);
  const busy = new Map<number, Housing[][]>();
  const held = (h: number, piece: number): readonly Housing[] => busy.get(housings[h]!.pool)?.[piece] ?? [];
  const isFree = (h: number, piece: number): boolean => {
    const { first, last } = housings[h]!.slots;
    return held(h, piece).every(({ slots }) => slots.last < first || last < slots.first);
  };
  const give = (h: number, piece: number): void => {
    const pool = busy.get(housings[h]!.pool) ?? [];
    (pool[piece] ??= []).push(housings[h]!);
    busy.set(housings[h]!.pool, pool);
    numbers[h] = piece;
  };
  const rest: number[] = [];
  housings.forEach((_, h) => (wishes[h]?.isKept ? give(h, wishes[h].piece) : rest.push(h)));
  const open = rest.filter((h) => {
    const wish = wishes[h];
    if (!wish || !isFree(h, wish.piece)) return true;
    give(h, wish.piece);
    return false;
  });
  const span = (h: number): number => housings[h]!.slots.last - housings[h]!.slots.first;
  const foremost = (h: number): number => housings[h]!.places.reduce((a, b) => Math.min(a, b), Infinity);
  open.sort(
    (a, b) => span(b) - span(a) || housings[a]!.slots.first - housings[b]!.slots.first || foremost(a) - foremost(b),
  );
  for (const h of open) {
    let piece = 0;
    while (!isFree(h, piece)) piece += 1;
    give(h, piece);
  }
  return numbers;
};
