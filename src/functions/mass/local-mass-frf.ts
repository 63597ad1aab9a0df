import { modulus } from '../../core/mass/complex';
import { responseWithin } from '../../core/mass/frequency-response';
import { mapped } from '../../core/issue';
import { bandWithin, readResponse, RESPONSE, RESPONSE_READING } from './response-table';
import { defineFunction } from '../define';

export const localMassFrf = defineFunction({
  name: 'LOCAL.MASS.FRF',
  family: 'mass loading',
  summary: 'Smallest local effective mass in a band, from a measured driving-point response.',
  equation: 'm_eff = min |F/a| = 1/max |A|, A = jω·Y = −ω²·H',
  args: {
    ...RESPONSE,
    low: { unit: 'Hz', text: 'Lower edge of the band, or both as a range text.', above: 0, rangeWith: 'high' },
    high: { unit: 'Hz', text: 'Upper edge of the band.', above: 0 },
    ...RESPONSE_READING,
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Smallest local effective mass from the low to the high edge.' },
  validity:
    'Driving point, in the sensor’s direction, measured with little mass on (correct it with MASS.CORRECTION). Lines dense enough to show the peaks; never continued beyond the data.',
  source: {
    kind: 'standard',
    cite: 'ISO 7626-1',
    locator: 'definitions of accelerance, mobility, dynamic compliance and free effective mass; clause not checked',
    read: 'from memory',
  },

  compute: ({ response, low, high, quantity, form }) => {
    const reading = readResponse(response, quantity, form, 'response');
    if (!reading.ok) return reading;
    return mapped(
      bandWithin(reading.value, low, high),
      (lines) => 1 / Math.max(...responseWithin(lines, low, high).map(modulus)),
    );
  },

  examples: [
    {
      args: [
        [
          ['Hz', 'real', 'imaginary'],
          [50, 3, 4],
          [100, 30, -40],
          [200, 6, 8],
        ],
        50,
        200,
      ],
      result: 20,
      within: 1e-9,
      from: 'by hand: the largest modulus is 50 (m/s²)/N, 1/50 kg',
    },
    {
      args: [
        [
          [159.154943, 0.01],
          [318.309886, 0.002],
        ],
        159.154943,
        318.309886,
        'mobility',
        'magnitude',
      ],
      result: 100,
      within: 1e-6,
      from: 'by hand: ω = 1000 rad/s, 1000 × 0.01 = 10 (m/s²)/N; at 2000 rad/s only 4',
    },
    {
      args: [
        [
          [100, 100],
          [200, 120],
        ],
        '100..200 Hz',
        null,
        'dynamic stiffness',
        'dB',
      ],
      result: 253.303,
      within: 1e-5,
      from: 'by hand: 10⁵ N/m over (628.319 rad/s)² = 0.253303 kg; 10⁶ over (1256.64)² is more',
    },
  ],
});
