import { handedness } from '../../core/stock/handedness';
import type { ChannelCheck } from '../check';
import { directionVector, type Vector } from '../local-axes';
import type { Channel } from '../model';
import { placeOf, readDirection, signedLast } from '../point';
import { housingCount, housingKey, linesOf } from './housings';
import { filled, grouped, sensorName, spelling, type AcrossRows } from './rows';

/** Housings with two or three axes: every axis once, at right angles, and right-handed where that can be told. */
export const housingAxes = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  [...grouped(checks, housingKey).values()].flatMap((rows) => {
    const of = rows.map((row) => checks[row]!);
    const axes = of[0]!.channel.sensor?.axes ?? 1;
    if (axes > MOST_AXES || placeOf(of[0]!.channel).point === undefined) return [];
    const missing = axesOf(of, rows, axes);
    return missing.length > 0 || of.length !== axes ? missing : handed(of, rows);
  });
/** More than three axes measure turns as well. */
const MOST_AXES = 3;

const shared = (channels: readonly Channel[]) => ({
  sensor: spelling(channels.map(sensorName)),
  point: spelling(channels.map((channel) => channel.point ?? placeOf(channel).point)),
});

const axesOf = (of: readonly ChannelCheck[], rows: readonly number[], axes: number): AcrossRows[] => {
  const channels = of.map(({ channel }) => channel);
  const lines = linesOf(of);
  const read = [...lines.values()].reduce((sum, count) => sum + count, 0);
  const housings = housingCount(of);
  const isTwice = [...lines.values()].some((count) => count > housings);
  const isShort = of.length < axes * housings;
  const finding = { check: 'housing axes', ...shared(channels), axes, number: of.length, housings } as const;
  const directions = channels.map(({ direction }) => direction?.trim() || '–').sort();
  if (isTwice) return [{ finding: { ...finding, verdict: 'FAIL', directions, problem: 'twice' }, rows }];
  if (isShort) return [{ finding: { ...finding, verdict: 'WARN', directions, problem: 'missing' }, rows }];
  if (read < of.length)
    return [{ finding: { ...finding, verdict: 'INCOMPLETE', directions, problem: 'no direction' }, rows }];
  return [];
};

/** The place of an axis in its housing, 0 to 2. */
const axisOf = ({ sensorAxis }: Channel): number => {
  const letter = readDirection(sensorAxis)?.axis ?? '';
  return letter.length === 1 ? Math.max('xyz'.indexOf(letter), '123'.indexOf(letter)) : -1;
};

const SQUARE = 0.02;

/**
 * Three directions in the order of the housing's axes are a right-handed set. Where the axes are not noted, any three
 * directions at right angles can be had, but a left-handed set only by letting two axes change places.
 */
const handed = (of: readonly ChannelCheck[], rows: readonly number[]): AcrossRows[] => {
  const channels = of.map(({ channel }) => channel);
  const vectors = channels.map(directionVector);
  const [a, b, c] = vectors;
  if (!a || !b || !c || channels.some((channel) => placeOf(channel).direction?.isRotation)) return [];
  const finding = { check: 'handedness', ...shared(channels) } as const;
  const typed = (ordered: readonly Channel[]) =>
    ordered.map((channel) => signedLast(placeOf(channel).direction!).toUpperCase()).join(', ');
  const places = channels.map(axisOf);
  const isNoted = new Set(places).size === channels.length && !places.includes(-1);
  const order = isNoted ? places.map((_, axis) => places.indexOf(axis)) : byLetter(channels);
  const inOrder = order.map((i) => channels[i]!);
  const determinant = handedness(order.map((i) => vectors[i]!) as [Vector, Vector, Vector]);
  const directions = typed(inOrder);
  if (Math.abs(determinant) < 1 - SQUARE)
    return [{ finding: { ...finding, verdict: 'FAIL', directions, problem: 'not at right angles' }, rows }];
  if (determinant > 0) return [];
  if (channels.some(({ sensorAxis }) => filled(sensorAxis)) && isNoted)
    return [{ finding: { ...finding, verdict: 'FAIL', directions, problem: 'left-handed' }, rows }];
  const areSigned = channels.every((channel) => placeOf(channel).direction?.sign !== undefined);
  return areSigned ? [{ finding: { ...finding, verdict: 'WARN', directions, problem: 'not noted' }, rows }] : [];
};

/** x, y, z or 1, 2, 3. */
const byLetter = (channels: readonly Channel[]): number[] => {
  const axes = channels.map((channel) => placeOf(channel).direction?.axis ?? '');
  return axes.map((_, i) => i).sort((i, j) => (axes[i]! < axes[j]! ? -1 : Number(axes[i]! > axes[j]!)));
};
