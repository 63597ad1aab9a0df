import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

const picture = async (name: string): Promise<void> => {
  if (process.env.SHARE_PICTURES)
    await bench.page.screenshot({ path: join(process.env.SHARE_PICTURES, `${name}.png`) });
};
const press = (key: string) => bench.page.click(`[data-key="${key}"]`);

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('the copy for a customer in the pane', () => {
  it('leaves out what was ticked and nothing else, in the language asked, without asking the network', async () => {
    await press('share');
    const remarks = bench.page.locator('.cw-tick', { hasText: 'Channels: Remarks' }).locator('input');
    expect(await remarks.isChecked()).toBe(false);
    await remarks.check();
    await bench.page.selectOption('[data-key="share-language"]', 'de');
    await press('share-said');
    await bench.page.fill('[data-key="share-revision"]', 'R-417');
    await bench.page.fill('[data-key="share-checked"]', '=B. Prüfer & Co');
    await picture('chosen');
    const [file] = await Promise.all([bench.page.waitForEvent('download'), press('make-share')]);
    expect(file.suggestedFilename()).toBe('Demo plan - für den Kunden.xlsx');
    const parts = Object.values(unzipSync(readFileSync(await file.path()))).map((bytes) => strFromU8(bytes));
    const holds = (text: string): boolean => parts.some((part) => part.includes(text));
    expect(['Kanalurteil', 'Kanal W001: FAIL', 'Prüfübersicht', 'Ce-10 mini', 'Revision R-417', '=B. Prüfer &amp; Co'].filter(holds)).toHaveLength(6); // prettier-ignore
    expect(['first idea: one sensor', '_xldudf', 'Channel verdict'].filter(holds)).toEqual([]);
    await bench.page.waitForSelector('[data-key="share-file"]');
    await picture('made');
    const elsewhere = bench.asked.filter((url) => !url.startsWith(server.address) && !/^(blob|data):/.test(url));
    expect(elsewhere).toEqual([]);
  }, 120_000);
});
