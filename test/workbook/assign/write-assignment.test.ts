import { join } from 'node:path';
import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { openFile } from '../../../src/adapters/xlsx/file-on-disk';
import { FUNCTION_NAMES } from '../../../src/entries/cli/workbook-plan';
import { assignPlan } from '../../../src/workbook/assign/assign-plan';
import { assignmentEdits, writeAssignment } from '../../../src/workbook/assign/write-assignment';
import { judgePlan } from '../../../src/workbook/plan-of';
import type { ApplyOptions, Change, Spreadsheet } from '../../../src/workbook/port';
import { recognise } from '../../../src/workbook/recognise';

const DEMO = join(__dirname, '../../../assets/demo-plan.xlsx');
jest.setTimeout(60_000);

describe('writing an assignment', () => {
  it('is one action on the sensor column, and leaves pinned rows and rows without a sensor as they are', async () => {
    const file = await openFile(DEMO, FUNCTION_NAMES);
    const contentOf = (sheet: string) => file.readSheet(sheet);
    const tables = recognise(file.sheets.map((info) => ({ info, content: contentOf(info.name) })));
    const judged = judgePlan(tables, contentOf);
    const pinned = [...judged.byRow.values()].slice(0, 50).map(({ channel }) => channel.id);
    const assignment = await assignPlan(judged, { pinned, shortage: false }, nodeSolver);
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
    expect(assignmentEdits(assignment, ['mount']).every(({ key }) => key === 'sensor' || key === 'mount')).toBe(true);
  });
});
