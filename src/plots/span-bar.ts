import { findingsOf } from '../plan/findings';
import { logAxis, type Axis } from './axis';
import { quantity } from './numerals';
import { LINE, MARGIN, TEXT_SIZE, type Mark, type Plot } from './plot';
import {
  barMark,
  bracket,
  endTexts,
  headMarks,
  stacked,
  TONE_OF,
  type LegendEntry,
  type PlotOptions,
  type PlotRow,
  type Strip,
} from './strips';
import { PLOT_WORDS, type PlotWords } from './words';

/** Needed band inside the usable span on a logarithmic axis of frequency, with what limits each end. */
export const spanBar = (rows: readonly PlotRow[], options: PlotOptions): Plot => {
  const words = PLOT_WORDS[options.language];
  const values = rows.flatMap(({ check: { frequency, channel } }) => [
    frequency.span?.low ?? NaN,
    frequency.span?.high ?? NaN,
    frequency.wide?.high ?? NaN,
    channel.requirement.bandLow ?? NaN,
    channel.requirement.bandHigh ?? NaN,
  ]);
  const axis = logAxis(values, options.width);
  return stacked(rows, {
    ...options,
    title: words.span,
    unit: words.frequencyAxis,
    axis,
    legend: legendOf(words),
    draw: (row, top) => strip(row, top, axis, options),
  });
};

const legendOf = (words: PlotWords): readonly LegendEntry[] => [
  { text: words.spanBar, sample: (x1, x2, y) => [barMark(x1, x2, y, 'span')] },
  { text: words.spanWide, sample: (x1, x2, y) => [barMark(x1, x2, y, 'wide')] },
  { text: words.spanBracket, sample: (x1, x2, y) => bracket(x1, x2, y, ['ink', 'ink']) },
];

/** Verdict and cause of each end, as the findings give them. */
const endsOf = ({ check }: PlotRow, { limits, language }: PlotOptions) => {
  const words = PLOT_WORDS[language];
  const { verdict } = check.frequency;
  const ends = { low: { verdict, cause: '' }, high: { verdict, cause: '' } };
  for (const finding of findingsOf(check, limits, 'frequency')) {
    if (finding.check === 'span low')
      ends.low = { verdict: finding.verdict, cause: finding.cause ? ` (${words.low[finding.cause]})` : '' };
    if (finding.check === 'span high')
      ends.high = { verdict: finding.verdict, cause: finding.cause ? ` (${words.high[finding.cause]})` : '' };
  }
  return ends;
};

const strip = (row: PlotRow, top: number, axis: Axis, options: PlotOptions): Strip => {
  const { label, check } = row;
  const { width, language } = options;
  const words = PLOT_WORDS[language];
  const { bandLow, bandHigh } = check.channel.requirement;
  const { span, wide, tolerance, verdict } = check.frequency;
  const ends = endsOf(row, options);
  const middle = top + 1.5 * LINE;
  /** A span or band from 0 Hz reaches the left end of the axis. */
  const at = (frequency: number): number => (frequency > 0 ? axis.at(frequency) : MARGIN);
  const drawn: Mark[] = [];
  if (wide) drawn.push(barMark(at(wide.low), at(wide.high), middle, 'wide'));
  if (span) drawn.push(barMark(at(span.low), at(span.high), middle, 'span'));
  const tones = [TONE_OF[ends.low.verdict], TONE_OF[ends.high.verdict]] as const;
  if (bandLow !== undefined && bandHigh !== undefined) drawn.push(...bracket(at(bandLow), at(bandHigh), middle, tones));

  const hertz = (value: number | undefined): string =>
    value === undefined ? words.notKnown : `${quantity(value, 'Hz', language, 4)} Hz`;
  const from = span === null ? words.empty : `${words.from} ${hertz(span?.low)}${ends.low.cause}`;
  const to = span === null ? '' : `${words.to} ${hertz(span?.high)}${ends.high.cause}`;
  const needed = `${words.bandNeeded} ${hertz(bandLow)} ${words.to} ${hertz(bandHigh)}`;
  const usable = words.usable(quantity(tolerance.pass, '%', language));
  const said = endTexts({ text: from, tone: tones[0] }, { text: to, tone: tones[1] }, top + 2 * LINE, width);
  const y = top + 2 * LINE + said.height + TEXT_SIZE;
  return {
    marks: [
      ...headMarks(label, verdict, top, width),
      ...drawn,
      ...said.marks,
      { kind: 'text', x: 0, y, text: needed, tone: 'quiet' },
    ],
    height: 3 * LINE + said.height,
    sentence: `${label}: ${needed}, ${usable} ${[from, to].filter(Boolean).join(' ')}, ${verdict}.`,
  };
};
