import { limitRowsOf } from '../../src/workbook/limit-rows';
import { OWN_KEYS, type OwnKey } from '../../src/workbook/own-columns';
import { judgePlan } from '../../src/workbook/plan-of';
import type { SheetContent } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import { rowValues } from '../../src/workbook/row-values';
import { findingsOf } from '../../src/plan/findings';
import { sentenceOf } from '../../src/plan/sentence';
import { caseSheets } from './case-sheets';

/** The twelve cases on supplies of this many volts. */
const judgedWith = (supply: number) => {
  const sheets = caseSheets().map(({ name, cells }, i) => {
    const column = cells[0]!.findIndex((heading) => /^supply(,| \[|$)/i.test(String(heading)));
    const values = cells.map((row, at) =>
      row.map((typed, c) => (at > 0 && c === column && typed !== null ? supply : typed)),
    );
    const formulas = values.map((row) => row.map(() => ''));
    const content: SheetContent = { sheet: name, row: 0, column: 0, values, formulas, tables: [], merged: [], hiddenRows: [] }; // prettier-ignore
    return { info: { name, active: i === 0, visible: true }, content };
  });
  const of = (name: string) => sheets.find(({ info }) => info.name === name)!.content;
  const recognised = recognise(sheets);
  const limitRows = recognised.limits && limitRowsOf(recognised.limits, of(recognised.limits.sheet));
  const cells = rowValues({ ...recognised, channels: recognised.channels!, limitRows }, 60, of);
  const { byRow, limits } = judgePlan(recognised, of);
  return [...byRow].map(([row, check]) => ({
    check,
    reasons: findingsOf(check, limits).map((finding) => sentenceOf(finding)),
    cell: (key: OwnKey) => cells(row)[OWN_KEYS.indexOf(key)],
  }));
};

it('a supply below the bias is a failure of the level, in cells and plan alike and for the same reason', () => {
  // A bias of several volts above a supply of 1 V leaves nothing between them: by the definition of the swing.
  const starved = judgedWith(1).filter(({ check }) => check.channel.sensor?.output === 'IEPE');
  const judged = starved.filter(({ check }) => check.level.ceiling !== undefined);
  expect(judged.length).toBeGreaterThan(2);
  for (const { check, cell, reasons } of judged) {
    expect([check.level.ceiling!.value, cell('ceiling')]).toEqual([0, 0]);
    expect([check.level.verdict, cell('levelVerdict')]).toEqual(['FAIL', 'FAIL']);
    const [reason] = reasons.filter((text) => text.includes('no voltage beside the bias'));
    expect(String(cell('reason'))).toContain(reason!);
  }
});

it('a supply that leaves a swing says nothing of the kind', () => {
  for (const { cell, reasons } of judgedWith(28))
    expect([...reasons, String(cell('reason'))].join(' ')).not.toContain('no voltage beside the bias');
});
