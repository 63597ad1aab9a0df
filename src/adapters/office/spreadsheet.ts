import { HostProblem, type Spreadsheet } from '../../workbook/port';
import { applyChanges } from './apply';
import { readCrossedOut } from './crossed-out';
import { listenToChanges, listenToSelection, withoutOwnEvents } from './events';
import { readFacts } from './facts';
import { CELL_PROPERTIES, SETS, type OfficeHost } from './host';
import { asHostProblem, hostCodeOf } from './problems';
import { missingSheet, placeOf, readSheet, readSheetList } from './read-sheet';

/** A person may be typing in a cell: wait until that ends instead of failing. */
const PATIENT: Excel.RunOptions = { delayForCellEdit: true };

const CALCULATION_LIMIT_MS = 120_000;
const CALCULATION_POLL_MS = 100;

const select = async (context: Excel.RequestContext, name: string, at: (sheet: Excel.Worksheet) => Excel.Range) => {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('name');
  await context.sync();
  if (sheet.isNullObject) throw missingSheet(name);
  sheet.activate();
  at(sheet).select();
  await context.sync();
};

const selection = async (context: Excel.RequestContext) => {
  const range = context.workbook.getSelectedRanges().areas.getItemAt(0);
  range.load('rowIndex,columnIndex,rowCount,columnCount');
  range.worksheet.load('name');
  try {
    await context.sync();
  } catch (error) {
    // A chart or a picture is selected.
    if (hostCodeOf(error) === 'InvalidSelection' || hostCodeOf(error) === 'ItemNotFound') return undefined;
    throw error;
  }
  return { sheet: range.worksheet.name, range: placeOf(range) };
};

const untilCalculated = async (host: OfficeHost, context: Excel.RequestContext) => {
  for (let waited = 0; waited < CALCULATION_LIMIT_MS; waited += CALCULATION_POLL_MS) {
    context.application.load('calculationState');
    await context.sync();
    if (context.application.calculationState === 'Done') return;
    await host.pause(CALCULATION_POLL_MS);
  }
  throw new HostProblem('Excel is still calculating after two minutes. Wait until it is done, then try again.', 'host');
};

const getSetting = async (context: Excel.RequestContext, key: string) => {
  const setting = context.workbook.settings.getItemOrNullObject(key);
  setting.load('value');
  await context.sync();
  return setting.isNullObject ? undefined : String(setting.value);
};

const setSetting = async (context: Excel.RequestContext, key: string, json: string | undefined) => {
  if (json !== undefined) context.workbook.settings.add(key, json);
  else {
    const setting = context.workbook.settings.getItemOrNullObject(key);
    setting.load('key');
    await context.sync();
    if (!setting.isNullObject) setting.delete();
  }
  await context.sync();
};

/** The open workbook of the Excel that the host stands for. */
export const officeSpreadsheet = (host: OfficeHost): Spreadsheet => {
  const run = async <T>(batch: (context: Excel.RequestContext) => Promise<T>, options = PATIENT): Promise<T> => {
    try {
      return await host.run(options, batch);
    } catch (error) {
      throw asHostProblem(error);
    }
  };
  const oneUndo = host.supports(SETS.oneUndo);
  return {
    host: 'office',
    can: { notes: host.supports(SETS.notes), oneUndo, changeEvents: true, drawings: 'on the sheet' },
    sheets: () => run(readSheetList),
    readSheet: (sheet) => run((context) => readSheet(host, context, sheet)),
    ...(host.supports(CELL_PROPERTIES) && {
      crossedOut: (lists) => run((context) => readCrossedOut(context, lists)),
    }),
    apply: (changes, options) =>
      run(
        (context) => withoutOwnEvents(host, context, () => applyChanges(host, context, changes, options)),
        oneUndo ? { ...PATIENT, mergeUndoGroup: true } : PATIENT,
      ),
    select: (sheet, { row, column, rows, columns }) =>
      run((context) => select(context, sheet, (at) => at.getRangeByIndexes(row, column, rows, columns))),
    selection: () => run(selection),
    calculated: () => run((context) => untilCalculated(host, context)),
    onChange: (listener) => listenToChanges(host, listener),
    onSelect: (listener) => listenToSelection(host, listener),
    getSetting: (key) => run((context) => getSetting(context, key)),
    setSetting: (key, json) => run((context) => setSetting(context, key, json)),
    facts: () => run((context) => readFacts(host, context)),
  };
};
