import type { Language } from '../core/language';
import type { Verdict } from '../core/verdict';
import type { ChannelCheck } from '../plan/check';
import type { Limits } from '../plan/limits';
import { AXIS_HEIGHT, axisMarks, type Axis } from './axis';
import { tick } from './numerals';
import { fitted, LINE, TEXT_SIZE, widthOf, type Mark, type Plot, type Tone } from './plot';

/** One row of a plot: a channel as it is, or one candidate for it. */
export interface PlotRow {
  readonly label: string;
  readonly check: ChannelCheck;
}
export interface PlotOptions {
  readonly width: number;
  readonly limits: Limits;
  readonly language: Language;
}

/** A row as drawn, the height it took and the same in a sentence. */
export interface Strip {
  readonly marks: readonly Mark[];
  readonly height: number;
  readonly sentence: string;
}

export const TONE_OF: Readonly<Record<Verdict, Tone>> = {
  PASS: 'pass',
  WARN: 'warn',
  FAIL: 'fail',
  INCOMPLETE: 'incomplete',
};

/** The name of a row and its verdict as a word at the right end. */
export const headMarks = (label: string, verdict: Verdict, top: number, width: number): readonly Mark[] => {
  const y = top + TEXT_SIZE;
  const name = fitted(label, width - widthOf(verdict) - 8);
  return [
    { kind: 'text', x: 0, y, text: name, tone: 'ink', bold: true },
    { kind: 'text', x: width, y, text: verdict, anchor: 'end', tone: TONE_OF[verdict], bold: true },
  ];
};

interface Said {
  readonly text: string;
  readonly tone: Tone;
}
/** A text at each end of a line, or on a line of its own where both do not fit. */
export const endTexts = (
  left: Said,
  right: Said,
  top: number,
  width: number,
): { readonly marks: readonly Mark[]; readonly height: number } => {
  const first = top + TEXT_SIZE;
  const lines = widthOf(left.text) + widthOf(right.text) > width - 8 ? 2 : 1;
  const second = first + (lines - 1) * LINE;
  return {
    marks: [
      { kind: 'text', x: 0, y: first, text: fitted(left.text, width), tone: left.tone },
      { kind: 'text', x: width, y: second, text: fitted(right.text, width), anchor: 'end', tone: right.tone },
    ],
    height: lines * LINE,
  };
};

const BAR = 8;
const SAMPLE = 22;
export const barMark = (x1: number, x2: number, y: number, tone: Tone): Mark => ({
  kind: 'rect',
  x: x1,
  y: y - BAR / 2,
  width: x2 - x1,
  height: BAR,
  tone,
});
/** A bound across a bar. */
export const boundMark = (x: number, y: number): Mark => ({
  kind: 'line',
  x1: x,
  y1: y - 7,
  x2: x,
  y2: y + 7,
  tone: 'quiet',
  dashed: true,
});
/** A needed range: a strong line with a tick at each end in the tone of that end's verdict. */
export const bracket = (x1: number, x2: number, y: number, ends: readonly [Tone, Tone]): readonly Mark[] => [
  { kind: 'line', x1, y1: y, x2, y2: y, tone: 'ink', width: 2 },
  { kind: 'line', x1, y1: y - 6, x2: x1, y2: y + 6, tone: ends[0], width: 3 },
  { kind: 'line', x1: x2, y1: y - 6, x2, y2: y + 6, tone: ends[1], width: 3 },
];

/** What a drawn thing means, in words beside a piece of it. */
export interface LegendEntry {
  readonly text: string;
  readonly sample: (x1: number, x2: number, y: number) => readonly Mark[];
}

const legendMarks = (entries: readonly LegendEntry[], width: number): { marks: readonly Mark[]; height: number } => {
  const marks: Mark[] = [];
  const indent = SAMPLE + 6;
  let x = 0;
  let y = 0;
  for (const { sample, text } of entries) {
    const needed = indent + widthOf(text) + 12;
    if (x > 0 && x + needed > width) {
      x = 0;
      y += LINE;
    }
    marks.push(...sample(x + 2, x + SAMPLE - 2, y + LINE / 2));
    marks.push({ kind: 'text', x: x + indent, y: y + LINE / 2 + 4, text: fitted(text, width - x - indent), tone: 'quiet' }); // prettier-ignore
    x += needed;
  }
  return { marks, height: y + LINE };
};

const GAP = 12;

/** Rows one above the other on one axis, with the legend in words above and the axis below. */
export const stacked = (
  rows: readonly PlotRow[],
  {
    title,
    unit,
    axis,
    legend,
    width,
    language,
    draw,
  }: {
    readonly title: string;
    readonly unit: string;
    readonly axis: Axis;
    readonly legend: readonly LegendEntry[];
    readonly draw: (row: PlotRow, top: number) => Strip;
  } & Omit<PlotOptions, 'limits'>,
): Plot => {
  const explained = legendMarks(legend, width);
  const top = explained.height + GAP / 2;
  let y = top;
  const strips = rows.map((row) => {
    const strip = draw(row, y);
    y += strip.height + GAP;
    return strip;
  });
  const bottom = y - GAP / 2;
  return {
    width,
    height: bottom + AXIS_HEIGHT,
    title,
    inWords: strips.map(({ sentence }) => sentence).join(' '),
    marks: [
      ...axisMarks(axis, { top, bottom, width, write: (value) => tick(value, language), unit }),
      ...explained.marks,
      ...strips.flatMap(({ marks }) => marks),
    ],
  };
};
