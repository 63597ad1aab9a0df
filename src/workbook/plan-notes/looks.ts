import type { CellLook, Change } from '../port';
import type { Row } from './block';
import type { Merged } from './merge-lines';
import { HEADINGS } from './note-lines';

const ACCENT = '#0f4c4a';
const FRAME: CellLook = { bold: true, ink: ACCENT, ground: '#e6efee', wrap: true, align: 'left', vertical: 'top' };
const TOPIC: CellLook = { bold: true, ink: ACCENT, ground: '#fdfcf8', wrap: true, align: 'left', vertical: 'top' };
const TEXT: CellLook = { bold: false, ink: '#1f2a2e', ground: '#fdfcf8', wrap: true, align: 'left', vertical: 'top' };

/** Looks of the rows that are written; rows that stay keep the look that a person may have given them. */
export const blockLooks = (
  sheet: string,
  row: number,
  column: number,
  rows: readonly Row[],
  { lines }: Merged,
  changed: readonly Change[],
): Change[] => {
  const isWritten = (at: number): boolean =>
    changed.some((change) => change.kind === 'cells' && at >= change.row && at < change.row + change.cells.length);
  return rows.flatMap((_, i): Change[] => {
    const at = row + i;
    if (!isWritten(at)) return [];
    const look = (c: number, columns: number, given: CellLook): Change => ({
      kind: 'look',
      sheet,
      range: { row: at, column: c, rows: 1, columns },
      look: given,
    });
    const line = lines[i - 1];
    if (i === 0 || i === rows.length - 1 || HEADINGS.includes(line?.key ?? '')) return [look(column, 2, FRAME)];
    return [look(column, 1, TOPIC), look(column + 1, 1, TEXT)];
  });
};
