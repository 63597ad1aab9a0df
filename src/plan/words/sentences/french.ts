import type { Headline } from '../../finding';
import { missingLabel } from '../../missing';
import type { Sentences } from '../../sentence';
import { fieldTitle } from '../titles';
import { FRENCH_TOGETHER } from './across-french';
import { numbersIn } from './numbers';
import { becauseInFrench as because, from as fromOrigin } from './parts';

const { acceleration, decibelsAgainst, inWords, quantityAgainst, ratioAgainst, signed, withUnit } = numbersIn('fr');
const from = (origin: string | undefined): string => fromOrigin(origin, 'fr');

const flatness = ({ tolerance, origin }: { readonly tolerance?: number; readonly origin?: string }): string =>
  tolerance === undefined ? '' : ` à ±${inWords(tolerance, '%')} %${from(origin)}`;

const CEILING_ENDS = {
  'full scale': 'l’étendue de mesure du capteur',
  'input range': 'le calibre d’entrée',
  'bias swing': 'l’excursion autour de la polarisation du capteur',
  'amplifier output': 'la sortie de l’amplificateur de charge',
} as const;
const NOISE_HELP = {
  sensor: 'le capteur en fait la plus grande part, un capteur plus silencieux ou une détection plus étroite aiderait',
  input: 'l’entrée en fait la plus grande part, un calibre plus petit ou un capteur plus sensible aiderait',
} as const;
const LOW_HELP = {
  sensor: 'la limite basse du capteur en décide',
  'charge amplifier': 'la constante de temps de l’amplificateur de charge en décide, une plus longue aiderait',
  'AC coupling': 'le couplage alternatif en décide, une coupure plus basse ou un couplage continu aiderait',
} as const;
const HIGH_HELP = {
  response: 'la résonance montée en décide, une fixation plus raide ou une résonance plus haute aiderait',
  analyser: 'l’analyseur en décide',
  'cable drive': 'la capacité du câble en décide, plus de courant ou un câble plus court aiderait',
  'data sheet': 'la fiche technique en décide',
} as const;
const INPUT_FOR = {
  IEPE: 'une entrée IEPE',
  charge: 'une entrée de charge',
  DC: 'une entrée de tension',
  voltage: 'une entrée de tension',
  bridge: 'une entrée à pont',
} as const;
const OUTPUT = {
  IEPE: 'Sortie IEPE',
  charge: 'Sortie de charge',
  DC: 'Sortie DC',
  voltage: 'Sortie de tension',
  bridge: 'Sortie à pont',
} as const;
const PART = {
  sensor: { of: 'du capteur', other: 'un autre capteur' },
  mount: { of: 'de la fixation', other: 'une autre fixation' },
  cable: { of: 'du câble', other: 'un autre câble' },
} as const;
const HEADLINE: Record<Headline, string> = {
  level: 'Niveau',
  mass: 'Masse',
  thermal: 'Température',
  frequency: 'Fréquence',
};
const HEADLINE_HELP: Record<Headline, string> = {
  level: 'les nombres donnés ne disent pas pourquoi ; la sortie du capteur convient-elle à l’entrée ?',
  mass: 'les nombres donnés ne disent pas pourquoi.',
  thermal: 'une température sort d’une limite d’emploi, ou l’écart est inconnu.',
  frequency: 'les nombres donnés ne disent pas pourquoi.',
};

export const FRENCH: Sentences = {
  ...FRENCH_TOGETHER,
  'signal to noise': (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const allowed = f.noiseAllowed && `au plus ${acceleration(f.noiseAllowed)} efficaces de bruit peuvent rester`;
    const now =
      allowed && f.noise !== undefined ? `${allowed}, il y en a ${acceleration(f.noise)}` : allowed || undefined;
    const most = f.isBound ? 'au plus ' : '';
    return `Rapport signal sur bruit ${most}${number}, limite ${limit}${from(f.origin)}${because(f, now, f.cause && NOISE_HELP[f.cause])}`;
  },
  headroom: (f) => {
    const [number, limit] = decibelsAgainst(f.number, f.limit);
    const causes = f.causes?.map((cause) => CEILING_ENDS[cause]).join(' et ');
    const verb = f.causes?.length === 1 ? 'finit' : 'finissent';
    const ends = causes && f.ceiling !== undefined ? `${causes} ${verb} à ${acceleration(f.ceiling)}` : causes;
    const allowed = f.peakAllowed && `une crête d’au plus ${acceleration(f.peakAllowed)} convient ici`;
    const most = f.isBound ? 'au plus ' : '';
    return `Réserve ${most}${number}, limite ${limit}${from(f.origin)}${because(f, ends, allowed || undefined)}`;
  },
  'no swing': () =>
    'L’alimentation ne laisse aucune tension au signal autour de la tension de polarisation, donc aucune réserve : une tension d’alimentation plus haute ou un capteur d’une autre tension de polarisation aiderait.',
  'input mode': ({ output, mode }) =>
    `${OUTPUT[output]} sur ${INPUT_FOR[mode]} : les deux ne vont pas ensemble ; ${INPUT_FOR[output]} aiderait.`,
  'mass ratio': (f) => {
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const allowed =
      f.allowed === undefined
        ? undefined
        : f.allowed > 0
          ? `au plus ${withUnit(f.allowed, 'gram')} de capteur peuvent s’ajouter ici`
          : 'fixation et câble sont déjà trop lourds, seul un capteur sans contact ou un autre point aiderait';
    return `Rapport de masse ${f.isBound ? 'au moins ' : ''}${number}, limite ${limit}${from(f.origin)}${because(f, allowed)}`;
  },
  'temperature limit': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, '°C');
    const end = f.end === 'low' ? 'basse' : 'haute';
    const name = f.name ? ` ${f.name}` : '';
    const { of, other } = PART[f.part];
    return `${number}, limite ${end} ${of}${name} ${limit} : ${other} ou un endroit plus doux aiderait.`;
  },
  'thermal deviation': (f) => {
    const band = `${signed(f.low, '%')} à ${signed(f.high, '%')} %`;
    const half = f.halfBand === undefined ? undefined : `±${inWords(f.halfBand, '%')} %`;
    const corrected =
      f.verdict === 'WARN'
        ? `seule une correction la sauve${half ? `, il reste alors ${half}` : ''} ; enregistrer la température du capteur et appliquer sa courbe`
        : `${half ? `même recentrée il reste ${half} ; ` : ''}un élément sensible plus stable aiderait`;
    return `Dérive thermique ${band}, limite ±${inWords(f.limit, '%')} %${from(f.origin)}${because(f, corrected)}`;
  },
  'deviation curve': (f) =>
    `${withUnit(f.number, '°C')} requis, la courbe de dérive va de ${inWords(f.from, '°C')} à ${withUnit(f.to, '°C')} : inconnue là.`,
  'span low': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    return `La plage commence à ${number}${flatness(f)}, la bande à ${limit}${because(f, f.cause && LOW_HELP[f.cause])}`;
  },
  'span high': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'Hz');
    const rate =
      f.sampleRateNeeded && `au moins ${inWords(f.sampleRateNeeded, 'Hz', 4)} échantillons par seconde aideraient`;
    const help = f.cause && HIGH_HELP[f.cause];
    return `La plage finit à ${number}${flatness(f)}, la bande à ${limit}${because(f, help, rate || undefined)}`;
  },
  'empty span': (f) =>
    `Aucune plage ne reste${flatness(f)} : les deux bouts se rejoignent ; un autre couplage, capteur ou calibre aiderait.`,
  reversed: ({ low, high }) =>
    `${fieldTitle(low.table, low.key, 'fr')} dépasse ${fieldTitle(high.table, high.key, 'fr')} : rien ne peut être jugé avant que l’un des deux change.`,
  'noise at 0 Hz': () =>
    'Le bruit jusqu’à 0 Hz n’a pas de fin avec une densité croissante : une fréquence minimale au-dessus de 0 Hz aiderait.',
  'reference sensitivity': () =>
    'Le niveau repose sur la seule sensibilité de référence, car aucune dérive n’est connue sur ces températures.',
  missing: ({ fields, named }) => `Inconnu : ${fields.map((field) => missingLabel(field, named, 'fr')).join(', ')}.`,
  'not known': ({ what }) => `Inconnu : ${what.join(', ')}.`,
  explained: ({ text }) => text,
  unexplained: ({ headline, verdict }) => `${HEADLINE[headline]} ${verdict} : ${HEADLINE_HELP[headline]}`,
  'holding force': (f) => {
    const [number, limit] = quantityAgainst(f.number, f.limit, 'N');
    return `Attention : ${number} sur la liaison au niveau le plus fort, limite ${limit}${from(f.origin)}${because(f, 'une fixation plus forte ou une bride de retenue aiderait')}`;
  },
  'added masses': (f) => {
    const what = `${f.housings} capteurs ensemble à ${f.place}`;
    if (f.number === undefined) return `${what} : leur charge est inconnue, une masse manque.`;
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const masses =
      f.total === undefined || f.localMass === undefined
        ? undefined
        : `${withUnit(f.total, 'gram')} sur ${withUnit(f.localMass, 'gram')}, au plus ${withUnit(f.limit * f.localMass, 'gram')} en tout resteraient admis`;
    const least = f.isBound ? 'au moins ' : '';
    return `Rapport de masse ${least}${number} de ${what}, limite ${limit}${from(f.origin)}${because(f, masses)}`;
  },
  'control count': ({ group }) =>
    `1 voie de pilotage${group === '' ? '' : ` dans ${group}`} : si elle se perd, le pilote excite davantage ; une seconde, indépendante, aiderait.`,
  'control verdict': ({ channel, verdict }) =>
    `La voie de pilotage ${channel} est ${verdict} : une lecture fausse excite trop le spécimen ; à résoudre avant le passage.`,
  'same channel': ({ channel, number }) =>
    `${number} lignes s’appellent voie ${channel} : chacune a besoin de son propre nom.`,
};
