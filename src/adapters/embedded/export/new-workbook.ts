import type { IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import { writeXlsx, type Cell as FileCell, type CellStyle, type TableDefinition, type WriteSheet } from 'hucre';
import { isCellError } from '../../../functions/define';
import { rangeAddress } from '../../../workbook/address';
import { markFormula } from '../../../workbook/mark-formula';
import type { MarkRule, RangeAddress, SheetContent } from '../../../workbook/port';
import { styleToFile } from './looks';
import { simpleTables } from './tables';
import { POINTS_PER_PIXEL, widthOfPixels } from './pixels';

/** One sheet as the grid shows it, with the blocks that formulas fill. */
export interface ShownSheet {
  readonly content: SheetContent;
  readonly spills: readonly RangeAddress[];
  readonly marks: readonly MarkRule[];
}
export interface NewWorkbookOptions {
  readonly title: string;
  /** A formula as files store it, without '='. */
  stored(formula: string): string;
}

const resource = <T>(data: IWorkbookData, name: string): Record<string, T> =>
  JSON.parse(data.resources?.find((each) => each.name === name)?.data || '{}') as Record<string, T>;

type Cells = Map<string, Partial<FileCell>>;

const contentCells = ({ content, spills }: ShownSheet, stored: (formula: string) => string): Cells => {
  const cells: Cells = new Map();
  content.values.forEach((line, r) =>
    line.forEach((value, c) => {
      const [row, column] = [content.row + r, content.column + c];
      const formula = content.formulas[r]?.[c] ?? '';
      const shown = isCellError(value) ? value.error : value;
      if (formula === '' && value === null) return;
      if (formula === '') return void cells.set(`${row},${column}`, { value: shown });
      const block = spills.find((range) => range.row === row && range.column === column);
      cells.set(`${row},${column}`, {
        formula: stored(formula.slice(1)),
        formulaResult: shown ?? '',
        value: shown ?? '',
        ...(block && { formulaType: 'array', formulaRef: rangeAddress(block), formulaDynamic: true }),
      });
    }),
  );
  return cells;
};

type StyleOf = (style: Nullable<string | IStyleData>) => CellStyle | undefined;

/** Looks and notes join the contents; a cell may have any of them alone. */
const addTo = (cells: Cells, row: number, column: number, more: Partial<FileCell>): void => {
  const key = `${row},${column}`;
  cells.set(key, { value: null, ...cells.get(key), ...more });
};

const addLooks = (cells: Cells, { cellData }: Partial<IWorksheetData>, styleOf: StyleOf): void => {
  for (const [row, line] of Object.entries(cellData ?? {}))
    for (const [column, cell] of Object.entries(line as Record<string, { s?: Nullable<string | IStyleData> } | null>)) {
      const style = styleOf(cell?.s);
      if (style) addTo(cells, Number(row), Number(column), { style });
    }
};

interface GridNote {
  readonly note: string;
}
const addNotes = (cells: Cells, notes: Record<string, Record<string, GridNote>> | undefined): void => {
  for (const [row, line] of Object.entries(notes ?? {}))
    for (const [column, { note }] of Object.entries(line))
      addTo(cells, Number(row), Number(column), { comment: { text: note } });
};

const tablesOf = (content: SheetContent): TableDefinition[] =>
  simpleTables(content).map(({ name, range, headings }) => {
    const columns = headings.map((heading) => ({ name: heading }));
    return { name, range: rangeAddress(range), columns, style: 'TableStyleLight1', showRowStripes: false };
  });

const marksToFile = (marks: readonly MarkRule[]): WriteSheet['conditionalRules'] =>
  marks.map((mark, i) => ({
    type: 'expression',
    priority: i + 1,
    formula: markFormula(mark).slice(1),
    range: rangeAddress(mark.range),
    style: {
      font: { color: { rgb: mark.ink.slice(1).toUpperCase() } },
      fill: { type: 'pattern', pattern: 'solid', bgColor: { rgb: mark.ground.slice(1).toUpperCase() } },
    },
  }));

const sheetToFile = (
  data: IWorkbookData,
  sheet: Partial<IWorksheetData>,
  shown: ShownSheet,
  stored: (formula: string) => string,
): WriteSheet => {
  const id = sheet.id ?? '';
  const standard = (typeof data.defaultStyle === 'object' && data.defaultStyle) || {};
  const styleOf: StyleOf = (style) => {
    const found = typeof style === 'string' ? data.styles[style] : style;
    return found ? styleToFile(found, standard) : undefined;
  };
  const cells = contentCells(shown, stored);
  addLooks(cells, sheet, styleOf);
  addNotes(cells, resource<Record<string, Record<string, GridNote>>>(data, 'SHEET_NOTE_PLUGIN')[id]);
  const rows = Math.max(0, ...[...cells.keys()].map((key) => Number(key.split(',')[0]) + 1));
  const width = Math.max(-1, ...Object.keys(sheet.columnData ?? {}).map(Number)) + 1;
  const { xSplit = 0, ySplit = 0 } = sheet.freeze ?? {};
  return {
    name: sheet.name ?? '',
    rows: Array.from({ length: rows }, () => []),
    cells,
    columns: Array.from({ length: width }, (_, c) => {
      const column = sheet.columnData?.[c];
      return { ...(column?.w && { width: widthOfPixels(column.w) }), ...(column?.hd && { hidden: true }) };
    }),
    rowDefs: new Map(
      Object.entries(sheet.rowData ?? {}).flatMap(([row, of]) => {
        const height = of?.ia === 0 && of.h ? { height: of.h * POINTS_PER_PIXEL } : {};
        const found = { ...height, ...(of?.hd && { hidden: true }) };
        return Object.keys(found).length > 0 ? [[Number(row), found] as const] : [];
      }),
    ),
    merges: (sheet.mergeData ?? []).map(({ startRow, startColumn, endRow, endColumn }) => ({
      startRow,
      startCol: startColumn,
      endRow,
      endCol: endColumn,
    })),
    ...((xSplit || ySplit) && { freezePane: { rows: ySplit, columns: xSplit } }),
    ...(sheet.hidden && { hidden: true }),
    tables: tablesOf(shown.content),
    conditionalRules: marksToFile(shown.marks),
  };
};

interface GridName {
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** A workbook made from what the grid shows and nothing else. */
export const newWorkbook = async (
  data: IWorkbookData,
  shown: ReadonlyMap<string, ShownSheet>,
  { title, stored }: NewWorkbookOptions,
): Promise<Uint8Array> => {
  const sheets = data.sheetOrder.flatMap((id) => {
    const sheet = data.sheets[id];
    const content = shown.get(sheet?.name ?? '');
    return sheet && content ? [sheetToFile(data, sheet, content, stored)] : [];
  });
  const names = Object.values(resource<GridName>(data, 'SHEET_DEFINED_NAME_PLUGIN')).map(
    ({ name, formulaOrRefString, localSheetId }) => {
      const scope = data.sheets[localSheetId ?? '']?.name;
      return { name, range: stored(formulaOrRefString.replace(/^=/, '')), ...(scope && { scope }) };
    },
  );
  const standard = typeof data.defaultStyle === 'object' ? data.defaultStyle : undefined;
  const font = standard?.ff?.split(',')[0]?.trim();
  return writeXlsx({
    sheets,
    namedRanges: names,
    properties: { title },
    defaultFont: { ...(font && { name: font }), size: standard?.fs ?? 11 },
  });
};
