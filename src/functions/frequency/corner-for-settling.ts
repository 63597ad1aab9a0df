import { failure, outcome } from '../../core/issue';
import { cornerForSettling as cornerToSettle } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const cornerForSettling = defineFunction({
  name: 'CORNER.FOR.SETTLING',
  family: 'frequency span',
  summary: 'Smallest corner that lets a step decay to a residue within a wait.',
  equation: 'f_c = ln(V₀/V)/(2π·t)',
  args: {
    wait: { unit: 's', symbol: 't', text: 'Waiting time.', above: 0 },
    step: { unit: 'V', symbol: 'V₀', text: 'Step, such as the bias when power comes on.', above: 0 },
    residue: { unit: 'V', symbol: 'V', text: 'What may be left of it.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f_c', text: 'Corner frequency (−3 dB).' },
  validity: 'As SETTLING.TIME, whose inverse it is.',
  source: { kind: 'derivation', from: 'exponential decay solved for the corner' },

  compute: ({ wait, step, residue }) =>
    residue < step
      ? outcome(cornerToSettle(wait, step, residue))
      : failure({ code: 'out-of-range', arg: 'residue', given: residue, unit: 'V', rule: `< step, ${step}` }),

  examples: [
    { args: [37.35706792818612, 10, 8e-5], result: 0.05, within: 1e-6, from: 'by hand, back from 0.05 Hz' },
    {
      args: [4.605170185988092, 100, 1],
      result: 0.1591549,
      within: 1e-6,
      from: 'by hand: one time constant per second',
    },
  ],
});
