import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

const SAMPLE = readFileSync(join(__dirname, '../fixtures/workbench/sample.xlsx'));

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

const focusIsIn = (selector: string) =>
  bench.page.evaluate((part) => Boolean(document.activeElement?.closest(part)), selector);
const select = (sheet: string, row: number, column: number) =>
  bench.page.evaluate(
    ([name, r, c]) => window.channelwright.spreadsheet.select(name, { row: r, column: c, rows: 1, columns: 1 }),
    [sheet, row, column] as const,
  );
const focusGrid = async () => {
  if (!(await focusIsIn('#grid'))) await bench.page.keyboard.press('F6');
  if (!(await focusIsIn('#grid'))) await bench.page.keyboard.press('F6');
};
const spoken = (text: string) =>
  bench.page.waitForFunction((part) => document.getElementById('speaker')?.textContent?.includes(part), text);
const ask = (path: string, headers = {}) =>
  new Promise<{ status: number; headers: NodeJS.Dict<string | string[]> }>((resolve, reject) =>
    request(new URL(server.address).origin, { path, headers }, (response) => {
      response.resume();
      resolve({ status: response.statusCode ?? 0, headers: response.headers });
    })
      .on('error', reject)
      .end(),
  );

describe('the server of the workbench', () => {
  it('lets scripts come from here only, and no page put it in a frame', async () => {
    const { headers } = await ask('/');
    const policy = String(headers['content-security-policy']);
    expect(policy.split('; ')).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self'",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
      ]),
    );
  });

  it.each(['/../package.json', '/%2e%2e/package.json', '/..%2fpackage.json', '/nothing'])(
    'gives nothing for %s',
    async (path) => expect((await ask(path)).status).toBe(404),
  );

  it('does not answer to another name for this machine', async () => {
    expect((await ask('/', { host: 'elsewhere.example' })).status).toBe(403);
  });
});

describe('the workbench page', () => {
  it('runs no script that is written into it', async () => {
    const ran = await bench.page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.wasRun = true';
      document.head.append(script);
      return 'wasRun' in window;
    });
    expect(ran).toBe(false);
    // The refusal itself is reported as an error; it is the only one.
    expect(bench.errors.splice(0).every((text) => text.includes('Content Security Policy'))).toBe(true);
  });

  it('moves between grid and pane with F6 and Ctrl+F6', async () => {
    await focusGrid();
    expect(await focusIsIn('#grid')).toBe(true);
    await bench.page.keyboard.press('F6');
    expect(await focusIsIn('#pane')).toBe(true);
    await bench.page.keyboard.press('Control+F6');
    expect(await focusIsIn('#grid')).toBe(true);
  });

  it('says the active cell', async () => {
    await select('Channels', 5, 0);
    await focusGrid();
    await bench.page.keyboard.press('ArrowDown');
    await spoken('A7, ');
  });

  it('offers our functions with their descriptions while one types, then the arguments', async () => {
    await select('Plan notes', 30, 3);
    await spoken('D31');
    await focusGrid();
    await bench.page.keyboard.type('=CHAN.MASS.RA', { delay: 30 });
    await bench.page.getByText('everything added at the point', { exact: false }).first().waitFor();
    await bench.page.keyboard.type('TIO(', { delay: 30 });
    await bench.page.getByText('sensorMass', { exact: false }).first().waitFor();
    await bench.page.keyboard.type('1,2,3,100)', { delay: 30 });
    // The grid's editor is a moment behind the keys of a machine.
    await bench.page.waitForTimeout(300);
    await bench.page.keyboard.press('Enter');
    const value = async () => {
      const { values, row, column } = await bench.sheet('Plan notes');
      return values[30 - row]?.[3 - column];
    };
    const end = Date.now() + 10_000;
    while (typeof (await value()) !== 'number' && Date.now() < end) await bench.page.waitForTimeout(50);
    // (1 + 2 + 3) gram on 100 gram.
    expect(await value()).toBeCloseTo(0.06, 12);
  }, 60_000);

  it('shows where a file may be dropped while one is over the page', async () => {
    const transfer = await bench.page.evaluateHandle(() => {
      const data = new DataTransfer();
      data.items.add(new File(['x'], 'x.xlsx'));
      return data;
    });
    await bench.page.dispatchEvent('body', 'dragenter', { dataTransfer: transfer });
    expect(await bench.page.isVisible('#drop')).toBe(true);
    await bench.page.dispatchEvent('body', 'dragleave', { dataTransfer: transfer });
    expect(await bench.page.isVisible('#drop')).toBe(false);
  });

  it.each([
    ['list.csv', Buffer.from('Channel;Point'), 'not a workbook'],
    ['old.xls', Buffer.from('d0cf11e0a1b11ae1000000', 'hex'), 'old .xls'],
    ['cut.xlsx', SAMPLE.subarray(0, 3000), 'damaged'],
  ])('keeps the open workbook and says why it did not open %s', async (name, bytes, words) => {
    const before = await bench.page.innerText('#file-name');
    await bench.drop(name, bytes);
    await bench.page.waitForFunction((text) => document.getElementById('message')?.textContent?.includes(text), words);
    expect(await bench.page.innerText('#message-text')).toMatch(/\.xlsx/);
    expect(await bench.page.innerText('#file-name')).toBe(before);
    await bench.page.click('#message-close');
    expect(await bench.page.isVisible('#message')).toBe(false);
  });

  it('opens a dropped workbook, and speaks a row’s verdict', async () => {
    await bench.drop('sample.xlsx', SAMPLE);
    await bench.page.waitForFunction(() => document.querySelector('#file-name')?.textContent === 'sample.xlsx');
    await bench.page.waitForSelector('#cover', { state: 'hidden' });
    await bench.page.evaluate(() =>
      window.channelwright.spreadsheet.apply([{ kind: 'cells', sheet: 'Plan', row: 2, column: 9, cells: [['FAIL']] }], {
        label: 'test',
      }),
    );
    await select('Plan', 1, 0);
    await focusGrid();
    await bench.page.keyboard.press('ArrowDown');
    await spoken('A3, P3, row verdict FAIL');
  }, 60_000);

  it('keeps grid and pane usable in a narrow window', async () => {
    await bench.page.setViewportSize({ width: 560, height: 800 });
    const boxes = await bench.page.evaluate(() =>
      ['grid', 'pane'].map((id) => document.getElementById(id)!.getBoundingClientRect().toJSON()),
    );
    for (const box of boxes) {
      expect(box.width).toBeGreaterThan(500);
      expect(box.height).toBeGreaterThan(200);
    }
    await bench.page.setViewportSize({ width: 1280, height: 800 });
    expect(await bench.page.evaluate(() => document.getElementById('pane')!.getBoundingClientRect().width)).toBe(360);
  });

  it('names every control of the grid', async () => {
    const nameless = await bench.page.evaluate(
      () =>
        [...document.querySelectorAll('#grid button, #grid input, #grid a')].filter(
          (each) => !each.getAttribute('aria-label') && !each.getAttribute('title') && !each.textContent?.trim(),
        ).length,
    );
    expect(nameless).toBe(0);
  });

  it('asked nothing of any other place, and had no error', () => {
    expect(bench.asked.filter((url) => !url.startsWith(server.address) && !/^(data|blob):/.test(url))).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
