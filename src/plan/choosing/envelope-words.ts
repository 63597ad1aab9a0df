import { capital, type Language } from '../../core/language';
import type { BoundKey, BoundLimit, EnvelopeBound, NumberBound, OutputBound, Slack } from './envelope-bound';
import { fieldsWords } from './envelope-field-words';
import { BOUND_WORDS, LIMIT_WORDS, TEXTS, type Texts } from './envelope-texts';
import { factorWords, numberWords } from './envelope-numbers';
import { originWords } from '../words/limit-origins';

/** "sensor mass", as a heading or inside a sentence. */
export const boundWords = (key: BoundKey, language: Language = 'en'): string => BOUND_WORDS[language][key];

/** A bound in words, to be set apart from each other. */
export interface BoundInWords {
  /** "≤ 1.27 gram"; absent where no number stands for the bound. */
  readonly amount?: string;
  /** "sensor mass", or the whole of what can be said. */
  readonly what: string;
  /** What it is for a WARN, what asks for it, and by which limit. */
  readonly why?: string;
  /** What an actual sensor has, and how far that is inside or outside. */
  readonly now?: string;
}

export const boundInWords = (bound: EnvelopeBound, language: Language = 'en'): BoundInWords => {
  const texts = TEXTS[language];
  const name = boundWords(bound.key, language) + (bound.input === undefined ? '' : texts.atInput(bound.input));
  if (bound.missing.length > 0) return { what: texts.notKnown(name, fieldsWords(bound.missing, language)) };
  const { amount, what, warn } =
    bound.kind === 'output'
      ? { what: outputText(bound, boundWords(bound.key, language), texts) }
      : numberText(bound, name, language);
  const why = [
    warn,
    texts.askedBy(fieldsWords(bound.causes, language)),
    limitText(bound, language),
    bound.without.length > 0 ? texts.without(fieldsWords(bound.without, language)) : undefined,
  ].filter((part) => part !== undefined);
  return { amount, what, why: `${capital(why.join(texts.between))}.`, now: valueText(bound, language) };
};

/**
 * What to ask a supplier for: every bound that is known, number and name alone. Nothing of the sensor that is there now:
 * a bound that holds only for its mass is left out.
 */
export const askedOfSupplier = (bounds: readonly EnvelopeBound[], language: Language = 'en'): readonly string[] =>
  bounds.flatMap((bound) => {
    if (bound.missing.length > 0) return [];
    const name = boundWords(bound.key, language);
    if (bound.kind === 'output') return bound.admissible?.length ? [outputText(bound, name, TEXTS[language])] : [];
    const { pass, unit, direction, atLoss, atMass, input } = bound;
    if (pass === undefined || !Number.isFinite(pass) || atMass) return [];
    const texts = TEXTS[language];
    const loss = atLoss === undefined ? '' : ` (${texts.atLoss(numberWords(atLoss, '%', language))})`;
    const at = input === undefined ? '' : texts.atInput(input);
    return [`${SIGNS[direction]} ${numberWords(pass, unit, language)} ${name}${loss}${at}`];
  });

const outputText = ({ admissible = [] }: OutputBound, name: string, texts: Texts): string =>
  admissible.length === 0
    ? texts.nothing(name)
    : `${admissible.map(({ output, inputs }) => `${output} (${inputs.join(', ')})`).join(', ')}: ${name}`;

const SIGNS = { atMost: '≤', atLeast: '≥' } as const;

interface NumberInWords {
  readonly amount?: string;
  readonly what: string;
  readonly warn?: string;
}
const numberText = (bound: NumberBound, name: string, language: Language): NumberInWords => {
  const texts = TEXTS[language];
  const { pass, warn, unit, direction, atLoss, atMass } = bound;
  if (pass === undefined || !Number.isFinite(pass)) {
    const isFree = pass !== undefined && pass > 0 === (direction === 'atMost');
    return { what: isFree ? texts.anything(name) : texts.nothing(name) };
  }
  const within = (value: number) => `${SIGNS[direction]} ${numberWords(value, unit, language)}`;
  const details = [
    atLoss === undefined ? undefined : texts.atLoss(numberWords(atLoss, '%', language)),
    atMass && texts.atMass(numberWords(atMass.mass, 'gram', language), atMass.of),
    bound.key === 'sensor mass' && pass <= 0 ? texts.tooHeavy : undefined,
  ].filter((detail) => detail !== undefined);
  return {
    amount: within(pass),
    what: details.length > 0 ? `${name} (${details.join(texts.between)})` : name,
    warn: warn === undefined || warn === pass || !Number.isFinite(warn) ? undefined : `WARN ${within(warn)}`,
  };
};

const LIMIT_UNITS: Record<BoundLimit['name'], 'dB' | '1' | '%'> = {
  signalToNoise: 'dB',
  headroom: 'dB',
  massRatio: '1',
  thermalTolerance: '%',
  spanTolerance: '%',
};

/** "mass ratio 0.1 (default, no standard)"; undefined where no limit stands behind a bound. */
export const limitWords = ({ limit }: EnvelopeBound, language: Language = 'en'): string | undefined => {
  if (!limit) return undefined;
  const number = numberWords(limit.pass, LIMIT_UNITS[limit.name], language);
  return `${LIMIT_WORDS[language][limit.name]} ${number} (${originWords(limit.origin, language)})`;
};

const limitText = (bound: EnvelopeBound, language: Language): string | undefined => {
  const words = limitWords(bound, language);
  return words === undefined ? undefined : TEXTS[language].limit(words);
};

const valueText = (bound: EnvelopeBound, language: Language): string | undefined => {
  const texts = TEXTS[language];
  if (bound.verdict === undefined) return undefined;
  if (bound.value === undefined)
    return bound.valueMissing.length > 0 ? texts.valueNotKnown(fieldsWords(bound.valueMissing, language)) : undefined;
  const value = bound.kind === 'output' ? bound.value : numberWords(bound.value, bound.unit, language);
  const slack = bound.kind === 'number' && bound.slack ? `, ${slackText(bound.slack, language)}` : '';
  return `${texts.value(value)}${slack}.`;
};

const slackText = ({ kind, amount }: Slack, language: Language): string => {
  const texts = TEXTS[language];
  if (kind === 'factor') {
    const isSpare = amount >= 1;
    return (isSpare ? texts.spareFactor : texts.shortFactor)(factorWords(isSpare ? amount : 1 / amount, language));
  }
  const size = numberWords(Math.abs(amount), kind, language);
  return amount >= 0 ? texts.spare(size) : texts.short(size);
};
