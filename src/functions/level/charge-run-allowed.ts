import { failure, outcome } from '../../core/issue';
import { amplitudeRatio } from '../../core/level/margin';
import { noiseBandwidth } from '../../core/level/noise';
import { inBand, ANALYSED_BAND } from './band';
import { defineFunction } from '../define';

export const chargeRunAllowed = defineFunction({
  name: 'CHARGE.RUN.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Longest charge cable whose noise keeps a signal-to-noise ratio.',
  equation: 'l = (a·S_q/(10^(M/20)·e_n·√B) − C_s − C_f)/C′',
  args: {
    lowest: {
      unit: 'g',
      symbol: 'a',
      text: 'Smallest level that must still be read, r.m.s.',
      above: 0,
      statistic: 'rms',
    },
    signalToNoise: { unit: 'dB', symbol: 'M', text: 'Signal-to-noise ratio kept.', atLeast: 0, default: 20 },
    noiseVoltage: { unit: 'nV/√Hz', symbol: 'e_n', text: 'Input noise voltage of the amplifier.', above: 0 },
    sensorCapacitance: { unit: 'pF', symbol: 'C_s', text: 'Capacitance of the sensor.', atLeast: 0 },
    feedbackCapacitance: { unit: 'pF', symbol: 'C_f', text: 'Feedback capacitance of the amplifier.', atLeast: 0 },
    capacitancePerMetre: { unit: 'pF/m', symbol: 'C′', text: 'Capacitance of the cable per metre.', above: 0 },
    sensitivity: {
      unit: 'pC/g',
      symbol: 'S_q',
      text: 'Smallest charge sensitivity over the temperature range.',
      above: 0,
    },
    ...ANALYSED_BAND,
  },
  result: { unit: 'm', symbol: 'l', text: 'Cable length.' },
  validity: 'As NOISE.CHARGE, whose inverse it is; leaves no room for other noise.',
  source: { kind: 'derivation', from: 'σ of NOISE.CHARGE solved for the cable’s share of ΣC' },

  compute: (given) => {
    const { low, high, lineSpacing, lowest, signalToNoise, noiseVoltage, sensitivity } = given;
    const length = inBand(low, high, () => {
      const density =
        (lowest * sensitivity) / amplitudeRatio(signalToNoise) / Math.sqrt(noiseBandwidth(low, high, lineSpacing));
      const cable = density / noiseVoltage - given.sensorCapacitance - given.feedbackCapacitance;
      return cable / given.capacitancePerMetre;
    });
    if (!length.ok || length.value > 0) return length.ok ? outcome(length.value) : length;
    return failure({ code: 'no-result', rule: 'sensor and amplifier alone are too noisy' });
  },

  examples: [
    {
      args: [0.00141421356237, 20, 10, 900, 100, 100, 10, 0, 5000],
      result: 10,
      within: 1e-6,
      from: 'by hand: 2 nF give 141.42 µg, a tenth of the level; 1 nF of it is cable',
    },
    {
      args: [0.00282842712475, 20, 10, 900, 100, 100, 10, 0, 5000],
      result: 30,
      within: 1e-6,
      from: 'by hand: twice the level allows 4 nF, 3 nF of it cable',
    },
  ],
});
