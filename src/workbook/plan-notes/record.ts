import type { NoteLine } from './note-lines';

/** Kept in the workbook: what each of the last fillings wrote, so that a person's edits are told from ours, after an undo too. */
export const NOTES_SETTING = 'channelwright.plan-notes';
const KEPT_FILLINGS = 4;

export interface Filling {
  readonly number: number;
  readonly lines: readonly NoteLine[];
  /** Keys of lines that a person took away. */
  readonly removed: readonly string[];
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** What was kept; it may come from anywhere, and what is not understood is left out. */
export const parseFillings = (json: string | undefined): readonly Filling[] => {
  let value: unknown;
  try {
    value = JSON.parse(json ?? '[]');
  } catch {
    return [];
  }
  if (!Array.isArray(value)) return [];
  return value.filter(isRecord).flatMap(({ number, lines, removed }) => {
    if (!Number.isInteger(number) || !Array.isArray(lines)) return [];
    const kept = lines.flatMap((line: unknown) => {
      if (!Array.isArray(line)) return [];
      const [key, topic, text] = line as unknown[];
      return isText(key) && isText(topic) && isText(text) ? [{ key, topic, text }] : [];
    });
    return [{ number: number as number, lines: kept, removed: Array.isArray(removed) ? removed.filter(isText) : [] }];
  });
};

export const fillingsJson = (fillings: readonly Filling[]): string =>
  JSON.stringify(
    fillings.slice(-KEPT_FILLINGS).map(({ number, lines, removed }) => ({
      number,
      lines: lines.map(({ key, topic, text }) => [key, topic, text]),
      removed,
    })),
  );
