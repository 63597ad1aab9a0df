import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import { pythonWith } from '../python';
import { caseSheets } from '../workbook/case-sheets';

// A workbook as an engineer may have it, written by openpyxl so that the file is none of ours.
const SCRIPT = `
import json, sys
from openpyxl import Workbook
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Font, PatternFill
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation

given = json.load(sys.stdin)
book = Workbook()
book.remove(book.active)
for each in given:
    sheet = book.create_sheet(each['name'])
    for r, line in enumerate(each['cells'], 1):
        for c, value in enumerate(line, 1):
            if value is not None:
                sheet.cell(r, c, value)
plan = book['Channels']
last = plan.max_row
letter = {plan.cell(1, c).value.split(',')[0]: get_column_letter(c) for c in range(1, plan.max_column + 1)}
for cell in plan[1]:
    cell.font = Font(bold=True)
level = letter['Highest level'] if 'Highest level' in letter else get_column_letter(5)
chart = BarChart()
chart.add_data(Reference(plan, min_col=5, min_row=1, max_row=last), titles_from_data=True)
plan.add_chart(chart, 'B30')
choice = DataValidation(type='list', formula1='Sensors!$A$2:$A$6')
plan.add_data_validation(choice)
choice.add('B2:B%d' % last)
plan['A2'].comment = Comment('Agreed with the test hall.', 'Planner')
plan.print_title_rows = '1:1'
plan.page_setup.orientation = 'landscape'
plan.oddFooter.center.text = 'For review'
plan.conditional_formatting.add('E2:E%d' % last, CellIsRule(operator='greaterThan', formula=['50'], fill=PatternFill(bgColor='FFDDAA')))
book.defined_names.append(DefinedName('HighestLevels', attr_text="Channels!$E$2:$E$%d" % last))
totals = book.create_sheet('Totals')
totals['A1'] = 'Sum of the levels'
totals['B1'] = '=SUM(HighestLevels)'
totals['A2'] = 'Twice the first'
totals['B2'] = '=Channels!E2*2'
totals['A3'] = 'Part number as text'
totals['B3'] = '00120'
totals.merge_cells('A5:C5')
totals['A5'] = 'Merged'
totals['E1'] = '=Channels!E2:E3'
totals.formula_attributes['E1'] = {'t': 'array', 'ref': 'E1:E2'}
totals.freeze_panes = 'B2'
book.save(sys.argv[1])
`;

const python = pythonWith('openpyxl') ?? 'python3';

export const plannersWorkbook = (): Uint8Array => {
  const folder = mkdtempSync(join(tmpdir(), 'saving-'));
  try {
    const file = join(folder, 'plan.xlsx');
    execFileSync(python, ['-c', SCRIPT, file], { input: JSON.stringify(caseSheets()) });
    return new Uint8Array(readFileSync(file));
  } finally {
    rmSync(folder, { recursive: true });
  }
};

export const MACROS = Uint8Array.from({ length: 4096 }, (_, i) => (i * 37) & 255);

/** The same workbook with a part where macros live; what is in it is of no matter to us. */
export const withMacros = (workbook: Uint8Array): Uint8Array => {
  const parts = unzipSync(workbook);
  const text = (name: string) => new TextDecoder().decode(parts[name]);
  const bytes = (content: string) => new TextEncoder().encode(content);
  const SHEETS = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml';
  parts['[Content_Types].xml'] = bytes(
    text('[Content_Types].xml')
      .replace(SHEETS, 'application/vnd.ms-excel.sheet.macroEnabled.main+xml')
      .replace('</Types>', '<Default Extension="bin" ContentType="application/vnd.ms-office.vbaProject"/></Types>'),
  );
  parts['xl/_rels/workbook.xml.rels'] = bytes(
    text('xl/_rels/workbook.xml.rels').replace(
      '</Relationships>',
      '<Relationship Id="rIdMacros" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Relationships>',
    ),
  );
  parts['xl/vbaProject.bin'] = MACROS;
  return zipSync(parts);
};
