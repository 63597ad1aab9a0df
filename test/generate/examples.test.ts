import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { strFromU8, unzipSync } from 'fflate';
import { workbookFromFile } from '../../src/adapters/embedded/import/workbook';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import type { WorkbookFile } from '../../src/adapters/xlsx/workbook-file';
import { FUNCTIONS, NAMESPACE } from '../../src/functions/index';
import { agreementOf } from '../../src/generate/examples';
import { openWorkbook } from '../adapters/embedded/headless';

const PATH = join(__dirname, '../../assets/examples.xlsx');
const [HEADINGS, FUNCTION, FORMULA, RESULT, EXPECTED, AGREEMENT, FROM] = [5, 1, 2, 3, 5, 7, 8];
const ALL = FUNCTIONS.reduce((sum, { examples }) => sum + examples.length, 0);

let file: WorkbookFile;
beforeAll(async () => {
  file = await openFile(
    PATH,
    FUNCTIONS.map(({ name }) => name),
  );
});
const list = () => file.readSheet('Examples').values.slice(HEADINGS + 1);
const count = (cells: readonly (readonly unknown[])[]) => cells[1]?.[0];

/** As opened by somebody who has the add-in, with nothing to go by but the formulas. */
const withoutValues = async (): Promise<IWorkbookData> => {
  const data = await workbookFromFile(readFileSync(PATH), 'examples.xlsx');
  for (const sheet of Object.values(data.sheets))
    for (const row of Object.values(sheet.cellData ?? {}) as Record<number, ICellData>[])
      for (const cell of Object.values(row)) if (cell.f ?? cell.si) delete cell.v;
  return data;
};
const calculated = async (data: IWorkbookData) => {
  const { spreadsheet } = await openWorkbook(data);
  await spreadsheet.calculated();
  return (await spreadsheet.readSheet('Examples')).values;
};

describe('the workbook of worked examples', () => {
  it('has one row for each example of each function, in the order of the catalogue, and says who computed it', () => {
    const rows = list();
    expect(rows.map((row) => row[FUNCTION])).toEqual(
      FUNCTIONS.flatMap((fn) => fn.examples.map(() => `${NAMESPACE}.${fn.name}`)),
    );
    expect(rows.map((row) => row[FROM])).toEqual(FUNCTIONS.flatMap((fn) => fn.examples.map(({ from }) => from)));
    for (const row of rows) expect(String(row[FORMULA]).startsWith(`=${String(row[FUNCTION])}(`)).toBe(true);
  });

  it('keeps our functions as Excel keeps those of add-ins, so that they are recognised on opening', () => {
    const parts = unzipSync(readFileSync(PATH));
    const formulas = Object.keys(parts)
      .filter((name) => name.startsWith('xl/worksheets/sheet'))
      .flatMap((name) => [...strFromU8(parts[name]!).matchAll(/<f>([^<]*)<\/f>/g)].map(([, formula]) => formula!));
    expect(formulas.filter((formula) => formula.includes(`_xldudf_${NAMESPACE}_`)).length).toBeGreaterThanOrEqual(ALL);
    expect(formulas.filter((formula) => formula.includes(`${NAMESPACE}.`))).toEqual([]);
  });

  it('reads without the add-in: the stored values agree, all of them', () => {
    const { values } = file.readSheet('Examples');
    expect(count(values)).toBe(`${ALL} of ${ALL} agree`);
    for (const row of list()) expect([row[FUNCTION], row[AGREEMENT]]).toEqual([row[FUNCTION], 'agree']);
  });

  it('agrees in the embedded engine, calculated from the formulas alone', async () => {
    const values = await calculated(await withoutValues());
    expect(values.filter((row) => row[AGREEMENT] === 'differ' || row[AGREEMENT] === 'not calculated')).toEqual([]);
    expect(count(values)).toBe(`${ALL} of ${ALL} agree`);
  }, 60_000);

  it('says so when a value is wrong, and when a function cannot be calculated', async () => {
    const data = await withoutValues();
    const cells = data.sheets[data.sheetOrder[0]!]!.cellData!;
    cells[HEADINGS + 1]![EXPECTED] = { ...cells[HEADINGS + 1]![EXPECTED], v: 100.001 };
    cells[HEADINGS + 2]![RESULT] = { f: '=NO.SUCH.FUNCTION(1)' };
    const values = await calculated(data);
    expect(values.slice(HEADINGS + 1, HEADINGS + 4).map((row) => row[AGREEMENT])).toEqual([
      'differ',
      'not calculated',
      'agree',
    ]);
    expect(count(values)).toBe(`${ALL - 2} of ${ALL} agree`);
  }, 60_000);

  it('loses nothing in LibreOffice, which has no add-in', () => {
    const folder = mkdtempSync(join(tmpdir(), 'channelwright-examples-'));
    try {
      const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
      const filter = 'csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,false,false,false,false,1';
      execFileSync('soffice', [profile, '--headless', '--convert-to', filter, '--outdir', folder, PATH], {
        stdio: 'ignore',
        timeout: 120_000,
      });
      const unquoted = (field: string) => (field.startsWith('"') ? field.slice(1, -1).replaceAll('""', '"') : field);
      const shown = readFileSync(join(folder, 'examples-Examples.csv'), 'utf8')
        .split('\n')
        .map((line) => line.split('\t').map(unquoted));
      expect(shown[1]?.[0]).toBe(`${ALL} of ${ALL} agree`);
      list().forEach((row, i) => {
        const [result, agreement] = [RESULT, AGREEMENT].map((c) => shown[HEADINGS + 1 + i]?.[c]);
        const value = row[RESULT];
        if (typeof value === 'number')
          expect(Math.abs(Number(result) - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value));
        else expect(result).toBe(String(value));
        expect(agreement).toBe('agree');
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }, 120_000);
});

describe('agreement', () => {
  it('is relative, absolute beside zero, exact for words, and never given to a value that is missing', () => {
    expect(agreementOf(1.0009, 1, 1e-3)).toBe('agree');
    expect(agreementOf(1.0011, 1, 1e-3)).toBe('differ');
    expect(agreementOf(0.0009, 0, 1e-3)).toBe('agree');
    expect(agreementOf('PASS', 'PASS', 0)).toBe('agree');
    expect(agreementOf('pass', 'PASS', 0)).toBe('differ');
    expect(agreementOf('1', 1, 1)).toBe('differ');
    expect(agreementOf(null, 1, 1)).toBe('differ');
    expect(agreementOf({ error: '#N/A' }, 1, 1)).toBe('not calculated');
  });
});
