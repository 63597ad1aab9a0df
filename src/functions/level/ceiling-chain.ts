import { failure, outcome, type Outcome } from '../../core/issue';
import { biasSwing, upperLimit, type Ceiling } from '../../core/level/ceiling';
import { OUTPUT_MODES } from '../../plan/fields';
import type { ArgSpecs, Values } from '../define';

/** Everything between sensor and converter that can clip; shared by CEILING and CEILING.CAUSE. */
export const CEILING_CHAIN = {
  fullScale: { unit: 'g', symbol: 'a_fs', text: 'Full scale of the sensor, peak.', above: 0, statistic: 'peak' },
  output: {
    kind: 'choice',
    choices: OUTPUT_MODES,
    text: 'How the signal leaves the sensor. IEPE needs the five supply and bias voltages, charge the output limit.',
  },
  sensitivity: {
    unit: 'mV/g',
    symbol: 'S',
    text: 'Largest sensitivity over the temperature range; charge: pC/g times mV/pC.',
    above: 0,
  },
  range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the input range.', above: 0 },
  supply: { unit: 'V', symbol: 'V_s', text: 'Compliance voltage of the supply.', above: 0, optional: true },
  biasMin: { unit: 'V', symbol: 'V₁', text: 'Lowest bias over the temperature range.', above: 0, optional: true },
  biasMax: { unit: 'V', symbol: 'V₂', text: 'Highest bias over the temperature range.', above: 0, optional: true },
  sourceDrop: { unit: 'V', symbol: 'V_d', text: 'Voltage lost in the current source.', atLeast: 0, optional: true },
  biasFloor: { unit: 'V', symbol: 'V_f', text: 'Lowest output that still follows.', atLeast: 0, optional: true },
  outputLimit: { unit: 'V', symbol: 'V_o', text: 'Largest output of the charge amplifier.', above: 0, optional: true },
} as const satisfies ArgSpecs;

type Chain = Values<typeof CEILING_CHAIN>;

const swingOf = ({ supply, biasMin, biasMax, sourceDrop, biasFloor }: Chain): Outcome<number> => {
  if (supply === undefined) return failure({ code: 'missing', arg: 'supply' });
  if (biasMin === undefined) return failure({ code: 'missing', arg: 'biasMin' });
  if (biasMax === undefined) return failure({ code: 'missing', arg: 'biasMax' });
  if (sourceDrop === undefined) return failure({ code: 'missing', arg: 'sourceDrop' });
  if (biasFloor === undefined) return failure({ code: 'missing', arg: 'biasFloor' });
  if (biasMax < biasMin)
    return failure({ code: 'out-of-range', arg: 'biasMax', given: biasMax, unit: 'V', rule: `≥ biasMin, ${biasMin}` });
  return outcome(biasSwing(supply, biasMin, biasMax, sourceDrop, biasFloor));
};

/** The smallest of the terms that this output mode has. */
export const ceilingOf = (chain: Chain): Outcome<Ceiling> => {
  const { fullScale, output, sensitivity, range, outputLimit } = chain;
  const terms = { 'full scale': fullScale, 'input range': range / sensitivity };
  if (output === 'IEPE') {
    const swing = swingOf(chain);
    return swing.ok ? limitOf({ ...terms, 'bias swing': swing.value / sensitivity }) : swing;
  }
  if (output !== 'charge') return limitOf(terms);
  if (outputLimit === undefined) return failure({ code: 'missing', arg: 'outputLimit' });
  return limitOf({ ...terms, 'amplifier output': outputLimit / sensitivity });
};

const limitOf = (terms: Parameters<typeof upperLimit>[0]): Outcome<Ceiling> => {
  const limit = upperLimit(terms);
  return limit ? outcome(limit) : failure({ code: 'no-result', rule: 'nothing limits this chain' });
};
