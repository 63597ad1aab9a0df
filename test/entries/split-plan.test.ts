import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { withMacros } from '../end-to-end/saving-workbook';
import { pythonWith } from '../python';
import { DEMO, run, temporaryFolder } from './run';

jest.setTimeout(120_000);
const folder = temporaryFolder();
const at = (name: string): string => join(folder, name);
const PYTHON = pythonWith('openpyxl') ?? 'python3';
const WITHOUT = at('without-sensors.xlsx');
const SENSORS = at('sensors.xlsx');
const SPREAD = at('spread.xlsx');
// As `check` of the demo plan with its own list of sensors.
const COUNTS = '33 FAIL, 6 INCOMPLETE, 20 WARN, 228 PASS';

beforeAll(() => execFileSync(PYTHON, [join(__dirname, '../fixtures/share/split.py'), DEMO, folder]));

const textsOf = async (path: string, sheet: string) =>
  (await openFile(path, FUNCTION_NAMES)).readSheet(sheet).values.flat();

describe('a plan whose sensors stand in another workbook', () => {
  it('is the same plan as with its own list, by compare and in its export', async () => {
    const compared = await run(['compare', DEMO, WITHOUT, '--stock', SENSORS]);
    expect(compared).toMatchObject({ status: 0, out: expect.stringContaining('Nothing changed') });
    expect(compared.out).not.toContain('Rows taken together');
    expect(compared.error).toContain('laid out from sensors.xlsx');
    const target = at('plan.json');
    expect((await run(['export', WITHOUT, '--stock', SENSORS, '-o', target])).status).toBe(0);
    expect((await run(['check', target])).out).toContain(COUNTS);
  });

  it('is shared with verdicts as values; the laid-out sheet can be left out', async () => {
    const target = at('copy.xlsx');
    const { error, status } = await run(['share', WITHOUT, '--stock', SENSORS, '-o', target, '--leave-out', 'Sensor stock']); // prettier-ignore
    expect([status, error]).toEqual([1, expect.stringContaining('laid out from sensors.xlsx')]);
    const file = await openFile(target, FUNCTION_NAMES);
    expect(file.sheets.map(({ name }) => name)).not.toContain('Sensor stock');
    const { values, formulas } = file.readSheet('Channels');
    expect(formulas.flat().filter(Boolean)).toEqual([]);
    expect(values.flat().filter((cell) => cell === 'INCOMPLETE').length).toBeGreaterThanOrEqual(6);
    // Nothing of it reached the plan itself.
    expect((await openFile(WITHOUT, [])).sheets.map(({ name }) => name)).not.toContain('Sensor stock');
  });

  it.each([['check'], ['choose'], ['assign'], ['export', '-o', at('x.csv')], ['compare', at('plan.json')]])(
    'is no matter of a JSON plan: %s says so',
    async (command, ...more) => {
      const { status, error } = await run([command, at('plan.json'), ...more, '--stock', SENSORS]);
      expect([status, error]).toEqual([64, expect.stringContaining('--stock is for workbooks')]);
    },
  );
});

describe('a plan over two sheets', () => {
  const back = at('spread-back.xlsx');

  it('is compared channel by channel, whatever sheet a channel stands on', async () => {
    const { out, status } = await run(['compare', SPREAD, back, '--json']);
    expect(status).toBe(1);
    const { changed } = JSON.parse(out) as { changed: unknown[] };
    expect(changed).toHaveLength(2);
    // Of one sheet alone there are six channels, and one of the changes.
    const wing = await run(['compare', SPREAD, back, '--json', '--list', 'Wing']);
    expect((JSON.parse(wing.out) as { changed: unknown[] }).changed).toHaveLength(1);
  });

  it('takes changes back on the sheet where each was made', async () => {
    const target = at('taken.xlsx');
    const { out } = await run(['take-back', SPREAD, back, '--all', '-o', target]);
    expect(out).toContain('2 of 2 cells taken');
    expect(await textsOf(target, 'Wing')).toContain('moved to rib 2');
    expect(await textsOf(target, 'Tail')).toContain('moved to rib 9');
    expect(await textsOf(target, 'Wing')).not.toContain('moved to rib 9');
    const alone = await run(['take-back', SPREAD, back, '--list', 'Tail']);
    expect(alone.out).toContain('Tail!E8');
    expect(alone.out).not.toContain('Wing!E7');
  });
});

const BUTTON =
  '<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="900000" cy="300000"/><xdr:sp macro="[0]!RunPlan" textlink=""><xdr:nvSpPr><xdr:cNvPr id="2" name="Button"/><xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:sp><xdr:clientData/></xdr:absoluteAnchor></xdr:wsDr>';

/** A shape on the last sheet that starts a macro. */
const withButton = (workbook: Uint8Array): Uint8Array => {
  const parts = unzipSync(workbook);
  const edit = (name: string, before: string, after: string) => {
    const text = strFromU8(parts[name]!);
    expect(text).toContain(before);
    parts[name] = strToU8(text.replace(before, after));
  };
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const sheet = Object.keys(parts).filter((name) => /worksheets\/sheet\d+\.xml$/.test(name)).sort().at(-1)!; // prettier-ignore
  const rels = sheet.replace('worksheets/', 'worksheets/_rels/') + '.rels';
  expect(parts[rels]).toBeUndefined();
  edit(sheet, '</worksheet>', `<drawing xmlns:r="${office}" r:id="rIdB"/></worksheet>`);
  parts[rels] = strToU8(`<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rIdB" Type="${office}/drawing" Target="../drawings/drawing9.xml"/></Relationships>`); // prettier-ignore
  parts['xl/drawings/drawing9.xml'] = strToU8(BUTTON);
  edit('[Content_Types].xml', '</Types>', '<Override PartName="/xl/drawings/drawing9.xml" ContentType="application/vnd.openxmlformats-officedocument.drawing+xml"/></Types>'); // prettier-ignore
  return zipSync(parts);
};

describe('a copy of a workbook with macros', () => {
  it('is a plain workbook: no macro part, kind or tie to one is left, and another reader opens it', async () => {
    const plan = at('macros.xlsm');
    writeFileSync(plan, withButton(withMacros(readFileSync(SPREAD))));
    expect((await run(['share', plan, '-o', at('copy.xlsm')])).error).toContain('has no macros');
    expect(existsSync(at('copy.xlsm'))).toBe(false);
    const target = at('plain.xlsx');
    expect((await run(['share', plan, '-o', target])).error).toContain('Macros were taken out');
    const parts = unzipSync(readFileSync(target));
    const texts = Object.values(parts).map((bytes) => strFromU8(bytes));
    expect(Object.keys(parts).filter((name) => /vba/i.test(name))).toEqual([]);
    expect(texts.filter((text) => /vbaProject|macroEnabled|RunPlan/.test(text))).toEqual([]);
    const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml';
    expect(strFromU8(parts['[Content_Types].xml']!)).toContain(`PartName="/xl/workbook.xml" ContentType="${type}"`);
    const sheets = execFileSync(PYTHON, ['-c', 'import openpyxl,sys; print(openpyxl.load_workbook(sys.argv[1]).sheetnames)', target]); // prettier-ignore
    expect(String(sheets)).toContain("'Wing', 'Tail'");
    // The plan itself keeps its macros.
    expect(Object.keys(unzipSync(readFileSync(plan)))).toContain('xl/vbaProject.bin');
  });
});
