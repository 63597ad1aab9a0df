import type { Language } from '../../core/language';
import type { SheetToRead } from '../recognise';
import type { Mapping } from '../tables';
import { layOutStock, type LaidOutStock } from './lay-out';
import { STOCK_HEADER, STOCK_SHEET } from './stock-sheet';
import { stockSourceIn } from './stock-source';

/** The sensor list of a workbook, or of one of its sheets, laid out; undefined when there is none. */
export const readStock = (
  sheets: readonly SheetToRead[],
  sheet: string | undefined,
  language: Language,
): LaidOutStock | undefined => {
  const source = stockSourceIn(
    sheet === undefined ? sheets.filter(({ info }) => info.name !== STOCK_SHEET) : sheets,
    sheet,
  );
  return source && layOutStock(source, language);
};

/** From now on the plan looks sensors up on our sheet. */
export const withStockSheet = (mapping: Mapping): Mapping => ({
  ...mapping,
  sensors: { sheet: STOCK_SHEET, headerRow: STOCK_HEADER, fields: {} },
});
