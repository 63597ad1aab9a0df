import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import type { FileChange } from '../../src/adapters/xlsx/changes';
import { FUNCTION_NAMES } from '../../src/entries/cli/workbook-plan';
import { DEMO } from './run';

/** Rows of the demo plan's channel sheet and its columns, 0-based, by channel and by the start of the heading. */
export const demoPlaces = async () => {
  const { row, column, values } = (await openFile(DEMO, FUNCTION_NAMES)).readSheet('Channels');
  const headings = values[4 - row]!.map((cell) => String(cell ?? ''));
  return {
    rowOf: (channel: string): number => row + values.findIndex((line) => line[0] === channel),
    columnOf: (start: string): number => column + headings.findIndex((heading) => heading.startsWith(start)),
    valueOf: (channel: string, start: string) =>
      values.find((line) => line[0] === channel)![headings.findIndex((heading) => heading.startsWith(start))]!,
  };
};

export const cell = (
  sheet: string,
  row: number,
  column: number,
  value: number | string | null | { formula: string; value?: number | string },
): FileChange => ({ kind: 'cells', sheet, row, column, cells: [[value]] });

/** A copy of the demo plan, or of another one, with these changes in it. */
export const editedCopy = async (path: string, changes: readonly FileChange[], from = DEMO): Promise<string> => {
  const file = await openFile(from, FUNCTION_NAMES);
  file.edit(changes);
  await saveFile(file, path, { input: from });
  return path;
};
