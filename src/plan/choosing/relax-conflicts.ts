import { AIMS, type Aim } from './candidate';
import { aimsIn, bitOf, type Trial } from './relax-trials';

/**
 * Aims that no combination of the stock meets together, although it meets any smaller set of them. One aim alone: nothing
 * in the stock meets it.
 */
export interface Conflict {
  readonly aims: readonly Aim[];
  /** How many combinations there are, and how many of them meet each aim alone. */
  readonly combinations: number;
  readonly meeting: readonly number[];
}

/** All smallest sets of aims in conflict, the shortest first. Aims that are known of no combination stay out. */
export const conflictsIn = (trials: readonly Trial[]): readonly Conflict[] => {
  const never = unknownAims(trials).reduce((bits, aim) => bits | bitOf(aim), 0);
  // What is met together; a set that another one holds adds nothing.
  const met = [...new Set(trials.map(({ unmet }) => ~unmet & ALL))];
  const isMet = (aims: number): boolean => met.some((set) => (set & aims) === aims);
  const found: number[] = [];
  for (const aims of SETS_BY_SIZE)
    if ((aims & never) === 0 && !found.some((smaller) => (smaller & aims) === smaller) && !isMet(aims))
      found.push(aims);
  return found.map((bits) => ({
    aims: aimsIn(bits),
    combinations: trials.length,
    meeting: aimsIn(bits).map((aim) => trials.filter(({ unmet }) => (unmet & bitOf(aim)) === 0).length),
  }));
};

/** What cannot be judged whatever is chosen: the row itself does not say enough. */
export const unknownAims = (trials: readonly Trial[]): readonly Aim[] =>
  trials.length === 0 ? [] : AIMS.filter((aim) => trials.every(({ unknown }) => (unknown & bitOf(aim)) !== 0));

const ALL = (1 << AIMS.length) - 1;
const sizeOf = (bits: number): number => aimsIn(bits).length;
const SETS_BY_SIZE: readonly number[] = Array.from({ length: ALL }, (_, i) => i + 1).sort(
  (a, b) => sizeOf(a) - sizeOf(b) || a - b,
);
