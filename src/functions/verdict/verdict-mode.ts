import { INPUT_MODES, OUTPUT_MODES, type InputMode, type OutputMode } from '../../plan/fields';
import { defineFunction } from '../define';

/** The input modes that take each output mode. */
export const FITTING_MODES: Readonly<Record<OutputMode, readonly InputMode[]>> = {
  IEPE: ['IEPE'],
  charge: ['charge'],
  DC: ['voltage'],
  voltage: ['voltage'],
  bridge: ['bridge'],
};

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
    return FITTING_MODES[output].includes(mode) ? 'PASS' : 'FAIL';
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
