import { rampError } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const thermalRamp = defineFunction({
  name: 'THERMAL.RAMP',
  family: 'thermal',
  summary: 'False output that a steady temperature ramp causes above a low corner.',
  equation: 'a = s_T·R/(2π·f_c)',
  args: {
    sensitivity: { unit: 'mg/K', symbol: 's_T', text: 'Transient temperature sensitivity of the sensor.', atLeast: 0 },
    rampRate: { unit: 'K/min', symbol: 'R', text: 'Steady rate of the temperature, its size.', atLeast: 0 },
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Low corner (−3 dB) of the chain.', above: 0 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Size of the false acceleration, after about five time constants.' },
  validity:
    'One pole, steady ramp. The lag of the case makes it less for ramps; draughts can be worse: cover the sensor.',
  source: {
    kind: 'derivation',
    from: 'slope s_T·R through one high-pass pole of time constant τ = 1/(2πf_c) settles at s_T·R·τ',
  },

  compute: ({ sensitivity, rampRate, corner }) => rampError(sensitivity, rampRate, corner),

  examples: [
    {
      args: [50.98581065, 5, 0.318309886],
      result: 0.002124409,
      within: 1e-6,
      from: 'by hand: 0.5 × 5/60 × 0.5 s = 0.0208333 m/s²; scipy.signal.lsim settles there',
    },
    { args: [60, 1, 0.159154943], result: 0.001, within: 1e-8, from: 'by hand: 60 mg/K × 1/60 K/s × 1 s = 1 mg' },
  ],
});
