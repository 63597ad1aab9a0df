import type { ChannelCheck } from '../check';
import type { AcrossFinding } from '../finding';
import type { Channel } from '../model';

/** A finding about several rows, with the places of their channels in the plan. */
export interface AcrossRows {
  readonly finding: AcrossFinding;
  readonly rows: readonly number[];
}

/** Rows by a key; rows without one are left out. */
export const grouped = (
  checks: readonly ChannelCheck[],
  keyOf: (check: ChannelCheck, row: number) => string | undefined,
): ReadonlyMap<string, readonly number[]> => {
  const groups = new Map<string, number[]>();
  checks.forEach((check, row) => {
    const key = keyOf(check, row);
    if (key === undefined) return;
    const rows = groups.get(key);
    if (rows) rows.push(row);
    else groups.set(key, [row]);
  });
  return groups;
};

export const folded = (text: string | undefined): string => (text ?? '').trim().toLowerCase();
export const filled = (text: string | undefined): string | undefined => folded(text) || undefined;

/** Rows that are measured together: of one run and one structure part or set-up. */
export const setUpOf = ({ group, run }: Channel): string => `${folded(run)}\n${folded(group)}`;

/** One spelling for all rows, whichever comes first in the list. */
export const spelling = (texts: readonly (string | undefined)[]): string =>
  texts.reduce<string>((least, text) => {
    const trimmed = text?.trim() ?? '';
    return trimmed !== '' && (least === '' || trimmed < least) ? trimmed : least;
  }, '');

/** What tells one sensor from another: its type and serial number. Undefined where no serial number is given. */
export const sensorKey = ({ sensor, named, serial }: Channel): string | undefined => {
  const number = filled(serial);
  return number && `${folded(sensor?.name ?? named?.sensor)}\n${number}`;
};
export const sensorName = ({ sensor, named, serial }: Channel): string =>
  [sensor?.name ?? named?.sensor?.trim(), serial?.trim()].filter(Boolean).join(' ');

/**
 * Whether rows are surely measured at the same time: a run that is named, or one structure part. Without a run, parts may
 * stand for runs, so that a clash between them is worth a look and no failure.
 */
export const areTogether = (channels: readonly Channel[]): boolean =>
  channels.every(({ run }) => filled(run) !== undefined) ||
  new Set(channels.map(({ group }) => folded(group))).size === 1;
