import { callFunction } from '../../src/engine/call';
import { describeIssue } from '../../src/engine/messages';
import type { Example } from '../../src/functions/define';
import { FUNCTIONS } from '../../src/functions/index';

const cases = FUNCTIONS.flatMap((fn) => fn.examples.map((example) => ({ fn, example })));
const title = (example: Example) =>
  `${JSON.stringify(example.args)} → ${JSON.stringify(example.result)} (${example.from})`;

const expectCell = (actual: unknown, expected: number | string, within: number) => {
  if (typeof expected === 'string') expect(actual).toBe(expected);
  else {
    expect(typeof actual).toBe('number');
    const room = Math.max(Math.abs(expected) * within, expected === 0 ? within : 0);
    expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(room);
  }
};

describe('worked examples, each computed outside this program', () => {
  it.each(cases.map(({ fn, example }) => [`${fn.name} ${title(example)}`, fn, example] as const))(
    '%s',
    (_, fn, example) => {
      const called = callFunction(fn, example.args);
      if (!called.ok) throw new Error(`unexpected issue: ${describeIssue(called.issue)}`);
      const within = example.within ?? 0;
      if (!Array.isArray(example.result)) return expectCell(called.value, example.result as number | string, within);
      const rows = example.result as readonly (readonly (number | string)[])[];
      const actual = called.value as readonly (readonly unknown[])[];
      expect(actual.map((row) => row.length)).toEqual(rows.map((row) => row.length));
      rows.forEach((row, r) => row.forEach((cell, c) => expectCell(actual[r]?.[c], cell, within)));
      return undefined;
    },
  );
});

describe('every declaration', () => {
  it.each(FUNCTIONS.map((fn) => [fn.name, fn] as const))(
    '%s carries a provenance for at least two examples and a source',
    (_, fn) => {
      expect(fn.examples.length).toBeGreaterThanOrEqual(2);
      fn.examples.forEach((example) => expect(example.from.length).toBeGreaterThan(5));
      const { source } = fn;
      const said =
        source.kind === 'derivation' ? source.from : source.kind === 'practice' ? source.note : source.locator;
      expect(said.length).toBeGreaterThan(5);
    },
  );

  it.each(FUNCTIONS.map((fn) => [fn.name] as const))('%s is a name that no host reads as a cell address', (name) => {
    expect(name).toMatch(/^[A-Z][A-Z.]*[A-Z]$/);
    name.split('.').forEach((word) => expect(word).not.toMatch(/^[A-Z]{1,3}[0-9]+$/));
  });

  it('has a name of its own', () => {
    const names = FUNCTIONS.map((fn) => fn.name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('is registered if its file exists', () => {
    const { readdirSync, readFileSync, statSync } = jest.requireActual<typeof import('node:fs')>('node:fs');
    const root = `${__dirname}/../../src/functions`;
    const files = readdirSync(root)
      .filter((folder) => statSync(`${root}/${folder}`).isDirectory())
      .flatMap((folder) => readdirSync(`${root}/${folder}`).map((file) => `${root}/${folder}/${file}`))
      .filter((file) => file.endsWith('.ts'));
    const declared = files.flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/^\s*name: '([A-Z.]+)'/gm)].map((m) => m[1]),
    );
    expect([...declared].sort()).toEqual(FUNCTIONS.map((fn) => fn.name).sort());
  });
});
