import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { nodeCodec } from '../../src/adapters/xlsx/codec-node';
import { openWorkbook } from '../../src/adapters/xlsx/workbook-file';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { pythonWith } from '../python';
import { cellAddress } from '../../src/workbook/address';
import { isCellError } from '../../src/functions/define';
import { DEMO, run, temporaryFolder } from './run';

jest.setTimeout(180_000);
const folder = temporaryFolder();
const PYTHON = pythonWith('openpyxl') ?? 'python3';
const PRIVATE = join(folder, 'private.xlsx');
const path = (name: string): string => join(folder, name);
const partsOf = (file: string): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(readFileSync(file))).map(([name, bytes]) => [name, strFromU8(bytes)]));
const share = async (plan: string, name: string, ...more: string[]) => {
  const target = path(name);
  const done = await run(['share', plan, '-o', target, '--replace', ...more]);
  return { ...done, target, parts: existsSync(target) ? partsOf(target) : {} };
};
let made: ReturnType<typeof share> | undefined;
const proposed = () => (made ??= share(PRIVATE, 'private-copy.xlsx', '--leave-out', 'proposed'));
const sheetsOf = (file: string) =>
  openWorkbook(readFileSync(file), { codec: nodeCodec, functionNames: FUNCTION_NAMES });

/** Parts in which a text stands. */
const holding = (parts: Record<string, string>, text: string | RegExp): string[] =>
  Object.keys(parts).filter((name) =>
    typeof text === 'string' ? parts[name]!.includes(text) : text.test(parts[name]!),
  );

beforeAll(() => {
  execFileSync(PYTHON, [join(__dirname, '../fixtures/share/make.py'), DEMO, PRIVATE]);
  // A spreadsheet program would have stored what these formulas give.
  const parts = unzipSync(readFileSync(PRIVATE));
  for (const [name, bytes] of Object.entries(parts)) {
    const text = strFromU8(bytes).replace(
      /(<f>[^<]*(?:Day|Sensors!)[^<]*<\/f>)<v\s*\/?>(?:<\/v>)?/g,
      '$1<v>45678.5</v>',
    );
    if (/sheet\d+\.xml$/.test(name)) parts[name] = strToU8(text);
  }
  writeFileSync(PRIVATE, zipSync(parts));
});

/** LibreOffice itself saves fifteen digits of a number. */
const SAVED = 1e-14;

describe('channelwright share', () => {
  it.each(['Sensors', 'Mounts', 'Inputs', 'Limits', 'Channels!Structure part'])(
    'leaves out %s of the demo plan although notes and overview use some of the same words',
    async (what) => {
      const { status, target } = await share(DEMO, 'some-copy.xlsx', '--leave-out', what);
      expect([status, existsSync(target)]).toEqual([1, true]);
    },
  );

  it('lists what is usually not for a customer and writes nothing without a target', async () => {
    const { out, status } = await run(['share', PRIVATE]);
    for (const name of ['Channels!Remarks', 'Sensors!Serial number', 'Sensors!Day price [credits]', 'Internal prices'])
      expect(out).toContain(`--leave-out "${name}"`);
    expect(out).toContain('Nothing was written');
    expect(status).toBe(1);
  });

  it('leaves nothing out that was not named, and says so', async () => {
    const { parts, out } = await share(PRIVATE, 'all.xlsx');
    expect(holding(parts, 'SN-7783-A3')).not.toEqual([]);
    expect(out).toContain('Still in the copy');
  });

  it('leaves no left-out text or number in any part of the file', async () => {
    const before = partsOf(PRIVATE);
    const { parts, error } = await proposed();
    const secrets = ['SN-7783-A3', '1286.25', 'credits', 'rebate agreed', 'secret choice', 'strictly ours', '99887.25', 'Serial number', 'first idea: one sensor', 'Day_price', '$Z2', 'acquisition', 'Erika Beispiel', 'file:///']; // prettier-ignore
    for (const secret of secrets) {
      expect([secret, holding(before, secret)]).not.toEqual([secret, []]);
      expect([secret, holding(parts, secret)]).toEqual([secret, []]);
    }
    expect(error).toContain('Totals!B1');
    expect(holding(parts, 'Author 1')).not.toEqual([]);
  });

  it('tells which notes of the user go with the copy, and leaves them out where that is asked', async () => {
    const { error, parts } = await proposed();
    expect(error).toContain('Notes of yours go with the copy: Sensors!B2.');
    expect(holding(parts, 'the &lt;b&gt;clip')).toEqual([expect.stringMatching(/comments/)]);
    const without = await share(PRIVATE, 'no-notes.xlsx', '--leave-out', 'proposed', '--drop-notes');
    expect(without.error).not.toContain('Notes of yours');
    expect([holding(without.parts, 'clip'), holding(without.parts, 'Channel W001: FAIL')]).toEqual([[], [expect.stringMatching(/comments/)]]); // prettier-ignore
  });

  it('keeps formulas of the user, but those over left-out cells as the values they had', async () => {
    const { target } = await proposed();
    const { values, formulas } = sheetsOf(target).readSheet('Totals');
    expect(values.map((line) => line[1])).toEqual([45678.5, null, 45678.5, 45678.5, null]);
    expect(formulas.map((line) => line[1])).toEqual(['', '=1+2', '', '', '']);
    const frozen = sheetsOf((await share(PRIVATE, 'frozen.xlsx', '--values')).target).readSheet('Totals');
    expect(frozen.formulas.flat().filter(Boolean)).toEqual([]);
  });

  it('writes texts that look like formulas or markup as texts', async () => {
    const { target, parts } = await share(PRIVATE, 'injected.xlsx', '--leave-out', 'Remarks');
    const { values, formulas } = sheetsOf(target).readSheet('Channels');
    const texts = ['=1+1', '+1+1', '-2+3', '@SUM(1)', '＝1+1', '＋cmd', '<script>alert(1)</script>'];
    expect(values.slice(5, 12).map((line) => line[4])).toEqual(texts);
    expect(formulas.flat().filter(Boolean)).toEqual([]);
    expect(values[7]![0]).toBe('=HYPERLINK');
    const notes = holding(parts, 'HYPERLINK:').filter((name) => /comments/.test(name));
    expect(notes.length + holding(parts, /<script>/).length).toBe(notes.length);
  });

  it('refuses to leave out the channels themselves, an unknown name and a target that exists', async () => {
    expect((await share(PRIVATE, 'none.xlsx', '--leave-out', 'Channels')).error).toContain('cannot be left out');
    expect(await share(PRIVATE, 'none.xlsx', '--leave-out', 'Cost centre')).toMatchObject({ status: 64, parts: {} });
    const { target } = await share(DEMO, 'there.xlsx');
    expect((await run(['share', DEMO, '-o', target])).error).toContain('--replace');
    expect((await run(['share', DEMO, '-o', DEMO, '--replace'])).error).toContain('the plan itself');
  });

  it('writes headings, reasons, notes and the overview in the language of the customer', async () => {
    const { parts, target } = await share(DEMO, 'deutsch.xlsx', '--language', 'de', '--revision', 'D', '--prepared', '=A. Muster'); // prettier-ignore
    expect(sheetsOf(target).sheets.map(({ name }) => name)).toContain('Prüfübersicht');
    expect(holding(parts, 'Kanalurteil')).not.toEqual([]);
    expect(holding(parts, 'Kanal W001: FAIL')).toEqual(['xl/comments1.xml']);
    expect(parts['docProps/core.xml']).toContain('<dc:creator>=A. Muster</dc:creator><cp:version>D</cp:version>');
    expect(holding(parts, 'Channel verdict')).toEqual([]);
  });

  it('makes the same copy of a plan that was checked before, without our working columns and settings', async () => {
    const checked = path('checked.xlsx');
    await run(['check', DEMO, '-o', checked]);
    const fresh = sheetsOf((await share(DEMO, 'fresh.xlsx')).target);
    const { target, parts } = await share(checked, 'again.xlsx');
    const again = sheetsOf(target);
    expect(again.readSheet('Channels').values).toEqual(fresh.readSheet('Channels').values);
    expect(again.sheets).toEqual(fresh.sheets);
    expect(holding(parts, /_xldudf|urn:channelwright|Noise used/)).toEqual([]);
    const fromGerman = sheetsOf((await share(checked, 'again-de.xlsx', '--language', 'de')).target);
    expect(fromGerman.readSheet('Channels').values[5]!.slice(26)).toEqual(fresh.readSheet('Channels').values[5]!.slice(26)); // prettier-ignore
  });

  it('holds the very numbers of the check', async () => {
    const { channels } = JSON.parse((await run(['check', DEMO, '--json'])).out).plans[0];
    const { values } = sheetsOf((await share(DEMO, 'exact.xlsx')).target).readSheet('Channels');
    const column = values[4]!.indexOf('Mass ratio');
    const ratios = channels.map(({ mass }: { mass: { mass_ratio: number | null } }) => mass.mass_ratio ?? null);
    expect(values.slice(5).map((line) => line[column] ?? null)).toEqual(ratios);
  });

  it('opens on the overview, and prints lists of which nobody has said how so that they can be read', async () => {
    const plain = path('plain.xlsx');
    execFileSync(PYTHON, [join(__dirname, '../fixtures/share/plain.py'), DEMO, plain]);
    const parts = unzipSync(readFileSync(plain));
    const book = strFromU8(parts['xl/workbook.xml']!).replaceAll(/Channels'?!\$5:\$5/g, (titles) => titles.replaceAll('$', '')); // prettier-ignore
    expect(book).toContain('!5:5');
    writeFileSync(plain, zipSync({ ...parts, 'xl/workbook.xml': strToU8(book) }));
    const named = ['--title', 'Wing & tail', '--revision', 'E', '--date', '2026-10-02', '--paper', 'Letter'];
    const { target, parts: copy } = await share(plain, 'plain-copy.xlsx', ...named);
    const asPrinted = `
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
print(json.dumps([[s.title, s is book.active, s.sheet_view.tabSelected or False, s.page_setup.orientation, s.page_setup.paperSize, s.page_setup.fitToWidth or 1, s.page_setup.fitToHeight, s.sheet_properties.pageSetUpPr.fitToPage, s.print_title_rows, s.print_title_cols] for s in book][:3]))`;
    expect(JSON.parse(execFileSync(PYTHON, ['-c', asPrinted, target], { encoding: 'utf8' }))).toEqual([
      ['Check summary', true, true, 'landscape', 1, 1, 0, true, null, null],
      ['Channels', false, false, 'landscape', 1, 3, 0, true, '$5:$5', '$A:$A'],
      ['Sensors', false, false, 'landscape', 1, 2, 0, true, '$1:$1', '$A:$A'],
    ]);
    expect(holding(copy, '&amp;LWing &amp;&amp; tail · Revision E · 2026-10-02&amp;C&amp;A&amp;RPage &amp;P of &amp;N')).toHaveLength(1); // prettier-ignore
  });

  it('says one verdict of a channel in list, note and overview, also where the cells leave open what is proved', async () => {
    const { target, parts, error } = await share(path('plain.xlsx'), 'one-verdict.xlsx', '--language', 'de');
    const { values } = sheetsOf(target).readSheet('Channels');
    const line = (heading: string) => values[5]![values[4]!.indexOf(heading)];
    expect([line('Kanalurteil'), line('Pegelprüfung')]).toEqual(['FAIL', 'FAIL']);
    expect(line('Begründung')).toContain('Aussteuerreserve höchstens');
    expect(holding(parts, 'Kanal W001: FAIL')).toEqual(['xl/comments1.xml']);
    expect(error).toContain('Channels!A6: the copy says FAIL, which is proved');
  });

  it('locks sheets only when asked', async () => {
    const locks = (parts: Record<string, string>) => holding(parts, '<sheetProtection').length;
    expect(locks((await share(DEMO, 'open.xlsx')).parts)).toBe(0);
    expect(locks((await share(DEMO, 'locked.xlsx', '--protect')).parts)).toBe(8);
  });

  it('opens in LibreOffice without the add-in: no error, the same numbers to all digits it saves', async () => {
    const { target } = await share(DEMO, 'office.xlsx', '--leave-out', 'proposed');
    const made = path('round');
    const args = [`-env:UserInstallation=file://${path('office-user')}`, '--headless', '--convert-to', 'xlsx', '--outdir', made, target]; // prettier-ignore
    expect(spawnSync('soffice', args, { timeout: 120_000 }).status).toBe(0);
    const [before, after] = [sheetsOf(target), sheetsOf(join(made, 'office.xlsx'))];
    for (const { name } of before.sheets) {
      const cells = (file: typeof before) => {
        const { values, row, column } = file.readSheet(name);
        return values.flatMap((line, r) => line.flatMap((cell, c) => (cell === null ? [] : [{ at: cellAddress(r + row, c + column), cell }]))); // prettier-ignore
      };
      const [said, kept] = [cells(before), cells(after)];
      expect(kept.map(({ at }) => at)).toEqual(said.map(({ at }) => at));
      const differing = said.filter(({ cell }, i) => {
        const other = kept[i]!.cell;
        return typeof cell === 'number' && typeof other === 'number'
          ? Math.abs(cell - other) > SAVED * Math.abs(cell)
          : other !== cell;
      });
      expect(differing).toEqual([]);
      expect(said.filter(({ cell }) => isCellError(cell))).toEqual([]);
    }
  });
});
