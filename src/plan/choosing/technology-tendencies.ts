import { toSi } from '../../core/units';
import type { OutputMode } from '../fields';
import type { Mark, SensingElement } from './technology-types';

/**
 * How far a kind of sensor usually goes, and how far the best of its kind go. A demand up to `usual` is admissible, up to
 * `best` doubtful, beyond it the kind falls. Orders of magnitude for planning, no product's data.
 */
export interface Reach {
  readonly usual: number;
  readonly best: number;
}

export interface Tendency {
  /** In which forms sensors of this element are made. */
  readonly outputs: readonly OutputMode[];
  readonly isStatic: boolean;
  /** °C. */
  readonly hottest: Reach;
  readonly coldest: Reach;
  /** 1/K, modulus. */
  readonly coefficient: Reach;
  /** kg, one axis. */
  readonly lightest: Reach;
  /** (m/s²)/√Hz, white equivalent: of 1 gram, falling as 1/mass, or whatever the mass. */
  readonly noise: Reach & { readonly fallsWithMass: boolean };
  /** m/s² peak. */
  readonly fullScale: Reach;
  /** Hz, mounted. */
  readonly resonance: Reach;
  /** What metal striking metal does to it. */
  readonly hardImpact?: { readonly code: 'zero shift' | 'overload'; readonly standing: 'doubtful' | 'falls' };
  /** (m/s²)/K of transient output, where it is pyroelectric. */
  readonly transient?: number;
}

const reach = (unit: Parameters<typeof toSi>[1], usual: number, best: number): Reach => ({
  usual: toSi(usual, unit),
  best: toSi(best, unit),
});
const noise = (usual: number, best: number, fallsWithMass: boolean) => ({
  ...reach('µg/√Hz', usual, best),
  fallsWithMass,
});

/** Marks of the columns below. */
export const MARK_OF: Readonly<Record<Exclude<keyof Tendency, 'outputs'>, Mark>> = {
  isStatic: 'by definition',
  hottest: 'from memory',
  coldest: 'from memory',
  coefficient: 'from memory',
  lightest: 'common practice, no source',
  noise: 'common practice, no source',
  fullScale: 'common practice, no source',
  resonance: 'common practice, no source',
  hardImpact: 'from memory',
  transient: 'common practice, no source',
};

const PIEZOELECTRIC: readonly OutputMode[] = ['IEPE', 'charge', 'voltage'];
/** Shear ceramic; compression designs give more. */
const CERAMIC_TRANSIENT = 0.5;

export const TENDENCIES: Readonly<Record<SensingElement, Tendency>> = {
  ceramic: {
    outputs: PIEZOELECTRIC,
    isStatic: false,
    hottest: reach('°C', 175, 260),
    coldest: reach('°C', -54, -200),
    coefficient: reach('%/K', 0.2, 0.1),
    lightest: reach('gram', 0.2, 0.2),
    noise: noise(40, 10, true),
    fullScale: reach('g', 5000, 20_000),
    resonance: reach('Hz', 60_000, 120_000),
    hardImpact: { code: 'zero shift', standing: 'falls' },
    transient: CERAMIC_TRANSIENT,
  },
  'compensated ceramic': {
    outputs: PIEZOELECTRIC,
    isStatic: false,
    hottest: reach('°C', 260, 300),
    coldest: reach('°C', -54, -200),
    coefficient: reach('%/K', 0.035, 0.018),
    lightest: reach('gram', 2, 1),
    noise: noise(150, 50, true),
    fullScale: reach('g', 1000, 5000),
    resonance: reach('Hz', 30_000, 60_000),
    hardImpact: { code: 'zero shift', standing: 'falls' },
    transient: CERAMIC_TRANSIENT,
  },
  quartz: {
    outputs: PIEZOELECTRIC,
    isStatic: false,
    hottest: reach('°C', 250, 300),
    coldest: reach('°C', -54, -270),
    coefficient: reach('%/K', 0.04, 0.022),
    lightest: reach('gram', 2, 1),
    noise: noise(400, 100, true),
    fullScale: reach('g', 5000, 50_000),
    resonance: reach('Hz', 50_000, 100_000),
    hardImpact: { code: 'zero shift', standing: 'doubtful' },
  },
  'engineered crystal': {
    outputs: ['charge', 'IEPE'],
    isStatic: false,
    hottest: reach('°C', 400, 650),
    coldest: reach('°C', -54, -270),
    coefficient: reach('%/K', 0.012, 0.005),
    lightest: reach('gram', 4, 1),
    noise: noise(200, 50, true),
    fullScale: reach('g', 1000, 5000),
    resonance: reach('Hz', 30_000, 60_000),
    hardImpact: { code: 'zero shift', standing: 'doubtful' },
  },
  'piezoresistive silicon': {
    outputs: ['bridge', 'DC'],
    isStatic: true,
    hottest: reach('°C', 100, 150),
    coldest: reach('°C', -54, -100),
    coefficient: reach('%/K', 0.06, 0.02),
    lightest: reach('gram', 1, 1),
    noise: noise(1000, 200, false),
    fullScale: reach('g', 50_000, 200_000),
    resonance: reach('Hz', 100_000, 1_000_000),
  },
  'capacitive silicon': {
    outputs: ['DC'],
    isStatic: true,
    hottest: reach('°C', 85, 125),
    coldest: reach('°C', -40, -55),
    coefficient: reach('%/K', 0.03, 0.01),
    lightest: reach('gram', 3, 1),
    noise: noise(30, 1, false),
    fullScale: reach('g', 50, 500),
    resonance: reach('Hz', 5000, 20_000),
    hardImpact: { code: 'overload', standing: 'falls' },
  },
};

/** Electronics in the housing, °C; from memory. Charge and bridge outputs have none: their element decides. */
export const ELECTRONICS: Readonly<Partial<Record<OutputMode, { readonly hottest: Reach; readonly coldest: Reach }>>> =
  {
    IEPE: { hottest: reach('°C', 121, 163), coldest: reach('°C', -54, -200) },
    voltage: { hottest: reach('°C', 121, 163), coldest: reach('°C', -54, -200) },
    DC: { hottest: reach('°C', 100, 125), coldest: reach('°C', -40, -55) },
  };

/** Hz: lowest band edge of sensors that discharge, by their longest usual time constants. */
export const LOWEST_BAND = reach('Hz', 0.5, 0.1);
/** Hz: integrating lifts what lies below. */
export const INTEGRATED_FROM = 1;
/** s: a twentieth of a time constant of 1 s, and of 10 s. */
export const LONGEST_PULSE = reach('s', 0.05, 0.5);
/** kg: below this practically no contact sensor is made; above the other, mass no longer limits the noise. */
export const LEAST_MASS = toSi(0.2, 'gram');
export const HEAVIEST = toSi(100, 'gram');
/** kg: three axes in one housing. */
export const LIGHTEST_TRIAXIAL = toSi(4, 'gram');
export const LIGHTEST_TRIAXIAL_OTHER = toSi(10, 'gram');
/** Periods of an undamped resonance in a pulse. */
export const PERIODS_IN_PULSE = 10;
/** F: cable beyond which a charge amplifier's noise usually shows. */
export const LONG_CHARGE_CABLE = toSi(3000, 'pF');
/** W: 11 V of bias at 4 mA. */
export const ELECTRONICS_HEAT = 0.044;
