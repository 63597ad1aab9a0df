import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CASES_FILE, run, temporaryFolder } from './run';

const RELATIVE = 1e-6;
const folder = temporaryFolder();
const given = JSON.parse(readFileSync(CASES_FILE, 'utf8')) as {
  cases: { id: string; expected: Record<string, unknown>; requirement: Record<string, unknown> }[];
};

/** Paths at which a number is off by more than the tolerance, or anything else differs. Words of explanation are left out. */
const differences = (actual: unknown, expected: unknown, path = ''): string[] => {
  if (path.endsWith('.reasons') || path.endsWith('.provenance')) return [];
  if (typeof expected === 'number') {
    const isNear = typeof actual === 'number' && Math.abs(actual - expected) <= RELATIVE * Math.abs(expected) + 1e-12;
    return isNear ? [] : [`${path}: ${String(actual)} for ${expected}`];
  }
  if (typeof expected !== 'object' || expected === null)
    return actual === expected ? [] : [`${path}: ${String(actual)} for ${String(expected)}`];
  const there = (actual ?? {}) as Record<string, unknown>;
  return Object.entries(expected).flatMap(([key, value]) => differences(there[key], value, `${path}.${key}`));
};
const json = (path: string, content: unknown): string => {
  const file = join(folder, path);
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
};
/** The plan with only some of its cases. */
const only = (...ids: string[]) => ({ ...given, cases: given.cases.filter(({ id }) => ids.includes(id)) });
const withVerdict = (verdict: string) => given.cases.filter(({ expected }) => expected['verdict'] === verdict)[0]!.id;

// Expected values: test/fixtures/cases.json, computed independently with Python/scipy.
describe('a JSON plan', () => {
  it('gives the twelve worked cases with all their numbers and verdicts', async () => {
    const { out, error } = await run(['check', CASES_FILE, '--json']);
    const channels = (JSON.parse(out) as { plans: { channels: (Record<string, unknown> & { id: string })[] }[] })
      .plans[0]!.channels;
    expect(error).toBe('');
    expect(channels.map(({ id }) => id)).toEqual(given.cases.map(({ id }) => id));
    expect(given.cases).toHaveLength(12);
    expect(given.cases.flatMap(({ id, expected }, i) => differences(channels[i], expected, id))).toEqual([]);
    for (const channel of channels)
      if (channel['verdict'] !== 'PASS') expect((channel['reasons'] as string[])[0]).toMatch(/\d.*\.$|Not known/);
  });

  it('would be caught with one number off', () => {
    expect(differences({ a: { b: 1.00001 } }, { a: { b: 1 } })).toEqual(['.a.b: 1.00001 for 1']);
  });

  it('ends with 0 when all pass, 1 when one fails, 2 when one is incomplete', async () => {
    const pass = only(withVerdict('PASS'));
    const gap = structuredClone(pass);
    gap.cases[0]!.id = 'gap';
    gap.cases[0]!.requirement['local_mass'] = [];
    expect((await run(['check', json('pass.json', pass)])).status).toBe(0);
    expect((await run(['check', json('gap.json', gap)])).status).toBe(2);
    const all = { ...pass, cases: [...gap.cases, ...only(withVerdict('FAIL')).cases] };
    expect((await run(['check', json('fail.json', all)])).status).toBe(1);
  });

  it('names the place, what was read and what was expected', async () => {
    const plan = only(withVerdict('PASS')) as unknown as { sensors: Record<string, Record<string, unknown>> };
    const broken = structuredClone(plan);
    broken.sensors['S1']!['mass_gram'] = 'heavy';
    const { error, out } = await run(['check', json('typed.json', broken), '--json']);
    expect(error).toContain('sensors.S1.mass_gram: read "heavy", expected a number in gram.');
    expect(out).toContain('sensors.S1.mass_gram');
  });

  it('that is no JSON is refused with its line and column', async () => {
    const { status, error } = await run(['check', json('broken.json', '{"channels": [\n  {"id": 1,}\n]}')]);
    expect(status).toBe(65);
    expect(error).toMatch(/broken\.json: line 2, column 12: read "}", expected a plan as JSON\./);
    expect(error).not.toMatch(/at .*\.ts|Error:/);
  });

  it('without channels is refused, and so is a list, a text or nothing', async () => {
    for (const content of [{}, [], '"text"', '', '{"channels": {}}'])
      expect((await run(['check', json('none.json', content)])).status).toBe(65);
  });
});
