import { readFile, stat } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { openFile, saveFile } from '../../adapters/xlsx/file-on-disk';
import { isTrusted } from '../../adapters/xlsx/trusted-maker';
import type { Language } from '../../core/language';
import type { Paper } from '../../workbook/report/html';
import { cellAddress } from '../../workbook/address';
import { HostProblem } from '../../workbook/port';
import type { Mapping } from '../../workbook/tables';
import { writeChannelSheets } from './channel-sheets';
import { plansAt, type PlanFile } from './find-plans';
import { checkJsonFile } from './json-file';
import { refuseForJson } from './lists-option';
import { jsonOf, reportOf, worstOf, type PlanReport } from './judged';
import { readMappingFile } from './mapping-file';
import { withPlanNotes } from './plan-notes';
import { reportFile } from './report-file';
import { CommandProblem, STATUS, statusOfVerdict, usageProblem } from './status';
import { Pen, Progress, type Io } from './terminal';
import { textReport } from './text-report';
import { checksOf, FUNCTION_NAMES, listNames, notesOf, openPlan, placeOfRow, type OpenOptions } from './workbook-plan';
import { isCheckedCopy, writePlan } from './write-plan';
import { writeWhole } from './write-file';

export interface CheckOptions {
  readonly paths: readonly string[];
  readonly output?: string;
  readonly inPlace: boolean;
  /** Values in place of formulas, for readers without the add-in. */
  readonly asValues: boolean;
  readonly json: boolean;
  readonly report?: string;
  readonly mapping?: string;
  readonly open?: OpenOptions;
  /** Of the report, the notes and the summary sheet. */
  readonly language: Language;
  readonly paper: Paper;
  /** Whether the sheet of notes is filled with what was assumed and how cells were read. */
  readonly planNotes: boolean;
  /** Channels that get a sheet of their own. */
  readonly sheets: readonly string[];
  /** Channels that the page draws. */
  readonly plots: 'open' | 'all';
}

interface Job extends PlanFile {
  /** Where the checked copy goes; absent: nothing is written. */
  readonly target?: string;
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false;

/** Refuses before any work is done when what was asked cannot be done. */
const jobsFor = async (plans: readonly PlanFile[], { output, inPlace }: CheckOptions): Promise<Job[]> => {
  if (plans.length === 0 || (output === undefined && !inPlace)) return [...plans];
  if (output !== undefined && inPlace) throw usageProblem('-o and --in-place cannot be asked together.');
  const json = plans.find(({ kind }) => kind === 'json');
  if (json) throw usageProblem(`${json.path}: a JSON plan has no cells to write into; use --json or --report.`);
  if (output === undefined) return plans.map((plan) => ({ ...plan, target: plan.path }));
  if (!(await isFolder(output))) {
    if (plans.length > 1) throw usageProblem(`-o ${output}: for several plans an existing folder is expected.`);
    const [plan] = plans;
    const ending = extname(plan!.path);
    if (extname(output).toLowerCase() !== ending.toLowerCase())
      throw usageProblem(`-o ${output}: expected a name that ends in ${ending} like the plan, or an existing folder.`);
    return [{ ...plan!, target: output }];
  }
  const jobs = plans.map((plan) => ({ ...plan, target: join(output, basename(plan.path)) }));
  const names = jobs.map(({ target }) => target.toLowerCase());
  const twice = jobs.find(({ target }, i) => names.indexOf(target.toLowerCase()) !== i);
  if (twice) throw usageProblem(`-o ${output}: two plans are named ${basename(twice.target)}.`);
  return jobs;
};

const UNTRUSTED =
  'LibreOffice shows #NAME? for our words in this workbook, for neither Excel nor LibreOffice wrote it. For readers there add --values, or save the plan once in one of the two and check it again.';

/** An existing file is replaced only when it is a checked copy that this command made. */
const refuseForeign = async (target: string, input: string): Promise<void> => {
  if (!(await stat(target).catch(() => undefined)) || target === input) return;
  const file = await openFile(target, FUNCTION_NAMES).catch(() => undefined);
  if (!file || !isCheckedCopy(file))
    throw usageProblem(`${target} exists and is no checked copy of this command. Name another file.`);
};

const checkWorkbook = async (
  { path, target }: Job,
  { inPlace, asValues, language, sheets, planNotes, open }: CheckOptions,
  mapping?: Mapping,
): Promise<PlanReport> => {
  const plan = await openPlan(path, mapping, open);
  const done: string[] = [...(plan.stocked ?? [])];
  if (target !== undefined) {
    if (!inPlace) await refuseForeign(target, path);
    else if (plan.file.isShared)
      throw usageProblem(
        `${path}: several people share this workbook in the old way, with a log of changes that --in-place would bypass. Stop sharing it first, or write a copy with -o.`,
      );
    const { file: checked, told } = writePlan(plan, { mapping, asValues, language });
    const noted = planNotes ? await withPlanNotes(checked, plan, language) : undefined;
    const file = noted?.file ?? checked;
    writeChannelSheets(file, plan, sheets, language);
    done.push(...told, ...(noted ? [noted.told] : []));
    if (!asValues && !isTrusted(await readFile(path))) done.push(UNTRUSTED);
    const backup = await saveFile(file, target, { input: path, inPlace });
    done.push(`Wrote ${target}.`, ...(backup ? [`The plan as it was is kept as ${backup}.`] : []));
  }
  const checks = checksOf(plan);
  const { judged } = plan;
  return reportOf(
    path,
    listNames(plan),
    checks.map(([, check]) => check),
    judged.limits,
    {
      at: (i) => placeOfRow(plan, checks[i]![0]),
      unread: [
        ...judged.unread.map(({ text, at }) =>
          at ? `${path} ${at.sheet}!${cellAddress(at.row, at.column)}: ${text}` : `${path}: ${text}`,
        ),
        ...plan.advice.map((text) => `${path}: ${text}`),
      ],
      notices: [...plan.unreadIn(language), ...plan.advice.map((text) => ({ text }))],
      done,
      report: { language, notes: notesOf(plan) },
    },
  );
};

/** A sentence of the file editor becomes one that names the file. */
const asProblem = (error: unknown, path: string): CommandProblem | undefined => {
  if (error instanceof CommandProblem) return error;
  if (!(error instanceof HostProblem)) return undefined;
  return new CommandProblem(error.message.includes(path) ? error.message : `${path}: ${error.message}`);
};

/** What was not judged at all weighs most, then FAIL, then INCOMPLETE. */
const WEIGHT: readonly number[] = [STATUS.good, STATUS.incomplete, STATUS.fail, STATUS.unreadable, STATUS.usage];
const worstStatus = (all: readonly number[]): number =>
  all.reduce((worst, next) => (WEIGHT.indexOf(next) > WEIGHT.indexOf(worst) ? next : worst), STATUS.good);

export const checkCommand = async (options: CheckOptions, io: Io): Promise<number> => {
  if (options.sheets.length > 0 && options.output === undefined && !options.inPlace)
    throw usageProblem(
      'check: --sheet adds sheets to the workbook that is written; name one with -o, or use --in-place.',
    );
  if (options.planNotes && options.output === undefined && !options.inPlace)
    throw usageProblem(
      'check: --plan-notes fills a sheet of the workbook that is written; name one with -o, or use --in-place.',
    );
  if (options.paths.length === 0)
    throw usageProblem('check: name at least one plan: a workbook, a JSON plan or a folder.');
  const problems: CommandProblem[] = [];
  const attempt = async <T>(path: string, work: () => Promise<T>): Promise<T | undefined> => {
    try {
      return await work();
    } catch (error) {
      const problem = asProblem(error, path);
      if (!problem) throw error;
      problems.push(problem);
      return undefined;
    }
  };
  const mapping = options.mapping === undefined ? undefined : await readMappingFile(options.mapping);
  const plans: PlanFile[] = [];
  for (const path of options.paths) plans.push(...((await attempt(path, () => plansAt(path))) ?? []));
  const json = plans.find(({ kind }) => kind === 'json');
  if (json) refuseForJson(json.path, options.open ?? {});
  const jobs = await jobsFor(plans, options);
  const progress = new Progress(io);
  const pen = new Pen(io.colour);
  const reports: PlanReport[] = [];
  for (const [i, job] of jobs.entries()) {
    progress.say(`Checking ${job.path}${jobs.length > 1 ? ` (${i + 1} of ${jobs.length})` : ''} …`);
    const report = await attempt(job.path, () =>
      job.kind === 'json' ? checkJsonFile(job.path, options.language) : checkWorkbook(job, options, mapping),
    );
    progress.done();
    if (!report) continue;
    reports.push(report);
    if (!options.json) io.out(`${reports.length > 1 ? '\n' : ''}${textReport(report, io.columns, pen)}`);
    else for (const line of [...report.unread, ...report.done]) io.error(`${line}\n`);
  }
  if (options.json) io.out(`${JSON.stringify({ plans: reports.map(jsonOf) }, null, 1)}\n`);
  if (options.report !== undefined && reports.length > 0) {
    await writeWhole(options.report, reportFile(options.report, reports, options));
  }
  for (const problem of problems) io.error(`channelwright: ${problem.message}\n`);
  return worstStatus([
    ...reports.map((report) => statusOfVerdict(worstOf(report))),
    ...problems.map(({ status }) => status),
  ]);
};
