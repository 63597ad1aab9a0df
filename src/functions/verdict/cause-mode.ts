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
    ceiling: {
      unit: 'g',
      text: 'Upper limit of the channel; 0 where the supply leaves no swing.',
      forgiving: true,
      optional: true,
    },
  },
  result: { kind: 'text', text: 'A sentence; a dash where the input takes it, or one of both is not known.' },
  validity: 'The signal’s kind only; connectors and wiring are for the person who plugs them.',
  source: { kind: 'practice', note: 'common practice, no source' },
  compute: ({ output, mode, ceiling }) => {
    const fails = output && mode && MODE_OF[output] !== mode;
    const told = [
      ...(fails ? [sentenceOf({ check: 'input mode', verdict: 'FAIL', output, mode })] : []),
      ...(ceiling === 0 ? [sentenceOf({ check: 'no swing', verdict: 'FAIL' })] : []),
    ];
    return told.join(' ') || NO_TEXT;
  },
  examples: [
    {
      args: ['charge', 'IEPE'],
      result: 'charge output on an IEPE input: the two do not work together; a charge input would help.',
      from: 'common practice, no source: a charge sensor has no electronics to feed',
    },
    { args: ['IEPE', 'IEPE'], result: '–', from: 'common practice, no source: constant-current sensor on its supply' },
    {
      args: ['IEPE', 'IEPE', 0],
      result:
        'The supply leaves the signal no voltage beside the bias, hence no headroom: a higher supply voltage or a sensor with another bias would help.',
      from: 'by definition: an upper limit of 0 is no headroom at any level',
    },
    { args: [null, 'IEPE'], result: '–', from: 'by definition: what is not known is no cause' },
  ],
});
