import type { Housing } from './problem';

/** Numbers the pieces of each pool from 0: a piece that a run has freed is used again in a later one. */
export const numberPieces = (housings: readonly Housing[]): readonly number[] => {
  const order = housings.map((_, i) => i).sort((a, b) => housings[a]!.slots.first - housings[b]!.slots.first || a - b);
  const busyUntil = new Map<number, number[]>();
  const numbers = new Array<number>(housings.length);
  for (const i of order) {
    const { pool, slots } = housings[i]!;
    const busy = busyUntil.get(pool) ?? [];
    busyUntil.set(pool, busy);
    const free = busy.findIndex((last) => last < slots.first);
    const piece = free < 0 ? busy.length : free;
    busy[piece] = slots.last;
    numbers[i] = piece;
  }
  return numbers;
};
