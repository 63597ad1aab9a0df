import fc from 'fast-check';
import { nodeCodec } from '../../../src/adapters/xlsx/codec-node';
import { FILE_LIMITS } from '../../../src/adapters/xlsx/limits';
import { openWorkbook } from '../../../src/adapters/xlsx/workbook-file';
import { HostProblem } from '../../../src/workbook/port';
import { MAIN, openBytes, tinyParts, zipParts, type Parts } from './tiny-workbook';

/** More with CHANNELWRIGHT_MUTATIONS=100000 npx jest test/adapters/xlsx/mutated */
const RUNS = Number(process.env.CHANNELWRIGHT_MUTATIONS ?? 2400);
/** Of the processor: other work on the machine does not count. */
const LONGEST_MS = 2000;

const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const PARTS: Parts = tinyParts({
  sheets: [
    {
      name: 'Plan',
      before: '<dimension ref="A1:C3"/><cols><col min="1" max="2" width="9" style="1" customWidth="1"/></cols>',
      rows:
        '<row r="1" spans="1:3"><c r="A1" t="s"><v>0</v></c><c r="B1" s="1"><v>46083</v></c><c r="C1"><f t="shared" ref="C1:C3" si="0">A1*2</f><v>1</v></c></row>' +
        '<row r="2"><c r="A2" t="inlineStr"><is><t>fin</t></is></c><c r="C2"><f t="shared" si="0"/><v>2</v></c></row>' +
        '<row r="3"><c r="A3"><f t="array" ref="A3:B3">_xldudf_CHAN_FREQUENCY_SPAN(C1)</f><v>1</v></c><c r="B3"><v>2</v></c><c r="C3"><f t="shared" si="0"/></c></row>',
      behind:
        '<mergeCells count="1"><mergeCell ref="E1:F2"/></mergeCells><conditionalFormatting sqref="A1"><cfRule type="expression" dxfId="0" priority="1"><formula>A1=1</formula></cfRule></conditionalFormatting>' +
        '<legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId3"/></tableParts>',
      relations: [
        ['rId1', 'comments', '../comments1.xml'],
        ['rId2', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
        ['rId3', 'table', '../tables/table1.xml'],
      ],
    },
  ],
  sharedStrings: `<sst xmlns="${MAIN}"><si><r><t>wing</t></r></si></sst>`,
  styles: `<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><cellXfs count="2"><xf/><xf numFmtId="14"/></cellXfs><dxfs count="1"><dxf/></dxfs></styleSheet>`,
  parts: {
    'xl/comments1.xml': `<comments xmlns="${MAIN}"><authors><author>Channelwright</author></authors><commentList><comment ref="A1" authorId="0"><text><t>x</t></text></comment></commentList></comments>`,
    'xl/drawings/vmlDrawing1.vml':
      '<xml><o:idmap data="1"/><v:shape id="_x0000_s1025"><x:ClientData ObjectType="Note"><x:Row>0</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>',
    'xl/tables/table1.xml': `<table xmlns="${MAIN}" displayName="T" ref="H1:H3"><tableColumns count="1"><tableColumn id="1" name="Point"/></tableColumns></table>`,
    'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="C1" i="1"/></calcChain>`,
  },
  types: { 'xl/comments1.xml': `${TYPES}.comments+xml`, 'xl/tables/table1.xml': `${TYPES}.table+xml` },
  workbookRelations: [['rIdC', 'calcChain', 'calcChain.xml']],
});

/** Reads and edits everything; a problem must be one that is told in words. Returns whether the file was taken. */
const handle = (bytes: Uint8Array): boolean => {
  const started = process.cpuUsage();
  try {
    const book = openWorkbook(bytes, {
      codec: nodeCodec,
      functionNames: ['FREQUENCY.SPAN'],
      limits: { ...FILE_LIMITS, partBytes: 1 << 24, totalBytes: 1 << 26, cells: 1 << 20 },
    });
    book.sheets.forEach(({ name }) => book.readSheet(name));
    const sheet = book.sheets[0]?.name ?? 'Plan';
    book.edit([
      {
        kind: 'cells',
        sheet,
        row: 0,
        column: 2,
        cells: [['=A1'], ['x'], [{ formula: '=CHAN.FREQUENCY.SPAN(1)', value: [[1, 2]] }]],
      },
      {
        kind: 'look',
        sheet,
        range: { row: 0, column: 2, rows: 3, columns: 2 },
        look: { bold: true, ground: '#aabbcc' },
      },
      { kind: 'note', sheet, row: 0, column: 0, text: 'y' },
      { kind: 'note', sheet, row: 1, column: 0, text: 'z' },
      {
        kind: 'marks',
        sheet,
        rules: [{ range: { row: 0, column: 2, rows: 3, columns: 1 }, equals: 'x', ink: '#000000', ground: '#ffffff' }],
      },
      { kind: 'width', sheet, column: 1, columns: 1, characters: 12 },
      { kind: 'sheet', name: 'New' },
    ]);
    book.setSetting('a', '1');
    book.dependents();
    const again = openBytes(book.save());
    again.sheets.forEach(({ name }) => again.readSheet(name));
    return true;
  } catch (error) {
    if (!(error instanceof HostProblem)) throw error;
    return false;
  } finally {
    const { user, system } = process.cpuUsage(started);
    expect((user + system) / 1000).toBeLessThan(LONGEST_MS);
  }
};

const names = Object.keys(PARTS);
const snippets = fc.constantFrom(
  '',
  '<',
  '>',
  '/>',
  '"',
  '&',
  '&#0;',
  '<row r="1"/>',
  '<c r="A1"/>',
  '<c/>',
  'r="XFD1048576"',
  'r="A0"',
  '-1',
  '1e99',
  '\0',
  '\u{1F600}',
  '<sheetData/>',
  ' t="shared" si="0"',
  ' t="array" ref="A1:XFD1048576"',
  ' s="99999"',
  '<!--',
  ']]>',
  '<![CDATA[',
  '</row>',
  'xmlns="u"',
  'A1:A1',
);

describe('a damaged workbook', () => {
  it('is whole before it is damaged', () => {
    expect(handle(zipParts(PARTS))).toBe(true);
  });

  it(`is read and edited or refused in words, never worse, in ${RUNS} ways of damage inside parts`, () => {
    let taken = 0;
    const damage = fc.record({ part: fc.nat(names.length - 1), at: fc.nat(4000), cut: fc.nat(30), put: snippets });
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 3 }), (damages) => {
        const parts = { ...PARTS };
        for (const { part, at, cut, put } of damages) {
          const text = String(parts[names[part]!]);
          const place = at % text.length;
          parts[names[part]!] = text.slice(0, place) + put + text.slice(place + cut);
        }
        if (handle(zipParts(parts))) taken++;
      }),
      { numRuns: RUNS },
    );
    // Both outcomes must have been seen, or the damage is too weak or too strong to show anything.
    expect(taken).toBeGreaterThan(RUNS / 100);
    expect(taken).toBeLessThan(RUNS);
  });

  it(`is read and edited or refused in words when bytes of the container change, in ${Math.ceil(RUNS / 4)} ways`, () => {
    const whole = zipParts(PARTS);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 }),
        (changes) => {
          const bytes = whole.slice();
          for (const [at, byte] of changes) bytes[at] = byte;
          handle(bytes);
        },
      ),
      { numRuns: Math.ceil(RUNS / 4) },
    );
  });

  it('is refused without a part that it cannot do without, and taken without any other', () => {
    const without = (name: string): Uint8Array =>
      zipParts(Object.fromEntries(Object.entries(PARTS).filter(([other]) => other !== name)));
    expect(names.filter((name) => !handle(without(name)))).toEqual([
      '[Content_Types].xml',
      'xl/worksheets/sheet1.xml',
      'xl/worksheets/_rels/sheet1.xml.rels',
      'xl/workbook.xml',
      '_rels/.rels',
      'xl/drawings/vmlDrawing1.vml',
    ]);
    expect(handle(zipParts({}))).toBe(false);
  });
});
