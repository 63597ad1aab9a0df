// `npm start` on a clean clone: installs if needed, builds if something changed, serves the workbench on loopback, opens it.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
const run = (command, args) => {
  const { status } = spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (status !== 0) process.exit(status ?? 1);
};

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Channelwright needs Node 20.19 or newer; this is Node ${process.versions.node}.`);
  process.exit(1);
}
if (!existsSync(resolve(root, 'node_modules/webpack'))) {
  console.log('Installing packages (once) …');
  run(npm, ['ci', '--no-audit', '--no-fund']);
}
console.log('Building …');
run(process.execPath, [resolve(root, 'src/entries/build.mjs')]);

const { serve } = await import('./serve.mjs');
const { address: url } = await serve(Number(process.env.PORT ?? 4173));
console.log(`\nThe workbench with the demo plan is open at ${url}\nStop it with Ctrl+C.`);

const opener = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] }[process.platform] ?? ['xdg-open'];
const wantsBrowser =
  !process.env.CI && !process.argv.includes('--no-open') && (process.platform !== 'linux' || process.env.DISPLAY);
if (wantsBrowser) {
  const child = spawn(opener[0], [...opener.slice(1), url], { stdio: 'ignore', detached: true });
  child.on('error', () => {}); // no browser opener here: the printed address is enough
  child.unref();
}
