import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { IWorkbookData } from '@univerjs/core';
import { relativeForm } from '../../../src/adapters/embedded/import/formula-text';
import { workbookFromFile } from '../../../src/adapters/embedded/import/workbook';
import { openWorkbook } from './headless';

// Written by openpyxl; make-sample.py beside it says what is in it.
const SAMPLE = readFileSync(join(__dirname, '../../fixtures/workbench/sample.xlsx'));
const open = (bytes: Uint8Array) => workbookFromFile(bytes, 'sample.xlsx');
const resource = (data: IWorkbookData, name: string) =>
  JSON.parse(data.resources?.find((each) => each.name === name)?.data ?? '{}');

describe('a workbook file opened in the grid', () => {
  let data: IWorkbookData;
  beforeAll(async () => {
    data = await open(SAMPLE);
  });
  const plan = () => data.sheets['sheet-1']!;
  const styleOf = (row: number, column: number) => data.styles[plan().cellData?.[row]?.[column]?.s as string];

  it('has the values, formulas and errors that were stored, text numbers as text', async () => {
    const { spreadsheet } = await openWorkbook(data);
    await spreadsheet.calculated();
    const { values, formulas } = await spreadsheet.readSheet('Plan');
    // 2026-03-02 is day 46083 of the 1900 date system.
    expect(values[1]).toEqual(['P2', 0.2, 0.4, '007', 46083, true, { error: '#DIV/0!' }]);
    expect(formulas[4]?.slice(2, 3)).toEqual(['=B5*2']);
  });

  it('calculates stored function names, prefixes, tables, names and array formulas', async () => {
    const { spreadsheet } = await openWorkbook(data);
    await spreadsheet.calculated();
    const { values, formulas } = await spreadsheet.readSheet('Formulas');
    expect(formulas.flat().slice(0, 4)).toEqual([
      '=CHAN.MASS.RATIO(1,2,3,100)',
      '=CONCAT("_xlfn.CONCAT(",1)',
      '=SUM(Points[Mass])',
      '=SUM(masses)',
    ]);
    // (1 + 2 + 3) gram on 100 gram.
    expect(values[0]?.[0]).toBeCloseTo(0.06, 12);
    expect(values[1]?.[0]).toBe('_xlfn.CONCAT(1');
    expect(values[2]?.[0]).toBeCloseTo(0.2 + 0.3 + 0.4 + 0.5, 12);
    expect(values[3]?.[0]).toBeCloseTo(0.2 + 0.3 + 0.4 + 0.5, 12);
    expect(values[4]?.[0]).toBeCloseTo(2, 12);
    expect(values[5]?.[0]).toBeCloseTo(3, 12);
    expect(values[7]?.[0]).toBeCloseTo(0.4, 12);
    expect(values[8]?.[0]).toBeCloseTo(0.5, 12);
  });

  it('looks as it was formatted', () => {
    expect(styleOf(0, 0)).toMatchObject({
      bl: 1,
      ff: expect.stringMatching(/^Verdana/),
      fs: 12,
      cl: { rgb: '#0F5C59' },
      bg: { rgb: '#E3EFED' },
    });
    // Theme colour 4 (5B9BD5 or 4F81BD by theme), 40 % lighter: each channel moves 40 % of its way to 255.
    expect(styleOf(0, 1)).toMatchObject({ ht: 3, vt: 2, tb: 3, bd: { b: { s: 1, cl: { rgb: '#112233' } } } });
    expect(styleOf(0, 1)?.bg?.rgb).toMatch(/^#(95B3D7|9DC3E6|95B2D7|9CC3E5|9DC3E5)$/i);
    expect(styleOf(1, 1)?.n?.pattern).toBe('0.000');
    expect(plan().columnData?.[0]?.w).toBe(64);
    expect(plan().columnData?.[3]?.hd).toBe(1);
    expect(plan().rowData?.[3]?.hd).toBe(1);
    expect(plan().rowData?.[0]?.h).toBe(40);
    expect(plan().freeze).toEqual({ xSplit: 1, ySplit: 1, startRow: 1, startColumn: 1 });
    expect(plan().mergeData).toEqual([{ startRow: 7, startColumn: 0, endRow: 7, endColumn: 2 }]);
    expect(data.sheets['sheet-3']?.hidden).toBe(1);
  });

  it('keeps notes and conditional formats, and knows which of these are ours', () => {
    expect(resource(data, 'SHEET_NOTE_PLUGIN')['sheet-1'][1][0].note).toContain('weighed twice');
    const rules = resource(data, 'SHEET_CONDITIONAL_FORMATTING_PLUGIN')['sheet-1'];
    expect(rules.map(({ rule }: { rule: object }) => rule)).toEqual([
      expect.objectContaining({ subType: 'text', operator: 'equal', value: 'P3' }),
      expect.objectContaining({ subType: 'number', operator: 'greaterThan', value: 0.35 }),
      expect.objectContaining({ subType: 'formula', value: '=$C2>0.9' }),
    ]);
    expect(rules.map(({ cfId }: { cfId: string }) => cfId.startsWith('chan-mark-'))).toEqual([true, false, false]);
  });

  it('leaves room for spilled results below and beside the data', () => {
    expect(plan().rowCount).toBeGreaterThanOrEqual(5 + 200);
    expect(plan().columnCount).toBeGreaterThanOrEqual(7 + 40);
  });
});

describe('a file that is not an .xlsx workbook', () => {
  const ole = (text: string) =>
    Buffer.concat([Buffer.from('d0cf11e0a1b11ae1', 'hex'), Buffer.alloc(64), Buffer.from(text, 'utf16le')]);
  const zip = (text: string) =>
    Buffer.concat([Buffer.from('504b0304', 'hex'), Buffer.from(`${text}PK\u0005\u0006${'\0'.repeat(18)}`)]);

  it.each([
    ['nothing', Buffer.alloc(0), 'empty'],
    ['plain text', Buffer.from('Channel;Point\n1;2'), 'not-a-workbook'],
    ['an old .xls workbook', ole('Workbook'), 'old-format'],
    ['an encrypted workbook', ole('EncryptedPackage'), 'encrypted'],
    ['a text document', zip('[Content_Types].xml word/document.xml'), 'other-format'],
    ['an open document spreadsheet', zip('mimetypeapplication/vnd.oasis.opendocument.spreadsheet'), 'other-format'],
    ['some other zip', zip('photos/1.jpg'), 'other-format'],
    ['half a workbook', SAMPLE.subarray(0, SAMPLE.length / 2), 'broken'],
  ])('is refused with the reason: %s', async (_, bytes, code) => {
    await expect(open(bytes)).rejects.toMatchObject({ name: 'FileProblem', code });
  });
});

describe('a file that asks for more than a page has', () => {
  it('is refused by what its parts say they unpack to', async () => {
    const bytes = Buffer.from(SAMPLE);
    const entry = bytes.indexOf(Buffer.from('504b0102', 'hex'));
    bytes.writeUInt32LE(900_000_000, entry + 24);
    await expect(open(bytes)).rejects.toMatchObject({ code: 'too-large' });
  });
});

describe('a formula seen from its own cell', () => {
  it.each([
    ['=A1*2', 0, 1, '=A2*2', 1, 1],
    ['=$A$1+B1', 0, 2, '=$A$1+B9', 8, 2],
    ['=\'A1 list\'!C3&"A1"', 4, 4, '=\'A1 list\'!C4&"A1"', 5, 4],
    ['=LOG10(A1)+Points[A1]', 0, 3, '=LOG10(A2)+Points[A1]', 1, 3],
  ])('is the same one moved: %s', (first, r1, c1, second, r2, c2) => {
    expect(relativeForm(second, r2, c2)).toBe(relativeForm(first, r1, c1));
  });
  it.each([
    ['=A1*2', 0, 1, '=A1*2', 1, 1],
    ['="A1"', 0, 1, '="A2"', 1, 1],
    ['=A1', 0, 1, '=$A2', 1, 1],
  ])('is another one: %s', (first, r1, c1, second, r2, c2) => {
    expect(relativeForm(second, r2, c2)).not.toBe(relativeForm(first, r1, c1));
  });
  it('does not claim to move whole columns and rows', () => {
    expect(relativeForm('=SUM(A:A)', 0, 1)).toBeUndefined();
    expect(relativeForm('=SUM(1:1)', 2, 1)).toBeUndefined();
  });
});
