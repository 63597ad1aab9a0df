import type { IWorkbookData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/lib/facade';
import '@univerjs/sheets/lib/facade';
import '@univerjs/sheets-formula/lib/facade';

/** Long workbooks take seconds to calculate on a slow machine; after this the page stops waiting, not the engine. */
export const LONGEST_CALCULATION_MS = 120_000;

/** Puts a workbook in place of the one that is open, and waits until its formulas have values. */
export const openInGrid = async (api: FUniver, data: IWorkbookData): Promise<void> => {
  const previous = api.getActiveWorkbook();
  if (previous) api.disposeUnit(previous.getId());
  const workbook = api.createWorkbook(data);
  const active = (data.custom as { activeSheet?: string } | undefined)?.activeSheet;
  const sheet = active ? workbook.getSheetBySheetId(active) : null;
  if (sheet && !sheet.isSheetHidden()) workbook.setActiveSheet(sheet);
  await api.getFormula().onCalculationResultApplied(LONGEST_CALCULATION_MS);
};
