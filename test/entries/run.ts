import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '../../src/entries/cli';
import type { Io } from '../../src/entries/cli/terminal';

export const DEMO = join(__dirname, '../../assets/demo-plan.xlsx');
export const CASES_FILE = join(__dirname, '../fixtures/cases.json');

/** Runs the command in this process and keeps what it says. */
export const run = async (argv: readonly string[], more: Partial<Io> & { typed?: string } = {}) => {
  let out = '';
  let error = '';
  const io: Io = {
    out: (text) => void (out += text),
    error: (text) => void (error += text),
    input: () => Promise.resolve(more.typed ?? ''),
    colour: false,
    watched: false,
    columns: 100,
    ...more,
  };
  const status = await main(argv, io);
  return { status, out, error };
};

/** A folder that is removed when the tests of the file are done. */
export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'channelwright-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};
