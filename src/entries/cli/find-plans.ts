import { readdir, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { CommandProblem } from './status';

export type PlanKind = 'workbook' | 'json';
export interface PlanFile {
  readonly path: string;
  readonly kind: PlanKind;
}

const KINDS: Readonly<Record<string, PlanKind>> = { '.xlsx': 'workbook', '.xlsm': 'workbook', '.json': 'json' };
export const kindOf = (path: string): PlanKind | undefined => KINDS[extname(path).toLowerCase()];

/** Copies that a spreadsheet program or we ourselves keep beside a workbook are no plans. */
const isCopy = (name: string): boolean => /^(?:~\$|\.)|\.before-\d+\.xls[xm]$/i.test(name);

/** Workbooks of a folder and of the folders in it, by name. JSON files are only plans when they are named themselves. */
const workbooksIn = async (folder: string): Promise<PlanFile[]> => {
  const entries = await readdir(folder, { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  const found: PlanFile[] = [];
  for (const entry of entries) {
    const path = join(folder, entry.name);
    if (isCopy(entry.name) || entry.name === 'node_modules') continue;
    if (entry.isDirectory()) found.push(...(await workbooksIn(path)));
    else if (entry.isFile() && kindOf(entry.name) === 'workbook') found.push({ path, kind: 'workbook' });
  }
  return found;
};

/** The plans that a typed path means: the file, or the workbooks in the folder. */
export const plansAt = async (path: string): Promise<PlanFile[]> => {
  const found = await stat(path).catch(() => undefined);
  if (!found) throw new CommandProblem(`${path}: there is no such file or folder.`);
  if (found.isDirectory()) {
    const plans = await workbooksIn(path);
    if (plans.length === 0) throw new CommandProblem(`${path}: there is no .xlsx or .xlsm workbook in this folder.`);
    return plans;
  }
  const kind = kindOf(path);
  if (!kind)
    throw new CommandProblem(
      `${path}: read a file named "${extname(path) || 'without ending'}", expected a workbook (.xlsx, .xlsm) or a JSON plan (.json). Other formats can be saved as .xlsx.`,
    );
  return [{ path, kind }];
};
