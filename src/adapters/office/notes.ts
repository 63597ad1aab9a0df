import type { RangeAddress } from '../../workbook/port';

const key = (row: number, column: number): string => `${row},${column}`;

/** The notes of one sheet, found once for a whole action: looking each one up would cost a round trip per cell. */
export class SheetNotes {
  private constructor(
    private readonly sheet: Excel.Worksheet,
    private readonly known: Map<string, { note: Excel.Note; row: number; column: number }>,
  ) {}

  static async find(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetNotes> {
    sheet.notes.load('items/content');
    await context.sync();
    const places = sheet.notes.items.map((note) => ({ note, range: note.getLocation() }));
    places.forEach(({ range }) => range.load('rowIndex,columnIndex'));
    if (places.length > 0) await context.sync();
    return new SheetNotes(
      sheet,
      new Map(
        places.map(({ note, range: { rowIndex: row, columnIndex: column } }) => [
          key(row, column),
          { note, row, column },
        ]),
      ),
    );
  }

  set(row: number, column: number, text: string | null): void {
    const at = key(row, column);
    const found = this.known.get(at);
    if (text === null) {
      found?.note.delete();
      this.known.delete(at);
    } else if (found) found.note.content = text;
    else {
      const note = this.sheet.notes.add(this.sheet.getRangeByIndexes(row, column, 1, 1), text);
      this.known.set(at, { note, row, column });
    }
  }

  deleteWithin(range: RangeAddress): void {
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
