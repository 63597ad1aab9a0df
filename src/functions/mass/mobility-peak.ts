import { mobilityPeakFactor } from '../../core/mass/plate-waves';
import { defineFunction } from '../define';

export const mobilityPeak = defineFunction({
  name: 'MOBILITY.PEAK',
  family: 'mass loading',
  summary: 'How far lightly damped resonances of a panel stand above the plate average.',
  equation: '8/(π·f·η·n), η = 2ζ',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency of interest.', above: 0 },
    modalDensity: { unit: '1/Hz', symbol: 'n', text: 'Modal density of the panel.', above: 0 },
    damping: { unit: '%', symbol: 'ζ', text: 'Damping ratio, half the loss factor.', above: 0, atMost: 50 },
  },
  result: { unit: '1', text: 'Peak over mean of the mobility; the local mass at a peak is smaller by it.' },
  validity: 'Well separated modes: above 1. At or below 1 the modes overlap and the plate average holds.',
  source: { kind: 'derivation', from: 'peak φ²/(M_r·ω·η) with M_r = M/4 at the antinode, over the mean π·n(ω)/(2M)' },

  compute: ({ frequency, modalDensity, damping }) => mobilityPeakFactor(frequency, 2 * damping, modalDensity),

  examples: [
    { args: [1000, 0.0642224, 0.5], result: 3.9651, within: 1e-5, from: 'by hand: 8/(π × 0.642224)' },
    { args: [4000, 0.0642224, 0.5], result: 0.99128, within: 1e-4, from: 'by hand: a quarter of the first' },
  ],
});
