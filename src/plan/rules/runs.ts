import type { ChannelCheck } from '../check';
import { folded, grouped } from './rows';

/** First and last day of a run, as far as any of its rows says them. */
export interface RunDays {
  readonly start?: number;
  readonly end?: number;
}

/** By the run's name in lower case; rows without a run are one run. */
export const runDays = (checks: readonly ChannelCheck[]): ReadonlyMap<string, RunDays> => {
  const runs = grouped(checks, ({ channel }) => folded(channel.run));
  return new Map(
    [...runs].map(([run, rows]) => {
      const of = rows.map((row) => checks[row]!.channel);
      const starts = of.flatMap(({ runStart }) => runStart ?? []);
      const ends = of.flatMap(({ runEnd }) => runEnd ?? []);
      return [
        run,
        {
          start: starts.length > 0 ? starts.reduce((a, b) => Math.min(a, b)) : undefined,
          end: ends.length > 0 ? ends.reduce((a, b) => Math.max(a, b)) : undefined,
        },
      ];
    }),
  );
};

/** Days that two runs share: 0 for none, undefined while a date is not known. Runs that meet on one day share one. */
export const sharedDays = (a: RunDays, b: RunDays): number | undefined => {
  if (a.start === undefined || a.end === undefined || b.start === undefined || b.end === undefined) return undefined;
  return Math.max(0, Math.floor(Math.min(a.end, b.end)) - Math.floor(Math.max(a.start, b.start)) + 1);
};
