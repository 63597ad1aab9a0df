import type { ChannelCheck } from '../check';
import { lineKey } from '../local-axes';
import { placeOf } from '../point';
import { folded, sensorKey, setUpOf } from './rows';

/** Rows that may share one housing: one sensor type with several axes at one point of one set-up. */
export const housingKey = ({ channel }: ChannelCheck): string | undefined =>
  (channel.sensor?.axes ?? 1) > 1
    ? [setUpOf(channel), placeOf(channel).point ?? '', folded(channel.sensor?.name), sensorKey(channel) ?? ''].join(
        '\n',
      )
    : undefined;

/** Of rows whose parts differ, the heaviest speak for their housing, whatever the order of the list. */
const heavierFirst = (a: ChannelCheck, b: ChannelCheck): number =>
  (b.mass.total ?? Infinity) - (a.mass.total ?? Infinity) || 0;

/** A triaxial sensor fills several rows of one point but is mounted once: one row for each housing. */
export const housingsOf = (checks: readonly ChannelCheck[]): ChannelCheck[] => {
  const several = new Map<string, ChannelCheck[]>();
  const single = checks.filter((check) => {
    const key = housingKey(check);
    if (key !== undefined) several.set(key, [...(several.get(key) ?? []), check]);
    return key === undefined;
  });
  const shared = [...several.values()].flatMap((rows) => {
    return [...rows].sort(heavierFirst).slice(0, housingCount(rows));
  });
  return [...single, ...shared];
};

/** One housing measures along each of its axes once; a serial number says that it is one. */
export const housingCount = (rows: readonly ChannelCheck[]): number => {
  const { sensor } = rows[0]!.channel;
  const byCount = Math.ceil(rows.length / (sensor?.axes ?? 1));
  return sensorKey(rows[0]!.channel) === undefined ? Math.max(byCount, ...linesOf(rows).values()) : byCount;
};

/** How many rows measure along each line; rows without a direction are left out. */
export const linesOf = (rows: readonly ChannelCheck[]): ReadonlyMap<string, number> => {
  const lines = new Map<string, number>();
  for (const { channel } of rows) {
    const line = lineKey(channel);
    if (line !== undefined) lines.set(line, (lines.get(line) ?? 0) + 1);
  }
  return lines;
};
