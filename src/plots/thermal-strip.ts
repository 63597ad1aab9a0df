import { scaleLinear } from 'd3-scale';
import { isCoefficient } from '../core/thermal/band';
import { linearDeviation } from '../core/thermal/coefficient';
import { deviationAt } from '../core/thermal/deviation';
import type { ChannelCheck } from '../plan/check';
import { responseOf } from '../plan/thermal';
import { linearAxis, type Axis } from './axis';
import { quantity, signed } from './numerals';
import { LINE, TEXT_SIZE, type Mark, type Plot } from './plot';
import {
  barMark,
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

const HEIGHT = 72;
const HEAD = LINE + 4;
/** Shown where no sensor and no row says a temperature, °C. */
const USUAL_ROOM = [0, 50] as const;

/** Deviation of the sensitivity against temperature, with the tolerance and the temperatures needed. */
export const thermalStrip = (rows: readonly PlotRow[], options: PlotOptions): Plot => {
  const words = PLOT_WORDS[options.language];
  const temperatures = rows
    .flatMap(({ check: { channel } }) => [
      channel.requirement.temperatureLow,
      channel.requirement.temperatureHigh,
      channel.sensor?.temperatureMin,
      channel.sensor?.temperatureMax,
    ])
    .filter((value) => value !== undefined);
  const axis = linearAxis(temperatures.length > 1 ? temperatures : [...temperatures, ...USUAL_ROOM], options.width);
  return stacked(rows, {
    ...options,
    title: words.thermal,
    unit: words.temperatureAxis,
    axis,
    legend: legendOf(words),
    draw: (row, top) => strip(row, top, axis, options),
  });
};

const legendOf = (words: PlotWords): readonly LegendEntry[] => [
  { text: words.thermalBand, sample: (x1, x2, y) => [barMark(x1, x2, y, 'wide')] },
  { text: words.thermalNeeded, sample: (x1, x2, y) => [neededMark(x1, x2, y)] },
  { text: words.thermalCurve, sample: (x1, x2, y) => [{ kind: 'path', points: [[x1, y + 4], [x2, y - 4]], tone: 'ink', width: 2 }] }, // prettier-ignore
];

const neededMark = (x1: number, x2: number, y: number): Mark => ({
  kind: 'line',
  x1,
  y1: y,
  x2,
  y2: y,
  tone: 'ink',
  width: 3,
});

type Knot = readonly [temperature: number, deviation: number];

/** Deviation from the calibration temperature at the knots of the response; an unsigned coefficient both ways. */
const curvesOf = ({ channel }: ChannelCheck, calibration: number): readonly (readonly Knot[])[] => {
  const { sensor, requirement } = channel;
  const response = sensor && responseOf(sensor);
  if (!response) return [];
  if (isCoefficient(response)) {
    const low = sensor.temperatureMin ?? requirement.temperatureLow ?? calibration;
    const high = sensor.temperatureMax ?? requirement.temperatureHigh ?? calibration;
    const slopes = response.sign === 'signed' ? [response.perKelvin] : [response.perKelvin, -response.perKelvin];
    return slopes.map((slope) => [low, high].map((t): Knot => [t, linearDeviation(slope, t, calibration)]));
  }
  const zero = deviationAt(response, calibration);
  const reference = Number.isNaN(zero) ? 0 : zero;
  return [response.x.map((t, i): Knot => [t, (1 + response.y[i]!) / (1 + reference) - 1])];
};

/** The panel of one row: tolerance, zero, needed temperatures and the curve. */
const panel = (check: ChannelCheck, calibration: number, top: number, axis: Axis, { width, language }: PlotOptions) => {
  const { temperatureLow, temperatureHigh } = check.channel.requirement;
  const tolerance = check.thermal.tolerance?.pass;
  const curves = curvesOf(check, calibration);
  const sizes = curves.flat().map(([, deviation]) => Math.abs(deviation));
  const largest = Math.max(tolerance ?? 0, ...sizes, 0.01) * 1.1;
  const bottom = top + HEIGHT;
  const height = scaleLinear().domain([-largest, largest]).range([bottom, top]);
  const marks: Mark[] = [];
  if (tolerance !== undefined) {
    const from = height(tolerance);
    marks.push({ kind: 'rect', x: 0, y: from, width, height: height(-tolerance) - from, tone: 'wide' });
    for (const end of [tolerance, -tolerance]) {
      const y = height(end) + (end > 0 ? TEXT_SIZE : -3);
      marks.push({ kind: 'text', x: 2, y, text: `${signed(end, '%', language)} %`, tone: 'quiet' });
    }
  }
  marks.push({ kind: 'line', x1: 0, y1: height(0), x2: width, y2: height(0), tone: 'quiet' });
  if (temperatureLow !== undefined && temperatureHigh !== undefined) {
    const [x1, x2] = [axis.at(temperatureLow), axis.at(temperatureHigh)];
    for (const x of [x1, x2])
      marks.push({ kind: 'line', x1: x, y1: top, x2: x, y2: bottom, tone: 'quiet', dashed: true });
    marks.push(neededMark(x1, x2, bottom));
  }
  const tone = TONE_OF[check.thermal.verdict];
  for (const knots of curves)
    marks.push({ kind: 'path', points: knots.map(([t, d]) => [axis.at(t), height(d)] as const), tone, width: 2 });
  return marks;
};

const strip = ({ label, check }: PlotRow, top: number, axis: Axis, options: PlotOptions): Strip => {
  const { width, language, limits } = options;
  const words = PLOT_WORDS[language];
  const { thermal, channel } = check;
  const { sensor, requirement } = channel;
  const calibration = sensor?.calibrationTemperature ?? limits.calibrationTemperature;
  const degrees = (value: number | undefined): string =>
    value === undefined ? words.notKnown : `${quantity(value, '°C', language)} °C`;
  const between = (low: number | undefined, high: number | undefined): string =>
    `${degrees(low)} ${words.to} ${degrees(high)}`;
  const { band, tolerance, verdict } = thermal;
  const range = band && `${signed(band.low, '%', language)} ${words.to} ${signed(band.high, '%', language)} %`;
  const deviation = `${words.deviation} ${range ?? words.notKnown}`;
  const limit = tolerance ? `, ${words.limit} ±${quantity(tolerance.pass, '%', language)} %` : '';
  const rated = `${words.rated} ${between(sensor?.temperatureMin, sensor?.temperatureMax)}`;
  const said = endTexts(
    { text: deviation + limit, tone: TONE_OF[verdict] },
    { text: rated, tone: 'quiet' },
    top + HEAD + HEIGHT + 4,
    width,
  );
  const needed = `${words.temperature} ${between(requirement.temperatureLow, requirement.temperatureHigh)}`;
  return {
    marks: [
      ...headMarks(label, verdict, top, width),
      ...panel(check, calibration, top + HEAD, axis, options),
      ...said.marks,
    ],
    height: HEAD + HEIGHT + 4 + said.height,
    sentence: `${label}: ${needed}, ${deviation}${limit}, ${words.calibrated} ${degrees(calibration)}, ${rated}, ${verdict}.`,
  };
};
