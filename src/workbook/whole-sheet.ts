import type { Drawing } from './drawings';
import type { MarkRule, RangeAddress, ReadingSheet, SheetContent } from './port';
import type { WholeLook } from './whole-look';

/** What a sheet has around its cells. Widths are those of the file format, heights in points. */
export interface SheetFrame {
  /** Of columns that have no width of their own. */
  readonly usualWidth?: number;
  readonly columns?: ReadonlyMap<
    number,
    { readonly width?: number; readonly isHidden?: boolean; readonly look?: WholeLook }
  >;
  readonly rows?: ReadonlyMap<number, { readonly height?: number; readonly isHidden?: boolean }>;
  readonly merged?: readonly RangeAddress[];
  readonly tables?: readonly {
    readonly name: string;
    readonly range: RangeAddress;
    readonly headings: readonly string[];
  }[];
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly isHidden?: boolean;
  /** "#rrggbb". */
  readonly tabColour?: string;
  readonly hasGridLines?: boolean;
  readonly reading?: ReadingSheet;
}

/** A sheet as one host shows it, whole, for a file that has no such sheet. */
export interface WholeSheet {
  readonly content: SheetContent;
  readonly spills: readonly RangeAddress[];
  readonly frame: SheetFrame;
  readonly looks: readonly { readonly range: RangeAddress; readonly look: WholeLook }[];
  readonly notes: readonly {
    readonly row: number;
    readonly column: number;
    readonly text: string;
    readonly isOurs: boolean;
  }[];
  readonly marks: readonly MarkRule[];
  /** Those that were made since the sheet was opened. */
  readonly drawings?: readonly Drawing[];
}
