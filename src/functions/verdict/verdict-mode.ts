import { INPUT_MODES, OUTPUT_MODES } from '../../plan/fields';
import { MODE_OF } from '../../plan/level';
import { defineFunction } from '../define';

export const verdictMode = defineFunction({
  name: 'VERDICT.MODE',
  family: 'verdict',
  summary: 'Whether the input can take what the sensor gives: PASS, FAIL, or INCOMPLETE when one is not known.',
  equation: 'IEPE–IEPE, charge–charge, DC or voltage–voltage, bridge–bridge',
  args: {
    output: { kind: 'choice', choices: OUTPUT_MODES, text: 'Output mode of the sensor.', optional: true },
    mode: { kind: 'choice', choices: INPUT_MODES, text: 'Mode of the input.', optional: true },
  },
  result: { kind: 'text', text: 'PASS, FAIL or INCOMPLETE.' },
  validity: 'The signal’s kind only; connectors and wiring are for the person who plugs them.',
  source: { kind: 'practice', note: 'common practice, no source' },
  compute: ({ output, mode }) => {
    if (!output || !mode) return 'INCOMPLETE';
    return MODE_OF[output] === mode ? 'PASS' : 'FAIL';
  },
  examples: [
    {
      args: ['IEPE', 'IEPE'],
      result: 'PASS',
      from: 'common practice, no source: constant-current sensor on its supply',
    },
    {
      args: ['charge', 'IEPE'],
      result: 'FAIL',
      from: 'common practice, no source: a charge sensor has no electronics to feed',
    },
    {
      args: ['DC', 'voltage'],
      result: 'PASS',
      from: 'common practice, no source: a static sensor gives a plain voltage',
    },
    { args: [null, 'IEPE'], result: 'INCOMPLETE', from: 'by definition: nothing unknown passes' },
  ],
});
