// Finds the outside programs that the tests use as judges, and installs them where Debian's packages can be had.
import { spawnSync } from 'node:child_process';
import { pythonWith } from './python.js';

const present = (command, args = ['--version']) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;
const NEEDED = [
  {
    what: 'Chromium',
    packages: ['chromium'],
    has: () =>
      Boolean(process.env.CHROMIUM_PATH) || ['chromium', 'chromium-browser', 'google-chrome'].some((c) => present(c)),
  },
  { what: 'LibreOffice Calc', packages: ['libreoffice-calc'], has: () => present('soffice') },
  { what: 'python3 with uno', packages: ['python3-uno'], has: () => Boolean(pythonWith('uno')) },
  { what: 'python3 with scipy', packages: ['python3-scipy'], has: () => Boolean(pythonWith('scipy')) },
  {
    what: 'python3 with openpyxl and lxml',
    packages: ['python3-openpyxl', 'python3-lxml'],
    has: () => Boolean(pythonWith('openpyxl', 'lxml')),
  },
  { what: 'pdftoppm', packages: ['poppler-utils'], has: () => present('pdftoppm', ['-v']) },
  { what: 'fonts', packages: ['fonts-dejavu-core', 'fonts-liberation'], has: () => present('fc-match') },
];

const missing = NEEDED.filter(({ has }) => !has());
if (missing.length > 0) {
  const packages = missing.flatMap((need) => need.packages);
  console.log(`Installing ${missing.map((need) => need.what).join(', ')} …`);
  const root = process.getuid?.() === 0;
  const apt = (...args) =>
    spawnSync(root ? 'apt-get' : 'sudo', [...(root ? [] : ['-n', 'apt-get']), ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status;
  apt('update');
  apt('install', '-y', '--no-install-recommends', ...packages);
  const still = NEEDED.filter(({ has }) => !has());
  if (still.length > 0) {
    console.error(
      `Not found: ${still.map((need) => need.what).join(', ')}. Please install them; on Debian: apt-get install ${still.flatMap((n) => n.packages).join(' ')}`,
    );
    process.exit(1);
  }
}
