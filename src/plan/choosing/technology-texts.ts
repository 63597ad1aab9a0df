import type { InLanguages } from '../../core/language';
import type { Mark, ReasonCode, SensingElement, Standing, Step } from './technology-types';

export const ELEMENT_WORDS: InLanguages<Readonly<Record<SensingElement, string>>> = {
  en: {
    ceramic: 'ceramic',
    'compensated ceramic': 'compensated ceramic',
    quartz: 'quartz',
    'engineered crystal': 'engineered crystal',
    'piezoresistive silicon': 'piezoresistive silicon',
    'capacitive silicon': 'capacitive silicon',
  },
  de: {
    ceramic: 'Piezokeramik',
    'compensated ceramic': 'kompensierte Piezokeramik',
    quartz: 'Quarz',
    'engineered crystal': 'gezüchteter Kristall',
    'piezoresistive silicon': 'piezoresistives Silizium',
    'capacitive silicon': 'kapazitives Silizium',
  },
  fr: {
    ceramic: 'céramique piézoélectrique',
    'compensated ceramic': 'céramique compensée',
    quartz: 'quartz',
    'engineered crystal': 'cristal de synthèse',
    'piezoresistive silicon': 'silicium piézorésistif',
    'capacitive silicon': 'silicium capacitif',
  },
};

export const STANDING_WORDS: InLanguages<Readonly<Record<Standing, string>>> = {
  en: { admissible: 'admissible', doubtful: 'doubtful', falls: 'out' },
  de: { admissible: 'zulässig', doubtful: 'zweifelhaft', falls: 'ausgeschlossen' },
  fr: { admissible: 'admissible', doubtful: 'douteux', falls: 'écarté' },
};

export const MARK_WORDS: InLanguages<Readonly<Record<Mark, string>>> = {
  en: {
    'common practice, no source': 'common practice, no source',
    'from memory': 'from memory',
    'by definition': 'by definition',
  },
  de: {
    'common practice, no source': 'übliche Praxis, ohne Quelle',
    'from memory': 'aus dem Gedächtnis',
    'by definition': 'per Definition',
  },
  fr: {
    'common practice, no source': 'pratique courante, sans source',
    'from memory': 'de mémoire',
    'by definition': 'par définition',
  },
};

export const STEP_WORDS: InLanguages<Readonly<Record<Step, string>>> = {
  en: {
    'static and low frequency': 'static and low frequency',
    temperature: 'temperature',
    'thermal tolerance': 'thermal tolerance',
    mass: 'mass',
    'low level': 'low level',
    'full scale and shock': 'full scale and shock',
    band: 'band',
    axes: 'axes',
    grounding: 'grounding',
    'charge or IEPE': 'charge or IEPE',
    environment: 'environment',
  },
  de: {
    'static and low frequency': 'statisch und tiefe Frequenz',
    temperature: 'Temperatur',
    'thermal tolerance': 'Temperaturabweichung',
    mass: 'Masse',
    'low level': 'kleiner Pegel',
    'full scale and shock': 'Messbereich und Stoß',
    band: 'Frequenzband',
    axes: 'Achsen',
    grounding: 'Erdung',
    'charge or IEPE': 'Ladung oder IEPE',
    environment: 'Umgebung',
  },
  fr: {
    'static and low frequency': 'statique et basse fréquence',
    temperature: 'température',
    'thermal tolerance': 'écart thermique',
    mass: 'masse',
    'low level': 'niveau faible',
    'full scale and shock': 'étendue et choc',
    band: 'bande',
    axes: 'axes',
    grounding: 'mise à la terre',
    'charge or IEPE': 'charge ou IEPE',
    environment: 'environnement',
  },
};

/** `number` is what the channel asks, `limit` what the kind reaches, `reach` the word for usual or best. */
export type CodeText = (number: string, limit: string, reach: string) => string;

export const REACH_WORDS: InLanguages<Readonly<Record<'doubtful' | 'falls', string>>> = {
  en: { doubtful: 'usually', falls: 'at best' },
  de: { doubtful: 'üblicherweise', falls: 'bestenfalls' },
  fr: { doubtful: 'd’ordinaire', falls: 'au mieux' },
};

export const CODE_WORDS: InLanguages<Readonly<Record<ReasonCode, CodeText>>> = {
  en: {
    'no static response': (n) => `${n} asked: it discharges and has no static response`,
    'low band edge': (n, l, r) => `${n} as lower band edge, ${r} from ${l} by its time constant`,
    'long pulse': (n, l, r) => `${n} of pulse, ${r} up to ${l} by its time constant`,
    integration: (n, l) => `${n} as lower band edge below ${l} of a signal to be integrated: static response is usual`,
    'too hot': (n, l, r) => `${n} needed, ${r} rated up to ${l}`,
    'too cold': (n, l, r) => `${n} needed, ${r} rated down to ${l}; ask about adhesive, cable and electronics as well`,
    'thermal coefficient': (n, l, r) => `${n} allowed, ${r} ${l}; or log its temperature and correct by its curve`,
    'sensor mass': (n, l, r) => `${n} of sensor allowed, ${r} ${l}`,
    'noise for mass': (n, l, r) => `${n} of noise allowed, ${r} ${l} at the mass allowed`,
    noise: (n, l, r) => `${n} of noise allowed, ${r} ${l}`,
    'full scale': (n, l, r) => `${n} of full scale needed, ${r} ${l}`,
    'zero shift': (n) => `${n} of metal-to-metal shock: its zero can shift; a mechanical filter would help`,
    overload: (n) => `${n} of metal-to-metal shock rings beyond its range, and it clips`,
    resonance: (n, l, r) => `${n} of mounted resonance needed, ${r} ${l}`,
    'several axes': (n, l) => `${n} allowed for all axes, in one housing usually ${l}; single axes or fewer directions`,
    'earth loop': () => 'several earths: an isolated case and one single earth, or an isolated input, would be needed',
    'cable noise': (n, l) => `${n} of cable raises the noise of a charge amplifier, usual up to ${l}`,
    'no input': () => 'no input at hand takes it',
    'damp insulation': () => 'moisture spoils the insulation it needs; a sealed cable and low impedance are usual',
    'no convection': (n) => `${n} of electronics have no air to cool them in vacuum`,
    radiation: () => 'semiconductors at the point age under radiation',
    'explosive atmosphere': () =>
      'only equipment certified for the zone may be used (IEC 60079); ordinary electronics are not; local rules decide',
    'magnetic field': () => 'small signals pick up the field; short, twisted and shielded runs are usual',
    'temperature ramp': (n, l) => `${n} of output from the ramp alone, a third of the lowest level is ${l}`,
    'nothing left': () => 'no counterpart is left that it could be made with',
  },
  de: {
    'no static response': (n) => `${n} gefordert: Er entlädt sich und überträgt nicht statisch`,
    'low band edge': (n, l, r) => `${n} als untere Bandgrenze, durch die Zeitkonstante ${r} ab ${l}`,
    'long pulse': (n, l, r) => `${n} Pulsdauer, durch die Zeitkonstante ${r} bis ${l}`,
    integration: (n, l) =>
      `${n} als untere Bandgrenze unter ${l} bei einem Signal, das integriert wird: statische Übertragung ist üblich`,
    'too hot': (n, l, r) => `${n} gefordert, ${r} zugelassen bis ${l}`,
    'too cold': (n, l, r) => `${n} gefordert, ${r} zugelassen bis ${l}; auch Klebstoff, Kabel und Elektronik prüfen`,
    'thermal coefficient': (n, l, r) =>
      `${n} zulässig, ${r} ${l}; oder Temperatur mitschreiben und nach der Kurve korrigieren`,
    'sensor mass': (n, l, r) => `${n} Aufnehmermasse zulässig, ${r} ${l}`,
    'noise for mass': (n, l, r) => `${n} Rauschdichte zulässig, ${r} ${l} bei der zulässigen Masse`,
    noise: (n, l, r) => `${n} Rauschdichte zulässig, ${r} ${l}`,
    'full scale': (n, l, r) => `${n} Messbereich gefordert, ${r} ${l}`,
    'zero shift': (n) => `${n} bei Metall-auf-Metall-Stoß: Der Nullpunkt kann springen; ein mechanisches Filter hilft`,
    overload: (n) => `${n} bei Metall-auf-Metall-Stoß regen weit über den Messbereich an, und er begrenzt`,
    resonance: (n, l, r) => `${n} Resonanz im angekoppelten Zustand gefordert, ${r} ${l}`,
    'several axes': (n, l) =>
      `${n} für alle Achsen zulässig, in einem Gehäuse üblicherweise ${l}; Einzelachsen oder weniger Richtungen`,
    'earth loop': () =>
      'mehrere Erdungen: isoliertes Gehäuse mit nur einer Erdung oder ein isolierter Eingang wäre nötig',
    'cable noise': (n, l) => `${n} Kabelkapazität erhöhen das Rauschen des Ladungsverstärkers, üblich bis ${l}`,
    'no input': () => 'kein vorhandener Eingang nimmt ihn an',
    'damp insulation': () =>
      'Feuchte verdirbt die nötige Isolation; dichtes Kabel und niederohmiger Ausgang sind üblich',
    'no convection': (n) => `${n} der Elektronik werden im Vakuum nicht durch Luft abgeführt`,
    radiation: () => 'Halbleiter am Messpunkt altern unter Strahlung',
    'explosive atmosphere': () =>
      'nur für die Zone bescheinigte Geräte sind erlaubt (IEC 60079); gewöhnliche Elektronik ist es nicht; örtliche Vorschriften entscheiden',
    'magnetic field': () =>
      'kleine Signale nehmen das Feld auf; kurze, verdrillte und geschirmte Leitungen sind üblich',
    'temperature ramp': (n, l) =>
      `${n} Ausgang allein durch die Temperaturrampe, ein Drittel des kleinsten Pegels ist ${l}`,
    'nothing left': () => 'kein Gegenstück bleibt, mit dem er gebaut werden könnte',
  },
  fr: {
    'no static response': (n) => `${n} demandé : il se décharge et n’a pas de réponse statique`,
    'low band edge': (n, l, r) =>
      `${n} comme limite basse de la bande, ${r} à partir de ${l} par sa constante de temps`,
    'long pulse': (n, l, r) => `${n} d’impulsion, ${r} jusqu’à ${l} par sa constante de temps`,
    integration: (n, l) =>
      `${n} comme limite basse sous ${l} d’un signal à intégrer : une réponse statique est d’usage`,
    'too hot': (n, l, r) => `${n} demandés, ${r} prévu jusqu’à ${l}`,
    'too cold': (n, l, r) => `${n} demandés, ${r} prévu jusqu’à ${l} ; vérifier aussi colle, câble et électronique`,
    'thermal coefficient': (n, l, r) => `${n} admis, ${r} ${l} ; ou relever sa température et corriger selon sa courbe`,
    'sensor mass': (n, l, r) => `${n} de capteur admis, ${r} ${l}`,
    'noise for mass': (n, l, r) => `${n} de bruit admis, ${r} ${l} à la masse admise`,
    noise: (n, l, r) => `${n} de bruit admis, ${r} ${l}`,
    'full scale': (n, l, r) => `${n} d’étendue demandés, ${r} ${l}`,
    'zero shift': (n) => `${n} de choc métal sur métal : son zéro peut se décaler ; un filtre mécanique aiderait`,
    overload: (n) => `${n} de choc métal sur métal excitent bien au-delà de son étendue, et il écrête`,
    resonance: (n, l, r) => `${n} de résonance une fois fixé demandés, ${r} ${l}`,
    'several axes': (n, l) =>
      `${n} admis pour tous les axes, d’ordinaire ${l} dans un boîtier ; axes séparés ou moins de directions`,
    'earth loop': () =>
      'plusieurs terres : un boîtier isolé et une seule terre, ou une entrée isolée, seraient nécessaires',
    'cable noise': (n, l) => `${n} de câble augmentent le bruit de l’amplificateur de charge, usuel jusqu’à ${l}`,
    'no input': () => 'aucune entrée disponible ne l’accepte',
    'damp insulation': () => 'l’humidité altère l’isolement nécessaire ; câble étanche et basse impédance sont d’usage',
    'no convection': (n) => `${n} d’électronique ne sont pas refroidis par l’air dans le vide`,
    radiation: () => 'les semi-conducteurs au point vieillissent sous rayonnement',
    'explosive atmosphere': () =>
      'seul le matériel certifié pour la zone est permis (IEC 60079) ; l’électronique ordinaire ne l’est pas ; les règles locales décident',
    'magnetic field': () =>
      'les petits signaux captent le champ ; liaisons courtes, torsadées et blindées sont d’usage',
    'temperature ramp': (n, l) => `${n} de sortie par la seule rampe, le tiers du niveau minimal est ${l}`,
    'nothing left': () => 'il ne reste rien avec quoi il pourrait être fait',
  },
};

export const ADVICE_WORDS: InLanguages<{
  readonly relaxed: (what: string, number: string, standing: 'doubtful' | 'falls') => string;
  readonly massRatio: string;
  readonly ramp: string;
  readonly nonContact: (allowed: string, least: string, mark: string) => string;
  readonly notAsked: (step: string, fields: string) => string;
}> = {
  en: {
    relaxed: (what, number, standing) =>
      `${number} ${what} would ${standing === 'falls' ? 'bring it back' : 'settle it'}`,
    massRatio: 'as limit of the mass ratio',
    ramp: 'of ramp',
    nonContact: (allowed, least, mark) =>
      `${allowed} of sensor may be added here, below ${least} practically none is made (${mark}): a sensor without contact, as a laser vibrometer, or another point.`,
    notAsked: (step, fields) => `Not asked: ${step}, for want of ${fields}.`,
  },
  de: {
    relaxed: (what, number, standing) => `${number} ${what} ${standing === 'falls' ? 'brächte ihn zurück' : 'räumte den Zweifel aus'}`, // prettier-ignore
    massRatio: 'als Grenze des Massenverhältnisses',
    ramp: 'Temperaturrampe',
    nonContact: (allowed, least, mark) =>
      `${allowed} Aufnehmer dürfen hier zugefügt werden, unter ${least} gibt es praktisch keinen (${mark}): berührungslos messen, etwa mit einem Laservibrometer, oder an einem anderen Punkt.`,
    notAsked: (step, fields) => `Nicht gefragt: ${step}; es fehlt: ${fields}.`,
  },
  fr: {
    relaxed: (what, number, standing) =>
      `${number} ${what} ${standing === 'falls' ? 'le ramènerait' : 'lèverait le doute'}`,
    massRatio: 'comme limite du rapport de masses',
    ramp: 'de rampe',
    nonContact: (allowed, least, mark) =>
      `${allowed} de capteur peuvent être ajoutés ici, sous ${least} il n’en existe pratiquement pas (${mark}) : mesure sans contact, par exemple un vibromètre laser, ou un autre point.`,
    notAsked: (step, fields) => `Non examiné : ${step} ; il manque : ${fields}.`,
  },
};
