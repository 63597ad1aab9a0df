import { extname } from 'node:path';
import { stat } from 'node:fs/promises';
import { openFile, saveFile } from '../../adapters/xlsx/file-on-disk';
import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { openWorkbook } from '../../adapters/xlsx/workbook-file';
import type { Language } from '../../core/language';
import { findOwnBlock } from '../../workbook/own-columns';
import { HostProblem, type SheetContent } from '../../workbook/port';
import type { WorkbookSource } from '../../workbook/compare/compared-plan';
import { copySource } from '../../workbook/returned/copy-source';
import { returnedCells, type Returned, type ReturnedCell } from '../../workbook/returned/returned-cells';
import { besideText, cellCares, cellName, cellPlace, cellTurn, returnedOutcome, RETURNED_WORDS } from '../../workbook/returned/returned-words'; // prettier-ignore
import { takenChanges, wantedCells, type Wanted } from '../../workbook/returned/take-back';
import type { Mapping } from '../../workbook/tables';
import { kindOf } from './find-plans';
import { openTyped, SHEETS_OPTIONS } from './lists-option';
import { readMappingFile } from './mapping-file';
import { CommandProblem, STATUS, usageProblem } from './status';
import { Pen, plainLine, type Io } from './terminal';
import { languageTyped } from './typed-options';
import { FUNCTION_NAMES, openPlan, planIn, type OpenOptions, type WorkbookPlan } from './workbook-plan';
import { writePlan } from './write-plan';
import { hanging } from './wrap';

export const TAKE_BACK_OPTIONS = {
  output: { type: 'string', short: 'o' },
  'in-place': { type: 'boolean', default: false },
  all: { type: 'boolean', default: false },
  channel: { type: 'string', multiple: true },
  field: { type: 'string', multiple: true },
  sent: { type: 'string' },
  json: { type: 'boolean', default: false },
  language: { type: 'string' },
  mapping: { type: 'string' },
  ...SHEETS_OPTIONS,
} as const;
export type TakeBackValues = Readonly<Record<string, string | boolean | readonly string[] | undefined>>;

/** What was asked for; undefined: only tell. */
const wantedIn = (values: TakeBackValues): Wanted | undefined => {
  const [channels, fields] = [values['channel'], values['field']] as (readonly string[] | undefined)[];
  const isNamed = channels !== undefined || fields !== undefined;
  if (values['all'] === true && isNamed) throw usageProblem('take-back: --all goes without --channel and --field.');
  return values['all'] === true || isNamed ? { channels, fields } : undefined;
};

const targetIn = async (path: string, values: TakeBackValues, wanted: Wanted | undefined) => {
  const output = values['output'] as string | undefined;
  const inPlace = values['in-place'] === true;
  if (output !== undefined && inPlace) throw usageProblem('-o and --in-place cannot be asked together.');
  if (output === undefined && !inPlace) {
    if (wanted) throw usageProblem('take-back: -o OUT or --in-place says where the chosen cells are written.');
    return undefined;
  }
  if (!wanted)
    throw usageProblem(
      'take-back: say which cells to take: --all, or --channel and --field. Without -o it lists them.',
    );
  if (output === undefined) return path;
  if (extname(output).toLowerCase() !== extname(path).toLowerCase())
    throw usageProblem(`-o ${output}: expected a name that ends in ${extname(path)} like the plan.`);
  if (await stat(output).catch(() => undefined)) throw usageProblem(`${output} exists. Name another file.`);
  return output;
};

const asProblem = (error: unknown, path: string): unknown =>
  error instanceof HostProblem
    ? new CommandProblem(error.message.includes(path) ? error.message : `${path}: ${error.message}`)
    : error;

const opened = async (path: string, mapping: Mapping | undefined, open: OpenOptions): Promise<WorkbookPlan> => {
  if (kindOf(path) === 'json') throw usageProblem(`${path}: take-back reads workbooks; a JSON plan has no cells.`);
  return openPlan(path, mapping, open).catch((error: unknown) => Promise.reject(asProblem(error, path)));
};

/** A copy is read by the headings of the plan. */
const openedCopy = async (path: string, plan: WorkbookPlan): Promise<WorkbookSource> => {
  if (kindOf(path) === 'json') throw usageProblem(`${path}: take-back reads workbooks; a JSON plan has no cells.`);
  const file = await openFile(path, FUNCTION_NAMES).catch((error: unknown) => Promise.reject(asProblem(error, path)));
  const sheets = file.sheets.map(({ name }) => file.readSheet(name, { formulaTexts: false }));
  const copy = copySource(plan, sheets, (sheet) => file.notesOn(sheet));
  if (!copy) throw new CommandProblem(`${path}: no sheet has the headings and channels of the plan's list; headings must stay as they are.`); // prettier-ignore
  return copy;
};

/** Formulas are read as '=' for speed; those that are told of are read in full. */
const withFormulas = (plan: WorkbookPlan, returned: Returned): Returned => {
  const read = new Map<string, SheetContent>();
  const cells = returned.cells.map((cell): ReturnedCell => {
    if (cell.formula === '') return cell;
    const { sheet, row, column } = cell.at;
    const content = read.get(sheet) ?? plan.file.readSheet(sheet);
    read.set(sheet, content);
    return { ...cell, formula: content.formulas[row - content.row]?.[column - content.column] ?? cell.formula };
  });
  return { ...returned, cells };
};

const isChecked = ({ tables: { channels }, contentOf }: WorkbookPlan): boolean => {
  const { values, row } = contentOf(channels.sheet);
  return findOwnBlock(values[channels.headerRow + channels.headerRows - 1 - row] ?? []).kind === 'whole';
};

/** Writes the cells, and our columns anew where they stand, so that no stored value is out of date. */
const write = async (
  plan: WorkbookPlan,
  cells: readonly ReturnedCell[],
  target: string,
  mapping: Mapping | undefined,
  language: Language,
): Promise<readonly string[]> => {
  const { path, file } = plan;
  try {
    file.edit(takenChanges(cells));
    let result = file;
    let told: readonly string[] = [];
    if (isChecked(plan)) {
      const bytes = file.save();
      const said = plan.said ?? mapping;
      const edited = planIn(path, openWorkbook(bytes, { codec: nodeCodec, functionNames: FUNCTION_NAMES }), said);
      ({ file: result, told } = writePlan(edited, { mapping: said, asValues: false, language }));
    } else {
      const stale = file.dependents();
      if (stale.length > 0)
        told = [`${stale.slice(0, 5).join(', ')}: formulas of yours read cells that changed; open the workbook in a spreadsheet program to renew their values.`]; // prettier-ignore
    }
    const backup = await saveFile(result, target, { input: path, inPlace: target === path });
    return [...told, `Wrote ${target}.`, ...(backup ? [`The plan as it was is kept as ${backup}.`] : [])];
  } catch (error) {
    if (error instanceof HostProblem) throw new CommandProblem(`${path}: ${error.message}`);
    throw error;
  }
};

const cellLines = (cell: ReturnedCell, isTaken: boolean, language: Language, columns: number): readonly string[] => [
  hanging(`${isTaken ? '✓ ' : '  '}`, plainLine(`${cellPlace(cell)}  ${cellName(cell)}: ${cellTurn(cell, language)}`), columns), // prettier-ignore
  ...cellCares(cell, language).map((care) => hanging('      ', plainLine(care), columns)),
];

const besideLines = ({ beside }: Returned, language: Language, columns: number): readonly string[] =>
  beside.length === 0
    ? []
    : [
        '',
        hanging('  ', RETURNED_WORDS[language].beside, columns),
        ...beside.map((one) => hanging('  ', plainLine(`${cellPlace(one)}  ${besideText(one, language)}`), columns)),
      ];

const jsonOf = (returned: Returned, taken: ReadonlySet<ReturnedCell>, language: Language) => ({
  cells: returned.cells.map((cell) => ({
    at: cellPlace(cell),
    list: cell.table,
    item: cell.item,
    heading: cell.heading,
    field: cell.key ?? null,
    now: cell.now,
    returned: cell.returned,
    ...(cell.sent === undefined ? {} : { sent: cell.sent }),
    ...(cell.formula === '' ? {} : { formula: cell.formula }),
    conflict: cell.cares.includes('conflict'),
    renamed: cell.cares.includes('renamed'),
    taken: taken.has(cell),
  })),
  only_in_copy: returned.added,
  not_in_copy: returned.missing,
  columns_not_in_copy: returned.columnsMissing,
  unreadable: returned.unreadable,
  beside: returned.beside.map(({ at, item, heading, text, isNote }) => ({
    at: cellPlace({ at }),
    item,
    heading,
    text,
    note: isNote === true,
  })),
  changed_in_plan_only: returned.oursNewer,
  outcome: returnedOutcome(returned, language),
});

/** Lists what a returned copy has otherwise than the plan, and takes the cells that a person chose. */
export const takeBackCommand = async (paths: readonly string[], values: TakeBackValues, io: Io): Promise<number> => {
  const [path, copy] = paths;
  if (path === undefined || copy === undefined || paths.length > 2)
    throw usageProblem('take-back: name the plan and the copy that came back.');
  const language = languageTyped(values['language'] as string | undefined);
  const wanted = wantedIn(values);
  const target = await targetIn(path, values, wanted);
  const typed = values['mapping'] as string | undefined;
  const mapping = typed === undefined ? undefined : await readMappingFile(typed);
  const plan = await opened(path, mapping, openTyped(values));
  const [returnedPlan, sentPath] = [await openedCopy(copy, plan), values['sent'] as string | undefined];
  const sent = sentPath === undefined ? undefined : await openedCopy(sentPath, plan);
  const returned = withFormulas(
    plan,
    returnedCells({ ...plan, notesOn: (sheet) => plan.file.notesOn(sheet) }, returnedPlan, sent),
  );
  const chosen = wanted ? wantedCells(returned.cells, wanted) : [];
  const done = target !== undefined && chosen.length > 0 ? await write(plan, chosen, target, mapping, language) : [];
  const taken = new Set(chosen);
  if (values['json'] === true) io.out(`${JSON.stringify(jsonOf(returned, taken, language), null, 1)}\n`);
  else {
    const pen = new Pen(io.colour);
    const lines = [
      pen.strong(`${RETURNED_WORDS[language].title}: ${plainLine(copy)}`),
      ...returnedOutcome(returned, language).map((line) => hanging('  ', plainLine(line), io.columns)),
      ...(returned.cells.length > 0 ? [''] : []),
      ...returned.cells.flatMap((cell) => cellLines(cell, taken.has(cell), language, io.columns)),
      ...besideLines(returned, language, io.columns),
    ];
    io.out(`${lines.join('\n')}\n`);
  }
  const say = values['json'] === true ? (line: string) => io.error(`${line}\n`) : (line: string) => io.out(`${line}\n`);
  if (wanted) say(`${chosen.length} of ${returned.cells.length} cells taken.`);
  for (const line of done) say(line);
  return STATUS.good;
};
