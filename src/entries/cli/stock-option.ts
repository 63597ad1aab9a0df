import { stat } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { openFile } from '../../adapters/xlsx/file-on-disk';
import { openWorkbook, type WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { Language } from '../../core/language';
import type { SheetToRead } from '../../workbook/recognise';
import { readStock } from '../../workbook/stock/read-stock';
import { STOCK_SETTING, STOCK_SHEET, stockChanges } from '../../workbook/stock/stock-sheet';
import { STOCK_WORDS } from '../../workbook/stock/stock-words';
import { CommandProblem } from './status';

const sheetsOf = (file: WorkbookFile): SheetToRead[] =>
  file.sheets.map((info) => ({ info, content: file.readSheet(info.name, { formulaTexts: false }) }));

const isFile = async (path: string): Promise<boolean> =>
  /^\.xls[xm]$/i.test(extname(path)) && ((await stat(path).catch(() => undefined))?.isFile() ?? false);

/**
 * The workbook in memory with its sensors laid out on a sheet of ours, from another workbook or from one of its own
 * sheets, which stays as it is. Nothing reaches the disk before the workbook is saved.
 */
export const withStock = async (
  path: string,
  file: WorkbookFile,
  stock: string,
  functionNames: readonly string[],
  language: Language = 'en',
): Promise<{ readonly file: WorkbookFile; readonly told: readonly string[] }> => {
  const words = STOCK_WORDS[language];
  const own = file.sheets.find(({ name }) => name.toLowerCase() === stock.trim().toLowerCase())?.name;
  if (own === undefined && !(await isFile(stock)))
    throw new CommandProblem(
      `--stock ${stock}: neither a workbook (.xlsx, .xlsm) nor a sheet of ${path}; its sheets are ${file.sheets.map(({ name }) => name).join(', ')}.`,
    );
  const source = own === undefined ? await openFile(stock, functionNames) : file;
  const found = readStock(sheetsOf(source), own, language);
  if (!found) throw new CommandProblem(words.none(own === undefined ? stock : `${path}, ${own}`));
  const before = file.sheets.some(({ name }) => name === STOCK_SHEET) ? file.readSheet(STOCK_SHEET) : undefined;
  if (before && file.getSetting(STOCK_SETTING) === undefined)
    throw new CommandProblem(`${path}: ${words.yours(STOCK_SHEET)}`);
  const from = own ?? basename(stock);
  file.edit(stockChanges(found, from, language, before));
  file.setSetting(STOCK_SETTING, JSON.stringify({ from }));
  const made = openWorkbook(file.save(), { codec: nodeCodec, functionNames });
  return { file: made, told: [`${words.title(from)}: sheet “${STOCK_SHEET}”.`, ...found.notices] };
};
