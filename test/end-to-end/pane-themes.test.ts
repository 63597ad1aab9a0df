import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

const AXE = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const SHOTS = process.env.PANE_SHOTS;
const WIDTHS = [320, 350, 450];
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

/** What axe finds on the page but for the grid, which is not ours, as "rule: element". */
const violations = async ({ page }: Workbench): Promise<string[]> => {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(at: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations: found } = await axe.run({ exclude: [['#grid']] });
    return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
  });
};

describe.each([
  ['light', { colorScheme: 'light', forcedColors: 'none' }],
  ['dark', { colorScheme: 'dark', forcedColors: 'none' }],
  ['forced colours', { colorScheme: 'dark', forcedColors: 'active' }],
] as const)('the pane in %s', (name, media) => {
  let bench: Workbench;
  beforeAll(async () => {
    bench = await Workbench.open(browser, server.address, { width: 350, height: 800 });
    await bench.page.emulateMedia(media);
    await bench.page.click('[data-key=check]');
    await bench.page.waitForSelector('.cw-counts', { timeout: 120_000 });
    await bench.ready();
    await bench.page.click('[data-key=remedies]');
    for (const key of ['find', 'look', 'state']) {
      await bench.page.click(`[data-key=remedy-${key}]`);
      await bench.page.waitForSelector(`[data-key=remedy-${key}]:not([aria-disabled])`);
    }
    await bench.page.waitForSelector('.cw-report');
  }, 120_000);
  afterAll(async () => bench?.page.close());

  it('has the theme that the reader prefers', async () => {
    const theme = await bench.page.evaluate(() => document.documentElement.dataset.theme);
    expect(theme).toBe(media.colorScheme);
  });

  it.each(WIDTHS)(
    'has nothing that axe objects to at %d px, and does not scroll sideways',
    async (width) => {
      await bench.page.setViewportSize({ width, height: 800 });
      if (SHOTS) {
        for (const [part, key] of [
          ['top', 'check'],
          ['remedies', 'remedies'],
          ['state', 'remedy-state'],
        ]) {
          await bench.page
            .locator(`[data-key=${key}]`)
            .evaluate((element) => element.scrollIntoView({ block: 'center' }));
          await bench.page.screenshot({ path: `${SHOTS}/${name.replace(' ', '-')}-${width}-${part}.png` });
        }
      }
      expect(await violations(bench)).toEqual([]);
      const wide = await bench.page.evaluate(() => {
        const pane = document.querySelector('#pane')!;
        return pane.scrollWidth - pane.clientWidth;
      });
      expect(wide).toBeLessThanOrEqual(0);
    },
    60_000,
  );

  it('lets the keyboard through every control in the order of the page and out again, with the focus seen', async () => {
    await bench.page.locator('#pane').focus();
    const order: string[] = [];
    const unseen: string[] = [];
    for (let i = 0; i < 400; i++) {
      await bench.page.keyboard.press('Tab');
      const at = await bench.page.evaluate(() => {
        const element = document.activeElement!;
        if (!document.querySelector('#pane')!.contains(element)) return undefined;
        const style = getComputedStyle(element);
        return { key: element.getAttribute('data-key') ?? element.tagName, seen: style.outlineStyle !== 'none' };
      });
      if (!at) break;
      order.push(at.key);
      if (!at.seen) unseen.push(at.key);
    }
    expect(order.length).toBeLessThan(400);
    expect(unseen).toEqual([]);
    const drawn = await bench.page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('#pane :is(button, summary, select, textarea, input)')]
        .filter((element) => element.getClientRects().length > 0 && !(element as HTMLButtonElement).disabled)
        .map((element) => element.getAttribute('data-key') ?? element.tagName),
    );
    expect(order).toEqual(drawn);
  }, 60_000);
});

describe.each(['de', 'fr'])('the pane in the language %s', (language) => {
  let bench: Workbench;
  beforeAll(async () => {
    bench = await Workbench.open(browser, `${server.address}?lang=${language}`, { width: 350, height: 800 });
    await bench.page.click('[data-key=check]');
    await bench.page.waitForSelector('.cw-counts', { timeout: 120_000 });
    await bench.ready();
    await bench.page.click('.cw-row >> nth=0');
    await bench.page.waitForSelector('.cw-detail');
  }, 120_000);
  afterAll(async () => bench?.page.close());

  it.each(WIDTHS)('has nothing that axe objects to at %d px, and no word that does not fit', async (width) => {
    await bench.page.setViewportSize({ width, height: 800 });
    if (SHOTS) await bench.page.screenshot({ path: `${SHOTS}/${language}-${width}.png` });
    expect(await violations(bench)).toEqual([]);
    const wide = await bench.page.evaluate(() => {
      const pane = document.querySelector('#pane')!;
      return pane.scrollWidth - pane.clientWidth;
    });
    expect(wide).toBeLessThanOrEqual(0);
  });

  it('says the reasons and the frame in that language', async () => {
    const text = (await bench.page.textContent('#pane'))!.replaceAll('\u00a0', ' ');
    const words =
      language === 'de'
        ? ['287 Kanäle auf', 'Aussteuerreserve −2,3 dB', 'Vorgabe']
        : ['287 voies sur', 'Réserve −2,3 dB', 'par défaut'];
    for (const word of words) expect(text).toContain(word);
    expect(text).not.toMatch(/Headroom|Signal to noise|at most|not known|Check again/);
    expect(await bench.page.getAttribute('#pane', 'lang')).toBe(language);
  });
});
