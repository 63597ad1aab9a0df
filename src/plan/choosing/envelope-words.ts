import type { InLanguages, Language } from '../../core/language';
import { DEFAULT_ORIGIN, ROW_ORIGIN } from '../limits';
import type { BoundKey, BoundLimit, EnvelopeBound, NumberBound, OutputBound, Slack } from './envelope-bound';
import { fieldsWords } from './envelope-field-words';
import { BOUND_WORDS, LIMIT_WORDS, TEXTS, type Texts } from './envelope-texts';
import { factorWords, numberWords } from './envelope-numbers';

/** "sensor mass", as a heading or inside a sentence. */
export const boundWords = (key: BoundKey, language: Language = 'en'): string => BOUND_WORDS[language][key];

/** Number first, then what asks for it and by which limit, then what an actual sensor has to spare. */
export const envelopeSentence = (bound: EnvelopeBound, language: Language = 'en'): string => {
  const texts = TEXTS[language];
  const name = boundWords(bound.key, language);
  const at = bound.input === undefined ? '' : texts.atInput(bound.input);
  if (bound.missing.length > 0) return texts.notKnown(name + at, fieldsWords(bound.missing, language));
  return `${boundText(bound, language)}${valueText(bound, language)}`;
};

const boundText = (bound: EnvelopeBound, language: Language): string => {
  const texts = TEXTS[language];
  const name = boundWords(bound.key, language);
  const at = bound.input === undefined ? '' : texts.atInput(bound.input);
  const parts = [
    bound.kind === 'output' ? outputText(bound, name, texts) : numberText(bound, name + at, language),
    texts.askedBy(fieldsWords(bound.causes, language)),
    limitText(bound, language),
    bound.without.length > 0 ? texts.without(fieldsWords(bound.without, language)) : undefined,
  ];
  return `${parts.filter((part) => part !== undefined).join(texts.between)}.`;
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

const numberText = (bound: NumberBound, name: string, language: Language): string => {
  const texts = TEXTS[language];
  const { pass, warn, unit, direction, atLoss, atMass } = bound;
  if (pass === undefined || !Number.isFinite(pass)) {
    const isFree = pass !== undefined && pass > 0 === (direction === 'atMost');
    return isFree ? texts.anything(name) : texts.nothing(name);
  }
  const within = (value: number) => `${SIGNS[direction]} ${numberWords(value, unit, language)}`;
  const details = [
    atLoss === undefined ? undefined : texts.atLoss(numberWords(atLoss, '%', language)),
    atMass && texts.atMass(numberWords(atMass.mass, 'gram', language), atMass.of),
    warn === undefined || warn === pass || !Number.isFinite(warn) ? undefined : `WARN ${within(warn)}`,
    bound.key === 'sensor mass' && pass <= 0 ? texts.tooHeavy : undefined,
  ].filter((detail) => detail !== undefined);
  return `${within(pass)} ${name}${details.length > 0 ? ` (${details.join(texts.between)})` : ''}`;
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

/** The origins this program gives itself are translated; what a person wrote stays. */
const originWords = (origin: string, language: Language): string =>
  origin === DEFAULT_ORIGIN || origin === ROW_ORIGIN ? ORIGINS[language][origin] : origin;
const ORIGINS: InLanguages<Readonly<Record<typeof DEFAULT_ORIGIN | typeof ROW_ORIGIN, string>>> = {
  en: { [DEFAULT_ORIGIN]: 'default, no standard', [ROW_ORIGIN]: 'this row' },
  de: { [DEFAULT_ORIGIN]: 'Vorgabe, keine Norm', [ROW_ORIGIN]: 'diese Zeile' },
  fr: { [DEFAULT_ORIGIN]: 'valeur par défaut, sans norme', [ROW_ORIGIN]: 'cette ligne' },
};

const valueText = (bound: EnvelopeBound, language: Language): string => {
  const texts = TEXTS[language];
  if (bound.verdict === undefined) return '';
  if (bound.value === undefined)
    return bound.valueMissing.length > 0 ? ` ${texts.valueNotKnown(fieldsWords(bound.valueMissing, language))}` : '';
  const value = bound.kind === 'output' ? bound.value : numberWords(bound.value, bound.unit, language);
  const slack = bound.kind === 'number' && bound.slack ? `, ${slackText(bound.slack, language)}` : '';
  return ` ${texts.value(value, bound.verdict)}${slack}.`;
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
