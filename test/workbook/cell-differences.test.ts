import type { Cell } from '../../src/functions/define';
import { cellDifferences, isSameFormula, isSameValue, type SheetComparison } from '../../src/workbook/cell-differences';
import type { SheetContent } from '../../src/workbook/port';

interface Typed {
  readonly v: Cell;
  readonly f?: string;
}
const isTyped = (cell: Cell | Typed): cell is Typed => typeof cell === 'object' && cell !== null && 'v' in cell;

const sheet = (cells: readonly (readonly (Cell | Typed)[])[], row = 0, column = 0): SheetContent => ({
  sheet: 'Plan',
  row,
  column,
  values: cells.map((line) => line.map((cell) => (isTyped(cell) ? cell.v : cell))),
  formulas: cells.map((line) => line.map((cell) => (isTyped(cell) ? (cell.f ?? '') : ''))),
  tables: [],
  merged: [],
  hiddenRows: [],
});
const compare = (file: SheetContent, grid: SheetContent, more: Partial<SheetComparison> = {}) =>
  cellDifferences({ file, grid, opened: file, wasWritten: () => true, spills: [], ...more });

describe('what differs between a file and the grid', () => {
  it.each<[string, Cell, Cell]>([
    ['a number', 1.5, 2.5],
    ['a number by its last digit', 0.1 + 0.2, 0.3],
    ['a text', 'Spar', 'Rib'],
    ['a text that looks like a number', '00120', '0120'],
    ['a number typed over a text that looks like it', '12', 12],
    ['a text typed over a number', 12, '12'],
    ['a date, as its serial number', 46283, 46284],
    ['a truth value', true, false],
    ['a truth value typed over a number', 1, true],
  ])('is %s', (_, before, after) => {
    expect(compare(sheet([[before]]), sheet([[after]]))).toEqual([{ row: 0, column: 0, kind: 'edited', cell: after }]);
  });

  it.each<[string, Cell, Cell]>([
    ['an equal number', 0.1 + 0.2, 0.30000000000000004],
    ['an equal text, whatever ends its lines', 'two\r\nlines', 'two\nlines'],
    ['an equal error', { error: '#N/A' }, { error: '#N/A' }],
    ['nothing where the file has an empty text', '', null],
  ])('is not %s', (_, before, after) => {
    expect(compare(sheet([[before]]), sheet([[after]]))).toEqual([]);
  });

  it('is a cell that was cleared, and one beyond what the file used', () => {
    expect(compare(sheet([[1, 2]], 3, 1), sheet([[7], [null], [null], [null, null, 2]]))).toEqual([
      { row: 0, column: 0, kind: 'edited', cell: 7 },
      { row: 3, column: 1, kind: 'edited', cell: null },
    ]);
    expect(compare(sheet([]), sheet([]))).toEqual([]);
  });

  it('is never a cell that nobody wrote, however the grid reads it', () => {
    const file = sheet([['rich text', 0.30000000000000004, { v: 3, f: '=LET(a,1,a+2)' }]]);
    const grid = sheet([['rich  text', 0.3, { v: { error: '#NAME?' }, f: '=LET(a;1;a+2)' }]]);
    expect(compare(file, grid, { wasWritten: () => false })).toEqual([]);
  });

  it('keeps a text that starts with an equals sign a text, and an error an error', () => {
    const found = compare(sheet([['a', 'b']]), sheet([['=1+"x"', { error: '#N/A' }]]));
    expect(found.map(({ cell }) => cell)).toEqual([
      { formula: '="=1+""x"""', value: '=1+"x"' },
      { formula: '=#N/A', value: { error: '#N/A' } },
    ]);
  });
});

describe('formulas', () => {
  const shared = (v: Cell) => ({ v, f: '=A2*2' });

  it.each([
    ['=_xlfn.IFS(A1>1,"_xlfn.x")', '=IFS(A1>1,"_xlfn.x")'],
    ['=_xlfn._xlws.SORT(A1:A3)', '=SORT(A1:A3)'],
    ['=_xldudf_CHAN_MASS_RATIO(A1,B1)', '=CHAN.MASS.RATIO(A1,B1)'],
    ['=sum(a1:a3)', '=SUM(A1:A3)'],
  ])('%s and %s are one', (stored, typed) => expect(isSameFormula(stored, typed)).toBe(true));

  it.each([
    ['="a"', '="A"'],
    ['="_xlfn.x"', '="x"'],
    ['=A1+1', '=A1+10'],
    ["='Plan a'!A1", "='Plan b'!A1"],
  ])('%s and %s are two', (one, other) => expect(isSameFormula(one, other)).toBe(false));

  it('that share one text are left alone while text and value are equal', () => {
    const file = sheet([[shared(4)], [shared(6)]]);
    expect(compare(file, sheet([[shared(4)], [shared(6)]]))).toEqual([]);
  });

  it('get their new value after an edit, but not where two programs merely calculate differently', () => {
    const file = sheet([
      [
        { v: 4, f: '=A2*2' },
        { v: 0.3, f: '=B2' },
        { v: 5, f: '=C2' },
      ],
    ]);
    const opened = sheet([[4, 0.30000000000000004, 5]]);
    const grid = sheet([
      [
        { v: 8, f: '=A2*2' },
        { v: 0.30000000000000004, f: '=B2' },
        { v: { error: '#NAME?' }, f: '=C2' },
      ],
    ]);
    expect(compare(file, grid, { opened, wasWritten: () => false })).toEqual([
      { row: 0, column: 0, kind: 'renewed', cell: { formula: '=A2*2', value: 8 } },
    ]);
  });

  it('of the user that were written anew come with their exact value; one that shows nothing has an empty text', () => {
    const grid = sheet([
      [
        { v: 1 / 3, f: '=1/3' },
        { v: null, f: '=""' },
      ],
    ]);
    expect(compare(sheet([[1, 2]]), grid).map(({ cell }) => cell)).toEqual([
      { formula: '=1/3', value: 1 / 3 },
      { formula: '=""', value: '' },
    ]);
  });

  it('that fill a block are written once, with the block', () => {
    const grid = sheet([[{ v: 1, f: '=SEQUENCE(2)' }], [2]]);
    expect(compare(sheet([]), grid, { spills: [{ row: 0, column: 0, rows: 2, columns: 1 }] })).toEqual([
      { row: 0, column: 0, kind: 'edited', cell: { formula: '=SEQUENCE(2)', value: [[1], [2]] } },
    ]);
  });

  it('of ours follow the grid in any case', () => {
    const own = { row: 0, column: 1, rows: 1, columns: 1 };
    const grid = sheet([['x', { v: 'FAIL', f: '=CHAN.VERDICT.WORST(A1)' }]]);
    const file = sheet([['y', { v: 'PASS', f: '=_xldudf_CHAN_VERDICT_WORST(A1)' }]]);
    expect(compare(file, grid, { own, wasWritten: () => false })).toEqual([
      { row: 0, column: 1, kind: 'own', cell: { formula: '=CHAN.VERDICT.WORST(A1)', value: 'FAIL' } },
    ]);
  });
});

it('a number is not the text that looks like it', () => expect(isSameValue(1, '1')).toBe(false));
