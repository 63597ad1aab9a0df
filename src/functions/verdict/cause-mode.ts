import { INPUT_MODES, OUTPUT_MODES } from '../../plan/fields';
import { MODE_OF } from '../../plan/level';
import { sentenceOf } from '../../plan/sentence';
import { defineFunction } from '../define';
import { NO_TEXT } from './cell-findings';

export const causeMode = defineFunction({
  name: 'CAUSE.MODE',
  family: 'verdict',
  summary: 'Why VERDICT.MODE fails, in words: which output stands on which input, and what would help.',
  equation: 'output, input it needs, input it has',
  args: {
    output: { kind: 'choice', choices: OUTPUT_MODES, text: 'Output mode of the sensor.', forgiving: true },
    mode: { kind: 'choice', choices: INPUT_MODES, text: 'Mode of the input.', forgiving: true },
  },
  result: { kind: 'text', text: 'A sentence; a dash where the input takes it, or one of both is not known.' },
  validity: 'The signal’s kind only; connectors and wiring are for the person who plugs them.',
  source: { kind: 'practice', note: 'common practice, no source' },
  compute: ({ output, mode }) =>
    !output || !mode || MODE_OF[output] === mode
      ? NO_TEXT
      : sentenceOf({ check: 'input mode', verdict: 'FAIL', output, mode }),
  examples: [
    {
      args: ['charge', 'IEPE'],
      result: 'charge output on an IEPE input: the two do not work together; a charge input would help.',
      from: 'common practice, no source: a charge sensor has no electronics to feed',
    },
    { args: ['IEPE', 'IEPE'], result: '–', from: 'common practice, no source: constant-current sensor on its supply' },
    { args: [null, 'IEPE'], result: '–', from: 'by definition: what is not known is no cause' },
  ],
});
