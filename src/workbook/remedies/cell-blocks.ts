import type { Change } from '../port';

export type Entry = number | string | boolean;
export interface PlacedEntry {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly entry: Entry;
}

/** Single cells as as few blocks as their places allow, so that a host has few calls to make. */
export const cellBlocks = (cells: readonly PlacedEntry[]): Extract<Change, { kind: 'cells' }>[] => {
  const sorted = [...cells].sort(
    (a, b) => (a.sheet === b.sheet ? 0 : a.sheet < b.sheet ? -1 : 1) || a.row - b.row || a.column - b.column,
  );
  const runs: { sheet: string; row: number; column: number; entries: Entry[] }[] = [];
  for (const { sheet, row, column, entry } of sorted) {
    const last = runs.at(-1);
    if (last && last.sheet === sheet && last.row === row && last.column + last.entries.length === column)
      last.entries.push(entry);
    else runs.push({ sheet, row, column, entries: [entry] });
  }
  const open = new Map<string, { kind: 'cells'; sheet: string; row: number; column: number; cells: Entry[][] }>();
  const blocks: Extract<Change, { kind: 'cells' }>[] = [];
  for (const { sheet, row, column, entries } of runs) {
    const key = JSON.stringify([sheet, column, entries.length]);
    const above = open.get(key);
    if (above && above.row + above.cells.length === row) {
      above.cells.push(entries);
      continue;
    }
    const block = { kind: 'cells' as const, sheet, row, column, cells: [entries] };
    open.set(key, block);
    blocks.push(block);
  }
  return blocks;
};
