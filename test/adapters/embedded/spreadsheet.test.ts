import type { IWorkbookData } from '@univerjs/core';
import { ConditionalFormattingRuleModel } from '@univerjs/sheets-conditional-formatting';
import { HostProblem, type Change, type MarkRule } from '../../../src/workbook/port';
import { apply, openWorkbook, valuesOf, workbookOf } from './headless';

type Opened = Awaited<ReturnType<typeof openWorkbook>>;

/** Everything the workbook would be saved with, without what only the last selection or calculation left. */
const saved = ({ api }: Opened) => {
  const workbook = api.getActiveWorkbook();
  if (!workbook) throw new Error('no workbook');
  const data = structuredClone(workbook.save()) as IWorkbookData;
  const styles = data.styles;
  for (const sheet of Object.values(data.sheets))
    for (const row of Object.values(sheet.cellData ?? {}))
      for (const cell of Object.values(row as object) as { s?: unknown }[])
        if (typeof cell.s === 'string') cell.s = styles[cell.s];
  return {
    ...data,
    styles: undefined,
    resources: data.resources?.map(({ name, data: text }) => ({ name, data: JSON.parse(text || '{}') })),
  };
};

const mark = (equals: string, ink: string, ground: string): MarkRule => ({
  range: { row: 1, column: 2, rows: 2, columns: 1 },
  equals,
  ink,
  ground,
});
const cells = (row: number, column: number, block: (number | string | boolean | null)[][]): Change => ({
  kind: 'cells',
  sheet: 'Plan',
  row,
  column,
  cells: block,
});

const sample = () =>
  workbookOf(
    [
      ['Point', 'Level', 'Check'],
      ['P1', 0.1 + 0.2, '=B2*2'],
      ['P2', 1e-13, null],
    ],
    {
      resources: [
        {
          name: 'SHEET_NOTE_PLUGIN',
          data: JSON.stringify({
            plan: { 1: { 2: { id: 'n', row: 1, col: 2, note: 'Channelwright:\nbefore', width: 90, height: 40 } } },
          }),
        },
        {
          name: 'SHEET_CONDITIONAL_FORMATTING_PLUGIN',
          data: JSON.stringify({
            plan: [
              {
                cfId: 'theirs',
                ranges: [{ startRow: 1, endRow: 2, startColumn: 2, endColumn: 2 }],
                stopIfTrue: false,
                rule: { type: 'highlightCell', subType: 'text', operator: 'equal', value: 'x', style: { bl: 1 } },
              },
            ],
          }),
        },
      ],
    },
  );

const rules = ({ univer }: Opened) =>
  univer.__getInjector().get(ConditionalFormattingRuleModel).getSubunitRules('test-workbook', 'plan') ?? [];

describe('the port over the embedded spreadsheet', () => {
  it('reads exact values and formulas, spilled cells and errors, from the first used cell', async () => {
    const { spreadsheet } = await openWorkbook(
      workbookOf([[null], [null, 0.1 + 0.2, '=1/0'], [null, '=SEQUENCE(2,2)'], [null, null], [null, true, '12']]),
    );
    await spreadsheet.calculated();
    const content = await spreadsheet.readSheet('Plan');
    expect(content).toMatchObject({ row: 1, column: 1 });
    expect(content.values).toEqual([
      [0.30000000000000004, { error: '#DIV/0!' }],
      [1, 2],
      [3, 4],
      [true, '12'],
    ]);
    expect(content.formulas).toEqual([
      ['', '=1/0'],
      ['=SEQUENCE(2,2)', ''],
      ['', ''],
      ['', ''],
    ]);
  });

  it('gives an empty sheet no rows, and says which sheet is missing', async () => {
    const { spreadsheet } = await openWorkbook(workbookOf([]));
    expect((await spreadsheet.readSheet('Plan')).values).toEqual([]);
    await expect(spreadsheet.readSheet('Nowhere')).rejects.toMatchObject({ code: 'not-found' });
  });

  it('writes numbers, texts, truths and formulas as what they are', async () => {
    const { spreadsheet } = await openWorkbook(workbookOf([]));
    await apply(
      spreadsheet,
      cells(0, 0, [
        [1, '007', true, null],
        ['=A1+1', '1e3', 'TRUE', '12 %'],
      ]),
    );
    expect(await valuesOf(spreadsheet)).toEqual([
      [1, '007', true, null],
      [2, '1e3', 'TRUE', '12 %'],
    ]);
  });

  it('keeps one formula text for a column of formulas, and reads each cell with its own references', async () => {
    const { spreadsheet } = await openWorkbook(workbookOf([[1], [2], [3]]));
    await apply(spreadsheet, cells(0, 1, [['=A1*$A$1&"A1"'], ['=A2*$A$1&"A1"'], ['=A3*$A$1&"A1"']]));
    await spreadsheet.calculated();
    const content = await spreadsheet.readSheet('Plan');
    expect(content.formulas.map((row) => row[1])).toEqual(['=A1*$A$1&"A1"', '=A2*$A$1&"A1"', '=A3*$A$1&"A1"']);
    expect(content.values.map((row) => row[1])).toEqual(['1A1', '2A1', '3A1']);
  });

  it('keeps a formula alive when only its look changes', async () => {
    const { spreadsheet } = await openWorkbook(workbookOf([[1, '=A1+1']]));
    const range = { row: 0, column: 0, rows: 1, columns: 3 };
    await apply(spreadsheet, { kind: 'look', sheet: 'Plan', range, look: { bold: true } });
    await apply(spreadsheet, cells(0, 0, [[5]]));
    expect(await valuesOf(spreadsheet)).toEqual([[5, 6]]);
  });

  it('makes one undo step of everything in one action, and undo leads back exactly', async () => {
    const opened = await openWorkbook(sample());
    const { spreadsheet, api } = opened;
    await spreadsheet.calculated();
    const before = saved(opened);
    await apply(
      spreadsheet,
      { kind: 'sheet', name: 'Limits' },
      cells(1, 2, [['=B2+1'], ['PASS']]),
      {
        kind: 'look',
        sheet: 'Plan',
        range: { row: 0, column: 0, rows: 3, columns: 4 },
        look: { bold: true, ink: '#112233', ground: '#ffeecc', numberFormat: '0.00', align: 'right', wrap: true },
      },
      { kind: 'width', sheet: 'Plan', column: 2, columns: 2, characters: 30 },
      { kind: 'note', sheet: 'Plan', row: 1, column: 2, text: 'ours' },
      { kind: 'note', sheet: 'Plan', row: 2, column: 2, text: 'new' },
      { kind: 'marks', sheet: 'Plan', rules: [mark('PASS', '#000001', '#ffff01'), mark('FAIL', '#000002', '#ffff02')] },
      cells(1, 2, [[7], [null]]),
      { kind: 'clear', sheet: 'Plan', range: { row: 2, column: 0, rows: 1, columns: 3 } },
    );
    await spreadsheet.calculated();
    const after = saved(opened);
    expect(after).not.toEqual(before);

    await api.getActiveWorkbook()?.undo();
    await spreadsheet.calculated();
    expect(saved(opened)).toEqual(before);
    await api.getActiveWorkbook()?.redo();
    await spreadsheet.calculated();
    expect(saved(opened)).toEqual(after);
    await api.getActiveWorkbook()?.undo();
    await spreadsheet.calculated();
    expect(saved(opened)).toEqual(before);
  });

  it('replaces its marks instead of adding to them, keeps the user’s, and keeps their order', async () => {
    const opened = await openWorkbook(sample());
    const marks: Change = { kind: 'marks', sheet: 'Plan', rules: [mark('PASS', '#1', '#2'), mark('FAIL', '#3', '#4')] };
    await apply(opened.spreadsheet, marks);
    await apply(opened.spreadsheet, marks);
    const values = rules(opened).map((rule) => (rule as { rule: { value: string } }).rule.value);
    expect(values).toEqual(['PASS', 'FAIL', 'x']);
    await apply(opened.spreadsheet, { kind: 'marks', sheet: 'Plan', rules: [] });
    expect(rules(opened)).toHaveLength(1);
  });

  it('leaves nothing behind when an action is refused or cancelled', async () => {
    const opened = await openWorkbook(sample());
    const { spreadsheet, api } = opened;
    await spreadsheet.calculated();
    const before = saved(opened);
    const refused = spreadsheet.apply(
      [
        cells(0, 0, [['changed']]),
        { kind: 'look', sheet: 'Gone', range: { row: 0, column: 0, rows: 1, columns: 1 }, look: {} },
      ],
      { label: 'x' },
    );
    await expect(refused).rejects.toBeInstanceOf(HostProblem);
    const cancelled = spreadsheet.apply([cells(0, 0, [['changed']])], { label: 'x', signal: { aborted: true } });
    await expect(cancelled).rejects.toMatchObject({ code: 'cancelled' });
    await spreadsheet.calculated();
    expect(saved(opened)).toEqual(before);
    await api.getActiveWorkbook()?.undo();
    expect(saved(opened)).toEqual(before);
  });

  it('tells a person’s edits, undo included, and never its own or the engine’s', async () => {
    const { spreadsheet, api } = await openWorkbook(sample());
    const seen: unknown[] = [];
    const stop = await spreadsheet.onChange((change) => seen.push(change));
    await apply(spreadsheet, cells(0, 5, [['ours', '=B2']]));
    await spreadsheet.calculated();
    expect(seen).toEqual([]);
    api
      .getActiveWorkbook()
      ?.getActiveSheet()
      .getRange('B2:B3')
      .setValues([[5], [6]]);
    await spreadsheet.calculated();
    expect(seen).toEqual([{ sheet: 'Plan', range: { row: 1, column: 1, rows: 2, columns: 1 } }]);
    await api.getActiveWorkbook()?.undo();
    expect(seen.length).toBeGreaterThan(1);
    seen.length = 0;
    await api.getActiveWorkbook()?.undo();
    expect(seen).toContainEqual({ sheet: 'Plan', range: { row: 0, column: 5, rows: 1, columns: 2 } });
    seen.length = 0;
    await api.getActiveWorkbook()?.redo();
    expect(seen).toContainEqual({ sheet: 'Plan', range: { row: 0, column: 5, rows: 1, columns: 2 } });
    const count = seen.length;
    stop();
    api.getActiveWorkbook()?.getActiveSheet().getRange('B2').setValue(9);
    expect(seen).toHaveLength(count);
  });

  it('keeps settings inside the workbook', async () => {
    const { spreadsheet, api } = await openWorkbook(workbookOf([]));
    await spreadsheet.setSetting('mapping', '{"a":1}');
    expect(await spreadsheet.getSetting('mapping')).toBe('{"a":1}');
    expect(JSON.stringify(api.getActiveWorkbook()?.save())).toContain('mapping');
    await spreadsheet.setSetting('mapping', undefined);
    expect(await spreadsheet.getSetting('mapping')).toBeUndefined();
  });

  it('extends a table to the right, and undo narrows it again', async () => {
    const table = {
      id: 't1',
      name: 'Channels',
      range: { startRow: 0, startColumn: 0, endRow: 2, endColumn: 1 },
      options: { showHeader: true },
      filters: { tableColumnFilterList: [] },
      columns: ['Point', 'Level'].map((displayName) => ({
        id: displayName,
        displayName,
        dataType: 'string',
        formula: '',
        meta: {},
        style: {},
      })),
      meta: {},
    };
    const opened = await openWorkbook(
      workbookOf(
        [
          ['Point', 'Level', 'Check'],
          ['P1', 2, null],
          ['P2', 3, null],
        ],
        {
          resources: [{ name: 'SHEET_TABLE_PLUGIN', data: JSON.stringify({ plan: { tables: [table] } }) }],
        },
      ),
    );
    const { spreadsheet, api } = opened;
    await apply(
      spreadsheet,
      cells(0, 4, [['=SUM(Channels[Level])']]),
      { kind: 'extend-table', sheet: 'Plan', table: 'Channels', columns: 1 },
      cells(1, 2, [[10], [20]]),
      cells(1, 4, [['=SUM(Channels[Check])']]),
    );
    const values = await valuesOf(spreadsheet);
    expect(values[0]?.[4]).toBe(5);
    expect(values[1]?.[4]).toBe(30);
    expect((await spreadsheet.readSheet('Plan')).tables).toEqual([
      { name: 'Channels', range: { row: 0, column: 0, rows: 3, columns: 3 } },
    ]);
    await api.getActiveWorkbook()?.undo();
    expect((await spreadsheet.readSheet('Plan')).tables).toEqual([
      { name: 'Channels', range: { row: 0, column: 0, rows: 3, columns: 2 } },
    ]);
  });

  it('lists sheets, hidden rows and merged cells', async () => {
    const data = workbookOf([
      ['Plan of channels', null],
      ['a', 'b'],
      ['c', 'd'],
    ]);
    Object.assign(data.sheets['plan'] as object, {
      mergeData: [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 1 }],
      rowData: { 1: { hd: 1 } },
    });
    const { spreadsheet } = await openWorkbook(data);
    const content = await spreadsheet.readSheet('Plan');
    expect(content.merged).toEqual([{ row: 0, column: 0, rows: 1, columns: 2 }]);
    expect(content.hiddenRows).toEqual([1]);
    expect(await spreadsheet.sheets()).toEqual([{ name: 'Plan', active: true, visible: true }]);
  });
});
