import type { Verdict } from '../../core/verdict';
import type { Combination } from '../choosing/candidate';
import type { InputMode } from '../fields';
import type { Channel, SensorType } from '../model';
import type { Weights } from './options';

/** A channel with what it got. */
export interface Assigned {
  /** Place in the list of channels. */
  readonly channel: number;
  readonly combination: Combination;
  readonly verdict: Verdict;
  readonly margin?: number;
  /** Number of the piece among those of its type, from 1; one piece may serve several channels or runs. */
  readonly piece: number;
  readonly serial?: string;
  /** Axis of the housing from 1, where it has several. */
  readonly axis?: number;
  readonly isPinned: boolean;
  readonly isOverdue: boolean;
}

export interface Unserved {
  readonly channel: number;
  /** `nothing fits`: no type in the list is admissible; `not listed`: it is to keep a type that no list has. */
  readonly why: 'nothing fits' | 'not listed' | 'stock';
  /** The type that comes closest, where nothing fits. */
  readonly nearest?: { readonly sensor: SensorType; readonly verdict: Verdict };
}

export interface TypeUse {
  readonly sensor: SensorType;
  /** Absent: no limit. */
  readonly quantity?: number;
  readonly kept: number;
  readonly overdue: number;
  /** Serial numbers of the overdue ones, as far as they have one. */
  readonly late: readonly string[];
  /** Pieces in use at the same time at most. */
  readonly used: number;
  readonly channels: number;
  /** Pieces neither used nor kept back nor overdue. */
  readonly left?: number;
}

/** Things of which more would help: pieces by type, input channels by mode. */
export type Missing =
  | { readonly kind: 'sensor'; readonly sensor: SensorType; readonly count: number }
  | { readonly kind: 'input'; readonly mode: InputMode; readonly count: number };

export interface ShortageList {
  /** The fewest that help, all of them together. */
  readonly fewest: readonly Missing[];
  /** What helps alone: any one of these. */
  readonly alone: readonly Missing[];
  readonly isProven: boolean;
}

/** One part of the cost: how often, at what weight, and what it comes to. */
export interface Term {
  readonly term: keyof Weights;
  readonly count: number;
  readonly cost: number;
}

export interface Assignment {
  readonly status: 'solved' | 'time limit' | 'cancelled' | 'failed';
  readonly channels: readonly Channel[];
  readonly assigned: readonly Assigned[];
  readonly unserved: readonly Unserved[];
  readonly uses: readonly TypeUse[];
  readonly shortage?: ShortageList;
  readonly terms: readonly Term[];
  readonly cost: number;
  /** Proven: nothing that serves as many costs less. */
  readonly isOptimal: boolean;
  /** Proven: no more channels can be served. */
  readonly isFewest: boolean;
  /** Relative distance between the cost and what is proven, where it is not optimal. */
  readonly gap?: number;
  readonly isUnlimited: boolean;
  /** Last day of the test, where calibration was looked at; counted as spreadsheets do. */
  readonly testEnd?: number;
  readonly runs: number;
}

/** A cancelled or failed run assigns nothing. */
export const nothingAssigned = (
  status: Assignment['status'],
  channels: readonly Channel[],
  isUnlimited = false,
): Assignment => ({
  status,
  channels,
  assigned: [],
  unserved: [],
  uses: [],
  terms: [],
  cost: 0,
  isOptimal: false,
  isFewest: false,
  isUnlimited,
  runs: 1,
});
