import type { InputMode } from '../fields';

/** Runs that a sensor is tied up for, first and last, counted from 0. */
export interface Slots {
  readonly first: number;
  readonly last: number;
}

/** One channel that asks for a sensor. */
export interface Place {
  readonly slots: Slots;
  /** Channels of one response group; several types in one group cost. Absent: nothing to keep alike. */
  readonly group?: string;
  /** Channels with the same site are at one point in one run: a sensor with several axes may serve them together. */
  readonly site?: string;
  /** Which of the orthogonal axes of its site. */
  readonly axis?: string;
  /** Cost when it stays without a sensor; only decides which of equally many are left out. */
  readonly unservedCost: number;
  /** True: no other place is served in its stead. */
  readonly isKept?: boolean;
  /** Cost by pool; a pool that is not in here is not admissible. */
  readonly costs: ReadonlyMap<number, number>;
}

/** Sensors that are alike in everything that counts: one type, one state of calibration. */
export interface Pool {
  /** Which type it belongs to; only equality counts. */
  readonly type: number;
  /** Pieces that may be used at once; infinite when there is no limit. */
  readonly count: number;
  readonly axes: number;
  /** Cost of each piece in a run, whatever number of channels it serves. */
  readonly pieceCost: number;
  /** Kind of input that each channel of it takes up. */
  readonly mode?: InputMode;
}

/** Input channels that take any one of these modes each. */
export interface InputPool {
  readonly modes: readonly InputMode[];
  readonly channels: number;
}

/**
 * Who gets what. A piece serves one channel, or up to as many channels of one site as it has axes, each on another axis.
 * At one site stands at most one housing with several axes that serves more than one of its channels.
 */
export interface AssignProblem {
  readonly places: readonly Place[];
  readonly pools: readonly Pool[];
  /** How many runs there are. */
  readonly slots: number;
  /** Absent: inputs are not counted. */
  readonly inputs?: readonly InputPool[];
  /** Cost of every type beyond the first in a group. */
  readonly mixing: number;
}

/** One piece in use. */
export interface Housing {
  readonly pool: number;
  readonly slots: Slots;
  /** Places it serves; more than one only with several axes. */
  readonly places: readonly number[];
}
