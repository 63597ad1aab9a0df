import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { OWN_COLUMNS } from '../../../src/workbook/own-columns';
import { freezeToValues, planFreeze } from '../../../src/workbook/remedies/freeze';
import { findBroken, rewriteFormulas } from '../../../src/workbook/remedies/rewrite';
import { FakeExcel } from '../../adapters/office/fake-excel';
import type { FakeCell } from '../../adapters/office/fake-workbook';

const options = { label: 'test' };
const noName = (formula: string): FakeCell => ({ value: '#NAME?', formula, type: 'Error' });
const open = () => {
  const excel = new FakeExcel();
  excel.addSheet('Hidden').visibility = 'Hidden';
  return { excel, sheet: excel.sheet('Sheet1'), hidden: excel.sheet('Hidden'), spreadsheet: officeSpreadsheet(excel) };
};

describe('formulas of ours that show an unknown name in Excel', () => {
  const broken = () => {
    const under = open();
    const { excel, sheet, hidden } = under;
    excel.fill('Sheet1', 0, 0, [['Ratio', "'=CHAN.MASS.SHIFT(0.02)", "'chan.mass.shift is a function", 4]]);
    sheet.cells['1,0'] = noName('=CHAN.MASS.SHIFT(0.02)');
    sheet.cells['2,0'] = noName('=@_xldudf_CHAN_MASS_SHIFT(0.03)');
    sheet.cells['3,0'] = noName('=OTHER.MASS.SHIFT(0.03)');
    sheet.cells['4,0'] = noName('=SOMEBODY.ELSES(1)');
    sheet.cells['5,0'] = { value: 1, formula: '=CHAN.MASS.SHIFT(0.02)', type: 'Double' };
    hidden.cells['7,3'] = noName('=CHAN.HEADROOM(1,2)');
    return under;
  };

  it('are found on every sheet, with what only may be ours kept apart', async () => {
    const found = await findBroken(broken().spreadsheet);
    expect(found.map(({ sheet, row, column, suspicion, after }) => [sheet, row, column, suspicion, after])).toEqual([
      ['Sheet1', 0, 1, 'text', '=CHAN.MASS.SHIFT(0.02)'],
      ['Sheet1', 1, 0, 'broken', '=CHAN.MASS.SHIFT(0.02)'],
      ['Sheet1', 2, 0, 'broken', '=CHAN.MASS.SHIFT(0.03)'],
      ['Sheet1', 3, 0, 'perhaps', '=CHAN.MASS.SHIFT(0.03)'],
      ['Hidden', 7, 3, 'broken', '=CHAN.HEADROOM(1,2)'],
    ]);
  });

  it('are written again in one undo step, and nothing else is touched', async () => {
    const { excel, spreadsheet } = broken();
    const before = structuredClone(excel.state);
    const chosen = (await findBroken(spreadsheet)).filter(({ suspicion }) => suspicion === 'broken');
    expect(await rewriteFormulas(spreadsheet, chosen, options)).toEqual({ count: 3, working: 3, failing: [] });
    const changed = ['Sheet1', 'Hidden'].flatMap((name) =>
      Object.entries(excel.sheet(name).cells)
        .filter(([at, cell]) => {
          const was = before.sheets.find((sheet) => sheet.name === name)?.cells[at];
          return JSON.stringify(cell) !== JSON.stringify(was);
        })
        .map(([at, cell]) => `${name} ${at} ${cell.formula}`),
    );
    expect(changed).toEqual([
      'Sheet1 1,0 =CHAN.MASS.SHIFT(0.02)',
      'Sheet1 2,0 =CHAN.MASS.SHIFT(0.03)',
      'Hidden 7,3 =CHAN.HEADROOM(1,2)',
    ]);
    expect(excel.undoStack).toHaveLength(1);
    excel.undo();
    expect(excel.state).toEqual(before);
  });

  it('are refused when a row was put in between the finding and the writing', async () => {
    const { excel, sheet, spreadsheet } = broken();
    const found = await findBroken(spreadsheet);
    sheet.cells['1,0'] = { value: 'a new row', type: 'String' };
    await expect(rewriteFormulas(spreadsheet, found, options)).rejects.toMatchObject({ code: 'changed' });
    expect(excel.undoStack).toHaveLength(0);
  });

  it('are reported when they still show the error', async () => {
    const { sheet, spreadsheet } = broken();
    const found = (await findBroken(spreadsheet)).filter(({ suspicion }) => suspicion === 'broken');
    const calculated = spreadsheet.calculated.bind(spreadsheet);
    spreadsheet.calculated = async () => {
      sheet.cells['1,0'] = noName('=CHAN.MASS.SHIFT(0.02)');
      sheet.cells['2,0'] = { value: '#VALUE!', formula: '=CHAN.MASS.SHIFT(0.03)', type: 'Error' };
      return calculated();
    };
    const { working, failing } = await rewriteFormulas(spreadsheet, found, options);
    expect(working).toBe(1);
    expect(failing.map(({ row, why, shows }) => [row, why, shows])).toEqual([
      [1, 'unknown name', '#NAME?'],
      [2, 'other error', '#VALUE!'],
    ]);
  });
});

describe('formulas of ours made into values in Excel', () => {
  const HEADINGS = OWN_COLUMNS.map(({ heading }) => heading);
  const checked = () => {
    const under = open();
    const { excel, sheet } = under;
    excel.fill('Sheet1', 0, 0, [['Channel', ...HEADINGS], ['wing root'], ['fin tip']]);
    for (const row of [1, 2])
      HEADINGS.forEach((_heading, i) => {
        sheet.cells[`${row},${i + 1}`] = { value: 0.1 + 0.2 + i, formula: `=CHAN.READ(A${row})`, type: 'Double' };
        sheet.looks[`${row},${i + 1}`] = { numberFormat: '0.0', bold: true };
      });
    sheet.cells['1,1'] = { value: 'FAIL', formula: '=CHAN.VERDICT.WORST(B1)', type: 'String' };
    sheet.cells['2,3'] = { value: '#N/A', formula: '=CHAN.READ(A2)', type: 'Error' };
    sheet.notes.push({ row: 1, column: 1, content: 'Channelwright:\nChannel 1: FAIL' });
    sheet.rules.push({ id: 7, type: 'Custom', range: { row: 1, column: 1, rows: 2, columns: 1 }, formula: '=TRUE' });
    sheet.cells['9,0'] = { value: 2, formula: '=CHAN.MASS.SHIFT(0.02)', type: 'Double' };
    sheet.cells['9,1'] = { value: 5, formula: '=SUM(A1:A4)', type: 'Double' };
    sheet.cells['11,0'] = { value: 5, formula: '=CHAN.FREQUENCY.SPAN(1,2)', type: 'Double' };
    sheet.cells['11,1'] = { value: 900, type: 'Double' };
    return under;
  };

  it('keep the exact value, looks, marks and notes; errors stay formulas; one undo brings all back', async () => {
    const { excel, sheet, spreadsheet } = checked();
    const before = structuredClone(excel.state);
    const plan = await planFreeze(spreadsheet, 'check columns');
    // What stands under the block, 9,1, is a person's.
    expect(plan.staying).toEqual([{ sheet: 'Sheet1', row: 2, column: 3, why: 'error' }]);
    const count = await freezeToValues(spreadsheet, plan, options);
    expect(count).toBe(2 * HEADINGS.length - 1);
    expect(sheet.cells['1,1']).toEqual({ value: 'FAIL', type: 'String' });
    expect(sheet.cells['1,2']).toEqual({ value: 0.1 + 0.2 + 1, type: 'Double' });
    expect(sheet.cells['2,3']?.formula).toBe('=CHAN.READ(A2)');
    expect(sheet.cells['9,1']?.formula).toBe('=SUM(A1:A4)');
    expect({ ...sheet, cells: {} }).toEqual({ ...before.sheets[0], cells: {} });
    expect(excel.undoStack).toHaveLength(1);
    excel.undo();
    expect(excel.state).toEqual(before);
  });

  it('may be all that use our functions; what may fill cells beside it stays and is said', async () => {
    const { sheet, spreadsheet } = checked();
    const plan = await planFreeze(spreadsheet, 'every formula');
    expect(plan.staying).toEqual([
      { sheet: 'Sheet1', row: 2, column: 3, why: 'error' },
      { sheet: 'Sheet1', row: 11, column: 0, why: 'fills cells' },
    ]);
    await freezeToValues(spreadsheet, plan, options);
    expect(sheet.cells['9,0']).toEqual({ value: 2, type: 'Double' });
    expect(sheet.cells['9,1']?.formula).toBe('=SUM(A1:A4)');
    expect(sheet.cells['11,1']).toEqual({ value: 900, type: 'Double' });
  });
});
