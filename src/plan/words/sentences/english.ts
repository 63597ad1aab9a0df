import { capital } from '../../../core/language';
import type { Headline } from '../../finding';
import { missingLabel } from '../../missing';
import type { Sentences } from '../../sentence';
import { fieldTitle } from '../titles';
import { ENGLISH_TOGETHER } from './across-english';
import { numbersIn } from './numbers';
import { because, from } from './parts';

const { acceleration, decibelsAgainst, inWords, quantityAgainst, ratioAgainst, signed, withUnit } = numbersIn('en');

const flatness = ({ tolerance, origin }: { readonly tolerance?: number; readonly origin?: string }): string =>
  tolerance === undefined ? '' : ` at ±${inWords(tolerance, '%')} %${from(origin)}`;

const CEILING_HELP = {
  'full scale': 'the sensor’s full scale',
  'input range': 'the input range',
  'bias swing': 'the bias swing of the sensor’s electronics',
  'amplifier output': 'the charge amplifier’s output',
} as const;
const NOISE_HELP = {
  sensor: 'the sensor makes most of it, a quieter sensor or a narrower detector would help',
  input: 'the input makes most of it, a smaller range or a more sensitive sensor would help',
} as const;
const LOW_HELP = {
  sensor: 'the sensor’s own low limit sets it',
  'charge amplifier': 'the charge amplifier’s time constant sets it, a longer one would help',
  'AC coupling': 'AC coupling sets it, a lower corner or DC coupling would help',
} as const;
const HIGH_HELP = {
  response: 'the mounted resonance sets it, a stiffer mount or a higher resonance would help',
  analyser: 'the analyser sets it',
  'cable drive': 'the cable’s capacitance sets it, more supply current or a shorter cable would help',
  'data sheet': 'the data sheet sets it',
} as const;
const INPUT_FOR = {
  IEPE: 'an IEPE',
  charge: 'a charge',
  DC: 'a voltage',
  voltage: 'a voltage',
  bridge: 'a bridge',
} as const;
const HEADLINE_HELP: Record<Headline, string> = {
  level: 'the numbers given do not say why; does the sensor’s output fit the input?',
  mass: 'the numbers given do not say why',
  thermal: 'a temperature lies outside an operating limit, or the band is not known',
  frequency: 'the numbers given do not say why',
};

export const ENGLISH: Sentences = {
  ...ENGLISH_TOGETHER,
  'added masses': (f) => {
    const what = `${f.housings} sensors together at ${f.place}`;
    if (f.number === undefined) return `${what}: not known how much they load it, a mass is missing.`;
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const masses =
      f.total === undefined || f.localMass === undefined
        ? undefined
        : `${withUnit(f.total, 'gram')} on ${withUnit(f.localMass, 'gram')}, at most ${withUnit(f.limit * f.localMass, 'gram')} in all would stay within`;
    const least = f.isBound ? 'at least ' : '';
    return `Mass ratio ${least}${number} of ${what}, limit ${limit}${from(f.origin)}${because(f, masses)}`;
  },
  'control count': ({ group }) =>
    `1 control channel${group === '' ? '' : ` in ${group}`}: if it is lost the controller drives harder; a second, independent one would help.`,
  'control verdict': ({ channel, verdict }) =>
    `Control channel ${channel} is ${verdict}: a wrong control reading drives the article too hard; resolve it before the run.`,
  'same channel': ({ channel, number }) =>
    `${number} rows are called channel ${channel}: each needs a name of its own.`,
  'signal to noise': (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const allowed = f.noiseAllowed && `at most ${acceleration(f.noiseAllowed)} r.m.s. of noise may remain`;
    const now = allowed && f.noise !== undefined ? `${allowed}, it is ${acceleration(f.noise)}` : allowed || undefined;
    const most = f.isBound ? 'at most ' : '';
    return `Signal to noise ${most}${number}, limit ${limit}${from(f.origin)}${because(f, now, f.cause && NOISE_HELP[f.cause])}`;
  },
  headroom: (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const causes = f.causes?.map((cause) => CEILING_HELP[cause]).join(' and ');
    const ends =
      causes && f.ceiling !== undefined
        ? `${causes} ${f.causes?.length === 1 ? 'ends' : 'end'} at ${acceleration(f.ceiling)}`
        : causes;
    const allowed = f.peakAllowed && `a peak of at most ${acceleration(f.peakAllowed)} fits here`;
    const most = f.isBound ? 'at most ' : '';
    return `Headroom ${most}${number}, limit ${limit}${from(f.origin)}${because(f, ends, allowed || undefined)}`;
  },
  'no swing': () =>
    'The supply leaves the signal no voltage beside the bias, hence no headroom: a higher supply voltage or a sensor with another bias would help.',
  'input mode': ({ output, mode }) =>
    `${output} output on ${INPUT_FOR[mode]} input: the two do not work together; ${INPUT_FOR[output]} input would help.`,
  'mass ratio': (f) => {
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const allowed =
      f.allowed === undefined
        ? undefined
        : f.allowed > 0
          ? `at most ${withUnit(f.allowed, 'gram')} of sensor may be added here`
          : 'mount and cable alone are too heavy, only a sensor without contact or another point would help';
    return `Mass ratio ${f.isBound ? 'at least ' : ''}${number}, limit ${limit}${from(f.origin)}${because(f, allowed)}`;
  },
  'temperature limit': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, '°C');
    const end = f.end === 'low' ? 'lower' : 'upper';
    const name = f.name ? ` ${f.name}` : '';
    return `${number}, ${end} limit of the ${f.part}${name} ${limit}: another ${f.part} or a milder place would help.`;
  },
  'thermal deviation': (f) => {
    const band = `${signed(f.low, '%')} to ${signed(f.high, '%')} %`;
    const half = f.halfBand === undefined ? undefined : `±${inWords(f.halfBand, '%')} %`;
    const corrected =
      f.verdict === 'WARN'
        ? `only a correction saves it${half ? `, which leaves ${half}` : ''}; log the sensor’s temperature and apply its curve`
        : `${half ? `even corrected to its middle it keeps ${half}; ` : ''}a steadier sensing element would help`;
    return `Thermal deviation ${band}, limit ±${inWords(f.limit, '%')} %${from(f.origin)}${because(f, corrected)}`;
  },
  'deviation curve': (f) =>
    `${withUnit(f.number, '°C')} needed, the deviation curve runs from ${inWords(f.from, '°C')} to ${withUnit(f.to, '°C')}: not known there.`,
  'span low': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    return `Span begins at ${number}${flatness(f)}, band at ${limit}${because(f, f.cause && LOW_HELP[f.cause])}`;
  },
  'span high': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    const rate = f.sampleRateNeeded && `at least ${inWords(f.sampleRateNeeded, 'Hz', 4)} samples per second would help`;
    const help = f.cause && HIGH_HELP[f.cause];
    return `Span ends at ${number}${flatness(f)}, band at ${limit}${because(f, help, rate || undefined)}`;
  },
  'empty span': (f) =>
    `No span is left${flatness(f)}: low and high ends meet; other coupling, sensor or input would help.`,
  reversed: ({ low, high }) =>
    `${fieldTitle(low.table, low.key, 'en')} is above ${fieldTitle(high.table, high.key, 'en')}: nothing can be judged until one changes.`,
  'noise at 0 Hz': () => 'Noise down to 0 Hz has no end in a rising density: a lowest frequency above 0 Hz would help.',
  'reference sensitivity': () =>
    'The level rests on the reference sensitivity alone, for no thermal deviation is known over this range.',
  missing: ({ fields, named }) => `Not known: ${fields.map((field) => missingLabel(field, named)).join(', ')}.`,
  'not known': ({ what }) => `Not known: ${what.join(', ')}.`,
  explained: ({ text }) => text,
  unexplained: ({ headline, verdict }) =>
    `${capital(headline)} ${verdict}: ${HEADLINE_HELP[headline]}.`.replace('?.', '?'),
  'holding force': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'N');
    return `Caution: ${number} on the joint at the highest level, limit ${limit}${from(f.origin)}${because(f, 'a stronger mount or a lanyard would help')}`;
  },
};
