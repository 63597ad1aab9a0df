import { judgePlan } from '../../src/workbook/plan-of';
import { rowWriter } from '../../src/workbook/formulas';
import { OWN_KEYS } from '../../src/workbook/own-columns';
import type { SheetContent } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import type { PlanTables } from '../../src/workbook/row-sources';
import { rowValues } from '../../src/workbook/row-values';
import { cellAddress } from '../../src/workbook/address';
import { caseSheets } from './case-sheets';

const FREE = 60;

/** The complete cases with other cells under one heading, from the first row on; dates are told as a host tells them. */
const planWith = (heading: string, cells: readonly (string | number)[], dates: readonly number[] = []) => {
  let column = -1;
  const contents = caseSheets().map(({ name, cells: typed }): SheetContent => {
    const values = typed.map((row) => [...row]) as (string | number | null)[][];
    if (name === 'Channels') {
      column = values[0]!.findIndex((cell) => String(cell).startsWith(heading));
      cells.forEach((cell, i) => (values[i + 1]![column] = cell));
    }
    const isDate = new Map(dates.map((row) => [cellAddress(row, column), '2026-04-03'] as const));
    return { sheet: name, row: 0, column: 0, values, formulas: values.map((row) => row.map(() => '')), tables: [], merged: [], hiddenRows: [], ...(name === 'Channels' && { dates: isDate }) }; // prettier-ignore
  });
  const contentOf = (sheet: string) => contents.find((content) => content.sheet === sheet)!;
  const tables = recognise(contents.map((content, i) => ({ info: { name: content.sheet, active: i === 0, visible: true }, content }))); // prettier-ignore
  const plan = { ...tables, channels: tables.channels! } as PlanTables;
  return {
    unread: judgePlan(tables, contentOf).unread.filter(({ at }) => at?.column === column),
    values: (row: number) => {
      const all = rowValues(plan, FREE, contentOf)(row);
      return all[OWN_KEYS.indexOf('headroom')];
    },
    formula: rowWriter(plan, FREE)(1)[OWN_KEYS.indexOf('headroom')]!,
  };
};

// 46115 is 3 April 2026 in the spreadsheet's own count of days.
describe('a number that became a date', () => {
  const plan = planWith('Highest level', [46_115, 12], [1]);
  it('is asked about with what may have been typed', () => {
    expect(plan.unread.map(({ text }) => text)).toEqual([
      expect.stringContaining('read "2026-04-03", which can mean 3-4 or 4-3'),
    ]);
  });
  it('gives the cells beside it no value either, and no other row loses one', () => {
    expect(plan.values(1)).toEqual({ error: '#N/A' });
    expect(typeof plan.values(2)).toBe('number');
  });
  it('is let go once it is written over, since the formula looks at the cell', () => {
    expect(plan.formula).toContain('=46115,NA(),');
  });
});

describe('a text such as "1.500"', () => {
  it('is a question in a list that writes decimals with a comma', () => {
    const plan = planWith('Highest level', ['1.500', '12,5']);
    expect(plan.unread.map(({ text }) => text)).toEqual([expect.stringContaining('which can mean 1.500 or 1500')]);
    expect(plan.values(1)).toEqual({ error: '#N/A' });
    expect(typeof plan.values(2)).toBe('number');
  });
  it('is one and a half in any other', () => {
    const plan = planWith('Highest level', ['1.500', '12.5']);
    expect(plan.unread).toEqual([]);
    expect(typeof plan.values(1)).toBe('number');
  });
});
