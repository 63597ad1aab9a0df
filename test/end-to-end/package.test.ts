import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { addressesIn } from '../../src/generate/package-manifest';
import { launch, Workbench } from './workbench-page';

const root = join(__dirname, '../..');
const BASE = 'https://plans.example.org/tools/cw/';
const OFFICE_JS = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';
const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  json: 'application/json',
  svg: 'image/svg+xml',
  png: 'image/png',
  wasm: 'application/wasm',
};

const folder = mkdtempSync(join(tmpdir(), 'channelwright-package-'));
const out = join(folder, 'cw');
let browser: Browser;
beforeAll(async () => {
  const script = join(root, 'src/entries/package.mjs');
  execFileSync(process.execPath, [script, '--base-url', BASE, '--out', out, '--dist', join(root, 'dist')]);
  browser = await launch();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens a page of the package at the address that it was made for, and notes what is asked of any other place. */
const visit = async (path: string, width = 1280): Promise<{ page: Page; foreign: string[]; errors: string[] }> => {
  const page = await browser.newPage({ viewport: { width, height: 800 } });
  const foreign: string[] = [];
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.route('**/*', (route) => {
    const url = new URL(route.request().url());
    const file = join(out, url.pathname.slice(new URL(BASE).pathname.length));
    if (!url.href.startsWith(BASE) || !existsSync(file)) {
      foreign.push(url.href);
      return route.abort();
    }
    return route.fulfill({ contentType: TYPES[file.split('.').pop() ?? ''], body: readFileSync(file) });
  });
  await page.goto(BASE + path);
  return { page, foreign, errors };
};

describe('the packaged build, at its address', () => {
  it('holds what its manifest names, bundles in one folder', () => {
    const addresses = addressesIn(readFileSync(join(out, 'manifest.xml'), 'utf8'));
    expect(addresses.length).toBeGreaterThanOrEqual(11);
    for (const address of addresses)
      expect([address, existsSync(join(out, address.slice(BASE.length)))]).toEqual([address, true]);
    const beside = readdirSync(out).filter((name) => /\.(js|css|json|wasm)$/.test(name));
    expect(beside).toEqual(['functions.json', 'highs.wasm', 'solver.js']);
  });

  it('carries its licence and those of every package in its bundles', () => {
    expect(readFileSync(join(out, 'LICENSE.txt'), 'utf8')).toContain('Apache License');
    const notices = readFileSync(join(out, 'third-party.txt'), 'utf8').split(`\n${'-'.repeat(80)}\n\n`);
    const names = notices.map((notice) => notice.split(' ')[0]);
    expect(names).toEqual(expect.arrayContaining(['@univerjs/core', 'react', 'mathjs', 'highs', 'rxjs']));
    const permissive =
      /^\S+ \S+ \((MIT|Apache-2\.0|ISC|BSD-[23]-Clause|0BSD)\)|^\S+ \S+ \(see below\)\n\nApache License/;
    expect(notices.filter((notice) => !permissive.test(notice)).map((notice) => notice.split('\n')[0])).toEqual([]);
  });

  it('opens the workbench with the demo plan and checks it', async () => {
    const { page, foreign, errors } = await visit('workbench.html');
    const ready = '.cw-pane button.primary:not([disabled], [aria-disabled])';
    await page.waitForSelector(ready, { timeout: 60_000 });
    await page.click('[data-key=check]');
    await page.waitForSelector('.cw-counts', { timeout: 120_000 });
    expect(await page.innerText('#pane')).toContain('FAIL');
    expect(foreign.filter((url) => !/^(data|blob):/.test(url))).toEqual([]);
    expect(errors).toEqual([]);
    await page.close();
  }, 180_000);

  it('asks only for Office.js from elsewhere when the pane is opened outside Excel', async () => {
    const { page, foreign } = await visit('taskpane.html');
    await page.waitForFunction("document.querySelector('#state').textContent !== 'Starting…'");
    expect(foreign).toEqual([OFFICE_JS]);
    await page.close();
  });

  it.each(['help.html', 'help.de.html', 'help.fr.html', 'install.html', 'install.de.html', 'install.fr.html'])(
    'shows %s in a narrow pane, from its own place only',
    async (path) => {
      const { page, foreign, errors } = await visit(path, 350);
      expect(await page.locator('h1').count()).toBe(1);
      const wide = await page.evaluate('document.documentElement.scrollWidth - innerWidth');
      expect([wide, foreign, errors]).toEqual([0, [], []]);
      await page.close();
    },
  );

  it('unfolds the function that a link names', async () => {
    const { page } = await visit('help.html#MASS.RATIO');
    expect(await page.locator('[id="MASS.RATIO"] dt').first().isVisible()).toBe(true);
    expect(await page.locator('[id="MASS.SHIFT"] dt').first().isVisible()).toBe(false);
    await page.close();
  });
});

describe('what Excel runs', () => {
  it('has no way to ask for anything in the worksheet functions', () => {
    const text = readFileSync(join(root, 'dist/functions.js'), 'utf8');
    expect(text).not.toMatch(/\b(fetch\(|XMLHttpRequest|importScripts)/);
  });

  it.each(['functions.js', 'taskpane.js'])('%s has no channel to send by, and names no address', (name) => {
    const text = readFileSync(join(root, 'dist', name), 'utf8');
    expect(text.length).toBeGreaterThan(10_000);
    expect(text).not.toMatch(/\b(sendBeacon|WebSocket|EventSource|RTCPeerConnection)/);
    const addresses = [...text.matchAll(/https?:\/\/[^\s"'`)<>\\]+/g)].map(([address]) => address);
    // Names of XML vocabularies are spelt as addresses and never asked for.
    expect(addresses.filter((address) => !address.startsWith('http://www.w3.org/'))).toEqual([]);
  });
});

describe('the workbench served on this machine', () => {
  it('keeps to its origin when help and examples are followed', async () => {
    const { startServer } = await import('./workbench-page');
    const server = await startServer(root);
    try {
      const bench = await Workbench.open(browser, server.address);
      const [popup] = await Promise.all([bench.page.waitForEvent('popup'), bench.page.click('.bar-links a')]);
      const asked: string[] = [];
      popup.on('request', (request) => asked.push(request.url()));
      await popup.waitForSelector('h1');
      expect(await popup.innerText('h1')).toBe('Channelwright help');
      const [download] = await Promise.all([bench.page.waitForEvent('download'), bench.page.click('.bar-links a + a')]);
      expect(download.suggestedFilename()).toBe('examples.xlsx');
      const own = (url: string) => url.startsWith(server.address) || /^(data|blob):/.test(url);
      expect([...bench.asked, ...asked].filter((url) => !own(url))).toEqual([]);
      await bench.page.close();
    } finally {
      server.close();
    }
  }, 120_000);
});
