import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cellAddress } from '../../../src/workbook/address';
import type { FileChange } from '../../../src/adapters/xlsx/changes';
import { pythonWith } from '../../python';
import { AS_READ, LAID_OUT, laidOut, READ_LAID_OUT } from './laid-out-sheet';
import { openBytes, unzipParts } from './tiny-workbook';

// Workbooks made by openpyxl, judged by lxml and openpyxl for losses, and by LibreOffice for what it still shows.

const SCRIPTS = join(__dirname, '../../fixtures/xlsx');
const PYTHON = pythonWith('openpyxl', 'lxml') ?? 'python3';
const FILES = [
  'drawings.xlsx',
  'page-set-up.xlsx',
  'rules.xlsx',
  'table.xlsx',
  'looks.xlsx',
  'shared.xlsx',
  'epoch-1904.xlsx',
  'prefixed.xlsx',
  'strict.xlsx',
  'macros.xlsm',
] as const;
const SHEET = 'Plan';
/** In every file the plan ends left of this column and below this row. */
const COLUMN = 9;
const ROW = 2;
const TOUCHED = [0, 1, 2].map((n) => cellAddress(ROW + n, COLUMN));

const changes: readonly FileChange[] = [
  {
    kind: 'cells',
    sheet: SHEET,
    row: ROW,
    column: COLUMN,
    cells: [
      [{ formula: '=CHAN.MASS.RATIO(C3,D3)', value: 0.1 + 0.2 }],
      [{ formula: '=CHAN.VERDICT.WORST(C3:D3)', value: 'PASS' }],
      ['text <&> "of ours"'],
    ],
  },
  {
    kind: 'look',
    sheet: SHEET,
    range: { row: ROW, column: COLUMN, rows: 3, columns: 1 },
    look: { bold: true, ink: '#0f4c4a', ground: '#e6efee', numberFormat: '0.000', align: 'right', wrap: true },
  },
  { kind: 'note', sheet: SHEET, row: ROW, column: COLUMN, text: 'Worked out from this row.\nSecond line.' },
  {
    kind: 'marks',
    sheet: SHEET,
    rules: [
      { range: { row: ROW, column: COLUMN, rows: 3, columns: 1 }, equals: 'PASS', ink: '#0b4a75', ground: '#e3f0f8' },
    ],
  },
  { kind: 'width', sheet: SHEET, column: COLUMN, columns: 1, characters: 14 },
  { kind: 'sheet', name: 'Channel summary' },
  { kind: 'cells', sheet: 'Channel summary', row: 0, column: 0, cells: [['Channels', 4]] },
  ...laidOut,
];

/** Every cell that LibreOffice shows, by sheet and place, in a workbook that it converted to one flat document. */
function shown(fods: string): Map<string, string> {
  const cells = new Map<string, string>();
  // Charts hold tables of their own.
  const bare = fods.replace(/<(office:annotation|draw:object)\b[\s\S]*?<\/\1>/g, '');
  for (const [, name, body] of bare.matchAll(/<table:table table:name="([^"]*)"([\s\S]*?)<\/table:table>/g)) {
    let row = 0;
    for (const [, rowTag, line] of body!.matchAll(/<table:table-row([^>]*?)(?:\/>|>([\s\S]*?)<\/table:table-row>)/g)) {
      let column = 0;
      for (const [, tag, inside] of (line ?? '').matchAll(
        /<table:(?:covered-)?table-cell([^>]*?)(?:\/>|>([\s\S]*?)<\/table:(?:covered-)?table-cell>)/g,
      )) {
        const text = [...(inside ?? '').matchAll(/<text:p>(.*?)<\/text:p>/gs)].map(([, p]) => p).join('\n');
        const value = /office:(?:value|date-value|boolean-value)="([^"]*)"/.exec(tag!)?.[1] ?? '';
        if (text !== '') cells.set(`${name}!${cellAddress(row, column)}`, `${value} ${text}`);
        column += Number(/number-columns-repeated="(\d+)"/.exec(tag!)?.[1] ?? 1);
      }
      row += Number(/number-rows-repeated="(\d+)"/.exec(rowTag!)?.[1] ?? 1);
    }
  }
  return cells;
}

describe('workbooks made elsewhere, edited and judged elsewhere', () => {
  let folder: string;
  const at = (...path: string[]): string => join(folder, ...path);
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'channelwright-traps-'));
    ['in', 'out', 'in-shown', 'out-shown'].forEach((name) => mkdirSync(at(name)));
    execFileSync(PYTHON, [join(SCRIPTS, 'make_traps.py'), at('in')]);
    for (const file of FILES) {
      const book = openBytes(new Uint8Array(readFileSync(at('in', file))));
      book.edit(changes);
      book.setSetting('mapping', '{}');
      writeFileSync(at('out', file), book.save());
    }
    const profile = `-env:UserInstallation=file://${at('profile')}`;
    for (const side of ['in', 'out'])
      execFileSync(
        'soffice',
        [
          profile,
          '--headless',
          '--convert-to',
          'fods',
          '--outdir',
          at(`${side}-shown`),
          ...FILES.map((f) => at(side, f)),
        ],
        { stdio: 'ignore', timeout: 240_000 },
      );
  }, 300_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('are all there, with the traps they are made for', () => {
    expect(readdirSync(at('in')).sort()).toEqual([...FILES].sort());
    const has = (file: string, part: string, text: string): void =>
      expect(unzipParts(readFileSync(at('in', file)))[part]).toContain(text);
    has('shared.xlsx', 'xl/worksheets/sheet1.xml', 't="shared" si="0"/>');
    has('rules.xlsx', 'xl/worksheets/sheet1.xml', 'x14:cfRule');
    has('prefixed.xlsx', 'xl/worksheets/sheet1.xml', '<x:sheetData>');
    has('strict.xlsx', 'xl/worksheets/sheet1.xml', 'purl.oclc.org');
    has('macros.xlsm', '[Content_Types].xml', 'macroEnabled');
    has('epoch-1904.xlsx', 'xl/workbook.xml', 'date1904="1"');
  });

  it.each(FILES)('%s lost nothing, by lxml and openpyxl', (file) => {
    const judged = spawnSync(
      PYTHON,
      [
        '-W',
        'ignore',
        join(SCRIPTS, 'judge.py'),
        at('in', file),
        at('out', file),
        'xl/worksheets/sheet1.xml',
        ...TOUCHED,
      ],
      { encoding: 'utf8' },
    );
    expect(judged.stderr).toBe('');
    const values = file === 'strict.xlsx' ? [] : ['0.30000000000000004', 'PASS', 'text <&> "of ours"'];
    expect(judged.stdout.trim().split('\n').filter(Boolean)).toEqual(
      values.map((value, n) => `${TOUCHED[n]}\t${value}`),
    );
  });

  it.each(FILES)('%s shows the same in LibreOffice, and our cells', (file) => {
    const name = file.replace(/\.\w+$/, '.fods');
    const before = shown(readFileSync(at('in-shown', name), 'utf8'));
    const after = shown(readFileSync(at('out-shown', name), 'utf8'));
    expect(before.size).toBeGreaterThanOrEqual(22);
    for (const [cell, value] of before) expect([cell, after.get(cell)]).toEqual([cell, value]);
    expect(after.get(`${SHEET}!${TOUCHED[0]}`)).toBe('0.3 0.300');
    expect(after.get(`${SHEET}!${TOUCHED[2]}`)).toBe(' text &lt;&amp;&gt; &quot;of ours&quot;');
    expect(after.get('Channel summary!B1')).toBe('4 4');
    expect(after.get(`${LAID_OUT}!A2`)).toBe('0.25 25.0 %');
    expect(after.get(`${LAID_OUT}!B2`)).toBe('2 2');
  });

  it.each(FILES.filter((file) => file !== 'strict.xlsx'))('a sheet laid out in %s reads as it was given', (file) => {
    const read = execFileSync(PYTHON, ['-W', 'ignore', '-c', READ_LAID_OUT, at('out', file)], { encoding: 'utf8' });
    expect(JSON.parse(read)).toEqual(AS_READ);
  });

  it.each(FILES)('%s is the same after a second run', (file) => {
    const first = unzipParts(readFileSync(at('out', file)));
    const again = openBytes(new Uint8Array(readFileSync(at('out', file))));
    again.edit(changes.filter((change) => change.kind !== 'note' || change.isOurs !== false));
    expect(unzipParts(again.save())).toEqual(first);
  });

  it('would be reported by the judge if they lost a picture, a rule or a cell', () => {
    const spoil = (file: string, part: string, change: (xml: string) => string | undefined): string => {
      const source = at('in', file);
      const target = at('spoilt.xlsx');
      const script =
        'import sys,zipfile\na=zipfile.ZipFile(sys.argv[1]);b=zipfile.ZipFile(sys.argv[2],"w")\n' +
        'new=sys.stdin.buffer.read()\nfor n in a.namelist():\n  d=new if n==sys.argv[3] else a.read(n)\n  if d: b.writestr(n,d)\nb.close()';
      execFileSync(PYTHON, ['-c', script, source, target, part], {
        input: change(unzipParts(readFileSync(source))[part]!) ?? '',
      });
      return spawnSync(PYTHON, [join(SCRIPTS, 'judge.py'), source, target, 'xl/worksheets/sheet1.xml'], {
        encoding: 'utf8',
      }).stdout;
    };
    expect(spoil('drawings.xlsx', 'xl/media/image1.png', () => undefined)).toContain('image1.png is gone');
    const sheet = 'xl/worksheets/sheet1.xml';
    expect(spoil('rules.xlsx', sheet, (xml) => xml.replace(/<x14:cfRule.*<\/x14:cfRule>/, ''))).toContain('extLst');
    expect(spoil('table.xlsx', sheet, (xml) => xml.replace('<v>12.5</v>', '<v>12.6</v>'))).toContain('sheetData');
  });
});
