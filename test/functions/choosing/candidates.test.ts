import { callFunction } from '../../../src/engine/call';
import { candidates } from '../../../src/functions/choosing/candidates';
import { check } from '../../../src/functions/verdict/check';
import { rankCandidates } from '../../../src/plan/choosing/rank';
import { caseSheets, type Typed } from '../../workbook/case-sheets';
import { CASES, LIMITS, STOCK } from '../../plan/choosing/stock';

type Rows = readonly (readonly Typed[])[];
const [channels, sensors, mounts, cables, inputs] = caseSheets().map((sheet) => sheet.cells) as [Rows, Rows, Rows, Rows, Rows]; // prettier-ignore
const lists = [sensors, mounts, cables, inputs];

const cells = (fn: typeof candidates | typeof check, args: readonly unknown[]) => {
  const called = callFunction(fn, args as Parameters<typeof callFunction>[1]);
  if (!called.ok) throw new Error(`unexpected issue: ${called.issue.code}`);
  return called.value as readonly (readonly (number | string)[])[];
};
const rowsOf = (id: string) => [channels[0]!, channels.find(([name]) => name === id)!];
const column = (rows: readonly (readonly unknown[])[], heading: string) => {
  const at = rows[0]!.indexOf(heading);
  return rows.slice(1).map((row) => row[at]);
};

// The worked examples already run in test/functions/examples.test.ts; here is only what they cannot say.
describe('CANDIDATES', () => {
  it('gives every type a row, and agrees with CHECK on the type that the row names', () => {
    for (const id of ['C1', 'C5', 'C8', 'C10', 'C12']) {
      const rows = cells(candidates, [rowsOf(id), ...lists]);
      expect(rows).toHaveLength(STOCK.sensors.length + 1);
      const own = CASES.channels.find((channel) => channel.id === id)!;
      const at = column(rows, 'Sensor type').indexOf(own.sensor!.name);
      const checked = cells(check, [rowsOf(id), ...lists]);
      for (const heading of ['Verdict', 'Level verdict', 'Mass verdict', 'Thermal verdict', 'Frequency verdict'])
        expect([id, heading, column(rows, heading)[at]]).toEqual([id, heading, column(checked, heading)[0]]);
      expect(column(rows, 'Input')[at]).toBe(own.input!.name);
    }
  });

  it('takes several rows together and says how many of them pass', () => {
    const two = [...rowsOf('C8'), rowsOf('C12')[1]!];
    const rows = cells(candidates, [two, ...lists, null, null, 'free']);
    const each = ['C8', 'C12'].map((id) => cells(candidates, [rowsOf(id), ...lists, null, null, 'free']));
    column(rows, 'Sensor type').forEach((name, i) => {
      const passing = each.filter(
        (alone) => column(alone, 'Verdict')[column(alone, 'Sensor type').indexOf(name)] === 'PASS',
      );
      expect(column(rows, 'Channels that pass')[i]).toBe(passing.length);
    });
  });

  it('comes in the order of the ranking, and no longer than is asked', () => {
    const row = CASES.channels.find(({ id }) => id === 'C10')!;
    const names = rankCandidates([row], STOCK, LIMITS, { order: 'mass' }).candidates.map(({ sensor }) => sensor.name);
    const rows = cells(candidates, [rowsOf('C10'), ...lists, null, 'mass', null, 3]);
    expect(column(rows, 'Sensor type')).toEqual(names.slice(0, 3));
  });

  it.each([
    ['without a heading row', [[[1, 2]], ...lists], 'channels'],
    ['with headings alone', [[channels[0]!], ...lists], 'channels'],
    ['without any type', [rowsOf('C1'), [sensors[0]!], mounts, cables, inputs], 'sensors'],
  ])('refuses a list %s', (_, args, arg) => {
    expect(callFunction(candidates, args as Parameters<typeof callFunction>[1])).toMatchObject({
      ok: false,
      issue: { code: 'wrong-size', arg },
    });
  });
});
