import { amplitudeRatio } from '../core/level/margin';
import { fromSi } from '../core/units';
import { limitsFor } from '../plan/limits-for';
import { logAxis, type Axis } from './axis';
import { acceleration, decibels } from './numerals';
import { LINE, type Mark, type Plot } from './plot';
import {
  barMark,
  boundMark,
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

/** Noise, lowest level, highest level and upper limit of one or several checks on one logarithmic axis of acceleration. */
export const levelLadder = (rows: readonly PlotRow[], options: PlotOptions): Plot => {
  const words = PLOT_WORDS[options.language];
  const values = rows.flatMap((row) => {
    const { levelLow, levelHigh } = row.check.channel.requirement;
    return [row.check.level.noise, row.check.level.ceiling?.value, levelLow, levelHigh, ...boundsOf(row, options)];
  });
  const axis = logAxis(
    values.map((value) => (value === undefined ? NaN : fromSi(value, 'g'))),
    options.width,
  );
  return stacked(rows, {
    ...options,
    title: words.ladder,
    unit: words.accelerationAxis,
    axis,
    legend: legendOf(words),
    draw: (row, top) => strip(row, top, axis, options),
  });
};

/** Where the noise may end and the upper limit may begin for a PASS, m/s². */
const boundsOf = ({ check }: PlotRow, options: PlotOptions): readonly number[] => {
  const limits = limitsFor(check.channel, options.limits);
  const { levelLow, levelHigh } = check.channel.requirement;
  return [
    ...(levelLow === undefined ? [] : [levelLow / amplitudeRatio(limits.signalToNoise.pass)]),
    ...(levelHigh === undefined ? [] : [levelHigh * amplitudeRatio(limits.headroom.pass)]),
  ];
};

const legendOf = (words: PlotWords): readonly LegendEntry[] => [
  { text: words.ladderBar, sample: (x1, x2, y) => [barMark(x1, x2, y, 'span')] },
  { text: words.ladderBracket, sample: (x1, x2, y) => bracket(x1, x2, y, ['ink', 'ink']) },
  { text: words.ladderLimits, sample: (x1, x2, y) => [boundMark((x1 + x2) / 2, y)] },
];

const strip = (row: PlotRow, top: number, axis: Axis, options: PlotOptions): Strip => {
  const { label, check } = row;
  const { level, channel } = check;
  const { levelLow, levelHigh } = channel.requirement;
  const { width, language } = options;
  const words = PLOT_WORDS[language];
  const at = (si: number): number => axis.at(fromSi(si, 'g'));
  const middle = top + 1.5 * LINE;
  const drawn: Mark[] = [];
  if (level.noise !== undefined && level.ceiling)
    drawn.push(barMark(at(level.noise), at(level.ceiling.value), middle, 'span'));
  drawn.push(...boundsOf(row, options).map((bound) => boundMark(at(bound), middle)));
  const tones = [TONE_OF[level.lowEnd], TONE_OF[level.highEnd]] as const;
  if (levelLow !== undefined && levelHigh !== undefined)
    drawn.push(...bracket(at(levelLow), at(levelHigh), middle, tones));

  const known = (si: number | undefined): string => (si === undefined ? words.notKnown : acceleration(si, language));
  const low = `${words.signalToNoise} ${decibels(level.signalToNoise, language) ?? words.notKnown} ${level.lowEnd}`;
  const high = `${words.headroom} ${decibels(level.headroom, language) ?? words.notKnown} ${level.highEnd}`;
  const lowNumbers = `${words.noise} ${known(level.noise)}, ${words.lowest} ${known(levelLow)}`;
  const cause = level.ceiling ? ` (${words.ceiling[level.ceiling.limiting]})` : '';
  const highNumbers = `${words.highest} ${known(levelHigh)}, ${words.upperLimit} ${known(level.ceiling?.value)}${cause}`;
  const verdicts = endTexts({ text: low, tone: tones[0] }, { text: high, tone: tones[1] }, top + 2 * LINE, width);
  const numbersTop = top + 2 * LINE + verdicts.height;
  const numbers = endTexts(
    { text: lowNumbers, tone: 'quiet' },
    { text: highNumbers, tone: 'quiet' },
    numbersTop,
    width,
  );
  return {
    marks: [...headMarks(label, level.verdict, top, width), ...drawn, ...verdicts.marks, ...numbers.marks],
    height: 2 * LINE + verdicts.height + numbers.height,
    sentence: `${label}: ${lowNumbers}, ${low}; ${highNumbers}, ${high}.`,
  };
};
