import { markedIn, type Language } from '../../core/language';
import type { ChannelCheck } from '../../plan/check';
import type { Limits } from '../../plan/limits';
import { inWords } from '../../plan/numbers-in-words';
import { REPORT_WORDS, type ReportWords } from './words';

export type Assumed = keyof ReportWords['assumed'];

/** What was taken for granted where the plan says nothing, each with a sentence. */
export const assumedIn = (
  checks: readonly ChannelCheck[],
  { referenceFrequency, calibrationTemperature }: Limits,
  language: Language,
): readonly (readonly [key: Assumed, sentence: string])[] => {
  const { assumed } = REPORT_WORDS[language];
  const without = (key: 'purpose' | 'thermalTolerance' | 'referenceFrequency'): number =>
    checks.filter(({ channel }) => channel.requirement[key] === undefined).length;
  const said = (key: Assumed, count: number, sentence: (count: number) => string) =>
    count > 0 ? [[key, sentence(count)] as const] : [];
  const hertz = markedIn(inWords(referenceFrequency, 'Hz'), language);
  return [
    ...said('purpose', without('purpose'), assumed.purpose),
    ...said('tolerance', without('thermalTolerance'), assumed.tolerance),
    ...said('reference', without('referenceFrequency'), (count) => assumed.reference(count, hertz)),
    ['calibration', assumed.calibration(markedIn(inWords(calibrationTemperature, '°C'), language))],
    ['spares', assumed.spares],
  ];
};
