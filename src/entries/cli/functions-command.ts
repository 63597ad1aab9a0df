import { LANGUAGES, languageOf, type InLanguages } from '../../core/language';
import type { AnyFunction, ArgSpec, Family, ResultSpec } from '../../functions/define';
import { argumentHint, exampleFormula, resultUnitOf, signatureOf } from '../../functions/describe';
import { FUNCTIONS, NAMESPACE } from '../../functions/index';
import { loadWording } from '../../functions/words/load';
import type { Wording } from '../../functions/words/wording';
import { STATUS, usageProblem } from './status';
import { Pen, type Io } from './terminal';
import { hanging } from './wrap';

interface ListWords {
  readonly gives: string;
  readonly families: Readonly<Record<Family, string>>;
}
const WORDS: InLanguages<ListWords> = {
  en: {
    gives: 'Gives',
    families: {
      'level and dynamic range': 'Level and dynamic range',
      'mass loading': 'Mass loading',
      thermal: 'Thermal',
      'frequency span': 'Frequency span',
      trust: 'Trust',
      verdict: 'Verdict',
      choosing: 'Choosing',
      'text and units': 'Text and units',
    },
  },
  de: {
    gives: 'Ergibt',
    families: {
      'level and dynamic range': 'Pegel und Dynamikbereich',
      'mass loading': 'Massenbelastung',
      thermal: 'Temperatur',
      'frequency span': 'Frequenzbereich',
      trust: 'Vertrauen in die Messung',
      verdict: 'Urteil',
      choosing: 'Auswahl',
      'text and units': 'Text und Einheiten',
    },
  },
  fr: {
    gives: 'Donne',
    families: {
      'level and dynamic range': 'Niveau et dynamique',
      'mass loading': 'Charge massique',
      thermal: 'Température',
      'frequency span': 'Plage de fréquences',
      trust: 'Confiance dans la mesure',
      verdict: 'Verdict',
      choosing: 'Choix',
      'text and units': 'Texte et unités',
    },
  },
};

const fullName = (fn: AnyFunction): string => `${NAMESPACE}.${fn.name}`;

const resultIn = (result: ResultSpec, { say }: Wording): ResultSpec =>
  result.kind === 'row'
    ? { ...result, columns: result.columns.map((column) => ({ ...column, text: say(column.text) })) }
    : { ...result, text: say(result.text) };

const everything = (fn: AnyFunction, wording: Wording) => ({
  ...fn,
  name: fullName(fn),
  summary: wording.say(fn.summary),
  signature: `${fullName(fn)}(${signatureOf(fn)})`,
  args: Object.entries(fn.args as Record<string, ArgSpec>).map(([name, spec]) => ({
    name,
    ...spec,
    text: wording.say(spec.text),
    hint: argumentHint(spec, wording),
  })),
  result: resultIn(fn.result, wording),
  resultUnit: resultUnitOf(fn, wording.language),
  examples: fn.examples.map((example) => ({ ...example, formula: `=${exampleFormula(fullName(fn), example)}` })),
});

const wordingFor = (tag: string): Promise<Wording> => {
  const language = languageOf(tag);
  if (language === 'en' && !/^en\b/i.test(tag))
    throw usageProblem(`functions: language "${tag}" is not spoken; expected ${LANGUAGES.join(', ')}.`);
  return loadWording(language);
};

/** The catalogue: name, arguments, what it gives. */
export const functionsCommand = async (json: boolean, io: Io, tag = 'en'): Promise<number> => {
  const wording = await wordingFor(tag);
  if (json) {
    io.out(
      `${JSON.stringify(
        FUNCTIONS.map((fn) => everything(fn, wording)),
        null,
        1,
      )}\n`,
    );
    return STATUS.good;
  }
  const pen = new Pen(io.colour);
  const { gives, families } = WORDS[wording.language];
  for (const family of new Set(FUNCTIONS.map((fn) => fn.family))) {
    io.out(`${pen.strong(families[family])}\n`);
    for (const fn of FUNCTIONS.filter((other) => other.family === family)) {
      const result = `${gives} ${resultUnitOf(fn, wording.language)}.`;
      io.out(`${hanging('  ', `${fullName(fn)}(${signatureOf(fn)})`, io.columns)}\n`);
      io.out(`${hanging('      ', `${wording.say(fn.summary)} ${result}`, io.columns)}\n`);
    }
    io.out('\n');
  }
  return STATUS.good;
};
