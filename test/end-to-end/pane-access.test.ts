import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

const AXE = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
let browser: Browser;
let server: { address: string; close: () => void };

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
}, 60_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

/** What axe finds in the pane, as "rule: element". */
const violations = async (bench: Workbench): Promise<string[]> => {
  await bench.page.evaluate(AXE);
  return bench.page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(root: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations: found } = await axe.run('#pane');
    return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
  });
};
const focused = (bench: Workbench): Promise<string | null> =>
  bench.page.evaluate(() => document.activeElement?.getAttribute('data-key') ?? null);

describe.each([
  ['beside the sheet', { width: 1280, height: 800 }],
  ['350 px wide', { width: 350, height: 800 }],
])('the pane %s', (_, size) => {
  let bench: Workbench;
  beforeAll(async () => {
    bench = await Workbench.open(browser, server.address, size);
  }, 120_000);
  afterAll(async () => bench.page.close());

  it('does the job by the keyboard alone', async () => {
    await bench.page.keyboard.press('F6');
    for (let i = 0; i < 20 && (await focused(bench)) !== 'check'; i++) await bench.page.keyboard.press('Tab');
    expect(await focused(bench)).toBe('check');
    await bench.page.keyboard.press('Enter');
    await bench.page.waitForSelector('.cw-counts', { timeout: 120_000 });
    await bench.ready();
    expect(await focused(bench)).toBe('check');
    for (let i = 0; i < 20 && !(await focused(bench))?.startsWith('row-'); i++) await bench.page.keyboard.press('Tab');
    await bench.page.keyboard.press('Enter');
    await bench.page.waitForSelector('.cw-detail');
    expect(await focused(bench)).toMatch(/^row-\d+$/);
  }, 120_000);

  it('shows where the focus is', async () => {
    const outline = await bench.page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle);
    expect(outline).toBe('solid');
  });

  it('has nothing that axe objects to, with every part open', async () => {
    for (const part of ['unread', 'across', 'columns', 'cautions']) await bench.page.click(`[data-key=${part}]`);
    await bench.page.waitForSelector('.cw-fields');
    expect(await violations(bench)).toEqual([]);
  }, 60_000);

  it('does not scroll sideways', async () => {
    const { scroll, client } = await bench.page.evaluate(() => {
      const pane = document.querySelector('#pane')!;
      return { scroll: pane.scrollWidth, client: pane.clientWidth };
    });
    expect(scroll).toBeLessThanOrEqual(client);
  });
});
