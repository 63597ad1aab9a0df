import type { Plot } from '../../src/plots/plot';
import type { BarChart } from '../../src/workbook/charts';
import { HostProblem, type Change, type RangeAddress, type Spreadsheet } from '../../src/workbook/port';

/** A workbook to start from. Cells begin at A1; formulas start with '='. */
export interface SeedSheet {
  readonly name: string;
  readonly cells?: readonly (readonly (number | string | boolean | null)[])[];
  readonly table?: { readonly name: string; readonly range: RangeAddress };
  readonly merged?: RangeAddress;
  readonly hiddenRow?: number;
}

/** A spreadsheet under test, with what a person or an observer can do. Members that a host cannot offer are left out. */
export interface PortUnderTest {
  readonly spreadsheet: Spreadsheet;
  readonly person?: {
    edit?(sheet: string, row: number, column: number, entry: number | string): Promise<void>;
    undo?(): Promise<void>;
    note?(sheet: string, row: number, column: number, text: string): Promise<void>;
    protect?(sheet: string): Promise<void>;
  };
  /** How many conditional rules the sheet has in all, ours and others. */
  countRules?(sheet: string): Promise<number>;
  noteAt?(sheet: string, row: number, column: number): Promise<string | undefined>;
  /** What our drawings on the sheet say of themselves, in their order. */
  drawingsOn(sheet: string): Promise<readonly string[]>;
  close?(): Promise<void>;
}

const at = (row: number, column: number, rows = 1, columns = 1): RangeAddress => ({ row, column, rows, columns });
const cells = (
  sheet: string,
  row: number,
  column: number,
  block: Extract<Change, { kind: 'cells' }>['cells'],
): Change => ({
  kind: 'cells',
  sheet,
  row,
  column,
  cells: block,
});

const place = (row: number) => ({ row, column: 0, x: 0, width: 120, height: 60 });
const plotAt = (row: number, title: string): { plot: Plot; place: ReturnType<typeof place> } => ({
  plot: { width: 120, height: 60, title, inWords: 'One bar.', marks: [{ kind: 'rect', x: 0, y: 0, width: 9, height: 9, tone: 'ink' }] }, // prettier-ignore
  place: place(row),
});
const CHART: BarChart = {
  title: 'Checks',
  valueTitle: 'Channels',
  categories: at(1, 0),
  labels: ['Mass'],
  series: [
    { name: { row: 0, column: 1 }, values: at(1, 1), verdict: 'FAIL', caption: 'FAIL', numbers: [2] },
    { name: { row: 0, column: 2 }, values: at(1, 2), verdict: 'PASS', caption: 'PASS', numbers: [5] },
  ],
  place: place(3),
};

const PLAN: SeedSheet = {
  name: 'Channels',
  cells: [
    ['Point', 'Highest level', 'Note'],
    ['wing root', 12.5, null],
    ['fin tip', 40, true],
    [null, '=B2+B3', 'sum'],
  ],
};

/** What every implementation of the port must do, whatever program is behind it. */
export const describePort = (name: string, open: (sheets: readonly SeedSheet[]) => Promise<PortUnderTest>): void => {
  describe(`the spreadsheet port over ${name}`, () => {
    let under: PortUnderTest;
    const start = async (...sheets: SeedSheet[]) => {
      under = await open(sheets.length > 0 ? sheets : [PLAN, { name: 'Empty' }]);
      return under.spreadsheet;
    };
    const apply = (...changes: Change[]) => under.spreadsheet.apply(changes, { label: 'test' });
    /** The cell's value, wherever the used range begins. */
    const valueAt = async (sheet: string, row: number, column: number) => {
      const content = await under.spreadsheet.readSheet(sheet);
      return content.values[row - content.row]?.[column - content.column] ?? null;
    };
    const problemOf = async (work: Promise<unknown>): Promise<HostProblem> => {
      const error: unknown = await work.then(
        () => undefined,
        (reason: unknown) => reason,
      );
      expect(error).toBeInstanceOf(HostProblem);
      return error as HostProblem;
    };
    afterEach(async () => under?.close?.());

    it('lists the sheets in order and marks one active', async () => {
      const sheets = await (await start()).sheets();
      expect(sheets.map((sheet) => sheet.name)).toEqual(['Channels', 'Empty']);
      expect(sheets.filter((sheet) => sheet.active)).toHaveLength(1);
    });

    it('reads an empty sheet as no rows', async () => {
      const content = await (await start()).readSheet('Empty');
      expect(content.values).toEqual([]);
      expect(content.formulas).toEqual([]);
    });

    it('reads values with blanks as null, and formulas as text in the same shape', async () => {
      const content = await (await start()).readSheet('Channels');
      expect([content.sheet, content.row, content.column]).toEqual(['Channels', 0, 0]);
      expect(content.values.slice(0, 3)).toEqual([
        ['Point', 'Highest level', 'Note'],
        ['wing root', 12.5, null],
        ['fin tip', 40, true],
      ]);
      expect(content.formulas).toEqual([
        ['', '', ''],
        ['', '', ''],
        ['', '', ''],
        ['', '=B2+B3', ''],
      ]);
    });

    it('says where the used range begins', async () => {
      await start();
      await apply(cells('Empty', 4, 2, [['only']]));
      const content = await under.spreadsheet.readSheet('Empty');
      expect([content.row, content.column, content.values]).toEqual([4, 2, [['only']]]);
    });

    it('reads tables, merged areas and hidden rows where the host has them', async () => {
      const table = { name: 'Plan', range: at(0, 0, 4, 3) };
      const spreadsheet = await start({ ...PLAN, table, merged: at(5, 0, 1, 2), hiddenRow: 2 });
      const content = await spreadsheet.readSheet('Channels');
      if (content.tables.length > 0) expect(content.tables).toEqual([table]);
      expect(content.hiddenRows).toEqual([2]);
    });

    it('writes into its block and nowhere else, and clears what is null', async () => {
      await start();
      await apply(cells('Channels', 1, 1, [[7], [null]]), cells('Channels', 1, 3, [['PASS'], [false]]));
      const { values } = await under.spreadsheet.readSheet('Channels');
      expect(values.slice(0, 3)).toEqual([
        ['Point', 'Highest level', 'Note', null],
        ['wing root', 7, null, 'PASS'],
        ['fin tip', null, true, false],
      ]);
    });

    it.each(['1/2', '-5', '12', '3 mV/g', '-54..121 °C', 'TRUE', "'quoted", '+1 g', '50 %', '@home', '1e5'])(
      'keeps the text %s a text',
      async (text) => {
        await start();
        await apply(cells('Empty', 0, 0, [[text]]));
        expect(await valueAt('Empty', 0, 0)).toBe(text);
        expect((await under.spreadsheet.readSheet('Empty')).formulas[0]?.[0]).toBe('');
      },
    );

    it('writes formulas that read back as they were written', async () => {
      await start();
      await apply(cells('Channels', 1, 3, [['=B2*2'], ['=CHAN.MASS.SHIFT(0.02)']]));
      await under.spreadsheet.calculated();
      const { formulas } = await under.spreadsheet.readSheet('Channels');
      expect([formulas[1]?.[3], formulas[2]?.[3]]).toEqual(['=B2*2', '=CHAN.MASS.SHIFT(0.02)']);
    });

    it('writes a block larger than one request and reads it back', async () => {
      await start();
      const rows = Array.from({ length: 9000 }, (_row, i) => [i, `point ${i}`, i % 2 === 0]);
      const seen: [number, number][] = [];
      await under.spreadsheet.apply([cells('Empty', 0, 0, rows)], {
        label: 'test',
        onProgress: (done, total) => seen.push([done, total]),
      });
      expect((await under.spreadsheet.readSheet('Empty')).values).toEqual(rows);
      const [done, total] = seen[seen.length - 1] ?? [];
      expect(done).toBe(total);
      expect(seen.every(([d], i) => i === 0 || d >= (seen[i - 1]?.[0] ?? 0))).toBe(true);
    });

    it('makes a missing sheet that later changes of the same action can fill, and keeps one that is there', async () => {
      await start();
      await apply({ kind: 'sheet', name: 'Limits' }, cells('Limits', 0, 0, [['Tolerance']]), {
        kind: 'sheet',
        name: 'Channels',
      });
      expect((await under.spreadsheet.sheets()).map((sheet) => sheet.name)).toEqual(['Channels', 'Empty', 'Limits']);
      expect(await valueAt('Limits', 0, 0)).toBe('Tolerance');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
    });

    it('makes a sheet for reading, draws on it, and replaces what it drew', async () => {
      const spreadsheet = await start();
      await apply(
        { kind: 'sheet', name: 'Overview', reading: { foot: 'Page &P' } },
        cells('Overview', 0, 0, [['Check', 'FAIL', 'PASS'], ['Mass', 2, 5]]), // prettier-ignore
        { kind: 'look', sheet: 'Overview', range: at(0, 0, 2, 3), look: { hairline: '#c9d3d1', vertical: 'top' } },
        { kind: 'drawings', sheet: 'Overview', drawings: [CHART, plotAt(4, 'Level ladder')] },
      );
      expect(await under.drawingsOn('Overview')).toEqual(['Checks', 'Level ladder']);
      expect((await spreadsheet.readSheet('Overview')).values).toEqual([['Check', 'FAIL', 'PASS'], ['Mass', 2, 5]]); // prettier-ignore
      await apply({
        kind: 'drawings',
        sheet: 'Overview',
        drawings: [plotAt(2, 'Span bar'), plotAt(9, 'Thermal strip')],
      });
      expect(await under.drawingsOn('Overview')).toEqual(['Span bar', 'Thermal strip']);
      await apply({ kind: 'drawings', sheet: 'Overview', drawings: [] });
      expect(await under.drawingsOn('Overview')).toEqual([]);
    });

    it('takes drawings back with the rest of an action, where one undo does', async () => {
      const spreadsheet = await start();
      if (!spreadsheet.can.oneUndo || !under.person?.undo) return;
      await apply({ kind: 'sheet', name: 'Overview' }, { kind: 'drawings', sheet: 'Overview', drawings: [plotAt(2, 'One')] }); // prettier-ignore
      await apply(cells('Overview', 0, 0, [['two']]), { kind: 'drawings', sheet: 'Overview', drawings: [plotAt(2, 'Two')] }); // prettier-ignore
      expect(await under.drawingsOn('Overview')).toEqual(['Two']);
      await under.person.undo();
      expect(await under.drawingsOn('Overview')).toEqual(['One']);
    });

    it('clears a block of ours and leaves its neighbours', async () => {
      await start();
      await apply({ kind: 'clear', sheet: 'Channels', range: at(1, 1, 1, 2) });
      expect((await under.spreadsheet.readSheet('Channels')).values.slice(0, 3)).toEqual([
        ['Point', 'Highest level', 'Note'],
        ['wing root', null, null],
        ['fin tip', 40, true],
      ]);
    });

    it('takes looks, widths and marks without touching a value', async () => {
      const spreadsheet = await start();
      const before = (await spreadsheet.readSheet('Channels')).formulas;
      await apply(
        { kind: 'look', sheet: 'Channels', range: at(0, 0, 1, 3), look: { bold: true, ink: '#112233', wrap: true } },
        {
          kind: 'look',
          sheet: 'Channels',
          range: at(1, 1, 3),
          look: { numberFormat: '0.00', align: 'right', ground: '#ffeedd' },
        },
        { kind: 'width', sheet: 'Channels', column: 0, columns: 2, characters: 14 },
      );
      const after = await spreadsheet.readSheet('Channels');
      expect(after.formulas).toEqual(before);
      expect(after.values[1]).toEqual(['wing root', 12.5, null]);
    });

    it('replaces its own marks instead of adding to them', async () => {
      await start();
      const mark = (equals: string) => ({ range: at(1, 3, 3), equals, ink: '#000000', ground: '#ffffff' });
      await apply({ kind: 'marks', sheet: 'Channels', rules: [mark('PASS'), mark('FAIL'), mark('WARN')] });
      await apply({ kind: 'marks', sheet: 'Channels', rules: [mark('PASS'), mark('FAIL')] });
      if (under.countRules) expect(await under.countRules('Channels')).toBe(2);
      await apply({ kind: 'marks', sheet: 'Channels', rules: [] });
      if (under.countRules) expect(await under.countRules('Channels')).toBe(0);
    });

    it('sets, changes and deletes a note, or says that it cannot', async () => {
      const spreadsheet = await start();
      const note = (text: string | null): Change => ({ kind: 'note', sheet: 'Channels', row: 1, column: 1, text });
      if (!spreadsheet.can.notes) {
        expect((await problemOf(apply(note('why')))).code).toBe('unsupported');
        return;
      }
      const noteNow = async () => under.noteAt?.('Channels', 1, 1);
      await apply(note('first'));
      if (under.noteAt) expect(await noteNow()).toBe('first');
      await apply(note('second'));
      if (under.noteAt) expect(await noteNow()).toBe('second');
      await apply(note(null));
      if (under.noteAt) expect(await noteNow()).toBeUndefined();
      await apply(note(null));
    });

    it('neither replaces nor deletes a note that a person wrote', async () => {
      const spreadsheet = await start();
      if (!spreadsheet.can.notes || !under.person?.note || !under.noteAt) return;
      await under.person.note('Channels', 1, 1, 'ask Jo before moving this');
      const ours: Change = { kind: 'note', sheet: 'Channels', row: 1, column: 1, text: 'why' };
      expect((await problemOf(apply(cells('Channels', 1, 0, [['gone']]), ours))).code).toBe('occupied');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
      await apply({ ...ours, text: null }, { kind: 'clear', sheet: 'Channels', range: at(1, 1, 2, 1) });
      expect(await under.noteAt('Channels', 1, 1)).toBe('ask Jo before moving this');
    });

    it('writes into hidden rows as into others and leaves them hidden', async () => {
      const spreadsheet = await start({ ...PLAN, hiddenRow: 2 });
      await apply(cells('Channels', 1, 3, [['PASS'], ['FAIL'], ['WARN']]));
      const { values, hiddenRows } = await spreadsheet.readSheet('Channels');
      expect(values.slice(1, 4).map((row) => row[3])).toEqual(['PASS', 'FAIL', 'WARN']);
      expect(hiddenRows).toEqual([2]);
    });

    it('takes new columns into a table, where the host keeps tables', async () => {
      const table = { name: 'Plan', range: at(0, 0, 4, 3) };
      const spreadsheet = await start({ ...PLAN, table });
      if ((await spreadsheet.readSheet('Channels')).tables.length === 0) return;
      await apply(cells('Channels', 0, 3, [['Verdict'], ['PASS'], ['PASS'], [null]]), {
        kind: 'extend-table',
        sheet: 'Channels',
        table: 'Plan',
        columns: 1,
      });
      const { tables } = await spreadsheet.readSheet('Channels');
      expect(tables).toEqual([{ name: 'Plan', range: at(0, 0, 4, 4) }]);
    });

    it('refuses a missing table before anything is written', async () => {
      await start();
      const extend: Change = { kind: 'extend-table', sheet: 'Channels', table: 'Nowhere', columns: 1 };
      const problem = await problemOf(apply(cells('Channels', 1, 0, [['gone']]), extend));
      expect(problem.code).toBe('not-found');
      expect(problem.message).toContain('Nowhere');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
    });

    it('refuses a missing sheet before anything is written', async () => {
      const spreadsheet = await start();
      const problem = await problemOf(apply(cells('Channels', 1, 0, [['gone']]), cells('Nowhere', 0, 0, [[1]])));
      expect(problem.code).toBe('not-found');
      expect(problem.message).toContain('Nowhere');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
      expect((await problemOf(spreadsheet.readSheet('Nowhere'))).code).toBe('not-found');
      if (spreadsheet.host !== 'file')
        expect((await problemOf(spreadsheet.select('Nowhere', at(0, 0)))).code).toBe('not-found');
    });

    it('writes nothing when it is stopped before it begins', async () => {
      const spreadsheet = await start();
      const stopped = spreadsheet.apply([cells('Channels', 1, 0, [['gone']])], {
        label: 'test',
        signal: { aborted: true },
      });
      expect((await problemOf(stopped)).code).toBe('cancelled');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
    });

    it('refuses a protected sheet before anything is written', async () => {
      await start();
      if (!under.person?.protect) return;
      await under.person.protect('Empty');
      const problem = await problemOf(apply(cells('Channels', 1, 0, [['gone']]), cells('Empty', 0, 0, [[1]])));
      expect(problem.code).toBe('protected');
      expect(await valueAt('Channels', 1, 0)).toBe('wing root');
    });

    it('keeps settings in the workbook until they are taken out', async () => {
      const spreadsheet = await start();
      const json = JSON.stringify({ unit: 'µg/√Hz', text: '<&>"\'\n' });
      expect(await spreadsheet.getSetting('mapping')).toBeUndefined();
      await spreadsheet.setSetting('mapping', json);
      expect(await spreadsheet.getSetting('mapping')).toBe(json);
      await spreadsheet.setSetting('mapping', '{}');
      expect(await spreadsheet.getSetting('mapping')).toBe('{}');
      await spreadsheet.setSetting('mapping', undefined);
      await spreadsheet.setSetting('mapping', undefined);
      expect(await spreadsheet.getSetting('mapping')).toBeUndefined();
    });

    it('takes a whole action back with one undo, where the host allows it', async () => {
      const spreadsheet = await start();
      if (!spreadsheet.can.oneUndo || !under.person?.undo) return;
      const before = await spreadsheet.readSheet('Channels');
      await apply(
        { kind: 'clear', sheet: 'Channels', range: at(0, 2, 4) },
        cells('Channels', 0, 2, [['Verdict'], ['PASS'], ['FAIL'], ['WARN']]),
        { kind: 'look', sheet: 'Channels', range: at(0, 2), look: { bold: true } },
        {
          kind: 'marks',
          sheet: 'Channels',
          rules: [{ range: at(1, 2, 3), equals: 'FAIL', ink: '#000000', ground: '#ffffff' }],
        },
      );
      expect(await valueAt('Channels', 1, 2)).toBe('PASS');
      await under.person.undo();
      expect(await spreadsheet.readSheet('Channels')).toEqual(before);
      if (under.countRules) expect(await under.countRules('Channels')).toBe(0);
    });

    it('reports what a person changes, not what it writes itself, until told to stop', async () => {
      const spreadsheet = await start();
      if (!spreadsheet.can.changeEvents || !under.person?.edit) return;
      const seen: unknown[] = [];
      const stop = await spreadsheet.onChange((change) => seen.push(change));
      await apply(cells('Channels', 1, 3, [['PASS']]));
      await under.person.edit('Channels', 2, 1, 41);
      await settle();
      expect(seen).toEqual([{ sheet: 'Channels', range: at(2, 1) }]);
      stop();
      await settle();
      await under.person.edit('Channels', 2, 1, 42);
      await settle();
      expect(seen).toHaveLength(1);
    });

    it('selects a range and says what is selected', async () => {
      const spreadsheet = await start();
      if (spreadsheet.host === 'file') return;
      await spreadsheet.select('Empty', at(3, 1, 2, 2));
      expect(await spreadsheet.selection()).toEqual({ sheet: 'Empty', range: at(3, 1, 2, 2) });
      expect((await spreadsheet.sheets()).find((sheet) => sheet.active)?.name).toBe('Empty');
    });
  });
};

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
