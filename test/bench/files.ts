import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { nodeCodec } from '../../src/adapters/xlsx/codec-node';
import { FILE_LIMITS } from '../../src/adapters/xlsx/limits';
import { openWorkbook } from '../../src/adapters/xlsx/workbook-file';
import { readZip } from '../../src/adapters/xlsx/zip-read';
import { freshEntry, writeZip } from '../../src/adapters/xlsx/zip-write';
import { main, processIo } from '../../src/entries/cli';
import { COLUMNS, longList } from './long-list';

interface Cost {
  readonly seconds: number;
  /** Of the processor, which other work on the machine disturbs less. */
  readonly processor: number;
  readonly megabytes: number;
}

/**
 * Read and copy: every sheet read into its values, every part unpacked, packed again (as hard as the command does) and
 * written. Nothing is judged.
 */
export const copy = (from: string, to: string): void => {
  const bytes = new Uint8Array(readFileSync(from));
  const book = openWorkbook(bytes, { codec: nodeCodec, functionNames: [] });
  const cells = book.sheets.reduce((sum, { name }) => sum + book.readSheet(name).values.length, 0);
  if (cells === 0) throw new Error('nothing was read');
  const copied = readZip(bytes, FILE_LIMITS).map((entry) => {
    const raw = entry.method === 0 ? entry.packed : nodeCodec.inflate(entry.packed, entry.size)!;
    return freshEntry(
      entry.name,
      8,
      nodeCodec.crc32(raw),
      raw.length,
      deflateRawSync(raw, { level: raw.length > 8_000_000 ? 3 : 6 }),
    );
  });
  writeFileSync(to, writeZip(copied));
};

/** The command as people call it, without the making of its bundle. */
export const command = async (...args: string[]): Promise<void> => {
  process.exitCode = await main(args, processIo());
};

/** Calls one of the two above in a process of its own, which says its peak of resident memory when it ends. */
const cost = (work: 'copy' | 'command', ...args: string[]): Cost => {
  const used = 'const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage()';
  const end = `process.on("exit", () => { ${used}; writeSync(2, \`peak \${maxRSS} \${userCPUTime + systemCPUTime}\`); })`;
  const call = `(await import(${JSON.stringify(import.meta.url)})).${work}(...${JSON.stringify(args)})`;
  const script = `import { writeSync } from 'node:fs'; ${end}; await ${call};`;
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const seconds = (performance.now() - started) / 1000;
  const [, peak, processor] = /peak (\d+) (\d+)$/.exec(stderr) ?? [];
  // The command answers 0 to 2 with the worst verdict; from 3 on something went wrong.
  if (peak === undefined || status === null || status > 2) throw new Error(`${args.join(' ')}: ${status}: ${stderr}`);
  return { seconds, processor: Number(processor) / 1e6, megabytes: Number(peak) / 1024 };
};

const row = (name: string, own: Cost, rival?: Cost): string => {
  const ratios = rival
    ? [own.seconds / rival.seconds, own.processor / rival.processor, own.megabytes / rival.megabytes]
    : [];
  const costs = `${own.seconds.toFixed(1).padStart(8)} s${own.processor.toFixed(1).padStart(8)} s${own.megabytes.toFixed(0).padStart(8)} MB`;
  return `  ${name.padEnd(46)}${costs}  ${ratios.map((ratio) => ratio.toFixed(1).padStart(7)).join('')}`;
};

/** Checking a workbook file by the command, beside reading and copying it. */
export const run = async (root: string): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'channelwright-bench-'));
  const size = (path: string): string => `${(statSync(path).size / 1e6).toFixed(1)} MB`;
  const copied = (from: string): Cost => cost('copy', from, join(folder, 'copy.xlsx'));
  const checked = (from: string, to: string, ...more: string[]): Cost =>
    cost('command', 'check', from, '-o', to, ...more);
  try {
    console.log(
      'Checking a workbook file with the command, each run in a process of its own; time, processor time, peak memory',
    );
    console.log(
      '"Read and copy" reads every sheet into values and packs every part anew; it judges and writes nothing.',
    );
    const sizes = (process.env.CHANNELWRIGHT_ROWS ?? '10000,100000').split(',').map(Number);
    for (const rows of sizes) {
      const plan = join(folder, `${rows}.xlsx`);
      const done = join(folder, `${rows}-checked.xlsx`);
      const values = join(folder, `${rows}-values.xlsx`);
      writeFileSync(plan, await longList(root, rows));
      console.log(
        `${rows} rows by ${COLUMNS} columns, ${size(plan)}`.padEnd(48) +
          '    time processor    memory   ratios of the three',
      );
      const rival = copied(plan);
      console.log(row('read and copy of the plan', rival));
      console.log(row('check -o, formulas and values', checked(plan, done), rival));
      console.log(row('check -o --values', checked(plan, values, '--values'), rival));
      const after = copied(done);
      console.log(row(`read and copy of the checked plan (${size(done)})`, after));
      console.log(row('check -o of the checked plan', checked(done, join(folder, 'again.xlsx')), after));
      console.log('');
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
