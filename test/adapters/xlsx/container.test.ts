import { crc32 } from 'node:zlib';
import { unzipSync } from 'fflate';
import fc from 'fast-check';
import { browserCodec } from '../../../src/adapters/xlsx/codec-browser';
import { nodeCodec } from '../../../src/adapters/xlsx/codec-node';
import { FILE_LIMITS, PANE_LIMITS } from '../../../src/adapters/xlsx/limits';
import { openWorkbook } from '../../../src/adapters/xlsx/workbook-file';
import { readZip } from '../../../src/adapters/xlsx/zip-read';
import { writeZip } from '../../../src/adapters/xlsx/zip-write';
import { HostProblem } from '../../../src/workbook/port';
import { rawZip, type RawEntry } from './raw-zip';
import { openBytes, openTiny, saved, sheetXml, tinyParts, unzipParts, zipParts } from './tiny-workbook';

const bytesOf = (text: string): Uint8Array => new Uint8Array(Buffer.from(text));
const PLAN = { name: 'Plan', rows: '<row r="1"><c r="A1"><v>1</v></c></row>' };
const PARTS = tinyParts({ sheets: [PLAN] });
/** The tiny workbook in a container written field by field, with entries added or exchanged. */
const rawWorkbook = (more: readonly RawEntry[] = [], without: readonly string[] = []): Uint8Array =>
  rawZip([
    ...Object.entries(PARTS)
      .filter(([name]) => !without.includes(name))
      .map(([name, content]) => ({ name, content: bytesOf(String(content)) })),
    ...more,
  ]);
const problemOf = (bytes: Uint8Array): HostProblem => {
  try {
    const book = openBytes(bytes);
    book.sheets.forEach(({ name }) => book.readSheet(name));
  } catch (error) {
    if (error instanceof HostProblem) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('the container', () => {
  it('keeps every entry of any archive, as another program unpacks it', () => {
    const names = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,8}(\/[a-z]{1,8})?\.(xml|bin)$/), { maxLength: 8 });
    fc.assert(
      fc.property(names, fc.infiniteStream(fc.uint8Array({ maxLength: 300 })), (list, contents) => {
        const parts = Object.fromEntries(list.map((name) => [name, contents.next().value]));
        const again = unzipSync(Uint8Array.from(writeZip(readZip(zipParts(parts), FILE_LIMITS))));
        expect(Object.keys(again)).toEqual(list);
        for (const name of list) expect(Buffer.from(again[name]!).equals(Buffer.from(parts[name]!))).toBe(true);
      }),
    );
  });

  it('copies what is not edited without packing it again, and takes no folder along', () => {
    const bytes = rawWorkbook([{ name: 'xl/media/' }, { name: 'xl/media/photo.png', content: bytesOf('\x89PNG') }]);
    const before = new Map(readZip(bytes, FILE_LIMITS).map((entry) => [entry.name, entry]));
    const book = openBytes(bytes);
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [[2]] }]);
    const after = readZip(book.save(), FILE_LIMITS);
    expect(after.map(({ name }) => name)).toEqual([...before.keys()]);
    for (const { name, packed } of after)
      expect(Buffer.from(packed).equals(Buffer.from(before.get(name)!.packed))).toBe(
        name !== 'xl/worksheets/sheet1.xml',
      );
  });

  it('gives the same file for the same edits, whenever it is written', () => {
    const once = (): Uint8Array => {
      const book = openBytes(zipParts(PARTS));
      book.edit([
        { kind: 'note', sheet: 'Plan', row: 0, column: 0, text: 'why' },
        { kind: 'sheet', name: 'Summary' },
      ]);
      return book.save();
    };
    expect(Buffer.from(once()).equals(Buffer.from(once()))).toBe(true);
  });

  it.each([
    ['Node', nodeCodec],
    ['the browser', browserCodec],
  ])('packs, unpacks and sums alike in %s', (_, codec) => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 5000 }), fc.integer({ min: 1, max: 40 }), (piece, times) => {
        const content = new Uint8Array(Buffer.concat(Array.from({ length: times }, () => piece)));
        // In one piece, and in pieces that are written over as soon as they were taken.
        for (const pieces of [1, times]) {
          const packer = codec.packer(content.length);
          for (let n = 0; n < pieces; n++) {
            const size = content.length / pieces;
            const given = content.slice(n * size, (n + 1) * size);
            packer.add(given, n === pieces - 1);
            if (pieces > 1) given.fill(0);
          }
          const { method, data, size, crc } = packer.finish()!;
          expect([size, crc]).toEqual([content.length, crc32(content)]);
          if (method === 0) expect(Buffer.from(data).equals(Buffer.from(content))).toBe(true);
          else
            for (const other of [nodeCodec, browserCodec]) {
              expect(Buffer.from(other.inflate(data, content.length)!).equals(Buffer.from(content))).toBe(true);
              if (content.length > 1) expect(other.inflate(data, content.length - 1)).toBeUndefined();
            }
        }
        expect(codec.crc32(content)).toBe(crc32(content));
      }),
      { numRuns: 60 },
    );
  });

  it('edits alike with the codec of the browser', () => {
    const book = openWorkbook(zipParts(PARTS), { codec: browserCodec, functionNames: [], limits: PANE_LIMITS });
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [['x']] }]);
    const other = openBytes(zipParts(PARTS));
    other.edit([{ kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [['x']] }]);
    expect(unzipParts(book.save())).toEqual(saved(other));
  });
});

describe('a container that is not to be trusted', () => {
  const zeros = (n: number): Uint8Array => new Uint8Array(n);

  it.each<[string, Uint8Array, HostProblem['code'], string]>([
    ['no container at all', bytesOf('Point;Level\nwing;3'), 'unsupported', 'not a workbook'],
    ['an encrypted or old workbook', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 1, 2]), 'protected', 'password'],
    ['an encrypted entry', rawWorkbook([{ name: 'x.bin', flags: 1 }]), 'protected', 'password'],
    ['a bomb', rawWorkbook([{ name: 'xl/media/a.png', content: zeros(20_000_000) }]), 'too-large', '1000 times'],
    ['an unknown way of packing', rawWorkbook([{ name: 'a.bin', method: 12 }]), 'unsupported', 'unknown way'],
    ['a part twice', rawWorkbook([{ name: 'XL/Workbook.xml' }]), 'unsupported', 'twice'],
    ['a way out of the folder', rawWorkbook([{ name: '../../evil.xml' }]), 'unsupported', 'outside'],
    ['a way out with backslashes', rawWorkbook([{ name: '..\\evil.xml' }]), 'unsupported', 'outside'],
    ['a drive', rawWorkbook([{ name: 'c:/evil.xml' }]), 'unsupported', 'outside'],
    ['two entries on the same bytes', rawWorkbook([{ name: '[Content_Types].xm', sameAs: 0 }]), 'unsupported', 'names'],
    ['a second name inside', rawWorkbook([{ name: 'a.xml', localName: 'b.xml' }]), 'unsupported', 'two names'],
    ['a cut file', zipParts(PARTS).slice(0, -30), 'unsupported', 'list of parts'],
    [
      'a wrong check sum',
      rawWorkbook(
        [{ name: 'xl/worksheets/sheet1.xml', content: bytesOf(sheetXml(PLAN)), crc: 7 }],
        ['xl/worksheets/sheet1.xml'],
      ),
      'unsupported',
      'sheet1.xml is damaged',
    ],
    [
      'a part larger than it says',
      rawWorkbook(
        [{ name: 'xl/worksheets/sheet1.xml', content: zeros(30_000_000), size: 100 }],
        ['xl/worksheets/sheet1.xml'],
      ),
      'unsupported',
      'sheet1.xml is damaged',
    ],
  ])('is refused: %s', (_, bytes, code, reason) => {
    const problem = problemOf(bytes);
    expect(problem.code).toBe(code);
    expect(problem.message).toContain(reason);
  });

  it('is refused when entries overlap, and when it declares more than may be unpacked', () => {
    const bytes = rawWorkbook([{ name: 'one.bin', content: bytesOf('one') }]);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const last = Buffer.from(bytes).lastIndexOf('PK\x01\x02');
    // The packed size of the entry before the last grows into the next one.
    const previous = Buffer.from(bytes).lastIndexOf('PK\x01\x02', last - 1);
    view.setUint32(previous + 20, view.getUint32(previous + 20, true) + 10, true);
    expect(problemOf(bytes).message).toMatch(/overlaps|wrong size/);
    const limits = { ...FILE_LIMITS, totalBytes: 1000 };
    const open = (): unknown => openWorkbook(zipParts(PARTS), { codec: nodeCodec, functionNames: [], limits });
    expect(open).toThrow('more than may be read');
  });

  it.each([
    ['a document type', '<!DOCTYPE worksheet [<!ENTITY a "b">]><worksheet/>', 'document type'],
    ['elements without end', `<worksheet xmlns="u">${'<a>'.repeat(5000)}`, 'levels deep'],
    [
      'a cell beyond the sheet',
      sheetXml({ name: '', rows: '<row r="1"><c r="XFE1"><v>1</v></c></row>' }),
      'no such cell',
    ],
    ['a row beyond the sheet', sheetXml({ name: '', rows: '<row r="1048577"/>' }), 'no such row'],
    ['a page of another kind', '<html><body/></html>', 'no worksheet'],
  ])('is refused when a sheet has %s', (_, xml, reason) => {
    expect(problemOf(zipParts({ ...PARTS, 'xl/worksheets/sheet1.xml': xml })).message).toContain(reason);
  });

  it.each([
    [
      'xlsb',
      {
        '[Content_Types].xml': String(PARTS['[Content_Types].xml']).replace(
          'sheet.main+xml',
          'sheet.binary.macroEnabled.main',
        ),
      },
      '.xlsb',
    ],
    [
      'a text document',
      { '[Content_Types].xml': String(PARTS['[Content_Types].xml']).replaceAll('spreadsheetml', 'wordprocessingml') },
      'not a workbook',
    ],
    ['an archive of pictures', { '_rels/.rels': '' }, 'damaged'],
  ])('is refused when it is %s', (_, changed, reason) => {
    expect(problemOf(zipParts({ ...PARTS, ...changed })).message).toContain(reason);
  });

  it('costs little when one cell lies in the last corner and ranges cover the whole sheet', () => {
    const book = openTiny({
      sheets: [
        {
          name: 'Plan',
          rows: '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>2</v></c></row>',
          behind:
            '<mergeCells><mergeCell ref="C3:XFD1048570"/></mergeCells>' +
            '<dataValidations><dataValidation sqref="A1:XFD1048576" type="whole"/></dataValidations>',
        },
      ],
    });
    const before = process.memoryUsage().heapUsed;
    const { values } = book.readSheet('Plan');
    expect([values.length, values[0]!.length, values.at(-1)!.at(-1)]).toEqual([1_048_576, 16_384, 2]);
    book.edit([{ kind: 'cells', sheet: 'Plan', row: 1, column: 1, cells: [[3]] }]);
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(150e6);
  });

  it('cannot reach the prototypes of the program by the names it uses', () => {
    const book = openTiny({
      sheets: [{ name: '__proto__', rows: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>' }, { name: 'constructor' }],
      sharedStrings: '<sst><si><t>__proto__</t></si></sst>',
      parts: { 'xl/__proto__': 'polluted', constructor: 'x' },
    });
    expect(book.readSheet('__proto__').values).toEqual([['__proto__']]);
    book.setSetting('__proto__', '{"polluted":true}');
    expect(book.getSetting('__proto__')).toBe('{"polluted":true}');
    expect(book.getSetting('constructor')).toBeUndefined();
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    expect(readZip(book.save(), FILE_LIMITS).map(({ name }) => name)).toEqual(
      expect.arrayContaining(['xl/__proto__', 'constructor']),
    );
  });
});
