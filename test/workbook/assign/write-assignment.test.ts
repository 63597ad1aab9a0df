import { join } from 'node:path';
import { nodeAssigner } from '../../../src/adapters/solver/node-assigner';
import { openFile } from '../../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../../src/entries/cli/workbook-plan';
import { assignPlan } from '../../../src/workbook/assign/assign-plan';
import { assignRows } from '../../../src/workbook/assign/assign-rows';
import { assignmentEdits, writeAssignment } from '../../../src/workbook/assign/write-assignment';
import { judgePlan } from '../../../src/workbook/plan-of';
import type { ApplyOptions, Change, Spreadsheet } from '../../../src/workbook/port';
import { recognise } from '../../../src/workbook/recognise';

const DEMO = join(__dirname, '../../../assets/demo-plan.xlsx');
jest.setTimeout(60_000);

const openDemo = async () => {
  const file = await openFile(DEMO, FUNCTION_NAMES);
  const contentOf = (sheet: string) => file.readSheet(sheet);
  const tables = recognise(file.sheets.map((info) => ({ info, content: contentOf(info.name) })));
  return { tables, contentOf, judged: judgePlan(tables, contentOf) };
};

describe('assigning to some rows of a list', () => {
  it('leaves what other rows name with them and off the stock', async () => {
    const { judged } = await openDemo();
    const rows = [...judged.byRow].filter(([, { channel }]) => channel.id.startsWith('B')).map(([row]) => row);
    const found = await assignRows(
      judged,
      new Set(rows),
      { allowWarn: true, shortage: false, weights: { mixing: 0 } },
      nodeAssigner,
    );
    expect(found.rows).toEqual(rows);
    expect(found.assigned.length + found.unserved.length).toBe(rows.length);
    // By hand from the lists: pieces that stay elsewhere, one per row for types with one axis.
    for (const { sensor, quantity, used } of found.uses.filter((use) => (use.sensor.axes ?? 1) === 1)) {
      const elsewhere = [...judged.byRow].filter(([row, { channel }]) => channel.sensor === sensor && !rows.includes(row)).length; // prettier-ignore
      const here = found.assigned.filter((one) => one.combination.sensor === sensor).length;
      const left = Math.max(0, quantity! - elsewhere);
      expect(here).toBeLessThanOrEqual(left);
      expect(used).toBe(Math.min(quantity!, elsewhere) + here);
    }
    const elsewhere = [...judged.byRow.values()].filter(({ channel }) => !channel.id.startsWith('B')).map(({ channel }) => channel.id); // prettier-ignore
    expect(elsewhere).toEqual(expect.arrayContaining([...found.overdrawn]));
  });
});

describe('writing an assignment', () => {
  it('writes parts over what a row names only where they were free to change', async () => {
    const { tables, contentOf, judged } = await openDemo();
    const found = await assignPlan(
      judged,
      { allowWarn: true, shortage: false, free: ['input'], weights: { mixing: 0 } },
      nodeAssigner,
    );
    const edits = assignmentEdits({ tables, contentOf }, found, {
      parts: ['mount', 'cable', 'input'],
      free: ['input'],
    });
    const over = edits.filter(({ row, key }) => key !== 'sensor' && judged.byRow.get(row)!.channel.named?.[key as 'input'] !== undefined); // prettier-ignore
    expect(over.length).toBeGreaterThan(0);
    expect(new Set(over.map(({ key }) => key))).toEqual(new Set(['input']));
  });

  it('is one action on the sensor column, and leaves pinned rows and rows without a sensor as they are', async () => {
    const { tables, contentOf, judged } = await openDemo();
    const pinned = [...judged.byRow.values()].slice(0, 50).map(({ channel }) => channel.id);
    const assignment = await assignPlan(judged, { pinned, shortage: false }, nodeAssigner);
    expect(assignment.status).toBe('solved');
    const applied: { changes: readonly Change[]; options: ApplyOptions }[] = [];
    const spreadsheet = {
      apply: (changes: readonly Change[], options: ApplyOptions) =>
        Promise.resolve(void applied.push({ changes, options })),
      calculated: () => Promise.resolve(),
    } as unknown as Spreadsheet;
    const written = await writeAssignment(spreadsheet, { tables, contentOf }, assignment, { language: 'de' });
    expect(applied).toHaveLength(1);
    expect(applied[0]!.options.label).toBe('Aufnehmer aus dem Bestand zuordnen');
    const column = tables.channels!.columns.get('sensor')!.column;
    const rows = new Set<number>();
    for (const change of applied[0]!.changes) {
      if (change.kind !== 'cells') throw new Error(change.kind);
      expect(change).toMatchObject({ sheet: tables.channels!.sheet, column });
      change.cells.forEach((line, r) => {
        expect(line).toHaveLength(1);
        rows.add(change.row + r);
      });
    }
    expect(rows.size).toBe(written);
    for (const { channel } of assignment.unserved) expect(rows.has(assignment.rows[channel]!)).toBe(false);
    for (const id of pinned) expect(rows.has(assignment.rows[assignment.channels.findIndex((c) => c.id === id)]!)).toBe(false); // prettier-ignore
    expect(
      assignmentEdits({ tables, contentOf }, assignment, { parts: ['mount'] }).every(
        ({ key }) => key === 'sensor' || key === 'mount',
      ),
    ).toBe(true);
  });
});
