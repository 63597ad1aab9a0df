import type { ICommandInfo, IRange } from '@univerjs/core';
import {
  AddWorksheetMergeMutation,
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveNumfmtMutation,
  RemoveRowMutation,
  RemoveWorksheetMergeMutation,
  ReorderRangeMutation,
  SetColDataMutation,
  SetNumfmtMutation,
  SetRangeValuesMutation,
  SetRowDataMutation,
  type IMoveRangeMutationParams,
} from '@univerjs/sheets';
import { Services, type Host } from './host';
import { TouchedCells } from './touched-cells';

/** What a person may change beside the content of cells. */
export type BesideKind =
  'sizes' | 'frozen' | 'tabs' | 'notes' | 'conditional' | 'filters' | 'tables' | 'names' | 'formats' | 'lines';

/** The commands by which that is done. */
const BESIDE_CONTENT: readonly (readonly [RegExp, BesideKind])[] = [
  [
    /\.(delta-|set-worksheet-col-width|set-row-height|set-col-auto|set-row-is-auto|hide-|set-.*-(hidden|visible))/,
    'sizes',
  ],
  [/frozen/, 'frozen'],
  [/tab-color|set-worksheet-show/, 'tabs'],
  [/-note/, 'notes'],
  [/conditional|\.cf/, 'conditional'],
  [/filter/, 'filters'],
  [/(^|[.-])(add|delete|set|insert)-(sheet-)?table/, 'tables'],
  [/defined-name/, 'names'],
];

/** What is not carried over with a sheet that was added either. */
const NEVER_CARRIED: ReadonlySet<BesideKind> = new Set(['conditional', 'filters', 'names']);

interface StructureStep {
  readonly sheetId: string;
  readonly what: 'rows' | 'columns';
  readonly how: 'inserted' | 'removed' | 'moved';
  readonly first: number;
  readonly last: number;
}
/** How the workbook's structure differs from what was opened. */
export type Restructured =
  | (Pick<StructureStep, 'what' | 'how'> & { readonly sheet: string })
  | { readonly what: 'sheet' | 'merges'; readonly sheet: string };

interface Place {
  readonly subUnitId: string;
  readonly range: IRange;
}

const STEPS: ReadonlyMap<string, Pick<StructureStep, 'what' | 'how'>> = new Map([
  [InsertRowMutation.id, { what: 'rows', how: 'inserted' }],
  [RemoveRowMutation.id, { what: 'rows', how: 'removed' }],
  [MoveRowsMutation.id, { what: 'rows', how: 'moved' }],
  [InsertColMutation.id, { what: 'columns', how: 'inserted' }],
  [RemoveColMutation.id, { what: 'columns', how: 'removed' }],
  [MoveColsMutation.id, { what: 'columns', how: 'moved' }],
]);
interface NumberFormats {
  readonly subUnitId: string;
  readonly values?: Readonly<Record<string, { readonly ranges: readonly IRange[] }>>;
  readonly ranges?: readonly IRange[];
}
interface WholeLines {
  readonly subUnitId: string;
  readonly columnData?: Readonly<Record<number, object | null>>;
  readonly rowData?: Readonly<Record<number, object | null>>;
}
const NUMBER_FORMATS: ReadonlySet<string> = new Set([SetNumfmtMutation.id, RemoveNumfmtMutation.id]);
const WHOLE_LINES: ReadonlySet<string> = new Set([SetColDataMutation.id, SetRowDataMutation.id]);
/** What a cell of the grid holds beside its look. */
const CONTENT: ReadonlySet<string> = new Set(['v', 'f', 'si', 'p']);
const MERGES: ReadonlySet<string> = new Set([AddWorksheetMergeMutation.id, RemoveWorksheetMergeMutation.id]);

/** Undoing a step leaves the sheet as it was; so does the opposite step at the same place. */
const undoes = (step: StructureStep, last: StructureStep | undefined): boolean =>
  last !== undefined &&
  last.sheetId === step.sheetId &&
  last.what === step.what &&
  last.first === step.first &&
  last.last === step.last &&
  step.how !== 'moved' &&
  last.how !== 'moved' &&
  last.how !== step.how;

/** Follows what happens to the open workbook, so that saving knows which cells were written and what else was done. */
export class EditLog {
  private readonly services: Services;
  private readonly cells = new TouchedCells();
  private readonly looks = new TouchedCells();
  private readonly ranges = new Map<string, IRange[]>();
  private readonly beside = new Set<BesideKind>();
  private steps: StructureStep[] = [];
  private sheets: readonly { id: string; name: string; merges: string }[] = [];
  private mergesMoved = false;

  constructor(host: Host) {
    this.services = new Services(host);
    this.services.commands.onCommandExecuted((command, options) => {
      const isResult = options?.['applyFormulaCalculationResult'] === true;
      if (!isResult) this.note(command);
    });
  }

  /** Starts over: the workbook is now as its file says. */
  begin(): void {
    this.cells.clear();
    this.looks.clear();
    this.ranges.clear();
    this.beside.clear();
    this.steps = [];
    this.mergesMoved = false;
    this.sheets = this.present();
  }

  wasWritten(sheet: string, row: number, column: number): boolean {
    const id = this.services.openWorkbook()?.getSheetBySheetName(sheet)?.getSheetId() ?? '';
    return (
      this.cells.has(id, row, column) ||
      (this.ranges.get(id) ?? []).some(
        (r) => row >= r.startRow && row <= r.endRow && column >= r.startColumn && column <= r.endColumn,
      )
    );
  }

  /** Cells whose look anybody may have changed since then, row by row. */
  lookedAt(sheet: string): readonly (readonly [row: number, column: number])[] {
    return this.looks.of(this.services.openWorkbook()?.getSheetBySheetName(sheet)?.getSheetId() ?? '');
  }

  /** What a person changed beside contents since then. */
  besideContent(): readonly BesideKind[] {
    return [...this.beside];
  }

  /** Each kind of change once. */
  restructured(): readonly Restructured[] {
    const now = this.present();
    const nameOf = (id: string): string => [...now, ...this.sheets].find((sheet) => sheet.id === id)?.name ?? '';
    const found = new Map<string, Restructured>();
    const add = (change: Restructured) => found.set(JSON.stringify(change), change);
    for (const { what, how, sheetId } of this.steps) add({ what, how, sheet: nameOf(sheetId) });
    for (const { id, name, merges } of this.sheets) {
      const same = now.find((sheet) => sheet.id === id);
      if (!same) add({ what: 'sheet', sheet: name });
      if (this.mergesMoved && same && same.merges !== merges) add({ what: 'merges', sheet: same.name });
    }
    return [...found.values()];
  }

  /** Names of the sheets that the file does not have. */
  added(): readonly string[] {
    return this.present().flatMap(({ id, name }) => (this.wasOpened(id) ? [] : [name]));
  }

  /** Present names of sheets by those that the file has, where they differ. */
  renamed(): ReadonlyMap<string, string> {
    const now = new Map(this.present().map(({ id, name }) => [id, name]));
    return new Map(
      this.sheets.flatMap(({ id, name }) => {
        const present = now.get(id);
        return present === undefined || present === name ? [] : [[name, present] as const];
      }),
    );
  }

  private wasOpened(id: string): boolean {
    return this.sheets.some((sheet) => sheet.id === id);
  }

  private present(): { id: string; name: string; merges: string }[] {
    return (this.services.openWorkbook()?.getSheets() ?? []).map((sheet) => ({
      id: sheet.getSheetId(),
      name: sheet.getName(),
      merges: sheet
        .getMergeData()
        .map((m) => [m.startRow, m.startColumn, m.endRow, m.endColumn].join(' '))
        .sort()
        .join(';'),
    }));
  }

  private note({ id, params }: ICommandInfo): void {
    if (id.includes('.command.'))
      for (const [pattern, kind] of BESIDE_CONTENT)
        if (pattern.test(id) && (NEVER_CARRIED.has(kind) || this.isOnOpened(params as Partial<Place> | undefined)))
          this.beside.add(kind);
    const step = STEPS.get(id);
    if (step) this.noteStep(step, params as Place & { sourceRange?: IRange; targetRange?: IRange });
    else if (id === SetRangeValuesMutation.id) this.noteCells(params as { subUnitId: string; cellValue?: object });
    else if (NUMBER_FORMATS.has(id)) this.noteNumberFormats(params as NumberFormats);
    else if (WHOLE_LINES.has(id)) this.noteLines(params as WholeLines);
    else if (id === ReorderRangeMutation.id) this.noteRange(params as Place);
    else if (id === MoveRangeMutation.id) {
      const { from, to, fromRange, toRange } = params as IMoveRangeMutationParams;
      this.noteRange({ subUnitId: from.subUnitId, range: fromRange });
      this.noteRange({ subUnitId: to.subUnitId, range: toRange });
      if (this.wasOpened(from.subUnitId) || this.wasOpened(to.subUnitId)) this.beside.add('formats');
    } else if (MERGES.has(id)) this.mergesMoved = true;
  }

  /** A sheet that was added is carried over whole. Commands that name no sheet are about the one in view. */
  private isOnOpened(params: Partial<Place> | undefined): boolean {
    const id = params?.subUnitId ?? this.services.openWorkbook()?.getActiveSheet(true)?.getSheetId();
    return id !== undefined && this.wasOpened(id);
  }

  private noteStep(step: Pick<StructureStep, 'what' | 'how'>, params: Place & { sourceRange?: IRange }): void {
    const range = params.range ?? params.sourceRange;
    if (!range) return;
    const isRows = step.what === 'rows';
    const [first, last] = isRows ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
    const whole = isRows
      ? { ...range, startColumn: 0, endColumn: Infinity }
      : { ...range, startRow: 0, endRow: Infinity };
    this.noteRange({ subUnitId: params.subUnitId, range: whole });
    if (!this.wasOpened(params.subUnitId)) return;
    const made = { ...step, sheetId: params.subUnitId, first, last };
    if (undoes(made, this.steps.at(-1))) this.steps.pop();
    else this.steps.push(made);
  }

  private noteRange({ subUnitId, range }: Place): void {
    const list = this.ranges.get(subUnitId) ?? [];
    this.ranges.set(subUnitId, [...list, range]);
  }

  private noteCells({ subUnitId, cellValue }: { subUnitId: string; cellValue?: object }): void {
    for (const [row, cells] of Object.entries(cellValue ?? {}))
      for (const [column, cell] of Object.entries((cells ?? {}) as object)) {
        const keys = cell ? Object.keys(cell as object) : ['v', 's'];
        if (keys.some((key) => CONTENT.has(key))) this.cells.add(subUnitId, Number(row), Number(column));
        if (keys.includes('s')) this.looks.add(subUnitId, Number(row), Number(column));
      }
  }

  private noteNumberFormats({ subUnitId, values = {}, ranges = [] }: NumberFormats): void {
    for (const range of [...Object.values(values).flatMap((each) => each.ranges), ...ranges])
      this.looks.addRange(subUnitId, range);
  }

  private noteLines({ subUnitId, columnData, rowData }: WholeLines): void {
    const lines = Object.values({ ...columnData, ...rowData });
    if (this.wasOpened(subUnitId) && lines.some((line) => line && 's' in line)) this.beside.add('lines');
  }
}
