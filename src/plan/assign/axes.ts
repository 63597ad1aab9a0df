import { handedness } from '../../core/stock/handedness';
import type { Channel } from '../model';
import { plainDirection } from '../point';

const folded = (text: string | undefined): string => (text ?? '').trim().toLowerCase();

/** Sets of directions that are at right angles to each other. */
const FRAMES = ['xyz', 'rtz', 'rta', '123'] as const;

/** Where a channel is, for a housing with several axes: one point of one structure part, one axis of one frame. */
export interface SiteAxis {
  readonly site: string;
  readonly axis: string;
  readonly sign: 1 | -1;
  /** Place of the axis in its frame. */
  readonly order: number;
}

/** Per channel; undefined where the point or a direction along an axis is not given. */
export const siteAxes = (channels: readonly Channel[]): readonly (SiteAxis | undefined)[] => {
  const read = channels.map(({ group, point, direction }) => {
    const where = folded(point);
    const plain = plainDirection(direction, where);
    return where === '' || plain === undefined ? undefined : { site: `${folded(group)}\n${where}`, plain };
  });
  const lettersAt = new Map<string, string[]>();
  for (const found of read)
    if (found) lettersAt.set(found.site, [...(lettersAt.get(found.site) ?? []), found.plain.slice(0, -1)]);
  return read.map((found) => {
    if (!found) return undefined;
    const letters = lettersAt.get(found.site)!;
    const frame =
      FRAMES.find((axes) => letters.every((letter) => letter.length === 1 && axes.includes(letter))) ?? 'xyz';
    const axis = found.plain.slice(0, -1);
    const order = axis.length === 1 ? frame.indexOf(axis) : -1;
    return order < 0 ? undefined : { site: found.site, axis, sign: found.plain.endsWith('-') ? -1 : 1, order };
  });
};

/**
 * Which axis of a right-handed sensor lies along each of these directions, counted from 1. Any three signed directions at
 * right angles can be had by turning the housing, but for a left-handed set two axes must change places.
 */
export const sensorAxes = (directions: readonly SiteAxis[]): readonly number[] => {
  const ordered = [...directions].sort((a, b) => a.order - b.order);
  const axes = ordered.map((_, i) => i + 1);
  const [a, b, c] = ordered;
  if (a && b && c && handedness([[a.sign, 0, 0], [0, b.sign, 0], [0, 0, c.sign]]) < 0) axes.splice(0, 2, 2, 1); // prettier-ignore
  return directions.map((direction) => axes[ordered.indexOf(direction)]!);
};
