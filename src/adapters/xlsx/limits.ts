/** What a workbook may cost before it is refused. A file from outside is never trusted about its own sizes. */
export interface Limits {
  readonly fileBytes: number;
  readonly parts: number;
  readonly partBytes: number;
  readonly totalBytes: number;
  /** Unpacked size over packed size, asked of parts larger than `ratioFrom` bytes. */
  readonly ratio: number;
  readonly ratioFrom: number;
  /** Cells held in memory when a sheet is read: rows that hold something times the width of the used range. */
  readonly cells: number;
}

const MIB = 1024 * 1024;

export const FILE_LIMITS: Limits = {
  fileBytes: 256 * MIB,
  parts: 10_000,
  partBytes: 1024 * MIB,
  totalBytes: 2048 * MIB,
  ratio: 1000,
  ratioFrom: MIB,
  cells: 50_000_000,
};

export const PANE_LIMITS: Limits = {
  ...FILE_LIMITS,
  fileBytes: 100 * MIB,
  partBytes: 256 * MIB,
  totalBytes: 512 * MIB,
  cells: 10_000_000,
};

/** Fixed by the file format. */
export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;
export const CELL_TEXT = 32_767;
export const FORMULA_TEXT = 8_192;
export const SHEET_NAME = 31;
export const XML_DEPTH = 256;
export const ATTRIBUTE_BYTES = 65_536;
export const CELL_STYLES = 64_000;
