import type { IRange } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { RangeAddress } from '../../workbook/port';
import { Services, type Host } from './host';
import { addressOf } from './read-sheet';

/** Blocks that formulas of the sheet fill beyond their own cell. */
export const spillsOf = (host: Host, sheet: string): readonly RangeAddress[] => {
  const services = new Services(host);
  const model = services.injector.get(FormulaDataModel);
  const id = services.sheet(sheet).getSheetId();
  const rows = model.getArrayFormulaRange()[services.workbook().getUnitId()]?.[id] ?? {};
  return Object.values(rows)
    .flatMap((columns) => Object.values((columns ?? {}) as Record<number, IRange>))
    .map(addressOf)
    .filter(({ rows: height, columns }) => height * columns > 1);
};

/** The number format a cell is shown in; undefined for a general one. */
export const numberFormatOf = (host: Host, sheet: string, row: number, column: number): string | undefined => {
  const services = new Services(host);
  const cell = services.sheet(sheet).getCellRaw(row, column);
  const pattern = services.workbook().getStyles().getStyleByCell(cell)?.n?.pattern;
  return pattern === 'General' || pattern === '' ? undefined : pattern;
};

/** Takes over what is being typed into a cell. */
export const endEditing = async (host: Host): Promise<void> => {
  const workbook = host.api.getActiveWorkbook() as { endEditingAsync?(save: boolean): Promise<boolean> } | null;
  await workbook?.endEditingAsync?.(true);
};
