import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

const listFile = (name: string): Buffer => readFileSync(join(__dirname, '../fixtures/lists/files', `${name}.xlsx`));
const HIGHEST = '#cw-field-channels-levelHigh';
const GROUP = '#cw-field-channels-group';
/** Two columns say "Max level [g pk]": B and E. */
const COLUMN_E = '4';
const COLUMN_B = '1';

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

const openColumns = async (): Promise<void> => {
  const section = bench.page.locator('details', { has: bench.page.locator('[data-key=columns]') });
  if ((await section.first().getAttribute('open')) === null) await bench.page.click('[data-key=columns]');
  await bench.page.waitForSelector('.cw-fields');
  for (const idle of await bench.page.locator('details.cw-idle').all())
    if ((await idle.getAttribute('open')) === null) await idle.locator('summary').click();
};
const dropped = async (name: string, bytes: Buffer, sheet: string): Promise<void> => {
  await bench.drop(name, bytes);
  await bench.page.waitForFunction(
    (text) => document.querySelector('#pane')?.textContent?.includes(text),
    `on “${sheet}”`,
  );
  await bench.ready();
};
const screenshot = async (name: string): Promise<void> => {
  if (process.env.LIST_PICTURES) await bench.page.screenshot({ path: join(process.env.LIST_PICTURES, `${name}.png`) });
};

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('the columns of a foreign list', () => {
  it('are all found in a list that says what it means', async () => {
    await dropped('good.xlsx', listFile('16-it-square-number'), 'Plan');
    await openColumns();
    expect(await bench.page.locator(HIGHEST).inputValue()).not.toBe('');
    await screenshot('good');
  }, 90_000);

  it('are a question where two say the same, and stay as corrected when the saved copy is opened again', async () => {
    await dropped('hard.xlsx', listFile('trap-two-highest'), 'List');
    await openColumns();
    expect(await bench.page.locator(HIGHEST).inputValue()).toBe('');
    await screenshot('hard');
    await bench.page.selectOption(HIGHEST, COLUMN_E);
    await bench.page.waitForFunction(
      ([id, v]) => document.querySelector<HTMLSelectElement>(id!)?.value === v,
      [HIGHEST, COLUMN_E],
    );
    await openColumns();
    await bench.page.selectOption(GROUP, COLUMN_B);
    await bench.page.waitForFunction(
      ([id, v]) => document.querySelector<HTMLSelectElement>(id!)?.value === v,
      [GROUP, COLUMN_B],
    );
    const [download] = await Promise.all([
      bench.page.waitForEvent('download'),
      bench.page.click('[data-key=save], #save'),
    ]);
    const saved = readFileSync(await download.path());
    await dropped('good.xlsx', listFile('16-it-square-number'), 'Plan');
    await dropped('again.xlsx', saved, 'List');
    await openColumns();
    expect(await bench.page.locator(HIGHEST).inputValue()).toBe(COLUMN_E);
    expect(await bench.page.locator(GROUP).inputValue()).toBe(COLUMN_B);
    await screenshot('again');
  }, 120_000);

  it('of further sheets are named as not read', async () => {
    await dropped('parts.xlsx', listFile('trap-several-sheets'), 'Wing');
    await bench.page.click('[data-key=unread]');
    const unread = await bench.page.locator('.cw-findings').first().innerText();
    expect(unread).toContain('Boom');
    expect(unread).toContain('Tail');
    await screenshot('parts');
  }, 90_000);
});
