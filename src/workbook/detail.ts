import { markedIn, type Language } from '../core/language';
import type { UnitId } from '../core/units';
import { UNITS } from '../core/units';
import { cautionsFor } from '../plan/cautions';
import type { ChannelCheck } from '../plan/check';
import { findingsOf } from '../plan/findings';
import type { Limits } from '../plan/limits';
import { inWords, signed } from '../plan/numbers-in-words';
import { sentenceOf } from '../plan/sentence';
import type { Headline } from '../plan/finding';
import { levelLadder } from '../plots/level-ladder';
import type { Plot } from '../plots/plot';
import { spanBar } from '../plots/span-bar';
import type { PlotOptions, PlotRow } from '../plots/strips';
import { thermalStrip } from '../plots/thermal-strip';
import { pieceLines } from './piece-lines';
import { placeLines } from './place-lines';
import type { DetailLine, RowDetail } from './plan-view';
import { HEADLINES } from './results';
import { SESSION_WORDS, type SessionWords } from './words';

type Lines = (check: ChannelCheck, say: Say) => readonly DetailLine[];

/** Writes numbers and ranges in one language. */
class Say {
  readonly words: SessionWords;
  constructor(private readonly language: Language) {
    this.words = SESSION_WORDS[language];
  }

  number(label: string, si: number | undefined, unit: UnitId, digits = 3): DetailLine {
    return si === undefined
      ? { label, value: this.words.notKnown, unit: '' }
      : { label, value: this.plain(si, unit, digits), unit: UNITS[unit].label };
  }

  /** "low to high"; null is an empty range. */
  range(label: string, range: Range | null | undefined, unit: UnitId, write: Write = inWords): DetailLine {
    const { words, language } = this;
    if (!range) return { label, value: range === null ? words.empty : words.notKnown, unit: '' };
    const [low, high] = [range.low, range.high].map((end) => markedIn(write(end, unit), language));
    return { label, value: `${low} ${words.to} ${high}`, unit: UNITS[unit].label };
  }

  plain(si: number, unit: UnitId, digits = 3): string {
    return markedIn(inWords(si, unit, digits), this.language);
  }
}
interface Range {
  readonly low: number;
  readonly high: number;
}
type Write = (si: number, unit: UnitId) => string;
const inHertz: Write = (si, unit) => inWords(si, unit, 4);

const between = (low: number | undefined, high: number | undefined): Range | undefined =>
  low === undefined || high === undefined ? undefined : { low, high };

const LINES: Readonly<Record<Headline, Lines>> = {
  level: ({ level, channel: { requirement } }, say) => [
    say.number(say.words.lowest, requirement.levelLow, 'g'),
    say.number(say.words.noise, level.noise, 'g'),
    say.number(say.words.signalToNoise, level.signalToNoise, 'dB'),
    say.number(say.words.highest, requirement.levelHigh, 'g'),
    say.number(say.words.upperLimit(level.ceiling?.limiting), level.ceiling?.value, 'g'),
    say.number(say.words.headroom, level.headroom, 'dB'),
    say.number(say.words.rangeNeeded, level.rangeNeeded, 'dB'),
    say.number(say.words.rangeAvailable, level.rangeAvailable, 'dB'),
  ],
  mass: ({ mass }, say) => [
    say.number(say.words.addedMass, mass.total, 'gram'),
    say.number(say.words.localMass, mass.localMass, 'gram', 4),
    say.number(say.words.massRatio, mass.ratio, '1'),
    say.number(say.words.heaviest, mass.allowed, 'gram'),
    say.number(say.words.levelEffect, mass.levelEffect, '%'),
    ...(mass.frequencyShift === undefined ? [] : [say.number(say.words.frequencyEffect, mass.frequencyShift, '%')]),
  ],
  thermal: ({ thermal, channel: { requirement } }, say) => [
    say.range(say.words.temperature, between(requirement.temperatureLow, requirement.temperatureHigh), '°C'),
    say.range(say.words.deviation, thermal.band, '%', signed),
    say.number(say.words.halfBand, thermal.halfBand, '%'),
  ],
  frequency: ({ frequency, channel: { requirement } }, say) => {
    const { pass, warn } = frequency.tolerance;
    return [
      say.range(say.words.bandNeeded, between(requirement.bandLow, requirement.bandHigh), 'Hz', inHertz),
      say.range(say.words.spanAt(say.plain(pass, '%')), frequency.span, 'Hz', inHertz),
      say.range(say.words.spanAt(say.plain(warn ?? pass, '%')), frequency.wide, 'Hz', inHertz),
      say.number(say.words.resonance, frequency.mountedResonance, 'Hz'),
    ];
  },
};

const DRAWN: Readonly<Partial<Record<Headline, (rows: readonly PlotRow[], options: PlotOptions) => Plot>>> = {
  level: levelLadder,
  thermal: thermalStrip,
  frequency: spanBar,
};
const plotOf = (name: Headline, check: ChannelCheck, options: PlotOptions): Plot | undefined => {
  const { id, named, sensor } = check.channel;
  return DRAWN[name]?.([{ label: named?.sensor ?? sensor?.name ?? id, check }], options);
};

/** All numbers of one channel, what each finding says, and the cautions that the row calls for. */
export const detailOf = (check: ChannelCheck, limits: Limits, language: Language, plotWidth?: number): RowDetail => ({
  place: [...placeLines(check.channel, language), ...pieceLines(check.channel, language)],
  headlines: HEADLINES.map((name) => ({
    name,
    verdict: check[name].verdict,
    lines: LINES[name](check, new Say(language)),
    plot: plotWidth === undefined ? undefined : plotOf(name, check, { width: plotWidth, limits, language }),
    sentences: findingsOf(check, limits, name).map((finding) => sentenceOf(finding, language)),
  })),
  cautions: cautionsFor([check], language).map(({ caution }) => caution),
});
