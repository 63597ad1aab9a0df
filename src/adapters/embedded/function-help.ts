import type { InLanguages } from '../../core/language';
import { UNITS, type UnitId } from '../../core/units';
import type { AnyFunction, ArgSpec } from '../../functions/define';
import { ENGLISH, type Wording } from '../../functions/words/wording';

interface HelpWords {
  readonly inUnit: (unit: string) => string;
  readonly pairs: (x: string, y: string) => string;
  readonly oneOf: (choices: string) => string;
  readonly ifLeftOut: (value: string) => string;
  readonly mayBeLeftOut: string;
}
const WORDS: InLanguages<HelpWords> = {
  en: {
    inUnit: (unit) => `In ${unit}.`,
    pairs: (x, y) => `Pairs of ${x} and ${y}.`,
    oneOf: (choices) => `One of ${choices}.`,
    ifLeftOut: (value) => `${value} if left out.`,
    mayBeLeftOut: 'May be left out.',
  },
  de: {
    inUnit: (unit) => `In ${unit}.`,
    pairs: (x, y) => `Paare aus ${x} und ${y}.`,
    oneOf: (choices) => `Eines von ${choices}.`,
    ifLeftOut: (value) => `${value}, wenn es fehlt.`,
    mayBeLeftOut: 'Darf fehlen.',
  },
  fr: {
    inUnit: (unit) => `En ${unit}.`,
    pairs: (x, y) => `Paires de ${x} et ${y}.`,
    oneOf: (choices) => `Au choix : ${choices}.`,
    ifLeftOut: (value) => `${value} si omis.`,
    mayBeLeftOut: 'Peut être omis.',
  },
};

const labelOf = (unit: UnitId): string => UNITS[unit].label;

const unitNote = (spec: ArgSpec, words: HelpWords): string => {
  if (spec.kind === 'curve') return words.pairs(labelOf(spec.x), labelOf(spec.y));
  if (spec.kind === 'choice') return words.oneOf(spec.choices.join(', '));
  return 'unit' in spec && labelOf(spec.unit) ? words.inUnit(labelOf(spec.unit)) : '';
};

const defaultNote = (spec: ArgSpec, words: HelpWords): string => {
  if ('default' in spec && spec.default !== undefined) return words.ifLeftOut(String(spec.default));
  return spec.optional ? words.mayBeLeftOut : '';
};

/**
 * The text beside an argument in the grid's function help. Numbers keep the decimal point in every language, because
 * that is how the grid's formulas are typed.
 */
export const describeArgument = (spec: ArgSpec, { language, say }: Wording = ENGLISH): string =>
  [say(spec.text), unitNote(spec, WORDS[language]), defaultNote(spec, WORDS[language])].filter(Boolean).join(' ');

/** The argument as the first worked example gives it; a range is shown as one. */
export const exampleOf = (fn: AnyFunction, index: number): string => {
  const given = fn.examples[0]?.args[index];
  if (given === undefined || given === null) return '';
  if (Array.isArray(given)) return 'A1:B9';
  return typeof given === 'string' ? `"${given}"` : String(given);
};
