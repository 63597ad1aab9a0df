import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { CASES_FILE, DEMO, run, temporaryFolder } from './run';

jest.setTimeout(180_000);
const folder = temporaryFolder();
const PYTHON = '/usr/bin/python3';

interface Checked {
  readonly channels: readonly { readonly id: string; readonly verdict: string; readonly at?: string }[];
}
const checked = async (path: string): Promise<Checked> =>
  JSON.parse((await run(['check', path, '--json'])).out).plans[0];

/** Lines of a CSV file as Python's own reader sees them. */
const readCsv = (path: string, separator: string): string[][] => {
  const script =
    'import csv,json,sys; print(json.dumps(list(csv.reader(open(sys.argv[1],encoding="utf-8-sig",newline=""),delimiter=sys.argv[2],strict=True))))';
  const { stdout, stderr, status } = spawnSync(PYTHON, ['-c', script, path, separator], { maxBuffer: 1 << 26 });
  if (status !== 0) throw new Error(String(stderr));
  return JSON.parse(String(stdout));
};

describe('channelwright export', () => {
  it.each([
    ['the demo plan', DEMO, 287],
    ['the worked channels', CASES_FILE, 12],
  ])('writes %s as JSON that check reads to the same result', async (_name, plan, count) => {
    const target = join(folder, `${count}.json`);
    expect(await run(['export', plan, '-o', target])).toMatchObject({ status: 0 });
    const [before, after] = [await checked(plan), await checked(target)];
    expect(after.channels).toHaveLength(count);
    const bare = ({ channels }: Checked) => channels.map((channel) => ({ ...channel, at: undefined }));
    expect(bare(after)).toEqual(bare(before));
  });

  it('writes a CSV file that another reader takes apart into the same numbers and words', async () => {
    const target = join(folder, 'plan.csv');
    expect(await run(['export', DEMO, '-o', target])).toMatchObject({ status: 0 });
    expect(readFileSync(target, 'utf8')).toMatch(/^\ufeffChannel,/);
    const [head, ...lines] = readCsv(target, ',');
    const { channels } = await checked(DEMO);
    expect(lines).toHaveLength(287);
    expect(new Set(lines.map((line) => line.length))).toEqual(new Set([head!.length]));
    const column = (name: string) => head!.indexOf(name);
    expect(lines.map((line) => line[column('Channel')])).toEqual(channels.map(({ id }) => id));
    expect(lines.map((line) => line[column('Channel verdict')])).toEqual(channels.map(({ verdict }) => verdict));
    const ratios = channels.map((channel) => (channel as unknown as { mass: { mass_ratio: number } }).mass.mass_ratio);
    expect(lines.map((line) => (line[column('Mass ratio')] === '' ? null : Number(line[column('Mass ratio')])))).toEqual(ratios); // prettier-ignore
    // Directions such as +X would be taken for formulas.
    expect(lines.some((line) => /^'[+-]/.test(line[column('Direction')]!))).toBe(true);
    expect(lines.flat().filter((cell) => /^\s*[=+@＝＋－＠]/.test(cell))).toEqual([]);
    expect(lines.flat().filter((cell) => cell.startsWith('-') && Number.isNaN(Number(cell)))).toEqual([]);
  });

  it('writes German numbers for a German reader', async () => {
    const target = join(folder, 'de.csv');
    await run(['export', CASES_FILE, '-o', target, '--language', 'de']);
    const [head, first] = readCsv(target, ';');
    expect(head).toEqual(expect.arrayContaining(['Kanal', 'Urteil zum Kanal', 'Größter Pegel, g, Spitzenwert']));
    expect(first!.some((cell) => /^\d+,\d+$/.test(cell))).toBe(true);
  });

  it('gives a spreadsheet program that opens it nothing to calculate', async () => {
    const evil = join(folder, 'evil.json');
    const hostile = [
      '=1+1',
      '+1+1',
      '-1+1',
      '@SUM(1;1)',
      '＝1+1',
      '\t=1+1',
      '=HYPERLINK("http://127.0.0.1/")',
      '"=1+1',
    ];
    writeFileSync(evil, JSON.stringify({ cases: hostile.map((text, i) => ({ id: text, name: text, remarks: `${i}` })) })); // prettier-ignore
    const target = join(folder, 'evil.csv');
    await run(['export', evil, '-o', target]);
    const out = join(folder, 'opened');
    mkdirSync(out);
    const profile = pathToFileURL(join(folder, 'profile')).href;
    // 44,34,76: comma, quote, UTF-8. The empty fields leave columns as the program guesses them; formulas are evaluated.
    const { status } = spawnSync('soffice', [`-env:UserInstallation=${profile}`, '--headless', '--infilter=CSV:44,34,76,1,,0,false,true,false,false,false,-1,true', '--convert-to', 'fods', '--outdir', out, target], { timeout: 120_000 }); // prettier-ignore
    expect(status).toBe(0);
    const opened = readFileSync(join(out, 'evil.fods'), 'utf8');
    expect(opened).toContain('HYPERLINK');
    expect(opened).not.toContain('table:formula');
  });

  it('refuses to write over a file unless it is told to, and never over the plan', async () => {
    const target = join(folder, 'there.json');
    writeFileSync(target, 'mine');
    expect((await run(['export', DEMO, '-o', target])).status).toBe(64);
    expect(readFileSync(target, 'utf8')).toBe('mine');
    expect((await run(['export', DEMO, '-o', target, '--replace'])).status).toBe(0);
    expect((await run(['export', target, '-o', target, '--replace'])).status).toBe(64);
  });

  it.each([
    [['export', DEMO], 'says where to write'],
    [['export', DEMO, '-o', join(folder, 'x.ods')], 'FILE.csv or -o FILE.json'],
    [['export'], 'name one plan'],
    [['export', DEMO, '-o', join(folder, 'x.csv'), '--separator', 'comma', '--decimal', 'comma'], 'must differ'],
    [['export', DEMO, '-o', join(folder, 'x.csv'), '--separator', 'pipe'], 'comma or semicolon or tab'],
  ])('refuses %j', async (argv, words) => {
    const { status, error } = await run(argv);
    expect(status).toBe(64);
    expect(error).toContain(words);
    expect(existsSync(join(folder, 'x.csv'))).toBe(false);
  });
});
