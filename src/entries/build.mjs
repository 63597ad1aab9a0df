// Builds dist/ when a source file is newer than the last build.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync, writeFileSync, existsSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
const INPUTS = ['src', 'assets', 'manifest.xml', 'webpack.config.js', 'tsconfig.json', 'package-lock.json'];

const filesBelow = (path) =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .flatMap((name) => filesBelow(join(path, name)))
    : [path];

/** A digest of every file that the build reads. */
const fingerprint = () => {
  const hash = createHash('sha256');
  for (const file of INPUTS.map((name) => join(root, name))
    .filter(existsSync)
    .flatMap(filesBelow))
    hash.update(file.slice(root.length)).update(readFileSync(file));
  return hash.digest('hex');
};

const stamp = join(root, 'dist/.built');
const now = fingerprint();
if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== now) {
  const started = Date.now();
  const webpack = join(root, 'node_modules/webpack/bin/webpack.js');
  const { status } = spawnSync(process.execPath, [webpack, '--mode', 'production'], {
    cwd: root,
    stdio: 'inherit',
    // Says which sources a running copy was made from; a date would make equal builds differ.
    env: { ...process.env, CHANNELWRIGHT_MARK: now.slice(0, 8) },
  });
  if (status !== 0) process.exit(status ?? 1);
  writeFileSync(stamp, now);
  console.log(`Built in ${((Date.now() - started) / 1000).toFixed(1)} s.`);
}
