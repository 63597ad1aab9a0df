import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { pythonWith } from '../python';
import { run, temporaryFolder } from './run';

jest.setTimeout(120_000);
const folder = temporaryFolder();
const PYTHON = pythonWith('openpyxl') ?? 'python3';
const MAKE = join(__dirname, '../fixtures/serials/make.py');
/** Made by openpyxl: which rows name what, and which pieces are due when, stands in the script. */
const made = (name: string, ...more: string[]): string => {
  const path = join(folder, name);
  execFileSync(PYTHON, [MAKE, path, ...more]);
  return path;
};
const READ = `
import json, sys, openpyxl
rows = list(openpyxl.load_workbook(sys.argv[1])["Channels"].iter_rows(values_only=True))
print(json.dumps({row[0]: [row[rows[0].index(name)] for name in sys.argv[2:]] for row in rows[1:]}))`;
const cellsOf = (path: string, ...columns: string[]): Record<string, unknown[]> =>
  JSON.parse(execFileSync(PYTHON, ['-c', READ, path, ...columns], { encoding: 'utf8' })) as Record<string, unknown[]>;
const plain = (text: string) => text.replace(/\s+/g, ' ');

describe('a sensor list with one row per serial number', () => {
  it('says the type of rows that name a piece, what its pieces differ in, and which number was meant', async () => {
    const { out } = await run(['check', made('check.xlsx')]);
    // C1 names nothing; all others name a type, or a piece of one.
    expect(out).toContain('0 FAIL, 1 INCOMPLETE, 0 WARN, 7 PASS');
    expect(plain(out)).toContain('Calibration of Ce-100 S10 is due on 2026-01-01, before A begins on 2027-03-01');
    expect(plain(out)).toContain('read "7.5 gram", expected 7 gram as in row 8, the first of this type, which is used');
    expect(plain(out)).toContain('read "S2", expected a serial number that no row above has (row 3, Ce-100)');
    expect(plain(out)).toContain('read "S11", expected a serial number from sensors (did you mean "S10"?)');
    // Certificates differ by nature.
    expect(out).not.toContain('Sensitivity');
  });

  it('gives each row a piece in the list’s own column, and says the same of the copy', async () => {
    const path = made('plan.xlsx');
    const target = join(folder, 'assigned.xlsx');
    const { out, status } = await run(['assign', path, '--allow-warn', '-o', target]);
    expect(status).toBe(0);
    expect(plain(out)).toContain('Pieces due for calibration before 2027-03-31 are not given out.');
    // By hand: S7 and 20418 are due in the test, 20417 on its last day; C2 to C4 keep theirs, C1 gets the lowest free one,
    // and C5, for which no Ce-100 is left, one of the triaxial ones.
    expect(cellsOf(target, 'Model', 'S/N')).toEqual({
      C1: ['Ce-100', 'S2'],
      C2: ['Ce-100', 's3'],
      C3: ['Ce-100', 'S10'],
      C4: ['Ce-100', 20417],
      T1: ['Ce-T', 'T-1'],
      T2: ['Ce-T', 'T-1'],
      T3: ['Ce-T', 'T-1'],
      C5: ['Ce-T', 'T-2'],
    });
    const { out: again } = await run(['check', target]);
    expect(again).toContain('0 FAIL, 0 INCOMPLETE, 0 WARN, 8 PASS');
    const { assigned } = JSON.parse((await run(['assign', target, '--allow-warn', '--json'])).out);
    const pieces = assigned.map((one: { channel: string; serial: string }) => [one.channel, one.serial]);
    expect(Object.fromEntries(pieces)).toMatchObject({ C1: 'S2', C4: '20417', T3: 'T-1', C5: 'T-2' });
  });

  it('lists who gets which piece where the channel list has no column for it', async () => {
    const path = made('without.xlsx', 'without');
    const target = join(folder, 'typed.xlsx');
    const { out } = await run(['assign', path, '-o', target]);
    expect(plain(out)).toContain('The list has no column for serial numbers');
    // C3 goes on naming its piece in the column of the type.
    expect(cellsOf(target, 'Model')).toMatchObject({ C2: ['Ce-100'], C3: ['S10'], C4: ['Ce-100'] });
    const short = JSON.parse((await run(['assign', path, '--spare', '50%', '--json'])).out);
    expect(short.test_end).toBe('2027-03-31');
    expect(short.shortage.sentences.at(-1)).toContain('2 of 6 pieces of type “Ce-100” are due for calibration');
    expect(short.types.find(({ sensor }: { sensor: string }) => sensor === 'Ce-100').late).toEqual(['20418', 'S7']);
  });

  it('reads the same from another workbook, laid out piece by piece', async () => {
    const path = made('elsewhere.xlsx');
    const plain = JSON.parse((await run(['assign', path, '--json'])).out);
    const laidOut = JSON.parse((await run(['assign', path, '--json', '--stock', path])).out);
    expect(laidOut.assigned).toEqual(plain.assigned);
    expect(laidOut.types.map(({ late }: { late: string[] }) => late)).toEqual(plain.types.map(({ late }: { late: string[] }) => late)); // prettier-ignore
  });
});
