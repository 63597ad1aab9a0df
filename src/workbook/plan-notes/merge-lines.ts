import type { Cell } from '../../functions/define';
import { textIn, type BlockLine } from './block';
import { HEADINGS, type NoteLine } from './note-lines';

/** A line as it shall stand: as the tool fills it, or as a person left it at `from` of the lines before. */
export interface MergedLine {
  readonly topic: Cell;
  readonly text: Cell;
  readonly from?: number;
  readonly isOwn: boolean;
  readonly key?: string;
}
export interface Merged {
  readonly lines: readonly MergedLine[];
  /** Keys of lines that a person took away. */
  readonly removed: readonly string[];
  /** Lines kept because a person wrote or changed them. */
  readonly kept: number;
}

const isSame = ({ topic, text }: NoteLine, line: BlockLine): boolean =>
  textIn(line.topic) === topic.trim() && textIn(line.text) === text.trim();

/** A person changed one of the two cells; the other still tells which line it was. */
const isChanged = ({ topic, text }: NoteLine, line: BlockLine): boolean =>
  (topic !== '' && textIn(line.topic) === topic.trim()) || (text !== '' && textIn(line.text) === text.trim());

/** Which of the lines on the sheet say what the tool filled in, unchanged. */
export const unchangedLines = (lines: readonly BlockLine[], before: readonly NoteLine[]): ReadonlySet<number> =>
  new Set([...originOf(lines, before).origin].flatMap(([i, { isChanged: changed }]) => (changed ? [] : [i])));

/** For each line on the sheet the line that was filled there, and whether it still says the same. */
const originOf = (lines: readonly BlockLine[], before: readonly NoteLine[]) => {
  const origin = new Map<number, { readonly key: string; readonly isChanged: boolean }>();
  const free = new Set(before);
  for (const [test, changed] of [
    [isSame, false],
    [isChanged, true],
  ] as const)
    lines.forEach((line, i) => {
      if (origin.has(i)) return;
      for (const filled of free)
        if (test(filled, line)) {
          origin.set(i, { key: filled.key, isChanged: changed });
          free.delete(filled);
          return;
        }
    });
  return { origin, missing: [...free].map(({ key }) => key) };
};

/**
 * Brings the lines of a block up to date: lines of the tool say what it says now, lines that a person changed or wrote
 * stay, lines that a person took away stay away, new ones stand behind those that they follow.
 */
export const mergeLines = (
  lines: readonly BlockLine[],
  before: { readonly lines: readonly NoteLine[]; readonly removed: readonly string[] } | undefined,
  now: readonly NoteLine[],
): Merged => {
  // Without a record, as in a sheet from another workbook, only lines that say the same are ours.
  const { origin, missing } = originOf(lines, before?.lines ?? now);
  const byKey = new Map(now.map((line) => [line.key, line]));
  const removed = new Set(before ? [...before.removed, ...missing] : []);
  const merged: MergedLine[] = [];
  let kept = 0;
  lines.forEach((line, from) => {
    const known = origin.get(from);
    const filled = known && byKey.get(known.key);
    if (known && !known.isChanged) {
      if (filled) merged.push({ topic: filled.topic, text: filled.text, from, isOwn: true, key: filled.key });
      return;
    }
    const isBlank = textIn(line.topic) === '' && textIn(line.text) === '' && !line.isFixed;
    if (!isBlank) kept += 1;
    merged.push({ topic: line.topic, text: line.text, from, isOwn: false, key: known?.key });
  });
  now.forEach((line, i) => {
    if (removed.has(line.key) || merged.some(({ key }) => key === line.key)) return;
    merged.splice(placeFor(i, now, merged), 0, { ...line, isOwn: true });
  });
  return { lines: merged, removed: now.map(({ key }) => key).filter((key) => removed.has(key)), kept };
};

/** Behind the nearest line before it that is there; a heading opens its part at the end. */
const placeFor = (index: number, now: readonly NoteLine[], merged: readonly MergedLine[]): number => {
  if (HEADINGS.includes(now[index]!.key) && index > 0) return merged.length;
  for (let i = index - 1; i >= 0; i--) {
    const at = merged.findIndex(({ key }) => key === now[i]!.key);
    if (at >= 0) return at + 1;
  }
  return index === 0 ? 0 : merged.length;
};
