import { scaleLinear, scaleLog } from 'd3-scale';
import { fitted, MARGIN, TEXT_SIZE, widthOf, type Mark } from './plot';

export interface Axis {
  /** Where a value stands, kept inside the drawing. */
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

const clampedAxis = (scale: (value: number) => number, ticks: readonly number[], width: number): Axis => ({
  at: (value) => Math.min(width - MARGIN, Math.max(MARGIN, scale(value))),
  ticks,
});

/** From the power of ten below the smallest value to the one above the largest; values ≤ 0 stand at the left end. */
export const logAxis = (values: readonly number[], width: number): Axis => {
  const known = values.filter((value) => value > 0 && Number.isFinite(value));
  const low = 10 ** Math.floor(Math.log10(Math.min(...known, 1)));
  const high = 10 ** Math.ceil(Math.log10(Math.max(...known, low * 10)));
  const scale = scaleLog()
    .domain([low, high])
    .range([MARGIN, width - MARGIN]);
  const decades = Math.round(Math.log10(high / low));
  const ticks = Array.from({ length: decades + 1 }, (_, i) => low * 10 ** i);
  return clampedAxis((value) => (value > 0 ? scale(value) : MARGIN), ticks, width);
};

const TICK_ROOM = 56;
export const linearAxis = (values: readonly number[], width: number): Axis => {
  const known = values.filter(Number.isFinite);
  const scale = scaleLinear()
    .domain([Math.min(...known), Math.max(...known)])
    .range([MARGIN, width - MARGIN])
    .nice();
  return clampedAxis(scale, scale.ticks(Math.max(2, Math.floor(width / TICK_ROOM))), width);
};

/** Hairlines over the whole height, numbers under them as far as they have room, and the unit below. */
export const axisMarks = (
  axis: Axis,
  {
    top,
    bottom,
    width,
    write,
    unit,
  }: {
    readonly top: number;
    readonly bottom: number;
    readonly width: number;
    readonly write: (tick: number) => string;
    readonly unit: string;
  },
): readonly Mark[] => {
  let free = 0;
  const labels = axis.ticks.flatMap((tick): Mark[] => {
    const text = write(tick);
    const half = widthOf(text) / 2;
    const x = Math.min(width - half, Math.max(half, axis.at(tick)));
    if (x - half < free) return [];
    free = x + half + 4;
    return [{ kind: 'text', x, y: bottom + TEXT_SIZE + 2, text, anchor: 'middle', tone: 'quiet' }];
  });
  return [
    ...axis.ticks.map((tick): Mark => {
      const x = axis.at(tick);
      return { kind: 'line', x1: x, y1: top, x2: x, y2: bottom, tone: 'hair' };
    }),
    ...labels,
    { kind: 'text', x: 0, y: bottom + 2 * TEXT_SIZE + 6, text: fitted(unit, width), tone: 'quiet' },
  ];
};
/** Room under the drawing for what axisMarks writes. */
export const AXIS_HEIGHT = 2 * TEXT_SIZE + 12;
