// `npm run package -- --base-url https://plans.example.org/cw [--out FOLDER]`: the folder that a static host serves.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { loadGenerators } from '../generate/load.mjs';

const USAGE = 'npm run package -- --base-url https://plans.example.org/cw [--out FOLDER]';
const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

const options = {
  'base-url': { type: 'string' },
  out: { type: 'string', default: join(root, 'package') },
  // Another finished build than the project's own.
  dist: { type: 'string' },
};
let given;
try {
  given = parseArgs({ options }).values;
} catch (error) {
  console.error(`${error.message}\n${USAGE}`);
  process.exit(64);
}
const { packageAddIn, readBaseUrl } = await loadGenerators();
const base = readBaseUrl(given['base-url']);
if (!base.ok) {
  console.error(`${base.reason}\n${USAGE}`);
  process.exit(64);
}
if (given.dist === undefined) {
  const { status } = spawnSync(process.execPath, [join(root, 'src/entries/build.mjs')], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const made = packageAddIn({
  dist: resolve(given.dist ?? join(root, 'dist')),
  out: resolve(given.out),
  baseUrl: given['base-url'],
  version,
});
if (made.ok) {
  console.log(`Wrote ${made.folder} (${made.files.length} files) and ${made.zip}, for ${made.base}`);
  console.log('HOSTING.txt says how to serve it, install.html how to install it.');
} else {
  for (const problem of made.problems) console.error(problem);
  console.error(USAGE);
  process.exitCode = 64;
}
