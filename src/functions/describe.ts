import type { InLanguages, Language } from '../core/language';
import { UNITS, type UnitId } from '../core/units';
import {
  isCellError,
  type AnyFunction,
  type ArgSpec,
  type Block,
  type Cell,
  type Example,
  type Source,
} from './define';
import { ENGLISH, type Wording } from './words/wording';

/** How arguments and results are said in words, for every place that shows help. */
const labelOf = (unit: UnitId): string => UNITS[unit].label;

interface ConnectingWords {
  readonly pairs: (units: string) => string;
  readonly numbers: (unit: string) => string;
  readonly mayBeBlank: string;
  readonly blank: (meaning: string) => string;
  readonly incomplete: string;
  readonly resultKinds: Readonly<Record<'text' | 'block' | 'ratio', string>>;
}
const WORDS: InLanguages<ConnectingWords> = {
  en: {
    pairs: (units) => `pairs ${units} in one cell, or two columns`,
    numbers: (unit) => (unit ? `one or more numbers in ${unit}` : 'one or more numbers'),
    mayBeBlank: 'may be blank',
    blank: (meaning) => `blank: ${meaning}`,
    incomplete: 'incomplete',
    resultKinds: { text: 'text', block: 'block', ratio: 'ratio' },
  },
  de: {
    pairs: (units) => `Paare ${units} in einer Zelle, oder zwei Spalten`,
    numbers: (unit) => (unit ? `eine oder mehrere Zahlen in ${unit}` : 'eine oder mehrere Zahlen'),
    mayBeBlank: 'darf leer sein',
    blank: (meaning) => `leer: ${meaning}`,
    incomplete: 'unvollständig',
    resultKinds: { text: 'Text', block: 'Zellbereich', ratio: 'Verhältnis' },
  },
  fr: {
    pairs: (units) => `paires ${units} dans une cellule, ou deux colonnes`,
    numbers: (unit) => (unit ? `un ou plusieurs nombres en ${unit}` : 'un ou plusieurs nombres'),
    mayBeBlank: 'peut rester vide',
    blank: (meaning) => `vide : ${meaning}`,
    incomplete: 'incomplet',
    resultKinds: { text: 'texte', block: 'plage de cellules', ratio: 'rapport' },
  },
};

/** A number as it is typed in that language: German and French have a decimal comma. */
const numberIn = (language: Language, value: number): string =>
  language === 'en' ? String(value) : String(value).replace('.', ',');

export const isRepeating = (spec: ArgSpec): boolean => 'repeating' in spec && spec.repeating === true;

const mayBeBlank = (spec: ArgSpec): boolean =>
  spec.optional === true ||
  ('default' in spec && spec.default !== undefined) ||
  ('forgiving' in spec && spec.forgiving === true);

/** How many of the arguments a call must name: an argument is omissible when it and all after it may be blank. */
export const requiredCount = (fn: AnyFunction): number =>
  Object.values(fn.args as Record<string, ArgSpec>).reduce((count, spec, i) => (mayBeBlank(spec) ? count : i + 1), 0);

/** "low, high, [lineSpacing]" */
export const signatureOf = (fn: AnyFunction): string => {
  const required = requiredCount(fn);
  return Object.entries(fn.args as Record<string, ArgSpec>)
    .map(([key, spec], i) => (i < required ? key : `[${key}]`) + (isRepeating(spec) ? ', …' : ''))
    .join(', ');
};

/** "°C:%", "mV/g", or '' where no unit applies. */
export const unitOf = (spec: ArgSpec): string => {
  if (spec.kind === 'curve') return `${labelOf(spec.x)}:${labelOf(spec.y)}`;
  return 'unit' in spec ? labelOf(spec.unit) : '';
};

/** "> 0, ≤ 100" in the documented unit, or the choices; '' where anything is allowed. */
export const limitsOf = (spec: ArgSpec, language: Language = 'en'): string => {
  if (spec.kind === 'choice') return spec.choices.join(' | ');
  const { above, atLeast, below, atMost } = spec as {
    above?: number;
    atLeast?: number;
    below?: number;
    atMost?: number;
  };
  const rules: [string, number | undefined][] = [
    ['>', above],
    ['≥', atLeast],
    ['<', below],
    ['≤', atMost],
  ];
  return rules
    .flatMap(([sign, value]) => (value === undefined ? [] : [`${sign} ${numberIn(language, value)}`]))
    .join(', ');
};

/** What a blank cell means: a default value, "none", "incomplete", or '' where the argument is needed. */
export const blankOf = (spec: ArgSpec): string => {
  if ('default' in spec && spec.default !== undefined) return String(spec.default);
  if ('forgiving' in spec && spec.forgiving) return 'incomplete';
  return spec.optional ? 'none' : '';
};

const formOf = (spec: ArgSpec, language: Language): string => {
  if (spec.kind === 'curve') return WORDS[language].pairs(unitOf(spec));
  if (spec.kind === 'list') return WORDS[language].numbers(unitOf(spec));
  return unitOf(spec);
};

const blankHint = (spec: ArgSpec, language: Language): string => {
  const words = WORDS[language];
  if ('default' in spec && spec.default !== undefined)
    return words.blank(typeof spec.default === 'number' ? numberIn(language, spec.default) : spec.default);
  if ('forgiving' in spec && spec.forgiving) return words.blank(words.incomplete);
  return spec.optional ? words.mayBeBlank : '';
};

/** One line for a tool tip: what it is, unit, limits, and what a blank means. */
export const argumentHint = (spec: ArgSpec, { language, say }: Wording = ENGLISH): string => {
  const facts = [formOf(spec, language), limitsOf(spec, language), blankHint(spec, language)];
  const said = facts.filter(Boolean).join(language === 'fr' ? ' ; ' : '; ');
  return said ? `${say(spec.text)} (${said})` : say(spec.text);
};

/** "g", "°C … Hz" for a row, "text" or "block". */
export const resultUnitOf = (fn: AnyFunction, language: Language = 'en'): string => {
  const { result } = fn;
  const { resultKinds } = WORDS[language];
  if (result.kind === 'text' || result.kind === 'block') return resultKinds[result.kind];
  if (result.kind === 'row') return result.columns.map((c) => `${c.title} ${labelOf(c.unit)}`.trim()).join(', ');
  return labelOf(result.unit) || resultKinds.ratio;
};

const literal = (cell: Cell): string => {
  if (cell === null) return '';
  if (isCellError(cell)) return cell.error;
  if (typeof cell === 'string') return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
};
/** A blank cannot stand in an array constant; an empty text reads the same. */
const arrayConstant = (block: Block): string =>
  `{${block.map((row) => row.map((cell) => (cell === null ? '""' : literal(cell))).join(',')).join(';')}}`;

/** One argument as it is typed into a formula. */
export const argumentText = (arg: Example['args'][number]): string =>
  Array.isArray(arg) ? arrayConstant(arg) : literal(arg as Cell);

/** The example as it is typed into a cell, without the leading equals sign: "CHAN.MASS.SHIFT(0.02)". */
export const exampleFormula = (fullName: string, example: Example): string =>
  `${fullName}(${example.args.map(argumentText).join(',')})`;

/** Where a function's equation comes from, in words. */
export const sourceText = (source: Source): string => {
  if (source.kind === 'derivation') return `derived from ${source.from}`;
  if (source.kind === 'practice') return source.note;
  return `${source.cite}, ${source.locator}${source.read === 'from memory' ? ' (from memory)' : ''}`;
};
