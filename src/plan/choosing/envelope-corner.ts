import { cornerFromLimit, cornerFromTimeConstant, frequencyOverCorner } from '../../core/frequency/corner';
import { EDGE_SLACK } from '../../core/verdict';
import { USUAL_LOSS, type FrequencyCheck } from '../frequency';
import { MODE_OF } from '../level';
import type { Limits } from '../limits';
import { missingField } from '../missing';
import type { Channel, Input, SensorType } from '../model';
import type { NumberBound } from './envelope-bound';
import { cornerFor, edgesOf, flatnessOf } from './envelope-frequency';
import { judged, lacking } from './envelope-judge';

const BAND_LOW = missingField('channels', 'bandLow');
const TOLERANCE = missingField('channels', 'spanTolerance');
const REFERENCE = missingField('channels', 'referenceFrequency');
const INPUT = missingField('channels', 'input');
const COUPLING = missingField('inputs', 'couplingPoles');
const TIME_CONSTANT = missingField('inputs', 'timeConstant');
const LOW_LIMIT = missingField('sensors', 'lowLimit');
const LOSS = missingField('sensors', 'lowLimitLoss');
const QUALITY = missingField('sensors', 'qualityFactor');

/** Highest corner of the sensor (of the amplifier, for charge) beside an input's coupling, and the data sheet's low limit. */
export const cornerBounds = (
  channel: Channel,
  limits: Limits,
  check: FrequencyCheck,
  input: Input | undefined,
): readonly NumberBound[] => {
  const { sensor } = channel;
  const asked = flatnessOf(channel, limits);
  const resonance = resonanceOf(check, sensor);
  const others = input?.couplingPoles ?? [];
  const both = (slack: number) => {
    const edges = edgesOf(asked, slack);
    const at = (tolerance: number | undefined) =>
      edges && tolerance !== undefined ? cornerFor(edges, tolerance, others, resonance) : undefined;
    return { pass: at(asked.tolerances?.pass), warn: at(asked.tolerances?.warn) };
  };
  const shown = both(0);
  const turning = both(EDGE_SLACK);
  const isCharge = sensor ? sensor.output === 'charge' : input?.mode === 'charge';
  const own = isCharge ? amplifierCorner(input) : sensorCorner(sensor);
  const shared = {
    unit: 'Hz',
    direction: 'atMost',
    causes: [BAND_LOW, TOLERANCE, REFERENCE],
    limit: asked.limit,
    input: input?.name,
    missing: asked.missing,
    without: [
      ...lacking([input, INPUT], [input ? input.couplingPoles : [], COUPLING]),
      ...(sensor ? lacking([sensor.qualityFactor, QUALITY]) : []),
    ],
    isJudged: sensor?.output !== undefined && (!input?.mode || MODE_OF[sensor.output] === input.mode),
  } as const;
  const corner = judged({
    ...shared,
    key: 'low corner',
    ...shown,
    turnsAt: turning,
    value: own.corner,
    valueMissing: sensor ? own.missing : [],
  });
  if (isCharge) return [corner];

  const loss = sensor?.lowLimitLoss ?? USUAL_LOSS;
  const asLimit = (value: number | undefined) => (value === undefined ? undefined : value * frequencyOverCorner(loss));
  return [
    corner,
    judged({
      ...shared,
      key: 'low limit',
      pass: asLimit(shown.pass),
      warn: asLimit(shown.warn),
      turnsAt: { pass: asLimit(turning.pass), warn: asLimit(turning.warn) },
      atLoss: loss,
      value: own.corner === undefined ? undefined : asLimit(own.corner),
      valueMissing: sensor ? own.missing : [],
    }),
  ];
};

const resonanceOf = ({ mountedResonance }: FrequencyCheck, sensor: SensorType | undefined) =>
  mountedResonance === undefined || sensor?.qualityFactor === undefined
    ? undefined
    : { frequency: mountedResonance, qualityFactor: sensor.qualityFactor };

interface OwnCorner {
  readonly corner?: number;
  readonly missing: readonly (typeof LOW_LIMIT)[];
}

const amplifierCorner = (input: Input | undefined): OwnCorner => ({
  corner: input?.timeConstant === undefined ? undefined : cornerFromTimeConstant(input.timeConstant),
  missing: lacking([input?.timeConstant, TIME_CONSTANT]),
});

/** Static response has no corner: 0. */
const sensorCorner = (sensor: SensorType | undefined): OwnCorner => {
  if (!sensor) return { missing: [] };
  const unread = [LOW_LIMIT, LOSS].filter(({ key }) => sensor.unread?.includes(key));
  const isNeeded = sensor.output === 'IEPE' || sensor.output === 'voltage';
  if (unread.length > 0 || (sensor.lowLimit === undefined && isNeeded))
    return { missing: unread.length > 0 ? unread : [LOW_LIMIT] };
  if (sensor.lowLimit === undefined) return { corner: 0, missing: [] };
  return { corner: cornerFromLimit(sensor.lowLimit, sensor.lowLimitLoss ?? USUAL_LOSS), missing: [] };
};
