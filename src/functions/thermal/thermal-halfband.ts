import { halfBand } from '../../core/thermal/band';
import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { bandOf, RESPONSE_OVER_RANGE } from './response';

export const thermalHalfband = defineFunction({
  name: 'THERMAL.HALFBAND',
  family: 'thermal',
  summary: 'What stays either way when the sensitivity is scaled to the middle of its band.',
  equation: 'h = (δ₂ − δ₁)/(2 + δ₂ + δ₁)',
  args: RESPONSE_OVER_RANGE,
  result: { unit: '%', symbol: 'h', text: 'Remaining deviation either way.' },
  validity:
    'Temperature of the sensor, not of the chamber. Straight between curve points, every point inside the range counts, renormalised to zero at the calibration temperature, never continued beyond the data.',
  source: {
    kind: 'derivation',
    from: 'the factor halfway between (1 + δ₁) and (1 + δ₂) leaves the same relative rest on both sides',
  },

  compute: (given) => mapped(bandOf(given), halfBand),

  examples: [
    {
      args: [null, 23, 48, 23, 0.4, 'signed'],
      result: 4.7619,
      within: 1e-5,
      from: 'by hand: sensitivities 1 and 1.1, the middle 1.05, 0.05/1.05',
    },
    {
      args: ['-50:-9; 0:-4; 25:0; 75:5; 125:9; 150:12', 15, 135],
      result: 5.65677,
      within: 1e-5,
      from: 'by numpy: extremes 0.9840 and 1.1020 before scaling; 0.118/2.086',
    },
  ],
});
