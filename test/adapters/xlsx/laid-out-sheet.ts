import type { FileChange } from '../../../src/adapters/xlsx/changes';
import type { BarChart } from '../../../src/workbook/charts';
import type { PlacedPlot } from '../../../src/workbook/drawings';

/** A sheet with all that one can be carried over with. */
export const LAID_OUT = 'Laid out';

const at = (row: number, column: number, rows = 1, columns = 1) => ({ row, column, rows, columns });
const chart: BarChart = {
  title: 'Items',
  valueTitle: 'Count',
  categories: at(4, 0, 2),
  labels: ['wax', 'stud'],
  series: [{ name: { row: 3, column: 1 }, values: at(4, 1, 2), caption: 'Count', numbers: [3, 4] }],
  place: { row: 8, column: 0, x: 0, width: 200, height: 120 },
};
const plot: PlacedPlot = {
  plot: {
    width: 120,
    height: 40,
    title: 'Span',
    inWords: 'From 2 Hz to 2 kHz.',
    marks: [{ kind: 'rect', x: 4, y: 4, width: 80, height: 8, tone: 'span' }],
  },
  place: { row: 8, column: 3, x: 0, width: 120, height: 40 },
};

export const laidOut: readonly FileChange[] = [
  {
    kind: 'sheet',
    name: LAID_OUT,
    frame: {
      columns: new Map([
        [0, { width: 30 }],
        [2, { width: 9, isHidden: true }],
      ]),
      rows: new Map([
        [1, { height: 33 }],
        [2, { isHidden: true }],
      ]),
      merged: [at(0, 0, 1, 2)],
      tables: [{ name: 'Shelf', range: at(3, 0, 3, 2), headings: ['Mount', 'Count'] }],
      frozen: { rows: 1, columns: 1 },
      tabColour: '#0f4c4a',
      hasGridLines: false,
    },
  },
  {
    kind: 'cells',
    sheet: LAID_OUT,
    row: 0,
    column: 0,
    cells: [
      ['Title', null],
      [0.25, '=1+1'],
      [null, null],
      ['Mount', 'Count'],
      ['wax', 3],
      ['stud', 4],
    ].map((line) => line.map((cell) => (cell === '=1+1' ? { formula: cell, value: 2 } : cell))),
  },
  {
    kind: 'look',
    sheet: LAID_OUT,
    range: at(0, 0),
    look: { font: 'Georgia', points: 14, italic: true, underline: true, strike: true, ink: '#b23a0e', bold: true },
  },
  {
    kind: 'look',
    sheet: LAID_OUT,
    range: at(1, 0),
    look: {
      numberFormat: '0.0 %',
      ground: '#e6efee',
      align: 'center',
      vertical: 'top',
      wrap: true,
      borders: { left: { style: 'thin', colour: '#000000' }, bottom: { style: 'double' } },
    },
  },
  { kind: 'note', sheet: LAID_OUT, row: 1, column: 0, text: 'Mine.', isOurs: false },
  { kind: 'note', sheet: LAID_OUT, row: 1, column: 1, text: 'Worked out.' },
  { kind: 'drawings', sheet: LAID_OUT, drawings: [chart, plot] },
];

/** What openpyxl reads of it, as JSON. */
export const READ_LAID_OUT = `
import json, sys
from openpyxl import load_workbook
sheet = load_workbook(sys.argv[1])['${LAID_OUT}']
title, number = sheet['A1'], sheet['A2']
table = sheet.tables['Shelf']
print(json.dumps({
    'values': [[cell.value for cell in row] for row in sheet['A1:B6']],
    'font': [title.font.name, title.font.sz, title.font.b, title.font.i, title.font.u, title.font.strike, title.font.color.rgb],
    'number': [number.number_format, number.fill.fgColor.rgb, number.alignment.horizontal, number.alignment.vertical, number.alignment.wrap_text],
    'lines': [number.border.left.style, number.border.right.style, number.border.bottom.style],
    'columns': [sheet.column_dimensions['A'].width, sheet.column_dimensions['C'].hidden],
    'rows': [sheet.row_dimensions[2].height, sheet.row_dimensions[3].hidden],
    'merged': [str(each) for each in sheet.merged_cells.ranges],
    'frozen': sheet.freeze_panes,
    'tab': sheet.sheet_properties.tabColor.rgb,
    'grid': sheet.sheet_view.showGridLines,
    'table': [table.ref, [column.name for column in table.tableColumns]],
    'notes': [[sheet[at].comment.author, sheet[at].comment.text] for at in ('A2', 'B2')],
    'charts': len(sheet._charts),
}))
`;
export const AS_READ = {
  values: [
    ['Title', null],
    [0.25, '=1+1'],
    [null, null],
    ['Mount', 'Count'],
    ['wax', 3],
    ['stud', 4],
  ],
  font: ['Georgia', 14, true, true, 'single', true, 'FFB23A0E'],
  number: ['0.0 %', 'FFE6EFEE', 'center', 'top', true],
  lines: ['thin', null, 'double'],
  columns: [30, true],
  rows: [33, true],
  merged: ['A1:B1'],
  frozen: 'B2',
  tab: 'FF0F4C4A',
  grid: false,
  table: ['A4:B6', ['Mount', 'Count']],
  notes: [
    // openpyxl's word for an author without a name.
    ['None', 'Mine.'],
    ['Channelwright', 'Worked out.'],
  ],
  charts: 1,
};
