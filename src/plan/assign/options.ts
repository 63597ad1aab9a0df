import type { InputMode } from '../fields';
import type { Part } from '../choosing/candidate';
import type { Slots } from './problem';
import type { SolveOptions } from './solver';

/** One piece by its number. Days since 1899-12-30, as spreadsheets count. */
export interface Serial {
  /** Absent: one that has none. */
  readonly serial?: string;
  readonly calibrationDue?: number;
}

/** Input modules of one kind. Each of their channels takes any one of the modes. */
export interface InputModule {
  readonly name: string;
  readonly modes: readonly InputMode[];
  readonly channels: number;
  readonly count: number;
}

/**
 * What each thing costs. Only their proportions count. Common practice, no source: a channel in the WARN zone is as bad
 * as ten thin margins, and two to three types too many in a response group.
 */
export const WEIGHTS = {
  /** A channel whose verdict is WARN. */
  warn: 10,
  /** A channel whose verdict is INCOMPLETE. */
  incomplete: 15,
  /** A margin of 0 dB or less; nothing from 20 dB up, evenly between. */
  margin: 1,
  /** Each gram of sensor mounted. */
  mass: 0.02,
  /** Each housing mounted. */
  housing: 0.05,
  /** Each type beyond the first in a response group. */
  mixing: 4,
  /** Each piece whose calibration is not known to last to the end of the test, where that is allowed. */
  calibration: 5,
  /** A control channel left out, where as many channels must be left out anyway. */
  control: 50,
  /** A channel left out that was to keep its sensor, which happens only where stock does not even suffice for those. */
  kept: 500,
} as const;
export type Weights = Readonly<Record<keyof typeof WEIGHTS, number>>;

/** dB from which a margin costs nothing. */
export const AMPLE_MARGIN = 20;

export interface AssignOptions extends Pick<SolveOptions, 'signal' | 'timeLimit'> {
  /** Also types whose verdict is WARN; PASS is preferred. */
  readonly allowWarn?: boolean;
  /** Also types about which something is not known. */
  readonly allowIncomplete?: boolean;
  /** Fraction of each type kept back, rounded up, so at least one. */
  readonly spare?: number;
  /**
   * Channels that keep the sensor they name: by their names, by their places in the list from 0, or all that name one.
   * They come first where stock is short.
   */
  readonly pinned?: 'filled' | readonly (string | number)[];
  /** Structure parts are runs one after the other, and sensors move along; rows without one are in all runs. */
  readonly roving?: boolean;
  /** Runs by structure part, where they overlap. Parts that are not in here are in all runs. */
  readonly runs?: ReadonlyMap<string, Slots>;
  /** Last day of the test; absent: the last day of any run, and without one calibration is not looked at. */
  readonly testEnd?: number;
  /** What a piece without a date counts as; by default late where the last day was asked for, else fine. */
  readonly undated?: 'late' | 'fine';
  /** Pieces whose calibration is not known to last: left out (default), or at a cost. */
  readonly calibration?: 'exclude' | 'cost';
  /** Pieces by type name in place of the quantity; absent: those of the list. */
  readonly serials?: ReadonlyMap<string, readonly Serial[]>;
  /** Absent: inputs are not counted. */
  readonly inputs?: readonly InputModule[];
  readonly weights?: Partial<Weights>;
  /** Parts that may change although the row names them; those of pinned channels never do. */
  readonly free?: readonly Part[];
  /** False: what is missing is not worked out. */
  readonly shortage?: boolean;
  readonly onProgress?: (progress: AssignProgress) => void;
}

export interface AssignProgress {
  readonly step: 'judging' | 'solving' | 'shortage';
  readonly done?: number;
  readonly of?: number;
  /** Relative distance between the best so far and what is proven. */
  readonly gap?: number;
}
