import { markedIn, type Language } from '../../core/language';
import { fromSi, UNITS } from '../../core/units';
import type { FieldChange } from '../../plan/compare';
import type { Cause } from '../../plan/compare-causes';
import { CALIBRATION_TEMPERATURE, type LimitChange } from '../../plan/compare-limits';
import { valueText, type Held } from '../../plan/compare-values';
import { fieldByKey, type TableName } from '../../plan/fields';
import { fieldTitle } from '../../plan/words/titles';
import { REPORT_WORDS } from '../report/words';
import { COMPARE_WORDS } from './compare-words';

const DIGITS = 12;

/** What one side says, as read. */
const heldText = (table: TableName, key: string, held: Held, language: Language): string => {
  const words = COMPARE_WORDS[language];
  if (held.isUnread) return `${held.typed ? `${words.quoted(held.typed)} ` : ''}(${words.unreadable})`;
  const text = valueText(table, key, held.value, language);
  if (text === undefined) return words.blank;
  return fieldByKey(table, key).kind === 'text' ? words.quoted(text) : text;
};

/** A bare number or the value with its unit says no more than what was read of it. */
const isPlain = (table: TableName, key: string, { typed, value, isUnread }: Held): boolean => {
  if (typed === undefined || typed.trim() === '' || isUnread || typeof value === 'string') return true;
  const read = valueText(table, key, value) ?? '';
  const ascii = typed.trim().replace(/^-/, '−');
  return ascii === read || ascii === read.split(' ')[0];
};

/** "Highest level: 65 g → 70 g (typed 65 g pk → 70)". */
export const fieldChangeText = ({ table, key, before, after }: FieldChange, language: Language): string => {
  const words = COMPARE_WORDS[language];
  const [was, is] = [before, after].map((held) => heldText(table, key, held, language));
  const aside = [before, after].every((held) => isPlain(table, key, held))
    ? ''
    : ` (${words.typed(before.typed || words.blank, after.typed || words.blank)})`;
  return words.labelled(fieldTitle(table, key, language), `${was} → ${is}${aside}`);
};

export const limitChangeText = ({ name, bound, before, after, unit }: LimitChange, language: Language): string => {
  const words = COMPARE_WORDS[language];
  const shown = (si: number | undefined): string =>
    si === undefined
      ? words.blank
      : markedIn(`${Number(fromSi(si, unit).toPrecision(DIGITS))} ${UNITS[unit].label}`.trim(), language);
  const title =
    name === CALIBRATION_TEMPERATURE
      ? words.calibration
      : words.limit(REPORT_WORDS[language].limitNames[name] ?? name, bound);
  return words.labelled(title, `${shown(before)} → ${shown(after)}`);
};

export const causeText = (cause: Cause, language: Language): string => {
  const words = COMPARE_WORDS[language];
  if (cause.kind === 'limit') return limitChangeText(cause.change, language);
  if (cause.kind === 'row') return fieldChangeText(cause.change, language);
  const { table, name, change } = cause;
  // A type that came or went as a whole.
  if (change.table === table && !(change.before.value !== undefined && change.after.value !== undefined)) {
    const isWhole = ['sensor', 'mount', 'cable', 'input'].includes(change.key);
    if (isWhole)
      return words.ofItem(table, name, words.listKinds[change.after.value === undefined ? 'removed' : 'added']);
  }
  return words.ofItem(table, name, fieldChangeText(change, language));
};
