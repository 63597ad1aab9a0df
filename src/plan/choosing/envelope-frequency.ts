import { cornerForEdge, resonanceForEdge } from '../../core/frequency/edges';
import { sensorResonanceNeeded } from '../../core/frequency/resonance';
import { EDGE_SLACK } from '../../core/verdict';
import type { FrequencyCheck } from '../frequency';
import type { Limits } from '../limits';
import { missingField, type MissingField } from '../missing';
import type { Channel, Mount, Requirement } from '../model';
import { rowBound } from '../thermal';
import type { BoundLimit, NumberBound } from './envelope-bound';
import { judged, lacking, limitOf } from './envelope-judge';

const BAND_LOW = missingField('channels', 'bandLow');
const BAND_HIGH = missingField('channels', 'bandHigh');
const REFERENCE = missingField('channels', 'referenceFrequency');
const TOLERANCE = missingField('channels', 'spanTolerance');
const MOUNT = missingField('channels', 'mount');
const STIFFNESS = missingField('mounts', 'stiffness');
const RESONANCE = missingField('sensors', 'resonance');
const QUALITY = missingField('sensors', 'qualityFactor');
const SENSOR_MASS = missingField('sensors', 'mass');

/** What the row asks of the response; undefined where it cannot be said. */
export interface Flatness {
  readonly low?: number;
  readonly high?: number;
  readonly reference?: number;
  readonly tolerances?: { readonly pass: number; readonly warn: number };
  readonly limit?: BoundLimit;
  readonly missing: readonly (typeof BAND_LOW)[];
}

export const flatnessOf = ({ requirement }: Channel, limits: Limits): Flatness => {
  const { bandLow: low, bandHigh: high } = requirement;
  const tolerance = isUnread(requirement, 'spanTolerance')
    ? undefined
    : rowBound(requirement.spanTolerance, limits.spanTolerance);
  const reference = isUnread(requirement, 'referenceFrequency')
    ? undefined
    : (requirement.referenceFrequency ?? limits.referenceFrequency);
  const isReversed = low !== undefined && high !== undefined && low > high;
  return {
    low,
    high,
    reference,
    tolerances: tolerance && {
      pass: tolerance.pass,
      warn: Math.max(tolerance.pass, tolerance.warn ?? tolerance.pass),
    },
    limit: tolerance && limitOf('spanTolerance', tolerance),
    missing: [
      ...lacking([low, BAND_LOW], [high, BAND_HIGH], [reference, REFERENCE], [tolerance, TOLERANCE]),
      ...(isReversed ? [BAND_LOW, BAND_HIGH] : []),
    ],
  };
};

const isUnread = ({ unread }: Requirement, key: string): boolean => unread?.includes(key) === true;

interface Edges {
  readonly low: number;
  readonly high: number;
  readonly reference: number;
}
/** `slack` moves both edges inwards by what the checks leave. */
export const edgesOf = (asked: Flatness, slack = 0): Edges | undefined =>
  asked.missing.length > 0
    ? undefined
    : { low: asked.low! / (1 - slack), high: asked.high! / (1 + slack), reference: asked.reference! };

/**
 * Least mounted resonance. The upper edge is judged beside the poles of the chain, unless those alone leave the band there;
 * the lower edge by the resonance alone: what poles lose there is theirs.
 */
const resonanceFor = (edges: Edges, tolerance: number, qualityFactor: number, poles: readonly number[]): number => {
  const { low, high, reference } = edges;
  const upper = { frequency: high, reference, tolerance };
  const beside = high > reference ? resonanceForEdge(upper, qualityFactor, poles) : 0;
  const atHigh = beside === Infinity ? resonanceForEdge(upper, qualityFactor, []) : beside;
  const atLow = low < reference ? resonanceForEdge({ frequency: low, reference, tolerance }, qualityFactor, []) : 0;
  return Math.max(atHigh, atLow);
};

/**
 * Largest corner beside the others. The lower edge is judged beside the resonance unless that alone leaves the band there;
 * the upper edge by the poles alone.
 */
export const cornerFor = (
  { low, high, reference }: Edges,
  tolerance: number,
  others: readonly number[],
  resonance?: { readonly frequency: number; readonly qualityFactor: number },
): number => {
  const lower = { frequency: low, reference, tolerance };
  const isKept = resonance && resonance.frequency >= resonanceForEdge(lower, resonance.qualityFactor, []);
  const atLow = low < reference ? cornerForEdge(lower, others, isKept ? resonance : undefined) : Infinity;
  const atHigh = high > reference ? cornerForEdge({ frequency: high, reference, tolerance }, others) : Infinity;
  return Math.min(atLow, atHigh);
};

/** `heaviest` is the allowed sensor mass in kg, for which the sensor's own resonance is stated without a sensor. */
export const resonanceBounds = (
  channel: Channel,
  limits: Limits,
  check: FrequencyCheck,
  heaviest: NumberBound,
): readonly NumberBound[] => {
  const { sensor, mount } = channel;
  const asked = flatnessOf(channel, limits);
  const qualityFactor = sensor?.qualityFactor;
  const at = (edges: Edges | undefined, tolerance: number | undefined) =>
    edges && tolerance !== undefined
      ? resonanceFor(edges, tolerance, qualityFactor ?? Infinity, check.lowPoles ?? [])
      : undefined;
  const both = (edges: Edges | undefined) => ({
    pass: at(edges, asked.tolerances?.pass),
    warn: at(edges, asked.tolerances?.warn),
  });
  const shown = both(edgesOf(asked));
  const turning = both(edgesOf(asked, EDGE_SLACK));
  const shared = {
    unit: 'Hz',
    direction: 'atLeast',
    causes: [BAND_HIGH, TOLERANCE, REFERENCE],
    limit: asked.limit,
    without: lacking([qualityFactor, QUALITY]),
    isJudged: sensor !== undefined,
  } as const;

  const mass = sensor ? sensor.mass : positive(heaviest.pass);
  const missingMount = lackingOfMount(mount, mass, sensor ? SENSOR_MASS : (heaviest.missing[0] ?? SENSOR_MASS));
  const own = (wanted: number | undefined) =>
    wanted === undefined || missingMount.length > 0
      ? undefined
      : sensorResonanceNeeded(wanted, mass ?? 0, mount?.stiffness);
  return [
    judged({
      ...shared,
      key: 'mounted resonance',
      ...shown,
      turnsAt: turning,
      missing: asked.missing,
      value: check.mountedResonance,
      valueMissing: sensor && check.mountedResonance === undefined ? check.missing : [],
    }),
    judged({
      ...shared,
      key: 'sensor resonance',
      causes: [...shared.causes, STIFFNESS],
      pass: own(shown.pass),
      warn: own(shown.warn),
      turnsAt: { pass: own(turning.pass), warn: own(turning.warn) },
      missing: [...asked.missing, ...missingMount],
      atMass:
        mount?.stiffness === undefined || mass === undefined
          ? undefined
          : { mass, of: sensor ? 'sensor' : 'heaviest allowed' },
      value: sensor?.resonance,
      valueMissing: sensor ? lacking([sensor.resonance, RESONANCE]) : [],
    }),
  ];
};

/** What stops us from going from the mounted resonance to the sensor's own. */
const lackingOfMount = (mount: Mount | undefined, mass: number | undefined, massField: MissingField) => [
  ...lacking([mount, MOUNT]),
  ...(mount?.unread?.includes('stiffness') ? [STIFFNESS] : []),
  ...(mount?.stiffness !== undefined && mass === undefined ? [massField] : []),
];

const positive = (value: number | undefined): number | undefined =>
  value !== undefined && value > 0 ? value : undefined;
