import { VERDICTS } from '../../core/verdict';
import { cellAddress } from '../../workbook/address';
import type { RangeAddress } from '../../workbook/port';
import { cellFromGrid } from './cell-values';
import { Services, type Host } from './host';

const WORDS: ReadonlySet<unknown> = new Set(VERDICTS);

/** The verdict of a row is the first cell that holds one: the checks it is made of stand to its right. */
const verdictOf = (services: Services, sheetName: string, row: number): string | undefined => {
  const sheet = services.sheet(sheetName);
  for (let column = 0; column <= sheet.getLastColumnWithContent(); column++) {
    const value = cellFromGrid(sheet.getCellRaw(row, column));
    if (WORDS.has(value)) return String(value);
  }
  return undefined;
};

/** One sentence for a screen reader, as the grid is drawn and holds no cells that could be read. */
export const describeSelection = (host: Host, sheetName: string, range: RangeAddress): string => {
  const services = new Services(host);
  const sheet = services.openWorkbook()?.getSheetBySheetName(sheetName);
  // Another workbook may be open by the time it is spoken.
  if (!sheet) return '';
  const { row, column, rows, columns } = range;
  const address = cellAddress(row, column);
  if (rows > 1 || columns > 1) return `${address}, ${rows} by ${columns} cells selected`;
  const facade = host.api.getActiveWorkbook()?.getSheetBySheetId(sheet.getSheetId());
  const text = facade?.getRange(row, column).getDisplayValue() || 'blank';
  const verdict = verdictOf(services, sheetName, row);
  return verdict && verdict !== text ? `${address}, ${text}, row verdict ${verdict}` : `${address}, ${text}`;
};
