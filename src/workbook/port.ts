import type { InLanguages, Language } from '../core/language';
import type { Cell } from '../functions/define';
import type { Drawing } from './drawings';

/**
 * What we need from any spreadsheet. Shaped by the most restricted host: reads and writes are batched and asynchronous.
 * Rows and columns are 0-based everywhere on this side of the port. Formulas are en-US A1 with our functions as CHAN.NAME(…).
 */
export interface Spreadsheet {
  readonly host: 'office' | 'embedded' | 'file';
  readonly can: Capabilities;
  sheets(): Promise<readonly SheetInfo[]>;
  /** The used range with everything a reader needs; an empty sheet has no rows. */
  readSheet(sheet: string): Promise<SheetContent>;
  /**
   * Only where `readSheet` leaves `crossedOut` out, because it would cost too much for whole sheets: which cells of these
   * lists are crossed out, in rows whose cell in column `by` is.
   */
  crossedOut?(lists: readonly { sheet: string; range: RangeAddress; by: number }[]): Promise<CrossedOut>;
  /** Applies all changes as one user action: one undo where the host allows it. Rejects with a HostProblem. */
  apply(changes: readonly Change[], options: ApplyOptions): Promise<void>;
  select(sheet: string, range: RangeAddress): Promise<void>;
  selection(): Promise<{ sheet: string; range: RangeAddress } | undefined>;
  /** Waits until formulas written before have their values. */
  calculated(): Promise<void>;
  /** Calls back after a person (not we) changed cells. Returns the way to stop. */
  onChange(listener: (change: { sheet: string; range: RangeAddress }) => void): Promise<() => void>;
  onSelect(listener: (at: { sheet: string; range: RangeAddress }) => void): Promise<() => void>;
  /** Settings live in the workbook, private to us, as JSON text. */
  getSetting(key: string): Promise<string | undefined>;
  setSetting(key: string, json: string | undefined): Promise<void>;
  /** What the program behind the port says about itself, for a report of the add-in's state. */
  facts?(): Promise<HostFacts>;
}

export interface HostFacts {
  /** As the host says them, such as "Excel, PC, 16.0.18025". */
  readonly program: string;
  /** Abilities of the host that are not in every version, by our name for them. */
  readonly abilities: Readonly<Record<string, boolean>>;
  readonly functionsKnown?: number;
  /** Where worksheet functions run: together with the pane, by themselves, or in this page. */
  readonly runtime: 'shared' | 'separate' | 'page' | 'none';
  readonly calculation?: string;
  readonly separators?: { readonly decimal: string; readonly list?: string };
}

export interface Capabilities {
  readonly notes: boolean;
  readonly oneUndo: boolean;
  readonly changeEvents: boolean;
  /** Whether drawings of ours show on the sheet itself, or only in the file that is saved. */
  readonly drawings: 'on the sheet' | 'in the file';
}

export interface SheetInfo {
  readonly name: string;
  readonly active: boolean;
  readonly visible: boolean;
}

export interface RangeAddress {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface SheetContent {
  readonly sheet: string;
  /** Place of values[0][0] on the sheet. */
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly Cell[])[];
  /** Formula text with its '=' where a cell has one, '' elsewhere; same shape as values. */
  readonly formulas: readonly (readonly string[])[];
  readonly tables: readonly { readonly name: string; readonly range: RangeAddress }[];
  readonly merged: readonly RangeAddress[];
  readonly hiddenRows: readonly number[];
  /** Columns of the cells in a row that are crossed out, by row; absent where the host does not tell. */
  readonly crossedOut?: ReadonlyMap<number, readonly number[]>;
  /** Cells that hold a date, by address, as 2026-11-30; absent where the host does not tell. */
  readonly dates?: ReadonlyMap<string, string>;
}
/** By sheet and row, the columns of cells that are crossed out. */
export type CrossedOut = ReadonlyMap<string, ReadonlyMap<number, readonly number[]>>;

export type Change =
  /** Formula texts start with '='; null clears a cell. Constant texts that start with '=' cannot be expressed on purpose. */
  | {
      kind: 'cells';
      sheet: string;
      row: number;
      column: number;
      cells: readonly (readonly (number | string | boolean | null)[])[];
    }
  /** Clears values, formats and notes of a block that is ours. */
  | { kind: 'clear'; sheet: string; range: RangeAddress }
  | { kind: 'look'; sheet: string; range: RangeAddress; look: CellLook }
  | { kind: 'width'; sheet: string; column: number; columns: number; characters: number }
  /** Makes rows as high as their wrapped texts need, in a host that does not do so by itself. */
  | { kind: 'fit'; sheet: string; row: number; rows: number }
  /** Replaces all rules that we set on the sheet before by these. */
  | { kind: 'marks'; sheet: string; rules: readonly MarkRule[] }
  | { kind: 'note'; sheet: string; row: number; column: number; text: string | null }
  /** Makes the sheet if it is missing; with `reading`, one to be read and printed. */
  | { kind: 'sheet'; name: string; reading?: ReadingSheet }
  /** Replaces what we drew on a sheet of ours by these; what somebody else drew there stays. */
  | { kind: 'drawings'; sheet: string; drawings: readonly Drawing[] }
  /** Takes so many more columns right of a table into it, where the host keeps tables. */
  | { kind: 'extend-table'; sheet: string; table: string; columns: number };

/** No grid lines, printed in landscape and one page wide. */
export interface ReadingSheet {
  /** Right foot of each page, with &P for its number and &N for how many there are. */
  readonly foot: string;
}

export interface CellLook {
  readonly bold?: boolean;
  readonly ink?: string;
  readonly ground?: string;
  readonly numberFormat?: string;
  readonly align?: 'left' | 'right' | 'center';
  readonly vertical?: 'top' | 'center' | 'bottom';
  readonly wrap?: boolean;
  /** A thin line below each cell, in this colour. */
  readonly hairline?: string;
}

/** Cells in the range whose text equals `equals` are drawn in these colours. */
export interface MarkRule {
  readonly range: RangeAddress;
  readonly equals: string;
  /** Shown in front of the text, which stays what it is; only in files. */
  readonly sign?: string;
  readonly ink: string;
  readonly ground: string;
}

export interface ApplyOptions {
  /** Shown by a host that names undo steps. */
  readonly label: string;
  readonly onProgress?: (done: number, total: number) => void;
  readonly signal?: AbortSignalLike;
  /**
   * What these cells held when they were read: a formula with its '=', else the value. A host in which somebody else may
   * write at the same time compares before it writes and refuses as `changed` when a row has moved or a cell differs.
   */
  readonly asRead?: readonly AsRead[];
}
export type AsRead = Omit<Extract<Change, { kind: 'cells' }>, 'kind'>;

/** The part of AbortSignal that we use; this layer compiles without the DOM. */
export interface AbortSignalLike {
  readonly aborted: boolean;
}

/** Why the host refused, in a sentence for the user; the message is the English one. */
export class HostProblem extends Error {
  readonly said: InLanguages<string>;

  constructor(
    said: string | InLanguages<string>,
    readonly code:
      'protected' | 'cancelled' | 'too-large' | 'not-found' | 'unsupported' | 'occupied' | 'changed' | 'host',
  ) {
    super(typeof said === 'string' ? said : said.en);
    this.said = typeof said === 'string' ? { en: said, de: said, fr: said } : said;
    this.name = 'HostProblem';
  }
}

/** What an error says to a person. */
export const sentenceOf = (error: unknown, language: Language): string => {
  if (error instanceof HostProblem) return error.said[language];
  return error instanceof Error ? error.message : String(error);
};
