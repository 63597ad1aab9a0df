import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { parseRange } from '../../src/adapters/xlsx/cell-reference';
import { FUNCTIONS } from '../../src/functions/index';
import { DEMO, run, temporaryFolder } from './run';

const folder = temporaryFolder();
const checked = join(folder, 'checked.xlsx');
let parts: Record<string, Uint8Array>;

beforeAll(async () => {
  await run(['check', DEMO, '-o', checked]);
  parts = unzipSync(new Uint8Array(readFileSync(checked)));
}, 60_000);

const charts = () => Object.keys(parts).filter((name) => name.startsWith('xl/charts/'));

/** Each reference of a chart with the values kept beside it. */
const references = (xml: string): { at: string; kept: string[] }[] => {
  const found: { at: string; kept: string[] }[] = [];
  let inside = '';
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name }) => {
    inside = name;
  });
  parser.on('text', (text) => {
    if (inside === 'c:f') found.push({ at: text, kept: [] });
    if (inside === 'c:v') found.at(-1)!.kept.push(text);
  });
  parser.on('closetag', () => {
    inside = '';
  });
  parser.write(xml).close();
  return found;
};

it('the summary has three charts whose kept values are those of the cells they refer to', async () => {
  const file = await openFile(
    checked,
    FUNCTIONS.map(({ name }) => name),
  );
  const { values, row, column } = file.readSheet('Check summary');
  expect(charts()).toHaveLength(3);
  for (const name of charts()) {
    const all = references(strFromU8(parts[name]!));
    expect(all.length).toBeGreaterThanOrEqual(3);
    for (const { at, kept } of all) {
      const [sheet, place] = at.split('!') as [string, string];
      expect(sheet).toBe("'Check summary'");
      const range = parseRange(place)!;
      const cells = values
        .slice(range.row - row, range.row - row + range.rows)
        .flatMap((line) => line.slice(range.column - column, range.column - column + range.columns));
      expect(kept).toEqual(cells.map((cell) => String(cell ?? '')));
    }
  }
});

it('LibreOffice finds the charts and keeps them', () => {
  execFileSync('soffice', ['--headless', `-env:UserInstallation=file://${folder}/profile`, '--convert-to', 'ods', '--outdir', folder, checked], { stdio: 'ignore' }); // prettier-ignore
  const content = strFromU8(unzipSync(new Uint8Array(readFileSync(join(folder, 'checked.ods'))))['content.xml']!);
  expect(content.match(/<draw:object /g)).toHaveLength(3);
}, 120_000);

it('a second check leaves every chart as it is', async () => {
  const again = join(folder, 'again.xlsx');
  await run(['check', checked, '-o', again]);
  expect(readFileSync(again).equals(readFileSync(checked))).toBe(true);
}, 60_000);
