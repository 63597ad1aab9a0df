import { frequencyOverResonance } from '../../core/frequency/resonance';
import { amplitudeRatio } from '../../core/level/margin';
import { massRatio } from '../../core/mass/loading';
import { rowBound } from '../thermal';
import { radiation, ramp, temperature, thermalTolerance } from './technology-climate';
import { compared, type Ask } from './technology-comparison';
import { FIELD, type Demands } from './technology-demands';
import { lowFrequency } from './technology-low';
import {
  HEAVIEST,
  LIGHTEST_TRIAXIAL,
  LIGHTEST_TRIAXIAL_OTHER,
  MARK_OF,
  PERIODS_IN_PULSE,
  TENDENCIES,
} from './technology-tendencies';
import type { Relaxation, SensingElement, TechnologyReason } from './technology-types';

const mass: Ask = (demands, { lightest }) =>
  compared({
    step: 'mass',
    code: 'sensor mass',
    causes: [FIELD.localMass],
    mark: MARK_OF.lightest,
    unit: 'gram',
    number: demands.bound('sensor mass').pass,
    reach: lightest,
    excess: 'below',
    relaxed: (sensorMass) => ratioFor(demands, sensorMass),
  });

/** The mass ratio at which a sensor of a mass fits. */
const ratioFor = ({ added, localMass }: Demands, sensorMass: number): Relaxation | undefined =>
  added === undefined || localMass === undefined
    ? undefined
    : { field: 'massRatio', number: massRatio(sensorMass + added, localMass), unit: '1', direction: 'atLeast' };

/** A light sensor is a noisy one: where mass sets the noise, the allowed mass decides. */
const lowLevel: Ask = ({ channel, bound }, { noise }) => {
  const required = bound('white noise density').pass;
  const allowed = bound('sensor mass').pass ?? HEAVIEST;
  const grams = Math.min(Math.max(allowed, TENDENCIES.ceramic.lightest.best), HEAVIEST) / 1e-3;
  const scale = noise.fallsWithMass ? 1 / grams : 1;
  const { levelLow } = channel.requirement;
  return compared({
    step: 'low level',
    code: noise.fallsWithMass ? 'noise for mass' : 'noise',
    causes: noise.fallsWithMass ? [FIELD.levelLow, FIELD.localMass] : [FIELD.levelLow],
    mark: MARK_OF.noise,
    unit: 'µg/√Hz',
    number: required,
    reach: { usual: noise.usual * scale, best: noise.best * scale },
    excess: 'below',
    relaxed: (reached) => ({
      field: FIELD.levelLow,
      number: levelLow && required && (levelLow * reached) / required,
      unit: 'g',
      direction: 'atLeast',
    }),
  });
};

const highLevel: Ask = ({ channel, limits, circumstances, bound }, { fullScale, hardImpact }) => {
  const step = 'full scale and shock';
  const range = compared({
    step,
    code: 'full scale',
    causes: [FIELD.levelHigh],
    mark: MARK_OF.fullScale,
    unit: 'g',
    number: bound('full scale').pass,
    reach: fullScale,
    excess: 'above',
    relaxed: (reached) => ({
      field: FIELD.levelHigh,
      number: reached / amplitudeRatio(limits.headroom.pass),
      unit: 'g',
      direction: 'atMost',
    }),
  });
  if (!circumstances.isHardImpact || !hardImpact) return range;
  const impact: TechnologyReason = {
    step,
    ...hardImpact,
    causes: [FIELD.levelHigh],
    number: channel.requirement.levelHigh,
    unit: 'g',
    mark: MARK_OF.hardImpact,
    relaxation: { field: 'circumstances' },
  };
  return [...range, impact];
};

const band: Ask = ({ channel, limits, circumstances, bound }, { resonance }) => {
  const shared = { step: 'band', code: 'resonance', mark: MARK_OF.resonance, unit: 'Hz', reach: resonance, excess: 'above' } as const; // prettier-ignore
  const tolerance = rowBound(channel.requirement.spanTolerance, limits.spanTolerance).pass;
  const { pulseDuration } = circumstances;
  const ofBand = compared({
    ...shared,
    causes: [FIELD.bandHigh],
    number: bound('mounted resonance').pass,
    relaxed: (reached) => ({
      field: FIELD.bandHigh,
      number: reached * frequencyOverResonance(tolerance, Infinity),
      unit: 'Hz',
      direction: 'atMost',
    }),
  });
  const ofPulse = compared({
    ...shared,
    causes: [],
    number: pulseDuration && PERIODS_IN_PULSE / pulseDuration,
    relaxed: () => ({ field: 'circumstances' }),
  });
  return ofBand.length > 0 ? ofBand : ofPulse;
};

const axes: Ask = (demands, _tendency, element) => {
  const usual = element === 'ceramic' ? LIGHTEST_TRIAXIAL : LIGHTEST_TRIAXIAL_OTHER;
  if ((demands.circumstances.axes ?? 1) < 2) return [];
  return compared({
    step: 'axes',
    code: 'several axes',
    causes: [FIELD.direction, FIELD.localMass],
    mark: MARK_OF.lightest,
    unit: 'gram',
    number: demands.bound('sensor mass').pass,
    reach: { usual, best: -Infinity },
    excess: 'below',
    relaxed: (sensorMass) => ratioFor(demands, sensorMass),
  });
};

const ASKED: readonly Ask[] = [
  lowFrequency,
  temperature,
  thermalTolerance,
  mass,
  lowLevel,
  highLevel,
  band,
  axes,
  ramp,
  radiation,
];

/** Everything that speaks against an element, in the order of the steps. */
export const reasonsAgainst = (element: SensingElement, demands: Demands): readonly TechnologyReason[] =>
  ASKED.flatMap((ask) => ask(demands, TENDENCIES[element], element));
