import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { DEMO, run, temporaryFolder } from './run';

const folder = temporaryFolder();
const STOCK = join(__dirname, '../fixtures/lists/stock/by-serial.xlsx');

describe('check with sensors from elsewhere', () => {
  it('judges the demo plan as before when its own list is laid out, by formulas that refer to the new sheet', async () => {
    const output = join(folder, 'own.xlsx');
    const { out } = await run(['check', DEMO, '--stock', 'Sensors', '-o', output]);
    // As `check` of the demo plan alone.
    expect(out).toContain('33 FAIL, 6 INCOMPLETE, 20 WARN, 228 PASS');
    expect(out).toContain('Sensor list, laid out from Sensors: sheet “Sensor stock”.');
    expect(out).not.toContain('the cells say');
    const file = await openFile(output, FUNCTION_NAMES);
    const formulas = file.readSheet('Channels').formulas.flat().join('\n');
    expect(formulas).toContain("'Sensor stock'!$A$5:");
    expect(formulas).not.toContain('Sensors!');
    // The choice stays with the workbook.
    expect((await run(['check', output])).out).toContain('33 FAIL, 6 INCOMPLETE, 20 WARN, 228 PASS');
  }, 120_000);

  it('takes them from another workbook, and says how they were laid out', async () => {
    const { out } = await run(['check', DEMO, '--stock', STOCK]);
    expect(out).toContain('laid out from by-serial.xlsx');
    expect(out).toContain('6 rows of the sensor list make 3 types');
  }, 60_000);

  it('says what there is when the name is neither', async () => {
    const { status, error } = await run(['check', DEMO, '--stock', 'nowhere.xlsx']);
    expect(status).toBeGreaterThan(2);
    expect(error).toContain('neither a workbook');
  });
});
