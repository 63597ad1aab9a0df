import { fieldByKey } from '../../plan/fields';
import type { Plan } from '../../plan/model';
import { rangeEnds, readCell } from '../../plan/table-cell';
import type { RecognisedTable } from '../tables';
import type { RowEdit } from './row-edits';

/** Fields of the channel list on which verdicts depend. */
export const TRIABLE = [
  'mount',
  'cable',
  'input',
  'sensor',
  'levelLow',
  'levelHigh',
  'bandLow',
  'bandHigh',
  'lineSpacing',
  'temperatureLow',
  'temperatureHigh',
  'localMass',
  'thermalTolerance',
  'spanTolerance',
  'purpose',
] as const;

export type TypedValue =
  { readonly ok: true; readonly value: RowEdit['value'] } | { readonly ok: false; readonly expected: string };

/** A number alone, with either decimal mark. */
const BARE = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?$/i;

/** What a person typed, as a cell of this column would hold it; refused when the column could not be read with it. */
export const typedValue = ({ columns }: RecognisedTable, key: string, text: string): TypedValue => {
  const trimmed = text.trim();
  if (trimmed === '') return { ok: true, value: null };
  const field = fieldByKey('channels', key);
  const isNumber = field.kind === 'quantity' && BARE.test(trimmed);
  const value = isNumber ? Number(trimmed.replace(',', '.')) : trimmed;
  const column = columns.get(key);
  if (!column) return { ok: false, expected: field.text };
  const read = readCell(field, value, column);
  if (read.kind === 'refused') return { ok: false, expected: read.expected };
  if (read.kind === 'range' && !rangeEnds(key)) return { ok: false, expected: field.text };
  return { ok: true, value };
};

/** Names that the lists of the plan give for a field, as they are written there. */
export const namesIn = (plan: Plan, key: string): readonly string[] => {
  const lists: Readonly<Record<string, ReadonlyMap<string, { readonly name: string }>>> = {
    sensor: plan.sensors,
    mount: plan.mounts,
    cable: plan.cables,
    input: plan.inputs,
  };
  const list = lists[key];
  return list ? [...list.values()].map(({ name }) => name) : (fieldByKey('channels', key).choices ?? []);
};
