import type { FileChange } from '../../../src/adapters/xlsx/changes';
import type { WorkbookFile } from '../../../src/adapters/xlsx/workbook-file';
import { HostProblem } from '../../../src/workbook/port';
import { MAIN, openBytes, openTiny, saved, SHEET1, type TinySheet, type TinyWorkbook } from './tiny-workbook';

const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const plan = (sheet: Partial<TinySheet> = {}, book: Partial<TinyWorkbook> = {}) =>
  openTiny({ sheets: [{ name: 'Plan', rows: '<row r="1"><c r="A1"><v>1</v></c></row>', ...sheet }], ...book });
const note = (row: number, column: number, text: string | null): FileChange => ({
  kind: 'note',
  sheet: 'Plan',
  row,
  column,
  text,
});
const problemOf = (book: WorkbookFile, ...changes: FileChange[]): HostProblem => {
  const before = saved(book);
  try {
    book.edit(changes);
  } catch (error) {
    expect(saved(book)).toEqual(before);
    if (error instanceof HostProblem) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('notes', () => {
  const comments = (author: string, ref = 'A1'): string =>
    `<comments xmlns="${MAIN}"><authors><author>${author}</author></authors><commentList>` +
    `<comment ref="${ref}" authorId="0"><text><r><rPr><b/></rPr><t>keep me</t></r></text></comment></commentList></comments>`;
  // A drawing as a form control leaves it: no box for notes yet, a tag that is no XML, ids up to 1030.
  const drawing =
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">' +
    '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>' +
    '<v:shape id="_x0000_s1025" type="#_x0000_t201"><v:textbox><div>Start<br></div></v:textbox><x:ClientData ObjectType="Button"/></v:shape></xml>';
  const withNote = (author: string) =>
    plan(
      {
        behind: '<drawing r:id="rId9"/><legacyDrawing r:id="rId2"/><tableParts count="0"/>',
        relations: [
          ['rId1', 'comments', '../comments1.xml'],
          ['rId2', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
          ['rId9', 'drawing', '../drawings/drawing1.xml'],
        ],
      },
      {
        parts: {
          'xl/comments1.xml': comments(author),
          'xl/drawings/vmlDrawing1.vml': drawing,
          'xl/drawings/drawing1.xml': '<wsDr/>',
        },
        types: {
          'xl/comments1.xml': `${TYPES}.comments+xml`,
          'xl/drawings/vmlDrawing1.vml': 'application/vnd.openxmlformats-officedocument.vmlDrawing',
        },
      },
    );

  it('get their text and their box where the sheet had none, the drawing in its place among the sections', () => {
    const book = plan({ behind: '<pageMargins left="1"/><tableParts count="0"/><extLst/>' });
    book.edit([note(0, 0, 'Because\n3 < 4'), note(4, 2, 'Second')]);
    const parts = saved(book);
    expect(parts[SHEET1]).toMatch(/<pageMargins left="1"\/><legacyDrawing r:id="rId2"\/><tableParts count="0"\/>/);
    expect(parts['xl/comments1.xml']).toContain(
      '<author>Channelwright</author></authors><commentList><comment ref="A1" authorId="0"><text><t xml:space="preserve">Because\n3 &lt; 4</t></text></comment>',
    );
    const boxes = parts['xl/drawings/vmlDrawing1.vml']!;
    expect([...boxes.matchAll(/_x0000_s(\d+)/g)].map(([, id]) => id)).toEqual(['1025', '1026']);
    expect(boxes).toMatch(/<x:Row>4<\/x:Row><x:Column>2<\/x:Column>/);
    expect(parts['[Content_Types].xml']).toContain('Extension="vml"');
    expect(parts['xl/worksheets/_rels/sheet1.xml.rels']).toMatch(/comments1\.xml.*vmlDrawing1\.vml/);
  });

  it('of ours are changed and removed, others stay as they are', () => {
    const book = withNote('A. Planner');
    const before = saved(book);
    book.edit([note(1, 1, 'first'), note(2, 1, 'second')]);
    book.edit([note(1, 1, 'changed'), note(0, 0, null)]);
    expect(saved(book)['xl/comments1.xml']).toContain('keep me');
    expect(saved(book)['xl/comments1.xml']).toMatch(/<comment ref="B2" authorId="1"><text><t>changed<\/t>/);
    expect(saved(book)['xl/drawings/vmlDrawing1.vml']).toContain('Start<br></div>');
    book.edit([{ kind: 'clear', sheet: 'Plan', range: { row: 0, column: 0, rows: 5, columns: 5 } }]);
    const after = saved(book);
    expect(after['xl/comments1.xml']).toBe(
      before['xl/comments1.xml']!.replace('</author>', '</author><author>Channelwright</author>'),
    );
    expect(after['xl/drawings/vmlDrawing1.vml']).not.toContain('"Note"');
    expect(after['xl/drawings/vmlDrawing1.vml']).toContain('_x0000_s1025');
    expect(after[SHEET1]).toContain('<drawing r:id="rId9"/><legacyDrawing r:id="rId2"/><tableParts count="0"/>');
  });

  it.each([
    ['A. Planner', "somebody's note"],
    ['tc={4B5B1C5D-3A6F-4E0C-8C2B-0F0A3E0D6E11}', 'a conversation of comments'],
  ])('by %s are never replaced', (author, what) => {
    const problem = problemOf(withNote(author), note(1, 1, 'fine'), note(0, 0, 'ours'));
    expect(problem.code).toBe('occupied');
    expect(problem.message).toContain(`Cell A1 of sheet Plan has ${what}`);
  });

  it('get ids of their own when there are more than one block holds', () => {
    const book = openTiny({ sheets: [{ name: 'Plan' }, { name: 'Other' }] });
    book.edit([{ ...note(0, 0, 'other'), sheet: 'Other' } as FileChange]);
    book.edit(Array.from({ length: 1500 }, (_, n) => note(n, 0, `note ${n}`)));
    const parts = saved(book);
    const idsIn = (part: string) => [...parts[part]!.matchAll(/id="_x0000_s(\d+)/g)].map(([, id]) => Number(id));
    const own = idsIn('xl/drawings/vmlDrawing2.vml');
    expect(new Set([...own, ...idsIn('xl/drawings/vmlDrawing1.vml')]).size).toBe(1501);
    const blocks = /idmap v:ext="edit" data="([\d,]+)"/
      .exec(parts['xl/drawings/vmlDrawing2.vml']!)![1]!
      .split(',')
      .map(Number);
    expect(new Set(own.map((id) => Math.floor(id / 1024)))).toEqual(new Set(blocks));
  });
});

describe('marks', () => {
  const rule = (equals: string) => ({
    range: { row: 1, column: 2, rows: 9, columns: 1 },
    equals,
    ink: '#000000',
    ground: '#ffffff',
  });
  const foreign =
    '<conditionalFormatting sqref="A1:A9"><cfRule type="cellIs" dxfId="0" priority="4" operator="equal"><formula>"PASS"</formula></cfRule></conditionalFormatting>';
  const extension =
    '<extLst><ext uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings xmlns:x14="urn:x14"><x14:conditionalFormatting><x14:cfRule type="dataBar" priority="7" id="{1}"/></x14:conditionalFormatting></x14:conditionalFormattings></ext></extLst>';
  const styles = `<styleSheet xmlns="${MAIN}"><cellXfs count="1"><xf/></cellXfs><dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>`;
  const marked = () => plan({ behind: `${foreign}<pageMargins left="1"/>${extension}` }, { styles });
  const marks = (...rules: string[]): FileChange => ({ kind: 'marks', sheet: 'Plan', rules: rules.map(rule) });

  it('come behind all other rules, in the place that the format fixes', () => {
    const book = marked();
    book.edit([marks('PASS', 'say "no"')]);
    const xml = saved(book)[SHEET1]!;
    expect(xml).toContain(
      `${foreign}<conditionalFormatting sqref="C2:C10"><cfRule type="expression" dxfId="1" priority="8"><formula>AND(EXACT(C2,&quot;PASS&quot;),N(&quot;Channelwright&quot;)=0)</formula></cfRule>` +
        '<cfRule type="expression" dxfId="1" priority="9"><formula>AND(EXACT(C2,&quot;say &quot;&quot;no&quot;&quot;&quot;),',
    );
    expect(xml).toContain(`</conditionalFormatting><pageMargins left="1"/>${extension}`);
    expect(saved(book)['xl/styles.xml']).toContain('<dxfs count="2">');
  });

  it('replace the ones we set before and no others, so that a second run changes nothing', () => {
    const book = marked();
    const before = saved(book)[SHEET1];
    book.edit([marks('PASS', 'FAIL')]);
    const first = saved(book);
    book.edit([marks('PASS', 'FAIL')]);
    expect(saved(book)).toEqual(first);
    book.edit([marks('WARN')]);
    expect(saved(book)[SHEET1]).not.toContain('PASS&quot;');
    book.edit([marks()]);
    expect(saved(book)[SHEET1]).toBe(before);
  });
});

describe('column widths', () => {
  const width = (column: number, columns: number): FileChange => ({
    kind: 'width',
    sheet: 'Plan',
    column,
    columns,
    characters: 10,
  });
  // 10 digits of 7 pixels and 5 of padding: trunc((10*7+5)/7*256)/256 (ECMA-376 part 1, 18.3.1.13).
  const stored = 'width="10.7109375" customWidth="1"';

  it('are set in a sheet without columns, before the cell data', () => {
    const book = plan({ before: '<sheetFormatPr defaultRowHeight="15"/>' });
    book.edit([width(1, 2)]);
    expect(saved(book)[SHEET1]).toContain(
      `<sheetFormatPr defaultRowHeight="15"/><cols><col min="2" max="2" ${stored}/><col min="3" max="3" ${stored}/></cols><sheetData>`,
    );
  });

  it('are cut out of a wider span that keeps its other properties', () => {
    const book = plan({ before: '<cols><col min="1" max="5" width="8" style="0" hidden="1" bestFit="1"/></cols>' });
    book.edit([width(2, 1)]);
    const first = saved(book)[SHEET1]!;
    expect(first).toContain(
      '<cols><col min="1" max="2" width="8" style="0" hidden="1" bestFit="1"/>' +
        '<col min="3" max="3" width="10.7109375" style="0" hidden="1" customWidth="1"/>' +
        '<col min="4" max="5" width="8" style="0" hidden="1" bestFit="1"/></cols>',
    );
    book.edit([width(2, 1)]);
    expect(saved(book)[SHEET1]).toBe(first);
  });
});

describe('tables', () => {
  const table =
    `<table xmlns="${MAIN}" id="3" name="Loads" displayName="Loads" ref="A1:B3" totalsRowShown="0"><autoFilter ref="A1:B3"/>` +
    '<tableColumns count="2"><tableColumn id="1" name="Point"/><tableColumn id="5" name="Level"/></tableColumns><tableStyleInfo name="TableStyleMedium2"/></table>';
  const withTable = () =>
    plan(
      {
        rows: '<row r="1"><c r="A1" t="str"><v>Point</v></c><c r="B1" t="str"><v>Level</v></c><c r="C1" t="str"><v>Old</v></c></row>',
        behind: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
        relations: [['rId1', 'table', '../tables/table1.xml']],
      },
      { parts: { 'xl/tables/table1.xml': table }, types: { 'xl/tables/table1.xml': `${TYPES}.table+xml` } },
    );
  const cells = (row: number, column: number, ...line: (string | null)[]): FileChange => ({
    kind: 'cells',
    sheet: 'Plan',
    row,
    column,
    cells: [line],
  });
  const extend = (columns: number): FileChange => ({ kind: 'extend-table', sheet: 'Plan', table: 'Loads', columns });

  it('take in columns under the headings that stand there or are written in the same action', () => {
    const book = withTable();
    book.edit([extend(3), cells(0, 3, 'Verdict', 'Why\nso')]);
    expect(saved(book)['xl/tables/table1.xml']).toBe(
      table
        .replaceAll('A1:B3', 'A1:E3')
        .replace('count="2"', 'count="5"')
        .replace(
          '</tableColumns>',
          '<tableColumn id="6" name="Old"/><tableColumn id="7" name="Verdict"/><tableColumn id="8" name="Why_x000a_so"/></tableColumns>',
        ),
    );
  });

  it('keep the name of a column equal to its heading', () => {
    const book = withTable();
    book.edit([cells(0, 1, 'Level, g')]);
    expect(saved(book)['xl/tables/table1.xml']).toContain('<tableColumn id="5" name="Level, g"/>');
    book.edit([cells(0, 1, 'Level, g')]);
    expect(saved(book)['xl/tables/table1.xml']).toContain('<tableColumn id="5" name="Level, g"/>');
  });

  it.each<[string, FileChange[], string]>([
    ['a heading is emptied', [cells(0, 1, null)], 'Cell B1 of sheet Plan is a heading of table Loads'],
    ['two columns get one heading', [cells(0, 1, 'POINT')], 'has a column "POINT" already'],
    ['a new column has no heading', [extend(2)], 'cannot take in a column without a heading'],
    ['there is no such table', [{ ...extend(1), table: 'Nowhere' } as FileChange], 'no table Nowhere'],
    [
      'a formula would fill several cells inside',
      [{ kind: 'cells', sheet: 'Plan', row: 1, column: 1, cells: [[{ formula: '=A1', value: [[1, 2]] }]] }],
      'cannot fill several cells',
    ],
  ])('refuse when %s', (_, changes, reason) => {
    expect(problemOf(withTable(), ...changes).message).toContain(reason);
  });
});

describe('the workbook', () => {
  it('gets a new sheet behind all others, so that names bound to a sheet by number stay right', () => {
    const book = plan(
      {},
      {
        workbookBehind:
          '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Plan!$A$1</definedName></definedNames>',
      },
    );
    book.edit([
      { kind: 'sheet', name: "Results & 'own' notes" },
      { kind: 'cells', sheet: "Results & 'own' notes", row: 0, column: 0, cells: [['x']] },
    ]);
    const parts = saved(book);
    expect(parts['xl/workbook.xml']).toMatch(
      /<sheet name="Plan" sheetId="1" r:id="rId1"\/><sheet [^>]*name="Results &amp; 'own' notes" sheetId="2" r:id="rId2"\/><\/sheets><definedNames>/,
    );
    expect(openBytes(book.save()).readSheet("Results & 'own' notes").values).toEqual([['x']]);
    book.edit([{ kind: 'sheet', name: "results & 'OWN' NOTES" }]);
    expect(saved(book)).toEqual(parts);
  });

  it('refuses a new sheet when its structure is protected', () => {
    const book = plan({}, { workbookBefore: '<workbookProtection lockStructure="1"/>' });
    expect(problemOf(book, { kind: 'sheet', name: 'Results' }).code).toBe('protected');
  });

  it('loses its saved order of calculation only when formulas come or go', () => {
    const chained = () =>
      plan(
        { rows: '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>' },
        {
          parts: { 'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="A1" i="1"/></calcChain>` },
          types: { 'xl/calcChain.xml': `${TYPES}.calcChain+xml` },
          workbookRelations: [['rIdC', 'calcChain', 'calcChain.xml']],
          workbookBehind: '<calcPr calcId="191029"/>',
        },
      );
    const book = chained();
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [[5]] }]);
    expect(saved(book)['xl/calcChain.xml']).toBeDefined();
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [[{ formula: '=1+1', value: 2 }]] }]);
    const parts = saved(book);
    expect(
      [parts['xl/calcChain.xml'], parts['[Content_Types].xml'], parts['xl/_rels/workbook.xml.rels']].join(),
    ).not.toContain('calcChain');
    expect(parts['xl/workbook.xml']).toContain('<calcPr calcId="191029"/>');
    book.calculateOnOpen();
    expect(saved(book)['xl/workbook.xml']).toContain('<calcPr fullCalcOnLoad="1" calcId="191029"/>');
  });

  it('keeps macros and its kind', () => {
    const book = plan(
      {},
      {
        macros: true,
        parts: { 'xl/vbaProject.bin': new Uint8Array([1, 2, 3, 250]) },
        types: { 'xl/vbaProject.bin': 'application/vnd.ms-office.vbaProject' },
        workbookRelations: [['rIdV', 'vbaProject', 'vbaProject.bin']],
      },
    );
    const before = saved(book);
    book.edit([note(0, 0, 'x')]);
    expect(saved(book)['xl/vbaProject.bin']).toBe(before['xl/vbaProject.bin']);
    expect(saved(book)['[Content_Types].xml']).toContain('application/vnd.ms-excel.sheet.macroEnabled.main+xml');
  });

  it('warns of a signature, of protection and of a log of changes', () => {
    const book = plan(
      { behind: '<sheetProtection sheet="1"/>' },
      {
        parts: { '_xmlsignatures/origin.sigs': 'x', 'xl/revisions/headers.xml': '<headers/>' },
        workbookRelations: [['rIdR', 'revisionHeaders', 'revisions/headers.xml']],
      },
    );
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [[5]] }]);
    expect([...book.warnings].map((warning) => /signed|log|protected/.exec(warning)?.[0])).toEqual([
      'signed',
      'log',
      'protected',
    ]);
  });

  it('carries settings in a part of its own beside those of others', () => {
    const book = plan(
      {},
      {
        parts: { 'customXml/item1.xml': '<other/>' },
        workbookRelations: [['rIdX', 'customXml', '../customXml/item1.xml']],
      },
    );
    book.setSetting('mapping', '{"mass":"<&>"}');
    const parts = saved(book);
    expect(parts['customXml/item1.xml']).toBe('<other/>');
    expect(parts['customXml/item2.xml']).toContain(
      '<setting key="mapping">{&quot;mass&quot;:&quot;&lt;&amp;&gt;&quot;}</setting>',
    );
    expect(openBytes(book.save()).getSetting('mapping')).toBe('{"mass":"<&>"}');
  });
});
