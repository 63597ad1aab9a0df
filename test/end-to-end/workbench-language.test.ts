import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

let browser: Browser;
let server: { address: string; close: () => void };

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

const wordsAsked = ({ asked }: Workbench): string[] =>
  asked.flatMap((url) => /words-\w+\.js/.exec(new URL(url, server.address).pathname) ?? []);

describe('the language of the workbench', () => {
  it('helps in German while one types when the address asks for it, and loads no other language', async () => {
    const bench = await Workbench.open(browser, `${server.address}?lang=de`);
    try {
      await bench.page.evaluate(() =>
        window.channelwright.spreadsheet.select('Plan notes', { row: 30, column: 3, rows: 1, columns: 1 }),
      );
      await bench.page.keyboard.press('F6');
      if (!(await bench.page.evaluate(() => document.activeElement?.closest('#grid') !== null)))
        await bench.page.keyboard.press('F6');
      await bench.page.keyboard.type('=CHAN.MASS.RA', { delay: 30 });
      await bench.page.getByText('alles am Punkt Hinzugefügte', { exact: false }).first().waitFor();
      await bench.page.keyboard.type('TIO(', { delay: 30 });
      await bench.page.getByText('Masse des Aufnehmers. In gram.', { exact: false }).first().waitFor();
      await bench.page.keyboard.press('Escape');
      expect(wordsAsked(bench)).toEqual(['words-de.js']);
      expect(await bench.page.textContent('#undo')).toBe('Rückgängig');
      expect(await bench.page.getAttribute('html', 'lang')).toBe('de');
      await bench.page.mouse.click(300, 300, { button: 'right' });
      await bench.page.getByText('Ausschneiden', { exact: true }).waitFor();
      expect(bench.errors).toEqual([]);
    } finally {
      await bench.page.close();
    }
  }, 90_000);

  it('loads no translation for an English reader', async () => {
    const bench = await Workbench.open(browser, `${server.address}?lang=en`);
    expect(wordsAsked(bench)).toEqual([]);
    await bench.page.close();
  }, 90_000);
});
