import { extname } from 'node:path';
import { stat } from 'node:fs/promises';
import { nodeAssigner } from '../../adapters/solver/node-assigner';
import { openFile, saveFile } from '../../adapters/xlsx/file-on-disk';
import { worstVerdict } from '../../core/verdict';
import type { Assignment } from '../../plan/assign/assignment';
import { stillNamedWords } from '../../plan/assign/words';
import type { Language } from '../../core/language';
import { PARTS, stockOf } from '../../plan/choosing/candidate';
import { readJsonPlan } from '../../plan/json-plan';
import { describeMisread } from '../../plan/misread';
import { channelSheets } from '../../workbook/channel-lists';
import { assignPlan, type RowAssignment } from '../../workbook/assign/assign-plan';
import { assignmentEdits, hasColumn } from '../../workbook/assign/write-assignment';
import { planChanges, planRefusals, type RowEdit } from '../../workbook/choosing/row-edits';
import { tryChange } from '../../workbook/choosing/what-if';
import { HostProblem, type SheetContent } from '../../workbook/port';
import type { Mapping } from '../../workbook/tables';
import { assignOptions, type AssignTyped } from './assign-options';
import { assignJson, assignReport } from './assign-report';
import { kindOf } from './find-plans';
import { parseJson } from './json-file';
import { refuseForJson } from './lists-option';
import { readMappingFile } from './mapping-file';
import { CommandProblem, STATUS, statusOfVerdict, usageProblem } from './status';
import { Pen, Progress, type Io } from './terminal';
import { FUNCTION_NAMES, openPlan, type OpenOptions, type WorkbookPlan } from './workbook-plan';
import { isCheckedCopy, writePlan } from './write-plan';

export interface AssignCommandOptions extends AssignTyped {
  readonly paths: readonly string[];
  readonly output?: string;
  readonly parts: boolean;
  readonly json: boolean;
  readonly mapping?: string;
  readonly open?: OpenOptions;
}

/** The options by the names that are typed. */
export const assignTyped = (
  paths: readonly string[],
  text: (key: string) => string | undefined,
  isOn: (key: string) => boolean,
  open?: OpenOptions,
): AssignCommandOptions => ({
  paths,
  open,
  output: text('output'),
  spare: text('spare'),
  pinned: text('pinned'),
  inputs: text('inputs'),
  testEnd: text('test-end'),
  allowWarn: isOn('allow-warn'),
  allowIncomplete: isOn('allow-incomplete'),
  roving: isOn('roving'),
  parts: isOn('parts'),
  time: text('time'),
  language: text('language'),
  json: isOn('json'),
  mapping: text('mapping'),
});

/** A channel without a sensor cannot be judged, which counts as INCOMPLETE. */
const statusOf = ({ status, assigned, unserved }: Assignment): number => {
  if (status !== 'solved') return STATUS.incomplete;
  const open = unserved.length > 0 ? (['INCOMPLETE'] as const) : [];
  return statusOfVerdict(worstVerdict([...assigned.map(({ verdict }) => verdict), ...open]));
};

/** The sheet as it reads once the cells are filled in. */
const withCells = (content: SheetContent, changes: ReturnType<typeof planChanges>): SheetContent => {
  const values = content.values.map((line) => [...line]);
  for (const { row, column, cells } of changes)
    cells.forEach((line, r) => {
      const to = values[row + r - content.row];
      if (to) line.forEach((cell, c) => (to[column + c - content.column] = cell));
    });
  return { ...content, values };
};

/** The plan with the chosen names in its cells, written and checked. */
const writeCopy = async (
  plan: WorkbookPlan,
  assignment: RowAssignment,
  output: string,
  parts: boolean,
  mapping: Mapping | undefined,
  language: Language,
): Promise<readonly string[]> => {
  const { file, tables, contentOf, path } = plan;
  const source = { tables, contentOf };
  const edits: readonly RowEdit[] = assignmentEdits(source, assignment, { parts: parts ? PARTS : [] });
  const refused = planRefusals(source, edits);
  if (refused.length > 0) throw new CommandProblem(`${path}: ${refused.slice(0, 3).join(' ')} Nothing was written.`);
  const after = tryChange(source, edits)!;
  const changes = planChanges(source, edits);
  file.edit(changes);
  const told: string[] = [`${changes.reduce((sum, { cells }) => sum + cells.length, 0)} cells were filled in.`];
  const filled = new Map(
    channelSheets(tables).map((sheet) => [
      sheet,
      withCells(
        contentOf(sheet),
        changes.filter((change) => change.sheet === sheet),
      ),
    ]),
  );
  const contentAfter = (sheet: string) => filled.get(sheet) ?? contentOf(sheet);
  const checked = writePlan(
    { ...plan, contentOf: contentAfter, judged: after.after },
    { mapping, asValues: false, language },
  );
  await saveFile(checked.file, output, { input: path });
  return [...told, ...stillNamedWords(assignment, language), ...checked.told, `Wrote ${output}.`];
};

const refuseOutput = async (path: string, output: string): Promise<void> => {
  if (kindOf(path) === 'json') throw usageProblem(`${path}: a JSON plan has no cells to write into; use --json.`);
  const ending = extname(path);
  if (extname(output).toLowerCase() !== ending.toLowerCase())
    throw usageProblem(`-o ${output}: expected a name that ends in ${ending} like the plan.`);
  if (!(await stat(output).catch(() => undefined))) return;
  const file = await openFile(output, FUNCTION_NAMES).catch(() => undefined);
  if (!file || !isCheckedCopy(file))
    throw usageProblem(`${output} exists and is no checked copy of this command. Name another file.`);
};

export const assignCommand = async (options: AssignCommandOptions, io: Io): Promise<number> => {
  const { paths, output, json } = options;
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw usageProblem('assign: name one plan: a workbook or a JSON plan.');
  const asked = assignOptions(options);
  if (output !== undefined) await refuseOutput(path, output);
  const mapping = options.mapping === undefined ? undefined : await readMappingFile(options.mapping);
  const progress = new Progress(io);
  const watched = {
    ...asked,
    onProgress: ({ step, done, of, gap }: { step: string; done?: number; of?: number; gap?: number }) =>
      progress.say(`Assigning: ${step}${of === undefined ? '' : ` ${done} of ${of}`}${gap === undefined ? '' : `, gap ${(100 * gap).toFixed(2)} %`} …`), // prettier-ignore
  };
  const done: string[] = [];
  try {
    let assignment: Assignment;
    let hasSerials = true;
    if (kindOf(path) === 'json') {
      refuseForJson(path, options.open ?? {});
      const { plan, misreads } = readJsonPlan(await parseJson(path, 'a plan as JSON'));
      done.push(...misreads.map((misread) => describeMisread(misread)));
      assignment = await nodeAssigner(plan.channels, stockOf(plan), plan.limits, watched);
    } else {
      const plan = await openPlan(path, mapping, options.open);
      const found = await assignPlan(plan.judged, watched, nodeAssigner);
      assignment = found;
      hasSerials = hasColumn(plan, 'serial');
      done.push(...(plan.stocked ?? []), ...plan.judged.unread.map(({ text }) => text));
      if (output !== undefined && found.status === 'solved') done.push(...(await writeCopy(plan, found, output, options.parts, mapping, asked.language))); // prettier-ignore
    }
    progress.done();
    if (json) {
      io.out(`${JSON.stringify(assignJson(path, assignment, asked.language), null, 1)}\n`);
      for (const line of done) io.error(`${line}\n`);
    } else io.out(assignReport(path, assignment, done, asked.language, io.columns, new Pen(io.colour), hasSerials)); // prettier-ignore
    return statusOf(assignment);
  } catch (error) {
    progress.done();
    if (error instanceof HostProblem) throw new CommandProblem(`${path}: ${error.message}`);
    throw error;
  }
};
