import { UNITS } from '../core/units';
import { planningAid } from '../plan/words/cautions';
import { fieldsOf, PURPOSES, type Field, type TableName } from '../plan/fields';
import { DEFAULT_LIMITS } from '../plan/limits';
import { limitLines } from './limit-lines';

/** A column of an empty plan. */
export interface TemplateColumn {
  readonly field: Field;
  readonly heading: string;
  readonly characters: number;
  /** What may be chosen: words, or the names that another sheet lists. */
  readonly choices?: readonly string[] | { readonly sheet: string };
  readonly isNumber: boolean;
}
export interface TemplateSheet {
  readonly name: string;
  readonly columns: readonly TemplateColumn[];
  /** Rows that a new plan starts with. */
  readonly rows: readonly (readonly (number | string | null)[])[];
}

const NAMES: readonly (readonly [table: TableName, sheet: string])[] = [
  ['channels', 'Channels'],
  ['sensors', 'Sensors'],
  ['mounts', 'Mounts'],
  ['cables', 'Cables'],
  ['inputs', 'Inputs'],
  ['limits', 'Limits'],
];
const LISTED: Readonly<Record<string, string>> = {
  sensor: 'Sensors',
  mount: 'Mounts',
  cable: 'Cables',
  input: 'Inputs',
};
const WIDTHS: Readonly<Record<string, number>> = {
  group: 20,
  location: 30,
  sensor: 20,
  mount: 18,
  cable: 18,
  input: 18,
  remarks: 34,
  description: 30,
  technology: 24,
  noiseDensity: 34,
  deviation: 34,
  limit: 22,
  origin: 60,
};

/** The heading with the unit in which a bare number is read. */
export const headingOf = ({ title, kind, unit, xUnit, statistic }: Field): string => {
  const label = unit === undefined ? '' : UNITS[unit].label;
  if (label === '') return title;
  if (kind === 'curve' && xUnit !== undefined) return `${title} [${UNITS[xUnit].label}: ${label}]`;
  return `${title} [${label}${statistic === undefined ? '' : statistic === 'rms' ? ' rms' : ' pk'}]`;
};

const columnOf = (table: TableName, field: Field): TemplateColumn => ({
  field,
  heading: headingOf(field),
  characters: WIDTHS[field.key] ?? 12,
  choices: field.choices ?? (table === 'channels' && LISTED[field.key] ? { sheet: LISTED[field.key]! } : undefined),
  isNumber: field.kind === 'quantity' || field.kind === 'list',
});

const limitRows = () =>
  limitLines(DEFAULT_LIMITS).map(({ name, pass, warn, unit, origin, reason }) => [
    name,
    pass,
    warn,
    unit === '' ? '1' : unit,
    `${origin}: ${reason}`,
  ]);

/** The sheets of a new, empty plan. */
export const templateSheets = (): readonly TemplateSheet[] =>
  NAMES.map(([table, name]) => ({
    name,
    columns: fieldsOf(table).map((field) => columnOf(table, field)),
    rows: table === 'limits' ? limitRows() : [],
  }));

/** The sheet for what the tables cannot say: topic and text, the text to be filled in. */
export const TEMPLATE_NOTES: readonly (readonly [topic: string, text: string])[] = [
  ['Plan notes', planningAid('en')],
  ['Object', ''],
  ['Test and purpose', ''],
  ['Revision', ''],
  ['Written by', ''],
  ['Checked by', ''],
  ['Assumptions', ''],
  ['Open questions', ''],
  [
    'How to fill in',
    'Channels: one row per channel. Every name in Sensor type, Mount, Cable and Input is a name from the sheet of that list.',
  ],
  ['Units', 'A bare number has the unit of its heading. Another unit may be typed with the number, such as "15 m/s²".'],
  ['Curves', 'Pairs in one cell, as in "-54: -11; 23: 0; 121: 11".'],
  ['Purpose', `${PURPOSES.join(', ')}; decides which limits apply. A blank counts as ${PURPOSES[0]}.`],
  ['Check', 'Run "channelwright check" on this workbook, or press Check in the task pane of the add-in.'],
];
