import type { UnitId } from '../../core/units';
import type { Verdict } from '../../core/verdict';
import type { OutputMode } from '../fields';
import type { Limits } from '../limits';
import type { MissingField } from '../missing';

/** Every demand a channel can make on its sensor, in the order in which they are shown. Frozen: others keep them by name. */
export const BOUND_KEYS = [
  'sensor mass',
  'full scale',
  'noise',
  'white noise density',
  'dynamic range',
  'mounted resonance',
  'sensor resonance',
  'low corner',
  'low limit',
  'thermal coefficient',
  'thermal deviation',
  'corrected deviation',
  'lowest rated temperature',
  'highest rated temperature',
  'sensitivity over input noise',
  'sensitivity in input range',
  'sensitivity in bias swing',
  'sensitivity in amplifier output',
  'sensitivity in cable drive',
  'output',
  'axes',
] as const;
export type BoundKey = (typeof BOUND_KEYS)[number];

/** The plan's limit behind a bound. */
export interface BoundLimit {
  readonly name: 'signalToNoise' | 'headroom' | 'massRatio' | 'thermalTolerance' | 'spanTolerance';
  /** dB, ratio or fraction, as the limits have it. */
  readonly pass: number;
  readonly warn?: number;
  readonly origin: string;
}

/** How far an actual sensor is inside: a factor (above 1), dB or K (above 0). Negative or below 1: outside. */
export interface Slack {
  readonly kind: 'factor' | 'dB' | 'K';
  readonly amount: number;
}

interface BoundBase {
  readonly key: BoundKey;
  /** The fields that make this demand. */
  readonly causes: readonly MissingField[];
  readonly limit?: BoundLimit;
  /** Name of the input it holds for, where it depends on one. */
  readonly input?: string;
  /** Fields without which there is no bound; empty when it is known. */
  readonly missing: readonly MissingField[];
  /** Fields that would make the bound stricter, left out because they are not known. */
  readonly without: readonly MissingField[];
  /** Fields of the actual sensor (or its chain) without which it cannot be put beside the bound. */
  readonly valueMissing: readonly MissingField[];
  /** Of the actual sensor; absent when the channel names none. */
  readonly verdict?: Verdict;
}

export interface NumberBound extends BoundBase {
  readonly kind: 'number';
  /** In which it is shown; the numbers are SI (°C, dB, fractions of 1). */
  readonly unit: UnitId;
  readonly direction: 'atMost' | 'atLeast';
  /** Bound for PASS; absent while something is missing. Infinite on the far side when nothing suffices. */
  readonly pass?: number;
  /** Bound for WARN where the limits have two levels. */
  readonly warn?: number;
  /** kg: for which sensor mass it is stated, and whether that is the actual sensor's or the heaviest allowed. */
  readonly atMass?: { readonly mass: number; readonly of: 'sensor' | 'heaviest allowed' };
  /** Loss (fraction) at which a low limit is stated. */
  readonly atLoss?: number;
  /** Of the actual sensor. */
  readonly value?: number;
  readonly slack?: Slack;
}

export interface OutputBound extends BoundBase {
  readonly kind: 'output';
  /** Output modes that one of the inputs takes, with the inputs that take them. */
  readonly admissible?: readonly { readonly output: OutputMode; readonly inputs: readonly string[] }[];
  readonly value?: OutputMode;
}

export type EnvelopeBound = NumberBound | OutputBound;

/** What a sensor must satisfy at one channel. A bound that is not known is present and says what it lacks. */
export interface Envelope {
  readonly channel: string;
  readonly bounds: readonly EnvelopeBound[];
  readonly limits: Limits;
}
