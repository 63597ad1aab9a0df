import { MAIN, openTiny, STRICT_MAIN, STRICT_OFFICE, type TinySheet, type TinyWorkbook } from './tiny-workbook';

const read = (sheet: Partial<TinySheet>, book: Partial<TinyWorkbook> = {}) =>
  openTiny({ sheets: [{ name: 'Plan', ...sheet }], ...book }).readSheet('Plan');
const valuesOf = (cells: string, book: Partial<TinyWorkbook> = {}) =>
  read({ rows: `<row r="1">${cells}</row>` }, book).values[0];

describe('cells are read', () => {
  it('as numbers, texts, truth values and errors, blanks as null', () => {
    expect(
      valuesOf(
        '<c r="A1"><v>12.5</v></c><c r="B1" t="b"><v>1</v></c><c r="C1" t="e"><v>#DIV/0!</v></c>' +
          '<c r="D1" t="str"><f>A1&amp;"x"</f><v>12.5x</v></c><c r="F1"><v>-1.5E-7</v></c><c r="G1" t="n"><v> 3 </v></c>',
      ),
    ).toEqual([12.5, true, { error: '#DIV/0!' }, '12.5x', null, -1.5e-7, 3]);
  });

  it('as exactly the number that is written, for any number of digits', () => {
    const texts = [
      '0.1',
      '0.30000000000000004',
      '123456789012345',
      '1234567890123456789',
      '-0',
      '.5',
      '5.',
      '1e400',
      '4.35',
      '-99.999999999999',
    ];
    const cells = texts.map((text, n) => `<c r="${'ABCDEFGHIJ'[n]}1"><v>${text}</v></c>`).join('');
    expect(valuesOf(cells)).toEqual(texts.map(Number));
  });

  it('as text from shared strings: all runs, without phonetic readings, with escapes resolved', () => {
    const sharedStrings =
      `<sst xmlns="${MAIN}"><si><t xml:space="preserve"> plain </t></si>` +
      '<si><r><rPr><b/></rPr><t>mV</t></r><r><t>/g</t></r></si>' +
      '<si><t>課きく</t><rPh sb="0" eb="1"><t>カ</t></rPh><phoneticPr fontId="1"/></si>' +
      '<si><t>a_x000D_b_x005F_x0041_</t></si><si/><si><t>line\r\nbreak &lt;</t></si></sst>';
    const cells = [0, 1, 2, 3, 4, 5, 99].map((n, k) => `<c r="${'ABCDEFG'[k]}1" t="s"><v>${n}</v></c>`).join('');
    expect(valuesOf(`${cells}<c r="H1"><v>1</v></c>`, { sharedStrings })).toEqual([
      ' plain ',
      'mV/g',
      '課きく',
      'a\rb_x0041_',
      '',
      'line\nbreak <',
      null,
      1,
    ]);
  });

  it('as text from inline strings, in runs and with CDATA', () => {
    expect(
      valuesOf(
        '<c r="A1" t="inlineStr"><is><t>wing</t></is></c>' +
          '<c r="B1" t="inlineStr"><is><r><t>fin</t></r><r><t xml:space="preserve"> tip</t></r></is></c>' +
          '<c r="C1" t="inlineStr"><is><t><![CDATA[a<b]]> &amp; c</t></is></c><c r="D1" t="str"><v>x<!-- y -->z</v></c>',
      ),
    ).toEqual(['wing', 'fin tip', 'a<b & c', 'xz']);
  });

  it('where they stand when neither rows nor cells say so, and in any order of rows', () => {
    const content = read({
      rows: '<row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row><row r="3"><c r="A3"><v>5</v></c></row>',
    });
    expect(content.values).toEqual([
      [1, 2, null, null],
      [null, null, null, null],
      [5, null, null, null],
      [null, null, null, null],
      [null, null, 3, 4],
    ]);
  });

  it('with empty elements in all their forms', () => {
    expect(read({ rows: '' }).values).toEqual([]);
    expect(read({ xml: `<worksheet xmlns="${MAIN}"><sheetData/></worksheet>` }).values).toEqual([]);
    expect(
      read({ rows: '<row r="1"/><row r="2"><c r="A2"/><c r="B2"><v/></c><c r="C2"><f/><v>7</v></c></row>' }).values,
    ).toEqual([[7]]);
  });

  it('from a part with prefixed names, in the strict namespaces, and in UTF-16', () => {
    const prefixed = `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t>ü</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>`;
    expect(read({ xml: prefixed }).values).toEqual([['ü']]);
    const strict = { main: STRICT_MAIN, office: STRICT_OFFICE };
    expect(valuesOf('<c r="A1"><v>1</v></c>', strict)).toEqual([1]);
    const wide = Buffer.from(`\ufeff<?xml version="1.0" encoding="UTF-16"?>${prefixed}`, 'utf16le');
    expect(read({}, { parts: { 'xl/worksheets/sheet1.xml': wide } }).values).toEqual([['ü']]);
  });
});

describe('dates are read', () => {
  const styles =
    `<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/>` +
    '<numFmt numFmtId="165" formatCode="0.00&quot; days&quot;"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills>' +
    '<borders count="1"><border/></borders><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs></styleSheet>';
  const dates = (cells: string, more: Partial<TinyWorkbook> = {}) =>
    Object.fromEntries(read({ rows: `<row r="1">${cells}</row>` }, { styles, ...more }).dates);

  // Serial 46083 is 2026-03-02, and 60 the 29 February 1900 that never was (ECMA-376 part 1, 18.17.4.1).
  it('as ISO texts where the number format shows a date, and only there', () => {
    expect(
      dates(
        '<c r="A1" s="1"><v>46083</v></c><c r="B1" s="2"><v>46083.75</v></c><c r="C1" s="3"><v>46083</v></c><c r="D1"><v>46083</v></c><c r="E1" s="1"><v>59</v></c><c r="F1" s="1"><v>61</v></c>',
      ),
    ).toEqual({ A1: '2026-03-02', B1: '2026-03-02T18:00:00', E1: '1900-02-28', F1: '1900-03-01' });
  });

  it('from the other epoch in a 1904 workbook, 1462 days later', () => {
    const cells = '<c r="A1" s="1"><v>44621</v></c>';
    expect(dates(cells, { workbookBefore: '<workbookPr date1904="1"/>' })).toEqual({ A1: '2026-03-02' });
  });

  it('from cells that hold ISO texts', () => {
    expect(valuesOf('<c r="A1" t="d"><v>2026-03-02</v></c><c r="B1" t="d"><v>2026-03-02T18:00:00</v></c>')).toEqual([
      46083, 46083.75,
    ]);
  });
});

describe('formulas are read', () => {
  it('with shared ones written out for each cell', () => {
    const { formulas } = read({
      rows:
        '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:C2" si="0">A1*$A$1+A$1</f><v>1</v></c><c r="C1"><f t="shared" si="0"/><v>1</v></c></row>' +
        '<row r="2"><c r="B2"><f t="shared" si="0"/><v>1</v></c></row>',
    });
    expect(formulas).toEqual([
      ['', '=A1*$A$1+A$1', '=B1*$A$1+B$1'],
      ['', '=A2*$A$1+A$1', ''],
    ]);
  });

  it('with our functions under their own names', () => {
    const { formulas, values } = read({
      rows: '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:B1">_xldudf_CHAN_FREQUENCY_SPAN(C1)</f><v>5</v></c><c r="B1"><v>9</v></c></row>',
    });
    expect([formulas, values]).toEqual([[['=CHAN.FREQUENCY.SPAN(C1)', '']], [[5, 9]]]);
  });
});

it('tables, merged cells, hidden rows and columns are told', () => {
  const content = read(
    {
      before: '<cols><col min="2" max="3" hidden="1"/></cols>',
      rows: '<row r="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="1"/>',
      behind: '<mergeCells><mergeCell ref="A4:C5"/></mergeCells><tableParts><tablePart r:id="rId1"/></tableParts>',
      relations: [['rId1', 'table', '../tables/table1.xml']],
    },
    { parts: { 'xl/tables/table1.xml': `<table xmlns="${MAIN}" displayName="Plan_1" ref="A1:B9"/>` } },
  );
  expect(content.tables).toEqual([{ name: 'Plan_1', range: { row: 0, column: 0, rows: 9, columns: 2 } }]);
  expect(content.merged).toEqual([{ row: 3, column: 0, rows: 2, columns: 3 }]);
  expect([content.hiddenRows, content.hiddenColumns]).toEqual([[1], [1, 2]]);
});

it('sheets that hold no cells are left out of the list, hidden ones are marked', () => {
  const book = openTiny({
    sheets: [{ name: 'Plan' }, { name: 'Old' }],
    workbookBefore: '<bookViews><workbookView activeTab="1"/></bookViews>',
  });
  expect(book.sheets).toEqual([
    { name: 'Plan', active: false, visible: true },
    { name: 'Old', active: true, visible: true },
  ]);
});
