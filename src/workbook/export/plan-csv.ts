import type { InLanguages, Language } from '../../core/language';
import { UNITS, type UnitId } from '../../core/units';
import type { ChannelCheck } from '../../plan/check';
import { exactNumber } from '../../plan/exact-number';
import { fieldsOf, type Field } from '../../plan/fields';
import { findingsOf } from '../../plan/findings';
import { channelField, isChannelFieldUnread } from '../../plan/item-fields';
import type { Limits } from '../../plan/limits';
import { reasonText } from '../../plan/sentence';
import { fieldTitle } from '../../plan/words/titles';
import { csvText, type CsvForm } from './csv-text';

interface Words {
  readonly verdict: string;
  readonly reason: string;
  readonly signalToNoise: string;
  readonly headroom: string;
  readonly level: string;
  readonly massRatio: string;
  readonly mass: string;
  readonly thermalLow: string;
  readonly thermalHigh: string;
  readonly thermal: string;
  readonly spanLow: string;
  readonly spanHigh: string;
  readonly frequency: string;
  readonly rms: string;
  readonly peak: string;
  readonly unread: string;
}
const WORDS: InLanguages<Words> = {
  en: {
    verdict: 'Channel verdict',
    reason: 'Reason',
    signalToNoise: 'Signal to noise',
    headroom: 'Headroom',
    level: 'Level check',
    massRatio: 'Mass ratio',
    mass: 'Mass check',
    thermalLow: 'Thermal low',
    thermalHigh: 'Thermal high',
    thermal: 'Thermal check',
    spanLow: 'Span low',
    spanHigh: 'Span high',
    frequency: 'Frequency check',
    rms: 'r.m.s.',
    peak: 'peak',
    unread: '(not readable)',
  },
  de: {
    verdict: 'Urteil zum Kanal',
    reason: 'Grund',
    signalToNoise: 'Rauschabstand',
    headroom: 'Aussteuerreserve',
    level: 'Pegelprüfung',
    massRatio: 'Massenverhältnis',
    mass: 'Massenprüfung',
    thermalLow: 'Temperaturgang unten',
    thermalHigh: 'Temperaturgang oben',
    thermal: 'Temperaturprüfung',
    spanLow: 'Frequenzbereich von',
    spanHigh: 'Frequenzbereich bis',
    frequency: 'Frequenzprüfung',
    rms: 'Effektivwert',
    peak: 'Spitzenwert',
    unread: '(nicht lesbar)',
  },
  fr: {
    verdict: 'Verdict de la voie',
    reason: 'Raison',
    signalToNoise: 'Rapport signal sur bruit',
    headroom: 'Réserve',
    level: 'Contrôle du niveau',
    massRatio: 'Rapport de masse',
    mass: 'Contrôle de la masse',
    thermalLow: 'Écart thermique bas',
    thermalHigh: 'Écart thermique haut',
    thermal: 'Contrôle thermique',
    spanLow: 'Étendue de fréquence de',
    spanHigh: 'Étendue de fréquence à',
    frequency: 'Contrôle de la fréquence',
    rms: 'efficace',
    peak: 'crête',
    unread: '(illisible)',
  },
};

interface Column {
  readonly heading: string;
  readonly cellOf: (check: ChannelCheck) => string | number | null;
}

const headed = (title: string, ...asides: readonly (string | undefined)[]): string =>
  [title, ...asides].filter(Boolean).join(', ');

const typedColumn = (field: Field, words: Words, language: Language): Column => {
  const { key, unit, statistic } = field;
  const label = unit && UNITS[unit].label;
  return {
    heading: headed(fieldTitle('channels', key, language), label, statistic && words[statistic]),
    cellOf: ({ channel }) => {
      const value = channelField(channel, key);
      if (value === undefined) return isChannelFieldUnread(channel, key) ? words.unread : null;
      return typeof value === 'number' ? exactNumber(value, unit ?? '1') : String(value);
    },
  };
};

const resultColumns = (limits: Limits, words: Words, language: Language): readonly Column[] => {
  const number = (title: string, unit: UnitId, of: (check: ChannelCheck) => number | undefined): Column => ({
    heading: headed(title, UNITS[unit].label),
    cellOf: (check) => {
      const si = of(check);
      return si === undefined ? null : exactNumber(si, unit);
    },
  });
  const word = (heading: string, of: (check: ChannelCheck) => string): Column => ({ heading, cellOf: of });
  return [
    word(words.verdict, ({ verdict }) => verdict),
    word(words.reason, (check) => reasonText(findingsOf(check, limits), language)),
    number(words.signalToNoise, 'dB', ({ level }) => level.signalToNoise),
    number(words.headroom, 'dB', ({ level }) => level.headroom),
    word(words.level, ({ level }) => level.verdict),
    number(words.massRatio, '1', ({ mass }) => mass.ratio),
    word(words.mass, ({ mass }) => mass.verdict),
    number(words.thermalLow, '%', ({ thermal }) => thermal.band?.low),
    number(words.thermalHigh, '%', ({ thermal }) => thermal.band?.high),
    word(words.thermal, ({ thermal }) => thermal.verdict),
    number(words.spanLow, 'Hz', ({ frequency }) => frequency.span?.low),
    number(words.spanHigh, 'Hz', ({ frequency }) => frequency.span?.high),
    word(words.frequency, ({ frequency }) => frequency.verdict),
  ];
};

/** The checked channels as a table: what was asked in the documented units, then numbers, verdicts and reasons. */
export const planCsv = (
  checks: readonly ChannelCheck[],
  limits: Limits,
  { language, ...form }: CsvForm & { readonly language: Language },
): string => {
  const words = WORDS[language];
  const isUsed = ({ key }: Field): boolean =>
    checks.some(({ channel }) => channelField(channel, key) !== undefined || isChannelFieldUnread(channel, key));
  const columns = [
    ...fieldsOf('channels')
      .filter(isUsed)
      .map((field) => typedColumn(field, words, language)),
    ...resultColumns(limits, words, language),
  ];
  return csvText(
    [columns.map(({ heading }) => heading), ...checks.map((check) => columns.map(({ cellOf }) => cellOf(check)))],
    form,
  );
};

/** As spreadsheet programs of the language expect it: where the comma marks decimals, a semicolon separates. */
export const usualForm = (language: Language): CsvForm =>
  language === 'en' ? { separator: ',', decimal: '.' } : { separator: ';', decimal: ',' };
