import { frequencyOverCorner } from '../../core/frequency/corner';
import { rampError, rampForError } from '../../core/thermal/transient';
import { rowBound } from '../thermal';
import { compared, ofTemperature, type Ask } from './technology-comparison';
import { FIELD } from './technology-demands';
import { MARK_OF } from './technology-tendencies';

export const temperature: Ask = (demands, { hottest, coldest }) => [
  ...compared({
    ...ofTemperature(demands, 'hot'),
    code: 'too hot',
    reach: hottest,
    mark: MARK_OF.hottest,
  }),
  ...compared({ ...ofTemperature(demands, 'cold'), code: 'too cold', reach: coldest, mark: MARK_OF.coldest }),
];

export const thermalTolerance: Ask = ({ channel, limits, bound }, { coefficient }) => {
  const allowed = bound('thermal coefficient').pass;
  const tolerance = rowBound(channel.requirement.thermalTolerance, limits.thermalTolerance).pass;
  return compared({
    step: 'thermal tolerance',
    code: 'thermal coefficient',
    causes: [FIELD.thermalTolerance, FIELD.temperatureLow, FIELD.temperatureHigh],
    mark: MARK_OF.coefficient,
    unit: '%/K',
    number: allowed,
    reach: coefficient,
    excess: 'below',
    relaxed: (reached) => ({
      field: FIELD.thermalTolerance,
      number: allowed && (tolerance * reached) / allowed,
      unit: '%',
      direction: 'atLeast',
    }),
  });
};

const LOSS_AT_EDGE = 0.05;
/** Share of the lowest level from which a transient output counts. */
const SHARE = 1 / 3;

export const ramp: Ask = ({ channel, circumstances }, { transient }) => {
  const { bandLow, levelLow } = channel.requirement;
  const rate = circumstances.ramp;
  if (transient === undefined || rate === undefined || !bandLow || levelLow === undefined) return [];
  const corner = bandLow / frequencyOverCorner(LOSS_AT_EDGE);
  return compared({
    step: 'environment',
    code: 'temperature ramp',
    causes: [FIELD.bandLow, FIELD.levelLow],
    mark: MARK_OF.transient,
    unit: 'g',
    number: rampError(transient, rate, corner),
    reach: { usual: levelLow * SHARE, best: Infinity },
    excess: 'above',
    relaxed: (error) => ({
      field: 'circumstances',
      number: rampForError(transient, corner, error),
      unit: 'K/min',
      direction: 'atMost',
    }),
  });
};

export const radiation: Ask = ({ circumstances }, { isStatic }) =>
  isStatic && circumstances.environment?.includes('radiation')
    ? [{ step: 'environment', code: 'radiation', standing: 'doubtful', causes: [], mark: 'from memory' }]
    : [];
