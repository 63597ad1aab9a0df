import { defineFunction } from '../define';

export const mountStress = defineFunction({
  name: 'MOUNT.STRESS',
  family: 'mass loading',
  summary: 'Mean stress in a joint under the inertia force.',
  equation: 'σ = F/A',
  args: {
    force: { unit: 'N', symbol: 'F', text: 'Inertia force on the joint.', atLeast: 0 },
    area: { unit: 'mm²', symbol: 'A', text: 'Bonded or clamped area.', above: 0 },
  },
  result: { unit: 'kPa', symbol: 'σ', text: 'Mean stress.' },
  validity:
    'Mean over the area; peel at an edge is higher. Compare with the joint’s strength at the highest temperature.',
  source: { kind: 'derivation', from: 'stress is force over area' },

  compute: ({ force, area }) => force / area,

  examples: [
    { args: [3.5696206, 50], result: 71.3924, within: 1e-5, from: 'by hand: 3.5696206 / 5e-5 m²' },
    { args: [1, 100], result: 10, within: 1e-12, from: 'by hand: 1 N on 1 cm² is 10 kPa' },
  ],
});
