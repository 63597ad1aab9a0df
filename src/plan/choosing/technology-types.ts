import type { UnitId } from '../../core/units';
import type { Input } from '../model';
import type { OutputMode } from '../fields';
import type { MissingField } from '../missing';

export const ELEMENTS = [
  'ceramic',
  'compensated ceramic',
  'quartz',
  'engineered crystal',
  'piezoresistive silicon',
  'capacitive silicon',
] as const;
export type SensingElement = (typeof ELEMENTS)[number];

/** In the order in which they are asked. */
export const STEPS = [
  'static and low frequency',
  'temperature',
  'thermal tolerance',
  'mass',
  'low level',
  'full scale and shock',
  'band',
  'axes',
  'grounding',
  'charge or IEPE',
  'environment',
] as const;
export type Step = (typeof STEPS)[number];

/** What stands behind a statement. A tendency never outweighs the data of the individual sensor. */
export const MARKS = ['common practice, no source', 'from memory', 'by definition'] as const;
export type Mark = (typeof MARKS)[number];

export type Standing = 'admissible' | 'doubtful' | 'falls';

export const ENVIRONMENTS = ['immersion', 'vacuum', 'radiation', 'explosive atmosphere', 'magnetic field'] as const;
export type Environment = (typeof ENVIRONMENTS)[number];

/** What a plan has no field for; all of it optional. */
export interface Circumstances {
  /** Directions measured at the point. */
  readonly axes?: number;
  /** s, of a single shock. */
  readonly pulseDuration?: number;
  /** Metal strikes metal, or a charge fires. */
  readonly isHardImpact?: boolean;
  /** Velocity, displacement or tilt comes from this channel. */
  readonly isIntegrated?: boolean;
  /** Conductive structure with more than one earth, or with drives. */
  readonly hasSeveralEarths?: boolean;
  /** K/s. */
  readonly ramp?: number;
  readonly environment?: readonly Environment[];
  /** Inputs at hand; absent: any. */
  readonly inputs?: readonly Input[];
}

/** Codes of the sentences in which reasons are said. */
export const REASON_CODES = [
  'no static response',
  'low band edge',
  'long pulse',
  'integration',
  'too hot',
  'too cold',
  'thermal coefficient',
  'sensor mass',
  'noise for mass',
  'noise',
  'full scale',
  'zero shift',
  'overload',
  'resonance',
  'several axes',
  'earth loop',
  'cable noise',
  'no input',
  'damp insulation',
  'no convection',
  'radiation',
  'explosive atmosphere',
  'magnetic field',
  'temperature ramp',
  'nothing left',
] as const;
export type ReasonCode = (typeof REASON_CODES)[number];

/** Number first: what the channel asks, what is usual, and what would bring it back. SI (°C, fractions of 1). */
export interface TechnologyReason {
  readonly step: Step;
  readonly code: ReasonCode;
  readonly standing: Exclude<Standing, 'admissible'>;
  /** The fields that ask for it. */
  readonly causes: readonly MissingField[];
  readonly number?: number;
  /** What this kind usually reaches. */
  readonly limit?: number;
  readonly unit?: UnitId;
  readonly mark: Mark;
  readonly relaxation?: Relaxation;
}

/** The requirement that would have to change, and to what. */
export interface Relaxation {
  readonly field: MissingField | 'massRatio' | 'circumstances';
  readonly number?: number;
  readonly unit?: UnitId;
  readonly direction?: 'atMost' | 'atLeast';
}

export interface Advised<Kind extends string> {
  readonly kind: Kind;
  readonly standing: Standing;
  /** In the order of STEPS. */
  readonly reasons: readonly TechnologyReason[];
}

export interface TechnologyAdvice {
  readonly channel: string;
  readonly elements: readonly (Advised<SensingElement> & { readonly outputs: readonly OutputMode[] })[];
  readonly outputs: readonly Advised<OutputMode>[];
  /** Set when no contact sensor can fit: kg that may be added, kg below which practically none is made. */
  readonly nonContact?: { readonly allowed: number; readonly least: number; readonly mark: Mark };
  /** Steps that could not be asked, with what is not known. */
  readonly missing: readonly { readonly step: Step; readonly fields: readonly MissingField[] }[];
}
