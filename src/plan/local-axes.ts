import { handedness } from '../core/stock/handedness';
import type { Channel } from './model';
import { placeOf } from './point';

export type Vector = readonly [number, number, number];
/** Local x, y and z, each written in the article's axes. */
export type Axes = readonly [Vector, Vector, Vector];

export type AxesProblem = 'unreadable' | 'left-handed' | 'not at right angles';
export type AxesReading = { readonly axes: Axes } | { readonly problem: AxesProblem };

const ARTICLE: Axes = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
/** Direction cosines are often written with three digits. */
const ROUNDED = 5e-3;

/**
 * Reads turns of the axes, each about an axis that the turns before have moved ("Z30 Y-10 X5", degrees), or nine direction
 * cosines, local x, y, z one after another. A blank means the article's axes.
 */
export const readLocalAxes = (text: string | undefined): AxesReading => {
  const plain = (text ?? '').replace(/[‐‑‒–—―−﹣－]/g, '-').trim();
  if (plain === '') return { axes: ARTICLE };
  const axes = turned(plain) ?? cosines(plain);
  return axes ? checked(axes) : { problem: 'unreadable' };
};

const TURN = /\s*([xyz])\s*[:=]?\s*([+-]?\d+(?:[.,]\d+)?)\s*(?:°|deg)?\s*[,;]?/giy;

const turned = (text: string): Axes | undefined => {
  TURN.lastIndex = 0;
  let axes = ARTICLE;
  let end = 0;
  for (let match = TURN.exec(text); match; match = TURN.exec(text)) {
    axes = turnedOnce(axes, 'xyz'.indexOf(match[1]!.toLowerCase()), Number(match[2]!.replace(',', '.')));
    end = TURN.lastIndex;
  }
  return end > 0 && end === text.length ? axes : undefined;
};

/** A right-handed turn about one of the axes themselves: the next one moves towards the one after it. */
const turnedOnce = (axes: Axes, about: number, degrees: number): Axes => {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [j, k] = [(about + 1) % 3, (about + 2) % 3];
  const mixed = (a: Vector, p: number, b: Vector, q: number): Vector => [
    p * a[0] + q * b[0],
    p * a[1] + q * b[1],
    p * a[2] + q * b[2],
  ];
  const next = [...axes] as [Vector, Vector, Vector];
  next[j] = mixed(axes[j]!, cos, axes[k]!, sin);
  next[k] = mixed(axes[k]!, cos, axes[j]!, -sin);
  return next;
};

const NUMBER = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const CELLS = 9;

const cosines = (text: string): Axes | undefined => {
  const bare = text.replace(/[[\](){}|]/g, ' ');
  for (const split of [/[\s;]+/, /[\s;,]+/]) {
    const cells = bare
      .split(split)
      .map((cell) => cell.replace(/,$/, ''))
      .filter(Boolean);
    if (cells.length !== CELLS || !cells.every((cell) => NUMBER.test(cell))) continue;
    const [a, b, c, d, e, f, g, h, i] = cells.map((cell) => Number(cell.replace(',', '.'))) as [number, number, number, number, number, number, number, number, number]; // prettier-ignore
    return [
      [a, b, c],
      [d, e, f],
      [g, h, i],
    ];
  }
  return undefined;
};

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const checked = (axes: Axes): AxesReading => {
  const areSquare = axes.every((a, i) => axes.every((b, j) => Math.abs(dot(a, b) - (i === j ? 1 : 0)) <= 2 * ROUNDED));
  if (!areSquare) return { problem: 'not at right angles' };
  return handedness(axes) > 0 ? { axes } : { problem: 'left-handed' };
};

/** Where a channel's positive direction points, in the article's axes; undefined for other directions than x, y, z or 1, 2, 3. */
export const directionVector = (channel: Channel): Vector | undefined => {
  const { direction } = placeOf(channel);
  const letter = direction?.axis.slice(-1) ?? '';
  const isMain = direction !== undefined && (direction.axis.length === 1 || direction.isRotation);
  const index = isMain ? Math.max('xyz'.indexOf(letter), '123'.indexOf(letter)) : -1;
  const reading = readLocalAxes(channel.localAxes);
  if (index < 0 || !('axes' in reading)) return undefined;
  const sign = direction?.sign ?? 1;
  const [x, y, z] = reading.axes[index]!;
  return [sign * x, sign * y, sign * z];
};

const PLACES = 1e3;
const rounded = (cosine: number): number => Math.round(cosine * PLACES) / PLACES || 0;

/** The same for both senses of one line, whatever axes it is written in; a turn about the line is another one. */
export const lineKey = (channel: Channel): string | undefined => {
  const { direction } = placeOf(channel);
  if (!direction) return undefined;
  const vector = directionVector(channel);
  if (!vector) return [direction.axis, (channel.localAxes ?? '').trim().toLowerCase()].join('\n');
  const cosines = vector.map(rounded);
  const first = cosines.find((cosine) => cosine !== 0) ?? 1;
  return `${direction.isRotation ? 'about' : 'along'} ${cosines.map((cosine) => (first < 0 ? -cosine || 0 : cosine)).join(' ')}`;
};
