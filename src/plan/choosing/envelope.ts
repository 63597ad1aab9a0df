import type { Verdict } from '../../core/verdict';
import { checkChannel } from '../check';
import { OUTPUT_MODES } from '../fields';
import { MODE_OF } from '../level';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { missingField } from '../missing';
import type { Channel, Input } from '../model';
import { BOUND_KEYS, type Envelope, type EnvelopeBound, type NumberBound, type OutputBound } from './envelope-bound';
import { cornerBounds } from './envelope-corner';
import { resonanceBounds } from './envelope-frequency';
import { judged, lacking } from './envelope-judge';
import { levelBounds } from './envelope-level';
import { massBound } from './envelope-mass';
import { sensitivityBounds } from './envelope-sensitivity';
import { thermalBounds } from './envelope-thermal';

export interface EnvelopeOptions {
  /** Directions measured at the point by one housing; one unless said otherwise. */
  readonly axes?: number;
}

/**
 * What a sensor must satisfy at a channel, in SI, each bound with what causes it. With an actual sensor: its value and
 * what it has to spare. `inputs` are those at hand; absent: the channel's own. Pure inverses of the checks.
 */
export const envelopeOf = (
  channel: Channel,
  planLimits: Limits,
  inputs: readonly Input[] = channel.input ? [channel.input] : [],
  { axes = 1 }: EnvelopeOptions = {},
): Envelope => {
  const limits = limitsFor(channel, planLimits);
  const check = checkChannel(channel, limits);
  const mass = massBound(channel, limits);
  const perInput = inputs.length > 0 ? inputs : [undefined];
  const bounds: EnvelopeBound[] = [
    mass,
    ...levelBounds(channel, limits, check.level),
    ...thermalBounds(channel, limits, check.thermal),
    ...resonanceBounds(channel, limits, check.frequency, mass),
    ...perInput.flatMap((input) => [
      ...cornerBounds(channel, limits, check.frequency, input),
      ...sensitivityBounds(channel, limits, check.level, input),
    ]),
    outputBound(channel, inputs),
    axesBound(channel, axes),
  ];
  return { channel: channel.id, bounds: bounds.sort((a, b) => rank(a) - rank(b)), limits };
};

const rank = ({ key }: EnvelopeBound): number => BOUND_KEYS.indexOf(key);

const INPUT = missingField('channels', 'input');
const MODE = missingField('inputs', 'mode');
const OUTPUT = missingField('sensors', 'output');
const AXES = missingField('sensors', 'axes');
const DIRECTION = missingField('channels', 'direction');

const outputBound = ({ sensor }: Channel, inputs: readonly Input[]): OutputBound => {
  const open = inputs.filter(({ mode }) => mode === undefined);
  const admissible = OUTPUT_MODES.map((output) => ({
    output,
    inputs: inputs.filter(({ mode }) => mode === MODE_OF[output]).map(({ name }) => name),
  })).filter(({ inputs: taking }) => taking.length > 0);
  const isKnown = inputs.length > open.length;
  const fits = admissible.some(({ output }) => output === sensor?.output);
  const verdict: Verdict = fits
    ? 'PASS'
    : sensor?.output === undefined || open.length > 0 || !isKnown
      ? 'INCOMPLETE'
      : 'FAIL';
  return {
    kind: 'output',
    key: 'output',
    causes: [INPUT],
    admissible: isKnown ? admissible : undefined,
    missing: isKnown ? [] : [inputs.length > 0 ? MODE : INPUT],
    without: open.length > 0 ? [MODE] : [],
    value: sensor?.output,
    valueMissing: sensor ? lacking([sensor.output, OUTPUT]) : [],
    verdict: sensor && verdict,
  };
};

/** A sensor that does not say how many axes it has has one. */
const axesBound = ({ sensor }: Channel, axes: number): NumberBound =>
  judged({
    key: 'axes',
    unit: '1',
    direction: 'atLeast',
    causes: [DIRECTION],
    pass: axes,
    value: sensor && (sensor.axes ?? (axes > 1 ? undefined : 1)),
    valueMissing: sensor && axes > 1 ? lacking([sensor.axes, AXES]) : [],
    isJudged: sensor !== undefined,
  });
