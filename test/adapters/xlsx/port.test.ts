import { FileSpreadsheet } from '../../../src/adapters/xlsx/spreadsheet';
import { columnLetters, rangeAddress } from '../../../src/workbook/address';
import { describePort, type PortUnderTest, type SeedSheet } from '../../workbook/port-contract';
import { MAIN, openTiny, saved, type Parts, type TinySheet } from './tiny-workbook';

const cellXml = (typed: number | string | boolean | null, at: string): string => {
  if (typed === null) return '';
  if (typeof typed === 'number') return `<c r="${at}"><v>${typed}</v></c>`;
  if (typeof typed === 'boolean') return `<c r="${at}" t="b"><v>${typed ? 1 : 0}</v></c>`;
  return typed.startsWith('=')
    ? `<c r="${at}"><f>${typed.slice(1)}</f></c>`
    : `<c r="${at}" t="str"><v>${typed}</v></c>`;
};

const parts: Parts = {};
const tinySheet = ({ name, cells = [], table, merged, hiddenRow }: SeedSheet): TinySheet => {
  const row = (n: number): string => {
    const line = (cells[n] ?? []).map((typed, c) => cellXml(typed, `${columnLetters(c)}${n + 1}`)).join('');
    return `<row r="${n + 1}"${n === hiddenRow ? ' hidden="1"' : ''}>${line}</row>`;
  };
  if (table) {
    const titles = (cells[0] ?? []).map((title, n) => `<tableColumn id="${n + 1}" name="${title}"/>`);
    parts['xl/tables/table1.xml'] =
      `<table xmlns="${MAIN}" displayName="${table.name}" ref="${rangeAddress(table.range)}"><tableColumns>${titles.join('')}</tableColumns></table>`;
  }
  return {
    name,
    rows: Array.from({ length: Math.max(cells.length, (hiddenRow ?? -1) + 1) }, (_, n) => row(n)).join(''),
    behind: merged ? `<mergeCells><mergeCell ref="${rangeAddress(merged)}"/></mergeCells>` : '',
    relations: table ? [['rId1', 'table', '../tables/table1.xml']] : [],
  };
};

const open = async (seeds: readonly SeedSheet[]): Promise<PortUnderTest> => {
  const sheets = seeds.map(tinySheet);
  const file = openTiny({ sheets, parts });
  const sheetPart = (sheet: string): string =>
    saved(file)[`xl/worksheets/sheet${file.sheets.findIndex(({ name }) => name === sheet) + 1}.xml`] ?? '';
  return {
    spreadsheet: new FileSpreadsheet(file),
    countRules: async (sheet) => sheetPart(sheet).match(/<cfRule/g)?.length ?? 0,
    drawingsOn: async (sheet) => {
      const parts = saved(file);
      const part = `xl/worksheets/_rels/sheet${file.sheets.findIndex(({ name }) => name === sheet) + 1}.xml.rels`;
      const drawing = /drawings\/drawing\d+\.xml/.exec(parts[part] ?? '')?.[0];
      const words = [...(parts[`xl/${drawing}`] ?? '').matchAll(/<xdr:cNvPr id="\d+" name="Channelwright drawing \d+" descr="([^".]*)/g)]; // prettier-ignore
      return words.map(([, title]) => title!);
    },
    noteAt: async () =>
      /<comment [^>]*ref="B2".*?<t(?: [^>]*)?>(.*?)<\/t>/.exec(saved(file)['xl/comments1.xml'] ?? '')?.[1],
  };
};

describePort('a workbook file', open);

describe('a workbook file behind the port', () => {
  const changes = [
    { kind: 'cells', sheet: 'Plan', row: 0, column: 1, cells: [['=A1*2', '=CHAN.FREQUENCY.SPAN(A1)']] },
  ] as const;
  const plan = () => openTiny({ sheets: [{ name: 'Plan', rows: '<row r="1"><c r="A1"><v>4</v></c></row>' }] });

  it('stores the values that an engine works out, also of blocks, and asks for them once', async () => {
    const asked: string[][] = [];
    const spreadsheet = new FileSpreadsheet(plan(), async (bytes, sheets) => {
      expect(bytes.length).toBeGreaterThan(500);
      asked.push([...sheets]);
      const values = [[4, 8, 2, 900]];
      return [{ sheet: 'Plan', row: 0, column: 0, values, blocks: [{ row: 0, column: 2, rows: 1, columns: 2 }] }];
    });
    await spreadsheet.apply(changes, { label: 'test' });
    expect((await spreadsheet.readSheet('Plan')).values).toEqual([[4, null, null]]);
    await spreadsheet.calculated();
    await spreadsheet.calculated();
    expect(asked).toEqual([['Plan']]);
    const { values, formulas } = await spreadsheet.readSheet('Plan');
    expect(values).toEqual([[4, 8, 2, 900]]);
    expect(formulas).toEqual([['', '=A1*2', '=CHAN.FREQUENCY.SPAN(A1)', '']]);
  });

  it('asks no engine for formulas that are gone again', async () => {
    const spreadsheet = new FileSpreadsheet(plan(), async () => {
      throw new Error('asked');
    });
    await spreadsheet.apply(changes, { label: 'test' });
    await spreadsheet.apply([{ kind: 'clear', sheet: 'Plan', range: { row: 0, column: 1, rows: 1, columns: 2 } }], {
      label: 'test',
    });
    await spreadsheet.calculated();
    expect((await spreadsheet.readSheet('Plan')).values).toEqual([[4]]);
  });
});
