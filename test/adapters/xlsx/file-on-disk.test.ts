import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openFile, saveFile } from '../../../src/adapters/xlsx/file-on-disk';
import { tinyParts, zipParts } from './tiny-workbook';

describe('a workbook on disk', () => {
  let folder: string;
  let input: string;
  const original = Buffer.from(zipParts(tinyParts({ sheets: [{ name: 'Plan' }] })));
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'channelwright-'));
    input = join(folder, 'plan.xlsx');
    writeFileSync(input, original);
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  const edited = async () => {
    const file = await openFile(input, []);
    file.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 0, cells: [['ours']] }]);
    return file;
  };

  it('is saved under another name and leaves the one that was read alone', async () => {
    const output = join(folder, 'checked.xlsx');
    await saveFile(await edited(), output, { input });
    expect(readFileSync(input).equals(original)).toBe(true);
    expect((await openFile(output, [])).readSheet('Plan').values).toEqual([['ours']]);
    expect(readdirSync(folder).sort()).toEqual(['checked.xlsx', 'plan.xlsx']);
  });

  it('is not written over itself, also not by another path, unless that is asked for', async () => {
    const link = join(folder, 'link.xlsx');
    symlinkSync(input, link);
    for (const path of [input, join(folder, '.', 'plan.xlsx'), link])
      await expect(saveFile(await edited(), path, { input })).rejects.toThrow('is the file that was read');
    expect(readFileSync(input).equals(original)).toBe(true);
  });

  it('is replaced in place with a copy of what was there, never over an older copy', async () => {
    const first = await saveFile(await edited(), input, { input, inPlace: true });
    const second = await saveFile(await edited(), input, { input, inPlace: true });
    expect([first, second]).toEqual([join(folder, 'plan.before-1.xlsx'), join(folder, 'plan.before-2.xlsx')]);
    expect(readFileSync(first!).equals(original)).toBe(true);
    expect((await openFile(input, [])).readSheet('Plan').values).toEqual([['ours']]);
  });

  it('keeps its ending, since programs refuse a workbook under another one', async () => {
    await expect(saveFile(await edited(), join(folder, 'plan.xlsm'), { input })).rejects.toThrow(
      'must keep its ending .xlsx',
    );
  });

  it('leaves nothing behind when it cannot be written', async () => {
    await expect(saveFile(await edited(), join(folder, 'no', 'such', 'folder.xlsx'), { input })).rejects.toThrow();
    expect(readdirSync(folder)).toEqual(['plan.xlsx']);
  });

  it('says that there is no such file', async () => {
    await expect(openFile(join(folder, 'missing.xlsx'), [])).rejects.toThrow('There is no file');
  });
});
