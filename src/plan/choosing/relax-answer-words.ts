import type { InLanguages, Language } from '../../core/language';
import { inWords, withUnit } from '../numbers-in-words';
import type { Part } from './candidate';
import { combinationWords, localised, marginWords, massWords } from './candidate-words';
import type { Answer } from './relax-answers';
import { shortFigure } from './relax-numbers';
import type { Split } from './split';

interface Words {
  readonly part: Readonly<Record<Part, string>>;
  readonly otherPart: (margin: string, part: string, fit: string) => string;
  readonly otherPoint: (needed: string, now: string, fit: string) => string;
  readonly correction: (half: string, tolerance: string, fit: string) => string;
  readonly withoutContact: (lightest: string, allowed: string | undefined) => string;
  readonly ranges: (parts: RangesText) => string;
  readonly line: string;
  readonly upTo: (edge: string) => string;
}
interface RangesText {
  readonly sensors: 1 | 2;
  readonly overlap: string;
  readonly low: string;
  readonly high: string;
  readonly top: string;
  readonly from: string;
  readonly narrower: readonly string[];
  readonly mass: string;
  readonly ratio: string;
  readonly limit: string;
  readonly stays: boolean;
}
const also = (narrower: readonly string[]): string => (narrower.length === 0 ? '' : `, ${narrower.join(', ')}`);

const WORDS: InLanguages<Words> = {
  en: {
    part: { mount: 'mount', cable: 'cable', input: 'input' },
    otherPart: (margin, part, fit) => `${margin} of margin with another ${part}: ${fit} would do.`,
    otherPoint: (needed, now, fit) =>
      `${needed} of local mass in place of ${now}, at another point: ${fit} would do there.`,
    correction: (half, tolerance, fit) =>
      `${half} of thermal deviation would remain, tolerance ${tolerance}, if the sensor’s temperature is logged and its curve applied: ${fit} would do.`,
    withoutContact: (lightest, allowed) =>
      `${lightest} is the lightest that stock can add, ${allowed === undefined ? 'mount and cable alone are too heavy' : `at most ${allowed} of sensor may be added`}: a sensor without contact would help. Where that is a laser, its class and the site’s rules come first.`,
    ranges: (r) =>
      `${r.overlap} of overlap ${r.sensors === 1 ? 'in two runs with one sensor' : 'with two sensors'}: ${r.low} up to ${r.top} peak${also(r.narrower)}; ${r.high} from ${r.from} r.m.s. up. ${r.sensors === 1 ? 'It adds' : 'Together they add'} ${r.mass}, mass ratio ${r.ratio} in the low run’s band, limit ${r.limit}${r.stays ? '.' : '; take the low one off for the high run.'}`,
    line: 'read in one 1 Hz line',
    upTo: (edge) => `only up to ${edge}`,
  },
  de: {
    part: { mount: 'Ankopplung', cable: 'Kabel', input: 'Eingang' },
    otherPart: (margin, part, fit) => `${margin} Reserve mit anderer Wahl (${part}): ${fit} würde genügen.`,
    otherPoint: (needed, now, fit) =>
      `${needed} örtliche Masse statt ${now}, an einem anderen Punkt: dort würde ${fit} genügen.`,
    correction: (half, tolerance, fit) =>
      `${half} Temperaturabweichung blieben bei zulässigen ${tolerance}, wenn die Aufnehmertemperatur aufgezeichnet und seine Kurve angewendet wird: ${fit} würde genügen.`,
    withoutContact: (lightest, allowed) =>
      `${lightest} ist das Leichteste, was der Bestand hergibt; ${allowed === undefined ? 'Ankopplung und Kabel allein sind zu schwer' : `höchstens ${allowed} Aufnehmer sind zulässig`}: berührungsloses Messen würde helfen. Bei einem Laser gehen seine Klasse und die Regeln am Ort vor.`,
    ranges: (r) =>
      `${r.overlap} Überlappung ${r.sensors === 1 ? 'in zwei Durchgängen mit einem Aufnehmer' : 'mit zwei Aufnehmern'}: ${r.low} bis ${r.top} Spitze${also(r.narrower)}; ${r.high} ab ${r.from} effektiv. ${r.sensors === 1 ? 'Zusatzmasse' : 'Zusatzmasse beider'} ${r.mass}, Massenverhältnis ${r.ratio} im Band des unteren Durchgangs, Grenze ${r.limit}${r.stays ? '.' : '; den unteren für den oberen Durchgang abnehmen.'}`,
    line: 'in einer 1-Hz-Linie gelesen',
    upTo: (edge) => `nur bis ${edge}`,
  },
  fr: {
    part: { mount: 'fixation', cable: 'câble', input: 'entrée' },
    otherPart: (margin, part, fit) => `${margin} de marge en changeant un élément (${part}) : ${fit} conviendrait.`,
    otherPoint: (needed, now, fit) =>
      `${needed} de masse locale au lieu de ${now}, en un autre point : ${fit} y conviendrait.`,
    correction: (half, tolerance, fit) =>
      `${half} d’écart thermique resterait, pour ${tolerance} admis, si la température du capteur est enregistrée et sa courbe appliquée : ${fit} conviendrait.`,
    withoutContact: (lightest, allowed) =>
      `${lightest} est le plus léger que le stock permette ; ${allowed === undefined ? 'fixation et câble seuls sont trop lourds' : `au plus ${allowed} de capteur sont admis`} : une mesure sans contact aiderait. S’il s’agit d’un laser, sa classe et les règles du site passent d’abord.`,
    ranges: (r) =>
      `${r.overlap} de recouvrement ${r.sensors === 1 ? 'en deux passages avec un seul capteur' : 'avec deux capteurs'} : ${r.low} jusqu’à ${r.top} crête${also(r.narrower)} ; ${r.high} à partir de ${r.from} efficace. Masse ajoutée ${r.mass}, rapport de masses ${r.ratio} dans la bande du passage bas, limite ${r.limit}${r.stays ? '.' : ' ; retirer le capteur bas pour le passage haut.'}`,
    line: 'lu dans une raie de 1 Hz',
    upTo: (edge) => `seulement jusqu’à ${edge}`,
  },
};

/** Number first, then what it takes. */
export const answerSentence = (answer: Answer, language: Language = 'en'): string => {
  const words = WORDS[language];
  const tolerance = (fraction: number) => `±${localised(withUnit(fraction, '%'), language)}`;
  switch (answer.kind) {
    case 'other part':
      return words.otherPart(
        marginWords(answer.fit.margin, language),
        words.part[answer.part],
        combinationWords(answer.fit.combination),
      );
    case 'other point':
      return words.otherPoint(
        massWords(answer.needed, language),
        massWords(answer.localMass, language),
        combinationWords(answer.fit.combination),
      );
    case 'correction':
      return words.correction(
        tolerance(answer.halfBand),
        tolerance(answer.tolerance),
        combinationWords(answer.fit.combination),
      );
    case 'without contact':
      return words.withoutContact(
        massWords(answer.lightest, language),
        answer.allowed > 0 ? massWords(answer.allowed, language) : undefined,
      );
    case 'two runs':
    case 'two sensors':
      return words.ranges(rangesText(answer.split, words, language));
  }
};

const rangesText = (
  { sensors, low, high, overlap, linking, mayStay }: Split,
  words: Words,
  language: Language,
): RangesText => {
  const inLanguage = (text: string) => localised(text, language);
  const edge = inLanguage(shortFigure('band high', low.channel.requirement.bandHigh ?? NaN));
  return {
    sensors,
    overlap: inLanguage(`${overlap.toFixed(1)} dB`),
    low: combinationWords(low.fit.combination),
    high: combinationWords(high.fit.combination),
    top: inLanguage(shortFigure('highest level', low.channel.requirement.levelHigh ?? NaN)),
    from: inLanguage(shortFigure('lowest level', high.channel.requirement.levelLow ?? NaN)),
    narrower: low.narrower.map((kind) => (kind === 'one line' ? words.line : words.upTo(edge))),
    mass: massWords(linking.total, language),
    ratio: inLanguage(inWords(linking.ratio, '1')),
    limit: inLanguage(inWords(linking.limit, '1')),
    stays: mayStay,
  };
};
