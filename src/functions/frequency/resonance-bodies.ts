import { twoBodyResonance } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const resonanceBodies = defineFunction({
  name: 'RESONANCE.BODIES',
  family: 'frequency span',
  summary: 'Resonance of a sensor on its mount, base and seismic mass solved exactly.',
  equation: 'λ² − ((k+k_s)/m_b + k_s/m_s)·λ + k·k_s/(m_b·m_s) = 0, λ = (2πf)², k_s = m_s·(2πf_s)²',
  args: {
    resonance: { unit: 'Hz', symbol: 'f_s', text: 'Resonance by the data sheet, base held fixed.', above: 0 },
    base: { unit: 'gram', symbol: 'm_b', text: 'Mass of the sensor without its seismic mass.', above: 0 },
    seismic: { unit: 'gram', symbol: 'm_s', text: 'Seismic mass.', above: 0 },
    stiffness: { unit: 'N/m', symbol: 'k', text: 'Axial stiffness of the joint.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Mounted resonance, the lower of the two.' },
  validity: 'Two bodies in line. RESONANCE.MOUNTED needs no seismic mass and reads up to about 13 % low.',
  source: { kind: 'derivation', from: 'eigenvalues of two masses on two springs' },

  compute: ({ resonance, base, seismic, stiffness }) => twoBodyResonance(base, seismic, resonance, stiffness),

  examples: [
    {
      args: [50000, 4.4, 0.6, 3000000000.0],
      result: 49434.91,
      within: 1e-6,
      from: 'scipy.linalg.eigh of mass and stiffness matrix',
    },
    {
      args: [50000, 4.4, 0.6, 200000000.0],
      result: 30731.24,
      within: 1e-6,
      from: 'scipy.linalg.eigh of mass and stiffness matrix',
    },
    {
      args: [159.15494309189535, 1, 1, 1000],
      result: 98.36316,
      within: 1e-6,
      from: 'by hand: two equal masses on two equal springs of 1000 N/m, ω = 1000 rad/s × 0.618034',
    },
  ],
});
