import { outcome } from '../../core/issue';
import { defineFunction } from '../define';
import { CHANNEL_RESPONSE, FLATNESS, lowCauseOf, spanOf } from './channel-response';

export const frequencyCause = defineFunction({
  name: 'FREQUENCY.CAUSE',
  family: 'frequency span',
  summary: 'What limits each end of the usable span, in words.',
  ...FLATNESS,
  args: CHANNEL_RESPONSE,
  result: {
    kind: 'block',
    text: 'Low end: nothing, sensor, charge amplifier, AC coupling, response. High end: response, analyser, cable drive, data sheet.',
  },

  compute: (channel) => {
    const span = spanOf(channel);
    if (!span.ok) return span;
    return outcome([[lowCauseOf(channel, span.value), span.value.highLimitedBy]]);
  },

  examples: [
    {
      args: [38000, 30, 'IEPE', 0.5, null, null, 0.5, 5, 160, 512],
      result: [['AC coupling', 'analyser']],
      from: 'by hand: 0.5 Hz coupling against a sensor pole of 0.164 Hz; 200 Hz against about 8.3 kHz',
    },
    {
      args: [28000, 40, 'charge', null, null, 0.5, 0.05, 5, 160, 51200],
      result: [['charge amplifier', 'response']],
      from: 'by hand: 0.318 Hz against 0.05 Hz coupling; +5 % near 0.218 × 28 kHz, below 20 kHz',
    },
    {
      args: [1400, 0.7142857, 'DC', null, null, null, 'none', 5, 20, 51200],
      result: [['nothing', 'response']],
      from: 'definition: no pole; the damped resonance falls by 5 % below 1.4 kHz',
    },
  ],
});
