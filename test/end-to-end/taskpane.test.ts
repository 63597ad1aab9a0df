import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { buildSync } from 'esbuild';
import type { Browser, Page, Route } from 'playwright-core';
import { launch } from './workbench-page';

const dist = join(__dirname, '../../dist');
const TYPES: Record<string, string> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  json: 'application/json',
};
const OFFICE_JS = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';

// A budget of our own: what a person waits for when the pane opens.
it('weighs at most 250 kB packed', () => {
  expect(gzipSync(readFileSync(join(dist, 'taskpane.js'))).length).toBeLessThanOrEqual(250_000);
});

const stub = () =>
  buildSync({
    entryPoints: [join(__dirname, 'office-stub.ts')],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
  }).outputFiles[0]!.text;

/** The page as Excel would load it, from the files of the build; anything that is asked of another place is recorded. */
const openPane = async (browser: Browser, officeJs: string | undefined) => {
  const page: Page = await browser.newPage();
  const asked: string[] = [];
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.route('**/*', (route: Route) => {
    const url = new URL(route.request().url());
    if (url.href === OFFICE_JS && officeJs !== undefined)
      return route.fulfill({ contentType: TYPES.js, body: officeJs });
    const file = join(dist, url.pathname);
    if (url.origin !== 'https://localhost:3000' || !existsSync(file)) {
      asked.push(url.href);
      return route.abort();
    }
    return route.fulfill({ contentType: TYPES[file.split('.').pop() ?? ''], body: readFileSync(file) });
  });
  await page.goto('https://localhost:3000/taskpane.html');
  return { page, asked, errors };
};

describe('the page that Excel loads', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  }, 60_000);
  afterAll(async () => browser?.close());

  it('has associated every function of functions.json before Office is ready, and mounts the pane', async () => {
    const { page, asked, errors } = await openPane(browser, stub());
    await page.waitForSelector('#pane.cw-pane');
    const { functions } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as {
      functions: { id: string }[];
    };
    expect(functions.length).toBeGreaterThan(20);
    expect(await page.evaluate('associatedWhenReady')).toEqual(functions.map(({ id }) => id));
    // By hand: √(1/(1 + 0.02)) − 1 = −0.985 %.
    const shift = (await page.evaluate('callAssociated("MASS.SHIFT", 0.02)')) as number;
    expect(shift).toBeCloseTo(-0.9853, 3);
    expect(await page.evaluate('callAssociated("MASS.SHIFT", "two")')).toMatchObject({ code: '#VALUE!' });
    await page.waitForFunction("document.querySelector('#pane').innerText.length > 20");
    expect(await page.locator('#before').count()).toBe(0);
    expect(errors).toEqual([]);
    expect(asked).toEqual([]);
    await page.close();
  }, 60_000);

  it('changes nothing in the workbook by being opened', async () => {
    const { page } = await openPane(browser, stub());
    await page.waitForFunction("document.querySelector('#pane').innerText.length > 20");
    expect(await page.evaluate('stateOfExcel()')).toEqual({ undoSteps: 0, cells: 15 });
    await page.close();
  }, 60_000);

  it('says in plain words what to do when Office.js cannot be loaded', async () => {
    const { page, asked } = await openPane(browser, undefined);
    await page.waitForFunction("document.querySelector('#state').textContent !== 'Starting…'");
    const text = await page.innerText('main');
    expect(text).toContain('Office.js was not loaded.');
    expect(text).toContain('check the network connection');
    expect(asked).toEqual([OFFICE_JS]);
    await page.close();
  }, 60_000);

  it('says that it belongs in Excel when Office.js runs elsewhere', async () => {
    const elsewhere =
      'globalThis.Office = { HostType: { Excel: "Excel" }, onReady: async () => ({ host: null, platform: null }) };';
    const { page, errors } = await openPane(browser, elsewhere);
    await page.waitForFunction("document.querySelector('#state').textContent !== 'Starting…'");
    expect(await page.innerText('#state')).toBe('This page was opened outside Excel.');
    expect(errors).toEqual([]);
    await page.close();
  }, 60_000);
});
