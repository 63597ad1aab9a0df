import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { nodeCodec } from '../../../src/adapters/xlsx/codec-node';
import { openWorkbook } from '../../../src/adapters/xlsx/workbook-file';
import { planFromTables, type TablePlan } from '../../../src/plan/from-tables';
import { recognise } from '../../../src/workbook/recognise';
import { SheetCells } from '../../../src/workbook/sheet-cells';
import type { LaidOutStock } from '../../../src/workbook/stock/lay-out';
import { readStock } from '../../../src/workbook/stock/read-stock';
import { STOCK_HEADER, STOCK_SHEET, stockCells } from '../../../src/workbook/stock/stock-sheet';

/** The sensor list of a file that LibreOffice wrote, in a shape that stores keep. */
export const stockOf = (path: string): LaidOutStock => {
  const bytes = new Uint8Array(readFileSync(join(__dirname, '../../fixtures/lists', path)));
  const file = openWorkbook(bytes, { codec: nodeCodec, functionNames: [] });
  return readStock(
    file.sheets.map((info) => ({ info, content: file.readSheet(info.name) })),
    undefined,
    'en',
  )!;
};

/** The laid out sheet, read again as any sensor list is. */
export const laidOutAgain = (stock: LaidOutStock, name: string): TablePlan => {
  const { cells } = stockCells(stock, name, 'en');
  const content = {
    sheet: STOCK_SHEET,
    row: 0,
    column: 0,
    values: cells,
    formulas: cells.map((line) => line.map(() => '')),
    tables: [],
    merged: [],
    hiddenRows: [],
  };
  const found = recognise([{ info: { name: STOCK_SHEET, active: true, visible: true }, content }], {
    mapping: { sensors: { sheet: STOCK_SHEET, headerRow: STOCK_HEADER } },
  }).sensors!;
  const at = new SheetCells(content);
  const rows = Array.from({ length: found.lastRow - found.firstRow + 1 }, (_, i) =>
    cells[0]!.map((_, column) => at.at(found.firstRow + i, column)),
  );
  return planFromTables([{ name: 'sensors', columns: found.columns, rows, at: rows.map((_, i) => i) }]);
};
