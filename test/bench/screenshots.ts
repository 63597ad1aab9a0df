import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { launch, startServer, Workbench } from '../end-to-end/workbench-page';

/** The pictures of the README and of a reviewer: `npm run bench screenshots`. */
export const run = async (root: string): Promise<void> => {
  const folder = join(root, 'assets/screenshots');
  mkdirSync(folder, { recursive: true });
  const server = await startServer(root);
  const browser = await launch();
  const bench = await Workbench.open(browser, server.address);
  const shoot = async (name: string) => {
    await bench.page.waitForTimeout(2_500); // the grid paints its marks late
    await bench.page.screenshot({ path: join(folder, `${name}.png`) });
  };
  try {
    await bench.page.waitForTimeout(1_000);
    await shoot('start');
    await bench.page.click('[data-key=hints-dismiss], .cw-first button');
    await bench.check();
    await shoot('checked');
    await bench.page.locator('.cw-row').nth(1).click();
    const toTop = (selector: string) =>
      bench.page
        .locator(selector)
        .first()
        .evaluate((element) => element.scrollIntoView({ block: 'start' }));
    await toTop('.cw-row[aria-expanded=true]');
    await shoot('failing-row');
    await bench.page.click('[data-key=rank]');
    await bench.page.waitForSelector('.cw-candidates');
    await toTop('.cw-choose');
    await shoot('choosing');
    await bench.page.click('[data-key=candidates-plots]');
    await toTop('.cw-choose .cw-plot');
    await shoot('compared');
    await bench.page.locator('.cw-row').nth(1).click();
    await bench.page.locator('.cw-row', { hasText: 'C001' }).click();
    await bench.page.click('[data-key=rank]');
    await bench.page.waitForSelector('.cw-choose .cw-message');
    await toTop('.cw-choose');
    await shoot('conflict');
    await bench.page.locator('.cw-row', { hasText: 'C001' }).click();
    await bench.page.locator('.cw-row', { hasText: 'M003' }).click();
    await bench.page.selectOption('#cw-choose-target', 'part');
    await bench.page.click('[data-key=rank]');
    await bench.page.waitForSelector('.cw-candidates', { timeout: 120_000 });
    await toTop('.cw-choose');
    await shoot('choosing-rows');
    await bench.page.click('[data-key=try]');
    await bench.page.selectOption('#cw-try-target', 'all');
    await bench.page.selectOption('#cw-try-field', 'temperatureHigh');
    await bench.page.fill('#cw-try-value', '45');
    await bench.page.click('[data-key=try-go]');
    await bench.page.waitForSelector('.cw-before-after', { timeout: 60_000 });
    await toTop('[data-key=try]');
    await shoot('tried-change');
    await bench.page.click('[data-key=try-drop]');
    await bench.page.click('[data-key=try]');
    await bench.page.locator('.cw-row', { hasText: 'M003' }).click();
    await bench.page.click('[data-key=assign]');
    await bench.page.fill('[data-key=assign-spare]', '5');
    for (const part of ['cable', 'input']) await bench.page.uncheck(`[data-key=assign-free-${part}]`);
    await bench.page.click('[data-key=assign-start]');
    await bench.page.waitForSelector('[data-key=assign-write]', { timeout: 120_000 });
    await toTop('.cw-assign-result');
    await shoot('assigned');
    await bench.page.click('[data-key=assign]');
    await bench.page.click('[data-key=columns]');
    await bench.page.selectOption('#cw-field-channels-localMass', { index: 0 });
    await bench.ready();
    await bench.page.locator('#cw-field-channels-localMass').scrollIntoViewIfNeeded();
    await shoot('corrected-column');
    await bench.page.click('#undo');
    await bench.page.evaluate(() =>
      window.channelwright.spreadsheet.select('Channels', { row: 8, column: 46, rows: 1, columns: 1 }),
    );
    await bench.page.keyboard.press('F6');
    if (!(await bench.page.evaluate(() => document.activeElement?.closest('#grid') !== null)))
      await bench.page.keyboard.press('F6');
    await bench.page.keyboard.type('=CHAN.THERMAL', { delay: 40 });
    await shoot('autocomplete');
  } finally {
    await browser.close();
    server.close();
  }
};
