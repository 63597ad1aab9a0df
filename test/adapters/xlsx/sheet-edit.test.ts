import type { FileCell, FileChange } from '../../../src/adapters/xlsx/changes';
import type { CellLook } from '../../../src/workbook/port';
import { HostProblem } from '../../../src/workbook/port';
import {
  MAIN,
  openBytes,
  openTiny,
  saved,
  SHEET1,
  STRICT_MAIN,
  STRICT_OFFICE,
  zipParts,
  type TinySheet,
} from './tiny-workbook';

const cells = (row: number, column: number, block: readonly (readonly FileCell[])[]): FileChange => ({
  kind: 'cells',
  sheet: 'Plan',
  row,
  column,
  cells: block,
});
const look = (row: number, column: number, rows: number, columns: number, how: CellLook): FileChange => ({
  kind: 'look',
  sheet: 'Plan',
  range: { row, column, rows, columns },
  look: how,
});
const clear = (row: number, column: number, rows: number, columns: number): FileChange => ({
  kind: 'clear',
  sheet: 'Plan',
  range: { row, column, rows, columns },
});
const plan = (sheet: Partial<TinySheet>) => openTiny({ sheets: [{ name: 'Plan', ...sheet }] });
/** What stands inside <sheetData> after the changes. */
const rowsAfter = (rows: string, ...changes: FileChange[]): string => {
  const book = plan({ rows });
  book.edit(changes);
  return /<sheetData>(.*)<\/sheetData>/s.exec(saved(book)[SHEET1]!)?.[1] ?? saved(book)[SHEET1]!;
};
const problemOf = (work: () => void): HostProblem => {
  try {
    work();
  } catch (error) {
    if (error instanceof HostProblem) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('rows with the same formulas', () => {
  const texts = ['=CHAN.MASS.RATIO($A\uE000,"a<b\uE000")', '=IF(B\uE000="",NA(),Limits!$B$2)'];
  const valueAt = (row: number) => [row === 3 ? { error: '#N/A' } : row / 7, `row ${row} & more`];
  const formulas = { texts, rowMark: '\uE000' };
  const lazy = (rows: number, skipped = -1): FileChange => ({
    kind: 'rows',
    sheet: 'Plan',
    row: 1,
    column: 3,
    rows,
    columns: 2,
    formulas,
    valuesOf: (row) => (row === skipped ? undefined : valueAt(row)),
  });
  const given = (rows: number, skipped = -1): FileChange =>
    cells(
      1,
      3,
      Array.from({ length: rows }, (_, i) =>
        texts.map((text, c) =>
          i + 1 === skipped
            ? null
            : { formula: text.replaceAll('\uE000', String(i + 2)), value: valueAt(i + 1)[c] as string },
        ),
      ),
    );
  /** Rows with something in them, some of it where ours goes. */
  const rowsOf = (count: number, filler = '') =>
    Array.from(
      { length: count },
      (_, i) => `<row r="${i + 1}"><c r="A${i + 1}" t="str"><v>${filler}</v></c><c r="D${i + 1}"><v>1</v></c></row>`,
    ).join('');

  it.each([
    ['none', '<sheetData/>'],
    ['few', `<sheetData>${rowsOf(3)}</sheetData>`],
    ['more than fit into one piece', `<sheetData>${rowsOf(9000, 'x'.repeat(1000))}</sheetData>`],
  ])('are the same cells as when each was given, where %s stood before', (_, data) => {
    const sheet = (): ReturnType<typeof openTiny> => {
      const book = plan({});
      const bytes = saved(book);
      return openBytes(
        zipParts({ ...bytes, [SHEET1]: bytes[SHEET1]!.replace(/<sheetData.*<\/sheetData>|<sheetData\/>/s, data) }),
      );
    };
    const [a, b] = [sheet(), sheet()];
    a.edit([lazy(7000, 5), look(1, 3, 7000, 1, { bold: true })]);
    b.edit([given(7000, 5), look(1, 3, 7000, 1, { bold: true })]);
    expect(saved(a)).toEqual(saved(b));
    // The second time nothing is different, so nothing is written.
    const again = openBytes(a.save());
    again.edit([lazy(7000, 5), look(1, 3, 7000, 1, { bold: true })]);
    expect(Buffer.from(again.save()).equals(Buffer.from(a.save()))).toBe(true);
  });

  it('keep the values alone when there are no formulas', () => {
    expect(rowsAfter('', { ...lazy(3, 2), formulas: undefined } as FileChange)).toBe(
      '<row r="2"><c r="D2"><v>0.14285714285714285</v></c><c r="E2" t="inlineStr"><is><t>row 1 &amp; more</t></is></c></row>' +
        '<row r="4"><c r="E4" t="inlineStr"><is><t>row 3 &amp; more</t></is></c></row>',
    );
  });

  it('are refused where a cell would get too long a formula', () => {
    const change = {
      ...lazy(3),
      formulas: { texts: [`="${'x'.repeat(8200)}"`, '=1'], rowMark: '\uE000' },
    } as FileChange;
    expect(problemOf(() => plan({}).edit([change])).message).toContain('D4 of sheet Plan has more than 8192');
  });
});

describe('a sheet whose parts stand in the wrong order', () => {
  it('is refused in words when an edit would reach before its cells', () => {
    const book = plan({ before: '<pageMargins left="1"/>', rows: '<row r="1"/>' });
    const rules = [
      { range: { row: 0, column: 0, rows: 1, columns: 1 }, equals: 'x', ink: '#000000', ground: '#ffffff' },
    ];
    const problem = problemOf(() => book.edit([{ kind: 'marks', sheet: 'Plan', rules }]));
    expect([problem.code, problem.message]).toEqual(['unsupported', expect.stringContaining('is damaged')]);
  });
});

describe('cells are written', () => {
  it('beside others, which stay byte for byte', () => {
    const old = `<row  r='1' ht="20" x:y="&lt;"><c r="A1"  t='s'><v>0</v></c><!-- kept --></row>\n<row r="3"/>`;
    expect(rowsAfter(old, cells(0, 1, [[1.5]]), cells(2, 0, [[true]]), cells(1, 3, [['wing & "fin" <tip>']]))).toBe(
      `<row  r='1' ht="20" x:y="&lt;"><c r="A1"  t='s'><v>0</v></c><!-- kept --><c r="B1"><v>1.5</v></c></row>\n` +
        '<row r="2"><c r="D2" t="inlineStr"><is><t>wing &amp; &quot;fin&quot; &lt;tip&gt;</t></is></c></row>' +
        '<row r="3"><c r="A3" t="b"><v>1</v></c></row>',
    );
  });

  it('as formulas in stored form with their exact values', () => {
    const value = 0.1 + 0.2;
    expect(
      rowsAfter(
        '',
        cells(0, 0, [
          [
            { formula: '=CHAN.MASS.RATIO(A1,"a<b")', value },
            { formula: '=B1', value: 'PASS' },
            { formula: '=C1', value: { error: '#N/A' } },
            { formula: '=D1', value: false },
            '=E1',
            { formula: '=F1', value: 1e-7 },
          ],
        ]),
      ),
    ).toBe(
      '<row r="1"><c r="A1"><f>_xldudf_CHAN_MASS_RATIO(A1,&quot;a&lt;b&quot;)</f><v>0.30000000000000004</v></c>' +
        '<c r="B1" t="str"><f>B1</f><v>PASS</v></c><c r="C1" t="e"><f>C1</f><v>#N/A</v></c><c r="D1" t="b"><f>D1</f><v>0</v></c>' +
        '<c r="E1"><f>E1</f></c><c r="F1"><f>F1</f><v>1E-7</v></c></row>',
    );
  });

  it('so that a text which looks like a formula, an escape or white space stays that text', () => {
    const texts = ['=', 'a_x0041_', ' lead', 'two\nlines', 'bell\u0007', '', "'='", '\u{1F600}'];
    const book = plan({});
    book.edit([cells(0, 0, [texts])]);
    const again = openBytes(book.save()).readSheet('Plan');
    expect([again.values[0], again.formulas[0]!.join('')]).toEqual([texts, '']);
  });

  it('into rows without numbers, out of order, without end tag, and into cell data without end tag', () => {
    expect(rowsAfter('<row><c><v>1</v></c></row><row><c/></row>', cells(0, 2, [[3], [4]]))).toBe(
      '<row><c><v>1</v></c><c r="C1"><v>3</v></c></row><row><c/><c r="C2"><v>4</v></c></row>',
    );
    expect(rowsAfter('<row r="4"/><row r="2"/>', cells(0, 0, [[1], [2], [3], [4]]))).toBe(
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>' +
        '<row r="4"><c r="A4"><v>4</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>',
    );
    const book = plan({ xml: `<x:worksheet xmlns:x="${MAIN}"><x:sheetData/><x:pageMargins left="1"/></x:worksheet>` });
    book.edit([cells(0, 0, [[1]])]);
    expect(saved(book)[SHEET1]).toBe(
      `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row></x:sheetData><x:pageMargins left="1"/></x:worksheet>`,
    );
  });

  it('with the hint of used columns dropped only where it would be wrong', () => {
    expect(rowsAfter('<row r="1" spans="1:3"/><row r="2" spans="1:9"/>', cells(0, 4, [[1], [2]]))).toBe(
      '<row r="1"><c r="E1"><v>1</v></c></row><row r="2" spans="1:9"><c r="E2"><v>2</v></c></row>',
    );
  });

  it('with the format of their row or column when they are new, and their own when they are there', () => {
    const xf = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>';
    const styled = openTiny({
      sheets: [
        {
          name: 'Plan',
          before: '<cols><col min="2" max="3" width="9" style="2"/></cols>',
          rows: '<row r="1"><c r="A1" s="1"><v>1</v></c></row><row r="2" s="3" customFormat="1"/>',
        },
      ],
      styles: `<styleSheet xmlns="${MAIN}"><cellXfs count="4">${xf.repeat(4)}</cellXfs></styleSheet>`,
    });
    styled.edit([
      cells(0, 0, [
        [7, 8, null],
        [9, 10, 11],
      ]),
    ]);
    const xml = saved(styled)[SHEET1]!;
    expect(xml).toContain('<c r="A1" s="1"><v>7</v></c><c r="B1" s="2"><v>8</v></c></row>');
    expect(xml).toContain('<c r="A2" s="3"><v>9</v></c><c r="B2" s="3"><v>10</v></c><c r="C2" s="3"><v>11</v></c>');
  });

  it('again without any change to the part when nothing changed', () => {
    const changes = [
      cells(0, 1, [
        ['Verdict', 'Ratio'],
        [
          { formula: '=CHAN.VERDICT.WORST(A2)', value: 'PASS' },
          { formula: '=A2/3', value: 1 / 3 },
        ],
      ]),
      look(0, 1, 1, 2, { bold: true, ink: '#0f4c4a', ground: '#e6efee', wrap: true }),
      look(1, 2, 1, 1, { numberFormat: '0.000', align: 'right' }),
    ];
    const book = plan({ rows: '<row r="1"><c r="A1"><v>1</v></c></row>' });
    book.edit(changes);
    const first = saved(book);
    const again = openBytes(book.save());
    again.edit(changes);
    again.edit([clear(0, 1, 2, 2), ...changes]);
    expect(saved(again)).toEqual(first);
  });

  it('keeping the value of a formula that did not change and was not computed again', () => {
    const old = '<row r="1"><c r="A1"><f>B1*2</f><v>8</v></c></row>';
    expect(rowsAfter(old, cells(0, 0, [['=B1*2']]))).toBe(old);
    expect(rowsAfter(old, cells(0, 0, [['=B1*3']]))).toBe('<row r="1"><c r="A1"><f>B1*3</f></c></row>');
  });

  it('and emptied: the format stays, or goes too when the block is cleared', () => {
    const old = '<row r="1"><c r="A1" s="1"><v>1</v></c><c r="B1"><v>2</v></c><c><v>3</v></c></row>';
    const styles = `<styleSheet xmlns="${MAIN}"><cellXfs count="2"><xf/><xf/></cellXfs></styleSheet>`;
    const after = (...changes: FileChange[]): string => {
      const book = openTiny({ sheets: [{ name: 'Plan', rows: old }], styles });
      book.edit(changes);
      return /<sheetData>(.*)<\/sheetData>/s.exec(saved(book)[SHEET1]!)![1]!;
    };
    expect(after(cells(0, 0, [[null, null]]))).toBe('<row r="1"><c r="A1" s="1"/><c r="C1"><v>3</v></c></row>');
    expect(after(clear(0, 0, 1, 2))).toBe('<row r="1"><c r="C1"><v>3</v></c></row>');
    expect(after(clear(0, 0, 1000, 1000))).toBe('<row r="1"></row>');
  });
});

describe('formulas of the user around ours', () => {
  it('that shared an overwritten formula get it written out', () => {
    const shared =
      '<row r="1"><c r="B1"><f t="shared" ref="B1:B4" si="0">A1*$A$1</f><v>1</v></c></row>' +
      '<row r="2"><c r="B2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>3</v></c></row>';
    expect(rowsAfter(shared, cells(0, 1, [[7], [8]]))).toBe(
      '<row r="1"><c r="B1"><v>7</v></c></row><row r="2"><c r="B2"><v>8</v></c></row>' +
        '<row r="3"><c r="B3"><f>A3*$A$1</f><v>3</v></c></row>',
    );
    expect(rowsAfter(shared, cells(1, 1, [[8]]))).toContain('<f t="shared" ref="B1:B4" si="0">A1*$A$1</f>');
  });

  it.each([
    ['<c r="B1"><f t="array" ref="B1:B3">A1:A3*2</f><v>1</v></c>', 'a formula that fills several cells'],
    ['<c r="B1"><f t="dataTable" ref="B1:C3" r1="A1"/><v>1</v></c>', 'a data table'],
  ])('that fill several cells are not broken: %.40s', (anchor, what) => {
    for (const [row, column] of [
      [0, 1],
      [1, 1],
      [2, 1],
    ] as const) {
      const book = plan({ rows: `<row r="1">${anchor}</row><row r="2"><c r="B2"><v>2</v></c></row>` });
      const before = saved(book);
      const problem = problemOf(() => book.edit([cells(row, column, [[5]])]));
      expect(problem.code).toBe('occupied');
      expect(problem.message).toContain(`Cell B${row + 1} of sheet Plan belongs to ${what}`);
      expect(saved(book)).toEqual(before);
    }
  });

  it('are told when they read cells that were changed', () => {
    const book = openTiny({
      sheets: [
        {
          name: 'Plan',
          rows: '<row r="1"><c r="A1"><f>SUM(B1:B9)</f><v>1</v></c><c r="D1"><f>C1</f><v>1</v></c></row>',
        },
        {
          name: 'Totals',
          rows: '<row r="1"><c r="A1"><f>Plan!B2*2</f></c><c r="B1"><f>SUM(Plan!B:B)</f></c><c r="C1"><f>B2</f></c></row>',
        },
      ],
    });
    book.edit([cells(1, 1, [[5]])]);
    expect(book.dependents()).toEqual(['Plan!A1', 'Totals!A1', 'Totals!B1']);
    // A new look is no new formula.
    const row = '<row r="1"><c r="A1"><f>SUM(B1:B9)</f><v>1</v></c></row>';
    const styled = plan({ rows: row });
    styled.edit([cells(1, 1, [[5]]), look(0, 0, 3, 3, { bold: true })]);
    expect(styled.dependents()).toEqual(['Plan!A1']);
  });
});

describe('a result that fills a block', () => {
  const spans = (low: number, high: number): FileCell => ({
    formula: '=CHAN.FREQUENCY.SPAN(A1)',
    value: [[low, high]],
  });

  it('is stored as one that spills, with the metadata that says so, and is replaced as a whole', () => {
    const book = plan({});
    book.edit([
      cells(0, 1, [
        [spans(2, 900)],
        [
          {
            formula: '=CHAN.FREQUENCY.SPAN(A2)',
            value: [
              ['low', 1],
              ['high', 2],
            ],
          },
        ],
      ]),
    ]);
    const first = saved(book);
    expect(first[SHEET1]).toContain(
      '<row r="1"><c r="B1" cm="1"><f t="array" ref="B1:C1">_xldudf_CHAN_FREQUENCY_SPAN(A1)</f><v>2</v></c><c r="C1"><v>900</v></c></row>',
    );
    expect(first[SHEET1]).toContain('<row r="3"><c r="B3" t="str"><v>high</v></c><c r="C3"><v>2</v></c></row>');
    expect(first['xl/metadata.xml']).toContain('fDynamic="1"');
    const again = openBytes(book.save());
    again.edit([
      cells(0, 1, [
        [spans(2, 900)],
        [
          {
            formula: '=CHAN.FREQUENCY.SPAN(A2)',
            value: [
              ['low', 1],
              ['high', 2],
            ],
          },
        ],
      ]),
    ]);
    expect(saved(again)).toEqual(first);
    again.edit([cells(1, 1, [['alone']])]);
    expect(again.readSheet('Plan').values).toEqual([
      [2, 900],
      ['alone', null],
    ]);
    expect(problemOf(() => again.edit([cells(0, 2, [[1]])])).message).toContain('C1 of sheet Plan belongs to');
  });

  it('uses metadata that is there and leaves other entries in their places', () => {
    const types = {
      'xl/metadata.xml': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml',
    };
    const metadata =
      `<metadata xmlns="${MAIN}"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes>` +
      '<futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>' +
      '<valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>';
    const book = openTiny({
      sheets: [{ name: 'Plan' }],
      parts: { 'xl/metadata.xml': metadata },
      types,
      workbookRelations: [['rIdM', 'sheetMetadata', 'metadata.xml']],
    });
    book.edit([cells(0, 0, [[spans(1, 2)]])]);
    const xml = saved(book)['xl/metadata.xml']!;
    expect(xml).toMatch(/<metadataTypes count="2"><metadataType name="XLRICHVALUE"\/><metadataType name="XLDAPR"/);
    expect(xml).toMatch(/<cellMetadata count="1"><bk><rc t="2" v="0"\/><\/bk><\/cellMetadata><valueMetadata/);
  });

  it('refuses a cell of somebody else in its way', () => {
    const book = plan({ rows: '<row r="1"><c r="C1"><v>7</v></c></row>' });
    expect(problemOf(() => book.edit([cells(0, 1, [[spans(2, 900)]])])).message).toBe(
      'Cell C1 of sheet Plan is in the way of a result.',
    );
  });
});

describe('a change is refused, with cell and reason,', () => {
  it.each<[string, FileChange, HostProblem['code'], string]>([
    ['inside a merged block', cells(5, 1, [[1]]), 'occupied', 'B6 of sheet Plan lies inside a merged block'],
    ['on a missing sheet', { ...cells(0, 0, [[1]]), sheet: 'Nowhere' } as FileChange, 'not-found', 'Nowhere'],
    ['for a text that is too long', cells(0, 0, [['x'.repeat(32_768)]]), 'too-large', 'A1 of sheet Plan'],
    ['for a formula that is too long', cells(0, 0, [[`="${'x'.repeat(9000)}"`]]), 'too-large', 'A1 of sheet Plan'],
    ['beyond the last column', cells(0, 16_384, [[1]]), 'unsupported', 'no such cells'],
    ['for a sheet name with a slash', { kind: 'sheet', name: 'a/b' }, 'unsupported', 'a/b'],
  ])('%s', (_, change, code, reason) => {
    const book = plan({ behind: '<mergeCells><mergeCell ref="A6:C7"/></mergeCells>' });
    const problem = problemOf(() => book.edit([cells(0, 8, [[1]]), change]));
    expect([problem.code, problem.message.includes(reason)]).toEqual([code, true]);
    expect(book.readSheet('Plan').values).toEqual([]);
  });

  it('but the first cell of a merged block can be written', () => {
    const book = plan({ behind: '<mergeCells><mergeCell ref="A6:C7"/></mergeCells>' });
    book.edit([cells(5, 0, [[1, null]])]);
    expect(book.readSheet('Plan').values).toEqual([[1]]);
  });
});

describe('formats', () => {
  const strict = { main: STRICT_MAIN, office: STRICT_OFFICE };

  it('are added to the cell format that is there and never change another', () => {
    const xfs =
      '<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>' +
      '<xf numFmtId="14" fontId="0" fillId="0" borderId="1" xfId="0" applyBorder="1"><alignment vertical="top"/><protection locked="0"/></xf></cellXfs>';
    const styles =
      `<styleSheet xmlns="${STRICT_MAIN}"><fonts count="1"><font><sz val="10"/><color theme="1"/><name val="Arial"/></font></fonts>` +
      `<fills count="2"><fill/><fill/></fills><borders count="2"><border/><border/></borders>${xfs}<dxfs count="0"/></styleSheet>`;
    const book = openTiny({
      sheets: [{ name: 'Plan', rows: '<row r="1"><c r="A1" s="1"><v>1</v></c></row>' }],
      styles,
      ...strict,
    });
    book.edit([
      look(0, 0, 1, 1, {
        bold: true,
        ink: '#112233',
        ground: '#ffeedd',
        numberFormat: '0.0 "g"',
        align: 'right',
        wrap: true,
      }),
    ]);
    const after = saved(book);
    expect(after[SHEET1]).toContain('<c s="2" r="A1">');
    const xml = after['xl/styles.xml']!;
    expect(xml).toContain(
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.0 &quot;g&quot;"/></numFmts><fonts count="2">',
    );
    expect(xml).toContain('<font><b/><sz val="10"/><color rgb="FF112233"/><name val="Arial"/></font></fonts>');
    expect(xml).toContain(
      '<patternFill patternType="solid"><fgColor rgb="FFFFEEDD"/><bgColor indexed="64"/></patternFill>',
    );
    expect(xml).toContain(
      '<xf numFmtId="164" fontId="1" fillId="2" borderId="1" xfId="0" applyBorder="1" applyNumberFormat="1" applyFont="1" applyFill="1" applyAlignment="1">' +
        '<alignment vertical="top" horizontal="right" wrapText="1"/><protection locked="0"/></xf></cellXfs>',
    );
    expect(xml).toContain('<cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>');
  });

  it('are made in a workbook that has none', () => {
    const book = plan({});
    book.edit([look(0, 0, 2, 1, { bold: true })]);
    expect(saved(book)['xl/styles.xml']).toContain('<cellXfs count="2">');
    expect(saved(book)['xl/workbook.xml']).not.toContain('styles');
    expect(saved(book)['xl/_rels/workbook.xml.rels']).toContain('relationships/styles" Target="/xl/styles.xml"');
  });

  it('laid over a whole block cost one format for each format below, not one for each cell', () => {
    const book = plan({ rows: '<row r="1"><c r="A1"><v>1</v></c></row>' });
    book.edit([look(0, 0, 500, 20, { ink: '#445566' }), look(0, 0, 500, 20, { bold: true })]);
    expect(saved(book)['xl/styles.xml']).toContain('<cellXfs count="2">');
  });
});
