import { basename, extname } from 'node:path';
import type { Language } from '../../core/language';
import { comparePlans, isChanged, type ComparedPlan, type PlanComparison } from '../../plan/compare';
import { compareContent, type CompareContent, type CompareEntry } from '../../workbook/compare/compare-content';
import { compareJson } from '../../workbook/compare/compare-json';
import { compareMarkdown } from '../../workbook/compare/compare-markdown';
import { COMPARE_WORDS } from '../../workbook/compare/compare-words';
import { comparedWorkbook } from '../../workbook/compare/compared-plan';
import { LIST_OPTIONS, openTyped } from './lists-option';
import { readMappingFile } from './mapping-file';
import { planOnDisk, type PlanOnDisk } from './plan-file';
import { STATUS, usageProblem } from './status';
import { Pen, plainLine, type Io } from './terminal';
import { languageTyped } from './typed-options';
import { hanging } from './wrap';
import { writeWhole } from './write-file';

export const COMPARE_OPTIONS = {
  json: { type: 'boolean', default: false },
  'no-renames': { type: 'boolean', default: false },
  language: { type: 'string' },
  report: { type: 'string' },
  mapping: { type: 'string' },
  ...LIST_OPTIONS,
} as const;
export type CompareValues = Readonly<Record<string, string | boolean | readonly string[] | undefined>>;

const comparedOnDisk = ({ plan, checks, workbook }: PlanOnDisk): ComparedPlan =>
  workbook ? comparedWorkbook(workbook) : { plan, checks };

const entryText = ({ name, verdicts, sentences }: CompareEntry, columns: number, pen: Pen): string => {
  const words = [verdicts?.before, verdicts?.after].filter((verdict) => verdict !== undefined);
  const turn = words.map((verdict) => pen.verdict(verdict, verdict)).join(' → ');
  const body = sentences.map((sentence) => hanging('    ', plainLine(sentence), columns));
  if (name === '') return body.map((line) => line.slice(2)).join('\n');
  return [`  ${pen.strong(plainLine(name))}${turn === '' ? '' : `  ${turn}`}`, ...body].join('\n');
};

const textOf = (
  content: CompareContent,
  names: readonly [string, string],
  language: Language,
  { columns, colour }: Io,
): string => {
  const pen = new Pen(colour);
  const title = COMPARE_WORDS[language].labelled;
  return [
    pen.strong(title(content.title, names.map(plainLine).join(' → '))),
    ...content.outcome.map((line) => hanging('  ', line, columns)),
    ...content.sections.flatMap(({ title, entries }) => [
      '',
      pen.strong(title),
      ...entries.map((entry) => entryText(entry, columns, pen)),
    ]),
    '',
  ].join('\n');
};

/** Tells what differs between two revisions of a plan. */
export const compareCommand = async (paths: readonly string[], values: CompareValues, io: Io): Promise<number> => {
  const [before, after] = paths;
  if (before === undefined || after === undefined || paths.length > 2)
    throw usageProblem('compare: name two plans, the earlier one first: workbooks or JSON plans.');
  const language: Language = languageTyped(values['language'] as string | undefined);
  const report = values['report'] as string | undefined;
  if (report !== undefined && extname(report).toLowerCase() !== '.md')
    throw usageProblem(`--report ${report}: expected a name that ends in .md.`);
  const typed = values['mapping'] as string | undefined;
  const mapping = typed === undefined ? undefined : await readMappingFile(typed);
  const open = openTyped(values);
  const [old, fresh] = [await planOnDisk(before, mapping, open), await planOnDisk(after, mapping, open)];
  const comparison: PlanComparison = comparePlans(comparedOnDisk(old), comparedOnDisk(fresh), {
    withoutRenames: values['no-renames'] === true,
  });
  const content = compareContent(comparison, language);
  const names = [before, after] as const;
  for (const plan of [old, fresh])
    for (const line of [...plan.stocked, ...plan.unread]) io.error(`${plan.path}: ${line}\n`);
  if (report !== undefined)
    await writeWhole(report, compareMarkdown(content, [basename(before), basename(after)], language));
  if (values['json'] === true)
    io.out(`${JSON.stringify({ before, after, ...compareJson(comparison, language) }, null, 1)}\n`);
  else io.out(textOf(content, names, language, io));
  return isChanged(comparison) ? STATUS.fail : STATUS.good;
};
