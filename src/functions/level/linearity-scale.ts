import { errorOfFullScale } from '../../core/level/linearity';
import { defineFunction } from '../define';

export const linearityScale = defineFunction({
  name: 'LINEARITY.SCALE',
  family: 'level and dynamic range',
  summary: 'Linearity error at a level, for a data sheet that states it in percent of full scale.',
  equation: 'e = λ·a_fs/a',
  args: {
    linearity: { unit: '%', symbol: 'λ', text: 'Linearity, percent of full scale.', above: 0, below: 100 },
    fullScale: { unit: 'g', symbol: 'a_fs', text: 'Full scale of the sensor.', above: 0, statistic: 'peak' },
    level: { unit: 'g', symbol: 'a', text: 'Level reported.', above: 0, statistic: 'peak' },
  },
  result: { unit: '%', symbol: 'e', text: 'Half-width of the error, of the reading.' },
  validity:
    'Upper bound, useful from about a tenth of full scale (common practice, no source): below it the statement says little. Never mix with a growth per 1000 m/s².',
  source: { kind: 'derivation', from: 'a constant absolute error λ·a_fs over the reading' },

  compute: ({ linearity, fullScale, level }) => errorOfFullScale(linearity, fullScale, level),

  examples: [
    { args: [1, 50, 10], result: 5, within: 1e-6, from: 'by hand: 0.5 g of 10 g' },
    { args: [1, 500, 500], result: 1, within: 1e-6, from: 'by hand: at full scale the statement itself' },
  ],
});
