import { exactFrequencyRatio, LOADED_BEAMS } from '../../core/mass/beam-with-mass';
import { defineFunction } from '../define';

export const massShiftExact = defineFunction({
  name: 'MASS.SHIFT.EXACT',
  family: 'mass loading',
  summary: 'Exact change of the first natural frequency of a beam with a point mass.',
  equation: 'tip: 1 + cosh λ·cos λ = µλ(cosh λ·sin λ − sinh λ·cos λ); mid-span: 2·cos s = µs(sin s − cos s·tanh s)',
  args: {
    share: { unit: '1', symbol: 'µ', text: 'Added mass over the mass of the whole beam.', atLeast: 0, atMost: 1000 },
    beam: { kind: 'choice', choices: LOADED_BEAMS, text: 'Which beam, and where the mass sits.' },
  },
  result: { unit: '%', symbol: 'Δf/f', text: 'Change of the first natural frequency; negative.' },
  validity: 'Slender uniform beam, point mass. Shows how far the one-mode formula of MASS.SHIFT is too hopeful.',
  source: { kind: 'derivation', from: 'end or joint condition E·I·φ‴ = −m·ω²·φ of the Bernoulli beam with the mass' },

  compute: ({ share, beam }) => exactFrequencyRatio(beam, share) - 1,

  examples: [
    {
      args: [0.1, 'cantilever, mass at the tip'],
      result: -15.590857,
      within: 1e-6,
      from: 'by scipy brentq on the frequency equation: βL 1.72274 against 1.87510',
    },
    {
      args: [0.1, 'simply supported beam, mass at mid-span'],
      result: -8.7317154,
      within: 1e-6,
      from: 'by scipy brentq on the frequency equation: 0.9126828',
    },
  ],
});
