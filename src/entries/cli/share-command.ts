import { readFile, stat } from 'node:fs/promises';
import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { customerCopy } from '../../adapters/xlsx/share/customer-copy';
import { worstVerdict } from '../../core/verdict';
import { HostProblem } from '../../workbook/port';
import {
  SHARE_PAPERS,
  type DocumentProperties,
  type ShareChoices,
  type SharePaper,
} from '../../workbook/share/choices';
import { isNotesSheet, NO_NOTES } from '../../workbook/report/plan-notes';
import { placesNamed } from '../../workbook/share/named-places';
import { shareProposals, type ShareProposals } from '../../workbook/share/proposals';
import { LIST_OPTIONS, openTyped } from './lists-option';
import { readMappingFile } from './mapping-file';
import { CommandProblem, statusOfVerdict, usageProblem } from './status';
import type { Io } from './terminal';
import { languageTyped } from './typed-options';
import { checksOf, FUNCTION_NAMES, notesOf, openPlan, type WorkbookPlan } from './workbook-plan';
import { writeWhole } from './write-file';

const FLAG = { type: 'boolean', default: false } as const;
const TEXT = { type: 'string' } as const;
export const SHARE_OPTIONS = {
  output: { ...TEXT, short: 'o' },
  replace: FLAG,
  'leave-out': { type: 'string', multiple: true },
  values: FLAG,
  'drop-notes': FLAG,
  'keep-links': FLAG,
  'keep-people': FLAG,
  protect: FLAG,
  language: TEXT,
  paper: TEXT,
  title: TEXT,
  subject: TEXT,
  revision: TEXT,
  date: TEXT,
  prepared: TEXT,
  checked: TEXT,
  mapping: TEXT,
  ...LIST_OPTIONS,
} as const;
export type ShareValues = Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;

const PROPOSED = 'proposed';

export const shareCommand = async (paths: readonly string[], values: ShareValues, io: Io): Promise<number> => {
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw usageProblem('share: name one plan, a workbook (.xlsx or .xlsm).');
  if (!/\.xls[xm]$/i.test(path)) throw usageProblem(`share: ${path} is no workbook (.xlsx or .xlsm).`);
  const text = (key: string): string | undefined => values[key] as string | undefined;
  const output = text('output');
  const language = languageTyped(text('language'));
  const paper = paperOf(text('paper'));
  if (output !== undefined) await refuseTarget(path, output, values['replace'] === true);
  const mapping = text('mapping') === undefined ? undefined : await readMappingFile(text('mapping')!);
  const plan = await asProblem(path, () => openPlan(path, mapping, openTyped(values)));
  for (const line of plan.stocked ?? []) io.error(`${line}\n`);
  const proposals = shareProposals(plan.tables, plan.file.sheets);
  const typed = (values['leave-out'] ?? []) as readonly string[];
  const chosen = chosenPlaces(plan, proposals, typed);
  const open = proposals.columns.filter(({ sheet, column }) => !chosen.leftOutColumns.some((c) => c.sheet === sheet && c.column === column)); // prettier-ignore
  const openSheets = proposals.sheets.filter(({ sheet }) => !chosen.leftOutSheets.includes(sheet));
  if (output !== undefined) {
    const choices: ShareChoices = {
      language,
      paper,
      ...chosen,
      freezeAll: values['values'] === true,
      dropLinks: values['keep-links'] !== true,
      dropNotes: values['drop-notes'] === true,
      keepPeople: values['keep-people'] === true,
      protect: values['protect'] === true,
      properties: propertiesOf(text),
    };
    const { told } = await asProblem(path, () => write(plan, path, output, choices));
    for (const line of told) io.error(`${line}\n`);
    io.out(`Wrote ${output}.\n`);
  }
  if (open.length + openSheets.length > 0)
    io.out(
      `${output === undefined ? 'Usually not for a customer' : 'Still in the copy, though usually not for a customer'}; leave out by --leave-out ${PROPOSED}, or one by one:\n` +
        [
          ...open.map(({ sheet, heading, why }) => `  --leave-out "${sheet}!${heading}"  (${why})\n`),
          ...openSheets.map(({ sheet, why }) => `  --leave-out "${sheet}"  (${why})\n`),
        ].join(''),
    );
  if (output === undefined) io.out('Nothing was written; -o OUT.xlsx writes the copy.\n');
  return statusOfVerdict(worstVerdict(checksOf(plan).map(([, { verdict }]) => verdict)));
};

const write = async (plan: WorkbookPlan, path: string, output: string, choices: ShareChoices) => {
  const { tables, contentOf, judged } = plan;
  // Sensors laid out for it stand in the workbook in memory alone.
  const bytes = plan.stocked ? plan.file.save() : new Uint8Array(await readFile(path));
  const isNotesLeftOut = notesSheetGone(plan, choices);
  const copy = customerCopy({
    bytes,
    open: { codec: nodeCodec, functionNames: FUNCTION_NAMES },
    tables,
    contentOf,
    judged: { ...judged, unread: plan.unreadIn(choices.language) },
    notes: isNotesLeftOut ? NO_NOTES : notesOf(plan),
    choices,
    toldIn: 'en',
  });
  await writeWhole(output, copy.bytes);
  return copy;
};

const notesSheetGone = ({ file }: WorkbookPlan, { leftOutSheets }: ShareChoices): boolean =>
  file.sheets.some(({ name }) => isNotesSheet(name) && leftOutSheets.includes(name));

const chosenPlaces = (
  { path, tables, file, contentOf }: WorkbookPlan,
  proposals: ShareProposals,
  typed: readonly string[],
): Pick<ShareChoices, 'leftOutColumns' | 'leftOutSheets'> => {
  const sheets = file.sheets.map(({ name }) => name);
  const found = typed.map((name) => {
    if (name.toLowerCase() === PROPOSED)
      return { columns: proposals.columns, sheets: proposals.sheets.map(({ sheet }) => sheet) };
    const places = placesNamed(name, tables, sheets, contentOf);
    if (!places)
      throw usageProblem(`${path}: nothing is named "${name}"; expected a sheet, SHEET!HEADING, SHEET!LETTER, the heading of a list, or "${PROPOSED}".`); // prettier-ignore
    return places;
  });
  return {
    leftOutColumns: found.flatMap(({ columns }) => columns.map(({ sheet, column }) => ({ sheet, column }))),
    leftOutSheets: [...new Set(found.flatMap((places) => places.sheets))],
  };
};

const paperOf = (typed: string | undefined): SharePaper => {
  const paper = SHARE_PAPERS.find((known) => known.toLowerCase() === (typed ?? 'A4').toLowerCase());
  if (!paper) throw usageProblem(`paper "${typed}" is not known; expected ${SHARE_PAPERS.join(', ')}.`);
  return paper;
};

const propertiesOf = (text: (key: string) => string | undefined): DocumentProperties => {
  const date = text('date');
  if (date !== undefined && (!/^\d{4}-\d{2}-\d{2}$/.test(date) || Number.isNaN(Date.parse(date))))
    throw usageProblem(`--date ${date}: expected a day such as 2026-09-18.`);
  const keys = ['title', 'subject', 'revision', 'date', 'prepared', 'checked'] as const;
  return Object.fromEntries(keys.flatMap((key) => (text(key) === undefined ? [] : [[key, text(key)]])));
};

const refuseTarget = async (path: string, output: string, replace: boolean): Promise<void> => {
  if (!/\.xlsx$/i.test(output))
    throw usageProblem(`-o ${output}: expected a name that ends in .xlsx; a copy for a customer has no macros.`);
  const there = await stat(output).catch(() => undefined);
  if (!there) return;
  if (there.isDirectory()) throw usageProblem(`${output} is a folder.`);
  const own = await stat(path).catch(() => undefined);
  if (own && there.ino === own.ino && there.dev === own.dev)
    throw usageProblem(`${output} is the plan itself. Name another file.`);
  if (!replace) throw usageProblem(`${output} exists. Name another file, or add --replace.`);
};

const asProblem = async <T>(path: string, work: () => Promise<T>): Promise<T> => {
  try {
    return await work();
  } catch (error) {
    if (error instanceof HostProblem) throw new CommandProblem(`${path}: ${error.message}`);
    throw error;
  }
};
