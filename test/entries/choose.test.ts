import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CASES_FILE, DEMO, run, temporaryFolder } from './run';

jest.setTimeout(120_000);
const folder = temporaryFolder();
const BIN = join(__dirname, '../../src/entries/channelwright.mjs');

interface Chosen {
  readonly choices: readonly {
    readonly channels: readonly string[];
    readonly candidates: readonly {
      readonly sensor: string;
      readonly verdict: string;
      readonly margin_dB: number;
      readonly channels_by_verdict?: Readonly<Record<string, number>>;
      readonly with?: readonly { readonly channels: readonly string[]; readonly verdict: string }[];
    }[];
    readonly conflicts?: readonly { readonly aims: readonly string[] }[];
    readonly answers?: readonly { readonly kind: string }[];
  }[];
}
const chosen = async (...argv: string[]) => {
  const { status, out, error } = await run(['choose', ...argv, '--json']);
  return { status, error, ...(JSON.parse(out) as Chosen) };
};
const only = (...ids: string[]) => ids.flatMap((id) => ['--channel', id]);

describe('channelwright choose', () => {
  it('by the real command ranks the types for a channel, says what limits each, and ends with 0 when one passes', () => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [BIN, 'choose', CASES_FILE, ...only('C8'), '--free'],
      {
        encoding: 'utf8',
      },
    );
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/Channel C8[^]*S4 +PASS +\+\d+\.\d dB/);
    expect(stdout).toContain('It is not a protective function');
  });

  it('ends with 1 when nothing fits, with the conflict and ways out in sentences', async () => {
    const { status, out } = await run(['choose', CASES_FILE, ...only('C3'), '--free']);
    expect(status).toBe(1);
    const flowing = out.replace(/\s+/g, ' ');
    expect(flowing).toContain('combinations in stock meet lowest level (noise) and added mass together');
    expect(flowing).toContain('10.5 dB of overlap with two sensors');
  });

  it('with --together ranks one type for several channels, and says for which of them it does not pass', async () => {
    const { status, out } = await run(['choose', CASES_FILE, ...only('C3', 'C5', 'C6'), '--free', '--together']);
    expect(status).toBe(1);
    const flowing = out.replace(/\s+/g, ' ');
    expect(flowing).toContain('One type for 3 channels: C3, C5, C6');
    expect(flowing).toContain('No type passes for C3, C6. What would help for the first of them:');
    const { choices } = await chosen(...[CASES_FILE, ...only('C3', 'C5', 'C6'), '--free', '--together', '--top', '99']);
    const { choices: alone } = await chosen(...[CASES_FILE, ...only('C3', 'C5', 'C6'), '--free', '--top', '99']);
    for (const one of choices[0]!.candidates) {
      const verdicts = alone.map(({ candidates }) => candidates.find(({ sensor }) => sensor === one.sensor)!.verdict);
      const said = one.with!.flatMap(({ channels, verdict }) => channels.map((id) => [id, verdict]));
      expect(Object.fromEntries(said)).toEqual({ C3: verdicts[0], C5: verdicts[1], C6: verdicts[2] });
      expect(one.channels_by_verdict!['PASS']).toBe(verdicts.filter((verdict) => verdict === 'PASS').length);
    }
    const passes = choices[0]!.candidates.map((one) => one.channels_by_verdict!['PASS']!);
    const failing = choices[0]!.candidates.filter(({ verdict }) => verdict === 'FAIL').length;
    expect(passes.slice(-failing)).toEqual([...passes.slice(-failing)].sort((a, b) => b - a));
  });

  it('ends with 2 while a row lacks what has to be known', async () => {
    const file = join(folder, 'gap.json');
    const { sensors, mounts, cables, inputs, cases } = JSON.parse(readFileSync(CASES_FILE, 'utf8')) as Record<
      string,
      { requirement: object; id: string }[]
    >;
    const row = cases!.find(({ id }) => id === 'C12')!;
    const requirement = { ...row.requirement, local_mass: [] };
    writeFileSync(file, JSON.stringify({ sensors, mounts, cables, inputs, channels: [{ ...row, requirement }] }));
    const { status, choices } = await chosen(file);
    expect(status).toBe(2);
    expect(choices[0]?.candidates[0]?.verdict).toBe('INCOMPLETE');
  });

  it('counts a warning as good, like check, and says what would be needed for a PASS', async () => {
    const { status, choices } = await chosen(CASES_FILE, ...only('C4'));
    expect(status).toBe(0);
    expect(choices[0]?.candidates[0]?.verdict).toBe('WARN');
    expect(choices[0]?.conflicts?.length).toBeGreaterThan(0);
  });

  it('keeps the verdict order and shows no more types than asked', async () => {
    const { choices } = await chosen(CASES_FILE, ...only('C10', 'C12'), '--free', '--top', '4');
    expect(choices.map(({ channels }) => channels)).toEqual([['C10'], ['C12']]);
    for (const { candidates } of choices) {
      expect(candidates).toHaveLength(4);
      const order = candidates.map(({ verdict }) => ['PASS', 'WARN', 'INCOMPLETE', 'FAIL'].indexOf(verdict));
      expect([...order].sort((a, b) => a - b)).toEqual(order);
    }
  });

  it('reads a workbook, one structure part of it when that is asked', async () => {
    const { choices, status } = await chosen(DEMO, ...only('W003', 'W004'));
    expect(status).toBe(0);
    expect(choices.flatMap(({ channels }) => channels)).toEqual(['W003', 'W004']);
    for (const { candidates } of choices) expect(candidates[0]?.verdict).toBe('PASS');
  });

  it.each([
    ['de', /Aufnehmertyp.*Urteil.*Reserve/, /−?\d+,\d dB/, 'Nichts passt'],
    ['fr', /Type de capteur.*Verdict.*Marge/, /−?\d+,\d dB/, 'Rien ne convient'],
  ])('speaks %s, with a decimal comma and the verdict words unchanged', async (language, headings, number, nothing) => {
    const { out } = await run(['choose', CASES_FILE, ...only('C11'), '--language', language]);
    expect(out).toMatch(headings);
    expect(out).toMatch(number);
    expect(out).toContain(nothing);
    expect(out).toContain('FAIL');
  });

  it.each([
    [['choose'], 64, 'name one plan'],
    [['choose', CASES_FILE, '--channel', 'X9'], 64, 'no channel of this name'],
    [['choose', CASES_FILE, '--group', 'moon'], 64, 'no such channel in this structure part'],
    [['choose', CASES_FILE, '--top', 'all'], 64, 'expected a whole number'],
    [['choose', CASES_FILE, '--order', 'price'], 64, 'expected margin, mass, stock'],
    [['choose', CASES_FILE, '--language', 'tlh'], 64, 'is not spoken'],
    [['choose', join(folder, 'none.json')], 65, 'cannot be read'],
  ])('refuses %j with %i', async (argv, status, words) => {
    const result = await run(argv);
    expect([result.status, result.out]).toEqual([status, '']);
    expect(result.error).toContain(words);
  });
});
