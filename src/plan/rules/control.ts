import type { ChannelCheck } from '../check';
import { folded, grouped, setUpOf, spelling, type AcrossRows } from './rows';

/** At least two control channels in a set-up, and all of them passing. */
export const controlChannels = (checks: readonly ChannelCheck[]): readonly AcrossRows[] => {
  const groups = grouped(checks, ({ channel }) => (channel.role === 'control' ? setUpOf(channel) : undefined));
  return [...groups.values()].flatMap((rows): AcrossRows[] => {
    const { group, run } = checks[rows[0]!]!.channel;
    const where = [run, group].map((text) => text?.trim()).filter(Boolean);
    const alone: AcrossRows[] =
      rows.length === 1
        ? [{ finding: { check: 'control count', verdict: 'WARN', group: where.join(', '), number: 1 }, rows }]
        : [];
    const open = rows.flatMap((row): AcrossRows[] => {
      const { channel, verdict } = checks[row]!;
      const finding = { check: 'control verdict', verdict, channel: channel.id } as const;
      return verdict === 'PASS' ? [] : [{ finding, rows: [row] }];
    });
    return [...alone, ...open];
  });
};

/** Every row needs a name of its own. */
export const channelNames = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  [...grouped(checks, ({ channel }) => folded(channel.id) || undefined).values()]
    .filter((rows) => rows.length > 1)
    .map((rows) => {
      const channel = spelling(rows.map((row) => checks[row]!.channel.id));
      return { finding: { check: 'same channel', verdict: 'FAIL', channel, number: rows.length }, rows };
    });
