import fc from 'fast-check';
import { openHeadless } from '../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import type { Verdict } from '../../src/core/verdict';
import type { ChannelCheck } from '../../src/plan/check';
import { limitRowsOf } from '../../src/workbook/limit-rows';
import { OWN_KEYS, type OwnKey } from '../../src/workbook/own-columns';
import { judgePlan } from '../../src/workbook/plan-of';
import type { SheetContent } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import { rowValues } from '../../src/workbook/row-values';
import { PlanSession } from '../../src/workbook/session';
import { caseSheets, type CaseSheet, type Typed } from './case-sheets';
import { workbookData } from './case-workbook';

// Limits for a purpose, a part, a row: the formulas choose in the cells, the plan layer by itself, and neither knows the other.
const VERDICTS: readonly (readonly [OwnKey, (check: ChannelCheck) => Verdict])[] = [
  ['levelVerdict', (check) => check.level.verdict],
  ['massVerdict', (check) => check.mass.verdict],
  ['thermalVerdict', (check) => check.thermal.verdict],
  ['frequencyVerdict', (check) => check.frequency.verdict],
  ['verdict', (check) => check.verdict],
];
const HEADINGS = ['Limit', 'Structure part', 'Pass', 'Warn', 'Unit', 'Purpose', 'Origin'];
const OWN = ['Signal-to-noise limit, dB', 'Headroom limit, dB', 'Mass ratio limit'];

/** The twelve cases with purposes, parts and own limits dealt out, over a limits sheet. */
const sheetsWith = (limits: readonly (readonly Typed[])[], dealt: (i: number) => readonly Typed[]): CaseSheet[] =>
  [...caseSheets(), { name: 'Limits', cells: [HEADINGS, ...limits] }].map(({ name, cells }) => {
    if (name !== 'Channels') return { name, cells };
    const purpose = cells[0]!.indexOf('Purpose');
    return {
      name,
      cells: cells.map((row, i) => {
        const [of, group, ...own] = i === 0 ? ['Purpose', 'Structure part', ...OWN] : dealt(i - 1);
        return [...row.map((typed, c) => (c === purpose ? of! : typed)), group!, ...own];
      }),
    };
  });

const contentOf = ({ name, cells }: CaseSheet): SheetContent => ({
  sheet: name,
  row: 0,
  column: 0,
  values: cells,
  formulas: cells.map((row) => row.map(() => '')),
  tables: [],
  merged: [],
  hiddenRows: [],
});

/** Without a purpose the plan may know that all purposes agree; the cells leave it open. */
const isPurposeUnread = ({ channel }: ChannelCheck) => channel.requirement.unread?.includes('purpose');

const isOpen = (cell: unknown) => cell === 'INCOMPLETE' || typeof cell === 'object';

const apart = (byRow: ReadonlyMap<number, ChannelCheck>, cellAt: (row: number, key: OwnKey) => unknown): string[] =>
  [...byRow].flatMap(([row, check]) =>
    VERDICTS.flatMap(([key, of]) =>
      cellAt(row, key) === of(check) || (isPurposeUnread(check) && isOpen(cellAt(row, key)))
        ? []
        : [`${check.channel.id} ${key}: cell ${JSON.stringify(cellAt(row, key))}, plan ${of(check)}`],
    ),
  );

const PURPOSES = [null, 'survey', 'modal', 'shock', 'Modal '];
const GROUPS = [null, 'Wing', 'wing ', 'Tail boom', 7];

it('the embedded spreadsheet’s cells agree with the plan', async () => {
  const sheets = sheetsWith(
    [
      ['Headroom', null, 6, 1, 'dB', null, 'this test'],
      ['Headroom', 'Wing', 30, 10, 'dB', null, 'wing, all purposes'],
      ['Headroom', 'WING', 2, 0, null, 'modal', 'wing, modal'],
      ['Signal to noise', null, 40, null, 'dB', 'shock', 'shocks'],
      ['Mass ratio', 'Tail boom', 1, 4, '%', null, 'tail'],
      ['Mass ratio, modal', 7, 0.5, null, '1', null, 'part 7'],
      ['Thermal tolerance', 'wing', 1, null, '%', 'survey', 'wing'],
      ['Span tolerance', null, 1, 2, '%', 'modal', 'modal'],
    ],
    (i) => [
      PURPOSES[i % 5]!,
      GROUPS[(i * 2) % 5]!,
      i % 4 === 1 ? 3 : null,
      i % 3 === 2 ? 12 : null,
      i % 5 === 4 ? 0.5 : null,
    ],
  );
  const host = await openHeadless(workbookData(sheets));
  try {
    const spreadsheet = new EmbeddedSpreadsheet(host);
    const session = new PlanSession(spreadsheet);
    await session.read();
    await session.check({});
    const { column } = (await session.read()).results!;
    const read = await Promise.all(
      (await spreadsheet.sheets()).map(async (info) => ({ info, content: await spreadsheet.readSheet(info.name) })),
    );
    const { byRow } = judgePlan(recognise(read), (name) => read.find(({ info }) => info.name === name)!.content);
    const values = read[0]!.content.values;
    expect(byRow.size).toBe(12);
    expect(apart(byRow, (row, key) => values[row]![column + OWN_KEYS.indexOf(key)])).toEqual([]);
  } finally {
    host.univer.dispose();
  }
}, 60_000);

it('cells and plan agree whatever the limits sheet holds', () => {
  const names = ['Headroom', 'signal to  noise', 'Mass ratio', 'Mass ratio, modal', 'Mass ratio, shock', 'Thermal tolerance', 'Span tolerance', 'Other']; // prettier-ignore
  const limit = fc.tuple(
    fc.constantFrom(...names),
    fc.constantFrom(...GROUPS),
    fc.constantFrom(null, 0.05, 0.5, 3, 12, 30),
    fc.constantFrom(null, 0.1, 1, 8),
    fc.constantFrom(null, null, null, '%'),
    fc.constantFrom(...PURPOSES, 'other'),
  );
  const row = fc.tuple(
    fc.constantFrom(...PURPOSES, 'other'),
    fc.constantFrom(...GROUPS),
    fc.constantFrom(null, null, 5, 25),
    fc.constantFrom(null, null, 1, 20),
    fc.constantFrom(null, null, 0.02, 0.5),
  );
  const rows = fc.array(row, { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(fc.array(limit, { maxLength: 12 }), rows, (limits, dealt) => {
      // A level in per cent is no level: such a row is refused by one route and an error in the other.
      const readable = limits.filter(([name, , , , unit]) => unit === null || /ratio|tolerance/i.test(name));
      const sheets = sheetsWith(readable, (i) => dealt[i]!).map((sheet, i) => ({
        info: { name: sheet.name, active: i === 0, visible: true },
        content: contentOf(sheet),
      }));
      const of = (name: string) => sheets.find(({ info }) => info.name === name)!.content;
      const recognised = recognise(sheets);
      const channels = recognised.channels!;
      const limitRows = recognised.limits && limitRowsOf(recognised.limits, of('Limits'));
      const cells = rowValues({ ...recognised, channels, limitRows }, 60, of);
      const { byRow } = judgePlan(recognised, of);
      expect(apart(byRow, (at, key) => cells(at)[OWN_KEYS.indexOf(key)])).toEqual([]);
    }),
    { numRuns: Number(process.env['LIMIT_CASES'] ?? 60) },
  );
});
