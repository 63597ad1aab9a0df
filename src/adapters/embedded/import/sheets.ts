import type { IColumnData, IFreeze, IRange, IRowData, IWorksheetData } from '@univerjs/core';
import type { Sheet } from 'hucre';
import { cellsFromFile } from './cells';
import type { ColorReader, StyleTable } from './styles';

/** Room below and beside the data, so that a block that spills does not meet the edge. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 40;
const LEAST_ROWS = 400;
const LEAST_COLUMNS = 60;
const PIXELS_PER_POINT = 4 / 3;
/** Width of the digit 0 in the file format's default font, which column widths are counted in. */
const DIGIT_PIXELS = 7;

/** ECMA-376-1, 18.3.1.13: pixels of a column whose width is given in characters, padding included. */
export const pixelsOfWidth = (characters: number): number =>
  Math.trunc(((256 * characters + Math.trunc(128 / DIGIT_PIXELS)) / 256) * DIGIT_PIXELS);

const columnData = (sheet: Sheet, styles: StyleTable): Record<number, IColumnData> => {
  const data: Record<number, IColumnData> = {};
  sheet.columns?.forEach((column, index) => {
    const s = styles.idOf(column?.style);
    const found: IColumnData = {
      ...(column?.width !== undefined && { w: pixelsOfWidth(column.width) }),
      ...(column?.hidden && { hd: 1 }),
      ...(s && { s }),
    };
    if (Object.keys(found).length > 0) data[index] = found;
  });
  return data;
};

const rowData = (sheet: Sheet): Record<number, IRowData> => {
  const data: Record<number, IRowData> = {};
  for (const [index, row] of sheet.rowDefs ?? []) {
    const found: IRowData = {
      ...(row.height !== undefined && { h: Math.round(row.height * PIXELS_PER_POINT), ia: 0 }),
      ...(row.hidden && { hd: 1 }),
    };
    if (Object.keys(found).length > 0) data[index] = found;
  }
  return data;
};

const freeze = ({ freezePane }: Sheet): IFreeze => {
  const ySplit = freezePane?.rows ?? 0;
  const xSplit = freezePane?.columns ?? 0;
  return { xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 };
};

/** The grid walks through the cells of a merge; one that spans the whole sheet would take it hours. */
const MOST_MERGED_CELLS = 100_000;

const mergedRanges = (sheet: Sheet): IRange[] =>
  (sheet.merges ?? [])
    .map(({ startRow, startCol, endRow, endCol }) => ({ startRow, startColumn: startCol, endRow, endColumn: endCol }))
    .filter((m) => (m.endRow - m.startRow + 1) * (m.endColumn - m.startColumn + 1) <= MOST_MERGED_CELLS);

export const worksheetFromFile = (
  sheet: Sheet,
  id: string,
  styles: StyleTable,
  color: ColorReader,
): Partial<IWorksheetData> => {
  const rows = sheet.rows.length;
  const columns = Math.max(sheet.columns?.length ?? 0, ...sheet.rows.map((row) => row.length));
  return {
    id,
    name: sheet.name,
    hidden: sheet.hidden || sheet.veryHidden ? 1 : 0,
    tabColor: color(sheet.view?.tabColor)?.rgb ?? '',
    rowCount: Math.max(LEAST_ROWS, rows + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, columns + SPARE_COLUMNS),
    showGridlines: sheet.view?.showGridLines === false ? 0 : 1,
    cellData: cellsFromFile(sheet, id, styles),
    columnData: columnData(sheet, styles),
    rowData: rowData(sheet),
    freeze: freeze(sheet),
    mergeData: mergedRanges(sheet),
  };
};
