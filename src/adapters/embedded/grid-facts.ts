import type { ICellData, IRange, Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { RangeAddress, SheetContent } from '../../workbook/port';
import { Breath } from './breath';
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

const textOf = (cell: Nullable<ICellData>): string | undefined =>
  cell?.f && cell.f.startsWith('=') && cell.f.length > 1 ? cell.f : undefined;

/**
 * The sheet with all its formulas written out. Asking the grid for one cell after the other walks the sheet each time;
 * here those that share one text are found in one walk. `shift` moves a formula's relative references.
 */
export const withFormulas = async (
  host: Host,
  { sheet, row, column, values, tables, merged, hiddenRows }: SheetContent,
  shift: (formula: string, rows: number, columns: number) => string,
): Promise<SheetContent> => {
  const matrix = new Services(host).sheet(sheet).getCellMatrix();
  const owners = new Map<string, { text: string; row: number; column: number }>();
  matrix.forValue((r, c, cell: Nullable<ICellData>) => {
    const text = textOf(cell);
    if (text !== undefined && cell?.si && !owners.has(cell.si)) owners.set(cell.si, { text, row: r, column: c });
  });
  const breath = new Breath();
  const formulas: string[][] = [];
  for (const [i, line] of values.entries()) {
    const r = row + i;
    formulas.push(
      line.map((_, j) => {
        const cell = matrix.getValue(r, column + j) as Nullable<ICellData>;
        const owner = cell?.si ? owners.get(cell.si) : undefined;
        return textOf(cell) ?? (owner ? shift(owner.text, r - owner.row, column + j - owner.column) : '');
      }),
    );
    if (breath.due()) await breath.take();
  }
  return { sheet, row, column, values, formulas, tables, merged, hiddenRows };
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
