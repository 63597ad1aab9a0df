import { temperatureFinding } from '../../plan/findings';
import { sentenceOf } from '../../plan/sentence';
import { excessesOf } from '../../plan/thermal';
import { defineFunction } from '../define';
import { NO_TEXT } from './cell-findings';
import { TEMPERATURE_ARGUMENTS } from './temperature-arguments';

export const causeTemperature = defineFunction({
  name: 'CAUSE.TEMPERATURE',
  family: 'verdict',
  summary: 'Which temperature lies beyond which operating limit, in words: sensor, mount and cable.',
  equation: 'needed temperature, limit of the part that it exceeds',
  args: TEMPERATURE_ARGUMENTS,
  result: { kind: 'text', text: 'Sentences; a dash where no known limit is exceeded.' },
  validity: 'Limits that are not known exceed nothing here; VERDICT.THERMAL says INCOMPLETE for those it needs.',
  source: { kind: 'derivation', from: 'each needed temperature put beside each operating limit' },
  compute: (given) =>
    excessesOf(
      { low: given.temperatureLow, high: given.temperatureHigh },
      {
        sensor: { temperatureMin: given.sensorMin, temperatureMax: given.sensorMax },
        mount: { temperatureMin: given.mountMin, temperatureMax: given.mountMax },
        cable: { temperatureMin: given.cableMin, temperatureMax: given.cableMax },
      },
    )
      .map((excess) => sentenceOf(temperatureFinding(excess)))
      .join(' ') || NO_TEXT,
  examples: [
    {
      args: [15, 135, -54, 177, null, 40],
      result: '135 °C, upper limit of the mount 40 °C: another mount or a milder place would help.',
      from: 'by definition: wax rated to 40 °C, 135 °C is needed',
    },
    {
      args: [-60, 20, -54, 121, null, null, -40, 80],
      result:
        '−60 °C, lower limit of the sensor −54 °C: another sensor or a milder place would help. −60 °C, lower limit of the cable −40 °C: another cable or a milder place would help.',
      from: 'by definition: −60 °C is below both limits',
    },
    { args: [15, 35, -54, 121], result: '–', from: 'by definition: 15 to 35 °C lies within −54 to 121 °C' },
    { args: [null, 35, null, 121], result: '–', from: 'by definition: what is not known exceeds nothing' },
  ],
});
