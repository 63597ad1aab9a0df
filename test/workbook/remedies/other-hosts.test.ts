import { FileSpreadsheet } from '../../../src/adapters/xlsx/spreadsheet';
import { freezeToValues, planFreeze } from '../../../src/workbook/remedies/freeze';
import { readState } from '../../../src/workbook/remedies/state';
import { findBroken, rewriteFormulas } from '../../../src/workbook/remedies/rewrite';
import { openWorkbook, workbookOf } from '../../adapters/embedded/headless';
import { openTiny, saved, SHEET1 } from '../../adapters/xlsx/tiny-workbook';

const options = { label: 'test' };

describe('remedies in a workbook file', () => {
  const rows =
    '<row r="1"><c r="A1" t="e"><f>chan.mass.shift(0.02)</f><v>#NAME?</v></c><c r="B1" s="0"><f>SUM(C1:C2)</f><v>0</v></c></row>' +
    '<row r="2"><c r="A2"><f>_xldudf_CHAN_MASS_SHIFT(0.03)</f><v>-1.4671</v></c></row>';
  const open = () => openTiny({ sheets: [{ name: 'Plan', rows }] });

  it('store a broken formula under the name by which Excel finds it again, and touch no other cell', async () => {
    const file = open();
    const spreadsheet = new FileSpreadsheet(file);
    const found = await findBroken(spreadsheet);
    expect(found.map(({ row, column, after }) => [row, column, after])).toEqual([[0, 0, '=CHAN.MASS.SHIFT(0.02)']]);
    await rewriteFormulas(spreadsheet, found, options);
    const xml = saved(file)[SHEET1]!;
    expect(xml).toContain('_xldudf_CHAN_MASS_SHIFT(0.02)');
    expect(xml).not.toContain('#NAME?');
    expect(xml).toContain('<c r="B1" s="0"><f>SUM(C1:C2)</f><v>0</v></c>');
    expect(xml).toContain('<c r="A2"><f>_xldudf_CHAN_MASS_SHIFT(0.03)</f><v>-1.4671</v></c>');
  });

  it('make values of stored results; the error stays', async () => {
    const file = open();
    const spreadsheet = new FileSpreadsheet(file);
    const plan = await planFreeze(spreadsheet, 'every formula');
    expect(await freezeToValues(spreadsheet, plan, options)).toBe(1);
    expect(plan.staying).toEqual([{ sheet: 'Plan', row: 0, column: 0, why: 'error' }]);
    const xml = saved(file)[SHEET1]!;
    expect(xml).toContain('<c r="A2"><v>-1.4671</v></c>');
    expect(xml).toContain('chan.mass.shift(0.02)');
  });
});

describe('remedies in the embedded spreadsheet', () => {
  const open = async () => {
    const under = await openWorkbook(workbookOf([['=CHAN_MASS_SHIFT(0.02)', '=CHAN.MASS.SHIFT(0.02)', 4, '=C1*2']]));
    await under.spreadsheet.calculated();
    return under;
  };
  const cells = async ({ spreadsheet }: Awaited<ReturnType<typeof open>>) => {
    const { values, formulas } = await spreadsheet.readSheet((await spreadsheet.sheets())[0]!.name);
    return { values: values[0]!, formulas: formulas[0]! };
  };

  it('can say that every function is known to the engine', async () => {
    const under = await open();
    const { functions, formulas, errors } = await readState(under.spreadsheet, { version: '0.1.0' });
    expect(functions.known).toBe(functions.total);
    expect([formulas, errors]).toEqual([2, { '#NAME?': 1 }]);
  });

  it('make a broken formula work, and one undo takes it back', async () => {
    const under = await open();
    const before = await cells(under);
    expect(before.values[0]).toEqual({ error: '#NAME?' });
    const found = await findBroken(under.spreadsheet);
    expect(await rewriteFormulas(under.spreadsheet, found, options)).toEqual({ count: 1, working: 1, failing: [] });
    const after = await cells(under);
    // By hand: √(1/(1 + 0.02)) − 1 = −0.98525 %.
    expect(after.values[0]).toBeCloseTo(-0.98525, 4);
    expect(after.values.slice(1)).toEqual(before.values.slice(1));
    await under.api.getActiveWorkbook()?.undo();
    await under.spreadsheet.calculated();
    expect((await cells(under)).formulas).toEqual(before.formulas);
  });

  it('make values of formulas, and one undo brings the formulas back', async () => {
    const under = await open();
    const before = await cells(under);
    const plan = await planFreeze(under.spreadsheet, 'every formula');
    expect(await freezeToValues(under.spreadsheet, plan, options)).toBe(1);
    const after = await cells(under);
    expect(after.formulas).toEqual([before.formulas[0], '', '', '=C1*2']);
    expect(after.values).toEqual(before.values);
    await under.api.getActiveWorkbook()?.undo();
    await under.spreadsheet.calculated();
    expect(await cells(under)).toEqual(before);
  });
});
