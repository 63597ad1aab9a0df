import type { Headline } from '../../finding';
import { missingLabel } from '../../missing';
import type { Sentences } from '../../sentence';
import { fieldTitle } from '../titles';
import { GERMAN_TOGETHER } from './across-german';
import { numbersIn } from './numbers';
import { because, from as fromOrigin } from './parts';

const { acceleration, decibelsAgainst, inWords, quantityAgainst, ratioAgainst, signed, withUnit } = numbersIn('de');
const from = (origin: string | undefined): string => fromOrigin(origin, 'de');

const flatness = ({ tolerance, origin }: { readonly tolerance?: number; readonly origin?: string }): string =>
  tolerance === undefined ? '' : ` bei ±${inWords(tolerance, '%')} %${from(origin)}`;

const CEILING_ENDS = {
  'full scale': 'der Messbereich des Aufnehmers',
  'input range': 'der Eingangsbereich',
  'bias swing': 'die Aussteuerung um die Ruhespannung des Aufnehmers',
  'amplifier output': 'der Ausgang des Ladungsverstärkers',
} as const;
const NOISE_HELP = {
  sensor: 'das meiste davon macht der Aufnehmer, ein rauschärmerer oder eine schmalere Auswertung hülfe',
  input: 'das meiste davon macht der Eingang, ein kleinerer Bereich oder ein empfindlicherer Aufnehmer hülfe',
} as const;
const LOW_HELP = {
  sensor: 'die untere Grenze des Aufnehmers bestimmt es',
  'charge amplifier': 'die Zeitkonstante des Ladungsverstärkers bestimmt es, eine längere hülfe',
  'AC coupling': 'die AC-Kopplung bestimmt es, eine tiefere Grenzfrequenz oder DC-Kopplung hülfe',
} as const;
const HIGH_HELP = {
  response: 'die Resonanz mit Ankopplung bestimmt es, eine steifere Ankopplung oder höhere Resonanz hülfe',
  analyser: 'der Analysator bestimmt es',
  'cable drive': 'die Kabelkapazität bestimmt es, mehr Speisestrom oder ein kürzeres Kabel hülfe',
  'data sheet': 'das Datenblatt bestimmt es',
} as const;
const INPUT_FOR = {
  IEPE: 'IEPE-Eingang',
  charge: 'Ladungseingang',
  DC: 'Spannungseingang',
  voltage: 'Spannungseingang',
  bridge: 'Brückeneingang',
} as const;
const OUTPUT = {
  IEPE: 'IEPE-Ausgang',
  charge: 'Ladungsausgang',
  DC: 'DC-Ausgang',
  voltage: 'Spannungsausgang',
  bridge: 'Brückenausgang',
} as const;
const PART = {
  sensor: { of: 'des Aufnehmers', other: 'ein anderer Aufnehmer' },
  mount: { of: 'der Ankopplung', other: 'eine andere Ankopplung' },
  cable: { of: 'des Kabels', other: 'ein anderes Kabel' },
} as const;
const HEADLINE: Record<Headline, string> = {
  level: 'Pegel',
  mass: 'Masse',
  thermal: 'Temperatur',
  frequency: 'Frequenz',
};
const HEADLINE_HELP: Record<Headline, string> = {
  level: 'die gegebenen Zahlen sagen nicht, warum; passt der Ausgang des Aufnehmers zum Eingang?',
  mass: 'die gegebenen Zahlen sagen nicht, warum.',
  thermal: 'eine Temperatur liegt außerhalb einer Betriebsgrenze, oder die Abweichung ist nicht bekannt.',
  frequency: 'die gegebenen Zahlen sagen nicht, warum.',
};

export const GERMAN: Sentences = {
  ...GERMAN_TOGETHER,
  'signal to noise': (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const allowed = f.noiseAllowed && `höchstens ${acceleration(f.noiseAllowed)} Rauschen (effektiv) dürfen bleiben`;
    const now =
      allowed && f.noise !== undefined ? `${allowed}, es sind ${acceleration(f.noise)}` : allowed || undefined;
    const most = f.isBound ? 'höchstens ' : '';
    return `Rauschabstand ${most}${number}, Grenze ${limit}${from(f.origin)}${because(f, now, f.cause && NOISE_HELP[f.cause])}`;
  },
  headroom: (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const causes = f.causes?.map((cause) => CEILING_ENDS[cause]).join(' und ');
    const verb = f.causes?.length === 1 ? 'endet' : 'enden';
    const ends = causes && f.ceiling !== undefined ? `${causes} ${verb} bei ${acceleration(f.ceiling)}` : causes;
    const allowed = f.peakAllowed && `hier passt ein Spitzenwert von höchstens ${acceleration(f.peakAllowed)}`;
    const most = f.isBound ? 'höchstens ' : '';
    return `Aussteuerreserve ${most}${number}, Grenze ${limit}${from(f.origin)}${because(f, ends, allowed || undefined)}`;
  },
  'no swing': () =>
    'Die Speisung lässt dem Signal neben der Ruhespannung keinen Spielraum, also keine Aussteuerreserve: Eine höhere Speisespannung oder ein Aufnehmer mit anderer Ruhespannung hülfe.',
  'input mode': ({ output, mode }) =>
    `${OUTPUT[output]} an ${INPUT_FOR[mode]}: beide arbeiten nicht zusammen; ein ${INPUT_FOR[output]} hülfe.`,
  'mass ratio': (f) => {
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const allowed =
      f.allowed === undefined
        ? undefined
        : f.allowed > 0
          ? `höchstens ${withUnit(f.allowed, 'gram')} Aufnehmer dürfen hier hinzukommen`
          : 'Ankopplung und Kabel allein sind zu schwer, nur ein berührungsloser Aufnehmer oder ein anderer Punkt hülfe';
    return `Massenverhältnis ${f.isBound ? 'mindestens ' : ''}${number}, Grenze ${limit}${from(f.origin)}${because(f, allowed)}`;
  },
  'temperature limit': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, '°C');
    const end = f.end === 'low' ? 'untere' : 'obere';
    const name = f.name ? ` ${f.name}` : '';
    const { of, other } = PART[f.part];
    return `${number}, ${end} Grenze ${of}${name} ${limit}: ${other} oder ein milderer Ort hülfe.`;
  },
  'thermal deviation': (f) => {
    const band = `${signed(f.low, '%')} bis ${signed(f.high, '%')} %`;
    const half = f.halfBand === undefined ? undefined : `±${inWords(f.halfBand, '%')} %`;
    const corrected =
      f.verdict === 'WARN'
        ? `nur eine Korrektur rettet sie${half ? `, danach bleiben ${half}` : ''}; Temperatur des Aufnehmers aufzeichnen und seine Kurve anwenden`
        : `${half ? `selbst auf die Mitte korrigiert bleiben ${half}; ` : ''}ein stabileres Messelement hülfe`;
    return `Temperaturabweichung ${band}, Grenze ±${inWords(f.limit, '%')} %${from(f.origin)}${because(f, corrected)}`;
  },
  'deviation curve': (f) =>
    `${withUnit(f.number, '°C')} benötigt, die Kurve der Abweichung reicht von ${inWords(f.from, '°C')} bis ${withUnit(f.to, '°C')}: dort nicht bekannt.`,
  'span low': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    return `Nutzbarer Bereich beginnt bei ${number}${flatness(f)}, das Band bei ${limit}${because(f, f.cause && LOW_HELP[f.cause])}`;
  },
  'span high': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    const rate =
      f.sampleRateNeeded && `mindestens ${inWords(f.sampleRateNeeded, 'Hz', 4)} Abtastwerte je Sekunde hülfen`;
    const help = f.cause && HIGH_HELP[f.cause];
    return `Nutzbarer Bereich endet bei ${number}${flatness(f)}, das Band bei ${limit}${because(f, help, rate || undefined)}`;
  },
  'empty span': (f) =>
    `Kein nutzbarer Bereich bleibt${flatness(f)}: unteres und oberes Ende treffen sich; andere Kopplung, Aufnehmer oder Eingang hülfen.`,
  reversed: ({ low, high }) =>
    `${fieldTitle(low.table, low.key, 'de')} liegt über ${fieldTitle(high.table, high.key, 'de')}: nichts kann beurteilt werden, bis eines davon geändert ist.`,
  'noise at 0 Hz': () =>
    'Rauschen bis 0 Hz hinab hat bei steigender Dichte kein Ende: eine kleinste Frequenz über 0 Hz hülfe.',
  'reference sensitivity': () =>
    'Der Pegel beruht allein auf dem Bezugswert des Übertragungsfaktors, denn für diese Temperaturen ist keine Abweichung bekannt.',
  missing: ({ fields, named }) =>
    `Nicht bekannt: ${fields.map((field) => missingLabel(field, named, 'de')).join(', ')}.`,
  'not known': ({ what }) => `Nicht bekannt: ${what.join(', ')}.`,
  explained: ({ text }) => text,
  unexplained: ({ headline, verdict }) => `${HEADLINE[headline]} ${verdict}: ${HEADLINE_HELP[headline]}`,
  'holding force': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'N');
    return `Vorsicht: ${number} an der Verbindung beim größten Pegel, Grenze ${limit}${from(f.origin)}${because(f, 'eine stärkere Ankopplung oder eine Sicherungsleine hülfe')}`;
  },
  'added masses': (f) => {
    const what = `${f.housings} Aufnehmern zusammen bei ${f.place}`;
    if (f.number === undefined)
      return `${f.housings} Aufnehmer zusammen bei ${f.place}: ihre Belastung ist nicht bekannt, eine Masse fehlt.`;
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const masses =
      f.total === undefined || f.localMass === undefined
        ? undefined
        : `${withUnit(f.total, 'gram')} auf ${withUnit(f.localMass, 'gram')}, zusammen höchstens ${withUnit(f.limit * f.localMass, 'gram')} blieben darunter`;
    const least = f.isBound ? 'mindestens ' : '';
    return `Massenverhältnis ${least}${number} von ${what}, Grenze ${limit}${from(f.origin)}${because(f, masses)}`;
  },
  'control count': ({ group }) =>
    `1 Regelkanal${group === '' ? '' : ` in ${group}`}: fällt er aus, treibt der Regler stärker an; ein zweiter, unabhängiger hülfe.`,
  'control verdict': ({ channel, verdict }) =>
    `Regelkanal ${channel} ist ${verdict}: ein falscher Regelwert treibt den Prüfling zu stark an; vor dem Lauf klären.`,
  'same channel': ({ channel, number }) =>
    `${number} Zeilen heißen Kanal ${channel}: jede braucht einen eigenen Namen.`,
};
