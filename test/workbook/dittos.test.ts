import { openHeadless } from '../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import type { Host } from '../../src/adapters/embedded/host';
import type { Cell } from '../../src/functions/define';
import { dittosOf } from '../../src/workbook/dittos';
import { OWN_KEYS, ownIndex } from '../../src/workbook/own-columns';
import type { SheetContent } from '../../src/workbook/port';
import { readingsOf } from '../../src/workbook/readings';
import { recognise } from '../../src/workbook/recognise';
import { rowValues } from '../../src/workbook/row-values';
import type { PlanTables } from '../../src/workbook/row-sources';
import { PlanSession } from '../../src/workbook/session';
import { caseSheets, type CaseSheet, type Typed } from './case-sheets';
import { workbookData } from './case-workbook';

const HEADINGS = ['Channel', 'Point', 'Highest level [g pk]', 'Band low [Hz]', 'Band high [Hz]', 'Sensor type'];
/** The rows behind four others, so that the list is known for one. */
const BEFORE = 4;
const read = (...rows: readonly Cell[][]) => {
  const usual = Array.from({ length: BEFORE }, (_, i) => full(`V${i}`));
  const values: Cell[][] = [[...HEADINGS], ...usual, ...rows];
  const content: SheetContent = {
    sheet: 'List',
    row: 0,
    column: 0,
    values,
    formulas: values.map((row) => row.map(() => '')),
    tables: [],
    merged: [],
    hiddenRows: [],
  };
  const tables = recognise([{ info: { name: 'List', active: true, visible: true }, content }]);
  const origins = [...dittosOf(tables.channels!, content).values()].flat().map(({ row, column, origin }) => [row - BEFORE, column, origin - BEFORE]); // prettier-ignore
  return { origins, readings: readingsOf(tables, () => content).map(({ text }) => text) };
};
const full = (name: string, level: Cell = 14, sensor: Cell = 'Ce-50 light'): Cell[] => [
  name,
  12,
  level,
  5,
  800,
  sensor,
];

describe('a cell that says "as above"', () => {
  it('means the next cell above that says something, through a run of marks', () => {
    const { origins, readings } = read(full('W1'), full('W2', '"'), full('W3', '"', 'dto.'));
    expect(origins).toEqual([
      [2, 2, 1],
      [3, 2, 1],
      [3, 5, 2],
    ]);
    expect(readings).toContain('" stands for "14" of C6 above.');
    expect(readings).toContain('dto. stands for "Ce-50 light" of F7 above.');
  });

  it.each(['″', '〃', 'idem', 'Ditto', 'same as above', 'wie oben', 'comme ci-dessus'])('may be written %s', (mark) => {
    expect(read(full('W1'), full('W2', mark)).origins).toEqual([[2, 2, 1]]);
  });

  it('never reaches across a gap in the list, a blank cell or another kind of mark', () => {
    const gap: Cell[] = HEADINGS.map(() => null);
    expect(read(full('W1'), gap, full('W2', '"')).origins).toEqual([]);
    expect(read(full('W1', null), full('W2', '"')).origins).toEqual([]);
    expect(read(full('W1'), full('W2', '"'), full('W3', 'dto.')).origins).toEqual([[2, 2, 1]]);
  });

  it('is no name of a channel', () => {
    expect(read(full('W1'), full('"')).origins).toEqual([]);
  });
});

describe('rows with marks in the spreadsheet', () => {
  const MARK = '"';
  const FIRST = 1;
  let host: Host;
  let spreadsheet: EmbeddedSpreadsheet;
  let session: PlanSession;
  /** Each worked case, followed by two rows that say "as above" in all they share with it. */
  const sheets: CaseSheet[] = caseSheets().map((sheet, i) => {
    if (i > 0) return sheet;
    const [headings, ...rows] = sheet.cells;
    const marked = (row: readonly Typed[], name: string) => row.map((cell, c) => (c === 0 ? name : cell === null ? null : MARK)); // prettier-ignore
    const cells = rows.flatMap((row) => [row, ...['a', 'b'].map((end) => marked(row, `${String(row[0])}${end}`))]);
    return { ...sheet, cells: [headings!, ...cells] };
  });
  const ownCells = async (): Promise<Cell[][]> => {
    const { results } = await session.read('edit');
    const { values } = await spreadsheet.readSheet('Channels');
    return values.slice(FIRST).map((row) => row.slice(results!.column, results!.column + OWN_KEYS.length));
  };

  beforeAll(async () => {
    host = await openHeadless(workbookData(sheets));
    spreadsheet = new EmbeddedSpreadsheet(host);
    session = new PlanSession(spreadsheet);
    await session.read();
    await session.check({});
    await session.settled();
  }, 60_000);
  afterAll(() => host.univer.dispose());

  it('are judged as the row that they mean, in the cells, in the values of a file and in the plan', async () => {
    const rows = await ownCells();
    session.judge();
    const { byRow } = session.source.judged!;
    const column = (await session.read('edit')).results!.column;
    const stored = rowValues(session.source.tables as PlanTables, column, session.source.contentOf);
    rows.forEach((cells, i) => {
      expect([i, cells]).toEqual([i, rows[i - (i % 3)]]);
      expect(cells[ownIndex('verdict')]).toBe(byRow.get(FIRST + i)?.verdict);
      expect(stored(FIRST + i)[ownIndex('verdict')]).toBe(cells[ownIndex('verdict')]);
    });
    expect(new Set(rows.map((cells) => cells[ownIndex('verdict')])).size).toBeGreaterThan(2);
  });

  it('follow the cell above, and a value that is written over a mark, without ever differing from the plan', async () => {
    const column = session.source.tables.channels!.columns.get('levelHigh')!.column;
    const type = async (row: number, value: Typed) => {
      await spreadsheet.apply([{ kind: 'cells', sheet: 'Channels', row, column, cells: [[value]] }], { label: 'type' });
      await spreadsheet.calculated();
      const cells = await ownCells();
      session.judge();
      const { byRow } = session.source.judged!;
      return [1, 2, 3].map((at) => ({
        cell: cells[at - FIRST]![ownIndex('headroom')],
        plan: byRow.get(at)!.level.headroom,
      }));
    };
    const same = (answers: Awaited<ReturnType<typeof type>>) => {
      for (const { cell, plan } of answers)
        if (typeof cell === 'number') expect(cell).toBeCloseTo(plan!, 9);
        else expect(cell).toMatchObject({ error: expect.stringMatching(/#N\/A|#VALUE!/) as unknown });
      return answers.map(({ cell }) => typeof cell === 'number');
    };
    expect(same(await type(1, 7))).toEqual([true, true, true]);
    // A value in the middle of the run: the row below means another cell now, and says so until it is checked again.
    expect(same(await type(2, 3))).toEqual([true, true, false]);
    await session.check({});
    await session.settled();
    expect(same(await type(2, 4))).toEqual([true, true, true]);
    expect(same(await type(1, null))[0]).toBe(false);
  }, 30_000);
});
