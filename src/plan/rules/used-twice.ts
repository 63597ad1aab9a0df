import type { ChannelCheck } from '../check';
import { placeOf } from '../point';
import { areTogether, filled, folded, grouped, sensorKey, sensorName, spelling, type AcrossRows } from './rows';
import { runDays, sharedDays } from './runs';

/** One input channel takes one channel of a run. */
export const inputChannels = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  [
    ...grouped(checks, ({ channel }) => {
      const input = filled(channel.inputChannel);
      return input && `${folded(channel.run)}\n${input}`;
    }).values(),
  ]
    .filter((rows) => rows.length > 1)
    .map((rows) => {
      const channels = rows.map((row) => checks[row]!.channel);
      return {
        finding: {
          check: 'same input channel',
          verdict: areTogether(channels) ? 'FAIL' : 'WARN',
          inputChannel: spelling(channels.map(({ inputChannel }) => inputChannel)),
          channels: channels.map(({ id }) => id).sort(),
        },
        rows,
      };
    });

/** One sensor, known by its serial number, is at one place in a run and fills no more rows than it has axes. */
export const sensorsTwice = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  [
    ...grouped(checks, ({ channel }) => {
      const key = sensorKey(channel);
      return key && `${folded(channel.run)}\n${key}`;
    }).values(),
  ].flatMap((rows): AcrossRows[] => {
    const channels = rows.map((row) => checks[row]!.channel);
    const axes = channels[0]!.sensor?.axes;
    const points = new Set(channels.map((channel) => placeOf(channel).point).filter((point) => point !== undefined));
    const isClash = points.size > 1 || rows.length > (axes ?? MOST_AXES);
    if (rows.length === 1 || (!isClash && axes !== undefined)) return [];
    return [
      {
        finding: {
          check: 'same sensor',
          verdict: !isClash ? 'INCOMPLETE' : areTogether(channels) ? 'FAIL' : 'WARN',
          sensor: spelling(channels.map(sensorName)),
          axes,
          points: [...points].sort(),
          channels: channels.map(({ id }) => id).sort(),
        },
        rows,
      },
    ];
  });
/** Of a housing whose number of axes is not known. */
const MOST_AXES = 3;

/** One sensor in two runs whose days overlap; meeting on one day is a matter of hours and only worth a look. */
export const overlappingRuns = (checks: readonly ChannelCheck[]): readonly AcrossRows[] => {
  const days = runDays(checks);
  return [...grouped(checks, ({ channel }) => sensorKey(channel)).values()].flatMap((rows) => {
    const byRun = grouped(
      rows.map((row) => checks[row]!),
      ({ channel }) => folded(channel.run),
    );
    const runs = [...byRun.keys()].sort();
    return runs.flatMap((first, i) =>
      runs.slice(i + 1).flatMap((second): AcrossRows[] => {
        const shared = sharedDays(days.get(first)!, days.get(second)!);
        if (shared === undefined || shared === 0) return [];
        const at = [...byRun.get(first)!, ...byRun.get(second)!].map((place) => rows[place]!);
        const channels = at.map((row) => checks[row]!.channel);
        const named = (run: string) =>
          spelling(channels.filter((one) => folded(one.run) === run).map((one) => one.run));
        return [
          {
            finding: {
              check: 'overlapping runs',
              verdict: shared > 1 ? 'FAIL' : 'WARN',
              sensor: spelling(channels.map(sensorName)),
              runs: [named(first), named(second)],
              number: shared,
              from: Math.floor(Math.max(days.get(first)!.start!, days.get(second)!.start!)),
            },
            rows: at,
          },
        ];
      }),
    );
  });
};
