import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { FUNCTIONS, NAMESPACE } from '../../src/functions/index';
import { version } from '../../package.json';
import { OPTIONS } from '../../src/entries/cli';
import { DEMO, run } from './run';

const LAUNCHER = join(__dirname, '../../src/entries/channelwright.mjs');
const launch = (...argv: string[]) =>
  spawnSync(process.execPath, [LAUNCHER, ...argv], {
    cwd: tmpdir(),
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    env: { ...process.env, FORCE_COLOR: '1' },
  });

describe('the channelwright command', () => {
  it('runs from any folder, straight from the sources', () => {
    const { stdout, status, stderr } = launch('--version');
    expect([stdout, status, stderr]).toEqual([`${version}\n`, 0, '']);
  }, 60_000);

  it('hands the exit status to the shell and writes no escape codes or progress into a pipe', () => {
    const { stdout, stderr, status } = launch('check', DEMO);
    expect(status).toBe(1);
    expect(stdout + stderr).not.toContain('\u001b');
    expect(stderr).toBe('');
    expect(launch('check', 'nowhere.xlsx').status).toBe(65);
    expect(launch('chek').status).toBe(64);
  }, 60_000);

  it('works out formulas with the engine', () => {
    const { stdout, status } = launch('eval', '--json', 'CHAN.CONVERT(1,"g","m/s²")');
    expect([JSON.parse(stdout), status]).toEqual([{ value: 9.80665 }, 0]);
  }, 60_000);

  it('lists every worksheet function', async () => {
    const { out } = await run(['functions']);
    const listed = JSON.parse((await run(['functions', '--json'])).out) as { name: string; signature: string }[];
    expect(listed.map(({ name }) => name)).toEqual(FUNCTIONS.map(({ name }) => `${NAMESPACE}.${name}`));
    for (const { name, signature } of listed) {
      expect(signature.startsWith(`${name}(`)).toBe(true);
      expect(out).toContain(name);
    }
  });

  it.each(Object.entries(OPTIONS))(
    'tells of every option of %s, and of none that it has not',
    async (command, options) => {
      const { out } = await run([command, '--help']);
      const told = out.split('\n\n')[0]!.matchAll(/--([a-z][a-z-]*)/g);
      expect([...new Set([...told].map(([, name]) => name))].sort()).toEqual(Object.keys(options).sort());
    },
  );

  it('suggests the option or command that a typing error is next to', async () => {
    expect((await run(['share', DEMO, '--stok', 'x'])).error).toContain('Did you mean --stock?');
    expect((await run(['take-back', DEMO, '--stock', 'x'])).error).not.toContain('Did you mean');
    expect(await run(['exprt'])).toMatchObject({ status: 64, error: expect.stringContaining('did you mean export?') });
  });

  it('explains itself, and NO_COLOR keeps a terminal plain', async () => {
    for (const call of [['help'], ['--help'], ['check', '--help']])
      expect(await run(call)).toMatchObject({ status: 0, out: expect.stringContaining('channelwright check PLAN') });
    const before = { tty: process.stdout.isTTY, none: process.env['NO_COLOR'], term: process.env['TERM'] };
    const { processIo } = await import('../../src/entries/cli/terminal');
    try {
      process.stdout.isTTY = true;
      process.env['TERM'] = 'xterm';
      delete process.env['NO_COLOR'];
      expect(processIo().colour).toBe(true);
      process.env['NO_COLOR'] = '1';
      expect(processIo().colour).toBe(false);
    } finally {
      process.stdout.isTTY = before.tty;
      if (before.none === undefined) delete process.env['NO_COLOR'];
      else process.env['NO_COLOR'] = before.none;
      if (before.term === undefined) delete process.env['TERM'];
      else process.env['TERM'] = before.term;
    }
  });
});
