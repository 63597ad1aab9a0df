import { LANGUAGES, type Language } from '../../../src/core/language';
import { toSi } from '../../../src/core/units';
import { adviseTechnology } from '../../../src/plan/choosing/technology';
import { CODE_WORDS } from '../../../src/plan/choosing/technology-texts';
import { REASON_CODES } from '../../../src/plan/choosing/technology-types';
import { adviceNotes, technologySentence } from '../../../src/plan/choosing/technology-words';
import { envelopeOf } from '../../../src/plan/choosing/envelope';
import { hasFieldWords } from '../../../src/plan/choosing/envelope-field-words';
import { boundInWords } from '../../../src/plan/choosing/envelope-words';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel } from '../../../src/plan/model';
import { SITUATIONS } from '../../fixtures/technology-situations';
import { randomChannel, seeded } from './random-channels';
import { channelOf } from './situation-channel';

const panel: Channel = {
  id: 'skin',
  requirement: {
    levelLow: toSi(0.0008, 'g'),
    levelHigh: toSi(65, 'g'),
    bandLow: 5,
    bandHigh: 2000,
    temperatureLow: 15,
    temperatureHigh: 135,
    detector: { kind: 'band' },
    localMass: [{ model: 'value', mass: toSi(20.69, 'gram') }],
  },
  mount: { name: 'glue', mass: toSi(0.3, 'gram') },
  cable: { name: 'thin', mass: toSi(0.5, 'gram') },
  sensor: { name: 'shear', output: 'IEPE', mass: toSi(4.8, 'gram'), fullScale: toSi(50, 'g') },
};
const said = (...given: Parameters<typeof boundInWords>): string => {
  const { amount, what, why, now } = boundInWords(...given);
  return [amount, what, why, now].filter((part) => part !== undefined).join(' | ');
};
const sentence = (key: string, language: Language, channel = panel) =>
  said(
    envelopeOf(channel, DEFAULT_LIMITS).bounds.find((bound) => bound.key === key)!,
    language,
  );

describe('a bound in words', () => {
  it.each([
    [
      'en',
      '≤ 1.27 gram | sensor mass | WARN ≤ 3.34 gram; asked by Local mass, Purpose, Mount mass (mount), Effective mass (cable); limit: mass ratio 0.1 (default, no standard). | This sensor: 4.8 gram, a factor 3.78 too far.',
    ],
    [
      'de',
      '≤ 1,27 gram | Aufnehmermasse | WARN ≤ 3,34 gram; gefordert durch örtliche Masse, Messzweck, Masse der Ankopplung, wirksame Kabelmasse; Grenze: Massenverhältnis 0,1 (Vorgabe, keine Norm). | Dieser Aufnehmer: 4,8 gram, verfehlt um den Faktor 3,78.',
    ],
    [
      'fr',
      '≤ 1,27 gram | masse du capteur | WARN ≤ 3,34 gram ; demandé par masse locale, but de la mesure, masse de la fixation, masse effective du câble ; limite : rapport de masses 0,1 (valeur par défaut, sans norme). | Ce capteur : 4,8 gram, dépassement d’un facteur 3,78.',
    ],
  ] as const)('begins with the number and ends with the sensor (%s)', (language, expected) => {
    // By hand: 0.1 × 20.69 − 0.8 = 1.269 gram, 0.2 × 20.69 − 0.8 = 3.338 gram, 4.8/1.269 = 3.78.
    expect(sentence('sensor mass', language)).toBe(expected);
  });

  it('names what is not known', () => {
    expect(sentence('mounted resonance', 'en')).toContain('This sensor: not known, for want of');
    const blank: Channel = { ...panel, requirement: { ...panel.requirement, levelHigh: undefined } };
    expect(sentence('full scale', 'de', blank)).toBe('Nicht bekannt: Messbereichsendwert; es fehlt: größter Pegel.');
  });

  it('says that nothing with contact fits', () => {
    const film: Channel = {
      ...panel,
      requirement: { ...panel.requirement, localMass: [{ model: 'value', mass: 0.001 }] },
    };
    expect(sentence('sensor mass', 'en', film)).toMatch(/^≤ −0\.7 gram \| sensor mass .*without contact/);
  });
});

const random = seeded(7);
const bounds = Array.from({ length: 40 }, () => randomChannel(random)).flatMap((channel) => [
  ...envelopeOf(channel, DEFAULT_LIMITS).bounds,
  ...envelopeOf({ ...channel, sensor: undefined, mount: undefined }, DEFAULT_LIMITS, []).bounds,
]);
const advices = SITUATIONS.map((situation) => adviseTechnology(channelOf(situation), DEFAULT_LIMITS, situation.circumstances)); // prettier-ignore
const reasons = advices.flatMap(({ elements, outputs }) =>
  [...elements, ...outputs].flatMap((advised) => advised.reasons),
);

/** A sentence that is finished: no hole, no number that is none, no doubled mark. */
const FAULTS = /undefined|NaN|Infinity|\[object|\(\)| {2}|\.\.| ,|;\.|: \./;

describe.each(LANGUAGES)('every sentence in %s', (language) => {
  it('is finished', () => {
    const all = [
      ...bounds.map((bound) => said(bound, language)),
      ...reasons.map((reason) => technologySentence(reason, language)),
      ...advices.flatMap((advice) => adviceNotes(advice, language)),
    ];
    expect(all.length).toBeGreaterThan(1000);
    expect(all.filter((text) => FAULTS.test(text) || !text.endsWith('.'))).toEqual([]);
  });

  it('never promises safety', () => {
    const all = [...reasons.map((reason) => technologySentence(reason, language)), ...bounds.map((b) => said(b, language))]; // prettier-ignore
    expect(all.filter((text) => /\bsafe|sicher|\bsûr|sécuri/i.test(text))).toEqual([]);
  });

  it('writes decimals in its own way', () => {
    const numbers = reasons.map((reason) => technologySentence(reason, language)).join(' ');
    expect(/\d\.\d/.test(numbers)).toBe(language === 'en');
    expect(/\d,\d/.test(numbers)).toBe(language !== 'en');
  });
});

describe('words of fields and reasons', () => {
  it.each(['de', 'fr'] as const)('exist in %s for every field that a bound or a reason names', (language) => {
    const fields = [
      ...bounds.flatMap((b) => [...b.causes, ...b.missing, ...b.without, ...b.valueMissing]),
      ...reasons.flatMap(({ causes, relaxation }) => [...causes, ...(relaxation && typeof relaxation.field !== 'string' ? [relaxation.field] : [])]), // prettier-ignore
    ];
    const without = fields.filter((field) => !hasFieldWords(field, language));
    expect([...new Set(without.map(({ table, key }) => `${table}.${key}`))]).toEqual([]);
  });

  it('have each code of a reason met by some situation', () => {
    const met = new Set(reasons.map(({ code }) => code));
    expect(REASON_CODES.filter((code) => !met.has(code))).toEqual(['magnetic field']);
    expect(Object.keys(CODE_WORDS.de)).toEqual([...REASON_CODES]);
  });

  it('tell a thin film to be measured without contact', () => {
    const film = advices[SITUATIONS.findIndex(({ nonContact }) => nonContact)]!;
    expect(adviceNotes(film).join(' ')).toMatch(
      /^Tendencies .*−0\.1 gram of sensor may be added here, below 0\.2 gram/,
    );
  });
});
