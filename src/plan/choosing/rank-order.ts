import { VERDICTS } from '../../core/verdict';
import type { Candidate } from './rank';

export const CANDIDATE_ORDERS = ['margin', 'mass', 'stock'] as const;
export type CandidateOrder = (typeof CANDIDATE_ORDERS)[number];

type Compare = (a: Candidate, b: Candidate) => number;

const byVerdict: Compare = (a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict);
/** With several channels, the more of them pass the better; with one, its verdict has said it all. */
const byChannels: Compare = (a, b) =>
  VERDICTS.map((verdict) => b.counts[verdict] - a.counts[verdict]).find((difference) => difference !== 0) ?? 0;
/** Infinities compare as equal to themselves, which a difference would not. */
const descending = (a: number, b: number): number => (a === b ? 0 : a > b ? -1 : 1);
const byMargin: Compare = (a, b) => descending(a.margin ?? -Infinity, b.margin ?? -Infinity);
const byMass: Compare = (a, b) => -descending(a.mass ?? Infinity, b.mass ?? Infinity);
const byStock: Compare = (a, b) => descending(a.sensor.quantity ?? 0, b.sensor.quantity ?? 0);

const AFTER: Readonly<Record<CandidateOrder, readonly Compare[]>> = {
  margin: [byMargin, byMass, byStock],
  mass: [byMass, byMargin, byStock],
  stock: [byStock, byMargin, byMass],
};

/** The verdict always comes first, then how many channels have it; equal candidates keep the order of the list. */
export const inOrder = (candidates: readonly Candidate[], order: CandidateOrder): readonly Candidate[] =>
  [...candidates].sort((a, b) => {
    for (const compare of [byVerdict, byChannels, ...AFTER[order]]) {
      const difference = compare(a, b);
      if (difference !== 0) return difference;
    }
    return 0;
  });
