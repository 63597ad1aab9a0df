import type { CeilingCause } from '../core/level/ceiling';
import type { Verdict } from '../core/verdict';
import type { HighCause } from '../core/frequency/span';
import type { InputMode, OutputMode } from './fields';
import type { PoleCause } from './frequency';
import type { AxesProblem } from './local-axes';
import type { MissingField } from './missing';
import type { Channel } from './model';
import type { LimitedPart } from './thermal';

export type Headline = 'level' | 'mass' | 'thermal' | 'frequency';

interface Judged {
  readonly verdict: Verdict;
  /** Where the limit comes from; absent where only the numbers are at hand. */
  readonly origin?: string;
}

/** What a check found out, as data. All numbers in SI (°C, dB, fractions of 1); the inverse says what would be allowed. */
export type Finding =
  | (Judged & {
      readonly check: 'signal to noise';
      /** dB; only an upper bound when a part of the noise is not known. */
      readonly number: number;
      readonly isBound?: boolean;
      readonly limit: number;
      /** m/s² r.m.s. */
      readonly noise?: number;
      readonly noiseAllowed?: number;
      readonly cause?: 'sensor' | 'input';
    })
  | (Judged & {
      readonly check: 'headroom';
      readonly number: number;
      readonly isBound?: boolean;
      readonly limit: number;
      /** m/s² peak. */
      readonly ceiling?: number;
      readonly peakAllowed?: number;
      readonly causes?: readonly CeilingCause[];
    })
  | (Judged & { readonly check: 'no swing' })
  | (Judged & { readonly check: 'input mode'; readonly output: OutputMode; readonly mode: InputMode })
  | (Judged & {
      readonly check: 'mass ratio';
      readonly number: number;
      readonly isBound?: boolean;
      readonly limit: number;
      /** kg of sensor. */
      readonly allowed?: number;
    })
  | (Judged & {
      readonly check: 'temperature limit';
      readonly part: LimitedPart;
      readonly name?: string;
      readonly end: 'low' | 'high';
      readonly number: number;
      readonly limit: number;
    })
  | (Judged & {
      readonly check: 'thermal deviation';
      readonly low: number;
      readonly high: number;
      readonly limit: number;
      readonly halfBand?: number;
    })
  | (Judged & {
      readonly check: 'deviation curve';
      readonly number: number;
      readonly from: number;
      readonly to: number;
    })
  | (Judged & {
      readonly check: 'span low';
      /** Hz: where the span begins; at least that while something is not known. */
      readonly number: number;
      readonly isBound?: boolean;
      readonly limit: number;
      readonly tolerance?: number;
      readonly cause?: PoleCause;
    })
  | (Judged & {
      readonly check: 'span high';
      readonly number: number;
      readonly isBound?: boolean;
      readonly limit: number;
      readonly tolerance?: number;
      readonly cause?: HighCause;
      /** Samples per second that the band asks of the analyser. */
      readonly sampleRateNeeded?: number;
    })
  | (Judged & { readonly check: 'empty span'; readonly tolerance?: number })
  | (Judged & { readonly check: 'reversed'; readonly low: MissingField; readonly high: MissingField })
  | (Judged & { readonly check: 'noise at 0 Hz' })
  | (Judged & {
      readonly check: 'missing';
      readonly headline?: Headline;
      readonly fields: readonly MissingField[];
      /** Names as typed, to tell a name that no list has from a blank. */
      readonly named?: Channel['named'];
    })
  /** A note: without a deviation band the level's numbers rest on the reference sensitivity alone. */
  | (Judged & { readonly check: 'reference sensitivity' })
  /** Results that are not at hand, in words. */
  | (Judged & { readonly check: 'not known'; readonly what: readonly string[] })
  /** A failure whose numbers are not at hand. */
  | (Judged & { readonly check: 'unexplained'; readonly headline: Headline })
  /** A failure that another cell explains, in its words. */
  | (Judged & { readonly check: 'explained'; readonly text: string })
  /** A caution beside the verdicts; common practice, no source. */
  | (Judged & { readonly check: 'holding force'; readonly number: number; readonly limit: number })
  | AcrossFinding;

/** What shows only when rows are looked at together. */
export type AcrossFinding =
  | (Judged & {
      readonly check: 'added masses';
      /** Panel or point, as written. */
      readonly place: string;
      /** Added mass over local mass; a lower bound while something is not known. */
      readonly number?: number;
      readonly isBound?: boolean;
      readonly limit: number;
      /** kg. */
      readonly total?: number;
      readonly localMass?: number;
      readonly housings: number;
    })
  | (Judged & { readonly check: 'control count'; readonly group: string; readonly number: number })
  | (Judged & { readonly check: 'control verdict'; readonly channel: string })
  | (Judged & { readonly check: 'same channel'; readonly channel: string; readonly number: number })
  | (Judged & {
      readonly check: 'same direction';
      readonly point: string;
      readonly direction: string;
      readonly channels: readonly string[];
    })
  | (Judged & {
      readonly check: 'other point';
      readonly channel: string;
      readonly point: string;
      readonly direction: string;
    })
  | (Judged & {
      readonly check: 'local axes';
      readonly channel: string;
      readonly text: string;
      readonly problem: AxesProblem;
    })
  | (Judged & {
      readonly check: 'housing axes';
      readonly sensor: string;
      readonly point: string;
      /** Of one housing. */
      readonly axes: number;
      /** Rows. */
      readonly number: number;
      readonly housings: number;
      readonly directions: readonly string[];
      readonly problem: 'twice' | 'missing' | 'no direction';
    })
  | (Judged & {
      readonly check: 'handedness';
      readonly sensor: string;
      readonly point: string;
      /** In the order of the housing's axes. */
      readonly directions: string;
      readonly problem: 'left-handed' | 'not noted' | 'not at right angles';
    })
  | (Judged & {
      readonly check: 'same input channel';
      readonly inputChannel: string;
      readonly channels: readonly string[];
    })
  | (Judged & {
      readonly check: 'same sensor';
      readonly sensor: string;
      readonly axes?: number;
      readonly points: readonly string[];
      readonly channels: readonly string[];
    })
  | (Judged & {
      readonly check: 'piece of another type';
      readonly serial: string;
      /** The type that the rows name, and the one that the sensor list gives for this number. */
      readonly type: string;
      readonly listed: string;
      readonly channels: readonly string[];
    })
  | (Judged & {
      readonly check: 'overlapping runs';
      readonly sensor: string;
      readonly runs: readonly [string, string];
      /** Days that both runs have. */
      readonly number: number;
      /** The first of them, counted as spreadsheets do. */
      readonly from: number;
    })
  | (Judged & {
      readonly check: 'calibration due';
      readonly sensor: string;
      readonly run: string;
      /** Day of the due date, and the run's first (FAIL) or last (WARN) day, counted as spreadsheets do. */
      readonly number: number;
      readonly limit: number;
    })
  | (Judged & {
      readonly check: 'input modules';
      readonly mode: InputMode;
      readonly run: string;
      /** Channels needed and channels there are. */
      readonly number: number;
      readonly limit: number;
      readonly moduleSize?: number;
      /** Modules that would have to be added. */
      readonly modules?: number;
    });

export type FindingOf<C extends Finding['check']> = Extract<Finding, { check: C }>;
