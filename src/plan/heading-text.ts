import { readQuantity } from '../core/text/quantity';
import { UNITS, type UnitId } from '../core/units';
import type { Statistic } from '../core/issue';

/** A heading taken apart. */
export interface HeadingText {
  /** Folded words outside brackets, without unit and statistic. */
  readonly words: readonly string[];
  /** Folded words inside brackets. */
  readonly asides: readonly string[];
  /** As written, in the spelling that the text reader knows. */
  readonly unitText?: string;
  readonly statistic?: Statistic;
}

/** Lower case without accents: what two spellings of one word have in common. A dot behind a word marks an abbreviation. */
export const foldWords = (text: string): string[] =>
  text
    .replace(/([a-zà-ÿ])([A-ZÀ-Þ])/g, '$1 $2')
    .replace(/[Δ∆]/g, ' delta ')
    .replace(/ß/g, 'ss')
    .replace(/œ/gi, 'oe')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^a-z0-9.#]+/)
    .map((word) => word.replace(/^\.+/, ''))
    .filter((word) => word !== '');

/** Units of headings that the text reader does not know, in its own spelling. */
const RESPELLED: Readonly<Record<string, string>> = {
  gramm: 'g',
  gramme: 'g',
  grammes: 'g',
  prozent: '%',
  's/s': 'Hz',
  'ks/s': 'kHz',
  'sa/s': 'Hz',
  'ksa/s': 'kHz',
  ksps: 'kHz',
  'samples/s': 'Hz',
  vdc: 'V',
  vac: 'V',
};
/** "min" is the smallest, never minutes; none of our fields is kept in minutes. */
const NEVER_UNITS = new Set(['min', 'max', 'to', 'in', 'h', 'd']);
/** The single letters that may follow a heading without brackets or a slash. */
const BARE_LETTERS = new Set(['g', 'V', 'N', 'C', 'F', 'K', 's']);

const known = new Map<string, boolean>();
const reads = (spelling: string, unit: UnitId): boolean => {
  const key = `${spelling}\n${unit}`;
  let answer = known.get(key);
  if (answer === undefined) {
    const reading = readQuantity(`1 ${spelling}`, unit);
    answer = reading.ok && reading.value.unitText !== undefined && reading.value.bound === undefined;
    if (known.size > 20_000) known.clear();
    known.set(key, answer);
  }
  return answer;
};

const ONE_PER_QUANTITY = (Object.keys(UNITS) as UnitId[]).filter(
  (id, index, all) => id !== '1' && all.findIndex((other) => UNITS[other].quantity === UNITS[id].quantity) === index,
);
/** Words of six letters and more are no units, apart from the respelled ones; this keeps long texts cheap. */
const isUnit = (spelling: string): boolean =>
  spelling.length <= 20 &&
  /^[^\d.,+-]*[\p{L}%°]/u.test(spelling) &&
  !spelling
    .toLowerCase()
    .split(/\s+/)
    .some((word) => NEVER_UNITS.has(word)) &&
  (!/[a-zà-ÿ]{6,}/i.test(spelling) || spelling.toLowerCase() in RESPELLED) &&
  ONE_PER_QUANTITY.some((unit) => reads(spelling, unit));

/** Whether a unit as written can be meant where values are kept in `unit`: "g" fits an acceleration and a mass. */
export const unitFits = (unitText: string, unit: UnitId): boolean => reads(unitText, unit);

/** The documented unit that a heading names, when it is one and of the quantity asked for. */
export const unitIdOf = (unitText: string, unit: UnitId): UnitId | undefined => {
  if (!reads(unitText, unit)) return undefined;
  const one = readQuantity(`1 ${unitText}`, unit);
  const two = readQuantity(`2 ${unitText}`, unit);
  if (!one.ok || !two.ok) return undefined;
  const slope = two.value.si - one.value.si;
  const same = (id: UnitId) =>
    UNITS[id].quantity === UNITS[unit].quantity &&
    Math.abs(UNITS[id].toSi / slope - 1) < 1e-9 &&
    Math.abs(one.value.si - slope) < 1e-9 * slope;
  return [unit, ...(Object.keys(UNITS) as UnitId[])].find(same);
};

const STATISTICS: readonly (readonly [RegExp, Statistic])[] = [
  [/^(pk|peak|p)([- ]?to[- ]?|-)(pk|peak|p)$|^pkpk$|^pp$|^ss$/, 'peak-to-peak'],
  [/^r\.?m\.?s\.?$|^eff?\.?$|^effektiv$|^efficace$|^eficaz$|^efficace$|^effektivwert$/, 'rms'],
  [/^pk\.?$|^peak$|^0-p(k|eak)?$|^op$|^spitze$|^sp\.?$|^spitzenwert$|^crete$|^pico$|^pic$|^picco$|^max peak$/, 'peak'],
];
export const statisticOf = (text: string): Statistic | undefined => {
  const folded = text.normalize('NFKD').replace(/\p{M}/gu, '').trim().toLowerCase();
  return STATISTICS.find(([pattern]) => pattern.test(folded))?.[1];
};

/** "g pk", "grms", "[m/s²]", "in Hz", "Hz: µg/√Hz": a unit, a statistic or both, and nothing else. */
const readUnit = (written: string): { unitText?: string; statistic?: Statistic } | undefined => {
  const text = written
    .replace(/^[\s/,;:([{]+|[\s\])},;:]+$/g, (edge) => (/[)]/.test(edge) && written.includes('/(') ? edge.trim() : ''))
    .replace(/^in\s+/i, '')
    .replace(/^±\s*/, '')
    .trim();
  if (text === '') return undefined;
  const alone = statisticOf(text);
  if (alone) return { statistic: alone };
  const parts =
    /^(.*?)[\s,_]*(?:(?<=\s)(?:d[ei]|als) )?(r\.?m\.?s\.?|(?<=\s)ef\.?|(?<=\s)sp\.?|eff\.?|pk-?pk|p-p|peak[- ]to[- ]peak|pk\.?|peak|spitze|0-p|crête|pico|picco|pic|valeur crête|effektiv|efficace|eficaz)$/i.exec(
      text,
    );
  const statistic = parts?.[2] === undefined ? undefined : statisticOf(parts[2]);
  const inner = parts?.[1] && statistic ? readUnit(parts[1]) : undefined;
  if (inner?.unitText !== undefined) return { unitText: inner.unitText, statistic };
  const spelled = RESPELLED[text.toLowerCase()];
  if (isUnit(text)) return { unitText: text };
  if (spelled !== undefined && isUnit(spelled)) return { unitText: spelled };
  const pair = text.split(/\s*:\s*/);
  if (pair.length === 2 && isUnit(pair[0] ?? '') && isUnit(pair[1] ?? '')) return { unitText: pair[1] };
  return undefined;
};

/** A unit, a statistic or both and nothing else: what stands in a row of units. */
export const isUnitText = (text: string): boolean => readUnit(text) !== undefined;

/** "S/N" and "S.-Nr." are a serial number and no ratio of seconds and newtons; a level would say dB. */
const SERIAL = /(?<![\p{L}\d])S(?:\s?\/\s?N|\.?-\s?Nr)(?![\p{L}\d])\.?(?!.*\b(?:dB|ratio|level)\b)/giu;

const BRACKETS = /\[([^\]]*)\]|\(((?:[^()]|\([^()]*\))*)\)/g;

const splitTrailingUnit = (text: string): [string, ReturnType<typeof readUnit>] => {
  const pieces = text.split(/\s+/);
  for (let count = Math.min(3, pieces.length - 1); count >= 1; count--) {
    const written = pieces.slice(-count).join(' ');
    if (/^[a-z]$/i.test(written) && !BARE_LETTERS.has(written)) continue;
    const tail = readUnit(written);
    if (tail?.unitText !== undefined)
      return [
        pieces
          .slice(0, -count)
          .join(' ')
          .replace(/[\s/,;:]+$|\sin$/i, ''),
        tail,
      ];
  }
  const last = pieces.at(-1) ?? '';
  // A slash inside brackets belongs to the unit in them.
  const slash = /^[[(]/.test(last) ? -1 : last.search(/[/,]/);
  const tail = slash > 0 && !isUnit(last) ? readUnit(last.slice(slash + 1)) : undefined;
  return tail?.unitText === undefined
    ? [text, undefined]
    : [[...pieces.slice(0, -1), last.slice(0, slash)].join(' '), tail];
};

const readBefore = new Map<string, HeadingText>();
/** Takes a heading such as "a_hi (g pk)", "fmax / Hz" or "Mass [g]" apart. */
export const readHeading = (heading: string): HeadingText => {
  let read = readBefore.get(heading);
  if (!read) {
    if (readBefore.size > 5_000) readBefore.clear();
    readBefore.set(heading, (read = takeApart(heading)));
  }
  return read;
};

const takeApart = (heading: string): HeadingText => {
  let unitText: string | undefined;
  let statistic: Statistic | undefined;
  const take = (found: ReturnType<typeof readUnit>): boolean => {
    unitText ??= found?.unitText;
    statistic ??= found?.statistic;
    return found !== undefined;
  };
  const flat = heading
    .slice(0, 300)
    .replace(/_per_/gi, '/')
    .replace(/[_\s]+/g, ' ')
    .replace(SERIAL, 'SN')
    .trim();
  let [text, tail] = splitTrailingUnit(flat);
  take(tail);
  const asides: string[] = [];
  text = text.replace(BRACKETS, (_, square: string | undefined, round: string | undefined) => {
    const inner = square ?? round ?? '';
    if (!take(readUnit(inner))) asides.push(...foldWords(inner));
    return ' ';
  });
  if (unitText === undefined) {
    [text, tail] = splitTrailingUnit(text.trim());
    take(tail);
  }
  const words = foldWords(text.replace(/r\.m\.s\.?/gi, 'rms').replace(/peak[- ]to[- ]peak|pk-pk|p-p/gi, 'pkpk'));
  for (const word of words) statistic ??= statisticOf(word);
  return { words, asides, unitText, statistic };
};
