import { stat } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import { planJson } from '../../plan/json-export';
import { planCsv, usualForm } from '../../workbook/export/plan-csv';
import type { CsvForm } from '../../workbook/export/csv-text';
import { LIST_OPTIONS, openTyped } from './lists-option';
import { readMappingFile } from './mapping-file';
import { planOnDisk, type PlanOnDisk } from './plan-file';
import { STATUS, usageProblem } from './status';
import type { Io } from './terminal';
import { languageTyped } from './typed-options';
import { writeWhole } from './write-file';

export const EXPORT_OPTIONS = {
  output: { type: 'string', short: 'o' },
  replace: { type: 'boolean', default: false },
  separator: { type: 'string' },
  decimal: { type: 'string' },
  language: { type: 'string' },
  mapping: { type: 'string' },
  ...LIST_OPTIONS,
} as const;
export type ExportValues = Readonly<Record<string, string | boolean | readonly string[] | undefined>>;

const SEPARATORS: Readonly<Record<string, CsvForm['separator']>> = {
  ',': ',',
  comma: ',',
  ';': ';',
  semicolon: ';',
  '\t': '\t',
  tab: '\t',
};
const DECIMALS: Readonly<Record<string, CsvForm['decimal']>> = { '.': '.', point: '.', ',': ',', comma: ',' };

const picked = <T>(option: string, typed: string | undefined, known: Readonly<Record<string, T>>, usual: T): T => {
  if (typed === undefined) return usual;
  const name = typed.toLowerCase();
  if (Object.hasOwn(known, name)) return known[name]!;
  throw usageProblem(`--${option} ${typed}: expected ${Object.keys(known).filter((key) => /\w/.test(key)).join(' or ')}.`); // prettier-ignore
};

/** UTF-8 is only recognised by some spreadsheet programs when this mark stands first. */
const BYTE_ORDER_MARK = '\ufeff';

const contentOf = ({ path, plan, checks }: PlanOnDisk, ending: string, values: ExportValues): string => {
  if (ending === '.json') return `${JSON.stringify(planJson(plan, basename(path, extname(path))), null, 1)}\n`;
  const language = languageTyped(values['language'] as string | undefined);
  const usual = usualForm(language);
  const separator = picked('separator', values['separator'] as string | undefined, SEPARATORS, usual.separator);
  const decimal = picked('decimal', values['decimal'] as string | undefined, DECIMALS, usual.decimal);
  if (separator === decimal) throw usageProblem('--separator and --decimal must differ, or numbers fall apart.');
  return BYTE_ORDER_MARK + planCsv(checks, plan.limits, { language, separator, decimal });
};

/** Writes the plan in a form for other programs. */
export const exportCommand = async (paths: readonly string[], values: ExportValues, io: Io): Promise<number> => {
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw usageProblem('export: name one plan: a workbook or a JSON plan.');
  const output = values['output'] as string | undefined;
  const ending = extname(output ?? '').toLowerCase();
  if (output === undefined || (ending !== '.csv' && ending !== '.json'))
    throw usageProblem('export: -o FILE.csv or -o FILE.json says where to write and in which form.');
  const there = await stat(output).catch(() => undefined);
  if (there?.isDirectory()) throw usageProblem(`${output} is a folder.`);
  if (there && values['replace'] !== true) throw usageProblem(`${output} exists. Name another file, or add --replace.`);
  const own = there && (await stat(path).catch(() => undefined));
  if (there && own && there.ino === own.ino && there.dev === own.dev)
    throw usageProblem(`${output} is the plan itself. Name another file.`);
  const typed = values['mapping'] as string | undefined;
  const mapping = typed === undefined ? undefined : await readMappingFile(typed);
  const plan = await planOnDisk(path, mapping, openTyped(values));
  await writeWhole(output, contentOf(plan, ending, values));
  for (const line of [...plan.stocked, ...plan.unread]) io.error(`${line}\n`);
  io.out(`Wrote ${plan.checks.length} ${plan.checks.length === 1 ? 'channel' : 'channels'} to ${output}.\n`);
  return STATUS.good;
};
