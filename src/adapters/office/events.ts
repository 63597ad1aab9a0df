import type { RangeAddress } from '../../workbook/port';
import { SETS, type OfficeHost } from './host';
import { asHostProblem } from './problems';
import { placeOf } from './read-sheet';

type Listener = (at: { sheet: string; range: RangeAddress }) => void;
interface At {
  readonly worksheetId: string;
  readonly address: string;
}

/** The first area of what Excel reports ("B2:C9,F1"), as a place on a named sheet; undefined when it is gone by now. */
const locate = (host: OfficeHost, { worksheetId, address }: At): Promise<Parameters<Listener>[0] | undefined> =>
  host.run({ delayForCellEdit: true }, async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(worksheetId);
    sheet.load('name');
    await context.sync();
    if (sheet.isNullObject) return undefined;
    const range = sheet.getRange(address.split(',')[0]);
    range.load('rowIndex,columnIndex,rowCount,columnCount');
    await context.sync();
    return { sheet: sheet.name, range: placeOf(range) };
  });

/** A missed report is no reason to disturb the user: the next one brings the pane up to date. */
const tell = async (host: OfficeHost, at: At, listener: Listener): Promise<void> => {
  const place = await locate(host, at).catch(() => undefined);
  if (place) listener(place);
};

type Stop = () => void;

const stopOf =
  (host: OfficeHost, handler: { context: unknown; remove(): void }): Stop =>
  () =>
    void host
      .run({ previousObjects: handler.context as Excel.RequestContext }, async (context) => {
        handler.remove();
        await context.sync();
      })
      .catch(() => undefined);

/** Reports what a person changed, here or as a co-author; what this add-in wrote is left out. */
export const listenToChanges = async (host: OfficeHost, listener: Listener): Promise<Stop> => {
  try {
    return await host.run({}, async (context) => {
      const handler = context.workbook.worksheets.onChanged.add(async (event) => {
        if (event.triggerSource !== 'ThisLocalAddin') await tell(host, event, listener);
      });
      await context.sync();
      return stopOf(host, handler);
    });
  } catch (error) {
    throw asHostProblem(error);
  }
};

export const listenToSelection = async (host: OfficeHost, listener: Listener): Promise<Stop> => {
  try {
    return await host.run({}, async (context) => {
      const handler = context.workbook.worksheets.onSelectionChanged.add((event) => tell(host, event, listener));
      await context.sync();
      return stopOf(host, handler);
    });
  } catch (error) {
    throw asHostProblem(error);
  }
};

/** Hosts before ExcelApi 1.14 do not say who changed a cell; there, events sleep while we write. */
export const withoutOwnEvents = async (
  host: OfficeHost,
  context: Excel.RequestContext,
  write: () => Promise<void>,
): Promise<void> => {
  if (host.supports(SETS.changeTrigger)) return write();
  context.runtime.enableEvents = false;
  await context.sync();
  try {
    await write();
  } finally {
    context.runtime.enableEvents = true;
    await context.sync();
  }
};
