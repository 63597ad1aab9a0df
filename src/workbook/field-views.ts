import { UNITS } from '../core/units';
import { fieldsOf, TABLES, type Field, type TableName } from '../plan/fields';
import { columnLetters } from './address';
import type { FieldView } from './plan-view';
import type { ColumnUse, Mapping, RecognisedTable } from './tables';

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
): string => {
  if (use && said) return `as you said${readAs}`;
  if (use && use.confidence >= CERTAIN) return readAs.replace(/^; n/, 'N');
  if (use) return `${use.evidence}, ${percent(use.confidence)}${readAs}`;
  if (candidates.length > 0) return `Not sure enough: ${candidates.join(' or ')}?`;
  return said ? 'not in this list, as you said' : 'no column found';
};

const CERTAIN = 0.95;
const percent = (confidence: number): string => `${Math.round(confidence * 100)} % sure`;

const fieldView = (table: RecognisedTable, field: Field, mapping: Mapping): FieldView => {
  const use = table.columns.get(field.key);
  const candidates = table.unsure.get(field.key) ?? [];
  const said = mapping[table.table]?.fields?.[field.key] !== undefined;
  const label = (column: number) => `${columnLetters(column)}: ${table.headings.get(column) || 'no heading'}`;
  const unit = field.unit && UNITS[field.unit].label;
  const readAs = use?.unitText && use.unit !== field.unit ? `; numbers are read in ${use.unitText}` : '';
  return {
    table: table.table,
    key: field.key,
    title: field.title,
    unit: unit ?? '',
    needed: NEEDED[table.table].includes(field.key),
    column: use?.column,
    status: said ? 'said' : use ? 'sure' : candidates.length > 0 ? 'ask' : 'absent',
    evidence: evidenceOf(
      use,
      said,
      readAs,
      candidates.map(({ column }) => label(column)),
    ),
    choices: [...table.headings.keys()].sort((a, b) => a - b).map((column) => ({ column, label: label(column) })),
  };
};

/** Every field worth showing: what is read, what is asked, and what is needed but not there. */
export const fieldViews = (
  tables: Readonly<Partial<Record<TableName, RecognisedTable>>>,
  mapping: Mapping,
): FieldView[] =>
  TABLES.flatMap((name) => {
    const table = tables[name];
    return table ? fieldsOf(name).map((field) => fieldView(table, field, mapping)) : [];
  });

/** "Sensors on “Sensors”, mounts on “Mounts”": the lists that rows look things up in. */
export const describeLists = (tables: Readonly<Partial<Record<TableName, RecognisedTable>>>): string => {
  const lists = (['sensors', 'mounts', 'cables', 'inputs', 'limits'] as const).map((name) => {
    const table = tables[name];
    return table ? `${name} from “${table.sheet}”` : `no ${name} list`;
  });
  const sentence = lists.join(', ');
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
};
