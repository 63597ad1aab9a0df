import { cellAddress } from '../../workbook/address';
import { HostProblem, type Change } from '../../workbook/port';
import type { FileChange } from './changes';
import type { WorkbookFile } from './workbook-file';

type Note = Extract<Change, { kind: 'note' }>;

/** Makes all changes at once; notes that would stand in place of somebody else's are found and left out. Returns their cells. */
export const editWithNotes = (file: WorkbookFile, changes: readonly FileChange[], notes: readonly Note[]): string[] => {
  try {
    file.edit([...changes, ...notes]);
    return [];
  } catch (error) {
    if (!(error instanceof HostProblem) || error.code !== 'occupied') throw error;
  }
  // Something else than a note may be in the way: then this is refused as well, with its own reason.
  file.edit(changes);
  return notesAround(file, notes);
};

/** Halves the notes until those that are refused are alone. */
const notesAround = (file: WorkbookFile, notes: readonly Note[]): string[] => {
  try {
    if (notes.length > 0) file.edit(notes);
    return [];
  } catch (error) {
    if (!(error instanceof HostProblem) || error.code !== 'occupied') throw error;
    const [first] = notes;
    if (notes.length === 1) return [`${first!.sheet}!${cellAddress(first!.row, first!.column)}`];
    const half = notes.length >> 1;
    return [...notesAround(file, notes.slice(0, half)), ...notesAround(file, notes.slice(half))];
  }
};
