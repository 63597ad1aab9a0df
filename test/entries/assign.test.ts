import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { DEMO, run, temporaryFolder } from './run';

jest.setTimeout(120_000);
const folder = temporaryFolder();

describe('channelwright assign', () => {
  it('fills in sensors in a copy, touches no other column of the user, and checks the copy', async () => {
    const target = join(folder, 'assigned.xlsx');
    const before = readFileSync(DEMO);
    const { status, out } = await run(['assign', DEMO, '--allow-warn', '-o', target]);
    expect(readFileSync(DEMO)).toEqual(before);
    expect(status).toBe(2);
    expect(out).toContain('that is proven');
    expect(out).not.toContain('look at this row');
    const [old, fresh] = await Promise.all([openFile(DEMO, FUNCTION_NAMES), openFile(target, FUNCTION_NAMES)]);
    const [a, b] = [old, fresh].map((file) => file.readSheet('Channels'));
    const heading = a!.values.findIndex((line) => line.includes('Sensor type'));
    const sensor = a!.values[heading]!.indexOf('Sensor type');
    const changed = new Set<number>();
    a!.values.forEach((line, r) => line.forEach((cell, c) => JSON.stringify(cell) !== JSON.stringify(b!.values[r]![c]) && changed.add(c))); // prettier-ignore
    expect([...changed]).toEqual([sensor]);
    // No type is in use more often than the list says, housings with several axes aside.
    const { types } = JSON.parse((await run(['assign', DEMO, '--json'])).out);
    for (const { quantity, used } of types) expect(used).toBeLessThanOrEqual(quantity);
  });

  it('keeps a spare of every type, and says what is missing then', async () => {
    const whole = JSON.parse((await run(['assign', DEMO, '--json'])).out);
    const spared = JSON.parse((await run(['assign', DEMO, '--json', '--spare', '20%'])).out);
    expect(spared.assigned.length).toBeLessThan(whole.assigned.length);
    for (const { quantity, kept, used, left } of spared.types) {
      expect(kept).toBe(Math.ceil(quantity * 0.2 - 1e-9));
      expect(used + kept + left).toBe(quantity);
    }
    expect(spared.shortage.fewest.length).toBeGreaterThan(0);
  });

  it('leaves every filled row alone when asked', async () => {
    const { out } = await run(['assign', DEMO, '--json', '--pinned', 'filled']);
    const { assigned } = JSON.parse(out);
    expect(assigned.filter(({ pinned }: { pinned?: boolean }) => pinned).length).toBeGreaterThan(200);
  });

  it.each([
    [['assign'], 'name one plan'],
    [['assign', DEMO, '--spare', 'many'], 'expected a share'],
    [['assign', DEMO, '--inputs', 'IEPE'], 'expected kinds and channels'],
    [['assign', DEMO, '--test-end', 'soon'], 'expected a date'],
    [['assign', DEMO, '-o', join(folder, 'x.xls')], 'expected a name that ends in .xlsx'],
  ])('refuses %j', async (argv, words) => {
    const { status, error } = await run(argv);
    expect(status).toBe(64);
    expect(error).toContain(words);
  });

  it('writes over nothing that it has not made', async () => {
    const target = join(folder, 'mine.xlsx');
    writeFileSync(target, 'mine');
    expect((await run(['assign', DEMO, '-o', target])).status).toBe(64);
    expect(readFileSync(target, 'utf8')).toBe('mine');
    expect(existsSync(`${target}.part`)).toBe(false);
  });
});
