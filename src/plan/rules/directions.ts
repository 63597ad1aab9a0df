import type { ChannelCheck } from '../check';
import { lineKey, readLocalAxes } from '../local-axes';
import type { Channel } from '../model';
import { otherNode, placeOf, signedLast } from '../point';
import { grouped, setUpOf, spelling, type AcrossRows } from './rows';

/** Channels of one set-up along one line at one point: +X and -X are one degree of freedom, and so is X turned by 180°. */
export const sameDirections = (checks: readonly ChannelCheck[]): readonly AcrossRows[] => {
  const groups = grouped(checks, ({ channel }) => {
    const { point } = placeOf(channel);
    const line = lineKey(channel);
    return point && line && [setUpOf(channel), point, line].join('\n');
  });
  return [...groups.values()]
    .filter((rows) => rows.length > 1)
    .map((rows) => {
      const channels = rows.map((row) => checks[row]!.channel);
      const directions = new Set(channels.map((channel) => signedAxis(channel)));
      return {
        finding: {
          check: 'same direction',
          verdict: 'WARN',
          point: spelling(channels.map((channel) => channel.point ?? placeOf(channel).point)),
          direction: [...directions].sort().join(', '),
          channels: channels.map(({ id }) => id).sort(),
        },
        rows,
      };
    });
};

const signedAxis = (channel: Channel): string => signedLast(placeOf(channel).direction!).toUpperCase();

/** A direction text that names another point than the point column. */
export const otherPoints = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  checks.flatMap(({ channel }, row): AcrossRows[] => {
    const node = otherNode(channel);
    if (node === undefined) return [];
    const { id, point = '', direction = '' } = channel;
    const finding = { check: 'other point', verdict: 'WARN', channel: id, point, direction: direction.trim() } as const;
    return [{ finding, rows: [row] }];
  });

/** Local axes must be a rotation: three unit vectors at right angles, right-handed. */
export const localAxes = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  checks.flatMap(({ channel }, row): AcrossRows[] => {
    const reading = readLocalAxes(channel.localAxes);
    if ('axes' in reading) return [];
    const { problem } = reading;
    const verdict = problem === 'unreadable' ? 'INCOMPLETE' : 'FAIL';
    const text = channel.localAxes?.trim() ?? '';
    return [{ finding: { check: 'local axes', verdict, channel: channel.id, text, problem }, rows: [row] }];
  });
