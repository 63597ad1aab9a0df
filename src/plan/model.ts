import type { Curve } from '../core/curve';
import type { InputMode, OutputMode, Purpose, Role } from './fields';
import type { Limits } from './limits';

/**
 * The subject matter in SI: m/s², kg, Hz, V, A, F, C/(m/s²); temperatures in °C, deviations and tolerances as fractions of 1.
 * An absent field is not known; what it stops is named by the checks.
 */
export interface Readable {
  /** Keys that were given but could not be read: they must not count as blank. */
  readonly unread?: readonly string[];
}

export interface SensorType extends Readable {
  readonly name: string;
  readonly description?: string;
  readonly technology?: string;
  readonly output?: OutputMode;
  readonly axes?: number;
  /** V/(m/s²) at the reference frequency and calibration temperature. */
  readonly sensitivity?: number;
  /** C/(m/s²), for charge output. */
  readonly chargeSensitivity?: number;
  /** m/s² peak. */
  readonly fullScale?: number;
  readonly mass?: number;
  /** Hz : (m/s²)/√Hz. */
  readonly noiseDensity?: Curve;
  readonly capacitance?: number;
  readonly resonance?: number;
  readonly qualityFactor?: number;
  readonly lowLimit?: number;
  readonly lowLimitLoss?: number;
  readonly biasMin?: number;
  readonly biasMax?: number;
  readonly temperatureMin?: number;
  readonly temperatureMax?: number;
  /** °C : fraction. */
  readonly deviation?: Curve;
  /** Fraction per K; used when there is no curve. */
  readonly coefficient?: number;
  readonly coefficientSign?: 'signed' | 'unsigned';
  readonly calibrationTemperature?: number;
  readonly zeroDrift?: number;
  readonly quantity?: number;
  /** Days since 1899-12-30, as spreadsheets count; of single pieces the earliest. */
  readonly calibrationDue?: number;
  /** Those that the list names one by one. */
  readonly pieces?: readonly Piece[];
}

/** One piece of a sensor type. */
export interface Piece {
  readonly serial: string;
  /** The type's name. */
  readonly type: string;
  /** Where it stands in its list, as the user sees it. */
  readonly line: number;
  readonly calibrationDue?: number;
  /** By its own certificate, V/(m/s²). */
  readonly sensitivity?: number;
  /** By its own certificate, C/(m/s²). */
  readonly chargeSensitivity?: number;
  /** Its number stands in one cell with others, where no formula finds it. */
  readonly sharesCell?: boolean;
}

export interface Mount extends Readable {
  readonly name: string;
  readonly description?: string;
  readonly mass?: number;
  /** N/m; absent: the sensor's own resonance holds. */
  readonly stiffness?: number;
  readonly temperatureMin?: number;
  readonly temperatureMax?: number;
  /** N at which the joint lets go. */
  readonly holdingForce?: number;
}

export interface Cable extends Readable {
  readonly name: string;
  readonly capacitance?: number;
  readonly mass?: number;
  readonly temperatureMin?: number;
  readonly temperatureMax?: number;
}

export interface Input extends Readable {
  readonly name: string;
  readonly mode?: InputMode;
  readonly range?: number;
  readonly dynamicRange?: number;
  readonly sampleRate?: number;
  /** An empty list is DC coupling; absent is not known. */
  readonly couplingPoles?: readonly number[];
  readonly supply?: number;
  readonly supplyCurrent?: number;
  readonly sourceDrop?: number;
  readonly biasFloor?: number;
  readonly sensorCurrent?: number;
  /** V/C. */
  readonly gain?: number;
  readonly noiseVoltage?: number;
  readonly feedbackCapacitance?: number;
  readonly timeConstant?: number;
  readonly outputLimit?: number;
  readonly modules?: number;
  readonly moduleChannels?: number;
}

/** One way to know the local mass; of several, the smallest governs. */
export type LocalMass =
  | { readonly model: 'value'; readonly mass?: number }
  /** Modal mass and mode shape at the point, in the same scaling. */
  | { readonly model: 'modal'; readonly modalMass?: number; readonly shape?: number }
  /** A free rigid part, driven beside its centre of gravity. */
  | { readonly model: 'rigid'; readonly mass?: number; readonly inertia?: number; readonly offset?: number }
  | {
      readonly model: 'plate';
      readonly frequency?: number;
      readonly impedance?: number;
      readonly modulus?: number;
      readonly density?: number;
      readonly poisson?: number;
      readonly thickness?: number;
    }
  | {
      readonly model: 'beam';
      readonly frequency?: number;
      /** Magnitude of the point impedance, N·s/m. */
      readonly impedance?: number;
      readonly modulus?: number;
      readonly density?: number;
      readonly width?: number;
      readonly thickness?: number;
    };

/** How the lowest level is read: over the needed band, or in one Hann line. */
export type Detector = { readonly kind: 'band' } | { readonly kind: 'line'; readonly lineSpacing?: number };

export interface Requirement extends Readable {
  readonly purpose?: Purpose;
  /** m/s² r.m.s. in the analysed band. */
  readonly levelLow?: number;
  /** m/s² peak, unfiltered. */
  readonly levelHigh?: number;
  readonly bandLow?: number;
  readonly bandHigh?: number;
  readonly detector: Detector;
  readonly temperatureLow?: number;
  readonly temperatureHigh?: number;
  /** Absent: the plan's limit. */
  readonly thermalTolerance?: number;
  /** Absent: the plan's limit. */
  readonly spanTolerance?: number;
  /** dB for PASS in this row; absent: the plan's limit. */
  readonly signalToNoiseLimit?: number;
  readonly headroomLimit?: number;
  /** Largest mass ratio for PASS in this row. */
  readonly massRatioLimit?: number;
  /** Absent: 160 Hz. */
  readonly referenceFrequency?: number;
  readonly localMass: readonly LocalMass[];
}

/** What a row names: the typed name, and the record when the list has it. */
export interface Channel {
  readonly id: string;
  readonly group?: string;
  readonly run?: string;
  /** Days since 1899-12-30, as spreadsheets count. */
  readonly runStart?: number;
  readonly runEnd?: number;
  readonly point?: string;
  readonly direction?: string;
  /** Turns or direction cosines, as typed. */
  readonly localAxes?: string;
  readonly sensorAxis?: string;
  readonly serial?: string;
  /** The piece with this serial number by the sensor list; of another type where the list has it there alone. */
  readonly piece?: Piece;
  /** Of this very sensor; absent: its piece's, or the type's. */
  readonly calibrationDue?: number;
  readonly inputChannel?: string;
  readonly location?: string;
  readonly panel?: string;
  readonly role?: Role;
  readonly remarks?: string;
  readonly requirement: Requirement;
  readonly sensor?: SensorType;
  readonly mount?: Mount;
  readonly cable?: Cable;
  readonly input?: Input;
  /** Names as typed, also those that no list has. */
  readonly named?: Readonly<Partial<Record<'sensor' | 'mount' | 'cable' | 'input', string>>>;
}

export interface Plan {
  readonly channels: readonly Channel[];
  readonly sensors: ReadonlyMap<string, SensorType>;
  readonly mounts: ReadonlyMap<string, Mount>;
  readonly cables: ReadonlyMap<string, Cable>;
  readonly inputs: ReadonlyMap<string, Input>;
  readonly limits: Limits;
}
