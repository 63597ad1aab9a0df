import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { CEILING_CHAIN, ceilingOf } from './ceiling-chain';

export const ceiling = defineFunction({
  name: 'CEILING',
  family: 'level and dynamic range',
  summary: 'Largest peak that passes sensor, amplifier and input without clipping.',
  equation: 'a_max = min(a_fs, R/S, min(V_s − V₂ − V_d, V₁ − V_f)/S for IEPE, V_o/S for charge)',
  args: CEILING_CHAIN,
  result: { unit: 'g', symbol: 'a_max', text: 'Upper limit, peak; 0 when the supply leaves no swing about the bias.' },
  validity: 'Bias limits and sensitivity over the temperature range. Full scale is not the survival limit.',
  source: { kind: 'derivation', from: 'the first stage that clips limits the chain' },

  compute: (chain) => mapped(ceilingOf(chain), ({ value }) => value),

  examples: [
    {
      args: [80, 'IEPE', 100, 10, 24, 8.2, 12.2, 1.5, 2],
      result: 62,
      within: 1e-9,
      from: 'by hand: min(80, 100, min(10.3, 6.2)/0.1)',
    },
    {
      args: [60, 'IEPE', 100, 10, 18, 8.2, 12.2, 1.5, 2],
      result: 43,
      within: 1e-9,
      from: 'by hand: an 18 V supply leaves 4.3 V upwards',
    },
    {
      args: [1000, 'charge', 50, 10, null, null, null, null, null, 8],
      result: 160,
      within: 1e-9,
      from: 'by hand: 8/0.05',
    },
    { args: [5, 'DC', 400, 10], result: 5, within: 1e-9, from: 'by hand: full scale 5 g against 10/0.4 = 25 g' },
  ],
});
