import { execFileSync } from 'node:child_process';
import type { FUniver } from '@univerjs/core/lib/facade';
import type {} from '@univerjs/sheets/lib/facade';
import { unzipSync } from 'fflate';
import type { SheetContent } from '../../src/workbook/port';
import { pythonWith } from '../python';
import type { Workbench } from './workbench-page';

interface Tools {
  bench(): Workbench;
  original(): Uint8Array;
  openFile(name: string, bytes: Uint8Array): Promise<void>;
  takeDownload(press: () => Promise<unknown>): Promise<{ name: string; bytes: Uint8Array; path: string }>;
  message(): Promise<string>;
  read(bytes: Uint8Array, sheet: string): SheetContent;
}

/** What openpyxl reads of a saved copy, as JSON. */
const SCRIPT = `
import json, sys
from openpyxl import load_workbook
book = load_workbook(sys.argv[1])
plan, summary, mine = book['Channels'], book['Check summary'], book['Mine']
print(json.dumps({
    'sheets': book.sheetnames,
    'active': book.active.title,
    'names': [each.name for each in book.defined_names.definedName] if hasattr(book.defined_names, 'definedName') else list(book.defined_names),
    'titles': plan.print_title_rows,
    'plan': [len(plan._charts), len(plan.data_validations.dataValidation)],
    'summary': [len(summary._charts), summary.page_setup.orientation, summary.sheet_view.showGridLines],
    'heading': [summary['A1'].font.b, summary['A1'].font.color.rgb, summary['A1'].border.bottom.style],
    'mine': [[cell.value for cell in row] for row in mine['A1:B3']],
    'bold': [mine['A1'].font.b, mine['A2'].font.b],
    'format': mine['B2'].number_format,
    'width': round(mine.column_dimensions['A'].width),
    'merged': [str(each) for each in mine.merged_cells.ranges],
}))
`;
const python = pythonWith('openpyxl') ?? 'python3';
const text = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

export const describeAddedSheets = ({ bench, original, openFile, takeDownload, message, read }: Tools): void => {
  const press = (key: string) => bench().page.click(`[data-key="${key}"]`);
  const said = (words: string) =>
    bench().page.waitForFunction((part) => document.querySelector('#pane')?.textContent?.includes(part), words);
  /** A person's own sheet, put first, with a value, a formula, looks, a width and a merge. */
  const addMine = () =>
    bench().page.evaluate(() => {
      const { grid } = window.channelwright as unknown as { grid: FUniver };
      const workbook = grid.getActiveWorkbook()!;
      const sheet = workbook.create('Mine', 20, 10);
      sheet.getRange(0, 0, 2, 2).setValues([
        [{ v: 'Budget', s: { bl: 1 } }, { v: '' }],
        [{ v: 'Sum of levels' }, { f: '=SUM(Channels!E2:E3)', s: { n: { pattern: '0.00' } } }],
      ]);
      sheet.setColumnWidth(0, 215);
      sheet.getRange(2, 0, 1, 2).merge();
      workbook.moveSheet(sheet, 0);
    });
  let saved: { name: string; bytes: Uint8Array; path: string };
  let asRead: Record<string, unknown>;
  /** Of the row that was first when it was pressed. */
  let channelSheet = '';

  describe('sheets that the file does not have', () => {
    it('are saved in the copy, and it is no new workbook for that', async () => {
      await openFile('plan.xlsx', original());
      await bench().check();
      await press('papers');
      await press('summary');
      await said('sums up the plan');
      await bench().page.click('.cw-row >> nth=0');
      await press('channel-sheet');
      await said('shows this channel');
      channelSheet = /“(Channel [^”]+)” shows this channel/.exec(await bench().pane())?.[1] ?? '';
      await addMine();
      await bench().page.waitForTimeout(500);
      saved = await takeDownload(() => bench().page.click('#save'));
      expect(saved.name).toBe('plan (planned).xlsx');
      expect(await message()).toContain('no cells of yours changed');
      expect(await message()).toContain(`New sheets: Mine, Check summary, ${channelSheet}.`);
      expect(await message()).not.toContain('although they were changed here');
      asRead = JSON.parse(execFileSync(python, ['-W', 'ignore', '-c', SCRIPT, saved.path], { encoding: 'utf8' }));
    }, 120_000);

    it('stand in their order, and nothing of the file is lost for them', () => {
      const sheets = ['Channels', 'Sensors', 'Mounts', 'Cables', 'Inputs', 'Totals'];
      expect(asRead['sheets']).toEqual(['Mine', ...sheets, 'Check summary', channelSheet]);
      expect([asRead['active'], asRead['titles']]).toEqual(['Channels', '1:1']);
      expect(asRead['names']).toContain('HighestLevels');
      expect(asRead['plan']).toEqual([1, 1]);
      const [before, after] = [unzipSync(original()), unzipSync(saved.bytes)];
      const changed = Object.keys(before).filter(
        (name) => !after[name] || Buffer.compare(before[name]!, after[name]) !== 0,
      );
      const around = ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels', 'xl/styles.xml', 'xl/workbook.xml'];
      expect(changed.sort()).toEqual([...around, 'xl/worksheets/sheet1.xml'].sort());
    });

    it('have cells, looks and set-up as they are here', async () => {
      expect(asRead['summary']).toEqual([3, 'landscape', false]);
      expect(asRead['heading']).toEqual([true, 'FF0F4C4A', 'hair']);
      expect(asRead['mine']).toEqual([['Budget', null], ['Sum of levels', '=SUM(Channels!E2:E3)'], [null, null]]); // prettier-ignore
      // 215 pixels are 30 digits of 7 pixels and 5 of padding (ECMA-376-1, 18.3.1.13).
      expect([asRead['bold'], asRead['format'], asRead['width']]).toEqual([[true, false], '0.00', 31]);
      expect(asRead['merged']).toEqual(['A3:B3']);
      const levels = read(original(), 'Channels').values;
      const shown = read(saved.bytes, 'Mine').values[1]![1];
      expect(shown).toBe(Number(levels[1]![4]) + Number(levels[2]![4]));
      for (const sheet of ['Check summary', channelSheet]) {
        const here = await bench().sheet(sheet);
        expect(read(saved.bytes, sheet).values).toEqual(here.values);
      }
    });

    it('carry the drawings: three charts on the summary, three plots with their words on the sheet of the channel', () => {
      const parts = unzipSync(saved.bytes);
      const drawings = Object.keys(parts).filter((name) => /^xl\/drawings\/drawing\d+\.xml$/.test(name));
      const words = drawings.flatMap((name) => [...text(parts[name]).matchAll(/name="Channelwright drawing \d" descr="([^"]*)"/g)].map(([, said]) => said!)); // prettier-ignore
      expect(words).toHaveLength(6);
      expect(words.filter((said) => /signal to noise|span|deviation/i.test(said)).length).toBeGreaterThanOrEqual(3);
    });

    it('of ours are renewed in a copy that has them already, with charts and marks in their places', async () => {
      await openFile('plan (planned).xlsx', saved.bytes);
      await bench().check();
      await bench().type('Channels', 1, 4, '900');
      await bench().page.waitForTimeout(500);
      if (!(await bench().page.isVisible('[data-key="summary"]'))) await press('papers');
      await press('summary');
      await said('sums up the plan');
      const again = await takeDownload(() => bench().page.click('#save'));
      expect(await message()).not.toContain('New sheet');
      const here = await bench().sheet('Check summary');
      expect(read(again.bytes, 'Check summary').values).toEqual(here.values);
      expect(here.values).not.toEqual(read(saved.bytes, 'Check summary').values);
      const parts = unzipSync(again.bytes);
      expect(Object.keys(parts).filter((name) => name.startsWith('xl/charts/'))).toHaveLength(4);
      expect(Object.keys(parts).sort()).toEqual(Object.keys(unzipSync(saved.bytes)).sort());
    }, 120_000);
  });

  describe('a sheet of the file that was renamed here', () => {
    it('has its new name in the copy, and all that refers to it follows', async () => {
      await openFile('plan.xlsx', original());
      await bench().check();
      await bench().page.evaluate(() => {
        const { grid } = window.channelwright as unknown as { grid: FUniver };
        grid.getActiveWorkbook()!.getSheetByName('Channels')!.setName('Channel list');
        grid.getActiveWorkbook()!.getSheetByName('Sensors')!.setName("Jo's sensors");
      });
      await bench().page.waitForTimeout(500);
      const { bytes } = await takeDownload(() => bench().page.click('#save'));
      expect(await message()).toContain('no cells of yours changed');
      const [before, after] = [unzipSync(original()), unzipSync(bytes)];
      expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
      const part = (name: string) => text(after[name]).replaceAll('&apos;', "'");
      expect(part('xl/workbook.xml')).toContain("'Channel list'!$E$2");
      expect(part('xl/worksheets/sheet1.xml')).toContain("<formula1>'Jo''s sensors'!$A$2:$A$6</formula1>");
      expect(part('xl/charts/chart1.xml')).toContain("'Channel list'!");
      expect(read(bytes, 'Totals').formulas[1]![1]).toBe("='Channel list'!E2*2");
      expect(read(bytes, 'Totals').values).toEqual(read(original(), 'Totals').values.map((line, r) => line.map((cell, c) => cell ?? read(bytes, 'Totals').values[r]![c]))); // prettier-ignore
      for (const name of Object.keys(after).filter((each) => /^xl\/(worksheets|charts|workbook)/.test(each)))
        expect([name, /\b(Channels|Sensors)'?!/.exec(part(name))?.[0]]).toEqual([name, undefined]);
      await openFile('plan (planned).xlsx', bytes);
      await bench().page.waitForSelector('.cw-counts');
    }, 120_000);
  });
};
