import { HostProblem, type ApplyOptions, type Change } from '../../workbook/port';
import { Action } from './action';
import { Breath } from './breath';
import { clearNotes, extendTable, makeSheet, setNote, setWidth } from './change-beside-cells';
import { CellWriter, clearCells, setLook, turnsOf } from './change-cells';
import { replaceMarks } from './change-marks';
import { setDrawings } from './own-drawings';
import { fitRows } from './row-heights';
import { pauseDrawing } from './drawing';
import type { Services } from './host';

/** The steps of one change; the page gets a turn between them. */
function* stepsOf(action: Action, change: Change): Generator<void> {
  if (change.kind === 'sheet') return makeSheet(action, change);
  const sheet = action.services.sheet(change.sheet);
  switch (change.kind) {
    case 'cells': {
      const columns = Math.max(0, ...change.cells.map((row) => row.length));
      const writer = new CellWriter(action, sheet, change);
      const range = { row: change.row, column: change.column, rows: change.cells.length, columns };
      for (const part of turnsOf(range)) {
        writer.write(part);
        yield;
      }
      return;
    }
    case 'clear':
      clearNotes(action, sheet, change.range);
      for (const part of turnsOf(change.range)) {
        clearCells(action, sheet, part);
        yield;
      }
      return;
    case 'look':
      for (const part of turnsOf(change.range)) {
        setLook(action, sheet, part, change.look);
        yield;
      }
      return;
    case 'width':
      return setWidth(action, sheet, change);
    case 'fit':
      return fitRows(action, sheet, change);
    case 'marks':
      return replaceMarks(action, sheet, change.rules);
    case 'note':
      return setNote(action, sheet, change.row, change.column, change.text);
    case 'drawings':
      return setDrawings(action, sheet, change.drawings);
    case 'extend-table':
      return extendTable(action, sheet, change);
  }
}

/** A table takes the names of its new columns from their headings, so those are written first. */
const inOrder = (changes: readonly Change[]): readonly Change[] => [
  ...changes.filter(({ kind }) => kind !== 'extend-table'),
  ...changes.filter(({ kind }) => kind === 'extend-table'),
];

/** Runs all changes as one step on the undo list; on a refusal or a cancellation nothing of them stays. */
export const applyChanges = async (
  services: Services,
  changes: readonly Change[],
  { onProgress, signal }: ApplyOptions,
  calculated: () => Promise<void>,
): Promise<void> => {
  const action = new Action(services, services.workbook().getUnitId());
  const resumeDrawing = pauseDrawing(services);
  const breath = new Breath();
  try {
    for (const [done, change] of inOrder(changes).entries()) {
      // A table that grows stops a calculation in progress, and the engine forgets what that one had to do.
      if (change.kind === 'extend-table') await calculated();
      const steps = stepsOf(action, change);
      while (!steps.next().done) {
        if (signal?.aborted) throw new HostProblem('Cancelled. The workbook is as it was.', 'cancelled');
        if (breath.due()) await breath.take();
      }
      onProgress?.(done + 1, changes.length);
      if (breath.due()) await breath.take();
      if (signal?.aborted) throw new HostProblem('Cancelled. The workbook is as it was.', 'cancelled');
    }
  } catch (problem) {
    action.abandon();
    if (problem instanceof HostProblem) throw problem;
    const refusal = new HostProblem('The spreadsheet refused the change. The workbook is as it was.', 'host');
    refusal.cause = problem;
    throw refusal;
  } finally {
    resumeDrawing();
  }
  action.finish();
};
