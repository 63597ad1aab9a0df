import type { ApplyOptions, Change, RangeAddress } from '../../workbook/port';
import { refuseChanged } from './as-read';
import { Batch, CALL_COST } from './batch';
import { replaceDrawings, setUpPrint } from './drawings';
import { SETS, type OfficeHost } from './host';
import { applyLook, pointsOf } from './looks';
import { addMark, deleteOwnMarks } from './marks';
import { notesInTheWay, SheetNotes } from './notes';
import { preflight, sameName } from './preflight';
import { placeOf } from './read-sheet';
import { typed } from './typed-text';

const TAB_COLOUR = '#0f4c4a';

type Of<K extends Change['kind']> = Extract<Change, { kind: K }>;

/** Progress counts cells written; any other change counts as one. */
const stepsOf = (change: Change): number =>
  change.kind === 'cells' ? change.cells.length * (change.cells[0]?.length ?? 0) : 1;

const rangeOf = (sheet: Excel.Worksheet, { row, column, rows, columns }: RangeAddress): Excel.Range =>
  sheet.getRangeByIndexes(row, column, rows, columns);

/** Carries out one action's changes in their order. */
class Action {
  /** New sheets that are to be printed. */
  readonly printed: { readonly sheet: Excel.Worksheet; readonly foot: string }[] = [];

  constructor(
    private readonly host: OfficeHost,
    private readonly batch: Batch,
    private readonly sheets: Map<string, Excel.Worksheet>,
    private readonly notes: Map<string, SheetNotes>,
  ) {}

  async do(change: Change): Promise<void> {
    if (change.kind === 'cells') return this.writeCells(change);
    await this.batch.make({ characters: CALL_COST, steps: 1 });
    if (change.kind === 'sheet') return this.makeSheet(change);
    const sheet = this.sheet(change.sheet);
    switch (change.kind) {
      case 'clear':
        return this.clear(sheet, change);
      case 'look':
        return applyLook(rangeOf(sheet, change.range), change.look, change.range.rows);
      case 'width': {
        const columns = sheet.getRangeByIndexes(0, change.column, 1, change.columns).getEntireColumn();
        columns.format.columnWidth = pointsOf(change.characters);
        return;
      }
      case 'fit':
        // Excel does so when wrapped text is written, but for rows to which a person gave a height.
        return;
      case 'marks':
        await this.batch.send();
        await deleteOwnMarks(this.batch.context, sheet);
        for (const rule of change.rules) {
          await this.batch.make({ characters: CALL_COST, steps: 0 });
          addMark(sheet, rule);
        }
        return;
      case 'note': {
        await this.batch.make({ characters: change.text?.length ?? 0, steps: 0 });
        return this.notesOf(change.sheet, sheet).set(change.row, change.column, change.text);
      }
      case 'drawings':
        return replaceDrawings(this.host, this.batch, sheet, change.drawings);
      case 'extend-table':
        return this.extendTable(sheet, change);
    }
  }

  private sheet(name: string): Excel.Worksheet {
    const sheet = this.sheets.get(sameName(name));
    if (!sheet) throw new Error(`sheet not looked up: ${name}`);
    return sheet;
  }

  private makeSheet({ name, reading }: Of<'sheet'>): void {
    if (this.sheets.has(sameName(name))) return;
    const sheet = this.batch.context.workbook.worksheets.add(name);
    this.sheets.set(sameName(name), sheet);
    if (!reading) return;
    sheet.showGridlines = false;
    sheet.tabColor = TAB_COLOUR;
    this.printed.push({ sheet, foot: reading.foot });
  }

  private async writeCells({ sheet: name, row, column, cells }: Of<'cells'>): Promise<void> {
    const sheet = this.sheet(name);
    let block: (number | string | boolean)[][] = [];
    let first = row;
    let room = { cells: 0, characters: 0, steps: 0 };
    const queue = async () => {
      if (block.length === 0) return;
      await this.batch.make(room);
      sheet.getRangeByIndexes(first, column, block.length, block[0]?.length ?? 0).formulas = block;
      first += block.length;
      block = [];
      room = { cells: 0, characters: 0, steps: 0 };
    };
    for (const line of cells) {
      const entries = line.map(typed);
      const characters = entries.reduce<number>((sum, entry) => sum + String(entry).length + 3, 0);
      if (Batch.isFull(room.cells + entries.length, room.characters + characters)) await queue();
      block.push(entries);
      room.cells += entries.length;
      room.characters += characters;
      room.steps += entries.length;
    }
    await queue();
  }

  /** A sheet made by this action has no notes yet. */
  private notesOf(name: string, sheet: Excel.Worksheet): SheetNotes {
    const notes = this.notes.get(sameName(name)) ?? new SheetNotes(sheet);
    this.notes.set(sameName(name), notes);
    return notes;
  }

  private clear(sheet: Excel.Worksheet, { sheet: name, range }: Of<'clear'>): void {
    this.notes.get(sameName(name))?.deleteOwnWithin(range);
    // Clearing 'All' would take everybody's notes along.
    rangeOf(sheet, range).clear('Contents');
    rangeOf(sheet, range).clear('Formats');
  }

  /** Hosts before ExcelApi 1.13 cannot: the columns then stand beside the table, where they work as well. */
  private async extendTable(sheet: Excel.Worksheet, { table: name, columns }: Of<'extend-table'>): Promise<void> {
    if (!this.host.supports(SETS.tableResize)) return;
    const table = sheet.tables.getItem(name);
    const range = table.getRange();
    range.load('rowIndex,columnIndex,rowCount,columnCount');
    await this.batch.send();
    const place = placeOf(range);
    table.resize(rangeOf(sheet, { ...place, columns: place.columns + columns }));
  }
}

export const applyChanges = async (
  host: OfficeHost,
  context: Excel.RequestContext,
  changes: readonly Change[],
  options: ApplyOptions,
): Promise<void> => {
  const total = changes.reduce((sum, change) => sum + stepsOf(change), 0);
  const batch = new Batch(context, host, total, options);
  batch.stopIfAsked();
  const sheets = await preflight(host, context, changes);
  const notes = await notesInTheWay(host, context, sheets, changes);
  // Last of all, so that as little time as possible passes before the writing.
  await refuseChanged(context, sheets, options.asRead ?? []);
  const action = new Action(host, batch, sheets, notes);
  for (const change of changes) await action.do(change);
  await batch.send();
  await setUpPrint(context, action.printed);
};
