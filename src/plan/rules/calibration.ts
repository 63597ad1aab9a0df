import type { ChannelCheck } from '../check';
import { dueOf } from '../pieces';
import { folded, grouped, sensorName, spelling, type AcrossRows } from './rows';
import { runDays } from './runs';

/** Calibration due before the run begins is a FAIL, due before it ends a WARN; on its last day it still holds. */
export const calibrationDue = (checks: readonly ChannelCheck[]): readonly AcrossRows[] => {
  const days = runDays(checks);
  const groups = grouped(checks, ({ channel }) => {
    const due = dueOf(channel);
    return due === undefined ? undefined : [folded(channel.run), folded(sensorName(channel)), due].join('\n');
  });
  return [...groups.values()].flatMap((rows): AcrossRows[] => {
    const channels = rows.map((row) => checks[row]!.channel);
    const { run } = channels[0]!;
    const due = Math.floor(dueOf(channels[0]!)!);
    const { start, end } = days.get(folded(run))!;
    const isBefore = (day: number | undefined): boolean => day !== undefined && due < Math.floor(day);
    if (!isBefore(start) && !isBefore(end)) return [];
    return [
      {
        finding: {
          check: 'calibration due',
          verdict: isBefore(start) ? 'FAIL' : 'WARN',
          sensor: spelling(channels.map(sensorName)),
          run: spelling(channels.map((channel) => channel.run)),
          number: due,
          limit: Math.floor((isBefore(start) ? start : end)!),
        },
        rows,
      },
    ];
  });
};
