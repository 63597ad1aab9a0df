import type { InLanguages, Language } from '../../core/language';
import type { Channel } from '../model';
import type { Assignment, Missing, Term, Unserved } from './assignment';
import { lateWords } from './piece-words';

interface AssignWords {
  readonly sensors: (count: number, name: string) => string;
  readonly inputs: (count: number, mode: string) => string;
  readonly and: string;
  readonly or: string;
  readonly served: (served: number, all: number) => string;
  readonly fewest: (left: number) => string;
  readonly notProvenFewest: string;
  readonly missing: (list: string) => string;
  readonly enough: (list: string) => string;
  readonly notProvenShortage: string;
  readonly optimal: string;
  readonly bestSoFar: (gap: string | undefined) => string;
  readonly status: Readonly<Record<Exclude<Assignment['status'], 'solved'>, string>>;
  readonly nothingFits: (channel: string, nearest: string | undefined) => string;
  readonly notListed: (channel: string, name: string) => string;
  readonly noneLeft: (channel: string) => string;
  readonly stillNamed: (list: string) => string;
  readonly unlimited: string;
  readonly objective: string;
  readonly terms: Readonly<Record<Term['term'], (count: string) => string>>;
  readonly weighed: (what: string, cost: string) => string;
}

const ASSIGN_WORDS: InLanguages<AssignWords> = {
  en: {
    sensors: (count, name) => `${count} more of type “${name}”`,
    inputs: (count, mode) => `${count} more ${mode} input channel${count === 1 ? '' : 's'}`,
    and: ' and ',
    or: ', or ',
    served: (served, all) => `${served} of ${all} channels have a sensor.`,
    fewest: (left) =>
      `${left} cannot be served from this stock together with the others; that no choice leaves fewer out is proven.`,
    notProvenFewest: 'Whether fewer could be left out was not proven in the time given.',
    missing: (list) => `The least that is missing: ${list}.`,
    enough: (list) => `Any one of these is enough: ${list}.`,
    notProvenShortage: 'Not every possibility of adding to the stock was tried.',
    optimal: 'This is the cheapest assignment by the weights below; that is proven.',
    bestSoFar: (gap) =>
      gap === undefined
        ? 'This is the best assignment found in the time, with no proof of how good it is.'
        : `This is the best assignment found in the time; a better one costs at most ${gap} less.`,
    status: {
      'time limit': 'Time ran out before any assignment was found. Nothing was assigned.',
      cancelled: 'Stopped. Nothing was assigned.',
      failed: 'The solver gave up. Nothing was assigned.',
    },
    nothingFits: (channel, nearest) =>
      `${channel}: no type in the list is admissible here${nearest ? `; the nearest is ${nearest}` : ''}.`,
    notListed: (channel, name) => `${channel}: is to keep “${name}”, which the sensor list does not have.`,
    noneLeft: (channel) => `${channel}: all admissible sensors or inputs are in use.`,
    stillNamed: (list) => `These got no sensor and keep the one they name, which may be in use elsewhere: ${list}.`,
    unlimited: 'The sensor list has no quantities: every type counts as available without limit.',
    objective: 'What the assignment keeps small, after as many channels as possible have a sensor:',
    terms: {
      warn: (count) => `${count} channels in the WARN zone`,
      incomplete: (count) => `${count} channels that are INCOMPLETE`,
      calibration: (count) => `${count} housings whose calibration is not known to last to the end of the test`,
      mixing: (count) => `${count} types beyond the first in a response group`,
      margin: (count) => `thin margins, ${count} counted from 0 (20 dB or more) to 1 (0 dB) per channel`,
      mass: (count) => `${count} gram of sensors mounted`,
      housing: (count) => `${count} housings mounted`,
      control: (count) => `${count} control channels left out`,
      kept: (count) => `${count} channels left out that were to keep their sensor`,
    },
    weighed: (what, cost) => `${what}: ${cost}`,
  },
  de: {
    sensors: (count, name) => `${count} weitere vom Typ „${name}“`,
    inputs: (count, mode) => `${count} ${count === 1 ? 'weiterer Eingangskanal' : 'weitere Eingangskanäle'} ${mode}`,
    and: ' und ',
    or: ' oder ',
    served: (served, all) => `${served} von ${all} Kanälen haben einen Aufnehmer.`,
    fewest: (left) =>
      `${left} sind aus diesem Bestand nicht zusammen mit den anderen zu bedienen; dass keine Wahl weniger auslässt, ist bewiesen.`,
    notProvenFewest: 'Ob weniger auszulassen wären, wurde in der gegebenen Zeit nicht bewiesen.',
    missing: (list) => `Es fehlen mindestens: ${list}.`,
    enough: (list) => `Eines davon genügt: ${list}.`,
    notProvenShortage: 'Nicht jede Möglichkeit, den Bestand zu ergänzen, wurde versucht.',
    optimal: 'Dies ist nach den Gewichten unten die günstigste Zuordnung; das ist bewiesen.',
    bestSoFar: (gap) =>
      gap === undefined
        ? 'Dies ist die beste in der Zeit gefundene Zuordnung, ohne Beweis, wie gut sie ist.'
        : `Dies ist die beste in der Zeit gefundene Zuordnung; eine bessere kostet höchstens ${gap} weniger.`,
    status: {
      'time limit': 'Die Zeit ist abgelaufen, bevor eine Zuordnung gefunden war. Nichts wurde zugeordnet.',
      cancelled: 'Abgebrochen. Nichts wurde zugeordnet.',
      failed: 'Der Löser hat aufgegeben. Nichts wurde zugeordnet.',
    },
    nothingFits: (channel, nearest) =>
      `${channel}: kein Typ der Liste ist hier zulässig${nearest ? `; am nächsten kommt ${nearest}` : ''}.`,
    notListed: (channel, name) => `${channel}: soll „${name}“ behalten, das die Aufnehmerliste nicht hat.`,
    noneLeft: (channel) => `${channel}: alle zulässigen Aufnehmer oder Eingänge sind vergeben.`,
    stillNamed: (list) =>
      `Diese bekamen keinen Aufnehmer und behalten den genannten, der anderswo vergeben sein kann: ${list}.`,
    unlimited: 'Die Aufnehmerliste nennt keine Stückzahlen: jeder Typ zählt als unbegrenzt vorhanden.',
    objective: 'Was die Zuordnung klein hält, nachdem so viele Kanäle wie möglich einen Aufnehmer haben:',
    terms: {
      warn: (count) => `${count} Kanäle im Bereich WARN`,
      incomplete: (count) => `${count} Kanäle mit INCOMPLETE`,
      calibration: (count) => `${count} Gehäuse, deren Kalibrierung nicht nachweislich bis zum Ende der Prüfung gilt`,
      mixing: (count) => `${count} Typen über den ersten hinaus in einer Antwortgruppe`,
      margin: (count) => `knappe Reserven, je Kanal von 0 (20 dB und mehr) bis 1 (0 dB) gezählt: ${count}`,
      mass: (count) => `${count} Gramm montierte Aufnehmer`,
      housing: (count) => `${count} montierte Gehäuse`,
      control: (count) => `${count} ausgelassene Regelkanäle`,
      kept: (count) => `${count} ausgelassene Kanäle, die ihren Aufnehmer behalten sollten`,
    },
    weighed: (what, cost) => `${what}: ${cost}`,
  },
  fr: {
    sensors: (count, name) => `${count} de plus du type « ${name} »`,
    inputs: (count, mode) => `${count} voie${count === 1 ? '' : 's'} d’entrée ${mode} de plus`,
    and: ' et ',
    or: ', ou ',
    served: (served, all) => `${served} voies sur ${all} ont un capteur.`,
    fewest: (left) =>
      `${left} ne peuvent pas être servies par ce stock en même temps que les autres ; il est prouvé qu’aucun choix n’en laisse moins.`,
    notProvenFewest: 'Le temps accordé n’a pas suffi à prouver qu’on ne peut pas en laisser moins.',
    missing: (list) => `Il manque au minimum : ${list}.`,
    enough: (list) => `Un seul de ces ajouts suffit : ${list}.`,
    notProvenShortage: 'Toutes les façons de compléter le stock n’ont pas été essayées.',
    optimal: 'C’est l’affectation la moins coûteuse selon les poids ci-dessous ; c’est prouvé.',
    bestSoFar: (gap) =>
      gap === undefined
        ? 'C’est la meilleure affectation trouvée dans le temps imparti, sans preuve de sa qualité.'
        : `C’est la meilleure affectation trouvée dans le temps imparti ; une meilleure coûterait au plus ${gap} de moins.`,
    status: {
      'time limit': 'Le temps s’est écoulé avant qu’une affectation soit trouvée. Rien n’a été affecté.',
      cancelled: 'Arrêté. Rien n’a été affecté.',
      failed: 'Le solveur a abandonné. Rien n’a été affecté.',
    },
    nothingFits: (channel, nearest) =>
      `${channel} : aucun type de la liste n’est admissible ici${nearest ? ` ; le plus proche est ${nearest}` : ''}.`,
    notListed: (channel, name) => `${channel} : doit garder « ${name} », que la liste de capteurs n’a pas.`,
    noneLeft: (channel) => `${channel} : tous les capteurs ou entrées admissibles sont pris.`,
    stillNamed: (list) =>
      `Celles-ci n’ont pas reçu de capteur et gardent celui qu’elles nomment, qui peut être pris ailleurs : ${list}.`,
    unlimited: 'La liste de capteurs n’indique aucune quantité : chaque type compte comme disponible sans limite.',
    objective: 'Ce que l’affectation garde petit, une fois servies autant de voies que possible :',
    terms: {
      warn: (count) => `${count} voies dans la zone WARN`,
      incomplete: (count) => `${count} voies INCOMPLETE`,
      calibration: (count) => `${count} boîtiers dont l’étalonnage n’est pas assuré jusqu’à la fin de l’essai`,
      mixing: (count) => `${count} types au-delà du premier dans un groupe de réponse`,
      margin: (count) => `marges faibles, comptées par voie de 0 (20 dB ou plus) à 1 (0 dB) : ${count}`,
      mass: (count) => `${count} grammes de capteurs montés`,
      housing: (count) => `${count} boîtiers montés`,
      control: (count) => `${count} voies de pilotage laissées de côté`,
      kept: (count) => `${count} voies laissées de côté qui devaient garder leur capteur`,
    },
    weighed: (what, cost) => `${what} : ${cost}`,
  },
};

const numeral = (value: number, decimals: number, language: Language): string => {
  const text = String(Number(value.toFixed(decimals)));
  return language === 'en' ? text : text.replace('.', ',');
};

export const missingWords = (missing: Missing, language: Language = 'en'): string => {
  const words = ASSIGN_WORDS[language];
  return missing.kind === 'sensor'
    ? words.sensors(missing.count, missing.sensor.name)
    : words.inputs(missing.count, missing.mode);
};

/** What is missing, in one sentence or two; empty when nothing is. */
export const shortageWords = (assignment: Assignment, language: Language = 'en'): readonly string[] => {
  const { shortage } = assignment;
  if (!shortage) return [];
  const words = ASSIGN_WORDS[language];
  const list = (all: readonly Missing[], by: string) => all.map((one) => missingWords(one, language)).join(by);
  return [
    ...(shortage.fewest.length > 0 ? [words.missing(list(shortage.fewest, words.and))] : []),
    ...(shortage.alone.length > 1 ? [words.enough(list(shortage.alone, words.or))] : []),
    ...(shortage.isProven ? [] : [words.notProvenShortage]),
    ...lateWords(assignment, language),
  ];
};

export const unservedWords = (
  { why, nearest, channel }: Unserved,
  channels: readonly Channel[],
  language: Language = 'en',
) => {
  const words = ASSIGN_WORDS[language];
  const { id, named } = channels[channel]!;
  if (why === 'not listed') return words.notListed(id, named?.sensor ?? '');
  if (why === 'stock') return words.noneLeft(id);
  return words.nothingFits(id, nearest && `${nearest.sensor.name} (${nearest.verdict})`);
};

/** How many are served, how sure that is, and what limits it. */
export const outcomeWords = (assignment: Assignment, language: Language = 'en'): readonly string[] => {
  const words = ASSIGN_WORDS[language];
  const { status, channels, assigned, unserved, isFewest, isOptimal, isUnlimited, gap } = assignment;
  if (status !== 'solved') return [words.status[status]];
  const short = unserved.filter(({ why }) => why === 'stock').length;
  return [
    words.served(assigned.length, channels.length),
    ...(short > 0 ? [isFewest ? words.fewest(short) : words.notProvenFewest] : []),
    isOptimal
      ? words.optimal
      : words.bestSoFar(gap === undefined ? undefined : `${numeral(Math.ceil(1e4 * gap) / 100, 2, language)} %`),
    ...(isUnlimited ? [words.unlimited] : []),
  ];
};

/** Channels that got none but still name a sensor; empty when there are none. */
export const stillNamedWords = ({ unserved, channels }: Assignment, language: Language = 'en'): readonly string[] => {
  const ids = unserved.flatMap(({ channel }) => (channels[channel]!.named?.sensor === undefined ? [] : [channels[channel]!.id])); // prettier-ignore
  return ids.length === 0 ? [] : [ASSIGN_WORDS[language].stillNamed(ids.join(', '))];
};

/** The cost and its parts in words, each with what it comes to. */
export const objectiveWords = ({ terms }: Assignment, language: Language = 'en'): readonly string[] => {
  const words = ASSIGN_WORDS[language];
  const line = ({ term, count, cost }: Term) =>
    words.weighed(words.terms[term](numeral(count, 2, language)), numeral(cost, 2, language));
  return terms.length === 0 ? [] : [words.objective, ...terms.map(line)];
};
