import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { nodeCodec } from '../../src/adapters/xlsx/codec-node';
import { openWorkbook } from '../../src/adapters/xlsx/workbook-file';
import type { Cell } from '../../src/functions/define';
import { channelLists, channelSheets, listRowOf, rowIdOf, tablesOfEachList } from '../../src/workbook/channel-lists';
import { planChanges } from '../../src/workbook/choosing/row-edits';
import { tryChange } from '../../src/workbook/choosing/what-if';
import { ownIndex } from '../../src/workbook/own-columns';
import { parseMapping, mappingJson } from '../../src/workbook/mapping';
import { judgePlan } from '../../src/workbook/plan-of';
import type { Change, SheetContent, Spreadsheet } from '../../src/workbook/port';
import { recognise, type SheetToRead } from '../../src/workbook/recognise';
import { rowValues } from '../../src/workbook/row-values';
import { PlanSession } from '../../src/workbook/session';
import type { Mapping } from '../../src/workbook/tables';

// The demo plan, its channel list cut into one sheet per structure part: the same plan, so the same verdicts.
const demo = openWorkbook(new Uint8Array(readFileSync(join(__dirname, '../../assets/demo-plan.xlsx'))), {
  codec: nodeCodec,
  functionNames: [],
});
const read = demo.sheets.map((info) => ({ info, content: demo.readSheet(info.name) }));
const whole = recognise(read);
const list: SheetToRead = read[0]!;
const others: readonly SheetToRead[] = read.slice(1);
const { headerRow, firstRow, lastRow } = whole.channels!;
const groupColumn = whole.channels!.columns.get('group')!.column;

const sheetOf = (name: string, rows: readonly (readonly Cell[])[], active = false): SheetToRead => ({
  info: { name, active, visible: true },
  content: {
    ...list.content,
    sheet: name,
    row: 0,
    column: 0,
    values: rows,
    formulas: rows.map((row) => row.map(() => '')),
    tables: [],
    merged: [],
    hiddenRows: [],
  },
});
const heading = list.content.values[headerRow]!;
const rows = list.content.values.slice(firstRow, lastRow + 1);
const without = (row: readonly Cell[], column: number) => row.filter((_, c) => c !== column);
const partNames = [...new Set(rows.map((row) => String(row[groupColumn])))];
/** The structure part is told by the sheet alone. */
const parts = partNames.map((name) =>
  sheetOf(name, [
    [name],
    without(heading, groupColumn),
    ...rows.filter((row) => row[groupColumn] === name).map((row) => without(row, groupColumn)),
  ]),
);
const spread = (sheets: readonly SheetToRead[], mapping?: Mapping) => recognise([...sheets, ...others], { mapping });
const contentIn =
  (sheets: readonly SheetToRead[]) =>
  (name: string): SheetContent =>
    [...sheets, ...others].find(({ info }) => info.name === name)!.content;

describe('a channel list that is spread over several sheets', () => {
  const tables = spread(parts);
  const contentOf = contentIn(parts);
  const judged = judgePlan(tables, contentOf);
  const before = judgePlan(whole, (name) => read.find(({ info }) => info.name === name)!.content);

  it('is one plan: the same channels, verdicts and findings across rows as on one sheet', () => {
    expect(channelSheets(tables)).toEqual(partNames);
    const of = ({ byRow }: typeof judged) =>
      [...byRow.values()].map(({ channel, verdict }) => [channel.id, channel.group, verdict].join(' ')).sort();
    expect(of(judged)).toEqual(of(before));
    const texts = (notices: typeof judged.across) => notices.map(({ text }) => text).sort();
    expect(texts(judged.across)).toEqual(texts(before.across));
    expect(judged.cautions).toEqual(before.cautions);
  });

  it('has row formulas on each sheet that give the verdicts of the plan', () => {
    for (const [i, own] of tablesOfEachList({ ...tables, channels: tables.channels! }).entries()) {
      const values = rowValues(own, 40, contentOf);
      for (const [id, check] of judged.byRow) {
        const at = listRowOf(tables, id)!;
        if (at.list === i) expect(values(at.row)[ownIndex('verdict')]).toBe(check.verdict);
      }
    }
  });

  it('is the same plan whichever of its sheets is active', () => {
    for (const active of [0, 4, partNames.length - 1]) {
      const sheets = parts.map((part, i) => ({ ...part, info: { ...part.info, active: i === active } }));
      expect(channelSheets(spread(sheets))).toEqual(partNames);
    }
  });

  it('says which sheet a cell is on that could not be read, and that the sheet names the part', () => {
    const ambiguous = judged.unread.find(({ text }) => text.includes('1,250'))!;
    expect(ambiguous.text).toContain(`(${ambiguous.at!.sheet})`);
    expect(contentOf(ambiguous.at!.sheet).values[ambiguous.at!.row]![ambiguous.at!.column]).toBe('1,250');
    expect(judged.readings[0]!.text).toContain(partNames[0]!);
  });

  it('takes a choice back to the sheets of its rows, as one set of changes', () => {
    const edits = [rowIdOf(0, 2), rowIdOf(1, 3)].map((row) => ({ row, key: 'sensor', value: 'Qz-100 T' }));
    const changes = planChanges({ tables, contentOf }, edits);
    expect(changes.map(({ sheet, row }) => [sheet, row])).toEqual([
      [partNames[0], 2],
      [partNames[1], 3],
    ]);
    const tried = tryChange({ tables, contentOf }, edits)!;
    expect(tried.after.byRow.get(rowIdOf(1, 3))!.channel.named!.sensor).toBe('Qz-100 T');
    expect(tried.after.byRow.size).toBe(judged.byRow.size);
  });
});

describe('sheets that look like channel lists', () => {
  const [first, second, third] = parts as [SheetToRead, SheetToRead, SheetToRead];
  const reversed = sheetOf(
    'Other',
    third.content.values.map((row) => [...row].slice(0, -1).reverse()),
  );
  const copy = sheetOf('Older', second.content.values);

  it('are asked about when their columns differ or their channels have the same names, and never joined by themselves', () => {
    const { channels } = spread([first, second, reversed, copy]);
    expect(channelSheets({ channels })).toEqual(partNames.slice(0, 2));
    expect(channels!.further!.map(({ sheet, because }) => [sheet, because])).toEqual([
      ['Other', 'other columns'],
      ['Older', 'same channels'],
    ]);
  });

  it('belong to the plan, or do not, as the user says', () => {
    const lists = { Other: true, Older: false, [second.info.name]: false };
    const { channels } = spread([first, second, reversed, copy], parseMapping(mappingJson({ channels: { lists } })));
    expect(channelSheets({ channels })).toEqual(['Other']);
    const both = spread([first, second, reversed], { channels: { lists: { Other: true, [partNames[0]!]: true } } });
    expect(channelSheets(both)).toEqual([partNames[0], partNames[1], 'Other']);
    expect(channelLists(both)[2]!.columns.get('sensor')).not.toEqual(channelLists(both)[0]!.columns.get('sensor'));
  });

  it('are corrected for themselves where their headings differ', () => {
    const lists = { Other: true, [partNames[0]!]: true };
    const { channels } = spread([first, reversed], {
      channels: { lists, fieldsOn: { Other: { point: { column: null } } } },
    });
    expect(channels!.columns.has('point')).toBe(true);
    expect(channels!.parts![0]!.columns.has('point')).toBe(false);
  });
});

describe('a session with a spread list', () => {
  const applied: (readonly Change[])[] = [];
  const selected: unknown[] = [];
  let setting: string | undefined;
  const own = parts.slice(0, 3);
  const reversed = sheetOf(
    'Other',
    parts[3]!.content.values.map((row) => [...row].slice(0, -1).reverse()),
  );
  const sheets = [...own, reversed, ...others];
  const host = {
    sheets: () => Promise.resolve(sheets.map(({ info }) => info)),
    readSheet: (name: string) => Promise.resolve(sheets.find(({ info }) => info.name === name)!.content),
    getSetting: () => Promise.resolve(setting),
    setSetting: (_: string, json: string) => Promise.resolve(void (setting = json)),
    apply: (changes: readonly Change[]) => Promise.resolve(void applied.push(changes)),
    select: (...at: unknown[]) => Promise.resolve(void selected.push(at)),
    calculated: () => Promise.resolve(),
  } as unknown as Spreadsheet;
  const session = new PlanSession(host);

  it('checks all sheets in one action, each with columns of its own', async () => {
    await session.read();
    await session.check({});
    expect(applied).toHaveLength(1);
    const written = new Set(applied[0]!.flatMap((change) => ('sheet' in change ? [change.sheet] : [])));
    expect([...written]).toEqual(partNames.slice(0, 3));
  });

  it('goes to a row on the sheet where it stands', async () => {
    await session.goToRow(rowIdOf(2, 5));
    expect(selected.at(-1)).toMatchObject([partNames[2], { row: 5 }]);
  });

  it('asks about the list that differs, and keeps the answer in the workbook', async () => {
    const view = await session.read();
    expect(view.lists.map(({ sheet, belongs, isAsked }) => [sheet, belongs, isAsked])).toEqual([
      ...partNames.slice(0, 3).map((name) => [name, true, false]),
      ['Other', false, true],
    ]);
    await session.chooseList('Other', true);
    const after = await session.read();
    expect(after.lists.map(({ belongs }) => belongs)).toEqual([true, true, true, true]);
    expect(after.fields.some(({ sheet }) => sheet === 'Other')).toBe(true);
    await session.correct({ table: 'channels', key: 'location', sheet: 'Other' }, null);
    expect(parseMapping(setting).channels).toMatchObject({
      lists: { Other: true },
      fieldsOn: { Other: { location: {} } },
    });
  });
});
