import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { pythonWith } from '../python.js';
import { cell, demoPlaces, editedCopy } from './edited-demo';
import { DEMO, run, temporaryFolder } from './run';

jest.setTimeout(240_000);
const folder = temporaryFolder();
const at = (name: string) => join(folder, name);

interface Told {
  readonly cells: readonly {
    readonly at: string;
    readonly item: string;
    readonly field: string | null;
    readonly now: unknown;
    readonly returned: unknown;
    readonly conflict: boolean;
    readonly taken: boolean;
    readonly formula?: string;
  }[];
  readonly only_in_copy: readonly string[];
  readonly not_in_copy: readonly string[];
  readonly columns_not_in_copy: readonly string[];
  readonly changed_in_plan_only: number;
  readonly beside: readonly {
    readonly item: string;
    readonly heading: string;
    readonly text: unknown;
    readonly note: boolean;
  }[];
}
const told = async (argv: readonly string[]): Promise<Told> => {
  const { status, out, error } = await run(['take-back', ...argv, '--json']);
  if (status !== 0) throw new Error(error);
  return JSON.parse(out);
};
const brief = ({ cells }: Told) => cells.map(({ item, field, now, returned }) => [item, field, now, returned]);

/** Types into a copy in LibreOffice and saves it there. */
const editedInOffice = (
  source: string,
  target: string,
  edits: readonly (readonly [string, number, number, string])[],
) => {
  writeFileSync(at('edits.json'), JSON.stringify(edits));
  const script = join(__dirname, '../fixtures/xlsx/edit-in-office.py');
  const { status, stderr } = spawnSync(pythonWith('uno')!, [script, source, target, at('edits.json')], { timeout: 120_000 }); // prettier-ignore
  if (status !== 0) throw new Error(String(stderr));
};

/** The cells of the channel sheet that differ between two files, as A1-free places. */
const differing = async (a: string, b: string) => {
  const [one, two] = [await openFile(a, FUNCTION_NAMES), await openFile(b, FUNCTION_NAMES)];
  return one.sheets.flatMap(({ name }) => {
    const [x, y] = [one.readSheet(name), two.readSheet(name)];
    return x.values.flatMap((line, r) =>
      line.flatMap((value, c) =>
        value === y.values[r]?.[c] ? [] : [[name, x.row + r, x.column + c, y.values[r]?.[c]]],
      ),
    );
  });
};

describe('a copy that comes back', () => {
  it('made for a customer and edited in LibreOffice brings exactly what was typed there; only what is chosen is taken', async () => {
    const copy = at('copy.xlsx');
    await run(['share', DEMO, '-o', copy, '--language', 'de', '--leave-out', 'Channels!Location']);
    const untouched = await told([DEMO, copy]);
    expect([untouched.cells, untouched.columns_not_in_copy, untouched.only_in_copy, untouched.not_in_copy]).toEqual([[], ['Location'], [], []]); // prettier-ignore
    const { rowOf, columnOf } = await demoPlaces();
    const [level, remarks, band] = [columnOf('Highest level'), columnOf('Remarks'), columnOf('Band high')];
    editedInOffice(copy, at('edited.xlsx'), [
      ['Channels', rowOf('W004'), level, '52.5'],
      ['Channels', rowOf('W005'), level, '44 g pk'],
      ['Channels', rowOf('W005'), remarks, '=HYPERLINK("http://127.0.0.1/")'],
      ['Channels', rowOf('W006'), remarks, 'moved, see photograph'],
      ['Channels', rowOf('W007'), band, ''],
      ['Limits', 2, 1, '4'],
      ['Channels', 4, 50, 'Our answer'],
      ['Channels', rowOf('W008'), 50, '=1+1'],
    ]);
    const listed = await told([DEMO, at('edited.xlsx')]);
    expect(brief(listed)).toEqual([
      ['W004', 'levelHigh', 48, 52.5],
      ['W005', 'levelHigh', 44, '44 g pk'],
      ['W005', 'remarks', null, '=HYPERLINK("http://127.0.0.1/")'],
      ['W006', 'remarks', null, 'moved, see photograph'],
      ['W007', 'bandHigh', 2000, null],
      ['Headroom', 'pass', 3.5, 4],
    ]);
    expect(listed.cells.some(({ taken }) => taken)).toBe(false);
    expect([untouched.beside, listed.beside.map(({ item, heading, text }) => [item, heading, text])]).toEqual([[], [['W008', 'Our answer', '=1+1']]]); // prettier-ignore
    const some = await told([DEMO, at('edited.xlsx'), '--field', 'remarks', '-o', at('some.xlsx')]);
    expect(some.cells.filter(({ taken }) => taken).map(({ item }) => item)).toEqual(['W005', 'W006']);
    // The text that would fetch something when it is calculated stays a text.
    expect(await differing(DEMO, at('some.xlsx'))).toEqual([
      ['Channels', rowOf('W005'), remarks, ' =HYPERLINK("http://127.0.0.1/")'],
      ['Channels', rowOf('W006'), remarks, 'moved, see photograph'],
    ]);
    const written = (await openFile(at('some.xlsx'), FUNCTION_NAMES)).readSheet('Channels');
    expect(written.formulas.flat().filter((text) => text !== '')).toEqual([]);
    await told([DEMO, at('edited.xlsx'), '--all', '-o', at('all.xlsx')]);
    expect(await differing(DEMO, at('all.xlsx'))).toHaveLength(6);
    expect(brief(await told([at('all.xlsx'), at('edited.xlsx')]))).toEqual([]);
  });

  it('brings conflicts where both sides changed a cell since it left, and nothing where only the plan changed', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const level = columnOf('Highest level');
    const change = (id: string, value: number) => cell('Channels', rowOf(id), level, value);
    const plan = await editedCopy(at('plan.xlsx'), [change('W004', 50), change('W005', 40), change('W006', 30)]);
    const returned = await editedCopy(at('returned.xlsx'), [
      change('W004', 60),
      change('W006', 30),
      change('W007', 20),
    ]);
    const found = await told([plan, returned, '--sent', DEMO]);
    expect(found.cells.map(({ item, now, returned: back, conflict }) => [item, now, back, conflict])).toEqual([
      ['W004', 50, 60, true],
      ['W007', 51, 20, false],
    ]);
    expect(found.changed_in_plan_only).toBe(1);
    const all = await told([plan, returned, '--sent', DEMO, '--all', '-o', at('without-conflict.xlsx')]);
    expect(all.cells.map(({ taken }) => taken)).toEqual([false, true]);
    const named = await told([plan, returned, '--sent', DEMO, '--channel', 'W004', '--field', 'Highest level', '-o', at('named.xlsx')]); // prettier-ignore
    expect(named.cells.map(({ taken }) => taken)).toEqual([true, false]);
  });

  it('lists notes of the customer, also behind a note of ours, but neither ours nor those that left with the copy', async () => {
    const script = `
import sys, openpyxl
from openpyxl.comments import Comment
book = openpyxl.load_workbook(sys.argv[1])
sheet = book['Channels']
if sys.argv[3] == 'plan':
    sheet['B7'].comment = Comment('left with the copy', 'planner')
else:
    sheet['B8'].comment = Comment('please <b>lighter</b>', 'customer')
    verdict = [c for c in range(1, 60) if sheet.cell(5, c).value == 'Channel verdict'][0]
    for row in sheet.iter_rows(min_row=6, min_col=verdict, max_col=verdict):
        if row[0].comment: row[0].comment = Comment(row[0].comment.text, ' ')
    sheet.cell(6, verdict).comment.text += chr(10) + 'we agree'
book.save(sys.argv[2])
`;
    const edit = (from: string, to: string, what: string) => {
      const { status, stderr } = spawnSync(pythonWith('openpyxl')!, ['-c', script, from, to, what]);
      if (status !== 0) throw new Error(String(stderr));
    };
    edit(DEMO, at('noted.xlsx'), 'plan');
    await run(['share', at('noted.xlsx'), '-o', at('noted-copy.xlsx')]);
    edit(at('noted-copy.xlsx'), at('noted-back.xlsx'), 'copy');
    const { beside, cells } = await told([at('noted.xlsx'), at('noted-back.xlsx')]);
    expect(cells).toEqual([]);
    expect(beside.map(({ item, heading, text, note }) => [item, heading, text, note])).toEqual([
      ['W001', 'Channel verdict', 'we agree', true],
      ['W003', 'Structure part', 'please <b>lighter</b>', true],
    ]);
  });

  it('leaves formulas of the plan alone unless the cell is named', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const level = columnOf('Highest level');
    const plan = await editedCopy(at('formula.xlsx'), [cell('Channels', rowOf('W004'), level, { formula: '=40+8', value: 48 })]); // prettier-ignore
    expect(brief(await told([plan, DEMO]))).toEqual([]);
    const returned = await editedCopy(at('value.xlsx'), [cell('Channels', rowOf('W004'), level, 55)]);
    const all = await told([plan, returned, '--all', '-o', at('kept.xlsx')]);
    expect(all.cells).toEqual([expect.objectContaining({ item: 'W004', formula: '=40+8', taken: false })]);
    expect(existsSync(at('kept.xlsx'))).toBe(false);
    const named = await told([plan, returned, '--channel', 'W004', '--field', 'levelHigh', '-o', at('over.xlsx')]);
    expect(named.cells[0]!.taken).toBe(true);
    expect(await differing(DEMO, at('over.xlsx'))).toEqual([['Channels', rowOf('W004'), level, 55]]);
  });

  it('is understood with columns missing, rows in another order, and columns of ours in another language', async () => {
    const script = `
import sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
sheet = book['Channels']
head = {str(c.value).split(' [')[0]: c.column for c in sheet[5]}
rows = [[c.value for c in row] for row in sheet.iter_rows(min_row=6)]
for row in rows:
    if row[0] == 'W012': row[head['Remarks'] - 1] = 'answer'
rows.reverse()
for at, row in enumerate(rows):
    for column, value in enumerate(row): sheet.cell(6 + at, column + 1).value = value
last = sheet.max_column
for at, title in enumerate(['Urteil zum Kanal', 'Grund', 'Rauschabstand, dB', 'Massenverhältnis', 'Temperaturgang unten, %']):
    sheet.cell(5, last + 1 + at).value = title
    for row in range(6, sheet.max_row + 1): sheet.cell(row, last + 1 + at).value = at + 0.5
for name in ['Input', 'Cable', 'Sensor type', 'Local mass']: sheet.delete_cols(head[name])
for name in ['Sensors', 'Inputs']: del book[name]
book.save(sys.argv[2])
`;
    const { status, stderr } = spawnSync(pythonWith('openpyxl')!, ['-c', script, DEMO, at('shared.xlsx')]);
    expect([status, String(stderr)]).toEqual([0, '']);
    const found = await told([DEMO, at('shared.xlsx')]);
    expect(brief(found)).toEqual([['W012', 'remarks', null, 'answer']]);
    expect(found.columns_not_in_copy.map((heading) => heading.split(' [')[0])).toEqual(['Local mass', 'Sensor type', 'Cable', 'Input']); // prettier-ignore
    expect([found.only_in_copy, found.not_in_copy]).toEqual([[], []]);
  });

  it('proposes a renamed channel, and tells of rows on one side only', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const returned = await editedCopy(at('renamed.xlsx'), [
      cell('Channels', rowOf('W008'), columnOf('Channel'), 'W008x'),
      cell('Channels', rowOf('W008'), columnOf('Remarks'), 'renamed'),
    ]);
    const { cells } = await told([DEMO, returned, '--all', '-o', at('not-renamed.xlsx')]);
    expect(cells.map(({ item, field, taken }) => [item, field, taken])).toEqual([
      ['W008', 'channel', false],
      ['W008', 'remarks', false],
    ]);
  });

  it('goes into the checked plan itself, with a copy kept and verdicts made anew', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const plan = at('checked.xlsx');
    expect((await run(['check', DEMO, '-o', plan])).status).toBe(1);
    const returned = await editedCopy(at('high.xlsx'), [
      cell('Channels', rowOf('W005'), columnOf('Highest level'), 700),
    ]);
    const before = readFileSync(plan);
    const { status, out } = await run(['take-back', plan, returned, '--all', '--in-place']);
    expect([status, out]).toEqual([0, expect.stringContaining('1 of 1 cells taken.')]);
    expect(readFileSync(at('checked.before-1.xlsx')).equals(before)).toBe(true);
    const sheet = (await openFile(plan, FUNCTION_NAMES)).readSheet('Channels');
    const verdict = sheet.values[4 - sheet.row]!.indexOf('Channel verdict');
    expect(sheet.values[rowOf('W005') - sheet.row]![verdict]).toBe('FAIL');
  });

  it.each([
    [['take-back', DEMO], 'name the plan and the copy'],
    [['take-back', DEMO, DEMO, '--all'], '-o OUT or --in-place'],
    [['take-back', DEMO, DEMO, '-o', at('x.xlsx')], 'say which cells'],
    [['take-back', DEMO, DEMO, '--all', '--field', 'remarks', '-o', at('x.xlsx')], 'without --channel'],
    [['take-back', DEMO, DEMO, '--all', '-o', at('x.csv')], '.xlsx'],
  ])('refuses %j', async (argv, words) => {
    const { status, error } = await run(argv);
    expect(status).toBe(64);
    expect(error).toContain(words);
    expect(existsSync(at('x.xlsx'))).toBe(false);
  });

  it('never replaces a file', async () => {
    copyFileSync(DEMO, at('there.xlsx'));
    expect((await run(['take-back', DEMO, DEMO, '--all', '-o', at('there.xlsx')])).status).toBe(64);
  });
});
