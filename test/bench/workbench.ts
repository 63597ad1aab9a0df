import { writeFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoPlan } from '../../src/generate/demo-plan';
import { launch, startServer, Workbench } from '../end-to-end/workbench-page';

const SENSOR_COLUMN = 'Sensor type';
/** A channel that passes until a heavy sensor is put on its thin skin. */
const PASSING_ROW = 8;

/** Load, check and one edit in the page, and the longest time that the page could not answer. */
export const run = async (root: string): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'channelwright-bench-'));
  const server = await startServer(root);
  const browser = await launch();
  console.log('The workbench in headless Chromium, in milliseconds; "longest" is the longest task that held the page');
  console.log('  channels      load   longest     check   longest   one edit   longest');
  try {
    for (const channels of [287, 1_000]) {
      const file = join(folder, `${channels}.xlsx`);
      writeFileSync(file, await demoPlan(root, channels));
      const bench = await Workbench.open(browser, server.address);
      const timed = async (work: () => Promise<unknown>): Promise<[number, number]> => {
        await bench.page.waitForTimeout(1_000);
        await bench.page.evaluate(() => (window.longTasks = []));
        const start = Date.now();
        await work();
        const time = Date.now() - start;
        await bench.page.waitForTimeout(500);
        return [time, await bench.page.evaluate(() => Math.max(0, ...window.longTasks))];
      };
      const load = await timed(async () => {
        await bench.page.setInputFiles('#file', file);
        await bench.page.waitForFunction(
          (n) => document.querySelector('#pane')?.textContent?.includes(`${n.toLocaleString('en')} channels on`),
          channels,
        );
      });
      const check = await timed(() => bench.check());
      const content = await bench.sheet('Channels');
      const column = content.values[4]!.indexOf(SENSOR_COLUMN);
      const first = await bench.page.locator('.cw-counts').innerText();
      await bench.page.evaluate(
        (c) => window.channelwright.spreadsheet.select('Channels', { row: 8, column: c, rows: 1, columns: 1 }),
        column,
      );
      const edit = await timed(async () => {
        await bench.type('Channels', PASSING_ROW, column, 'Ce-100 triax');
        await bench.page.waitForFunction(
          (before) => document.querySelector<HTMLElement>('.cw-counts')?.innerText !== before,
          first,
          { polling: 20 },
        );
      });
      const cells = [channels, ...load, ...check, ...edit].map((n) => String(Math.round(n)));
      console.log(cells.map((cell, i) => cell.padStart([10, 10, 10, 10, 10, 11, 10][i]!)).join(''));
      await bench.page.close();
    }
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
};
