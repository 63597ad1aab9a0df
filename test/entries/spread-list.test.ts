import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { isOwnHeading } from '../../src/workbook/own-columns';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { run, temporaryFolder } from './run';

// A list of three structure parts, one sheet each, written by LibreOffice.
const LIST = join(__dirname, '../fixtures/lists/files/trap-several-sheets.xlsx');
const folder = temporaryFolder();

const ownHeadings = async (path: string) => {
  const file = await openFile(path, []);
  const counts = file.sheets.map(({ name }) => [
    name,
    file
      .readSheet(name)
      .values.flat()
      .filter((cell) => typeof cell === 'string' && isOwnHeading(cell)).length,
  ]);
  return Object.fromEntries(counts) as Record<string, number>;
};

describe('check of a list over several sheets', () => {
  it('counts them as one plan and writes columns with formulas of their own rows on each', async () => {
    const output = join(folder, 'checked.xlsx');
    const { out } = await run(['check', LIST, '-o', output]);
    expect(out).toContain('15 channels on “Wing, Boom, Tail”');
    expect(await ownHeadings(output)).toMatchObject({ Wing: 20, Boom: 20, Tail: 20 });
    const tail = (await openFile(output, FUNCTION_NAMES)).readSheet('Tail');
    const formulas = tail.formulas.flat().filter((formula) => formula.startsWith('=CHAN.VERDICT.WORST('));
    expect(formulas.length).toBeGreaterThanOrEqual(5);
    expect(formulas.some((formula) => formula.includes('!'))).toBe(false);
  }, 60_000);

  it('takes the sheets that are named, remembers them in the copy, and says which sheets have lists', async () => {
    const output = join(folder, 'two.xlsx');
    const { out } = await run(['check', LIST, '--list', 'Wing', '--list', 'tail', '-o', output]);
    expect(out).toContain('10 channels on “Wing, Tail”');
    expect(await ownHeadings(output)).toMatchObject({ Wing: 20, Boom: 0, Tail: 20 });
    expect((await run(['check', output])).out).toContain('10 channels on “Wing, Tail”');
    expect((await run(['check', output, '--lists', 'all'])).out).toContain('15 channels');
    const refused = await run(['check', LIST, '--list', 'Pod']);
    expect(refused.status).toBe(64);
    expect(refused.error).toContain('lists stand on Wing, Boom, Tail');
  }, 60_000);
});
