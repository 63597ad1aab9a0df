import { polesLimit as limitOfPoles } from '../../core/frequency/poles';
import { defineFunction } from '../define';

export const polesLimit = defineFunction({
  name: 'POLES.LIMIT',
  family: 'frequency span',
  summary: 'Frequency at which several high-pass poles together lose a share.',
  equation: 'Π 1/√(1+(f_c/f)²) = 1 − δ',
  args: {
    poles: { kind: 'list', unit: 'Hz', symbol: 'f_c', text: 'Corner of each high-pass pole (−3 dB).', atLeast: 0 },
    loss: { unit: '%', symbol: 'δ', text: 'Loss meant by the limit.', above: 0, below: 100, default: 5 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Lower limit of the cascade; 0 without poles.' },
  validity: 'First-order poles one after the other: sensor, amplifier, coupling, digital filter.',
  source: { kind: 'derivation', from: 'product of high-pass poles, solved for the frequency' },

  compute: ({ poles, loss }) => limitOfPoles(poles, loss),

  examples: [
    { args: ['1; 1'], result: 4.358899, within: 1e-6, from: 'by hand: 1 + 1/f² = 1/0.95, f = √19' },
    { args: ['0.1643420525894316; 0.5'], result: 1.608804, within: 1e-6, from: 'scipy.optimize.brentq of the product' },
    {
      args: ['1; 1', 29.2893219],
      result: 1.553774,
      within: 1e-6,
      from: 'by hand: −3 dB of two equal poles at 1/√(√2 − 1)',
    },
  ],
});
