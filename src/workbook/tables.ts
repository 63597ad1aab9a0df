import type { TableName } from '../plan/fields';
import type { UnitId } from '../core/units';
import type { ColumnCandidate } from '../plan/headings';
import type { HeldReading } from '../plan/table-reading';

/** How a column of the user's sheet is used. */
export interface ColumnUse {
  /** 0-based column of the sheet. */
  readonly column: number;
  readonly heading: string;
  readonly unit?: UnitId;
  /** The heading's unit as written; a bare number means "number unitText". */
  readonly unitText?: string;
  readonly statistic?: 'rms' | 'peak';
  /** Cells of this column from which nothing is taken: see held-cells.ts. */
  readonly held?: ReadonlyMap<number | string, HeldReading>;
  /** 0..1; 1 when the user said so. */
  readonly confidence: number;
  readonly evidence: string;
  readonly alternatives: readonly ColumnCandidate[];
}

/** A table found on a sheet. Rows and columns are 0-based places on the sheet. */
export interface RecognisedTable {
  readonly table: TableName;
  readonly sheet: string;
  /** First row of the header. */
  readonly headerRow: number;
  readonly headerRows: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  /** Rows between firstRow and lastRow that carry no item: blank, subtotal, caption, repeated header. */
  readonly skippedRows: readonly number[];
  /** Those of them in which everything is crossed out: no part of the plan, and told. */
  readonly crossedRows?: readonly number[];
  readonly columns: ReadonlyMap<string, ColumnUse>;
  /** Every column's heading, two-row headers joined; ours left out. */
  readonly headings: ReadonlyMap<number, string>;
  /** Fields with candidates of which none is sure enough. */
  readonly unsure: ReadonlyMap<string, readonly ColumnCandidate[]>;
  /** Name of the host's table object, when the range is one. */
  readonly listObject?: string;
  readonly confidence: number;
  /** Other lists of the same kind in the workbook. They are not read; whoever looks at the plan must be told. */
  readonly further?: readonly FurtherList[];
  /** The rest of a channel list that is spread over several sheets, in the order of the sheets. */
  readonly parts?: readonly RecognisedTable[];
  /** Structure part of every row, where no column names it and each part has a sheet. */
  readonly part?: string;
}

export interface FurtherList {
  readonly sheet: string;
  readonly headerRow: number;
  readonly column: number;
  /** Why it was not taken for another part of the list; `left out`: somebody said so. */
  readonly because?: 'other columns' | 'same channels' | 'same sheet' | 'left out';
}

/** What the user corrected, per field key; kept as JSON in the workbook. */
export interface FieldCorrection {
  /** Heading text of the column, or null for "not in this sheet". Omitted: only unit or statistic is corrected. */
  readonly column?: { readonly heading: string; readonly column: number } | null;
  readonly unitText?: string;
  readonly statistic?: 'rms' | 'peak';
}
export interface TableCorrection {
  readonly sheet?: string;
  readonly headerRow?: number;
  readonly fields?: Readonly<Record<string, FieldCorrection>>;
  /** Of the channel list: sheets that belong to it, and sheets that look like it and do not. */
  readonly lists?: Readonly<Record<string, boolean>>;
  /** Of the channel list: fields of a single sheet, where its columns have other headings. */
  readonly fieldsOn?: Readonly<Record<string, Readonly<Record<string, FieldCorrection>>>>;
}
export type Mapping = Readonly<Partial<Record<TableName, TableCorrection>>>;
