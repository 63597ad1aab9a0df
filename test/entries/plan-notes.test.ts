import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeXlsx } from 'hucre';
import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import { STATUS } from '../../src/entries/cli/status';
import { FUNCTIONS } from '../../src/functions/index';
import type { Change } from '../../src/workbook/port';
import { NOTE_WORDS } from '../../src/workbook/plan-notes/words';
import { DEMO, run, temporaryFolder } from './run';

const NAMES = FUNCTIONS.map(({ name }) => name);
const SHEET = 'Plan notes';
const folder = temporaryFolder();
const at = (name: string) => join(folder, `${name}.xlsx`);

const notesIn = async (path: string, sheet = SHEET) => {
  const { values } = (await openFile(path, NAMES)).readSheet(sheet);
  return values.map((line) => [line[0] ?? null, line[1] ?? null]);
};
/** The workbook as a person leaves it. */
const edited = async (from: string, name: string, changes: readonly Change[]) => {
  const file = await openFile(from, NAMES);
  file.edit(changes);
  await saveFile(file, at(name), { input: from });
  return at(name);
};
const typed = (row: number, cells: (string | number | null)[], column = 0): Change => ({
  kind: 'cells',
  sheet: SHEET,
  row,
  column,
  cells: [cells],
});
const fill = (from: string, to: string, ...more: string[]) => run(['check', from, '-o', to, '--plan-notes', ...more]);
const first = at('first');
jest.setTimeout(30_000);

beforeAll(async () => {
  // A heading without its unit is a reading that the notes have to tell.
  const plan = await edited(DEMO, 'plan', [
    { kind: 'cells', sheet: 'Channels', row: 4, column: 11, cells: [['Band high']] },
  ]);
  await fill(plan, first);
}, 60_000);

describe('plan notes filled by a check', () => {
  it('tell assumptions and readings below what a person laid out, which stays as it was', async () => {
    const [before, after] = [await notesIn(DEMO), await notesIn(first)];
    expect(after.slice(0, before.length)).toEqual(before);
    const block = after.slice(before.length + 1);
    expect(block[0]![0]).toBe(NOTE_WORDS.en.begin);
    expect(block.at(-1)).toEqual([NOTE_WORDS.en.end, null]);
    expect(block).toContainEqual(['Channels!L5', '"Band high" names no unit: plain numbers are taken in Hz.']);
    expect(block.map(([topic]) => topic)).toEqual(expect.arrayContaining(['Date', 'Assumptions taken', 'Limits']));
    // Revision, Prepared and Checked stand above already.
    expect(block.map(([topic]) => topic)).not.toContain('Revision');
  });

  it('are the same file, byte for byte, when filled a second time', async () => {
    await fill(first, at('second'));
    expect(readFileSync(at('second')).equals(readFileSync(first))).toBe(true);
  });

  it('keep the lines that a person changed, wrote or took away, in another language too', async () => {
    const lines = await notesIn(first);
    const rowOf = (topic: string) => lines.findIndex(([said], i) => said === topic && i > 18);
    const spares = lines[rowOf('Spares')]!;
    const end = lines.length - 1;
    const mine = await edited(first, 'mine', [
      typed(rowOf('Reference frequency'), ['Reference frequency', '=1+1']),
      typed(rowOf('Spares'), [null, null]),
      typed(end, ['Shaker', 'Hired from the neighbour hall.']),
      typed(end + 1, [NOTE_WORDS.en.end, null]),
    ]);
    const before = (await openFile(mine, NAMES)).readSheet(SHEET);
    expect((await fill(mine, at('again'), '--language', 'de')).out).toContain('ausgefüllt; 2 Ihrer Zeilen blieben');
    const file = await openFile(at('again'), NAMES);
    const { values, formulas } = file.readSheet(SHEET);
    expect(formulas[rowOf('Reference frequency')]![1]).toBe('=1+1');
    expect(values[end]).toEqual(before.values[end]);
    expect(values.flat()).not.toContain(spares[1]);
    expect(values.flat()).not.toContain(NOTE_WORDS.de.topics.spares);
    expect(values.flat()).toContain(NOTE_WORDS.de.topics.calibration);
    await fill(at('again'), at('again-2'), '--language', 'de');
    expect(readFileSync(at('again-2')).equals(readFileSync(at('again')))).toBe(true);
  });

  it('refuse to grow over what stands below, with the rows to insert, and check the plan all the same', async () => {
    const lines = await notesIn(first);
    const below = await edited(first, 'below', [
      typed(lines.length, ['Mine', 'right below the block']),
      { kind: 'cells', sheet: 'Channels', row: 4, column: 10, cells: [['Band low']] },
    ]);
    const { out } = await fill(below, at('grown'));
    expect(out).toContain(`row ${lines.length + 1} holds something of yours. Insert 1 row above it`);
    expect(await notesIn(at('grown'))).toEqual(await notesIn(below));
  });

  it('are not said twice in the report', async () => {
    const page = join(folder, 'report.md');
    await run(['check', first, '--report', page]);
    expect(readFileSync(page, 'utf8').match(/one in ten cables/g)).toHaveLength(1);
  });

  it('get a sheet of their own where there is none, with revision, date and names to fill in', async () => {
    const plan = at('small');
    const rows = [
      ['Channel', 'Highest level [g pk]', 'Band high [Hz]', 'Sensor type'],
      ['G1', 20, 2000, 'Quiet 10'],
    ];
    writeFileSync(plan, await writeXlsx({ sheets: [{ name: 'Channels', rows }] }));
    const { error } = await fill(plan, at('small-filled'), '--language', 'fr');
    expect(error).toBe('');
    const lines = await notesIn(at('small-filled'), NOTE_WORDS.fr.sheet);
    expect(lines.slice(1, 5).map(([topic]) => topic)).toEqual(['Révision', 'Établi', 'Vérifié', 'Date']);
    expect(lines[4]![1]).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  it('ask for a file to write', async () => {
    const { status, error } = await run(['check', DEMO, '--plan-notes']);
    expect([status, error]).toEqual([STATUS.usage, expect.stringContaining('name one with -o')]);
  });
});
