import type { InLanguages, Language } from '../../core/language';
import { VERDICTS } from '../../core/verdict';
import type { Channel } from '../model';
import type { Candidate } from './rank';

/** Places in the list of channels for which a type's best combination is no PASS, in order. */
const notPassing = ({ fits }: Candidate): readonly number[] =>
  fits.flatMap(({ channels, fit }) => (fit.check.verdict === 'PASS' ? [] : channels)).sort((a, b) => a - b);

/** Places of channels for which no type passes. */
export const withoutType = (candidates: readonly Candidate[]): readonly number[] => {
  const [first, ...others] = candidates.map((candidate) => new Set(notPassing(candidate)));
  return [...(first ?? [])].filter((place) => others.every((places) => places.has(place)));
};

interface SeveralWords {
  readonly counts: (counts: string, all: number, named: string) => string;
  readonly more: (count: number) => string;
  readonly worst: (name: string) => string;
  readonly now: (count: number, all: number) => string;
  readonly without: (names: string, count: number) => string;
  readonly mixed: string;
}

const WORDS: InLanguages<SeveralWords> = {
  en: {
    counts: (counts, all, named) => `${counts} of ${all} channels${named && `; no PASS: ${named}`}`,
    more: (count) => `and ${count} more`,
    worst: (name) => `at ${name}, the worst`,
    now: (count, all) => (all === 1 ? 'now in the row' : `now in ${count} of the rows`),
    without: (names, count) =>
      `No type passes for ${names}.${count > 1 ? ' What would help for the first of them:' : ' What would help:'}`,
    mixed:
      'No type passes for all of these channels, yet each of them has one that does: choose for fewer at once, or assign sensors from stock.',
  },
  de: {
    counts: (counts, all, named) => `${counts} von ${all} Kanälen${named && `; ohne PASS: ${named}`}`,
    more: (count) => `und ${count} weitere`,
    worst: (name) => `bei ${name}, dem schlechtesten`,
    now: (count, all) => (all === 1 ? 'jetzt in der Zeile' : `jetzt in ${count} der Zeilen`),
    without: (names, count) =>
      `Kein Typ genügt für ${names}.${count > 1 ? ' Was beim ersten davon hülfe:' : ' Was hülfe:'}`,
    mixed:
      'Kein Typ genügt für alle diese Kanäle, doch jeder hat einen, der genügt: für weniger Kanäle auf einmal wählen oder Aufnehmer aus dem Bestand zuteilen.',
  },
  fr: {
    counts: (counts, all, named) => `${counts} sur ${all} voies${named && ` ; sans PASS : ${named}`}`,
    more: (count) => `et ${count} autres`,
    worst: (name) => `pour ${name}, la plus défavorable`,
    now: (count, all) => (all === 1 ? 'maintenant dans la ligne' : `maintenant dans ${count} des lignes`),
    without: (names, count) =>
      `Aucun type ne convient pour ${names}.${count > 1 ? ' Ce qui aiderait pour la première :' : ' Ce qui aiderait :'}`,
    mixed:
      'Aucun type ne convient pour toutes ces voies, mais chacune en a un : choisir pour moins de voies à la fois, ou attribuer des capteurs du stock.',
  },
};

const MOST_NAMES = 6;
const named = (places: readonly number[], channels: readonly Channel[], language: Language): string => {
  const names = places.slice(0, MOST_NAMES).map((place) => channels[place]!.id);
  const rest = places.length - names.length;
  return `${names.join(', ')}${rest > 0 ? ` ${WORDS[language].more(rest)}` : ''}`;
};

/** "PASS 61, FAIL 4 of 65 channels; no PASS: W001, W014 …", named where others pass; undefined for a single channel. */
export const countsWords = (
  candidate: Candidate,
  channels: readonly Channel[],
  language: Language = 'en',
): string | undefined => {
  if (channels.length < 2) return undefined;
  const { counts } = candidate;
  const found = VERDICTS.filter((verdict) => counts[verdict] > 0).map((verdict) => `${verdict} ${counts[verdict]}`);
  const open = counts.PASS > 0 ? notPassing(candidate) : [];
  return WORDS[language].counts(found.join(', '), channels.length, named(open, channels, language));
};

/** "at W001, the worst": whose parts and margin stand there; undefined for a single channel. */
export const worstWords = (
  { worst }: Candidate,
  channels: readonly Channel[],
  language: Language = 'en',
): string | undefined => (channels.length < 2 ? undefined : WORDS[language].worst(worst.check.channel.id));

/** In how many of the channels' rows the type stands now; undefined for none. */
export const nowWords = (
  { chosenBy }: Candidate,
  channels: readonly Channel[],
  language: Language = 'en',
): string | undefined => (chosenBy === 0 ? undefined : WORDS[language].now(chosenBy, channels.length));

/** What stands above the ways out of several channels, or says that there is no need of any. */
export const openWords = (
  candidates: readonly Candidate[],
  channels: readonly Channel[],
  language: Language = 'en',
): string => {
  const places = withoutType(candidates);
  const words = WORDS[language];
  return places.length === 0 ? words.mixed : words.without(named(places, channels, language), places.length);
};
