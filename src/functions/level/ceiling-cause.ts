import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { CEILING_CHAIN, ceilingOf } from './ceiling-chain';

export const ceilingCause = defineFunction({
  name: 'CEILING.CAUSE',
  family: 'level and dynamic range',
  summary: 'What sets the upper limit of the channel, in words.',
  equation: 'the term of CEILING that is smallest; equal terms are joined with "and"',
  args: CEILING_CHAIN,
  result: { kind: 'text', text: 'full scale, input range, bias swing, amplifier output.' },
  validity: 'As CEILING.',
  source: { kind: 'derivation', from: 'the first stage that clips limits the chain' },

  compute: (chain) =>
    mapped(ceilingOf(chain), ({ limiting, alsoLimiting }) => [limiting, ...alsoLimiting].join(' and ')),

  examples: [
    {
      args: [60, 'IEPE', 100, 10, 18, 8.2, 12.2, 1.5, 2],
      result: 'bias swing',
      from: 'by hand: 43 g against 60 g and 100 g',
    },
    {
      args: [1000, 'charge', 50, 10, null, null, null, null, null, 10],
      result: 'input range and amplifier output',
      from: 'by hand: 10 V limits both at 200 g',
    },
    {
      args: [50, 'IEPE', 10, 10, 24, 8, 12, 1.5, 2],
      result: 'full scale',
      from: 'by hand: 50 g against 600 g and 1000 g',
    },
  ],
});
