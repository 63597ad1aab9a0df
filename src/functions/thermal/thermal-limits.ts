import { outcome } from '../../core/issue';
import { describeLimit, limitVerdict } from '../../core/thermal/limits';
import { readLimitRows } from './limit-rows';
import { defineFunction } from '../define';

export const thermalLimits = defineFunction({
  name: 'THERMAL.LIMITS',
  family: 'thermal',
  summary: 'Operating limits of sensor, mount, cable and adhesive against a needed temperature range, each named.',
  equation: 'FAIL if T₁ < min or T₂ > max, INCOMPLETE if a limit is missing, else PASS',
  args: {
    low: {
      unit: '°C',
      symbol: 'T₁',
      text: 'Lowest temperature needed, or both as a range text.',
      atLeast: -273.15,
      rangeWith: 'high',
    },
    high: { unit: '°C', symbol: 'T₂', text: 'Highest temperature needed.', atLeast: -273.15 },
    limits: {
      kind: 'block',
      text: 'Three columns: name, lower limit, upper limit in °C; a range text in the second is enough. Empty rows are passed over.',
    },
  },
  result: { kind: 'block', text: 'One row per part: name, verdict, the margin or what it lacks.' },
  validity:
    'Limits of the parts at their own place: a mount sits on the hot surface, a cable may not. Wax and many adhesives give way far below the sensor.',
  source: { kind: 'derivation', from: 'comparison of the needed range with each part’s own limits' },

  compute: ({ low, high, limits }) => {
    if (high < low) {
      return {
        ok: false,
        issue: { code: 'out-of-range', arg: 'high', given: high, unit: '°C', rule: `≥ ${low}` },
      };
    }
    const rows = readLimitRows(limits, 'limits');
    if (!rows.ok) return rows;
    return outcome(
      rows.value.map((part) => [part.name, limitVerdict(part, low, high), describeLimit(part, low, high)]),
    );
  },

  examples: [
    {
      args: [
        15,
        135,
        [
          ['sensor', -54, 121],
          ['stud', -100, 400],
          ['cable', '-55..200 °C', null],
        ],
      ],
      result: [
        ['sensor', 'FAIL', 'ends at 121 °C, 14 K short of 135 °C'],
        ['stud', 'PASS', '115 K and 265 K to spare'],
        ['cable', 'PASS', '70 K and 65 K to spare'],
      ],
      from: 'by hand: 135 − 121, 15 + 100, 400 − 135, 15 + 55, 200 − 135',
    },
    {
      args: [
        15,
        60,
        [
          ['wax', null, 40],
          ['sensor', -54, null],
        ],
      ],
      result: [
        ['wax', 'FAIL', 'ends at 40 °C, 20 K short of 60 °C'],
        ['sensor', 'INCOMPLETE', 'upper limit missing'],
      ],
      from: 'by hand: 60 − 40; no upper limit given',
    },
  ],
});
