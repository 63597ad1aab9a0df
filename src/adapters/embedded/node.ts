import './iterator-polyfill';
import { LocaleType, LogLevel, Univer, type IWorkbookData } from '@univerjs/core';
import { FUniver } from '@univerjs/core/lib/facade';
import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import '@univerjs/engine-formula/lib/facade';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import '@univerjs/sheets/lib/facade';
import { UniverSheetsConditionalFormattingPlugin } from '@univerjs/sheets-conditional-formatting';
import { UniverSheetsFilterPlugin } from '@univerjs/sheets-filter';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import '@univerjs/sheets-formula/lib/facade';
import { UniverSheetsNotePlugin } from '@univerjs/sheets-note';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import type { AnyFunction } from '../../functions/define';
import { FUNCTIONS } from '../../functions/index';
import { patchEngine } from './engine-patches';
import { engineVersion } from './engine-version';
import { functionClasses, functionDescriptions } from './functions';
import type { Host } from './host';
import { openInGrid } from './open';

/** The same engine and functions as on the page, without a page: for tests and for calculating a file's formulas. */
export const createHeadless = (functions: readonly AnyFunction[] = FUNCTIONS, version = engineVersion()): Host => {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: {}, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: functionClasses(functions) });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    description: functionDescriptions(functions),
    initialFormulaComputing: CalculationMode.FORCED,
  });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsFilterPlugin);
  univer.registerPlugin(UniverSheetsTablePlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsNotePlugin);
  patchEngine(univer.__getInjector(), version);
  return { univer, api: FUniver.newAPI(univer) };
};

/** Opens a workbook without a page and waits for its values. Dispose `univer` when done. */
export const openHeadless = async (data: IWorkbookData, functions?: readonly AnyFunction[]): Promise<Host> => {
  const host = createHeadless(functions);
  await openInGrid(host.api, data);
  return host;
};
