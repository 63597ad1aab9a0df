import { mapped } from '../../core/issue';
import { thermalBand } from '../../core/thermal/band';
import { responseOf, RESPONSE_OVER_RANGE } from './response';
import { defineFunction } from '../define';

export const thermalDeviation = defineFunction({
  name: 'THERMAL.DEVIATION',
  family: 'thermal',
  summary: 'Deviation of the sensitivity at one temperature from that at another.',
  equation: 'δ′ = (1 + δ(T))/(1 + δ(T_ref)) − 1; without a curve δ′ = α·(T − T_ref)',
  args: {
    deviation: RESPONSE_OVER_RANGE.deviation,
    temperature: { unit: '°C', symbol: 'T', text: 'Temperature of the sensor itself.', atLeast: -273.15 },
    referenceTemperature: {
      unit: '°C',
      symbol: 'T_ref',
      text: 'Temperature of the sensitivity that is used, as on the calibration certificate.',
      atLeast: -273.15,
      default: 23,
    },
    coefficient: RESPONSE_OVER_RANGE.coefficient,
  },
  result: { unit: '%', symbol: 'δ′', text: 'Deviation; a reading not corrected for it is wrong by as much.' },
  validity: 'Straight between curve points, never continued beyond them. The coefficient counts with its sign.',
  source: { kind: 'derivation', from: 'S(T) = S_ref·(1 + δ′), ratio of two sensitivities of one curve' },

  compute: ({ deviation, temperature, referenceTemperature, coefficient }) => {
    const response = responseOf(deviation, coefficient, 'signed');
    if (!response.ok) return response;
    const band = thermalBand(response.value, temperature, temperature, referenceTemperature);
    if (band.ok || band.issue.code !== 'beyond-data') return mapped(band, ({ high }) => high);
    const arg = band.issue.arg === 'calibrationTemperature' ? 'referenceTemperature' : 'temperature';
    return { ok: false, issue: { ...band.issue, arg } };
  },

  examples: [
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 80],
      result: 0.8,
      within: 1e-9,
      from: 'by hand: halfway between 1.2 and 0.4',
    },
    {
      args: ['-50:-9; 0:-4; 25:0; 75:5; 125:9; 150:12', 75, 125],
      result: -3.66972,
      within: 1e-5,
      from: 'by hand: 1.05/1.09 − 1',
    },
    { args: [null, 135, 23, -0.05], result: -5.6, within: 1e-9, from: 'by hand: −0.05 × 112' },
  ],
});
