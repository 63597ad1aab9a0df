import { asHostProblem } from '../../../src/adapters/office/problems';
import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { HostProblem, type Change } from '../../../src/workbook/port';
import { OfficeError } from './fake-client';
import { FakeExcel, OLDEST } from './fake-excel';

const open = (excel = new FakeExcel()) => ({ excel, spreadsheet: officeSpreadsheet(excel) });
const cells = (block: Extract<Change, { kind: 'cells' }>['cells'], row = 0, column = 0): Change => ({
  kind: 'cells',
  sheet: 'Sheet1',
  row,
  column,
  cells: block,
});
const options = { label: 'Check' };
const at = (row: number, column: number, rows = 1, columns = 1) => ({ row, column, rows, columns });
const caught = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => undefined,
    (error: unknown) => error,
  );

describe('reading a sheet from Excel', () => {
  it('tells errors, blanks and texts that look like formulas apart', async () => {
    const { excel, spreadsheet } = open();
    excel.fill('Sheet1', 0, 0, [['=1/0', "'=A1", '=A1', 'x']]);
    const sheet = excel.sheet('Sheet1');
    sheet.cells['0,0'] = { value: '#DIV/0!', formula: '=1/0', type: 'Error' };
    sheet.cells['0,2'] = { value: '', formula: '=A9', type: 'String' };
    sheet.cells['1,0'] = { value: '#N/A', type: 'String' };
    const content = await spreadsheet.readSheet('Sheet1');
    expect(content.values).toEqual([
      [{ error: '#DIV/0!' }, '=A1', '', 'x'],
      ['#N/A', null, null, null],
    ]);
    expect(content.formulas[0]).toEqual(['=1/0', '', '=A9', '']);
  });

  it('needs a number of round trips that grows with the cells, not with the rows', async () => {
    const { excel, spreadsheet } = open();
    excel.fill(
      'Sheet1',
      0,
      0,
      Array.from({ length: 5000 }, (_row, i) => [i, 'point', 2, 3]),
    );
    await spreadsheet.readSheet('Sheet1');
    // Sheet, extent, merged areas, and one slice of 20,000 cells.
    expect(excel.roundTrips).toBe(4);
  });

  it('halves a slice whose answer is too large for the host', async () => {
    const { excel, spreadsheet } = open(new FakeExcel('1.20', { requestBytes: 5e6, responseBytes: 30_000 }));
    const rows = Array.from({ length: 2000 }, (_row, i) => [`a longer text in row ${i}`]);
    excel.fill('Sheet1', 3, 1, rows);
    excel.sheet('Sheet1').hiddenRows.push(5, 1999);
    const content = await spreadsheet.readSheet('Sheet1');
    expect(content.values).toEqual(rows);
    expect(content.hiddenRows).toEqual([5, 1999]);
  });

  it('gives up in words when even one row is too large', async () => {
    const { excel, spreadsheet } = open(new FakeExcel('1.20', { requestBytes: 5e6, responseBytes: 300 }));
    excel.fill('Sheet1', 0, 0, [['x'.repeat(1000)]]);
    expect(await caught(spreadsheet.readSheet('Sheet1'))).toMatchObject({ code: 'too-large' });
  });
});

describe('changing a workbook in Excel', () => {
  it('stays under the request limit however long the texts are', async () => {
    const { excel, spreadsheet } = open();
    const long = 'µ'.repeat(3000);
    await spreadsheet.apply([cells(Array.from({ length: 3000 }, () => [long]))], options);
    expect(Object.keys(excel.sheet('Sheet1').cells)).toHaveLength(3000);
  });

  it('writes 2,000 rows of 8 columns in one request, and pauses between requests', async () => {
    const { excel, spreadsheet } = open();
    await spreadsheet.apply([cells(Array.from({ length: 2000 }, () => Array<number>(8).fill(1)))], options);
    // Two to look before writing, one to write.
    expect(excel.roundTrips).toBe(3);
    excel.pauses = 0;
    await spreadsheet.apply([cells(Array.from({ length: 20_000 }, () => Array<number>(8).fill(1)))], options);
    expect(excel.pauses).toBeGreaterThanOrEqual(8);
  });

  it('sets 1,000 notes without a round trip for each', async () => {
    const { excel, spreadsheet } = open();
    const notes = (text: string): Change[] =>
      Array.from({ length: 1000 }, (_n, row) => ({ kind: 'note', sheet: 'Sheet1', row, column: 2, text }));
    await spreadsheet.apply(notes('why'), options);
    await spreadsheet.apply(notes('why not'), options);
    expect(excel.sheet('Sheet1').notes).toHaveLength(1000);
    expect(new Set(excel.sheet('Sheet1').notes.map((note) => note.content))).toEqual(
      new Set(['Channelwright:\nwhy not']),
    );
    expect(excel.roundTrips).toBeLessThan(20);
  });

  it('leaves rules that others set, whatever their kind', async () => {
    const { excel, spreadsheet } = open();
    const foreign = { range: at(0, 0, 9), ink: 'red' };
    excel
      .sheet('Sheet1')
      .rules.push(
        { id: 90, type: 'Custom', formula: '=$A1="FAIL"', ...foreign },
        { id: 91, type: 'DataBar', formula: '', ...foreign },
      );
    const rule = { range: at(1, 1, 3), equals: 'FAIL', ink: '#000000', ground: '#ffffff' };
    await spreadsheet.apply([{ kind: 'marks', sheet: 'Sheet1', rules: [rule, { ...rule, equals: 'PASS' }] }], options);
    await spreadsheet.apply([{ kind: 'marks', sheet: 'Sheet1', rules: [rule] }], options);
    expect(
      excel
        .sheet('Sheet1')
        .rules.map(({ id }) => id)
        .slice(0, 2),
    ).toEqual([90, 91]);
    expect(excel.sheet('Sheet1').rules.slice(2)).toEqual([
      expect.objectContaining({
        type: 'Custom',
        range: rule.range,
        formula: '=AND(EXACT(B2,"FAIL"),N("Channelwright")=0)',
        ink: '#000000',
        ground: '#ffffff',
      }),
    ]);
  });

  it('clears the notes of a block of ours and no other note', async () => {
    const { excel, spreadsheet } = open();
    const ours = { row: 2, column: 3, content: 'Channelwright:\nours' };
    const ofAFile = { row: 3, column: 3, content: 'ours, from a file', author: 'Channelwright' };
    const theirs = { row: 4, column: 3, content: 'theirs' };
    const beside = { row: 2, column: 5, content: 'Channelwright:\nof other columns' };
    excel.sheet('Sheet1').notes.push(ours, ofAFile, theirs, beside);
    await spreadsheet.apply([{ kind: 'clear', sheet: 'Sheet1', range: at(0, 3, 9, 2) }], options);
    expect(excel.sheet('Sheet1').notes).toEqual([theirs, beside]);
  });

  it('writes nothing when a row was put in between since the sheet was read', async () => {
    const { excel, spreadsheet } = open();
    excel.fill('Sheet1', 0, 0, [['Channel'], ['wing root'], ['fin tip']]);
    const asRead = [{ sheet: 'Sheet1', row: 0, column: 0, cells: [['Channel'], ['wing root'], ['fin tip'], [null]] }];
    await spreadsheet.apply([cells([['PASS'], ['FAIL']], 1, 1)], { ...options, asRead });
    excel.fill('Sheet1', 2, 0, [['tail boom'], ['fin tip']]);
    const before = structuredClone(excel.state);
    const error = await caught(spreadsheet.apply([cells([['WARN'], ['WARN']], 1, 1)], { ...options, asRead }));
    expect(error).toMatchObject({ code: 'changed' });
    expect((error as Error).message).toContain('Sheet1!A3');
    expect(excel.state).toEqual(before);
  });

  it('compares 50,000 names in slices, and says which one of them differs', async () => {
    const { excel, spreadsheet } = open();
    const names = Array.from({ length: 50_000 }, (_n, i) => [`channel ${i}`]);
    excel.fill('Sheet1', 1, 0, names);
    excel.fill('Sheet1', 49_000, 0, [['another']]);
    const error = await caught(
      spreadsheet.apply([cells([[1]], 1, 1)], {
        ...options,
        asRead: [{ sheet: 'Sheet1', row: 1, column: 0, cells: names }],
      }),
    );
    expect((error as Error).message).toContain('Sheet1!A49001');
    expect(excel.roundTrips).toBeLessThan(10);
  });

  it('suspends drawing once in an action, however many requests it takes', async () => {
    const { excel, spreadsheet } = open();
    await spreadsheet.apply([cells(Array.from({ length: 20_000 }, () => Array<number>(8).fill(1)))], options);
    expect(excel.screenPauses).toBe(1);
  });

  it('gives looks and widths to exactly the range', async () => {
    const { excel, spreadsheet } = open();
    const look = {
      bold: true,
      ink: '#111111',
      ground: '#eeeeee',
      align: 'right',
      wrap: true,
      numberFormat: '0.0',
    } as const;
    await spreadsheet.apply(
      [
        { kind: 'look', sheet: 'Sheet1', range: at(1, 1, 1, 2), look },
        { kind: 'width', sheet: 'Sheet1', column: 1, columns: 2, characters: 10 },
      ],
      options,
    );
    const asSet = { ...look, align: 'Right' };
    expect(excel.sheet('Sheet1').looks).toEqual({ '1,1': asSet, '1,2': asSet });
    // 10 characters of 7 pixels and 5 of margin are 75 pixels, 56.25 points.
    expect(excel.sheet('Sheet1').widths).toEqual({ 1: 56.25, 2: 56.25 });
  });

  it('costs one undo step where Excel can merge them', async () => {
    const { excel, spreadsheet } = open();
    await spreadsheet.apply([cells(Array.from({ length: 9000 }, () => Array<number>(8).fill(1)))], options);
    expect(excel.undoStack).toHaveLength(1);
    expect(spreadsheet.can.oneUndo).toBe(true);
    expect(officeSpreadsheet(new FakeExcel('1.19')).can.oneUndo).toBe(false);
  });

  it('stops between requests when asked, says so, and one undo takes the part back', async () => {
    const { excel, spreadsheet } = open();
    const signal = { aborted: false };
    const rows = Array.from({ length: 9000 }, () => Array<number>(8).fill(1));
    const problem = await caught(
      spreadsheet.apply([cells(rows)], { ...options, signal, onProgress: (done) => (signal.aborted = done > 0) }),
    );
    expect(problem).toMatchObject({ code: 'cancelled' });
    const written = Object.keys(excel.sheet('Sheet1').cells).length;
    expect(written).toBeGreaterThan(0);
    expect(written).toBeLessThan(72_000);
    excel.undo();
    expect(excel.sheet('Sheet1').cells).toEqual({});
  });

  it.each([
    ['text', 'x'.repeat(32_768), 32_767],
    ['formula', `=${'1+'.repeat(4096)}1`, 8192],
  ])('refuses a %s that no cell can hold before it writes, and names the cell', async (what, entry, limit) => {
    const { excel, spreadsheet } = open();
    const problem = (await caught(spreadsheet.apply([cells([['fine', entry]], 6, 1)], options))) as HostProblem;
    expect(problem.code).toBe('too-large');
    expect(problem.message).toContain(
      `The ${what} for Sheet1 C7 has ${entry.length} characters; a cell takes ${limit}.`,
    );
    expect(excel.sheet('Sheet1').cells).toEqual({});
  });

  it('refuses a new sheet in a workbook whose structure is protected', async () => {
    const { excel, spreadsheet } = open();
    excel.state.isStructureProtected = true;
    const change: Change = { kind: 'sheet', name: 'Limits' };
    expect(await caught(spreadsheet.apply([cells([[1]]), change], options))).toMatchObject({ code: 'protected' });
    expect(excel.sheet('Sheet1').cells).toEqual({});
    await spreadsheet.apply([{ kind: 'sheet', name: 'sheet1' }], options);
  });

  it('waits while a person is editing a cell', async () => {
    const { excel, spreadsheet } = open();
    excel.isEditing = true;
    await spreadsheet.apply([cells([[1]])], options);
    expect(excel.sheet('Sheet1').cells['0,0']?.value).toBe(1);
  });
});

describe('what Excel refuses', () => {
  it('becomes a sentence of ours', async () => {
    const { excel, spreadsheet } = open();
    excel.failNextWriteWith = 'MergedRangeConflict';
    const problem = (await caught(spreadsheet.apply([cells([[1]])], options))) as HostProblem;
    expect(problem).toBeInstanceOf(HostProblem);
    expect([problem.code, problem.message]).toEqual([
      'occupied',
      'Merged cells are in the way. Take the merge apart there, or choose other columns.',
    ]);
  });

  it.each([
    ['AccessDenied', 'protected'],
    ['ItemNotFound', 'not-found'],
    ['RequestPayloadSizeLimitExceeded', 'too-large'],
    ['ApiNotFound', 'unsupported'],
    ['SomethingNew', 'host'],
  ])('%s is a problem of kind %s, in whole sentences', (code, kind) => {
    const problem = asHostProblem(new OfficeError(code, 'raw words.')) as HostProblem;
    expect(problem.code).toBe(kind);
    expect(problem.message).toMatch(/^[A-Z].*\.$/);
    expect(problem.message).not.toContain(code);
  });

  it('quotes Excel where we have no better words', () => {
    expect((asHostProblem(new OfficeError('GeneralException', 'The sky fell.')) as Error).message).toContain(
      'The sky fell.',
    );
  });

  it('does not hide a fault of ours', () => {
    const fault = new TypeError('x is undefined');
    expect(asHostProblem(fault)).toBe(fault);
    const forgotten = new OfficeError('PropertyNotLoaded', 'load first');
    expect(asHostProblem(forgotten)).toBe(forgotten);
  });
});

describe('waiting for results', () => {
  it('ends when the calculation is done', async () => {
    const { excel, spreadsheet } = open();
    excel.calculating = 3;
    await spreadsheet.calculated();
    expect(excel.pauses).toBe(3);
  });

  it('ends with a problem when it never is', async () => {
    const { excel, spreadsheet } = open();
    excel.calculating = Infinity;
    expect(await caught(spreadsheet.calculated())).toMatchObject({ code: 'host' });
  });
});

describe('events from Excel', () => {
  const listening = async (excel: FakeExcel) => {
    const { spreadsheet } = open(excel);
    const seen: { sheet: string; range: ReturnType<typeof at> }[] = [];
    await spreadsheet.onChange((change) => seen.push(change));
    await spreadsheet.onSelect((place) => seen.push(place));
    return { spreadsheet, seen };
  };

  it('follow the selection', async () => {
    const excel = new FakeExcel();
    const { seen } = await listening(excel);
    await excel.pick('Sheet1', at(4, 2, 3, 2));
    expect(seen).toEqual([{ sheet: 'Sheet1', range: at(4, 2, 3, 2) }]);
  });

  it('include what a co-author changes', async () => {
    const excel = new FakeExcel();
    const { seen } = await listening(excel);
    await excel.edit('Sheet1', 1, 1, 5, undefined);
    expect(seen).toHaveLength(1);
  });

  it('come back on an old Excel even after a write that failed', async () => {
    const excel = new FakeExcel(OLDEST);
    const { spreadsheet, seen } = await listening(excel);
    excel.failNextWriteWith = 'GeneralException';
    expect(await caught(spreadsheet.apply([cells([[1]])], options))).toBeInstanceOf(HostProblem);
    await excel.edit('Sheet1', 1, 1, 5);
    expect(seen).toEqual([{ sheet: 'Sheet1', range: at(1, 1) }]);
  });

  it('are quiet about a sheet that is gone by now', async () => {
    const excel = new FakeExcel();
    const { seen } = await listening(excel);
    const gone = excel.addSheet('Gone');
    const editing = excel.edit('Gone', 0, 0, 1);
    excel.state.sheets = excel.state.sheets.filter((sheet) => sheet !== gone);
    await editing;
    expect(seen).toEqual([]);
  });

  it('say nothing is selected while a picture is', async () => {
    const { excel, spreadsheet } = open();
    excel.state.selected = undefined;
    expect(await spreadsheet.selection()).toBeUndefined();
  });
});
