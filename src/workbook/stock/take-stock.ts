import type { Language } from '../../core/language';
import { HostProblem, type Spreadsheet } from '../port';
import type { SheetToRead } from '../recognise';
import { readStock } from './read-stock';
import { STOCK_SETTING, STOCK_SHEET, stockChanges } from './stock-sheet';
import { STOCK_WORDS } from './stock-words';

/**
 * Lays out the sensor list of another workbook on our own sheet, as one action. Returns what to tell; rejects with a
 * HostProblem that says why nothing was written.
 */
export const takeStock = async (
  spreadsheet: Spreadsheet,
  other: readonly SheetToRead[],
  from: string,
  language: Language,
): Promise<readonly string[]> => {
  const words = STOCK_WORDS[language];
  const found = readStock(other, undefined, language);
  if (!found) throw new HostProblem(words.none(from), 'not-found');
  const isThere = (await spreadsheet.sheets()).some(({ name }) => name === STOCK_SHEET);
  if (isThere && (await spreadsheet.getSetting(STOCK_SETTING)) === undefined)
    throw new HostProblem(words.yours(STOCK_SHEET), 'occupied');
  const before = isThere ? await spreadsheet.readSheet(STOCK_SHEET) : undefined;
  const title = words.title(from);
  await spreadsheet.apply(stockChanges(found, from, language, before), { label: title });
  await spreadsheet.setSetting(STOCK_SETTING, JSON.stringify({ from }));
  return [title, ...found.notices];
};
