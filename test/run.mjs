// `npm test` on a clean clone: installs packages and what the tests need, builds, runs unit and browser tests,
// and closes with one line that sums both.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
const run = (command, args, options = {}) =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32', ...options }).status ??
  1;
const must = (command, args, why) => {
  if (run(command, args) === 0) return;
  console.error(`${why}\n0 passed, 1 failed`);
  process.exit(1);
};

if (!existsSync(resolve(root, 'node_modules/webpack')) || process.env.CI)
  must(npm, ['ci', '--no-audit', '--no-fund'], 'Installing the packages failed.');
must(
  process.execPath,
  [resolve(root, 'test/system-packages.mjs')],
  'The outside programs that the tests need are not all here.',
);
must(process.execPath, [resolve(root, 'src/entries/build.mjs')], 'The build failed.');

let passed = 0;
let failed = 0;
const jest = (name, args) => {
  const file = resolve(root, `test/output-${name}.json`);
  rmSync(file, { force: true });
  run(
    process.execPath,
    [resolve(root, 'node_modules/jest/bin/jest.js'), ...args, '--json', `--outputFile=${file}`, '--silent=false'],
    {
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  );
  if (!existsSync(file)) {
    failed += 1;
    return;
  }
  const report = JSON.parse(readFileSync(file, 'utf8'));
  rmSync(file, { force: true });
  passed += report.numPassedTests;
  failed += report.numFailedTests + report.numRuntimeErrorTestSuites;
  // A test that does not run is not a test that holds.
  failed += report.numPendingTests + report.numTodoTests;
};
const checked = run(npm, ['run', '--silent', 'static']);
if (checked === 0) passed += 1;
else failed += 1;
jest('unit', ['--testPathIgnorePatterns', 'end-to-end']);
jest('browser', ['--runInBand', 'end-to-end']);

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 1 ? 0 : 1);
