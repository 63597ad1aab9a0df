import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Download } from 'playwright-core';
import { NOTE_WORDS } from '../../src/workbook/plan-notes/words';
import { launch, startServer, Workbench } from './workbench-page';

const LIST = readFileSync(join(__dirname, '../fixtures/lists/files/trap-two-highest.xlsx'));
const HIGHEST = '#cw-field-channels-levelHigh';
/** Two columns say "Max level [g pk]": B and E. */
const COLUMN_E = '4';

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

const picture = async (name: string): Promise<void> => {
  if (process.env.PAPER_PICTURES)
    await bench.page.screenshot({ path: join(process.env.PAPER_PICTURES, `${name}.png`) });
};
const downloaded = async (press: () => Promise<void>): Promise<{ file: Download; text: string }> => {
  const [file] = await Promise.all([bench.page.waitForEvent('download'), press()]);
  return { file, text: readFileSync(await file.path(), 'utf8') };
};
const press = (key: string) => bench.page.click(`[data-key="${key}"]`);
const said = (text: string) =>
  bench.page.waitForFunction((part) => document.querySelector('#pane')?.textContent?.includes(part), text);
const dropList = async (): Promise<void> => {
  await bench.drop('list.xlsx', LIST);
  await said('on “List”');
  await bench.ready();
  if (!(await bench.page.locator(HIGHEST).isVisible())) await press('columns');
  await bench.page.waitForSelector('.cw-fields');
  for (const idle of await bench.page.locator('details.cw-idle').all())
    if ((await idle.getAttribute('open')) === null) await idle.locator('summary').click();
};

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  await bench.check();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('report and notes in the pane', () => {
  it('hand over a page to print and Markdown, in the language asked, and ask nothing of the network for it', async () => {
    await press('papers');
    const page = await downloaded(() => press('report'));
    expect(page.file.suggestedFilename()).toBe('Demo plan - Report.html');
    expect(page.text).toMatch(/<h1>[^<]+: Demo plan<\/h1>/);
    expect(page.text).toContain('287 channels');
    expect(page.text).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    await bench.page.waitForSelector('[data-key="report-file"]');
    await picture('report');
    await bench.page.selectOption('[data-key="report-kind"]', 'markdown');
    await bench.page.selectOption('[data-key="report-language"]', 'de');
    const markdown = await downloaded(() => press('report'));
    expect(markdown.file.suggestedFilename()).toBe('Demo plan - Bericht.md');
    expect(markdown.text).toContain('## Annahmen');
    const elsewhere = bench.asked.filter((url) => !url.startsWith(server.address) && !/^(blob|data):/.test(url));
    expect(elsewhere).toEqual([]);
  }, 60_000);

  it('open the report in a window of its own, with its looks', async () => {
    const [window] = await Promise.all([bench.page.waitForEvent('popup'), press('report-open')]);
    await window.waitForLoadState();
    expect(await window.textContent('body')).toContain('Annahmen');
    await window.close();
  }, 30_000);

  it('fill the notes of the plan, once, and one undo takes them back', async () => {
    const before = (await bench.sheet('Plan notes')).values;
    await press('notes');
    await said('are filled');
    const filled = (await bench.sheet('Plan notes')).values;
    expect(filled.slice(0, before.length)).toEqual(before.map((line) => expect.arrayContaining([...line]) as unknown));
    expect(filled.flat()).toContain(NOTE_WORDS.en.begin);
    await picture('notes');
    await press('notes');
    await said('say all of it already');
    await bench.page.click('#undo');
    await bench.page.waitForFunction(
      async (begin) => !(await window.channelwright.spreadsheet.readSheet('Plan notes')).values.flat().includes(begin),
      NOTE_WORDS.en.begin,
    );
    expect((await bench.sheet('Plan notes')).values).toEqual(before);
  }, 60_000);

  it('make a sheet of one channel from its row', async () => {
    await bench.page.click('.cw-row >> nth=0');
    await press('channel-sheet');
    await said('shows this channel');
    const name = /“(Channel [^”]+)” shows this channel/.exec(await bench.pane())?.[1] ?? '';
    const cells = (await bench.sheet(name)).values.flat();
    expect(cells[0]).toBe(name);
    expect(cells).toEqual(expect.arrayContaining(['Function and equation', 'As typed in the list']));
    expect(cells.filter((cell) => String(cell).startsWith('CHAN.')).length).toBeGreaterThan(5);
    await picture('channel-sheet');
  }, 60_000);
});

describe('corrections of a list', () => {
  it('are saved as a file, and the next list of the same lab starts with them', async () => {
    await dropList();
    await press('mapping-save');
    await said('Nothing was corrected here');
    await bench.page.selectOption(HIGHEST, COLUMN_E);
    await said('as you said');
    await bench.ready();
    const { file, text } = await downloaded(() => press('mapping-save'));
    expect(JSON.parse(text)).toEqual({
      channels: { fields: { levelHigh: { heading: 'Max level [g pk]', column: 'E' } } },
    });
    await dropList();
    expect(await bench.page.inputValue(HIGHEST)).toBe('');
    await bench.page.setInputFiles('[data-key="mapping-file"]', await file.path());
    await said('1 correction taken');
    await picture('mapping');
    expect(await bench.page.inputValue(HIGHEST)).toBe(COLUMN_E);
  }, 90_000);

  it('that cannot be read change nothing and say why', async () => {
    const load = (text: string) =>
      bench.page.setInputFiles('[data-key="mapping-file"]', {
        name: 'lab.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
    await load('Amax;Amin');
    await said('it is not JSON');
    await load('{"channels": {"fields": {"levelHihg": "Amax"}}}');
    await said('read levelHihg, expected one of');
    expect(bench.errors).toEqual([]);
  }, 30_000);
});
