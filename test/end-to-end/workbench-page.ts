import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import type { SheetContent, Spreadsheet } from '../../src/workbook/port';

const CHROMIUM = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

export const launch = (): Promise<Browser> => {
  const executablePath = CHROMIUM.find((path) => path !== undefined && existsSync(path));
  if (!executablePath) throw new Error('No Chromium found; set CHROMIUM_PATH.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
};

/** Serves dist/ on loopback by the server that users get. It is an ES module, which Jest would have to transform. */
export const startServer = async (root = join(__dirname, '../..')): Promise<{ address: string; close: () => void }> => {
  const { spawn } = await import('node:child_process');
  const child = spawn(process.execPath, [join(root, 'src/entries/serve.mjs'), '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await new Promise<string>((resolve, reject) => {
    child.once('exit', () => reject(new Error('The server ended before it listened.')));
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(said);
      if (found) resolve(found[0]);
    });
  });
  return { address, close: () => void child.kill() };
};

declare global {
  interface Window {
    channelwright: { spreadsheet: Spreadsheet };
    longTasks: number[];
  }
}

/** The workbench as a person has it in front of them. */
export class Workbench {
  readonly errors: string[] = [];
  readonly asked: string[] = [];

  private constructor(readonly page: Page) {}

  static async open(browser: Browser, address: string, size = { width: 1280, height: 800 }): Promise<Workbench> {
    const page = await browser.newPage({ viewport: size });
    const bench = new Workbench(page);
    page.on('pageerror', (error) => bench.errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') bench.errors.push(message.text());
    });
    page.on('request', (request) => bench.asked.push(request.url()));
    await page.addInitScript(() => {
      window.longTasks = [];
      new PerformanceObserver((list) => list.getEntries().forEach((e) => window.longTasks.push(e.duration))).observe({
        type: 'longtask',
      });
    });
    await page.goto(address);
    await bench.ready();
    return bench;
  }

  /** Until the pane has read the open workbook. */
  ready(): Promise<unknown> {
    return this.page.waitForSelector('.cw-pane button.primary:not([disabled], [aria-disabled])', { timeout: 60_000 });
  }

  async check(): Promise<void> {
    await this.page.click('[data-key=check]');
    await this.page.waitForSelector('.cw-counts', { timeout: 120_000 });
    await this.ready();
  }

  sheet(name: string): Promise<SheetContent> {
    return this.page.evaluate((sheet) => window.channelwright.spreadsheet.readSheet(sheet), name);
  }

  /** Goes to the cell and types, as hands would. */
  async type(sheet: string, row: number, column: number, text: string): Promise<void> {
    await this.page.evaluate(
      ([name, r, c]) => window.channelwright.spreadsheet.select(name, { row: r, column: c, rows: 1, columns: 1 }),
      [sheet, row, column] as const,
    );
    await this.page.keyboard.press('F6');
    const inGrid = await this.page.evaluate(() => document.activeElement?.closest('#grid') !== null);
    if (!inGrid) await this.page.keyboard.press('F6');
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
  }

  pane(): Promise<string> {
    return this.page.innerText('#pane');
  }

  async drop(name: string, bytes: Buffer): Promise<void> {
    const transfer = await this.page.evaluateHandle(
      ([file, base64]) => {
        const data = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
        const items = new DataTransfer();
        items.items.add(new File([data], file));
        return items;
      },
      [name, bytes.toString('base64')] as const,
    );
    for (const event of ['dragenter', 'dragover', 'drop'])
      await this.page.dispatchEvent('body', event, { dataTransfer: transfer });
  }
}
