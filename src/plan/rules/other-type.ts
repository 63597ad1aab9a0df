import type { ChannelCheck } from '../check';
import { ownPiece } from '../pieces';
import { folded, grouped, spelling, type AcrossRows } from './rows';

/** Rows with the serial number of a piece that the sensor list has under another type than theirs. */
export const otherTypes = (checks: readonly ChannelCheck[]): readonly AcrossRows[] =>
  [
    ...grouped(checks, ({ channel }) => {
      const { sensor, piece } = channel;
      return sensor && piece && !ownPiece(channel) ? `${folded(sensor.name)}\n${folded(piece.serial)}` : undefined;
    }).values(),
  ].map((rows) => {
    const channels = rows.map((row) => checks[row]!.channel);
    const { sensor, piece } = channels[0]!;
    return {
      finding: {
        check: 'piece of another type',
        verdict: 'WARN',
        serial: piece!.serial,
        type: sensor!.name,
        listed: spelling(channels.map((channel) => channel.piece!.type)),
        channels: channels.map(({ id }) => id).sort(),
      },
      rows,
    };
  });
