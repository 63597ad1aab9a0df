import { failure, outcome } from '../../core/issue';
import { cyclesToPeak, largestPeak } from '../../core/level/statistics';
import { LEAST_CYCLES } from './cycles';
import { fromSi } from '../../core/units';
import { defineFunction } from '../define';

export const peakDuration = defineFunction({
  name: 'PEAK.DURATION',
  family: 'level and dynamic range',
  summary: 'Time after which a peak is to be expected in narrow-band random vibration.',
  equation: 'T = exp(r²/2)/f, r = (k + √(k² − 4·0.5772))/2, k = a/σ',
  args: {
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
    frequency: { unit: 'Hz', symbol: 'f', text: 'Middle frequency of the response.', above: 0 },
    peak: { unit: 'g', symbol: 'a', text: 'Peak, for instance the upper limit.', above: 0, statistic: 'peak' },
  },
  result: { unit: 's', symbol: 'T', text: 'Duration in which the largest peak is on average this one.' },
  validity: 'As PEAK.EXPECTED, whose inverse it is; at least ten cycles.',
  source: {
    kind: 'paper',
    cite: 'A. G. Davenport 1964, distribution of the largest value of a random function',
    locator: 'mean of the largest value, solved for N; no page',
    read: 'from memory',
  },

  compute: ({ rms, frequency, peak }) => {
    const least = rms * largestPeak(LEAST_CYCLES);
    if (peak >= least) return outcome(cyclesToPeak(peak / rms) / frequency);
    const rule = `≥ ${fromSi(least, 'g').toPrecision(4)}, expected in ten cycles`;
    return failure({ code: 'out-of-range', arg: 'peak', given: fromSi(peak, 'g'), unit: 'g', rule });
  },

  examples: [
    { args: [1, 2000, 4.955720889301049], result: 60, within: 1e-6, from: 'by hand, back from N = 120000 cycles' },
    { args: [2, 100, 9.627828950049064], result: 600, within: 1e-6, from: 'by hand, back from N = 60000 cycles' },
  ],
});
