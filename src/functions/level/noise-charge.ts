import { chargeNoiseDensity, noiseBandwidth, whiteNoise } from '../../core/level/noise';
import { defineFunction } from '../define';
import { ANALYSED_BAND, inBand } from './band';

export const noiseCharge = defineFunction({
  name: 'NOISE.CHARGE',
  family: 'level and dynamic range',
  summary: 'R.m.s. noise of a charge amplifier in the analysed band, as acceleration at the sensor; grows with cable.',
  equation: 'σ = e_n·(C_s + C_c + C_f)·√B/S_q, B = f₂ − f₁ or 1.5·Δf',
  args: {
    noiseVoltage: { unit: 'nV/√Hz', symbol: 'e_n', text: 'Input noise voltage of the amplifier.', above: 0 },
    sensorCapacitance: { unit: 'pF', symbol: 'C_s', text: 'Capacitance of the sensor.', atLeast: 0 },
    cableCapacitance: { unit: 'pF', symbol: 'C_c', text: 'Capacitance of the whole cable.', atLeast: 0 },
    feedbackCapacitance: { unit: 'pF', symbol: 'C_f', text: 'Feedback capacitance of the amplifier.', atLeast: 0 },
    sensitivity: {
      unit: 'pC/g',
      symbol: 'S_q',
      text: 'Smallest charge sensitivity over the temperature range.',
      above: 0,
    },
    ...ANALYSED_BAND,
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. noise at the sensor.' },
  validity:
    'White noise, source insulation high. A hot, leaky sensor has more noise at low frequency; noise of a moving cable cannot be computed.',
  source: { kind: 'derivation', from: 'e_n drives the whole capacitance at the summing point: q_n = e_n·ΣC' },

  compute: ({
    noiseVoltage,
    sensorCapacitance,
    cableCapacitance,
    feedbackCapacitance,
    sensitivity,
    low,
    high,
    lineSpacing,
  }) =>
    inBand(
      low,
      high,
      () =>
        whiteNoise(
          chargeNoiseDensity(noiseVoltage, sensorCapacitance, cableCapacitance, feedbackCapacitance),
          noiseBandwidth(low, high, lineSpacing),
        ) / sensitivity,
    ),

  examples: [
    {
      args: [10, 900, 1000, 100, 10, 0, 5000],
      result: 0.000141421356,
      within: 1e-8,
      from: 'by hand: 10 nV/√Hz × 2 nF × √5000 Hz = 1.41421356e-3 pC; /10 pC/g',
    },
    {
      args: [10, 350, 2000, 50, 1.2, 20, 2000],
      result: 0.000889944,
      within: 1e-6,
      from: 'by hand: 10 nV/√Hz × 2.4 nF × √1980 Hz = 1.0679326e-3 pC; /1.2 pC/g',
    },
  ],
});
