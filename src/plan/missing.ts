import type { InLanguages, Language } from '../core/language';
import { fieldByKey, type TableName } from './fields';
import { fieldTitle } from './words/titles';

/** A field that a check needs and the plan does not have. */
export interface MissingField {
  readonly table: TableName;
  readonly key: string;
}

export const NOTHING_MISSING: readonly MissingField[] = [];

const interned = new Map<string, MissingField>();

/** The same object for the same field, so that checking many channels allocates none. */
export const missingField = (table: TableName, key: string): MissingField => {
  const id = `${table}.${key}`;
  let field = interned.get(id);
  if (!field) {
    fieldByKey(table, key);
    field = { table, key };
    interned.set(id, field);
  }
  return field;
};

/** Collects what is missing; stays without an array while nothing is. */
export class Missing {
  private list: MissingField[] | undefined;

  /** Notes the field when the value is not known, and hands the value back. */
  need<T>(value: T | undefined, field: MissingField): T | undefined {
    if (value === undefined && !this.list?.includes(field)) (this.list ??= []).push(field);
    return value;
  }

  /** Notes what was given but could not be read where a blank would mean a default; says whether there was any. */
  unread(part: { readonly unread?: readonly string[] } | undefined, fields: Readonly<Record<string, MissingField>>) {
    if (!part?.unread) return false;
    let found = false;
    for (const key of part.unread) {
      const field = fields[key];
      if (field) this.need(undefined, field);
      found ||= field !== undefined;
    }
    return found;
  }

  get fields(): readonly MissingField[] {
    return this.list ?? NOTHING_MISSING;
  }
}

interface LabelWords {
  readonly tables: Readonly<Record<TableName, string>>;
  readonly notListed: (name: string) => string;
}
const WORDS: InLanguages<LabelWords> = {
  en: {
    tables: { channels: '', sensors: 'sensor', mounts: 'mount', cables: 'cable', inputs: 'input', limits: 'limits' },
    notListed: (name) => `no “${name}” in its list`,
  },
  de: {
    tables: {
      channels: '',
      sensors: 'Aufnehmer',
      mounts: 'Ankopplung',
      cables: 'Kabel',
      inputs: 'Eingang',
      limits: 'Grenzwerte',
    },
    notListed: (name) => `„${name}“ fehlt in seiner Liste`,
  },
  fr: {
    tables: {
      channels: '',
      sensors: 'capteur',
      mounts: 'fixation',
      cables: 'câble',
      inputs: 'entrée',
      limits: 'limites',
    },
    notListed: (name) => `« ${name} » absent de sa liste`,
  },
};

/** The heading, with its table where the reader would look in the wrong one, and a name that no list has. */
export const missingLabel = (
  { table, key }: MissingField,
  named?: Readonly<Record<string, string | undefined>>,
  language: Language = 'en',
): string => {
  const title = fieldTitle(table, key, language);
  const { tables, notListed } = WORDS[language];
  if (tables[table] !== '') return `${title} (${tables[table]})`;
  return named?.[key] === undefined ? title : `${title} (${notListed(named[key])})`;
};
