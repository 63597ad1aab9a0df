import { failure, outcome } from '../../core/issue';
import { settlingTime as timeToSettle } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const settlingTime = defineFunction({
  name: 'SETTLING.TIME',
  family: 'frequency span',
  summary: 'Wait after a step until only a residue is left.',
  equation: 't = ln(V₀/V)/(2π·f_c)',
  args: {
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Corner of the slowest pole (−3 dB).', above: 0 },
    step: { unit: 'V', symbol: 'V₀', text: 'Step, such as the bias when power comes on.', above: 0 },
    residue: { unit: 'V', symbol: 'V', text: 'What may be left of it.', above: 0 },
  },
  result: { unit: 's', symbol: 't', text: 'Waiting time.' },
  validity: 'One pole far below the others. Print it per channel: a low corner can cost minutes.',
  source: { kind: 'derivation', from: 'exponential decay' },

  compute: ({ corner, step, residue }) =>
    residue < step
      ? outcome(timeToSettle(corner, step, residue))
      : failure({ code: 'out-of-range', arg: 'residue', given: residue, unit: 'V', rule: `< step, ${step}` }),

  examples: [
    { args: [0.05, 10, 8e-5], result: 37.35707, within: 1e-6, from: 'by hand: ln 125000 = 11.736069; /(2π × 0.05)' },
    {
      args: [0.15915494309189535, 100, 1],
      result: 4.60517,
      within: 1e-6,
      from: 'by hand: 4.605170 time constants of 1 s to 1 %',
    },
  ],
});
