import type { InLanguages, Language } from '../../core/language';
import { FIELDS, type TableName } from '../../plan/fields';
import { limitNames } from '../../plan/limits-table';
import { fieldTitle } from '../../plan/words/titles';
import { channelSheets } from '../channel-lists';
import type { JudgedPlan } from '../plan-of';
import type { RecognisedTables } from '../recognise';
import { reportContent, type ReportContent } from '../report/content';
import { NO_NOTES, type Fact, type PlanNotes } from '../report/plan-notes';
import type { SectionKey } from '../report/section';
import { REPORT_WORDS } from '../report/words';
import type { ShareChoices } from './choices';

const DATE: InLanguages<string> = { en: 'Date', de: 'Datum', fr: 'Date' };

/** Sections that show what stands in a list, or in one field of it. */
const SHOWN: readonly (readonly [table: TableName, key: string | undefined, section: SectionKey])[] = [
  ['sensors', undefined, 'sensors'],
  ['sensors', 'quantity', 'sensors'],
  ['sensors', undefined, 'due'],
  ['sensors', 'calibrationDue', 'due'],
  ['sensors', undefined, 'technologies'],
  ['sensors', 'technology', 'technologies'],
  ['channels', 'group', 'parts'],
  ['channels', 'group', 'control'],
  ['channels', 'sensor', 'sensors'],
  ['channels', 'mount', 'mounts'],
  ['channels', 'mount', 'adhesives'],
  ['channels', 'sensor', 'connections'],
  ['channels', 'cable', 'connections'],
  ['channels', 'input', 'connections'],
  ['channels', 'input', 'modules'],
  ['channels', 'run', 'modules'],
  ['channels', 'cable', 'cables'],
  ['channels', 'input', 'inputs'],
  ...(['mountMass', 'mountTemperatureMin', 'mountTemperatureMax'] as const).flatMap(
    (key) =>
      [
        ['mounts', key, 'mounts'],
        ['mounts', key, 'adhesives'],
      ] as const,
  ),
  ['cables', 'cableCapacitance', 'cables'],
  ['cables', 'cableMass', 'cables'],
  ['inputs', 'mode', 'inputs'],
  ['inputs', 'mode', 'modules'],
  ['inputs', 'range', 'inputs'],
  ['sensors', 'output', 'sensors'],
  ['sensors', 'axes', 'sensors'],
  ['mounts', undefined, 'mounts'],
  ['mounts', undefined, 'adhesives'],
  ['sensors', undefined, 'connections'],
  ['cables', undefined, 'connections'],
  ['inputs', undefined, 'connections'],
  ['inputs', undefined, 'modules'],
  ['inputs', 'modules', 'modules'],
  ['inputs', 'moduleChannels', 'modules'],
  ['cables', undefined, 'cables'],
  ['inputs', undefined, 'inputs'],
  ['limits', undefined, 'limits'],
];

const sameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** Titles and headings of the overview names of fields and limits: a left-out list may use the same words, and they tell nothing of it. */
export const overviewWords = (language: Language): ReadonlySet<string> => {
  const found = new Set<string>();
  const gather = (words: unknown): void => {
    if (typeof words === 'string') found.add(words);
    else if (typeof words === 'object' && words !== null) Object.values(words).forEach(gather);
  };
  gather(REPORT_WORDS[language]);
  for (const { name } of limitNames()) found.add(name);
  for (const { table, key } of FIELDS) found.add(fieldTitle(table, key, language));
  return found;
};

/** What the overview of a customer copy says: the report, without what would tell of left-out columns and sheets. */
export const copyContent = (
  { byRow, limits, unread }: JudgedPlan,
  tables: RecognisedTables,
  notes: PlanNotes,
  { language, leftOutColumns, leftOutSheets, properties }: ShareChoices,
): ReportContent => {
  const sheetGone = (sheet: string): boolean => leftOutSheets.some((name) => sameName(name, sheet));
  const columnGone = (sheet: string, column: number | undefined): boolean =>
    leftOutColumns.some((place) => sameName(place.sheet, sheet) && place.column === column);
  const hidden = new Set(
    SHOWN.flatMap(([name, key, section]) => {
      const table = tables[name];
      const gone = table && (sheetGone(table.sheet) || (key !== undefined && columnGone(table.sheet, table.columns.get(key)?.column))); // prettier-ignore
      return gone ? [section] : [];
    }),
  );
  const told = unread.filter(({ at }) => !at || !(sheetGone(at.sheet) || columnGone(at.sheet, at.column)));
  const facts: Partial<Record<Fact, string>> = { ...notes.facts };
  for (const fact of ['revision', 'prepared', 'checked'] as const)
    if (properties[fact] !== undefined) facts[fact] = properties[fact];
  const content = reportContent(
    { checks: [...byRow.values()], limits, unread: told },
    channelSheets(tables).join(', '),
    {
      language,
      notes: { ...NO_NOTES, ...notes, facts },
    },
  );
  return {
    ...content,
    facts: [...content.facts, ...(properties.date === undefined ? [] : [[DATE[language], properties.date] as const])],
    sections: content.sections.filter(({ key }) => !hidden.has(key)),
  };
};
