import { writeFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTIONS } from '../../src/functions/index';
import { fieldsOf, TABLES } from '../../src/plan/fields';
import { openPlan } from '../../src/entries/cli/workbook-plan';
import { caseSheets, CASES } from '../workbook/case-sheets';
import { headingOf } from '../../src/workbook/template';
import { run, temporaryFolder } from './run';

const folder = temporaryFolder();
const path = join(folder, 'new.xlsx');
const NAMES = FUNCTIONS.map(({ name }) => name);

beforeAll(async () => {
  expect((await run(['template', path])).status).toBe(0);
});

/** The template with the twelve worked cases typed in. */
const filled = async (): Promise<string> => {
  const file = await openFile(path, NAMES);
  const tables = ['channels', 'sensors', 'mounts', 'cables', 'inputs'] as const;
  file.edit(
    caseSheets().flatMap(({ name, cells }, i) => {
      const fields = fieldsOf(tables[i]!);
      const [headings = [], ...rows] = cells;
      const place = headings.map((heading) =>
        fields.findIndex(({ title, unit }) => heading === title || heading === `${title}, ${unit}`),
      );
      return rows.map((row, r) => ({
        kind: 'cells' as const,
        sheet: name,
        row: r + 1,
        column: 0,
        cells: [fields.map((_, c) => (place.includes(c) ? (row[place.indexOf(c)] ?? null) : null))],
      }));
    }),
  );
  const target = join(folder, 'filled.xlsx');
  await saveFile(file, target, { input: path });
  return target;
};

describe('an empty plan', () => {
  it('is recognised with every field of every table, without a doubt', async () => {
    const { tables } = await openPlan(await filled(), undefined);
    for (const name of TABLES) {
      const columns = tables[name]!.columns;
      expect([name, [...columns.keys()].sort()]).toEqual([
        name,
        fieldsOf(name)
          .map(({ key }) => key)
          .sort(),
      ]);
      for (const field of fieldsOf(name)) expect(columns.get(field.key)!.heading).toBe(headingOf(field));
      for (const [key, { confidence }] of columns) expect([name, key, confidence >= 0.9]).toEqual([name, key, true]);
    }
  });

  it('filled in gives the verdicts of the worked cases', async () => {
    const { out, error } = await run(['check', await filled(), '--json']);
    expect(error).toBe('');
    const channels = (JSON.parse(out) as { plans: { channels: { id: string; verdict: string }[] }[] }).plans[0]!
      .channels;
    // Expected verdicts: test/fixtures/cases.json, computed independently with Python/scipy.
    expect(channels.map(({ id, verdict }) => [id, verdict])).toEqual(
      CASES.cases.map((c: { id: string; expected: { verdict: string } }) => [c.id, c.expected.verdict]),
    );
  });

  it('has a note on each heading, lists to choose from and the limits with where they come from', async () => {
    const parts = unzipSync(new Uint8Array(readFileSync(path)));
    const notes = Object.keys(parts)
      .filter((name) => /comments\d*\.xml$/.test(name))
      .map((name) => strFromU8(parts[name]!).match(/<comment /g)!.length);
    expect(notes.reduce((a, b) => a + b)).toBe(TABLES.reduce((sum, table) => sum + fieldsOf(table).length, 0));
    const channels = strFromU8(parts['xl/worksheets/sheet1.xml']!);
    expect(channels).toContain('Sensors!$A$2:$A$1000');
    expect(channels).toContain('survey,modal,shock');
    expect(channels).toContain('state="frozen"');
    const limits = (await openFile(path, NAMES)).readSheet('Limits').values;
    expect(limits).toHaveLength(8);
    for (const [, pass, , , origin] of limits.slice(1))
      expect([typeof pass, typeof origin]).toEqual(['number', 'string']);
  });

  it('says that it has no rows yet when it is checked', async () => {
    const { status, error } = await run(['check', path]);
    expect([status, error]).toEqual([65, expect.stringContaining('has headings but no rows')]);
  });

  it('never replaces a file', async () => {
    writeFileSync(join(folder, 'mine.xlsx'), 'mine');
    expect((await run(['template', join(folder, 'mine.xlsx')])).status).toBe(64);
    expect(readFileSync(join(folder, 'mine.xlsx'), 'utf8')).toBe('mine');
    for (const call of [['template'], ['template', join(folder, 'x.csv')], ['template', join(folder, 'no/x.xlsx')]])
      expect([call, (await run(call)).status]).toEqual([call, 64]);
  });
});
