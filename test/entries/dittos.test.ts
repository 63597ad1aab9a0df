import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTIONS } from '../../src/functions/index';
import { OWN_COLUMNS, ownIndex } from '../../src/workbook/own-columns';
import { DEMO, run, temporaryFolder } from './run';

const NAMES = FUNCTIONS.map(({ name }) => name);
const folder = temporaryFolder();
const at = (name: string) => join(folder, `${name}.xlsx`);
jest.setTimeout(60_000);

/** The highest level of the demo plan's first four channels. */
const [FIRST_ROW, HIGHEST] = [5, 9];

const checked = async (name: string, levels: readonly (number | string)[]) => {
  const file = await openFile(DEMO, NAMES);
  file.edit([
    { kind: 'cells', sheet: 'Channels', row: FIRST_ROW, column: HIGHEST, cells: levels.map((level) => [level]) },
  ]);
  await saveFile(file, at(name), { input: DEMO });
  await run(['check', at(name), '-o', at(`${name}-out`)]);
  const { values, formulas } = (await openFile(at(`${name}-out`), NAMES)).readSheet('Channels');
  const column = values[FIRST_ROW - 1]!.indexOf(OWN_COLUMNS[0]!.heading);
  const rows = (of: readonly (readonly unknown[])[]) =>
    levels.map((_, i) => of[FIRST_ROW + i]!.slice(column, column + OWN_COLUMNS.length));
  return { values: rows(values), formulas: rows(formulas), cells: values };
};

describe('a ditto mark in a workbook file', () => {
  it('gives the row the same values as the number that it means, by a formula that refers to it', async () => {
    const [marked, written] = await Promise.all([
      checked('marked', [65, '"', '"', 12]),
      checked('written', [65, 65, 65, 12]),
    ]);
    expect(marked.values).toEqual(written.values);
    expect(marked.cells[FIRST_ROW + 1]![HIGHEST]).toBe('"');
    const headroom = String(marked.formulas[2]![ownIndex('headroom')]);
    expect(headroom).toContain('IF(SUMPRODUCT(--EXACT($J7:$J8,""""))=2,IF($J6="",NA(),$J6),');
    expect(String(marked.formulas[3]![ownIndex('headroom')])).not.toContain('EXACT');
    await run(['check', at('marked-out'), '-o', at('again')]);
    expect(readFileSync(at('again')).equals(readFileSync(at('marked-out')))).toBe(true);
  });
});
