import { capital, type Language } from '../core/language';
import { UNITS } from '../core/units';
import { fieldsOf, TABLES, type Field, type TableName } from '../plan/fields';
import { columnLetters } from './address';
import { listsOf } from './channel-lists';
import type { FieldView } from './plan-view';
import { fieldTitle } from '../plan/words/titles';
import { columnsAsRead } from './spread-list';
import type { ColumnUse, Mapping, RecognisedTable } from './tables';
import { SESSION_WORDS, type SessionWords } from './words';

/** Fields without which no row of the table can be judged. */
const NEEDED: Readonly<Record<TableName, readonly string[]>> = {
  channels: [
    'channel',
    'levelLow',
    'levelHigh',
    'bandLow',
    'bandHigh',
    'temperatureLow',
    'temperatureHigh',
    'localMass',
    'sensor',
    'mount',
    'cable',
    'input',
  ],
  sensors: [
    'sensor',
    'output',
    'sensitivity',
    'fullScale',
    'mass',
    'resonance',
    'qualityFactor',
    'temperatureMin',
    'temperatureMax',
  ],
  mounts: ['mount', 'mountMass'],
  cables: ['cable', 'cableMass', 'cableCapacitance'],
  inputs: ['input', 'mode', 'range', 'dynamicRange', 'sampleRate', 'couplingPoles'],
  limits: ['limit', 'pass', 'warn'],
};

/** Why the column was taken. A heading that says the field's own words needs no explanation. */
const evidenceOf = (
  use: ColumnUse | undefined,
  said: boolean,
  readAs: string,
  candidates: readonly string[],
  words: SessionWords,
): string => {
  const aside = readAs && `; ${readAs}`;
  if (use && said) return words.asYouSaid + aside;
  if (use && use.confidence >= CERTAIN) return capital(readAs);
  if (use) return `${use.evidence}, ${words.sure(Math.round(use.confidence * 100))}${aside}`;
  if (candidates.length > 0) return words.notSure(candidates);
  return said ? words.notHereAsSaid : words.noColumn;
};

const CERTAIN = 0.95;

const fieldView = (
  table: RecognisedTable,
  field: Field,
  mapping: Mapping,
  language: Language,
  sheet?: string,
): FieldView => {
  const words = SESSION_WORDS[language];
  const use = table.columns.get(field.key);
  const candidates = table.unsure.get(field.key) ?? [];
  const { fields, fieldsOn } = mapping[table.table] ?? {};
  const said = (fields?.[field.key] ?? fieldsOn?.[table.sheet]?.[field.key]) !== undefined;
  const label = (column: number) => `${columnLetters(column)}: ${table.headings.get(column) || words.noHeading}`;
  const unit = field.unit && UNITS[field.unit].label;
  const readAs = use?.unitText && use.unit !== field.unit ? words.readIn(use.unitText) : '';
  return {
    table: table.table,
    key: field.key,
    ...(sheet !== undefined && { sheet }),
    title: fieldTitle(field.table, field.key, language),
    unit: unit ?? '',
    needed: NEEDED[table.table].includes(field.key),
    column: use?.column,
    status: said ? 'said' : use ? 'sure' : candidates.length > 0 ? 'ask' : 'absent',
    evidence: evidenceOf(
      use,
      said,
      readAs,
      candidates.map(({ column }) => label(column)),
      words,
    ),
    choices: [...table.headings.keys()].sort((a, b) => a - b).map((column) => ({ column, label: label(column) })),
  };
};

/** Every field worth showing: what is read, what is asked, and what is needed but not there. */
export const fieldViews = (
  tables: Readonly<Partial<Record<TableName, RecognisedTable>>>,
  mapping: Mapping,
  language: Language,
): FieldView[] =>
  TABLES.flatMap((name) =>
    differing(listsOf(tables, name)).flatMap((table, i) =>
      fieldsOf(name).map((field) => fieldView(table, field, mapping, language, i > 0 ? table.sheet : undefined)),
    ),
  );

/** The first list, and those of its parts that are read from other columns. */
const differing = ([first, ...parts]: readonly RecognisedTable[]): readonly RecognisedTable[] =>
  first ? [first, ...parts.filter((part) => columnsAsRead(part) !== columnsAsRead(first))] : [];

/** "Sensors on “Sensors”, mounts on “Mounts”": the lists that rows look things up in. */
export const describeLists = (
  tables: Readonly<Partial<Record<TableName, RecognisedTable>>>,
  language: Language,
): string => {
  const words = SESSION_WORDS[language];
  const lists = (['sensors', 'mounts', 'cables', 'inputs', 'limits'] as const).map((name) => {
    const table = tables[name];
    return table ? words.listFrom(name, table.sheet) : words.noListOf(name);
  });
  return `${capital(lists.join(', '))}.`;
};
