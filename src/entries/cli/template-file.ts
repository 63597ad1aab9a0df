import { writeXlsx, type Cell, type CellStyle, type DataValidation, type WriteSheet } from 'hucre';
import { withTrustedMaker } from '../../adapters/xlsx/trusted-maker';
import { columnLetters, sheetPrefix } from '../../workbook/address';
import { TEMPLATE_NOTES, templateSheets, type TemplateColumn, type TemplateSheet } from '../../workbook/template';

/** Rows for which lists to choose from and number formats are laid out. */
const LAST_ROW = 1000;
/** Points. */
const LINE_HEIGHT = 14;
const FONT = { name: 'Calibri', size: 10 };
const INK = { rgb: '1F2A2E' };
const ACCENT = { rgb: '0F4C4A' };

const heading = (isNumber: boolean): CellStyle => ({
  font: { ...FONT, bold: true, color: ACCENT },
  fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb: 'E6EFEE' } },
  alignment: { wrapText: true, vertical: 'center', horizontal: isNumber ? 'right' : 'left' },
  border: { bottom: { style: 'thin', color: ACCENT } },
});
const body = (isNumber: boolean): CellStyle => ({
  font: { ...FONT, color: INK },
  alignment: { horizontal: isNumber ? 'right' : 'left', vertical: 'top', wrapText: !isNumber },
  border: { bottom: { style: 'hair', color: { rgb: 'C9D3D1' } } },
});

const validationOf = ({ choices, heading: title }: TemplateColumn, column: number): DataValidation[] => {
  if (!choices) return [];
  const range = `${columnLetters(column)}2:${columnLetters(column)}${LAST_ROW}`;
  const shared = { type: 'list', allowBlank: true, range, showErrorMessage: true, errorStyle: 'warning' } as const;
  if ('sheet' in choices) {
    const formula1 = `${sheetPrefix(choices.sheet)}$A$2:$A$${LAST_ROW}`;
    const errorMessage = `Sheet ${choices.sheet} does not list this name.`;
    return [{ ...shared, formula1, errorTitle: title, errorMessage }];
  }
  const errorMessage = `Expected one of ${choices.join(', ')}.`;
  return [{ ...shared, values: [...choices], errorTitle: title, errorMessage }];
};

/** Heights of rows whose texts wrap; the format leaves them to the writer. */
const heights = (columns: TemplateSheet['columns'], rows: TemplateSheet['rows']): [number, { height: number }][] =>
  rows.map((row, r) => {
    const lines = row.map((value, c) => Math.ceil(String(value ?? '').length / (columns[c]?.characters ?? 10)));
    return [r + 1, { height: LINE_HEIGHT * Math.max(1, ...lines) }];
  });

const sheetOf = ({ name, columns, rows }: TemplateSheet): WriteSheet => {
  const cells = new Map<string, Partial<Cell>>();
  columns.forEach(({ heading: value, field, isNumber, choices }, column) => {
    const words = choices && !('sheet' in choices) ? ` One of ${choices.join(', ')}.` : '';
    const comment = { author: 'Channelwright', text: `${field.title}: ${field.text}${words}` };
    cells.set(`0,${column}`, { value, style: heading(isNumber), comment });
  });
  rows.forEach((row, r) =>
    row.forEach((value, c) => cells.set(`${r + 1},${c}`, { value, style: body(columns[c]?.isNumber ?? false) })),
  );
  return {
    name,
    rows: Array.from({ length: rows.length + 1 }, () => []),
    cells,
    columns: columns.map(({ characters, isNumber }) => ({ width: characters, style: body(isNumber) })),
    rowDefs: new Map([[0, { height: 42 }], ...heights(columns, rows)]),
    freezePane: { rows: 1, columns: 1 },
    dataValidations: columns.flatMap(validationOf),
    pageSetup: {
      paperSize: 'a3',
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '$1:$1',
    },
    headerFooter: { oddFooter: '&L&A&RPage &P of &N' },
  };
};

const notesSheet = (): WriteSheet => {
  const cells = new Map<string, Partial<Cell>>();
  TEMPLATE_NOTES.forEach(([topic, text], row) => {
    const title: CellStyle = { font: { ...FONT, size: 14, bold: true, color: ACCENT } };
    const label: CellStyle = { font: { ...FONT, bold: true, color: ACCENT }, alignment: { vertical: 'top' } };
    cells.set(`${row},0`, { value: topic, style: row === 0 ? title : label });
    cells.set(`${row},1`, { value: text === '' ? null : text, style: body(false) });
  });
  return {
    name: 'Plan notes',
    rows: TEMPLATE_NOTES.map(() => []),
    cells,
    columns: [{ width: 20 }, { width: 100 }],
    pageSetup: { paperSize: 'a4', orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  };
};

/** An empty plan as a workbook file. */
export const templateFile = async (): Promise<Uint8Array> =>
  withTrustedMaker(
    await writeXlsx({
      sheets: [...templateSheets().map(sheetOf), notesSheet()],
      properties: { title: 'Vibration channel plan', creator: 'Channelwright' },
      defaultFont: FONT,
      activeSheet: 0,
    }),
  );
