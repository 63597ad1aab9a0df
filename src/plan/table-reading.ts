import type { UnitId } from '../core/units';
import type { TableName } from './fields';
import type { CellValue } from './heading-evidence';

/** One column of a recognised table: where it is and what its heading says about the numbers below. */
export interface ColumnReading {
  /** Place in each row's cells. */
  readonly column: number;
  /** Heading as the user wrote it, for messages; the field's own title when absent. */
  readonly heading?: string;
  readonly unit?: UnitId;
  /** Unit as written when it is none of ours. */
  readonly unitText?: string;
  readonly statistic?: 'rms' | 'peak';
  /** Cells that can mean two things, which only the list as a whole shows; nothing is taken from them. */
  readonly held?: ReadonlyMap<number | string, HeldReading>;
}

export interface HeldReading {
  /** As the sheet shows it. */
  readonly shown: string;
  readonly readings: readonly [string, string];
}

/** A recognised table with its cells. */
export interface TableReading {
  readonly name: TableName;
  readonly columns: ReadonlyMap<string, ColumnReading>;
  readonly rows: readonly (readonly CellValue[])[];
  /** Row number of each row as its user sees it. */
  readonly at: readonly number[];
  /** Where a table is spread over several sheets: the sheet, told beside a row's number. */
  readonly sheet?: string;
  /** Structure part of all its rows, where no column names one. */
  readonly part?: string;
}

export const isErrorCell = (cell: CellValue | undefined): cell is { readonly error: string } =>
  typeof cell === 'object' && cell !== null;
