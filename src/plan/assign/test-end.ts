import type { Channel } from '../model';
import type { AssignOptions } from './options';

/** Without a last day that was asked for, that of the latest run counts, for pieces that have a date. */
export const withTestEnd = (channels: readonly Channel[], options: AssignOptions): AssignOptions => {
  if (options.testEnd !== undefined) return options;
  const ends = channels.flatMap(({ runEnd }) => runEnd ?? []);
  if (ends.length === 0) return options;
  return { ...options, testEnd: ends.reduce((a, b) => Math.max(a, b)), undated: options.undated ?? 'fine' };
};

/** On the last day of the test a calibration still holds. */
export const isLate = (due: number | undefined, { testEnd, undated }: AssignOptions): boolean => {
  if (testEnd === undefined) return false;
  return due === undefined ? undated !== 'fine' : Math.floor(due) < Math.floor(testEnd);
};
