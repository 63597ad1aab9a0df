import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import { openPlan } from '../../src/entries/cli/workbook-plan';
import { FUNCTIONS } from '../../src/functions/index';
import { DEMO, run, temporaryFolder } from './run';

const NAMES = FUNCTIONS.map(({ name }) => name);
const folder = temporaryFolder();
const at = (name: string) => join(folder, name);

beforeAll(async () => {
  await run(['check', DEMO, '-o', at('checked.xlsx'), '--sheet', 'W001,m003']);
}, 60_000);

const valuesOf = async (path: string, sheet: string) => (await openFile(path, NAMES)).readSheet(sheet).values;

it('a channel has all its numbers on a sheet of its own, with equations and what was typed', async () => {
  const { judged } = await openPlan(DEMO, undefined);
  const check = [...judged.byRow.values()].find(({ channel }) => channel.id === 'W001')!;
  const cells = (await valuesOf(at('checked.xlsx'), 'Channel W001')).map((line) =>
    line.map((cell) => String(cell ?? '')),
  );
  const valueOf = (label: string) => cells.find(([name]) => name === label)?.[1];
  expect(cells[0]).toEqual(expect.arrayContaining(['Channel W001', 'FAIL']));
  // W001 is worked example C3 in the independent computation: ratio 0.2707, allowed 1.269 g, headroom −2.279 dB.
  expect(Number(valueOf('Mass ratio'))).toBeCloseTo(check.mass.ratio!, 3);
  expect(valueOf('Mass ratio')).toBe('0.271');
  expect(valueOf('Heaviest sensor that passes')).toBe('1.27');
  expect(valueOf('Headroom')).toBe('−2.28');
  expect(cells.flat().some((text) => text.startsWith('CHAN.MASS.RATIO: '))).toBe(true);
  expect(valueOf('Local mass')).toBe('20.69');
  expect(cells.filter(([name]) => name === 'Sensor type').map(([, typed]) => typed)).toEqual([
    'Ce-100 general',
    'Ce-100 general',
  ]);
});

it('LibreOffice shows its three plots as groups of shapes', () => {
  execFileSync('soffice', ['--headless', `-env:UserInstallation=file://${folder}/profile`, '--convert-to', 'ods', '--outdir', folder, at('checked.xlsx')], { stdio: 'ignore' }); // prettier-ignore
  const content = strFromU8(unzipSync(new Uint8Array(readFileSync(at('checked.ods'))))['content.xml']!);
  expect(content.match(/<draw:g /g)).toHaveLength(6);
  expect(content).toContain('signal to noise 13.0 dB WARN');
}, 120_000);

it('a second run leaves the file as it is', async () => {
  await run(['check', at('checked.xlsx'), '-o', at('again.xlsx'), '--sheet', 'W001,M003']);
  expect(readFileSync(at('again.xlsx')).equals(readFileSync(at('checked.xlsx')))).toBe(true);
}, 60_000);

it('never takes a sheet of the user for its own', async () => {
  const file = await openFile(DEMO, NAMES);
  file.edit([
    { kind: 'sheet', name: 'Channel W001' },
    { kind: 'cells', sheet: 'Channel W001', row: 0, column: 0, cells: [['mine']] },
  ]);
  await saveFile(file, at('mine.xlsx'), { input: DEMO });
  await run(['check', at('mine.xlsx'), '-o', at('mine-checked.xlsx'), '--sheet', 'W001']);
  expect(await valuesOf(at('mine-checked.xlsx'), 'Channel W001')).toEqual([['mine']]);
  expect((await valuesOf(at('mine-checked.xlsx'), 'Channel W001 2'))[0]).toContain('FAIL');
}, 60_000);

it('a channel that is not there is told, and nothing is written', async () => {
  const { status, error } = await run(['check', DEMO, '-o', at('none.xlsx'), '--sheet', 'X999']);
  expect([status, error]).toEqual([64, expect.stringContaining('no channel is named "X999"')]);
  expect((await run(['check', DEMO, '--sheet', 'W001'])).status).toBe(64);
}, 60_000);
