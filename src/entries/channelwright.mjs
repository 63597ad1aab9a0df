#!/usr/bin/env node
// The command. It bundles its sources when they changed (about a second) and keeps the bundle in .cache.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, '../..');

/** Changes with any source file: names, sizes and times are enough to tell. */
const stampOf = () => {
  const hash = createHash('sha256').update(process.version);
  const add = (path) => {
    const { size, mtimeMs } = statSync(path);
    hash.update(`${path}\n${size}\n${mtimeMs}\n`);
  };
  for (const entry of readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true }))
    if (entry.isFile() && entry.name.endsWith('.ts')) add(join(entry.parentPath ?? entry.path, entry.name));
  for (const name of ['package.json', 'package-lock.json']) add(join(root, name));
  return hash.digest('hex').slice(0, 16);
};

const DAY = 86_400_000;
const removeOld = (cache) => {
  for (const name of readdirSync(cache)) {
    const path = join(cache, name);
    if (Date.now() - statSync(path).mtimeMs > DAY) rmSync(path, { recursive: true, force: true });
  }
};

/** The calculation engine is large and a bundle of its own, made when a formula is to be worked out. */
const bundle = async (name, cache, folder) => {
  const target = join(folder, `${name}.mjs`);
  if (existsSync(target)) return target;
  const { build } = await import('esbuild');
  const beside = `${target}.${process.pid}`;
  await build({
    entryPoints: [join(here, name === 'cli' ? 'cli.ts' : 'cli/engine.ts')],
    outfile: beside,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // It looks for its WebAssembly beside itself.
    external: ['highs'],
    logLevel: 'error',
    plugins: [
      {
        name: 'engine-apart',
        setup: (build) => build.onResolve({ filter: /^\.\/engine$/ }, () => ({ path: './engine.mjs', external: true })),
      },
    ],
  });
  renameSync(beside, target); // another start of the command may make the same file at the same time
  removeOld(cache);
  return target;
};

const load = async (command) => {
  const cache = join(root, '.cache/cli');
  const folder = join(cache, stampOf());
  mkdirSync(folder, { recursive: true });
  if (command === 'eval') await bundle('engine', cache, folder);
  return import(pathToFileURL(await bundle('cli', cache, folder)).href);
};

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Channelwright needs Node 20.19 or newer; this is Node ${process.versions.node}.`);
  process.exit(70);
}
// A reader that stops early, such as head, is no failure.
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') process.exit(0);
});
try {
  const { main, processIo } = await load(process.argv[2]);
  process.exitCode = await main(process.argv.slice(2), processIo());
} catch (error) {
  console.error(`channelwright: cannot start: ${error instanceof Error ? error.message : error}`);
  process.exitCode = 70;
}
