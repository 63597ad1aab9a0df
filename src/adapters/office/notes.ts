import { isOwnNote, noteInTheWay, signedNote } from '../../workbook/own-note';
import type { Change, RangeAddress } from '../../workbook/port';
import { SETS, type OfficeHost } from './host';
import { sameName } from './preflight';

const key = (row: number, column: number): string => `${row},${column}`;
interface Known {
  readonly note: Excel.Note;
  readonly row: number;
  readonly column: number;
  readonly isOwn: boolean;
}

/** The notes of one sheet, found once for a whole action: looking each one up would cost a round trip per cell. */
export class SheetNotes {
  constructor(
    private readonly sheet: Excel.Worksheet,
    private readonly known = new Map<string, Known>(),
  ) {}

  static async find(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetNotes> {
    sheet.notes.load('items/content,items/authorName');
    await context.sync();
    const places = sheet.notes.items.map((note) => ({ note, range: note.getLocation() }));
    places.forEach(({ range }) => range.load('rowIndex,columnIndex'));
    if (places.length > 0) await context.sync();
    return new SheetNotes(
      sheet,
      new Map(
        places.map(({ note, range: { rowIndex: row, columnIndex: column } }) => [
          key(row, column),
          { note, row, column, isOwn: isOwnNote({ author: note.authorName, text: note.content }) },
        ]),
      ),
    );
  }

  hasForeign(row: number, column: number): boolean {
    return this.known.get(key(row, column))?.isOwn === false;
  }

  /** A note of somebody else's stays as it is. */
  set(row: number, column: number, text: string | null): void {
    const at = key(row, column);
    const found = this.known.get(at);
    if (found && !found.isOwn) return;
    if (text === null) {
      found?.note.delete();
      this.known.delete(at);
    } else if (found) found.note.content = signedNote(text);
    else {
      const note = this.sheet.notes.add(this.sheet.getRangeByIndexes(row, column, 1, 1), signedNote(text));
      this.known.set(at, { note, row, column, isOwn: true });
    }
  }

  deleteOwnWithin(range: RangeAddress): void {
    for (const { row, column } of [...this.known.values()])
      if (
        row >= range.row &&
        row < range.row + range.rows &&
        column >= range.column &&
        column < range.column + range.columns
      )
        this.set(row, column, null);
  }
}

/** The notes of the sheets where notes are set or cells cleared; refuses when ours would replace somebody's. */
export const notesInTheWay = async (
  host: OfficeHost,
  context: Excel.RequestContext,
  sheets: ReadonlyMap<string, Excel.Worksheet>,
  changes: readonly Change[],
): Promise<Map<string, SheetNotes>> => {
  const found = new Map<string, SheetNotes>();
  if (!host.supports(SETS.notes)) return found;
  for (const change of changes) {
    if (change.kind !== 'note' && change.kind !== 'clear') continue;
    const name = sameName(change.sheet);
    const sheet = sheets.get(name);
    if (sheet && !found.has(name)) found.set(name, await SheetNotes.find(context, sheet));
    if (change.kind === 'note' && change.text !== null && found.get(name)?.hasForeign(change.row, change.column))
      throw noteInTheWay(change.sheet, change.row, change.column);
  }
  return found;
};
