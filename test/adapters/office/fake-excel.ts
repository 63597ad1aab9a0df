import type { OfficeHost } from '../../../src/adapters/office/host';
import type { Plot } from '../../../src/plots/plot';
import type { RangeAddress } from '../../../src/workbook/port';
import { clientObject, Queue, refuse, type Exchange, type Kind, type Limits, type Self } from './fake-client';
import { chartsKind, pageLayoutKind, shapesKind } from './fake-drawings';
import {
  blankSheet,
  cellOfEntry,
  checkRange,
  eachCell,
  isWithin,
  key,
  matrix,
  rangeOfAddress,
  usedRange,
  type FakeLook,
  type FakeRule,
  type FakeSheet,
  type FakeState,
} from './fake-workbook';

interface At {
  sheet: FakeSheet;
  range: RangeAddress;
}
type ChangeEvent = { worksheetId: string; address: string; triggerSource?: string };
type Handler = (event: ChangeEvent) => Promise<void>;

const OLDEST = '1.9';
const NEWEST = '1.20';
const minor = (version: string): number => Number(version.split('.')[1]);
const inA1 = ({ row, column, rows, columns }: RangeAddress): string => {
  const cell = (r: number, c: number) => `${String.fromCharCode(65 + c)}${r + 1}`;
  return `${cell(row, column)}:${cell(row + rows - 1, column + columns - 1)}`;
};

/** An Excel with one open workbook, of a version that can be chosen. It computes no formulas. */
export class FakeExcel implements OfficeHost {
  state: FakeState = {
    sheets: [blankSheet('Sheet1')],
    active: 'Sheet1',
    isStructureProtected: false,
    settings: {},
    nextRule: 1,
  };
  /** Undo steps that a person would see. */
  readonly undoStack: FakeState[] = [];
  roundTrips = 0;
  /** Bytes of each sync that was carried out, by the stand-in's own count. */
  readonly exchanges: Exchange[] = [];
  pauses = 0;
  screenPauses = 0;
  /** How often the calculation state will still answer that it is not done. */
  calculating = 0;
  isEditing = false;
  /** The next instruction that writes fails with this code. */
  failNextWriteWith?: string;
  private eventsEnabled = true;
  private readonly changeHandlers = new Set<Handler>();
  private readonly selectionHandlers = new Set<Handler>();
  private group?: { isOpen: boolean };

  constructor(
    readonly version = NEWEST,
    readonly limits: Limits = { requestBytes: 5_000_000, responseBytes: 5_000_000 },
  ) {}

  supports = (version: string): boolean => minor(version) <= minor(this.version);
  /** Pictures of plots, whatever a browser would make of them. */
  pngOf = (plot: Plot): Promise<string> => Promise.resolve(btoa(encodeURIComponent(plot.title)));
  hasPrinter = true;
  pause = async (): Promise<void> => {
    this.pauses += 1;
    await Promise.resolve();
  };

  run = async <T>(options: Excel.RunOptions, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> => {
    if (options.mergeUndoGroup && !this.supports('1.20')) refuse('ApiNotFound', 'mergeUndoGroup');
    if (this.isEditing && !options.delayForCellEdit) refuse('InvalidOperationInCellEditMode');
    const queue = new Queue(this.limits, this.exchanges);
    this.group = options.mergeUndoGroup ? { isOpen: false } : undefined;
    const context = {
      workbook: clientObject(queue, this.workbook, () => this.state),
      application: clientObject(queue, this.application, () => this.state),
      runtime: clientObject(
        queue,
        { write: { enableEvents: (_s, on) => void (this.eventsEnabled = on === true) } },
        () => this.state,
      ),
      sync: async () => {
        await Promise.resolve();
        if (!options.mergeUndoGroup) this.group = { isOpen: false };
        this.roundTrips += 1;
        queue.flush();
      },
    };
    return batch(context as unknown as Excel.RequestContext);
  };

  // What a person does, outside any batch.
  sheet(name: string): FakeSheet {
    const sheet = this.state.sheets.find((s) => s.name.toLowerCase() === name.toLowerCase());
    if (!sheet) throw new Error(`the test has no sheet ${name}`);
    return sheet;
  }
  addSheet(name: string): FakeSheet {
    this.state.sheets.push(blankSheet(name));
    return this.sheet(name);
  }
  fill(name: string, row: number, column: number, cells: readonly (readonly unknown[])[]): void {
    cells.forEach((line, i) =>
      line.forEach((entry, k) => {
        const cell = cellOfEntry(entry);
        if (cell) this.sheet(name).cells[key(row + i, column + k)] = cell;
      }),
    );
  }
  async edit(
    name: string,
    row: number,
    column: number,
    entry: unknown,
    source: string | undefined = 'Unknown',
  ): Promise<void> {
    this.fill(name, row, column, [[entry]]);
    const range = { row, column, rows: 1, columns: 1 };
    await this.report(this.changeHandlers, this.sheet(name), range, source);
  }
  async pick(name: string, range: RangeAddress): Promise<void> {
    this.state.selected = { sheet: name, range };
    await this.report(this.selectionHandlers, this.sheet(name), range);
  }
  undo(): void {
    const before = this.undoStack.pop();
    if (before) this.state = before;
  }

  private async report(handlers: Set<Handler>, sheet: FakeSheet, range: RangeAddress, source?: string): Promise<void> {
    if (!this.eventsEnabled) return;
    const triggerSource = this.supports('1.14') ? source : undefined;
    for (const handler of handlers) await handler({ worksheetId: sheet.id, address: inA1(range), triggerSource });
  }

  /** Every write goes through here: protection, undo and events. */
  private writing(sheet: FakeSheet | undefined, range?: RangeAddress): void {
    if (this.failNextWriteWith) {
      const code = this.failNextWriteWith;
      this.failNextWriteWith = undefined;
      refuse(code);
    }
    if (sheet?.isProtected) refuse('AccessDenied', 'You cannot perform the requested operation.');
    if (this.group && !this.group.isOpen) {
      this.group.isOpen = true;
      this.undoStack.push(structuredClone(this.state));
    }
    if (sheet && range) void this.report(this.changeHandlers, sheet, range, 'ThisLocalAddin');
  }

  private need(version: string, what: string): void {
    if (!this.supports(version)) refuse('ApiNotFound', `${what} needs ExcelApi ${version}`);
  }

  private readonly application: Kind<FakeState> = {
    read: {
      calculationState: () => (this.calculating-- > 0 ? 'Calculating' : 'Done'),
      calculationMode: () => 'Automatic',
      decimalSeparator: () => (this.supports('1.11') ? ',' : refuse('ApiNotFound', 'decimalSeparator')),
    },
    members: (self) => ({
      suspendApiCalculationUntilNextSync: () => self.queueAct(40, () => {}),
      suspendScreenUpdatingUntilNextSync: () => self.queueAct(40, () => void (this.screenPauses += 1)),
    }),
  };

  private readonly look = (write: (look: FakeLook, value: unknown) => void) => (at: At, value: unknown) => {
    this.writing(at.sheet);
    eachCell(at.range, (row, column) => write((at.sheet.looks[key(row, column)] ??= {}), value));
  };

  private readonly format: Kind<At> = {
    read: { rowHeight: () => 15, columnWidth: ({ sheet, range }) => sheet.widths[range.column] ?? 48 },
    write: {
      horizontalAlignment: this.look((look, value) => void (look.align = String(value))),
      verticalAlignment: this.look((look, value) => void (look.vertical = String(value))),
      wrapText: this.look((look, value) => void (look.wrap = value === true)),
      columnWidth: ({ sheet, range }, value) => {
        this.writing(sheet);
        for (let c = range.column; c < range.column + range.columns; c++) sheet.widths[c] = Number(value);
      },
    },
    members: (self) => ({
      font: self.child<At>(
        {
          write: {
            bold: this.look((look, value) => void (look.bold = value === true)),
            color: this.look((look, value) => void (look.ink = String(value))),
          },
        },
        (at) => at,
      ),
      fill: self.child<At>(
        { write: { color: this.look((look, value) => void (look.ground = String(value))) } },
        (at) => at,
      ),
      borders: {
        getItem: (edge: string) =>
          self.child<At>(
            {
              write: {
                style: () => undefined,
                weight: () => undefined,
                color: this.look((look, value) => void (edge === 'EdgeBottom' && (look.hairline = String(value)))),
              },
            },
            (at) => at,
          ),
      },
    }),
  };

  private readonly range: Kind<At> = {
    read: {
      rowIndex: ({ range }) => range.row,
      columnIndex: ({ range }) => range.column,
      rowCount: ({ range }) => range.rows,
      columnCount: ({ range }) => range.columns,
      values: ({ sheet, range }) => matrix(range, (r, c) => sheet.cells[key(r, c)]?.value ?? ''),
      formulas: ({ sheet, range }) =>
        matrix(range, (r, c) => sheet.cells[key(r, c)]?.formula ?? sheet.cells[key(r, c)]?.value ?? ''),
      valueTypes: ({ sheet, range }) => matrix(range, (r, c) => sheet.cells[key(r, c)]?.type ?? 'Empty'),
      rowHidden: ({ sheet, range }) => {
        const hidden = sheet.hiddenRows.filter((row) => row >= range.row && row < range.row + range.rows).length;
        return hidden === 0 ? false : hidden === range.rows ? true : null;
      },
    },
    write: {
      formulas: ({ sheet, range }, value) => {
        const rows = value as unknown[][];
        if (rows.length !== range.rows || rows.some((row) => row.length !== range.columns))
          refuse('InvalidArgument', 'The number of rows or columns does not match the range.');
        this.writing(sheet, range);
        rows.forEach((row, i) =>
          row.forEach((entry, k) => {
            const cell = cellOfEntry(entry);
            if (cell) sheet.cells[key(range.row + i, range.column + k)] = cell;
            else if (cell === null) delete sheet.cells[key(range.row + i, range.column + k)];
          }),
        );
      },
      numberFormat: this.look((look, value) => void (look.numberFormat = String(value))),
    },
    members: (self) => ({
      format: self.child(this.format, (at) => at),
      worksheet: self.child(this.worksheet, ({ sheet }) => sheet),
      conditionalFormats: self.child(this.rules, (at) => at),
      getEntireColumn: () =>
        self.child(this.range, ({ sheet, range }) => ({ sheet, range: { ...range, row: 0, rows: 1_048_576 } })),
      getMergedAreasOrNullObject: () => {
        this.need('1.13', 'getMergedAreasOrNullObject');
        return self.child(
          this.areas,
          ({ sheet, range }) => {
            const areas = sheet.merged
              .filter((m) => isWithin(m.row, m.column, range))
              .map((m) => ({ sheet, range: m }));
            return areas.length > 0 ? areas : undefined;
          },
          true,
        );
      },
      getRowProperties: () => {
        const result: { value?: { rowHidden: boolean }[] } = {};
        self.queueAct(80, ({ sheet, range }) => {
          result.value = Array.from({ length: range.rows }, (_x, i) => ({
            rowHidden: sheet.hiddenRows.includes(range.row + i),
          }));
          return range.rows * 20;
        });
        return result;
      },
      getCellProperties: (asked: Excel.CellPropertiesLoadOptions) => {
        this.need('1.9', 'getCellProperties');
        if (JSON.stringify(asked) !== '{"format":{"font":{"strikethrough":true}}}') refuse('NotImplemented');
        const result: { value?: { format: { font: { strikethrough: boolean } } }[][] } = {};
        self.queueAct(120, ({ sheet, range }) => {
          result.value = matrix(range, (r, c) => ({
            format: { font: { strikethrough: sheet.looks[key(r, c)]?.isStruck === true } },
          }));
          return JSON.stringify(result.value).length;
        });
        return result;
      },
      clear: (what: 'All' | 'Contents' | 'Formats' = 'All') =>
        self.queueAct(80, ({ sheet, range }) => {
          this.writing(sheet, range);
          eachCell(range, (row, column) => {
            if (what !== 'Formats') delete sheet.cells[key(row, column)];
            if (what !== 'Contents') delete sheet.looks[key(row, column)];
          });
          if (what === 'All') sheet.notes = sheet.notes.filter((note) => !isWithin(note.row, note.column, range));
        }),
      select: () =>
        self.queueAct(60, ({ sheet, range }) => {
          if (this.state.active !== sheet.name) refuse('InvalidOperation', 'the sheet is not active');
          this.state.selected = { sheet: sheet.name, range };
        }),
    }),
  };

  private readonly areas: Kind<At[]> = {
    read: { areaCount: (areas) => areas.length },
    members: (self) => ({
      areas: self.child<At[]>(
        {
          items: (areas, inner) => areas.map((at) => inner.child(this.range, () => at)),
          members: (inner) => ({ getItemAt: (i: number) => inner.child(this.range, (areas) => areas[i]) }),
        },
        (areas) => areas,
      ),
    }),
  };

  private readonly rule: Kind<{ sheet: FakeSheet; rule: FakeRule }> = {
    read: { type: ({ rule }) => rule.type },
    members: (self) => ({
      delete: () =>
        self.queueAct(60, ({ sheet, rule }) => {
          this.writing(sheet);
          sheet.rules = sheet.rules.filter((other) => other.id !== rule.id);
        }),
      custom: self.child<{ sheet: FakeSheet; rule: FakeRule }>(
        {
          members: (custom) => ({
            rule: custom.child<{ sheet: FakeSheet; rule: FakeRule }>(
              {
                read: {
                  formula: ({ rule }) =>
                    rule.type === 'Custom' ? rule.formula : refuse('InvalidOperation', 'not custom'),
                },
                write: { formula: ({ rule }, value) => void (rule.formula = String(value)) },
              },
              (x) => x,
            ),
            format: custom.child<{ sheet: FakeSheet; rule: FakeRule }>(
              {
                members: (format) => ({
                  font: format.child<{ rule: FakeRule }>(
                    { write: { color: ({ rule }, value) => void (rule.ink = String(value)) } },
                    (x) => x,
                  ),
                  fill: format.child<{ rule: FakeRule }>(
                    { write: { color: ({ rule }, value) => void (rule.ground = String(value)) } },
                    (x) => x,
                  ),
                }),
              },
              (x) => x,
            ),
          }),
        },
        (x) => x,
      ),
    }),
  };

  private readonly rules: Kind<At> = {
    items: ({ sheet, range }, self) =>
      sheet.rules
        .filter((rule) => isWithin(rule.range.row, rule.range.column, range))
        .map((rule) => self.child(this.rule, () => ({ sheet, rule }))),
    members: (self) => ({
      add: (type: string) => {
        let made: FakeRule | undefined;
        self.queueAct(300, ({ sheet, range }) => {
          this.writing(sheet);
          made = { id: this.state.nextRule++, type, range, formula: '' };
          sheet.rules.push(made);
        });
        return self.child(this.rule, ({ sheet }) => made && { sheet, rule: made });
      },
    }),
  };

  private readonly note: Kind<{ sheet: FakeSheet; note: FakeSheet['notes'][number] }> = {
    read: { content: ({ note }) => note.content, authorName: ({ note }) => note.author ?? 'Jo Planner' },
    write: {
      content: ({ sheet, note }, value) => {
        this.writing(sheet);
        note.content = String(value);
      },
    },
    members: (self) => ({
      getLocation: () =>
        self.child(this.range, ({ sheet, note }) => ({ sheet, range: { ...note, rows: 1, columns: 1 } })),
      delete: () =>
        self.queueAct(60, ({ sheet, note }) => {
          this.writing(sheet);
          sheet.notes = sheet.notes.filter((other) => other !== note);
        }),
    }),
  };

  private readonly noteCollection: Kind<FakeSheet> = {
    items: (sheet, self) => sheet.notes.map((note) => self.child(this.note, () => ({ sheet, note }))),
    members: (self) => ({
      add: (cell: unknown, content: string) => {
        let made: FakeSheet['notes'][number] | undefined;
        const location = this.targets.get(cell as object);
        self.queueAct(100 + content.length, (sheet) => {
          const { range } = location?.() ?? refuse('InvalidCellAddress');
          if (range.rows !== 1 || range.columns !== 1) refuse('InvalidCellAddress');
          if (sheet.notes.some((n) => n.row === range.row && n.column === range.column))
            refuse('InvalidOperation', 'has a note');
          this.writing(sheet);
          made = { row: range.row, column: range.column, content };
          sheet.notes.push(made);
        });
        return self.child(this.note, (sheet) => made && { sheet, note: made });
      },
    }),
  };
  /** Where a range object points, for calls that take one as an argument. */
  private readonly targets = new WeakMap<object, () => At>();

  private pointAt(self: Self<FakeSheet>, range: RangeAddress | (() => RangeAddress)): unknown {
    const at = (sheet: FakeSheet): At => ({ sheet, range: checkRange(typeof range === 'function' ? range() : range) });
    const object = self.child(this.range, at) as object;
    this.targets.set(object, () => at(self.state()));
    return object;
  }

  private readonly table: Kind<{ sheet: FakeSheet; table: FakeSheet['tables'][number] }> = {
    read: { name: ({ table }) => table.name },
    members: (self) => ({
      getRange: () => self.child(this.range, ({ sheet, table }) => ({ sheet, range: table.range })),
      resize: (to: object) => {
        this.need('1.13', 'table.resize');
        self.queueAct(80, ({ sheet, table }) => {
          this.writing(sheet);
          const { range } = this.targets.get(to)!();
          if (range.row !== table.range.row) refuse('InvalidArgument', 'the header must stay in its row');
          table.range = range;
        });
      },
    }),
  };

  private readonly worksheet: Kind<FakeSheet> = {
    read: { name: (sheet) => sheet.name, visibility: (sheet) => sheet.visibility },
    write: {
      showGridlines: (sheet, value) => void (sheet.hasGridlines = value === true),
      tabColor: (sheet, value) => void (sheet.tabColour = String(value)),
    },
    members: (self) => {
      const tableOf = (sheet: FakeSheet, name: string) => {
        const table = sheet.tables.find((t) => t.name.toLowerCase() === name.toLowerCase());
        return table && { sheet, table };
      };
      return {
        protection: self.child<FakeSheet>({ read: { protected: (sheet) => sheet.isProtected } }, (sheet) => sheet),
        tables: self.child<FakeSheet>(
          {
            items: (sheet, inner) => sheet.tables.map((table) => inner.child(this.table, () => ({ sheet, table }))),
            members: (inner) => ({
              getItem: (name: string) => inner.child(this.table, (sheet) => tableOf(sheet, name)),
              getItemOrNullObject: (name: string) => inner.child(this.table, (sheet) => tableOf(sheet, name), true),
            }),
          },
          (sheet) => sheet,
        ),
        charts: self.child(
          chartsKind(
            (sheet) => this.writing(sheet),
            (range) => this.targets.get(range)!().range,
          ),
          (sheet) => sheet,
        ),
        shapes: self.child(
          shapesKind((sheet) => this.writing(sheet)),
          (sheet) => sheet,
        ),
        pageLayout: self.child(
          pageLayoutKind(() => this.hasPrinter),
          (sheet) => sheet,
        ),
        getUsedRangeOrNullObject: () =>
          self.child(
            this.range,
            (sheet) => {
              const range = usedRange(sheet);
              return range && { sheet, range };
            },
            true,
          ),
        getRange: (address?: string) =>
          this.pointAt(self, () =>
            address === undefined ? { row: 0, column: 0, rows: 1_048_576, columns: 16_384 } : rangeOfAddress(address),
          ),
        getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
          this.pointAt(self, { row, column, rows, columns }),
        activate: () => self.queueAct(60, (sheet) => void (this.state.active = sheet.name)),
        ...(this.supports('1.18') && { notes: self.child(this.noteCollection, (sheet) => sheet) }),
      };
    },
  };

  private handlersMember(handlers: Set<Handler>, queue: Queue) {
    return {
      add: (handler: Handler) => {
        queue.add(60, () => void handlers.add(handler));
        return { context: undefined, remove: () => void handlers.delete(handler) };
      },
    };
  }

  private readonly workbook: Kind<FakeState> = {
    members: (self) => {
      const named = (state: FakeState, name: string) =>
        state.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase() || sheet.id === name);
      const setting = (name: string): Kind<FakeState> => ({
        read: { key: () => name, value: (state) => state.settings[name] },
        members: (inner) => ({
          delete: () =>
            inner.queueAct(60, (state) => {
              delete state.settings[name];
            }),
        }),
      });
      return {
        protection: self.child<FakeState>({ read: { protected: (s) => s.isStructureProtected } }, (s) => s),
        worksheets: self.child<FakeState>(
          {
            items: (state, inner) => state.sheets.map((sheet) => inner.child(this.worksheet, () => sheet)),
            members: (inner) => ({
              getActiveWorksheet: () => inner.child(this.worksheet, (state) => named(state, state.active)),
              getItem: (name: string) =>
                inner.child(this.worksheet, (state) => named(state, name) ?? refuse('ItemNotFound')),
              getItemOrNullObject: (name: string) => inner.child(this.worksheet, (state) => named(state, name), true),
              add: (name: string) => {
                inner.queueAct(80, (state) => {
                  if (state.isStructureProtected) refuse('AccessDenied');
                  if (named(state, name)) refuse('ItemAlreadyExists');
                  if (name.length > 31 || /[[\]:*?/\\]/.test(name)) refuse('InvalidArgument');
                  this.writing(undefined);
                  state.sheets.push(blankSheet(name));
                });
                return inner.child(this.worksheet, (state) => named(state, name));
              },
              onChanged: this.handlersMember(this.changeHandlers, self.queue),
              onSelectionChanged: this.handlersMember(this.selectionHandlers, self.queue),
            }),
          },
          (state) => state,
        ),
        settings: self.child<FakeState>(
          {
            members: (inner) => ({
              add: (name: string, value: string) =>
                inner.queueAct(60 + value.length, (state) => void (state.settings[name] = value)),
              getItemOrNullObject: (name: string) =>
                inner.child(setting(name), (state) => (name in state.settings ? state : undefined), true),
            }),
          },
          (state) => state,
        ),
        getSelectedRanges: () =>
          self.child(this.areas, (state) => {
            if (!state.selected) return refuse('InvalidSelection');
            const sheet = named(state, state.selected.sheet);
            return sheet && [{ sheet, range: state.selected.range }];
          }),
      };
    },
  };
}

export { NEWEST, OLDEST };
