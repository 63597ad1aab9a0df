import { checkChanges, placeOwnBlock, writeChecks } from '../../src/workbook/check';
import { OWN_COLUMNS } from '../../src/workbook/own-columns';
import type { Change, SheetContent, Spreadsheet } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import { readResults } from '../../src/workbook/results';
import type { PlanTables } from '../../src/workbook/row-sources';
import { caseSheets } from './case-sheets';

type Values = (string | number | null)[][];
const HEADINGS = OWN_COLUMNS.map(({ heading }) => heading);

/** The channel list of the worked cases, changed by the test before it is recognised. */
const listed = (change: (rows: Values) => unknown = () => {}, extra: Partial<SheetContent> = {}) => {
  const sheets = caseSheets().map(({ name, cells }, i) => {
    const values = cells.map((row) => [...row]) as Values;
    if (i === 0) change(values);
    const width = Math.max(...values.map((row) => row.length));
    values.forEach((row) => row.push(...Array<null>(width - row.length).fill(null)));
    const content: SheetContent = {
      sheet: name,
      row: 0,
      column: 0,
      values,
      formulas: values.map((row) => row.map(() => '')),
      tables: [],
      merged: [],
      hiddenRows: [],
      ...(i === 0 ? extra : {}),
    };
    return { info: { name, active: i === 0, visible: true }, content };
  });
  const tables = recognise(sheets) as PlanTables;
  return { tables, content: sheets[0]!.content, width: caseSheets()[0]!.cells[0]!.length };
};
const cellsOf = (changes: readonly Change[]) =>
  changes.filter((c): c is Extract<Change, { kind: 'cells' }> => c.kind === 'cells');
/** Every cell that a list of changes can touch, as [row, column]. */
const touched = (changes: readonly Change[]): [number, number][] =>
  changes.flatMap((change): [number, number][] => {
    if (change.kind === 'cells')
      return change.cells.flatMap((row, r) => row.map((_, c): [number, number] => [change.row + r, change.column + c]));
    if (change.kind === 'clear' || change.kind === 'look') {
      const { row, column, rows, columns } = change.range;
      return Array.from({ length: rows * columns }, (_, i): [number, number] => [
        row + Math.floor(i / columns),
        column + (i % columns),
      ]);
    }
    return [];
  });

describe('where the check columns go', () => {
  it('is right of the list', () => {
    const { tables, content, width } = listed();
    expect(placeOwnBlock(tables, content)).toMatchObject({ column: width, clear: [] });
  });

  it('is beyond whatever somebody has beside the list', () => {
    const { tables, content, width } = listed((rows) => {
      rows[3]![width0() + 2] = 'call Jo';
    });
    expect(placeOwnBlock(tables, content).column).toBe(width + 3);
  });

  it('is beyond merged cells beside the list', () => {
    const { tables, content, width } = listed(undefined, {
      merged: [{ row: 2, column: width0() + 1, rows: 2, columns: 3 }],
    });
    expect(placeOwnBlock(tables, content).column).toBe(width + 4);
  });

  it('is the old place when the columns are there', () => {
    const { tables, content, width } = listed((rows) => rows[0]!.push('my notes', ...HEADINGS));
    expect(placeOwnBlock(tables, content)).toMatchObject({ column: width + 1, clear: [] });
  });

  it('is a new place when some of them were removed, and the rest are cleared', () => {
    const { tables, content, width } = listed((rows) => rows[0]!.push(...HEADINGS.slice(0, 5), 'my notes'));
    const { column, clear } = placeOwnBlock(tables, content);
    expect(column).toBeGreaterThan(width + 5);
    expect(clear).toEqual([0, 1, 2, 3, 4].map((i) => width + i));
  });

  /** One more column beside the list, with the same cell in every row. */
  const withColumn = (heading: string, value: string | number, formula: (row: number) => string) => {
    const { tables, content, width } = listed((rows) =>
      rows.forEach((row, r) => row.push(r === 0 ? heading : row.every((cell) => cell === null) ? null : value)),
    );
    const formulas = content.values.map((row, r) =>
      row.map((cell, c) => (c === width && r > 0 && cell !== null ? formula(r) : '')),
    );
    return { tables, width, content: { ...content, formulas } };
  };

  it.each([
    ['typed words', 'Reason', () => ''],
    ['typed numbers', 'Mass ratio', () => ''],
    ['a formula of their own', 'Headroom, dB', (row: number) => `=B${row + 1}-3`],
    [
      'a formula of their own that calls our functions',
      'Mass ratio',
      (row: number) => `=CHAN.MASS.RATIO(4.5,,,P${row + 1})`,
    ],
    ['nothing yet', 'Reason', () => ''],
  ] as const)("leaves a user's column alone that has a heading of ours over %s", (what, heading, formula) => {
    const { tables, content, width } = withColumn(heading, what === 'nothing yet' ? '' : 'mine', formula);
    const { clear, column, others } = placeOwnBlock(tables, content);
    expect({ clear, others }).toEqual({ clear: [], others: [width] });
    expect(column).toBeGreaterThan(width);
    expect(touched(checkChanges(tables, content)).filter(([, c]) => c <= width)).toEqual([]);
  });

  it('leaves a column that stands alone only when its formulas are not the ones that it writes', () => {
    const { tables, content } = listed();
    const block = placeOwnBlock(tables, content).column;
    const written = cellsOf(checkChanges(tables, content)).find(({ cells }) => cells.length > 1)!.cells;
    const key = OWN_COLUMNS.findIndex(({ heading }) => heading === 'Mass ratio');
    const moved = withColumn('Mass ratio', 0.1, (row) => String(written[row - 1]![key]).replaceAll('$', ''));
    expect(placeOwnBlock(moved.tables, moved.content)).toMatchObject({ clear: [block], others: [] });
  });
});

const width0 = () => caseSheets()[0]!.cells[0]!.length;

describe('what a check changes', () => {
  it('is nothing left of its own columns, and nothing above or below the list', () => {
    const { tables, content, width } = listed();
    const places = touched(checkChanges(tables, content));
    expect(places.length).toBeGreaterThan(12 * OWN_COLUMNS.length);
    for (const [row, column] of places) {
      expect(column).toBeGreaterThanOrEqual(width);
      expect(column).toBeLessThan(width + OWN_COLUMNS.length);
      expect(row).toBeLessThanOrEqual(tables.channels.lastRow);
    }
  });

  it('leaves blank separator rows blank', () => {
    const { tables, content } = listed((rows) =>
      rows.splice(
        5,
        0,
        rows[0]!.map(() => null),
      ),
    );
    const block = cellsOf(checkChanges(tables, content))[1]!;
    expect(block.cells[4]!.every((cell) => cell === null)).toBe(true);
    expect(block.cells[5]!.every((cell) => String(cell).startsWith('='))).toBe(true);
  });

  it('grows a table by the columns that it lacks, and by none when it has them', () => {
    const range = { row: 0, column: 0, rows: 13, columns: width0() };
    const growth = (columns: number, own: boolean) => {
      const { tables, content } = listed((rows) => own && rows[0]!.push(...HEADINGS), {
        tables: [{ name: 'Plan', range: { ...range, columns } }],
      });
      return checkChanges(tables, content).filter(({ kind }) => kind === 'extend-table');
    };
    expect(growth(width0(), false)).toEqual([
      { kind: 'extend-table', sheet: 'Channels', table: 'Plan', columns: OWN_COLUMNS.length },
    ]);
    expect(growth(width0() + OWN_COLUMNS.length, true)).toEqual([]);
  });

  it('is in formulas short enough for every spreadsheet', () => {
    const { tables, content } = listed();
    for (const row of cellsOf(checkChanges(tables, content))[1]!.cells)
      for (const cell of row) expect(String(cell).length).toBeLessThan(8_192);
  });

  it('refers to the row and to lists by ordinary look-ups', () => {
    const { tables, content } = listed();
    const row = cellsOf(checkChanges(tables, content))[1]!.cells[2]!;
    const ratio = String(row[HEADINGS.indexOf('Mass ratio')]);
    expect(ratio).toMatch(
      /^=CHAN\.MASS\.RATIO\(INDEX\(Sensors!\$[A-Z]+\$2:\$[A-Z]+\$10,\$[A-Z]+4\),INDEX\(Mounts!.*,\$[A-Z]+4\)$/,
    );
  });

  it('is refused before anything is written when its table has a column of the same name', async () => {
    const { tables, content } = listed((rows) => rows.forEach((row, r) => row.push(r === 0 ? 'Reason' : 'mine')), {
      tables: [{ name: 'Plan', range: { row: 0, column: 0, rows: 13, columns: width0() + 1 } }],
    });
    const apply = jest.fn();
    const write = writeChecks({ apply } as unknown as Spreadsheet, tables, () => content, {});
    await expect(write).rejects.toThrow(/Channels![A-Z]+1 has the heading of one of the check columns/);
    expect(apply).not.toHaveBeenCalled();
  });

  it('is refused before anything is written when merged cells stand in the way of the old place', async () => {
    const { tables, content } = listed((rows) => rows[0]!.push(...HEADINGS), {
      merged: [{ row: 3, column: width0() + 2, rows: 1, columns: 2 }],
    });
    const apply = jest.fn();
    const write = writeChecks({ apply } as unknown as Spreadsheet, tables, () => content, {});
    await expect(write).rejects.toThrow(/Merged cells at Channels!U4:V4/);
    expect(apply).not.toHaveBeenCalled();
  });
});

describe('results read back', () => {
  const withVerdicts = (verdicts: string[]) =>
    listed((rows) => {
      rows[0]!.push(...HEADINGS);
      verdicts.forEach((verdict, i) => rows[i + 1]!.push(verdict, `reason ${i}`));
    });

  it('come worst first, in the order of the list within a verdict', () => {
    const { tables, content } = withVerdicts([
      'PASS',
      'WARN',
      'FAIL',
      'INCOMPLETE',
      'FAIL',
      ...Array<string>(7).fill('PASS'),
    ]);
    const results = readResults(tables.channels, content)!;
    expect(results.rows.slice(0, 4).map(({ row, verdict }) => [row, verdict])).toEqual([
      [3, 'FAIL'],
      [5, 'FAIL'],
      [4, 'INCOMPLETE'],
      [2, 'WARN'],
    ]);
    expect(results.counts).toEqual({ FAIL: 2, INCOMPLETE: 1, WARN: 1, PASS: 8 });
  });

  it('never take a cell that says something else for a PASS', () => {
    const { tables, content } = withVerdicts(['pass', 'OK', '', '#N/A', ...Array<string>(8).fill('PASS')]);
    expect(readResults(tables.channels, content)!.counts.INCOMPLETE).toBe(4);
  });

  it('are nothing before the first check', () => {
    const { tables, content } = listed();
    expect(readResults(tables.channels, content)).toBeUndefined();
  });
});
