import type { InLanguages } from '../../core/language';
import type { BoundKey, BoundLimit } from './envelope-bound';

export const BOUND_WORDS: InLanguages<Readonly<Record<BoundKey, string>>> = {
  en: {
    'sensor mass': 'sensor mass',
    'full scale': 'full scale',
    noise: 'r.m.s. noise of the channel',
    'white noise density': 'noise density, if white',
    'dynamic range': 'dynamic range',
    'mounted resonance': 'mounted resonance',
    'sensor resonance': 'resonance of the sensor itself',
    'low corner': 'low corner (−3 dB)',
    'low limit': 'low limit',
    'thermal coefficient': 'thermal coefficient, either sign',
    'thermal deviation': 'thermal deviation, uncorrected',
    'corrected deviation': 'thermal deviation after correction to its middle',
    'lowest rated temperature': 'lower temperature rating',
    'highest rated temperature': 'upper temperature rating',
    'sensitivity over input noise': 'sensitivity, for the noise of the input',
    'sensitivity in input range': 'sensitivity, for the input range',
    'sensitivity in bias swing': 'sensitivity, for the bias swing',
    'sensitivity in amplifier output': 'sensitivity, for the output of the charge amplifier',
    'sensitivity in cable drive': 'sensitivity, for what the supply current drives into the cable',
    output: 'output that an input takes',
    axes: 'axes',
  },
  de: {
    'sensor mass': 'Aufnehmermasse',
    'full scale': 'Messbereichsendwert',
    noise: 'Effektivwert des Kanalrauschens',
    'white noise density': 'Rauschdichte, falls weiß',
    'dynamic range': 'Dynamikumfang',
    'mounted resonance': 'Resonanz im angekoppelten Zustand',
    'sensor resonance': 'Eigenresonanz des Aufnehmers',
    'low corner': 'untere Eckfrequenz (−3 dB)',
    'low limit': 'untere Grenzfrequenz',
    'thermal coefficient': 'Temperaturkoeffizient, Betrag',
    'thermal deviation': 'Temperaturabweichung, unkorrigiert',
    'corrected deviation': 'Temperaturabweichung nach Korrektur auf die Mitte',
    'lowest rated temperature': 'untere Temperaturgrenze',
    'highest rated temperature': 'obere Temperaturgrenze',
    'sensitivity over input noise': 'Übertragungsfaktor, wegen des Eingangsrauschens',
    'sensitivity in input range': 'Übertragungsfaktor, wegen des Eingangsbereichs',
    'sensitivity in bias swing': 'Übertragungsfaktor, wegen des Hubs um die Ruhespannung',
    'sensitivity in amplifier output': 'Übertragungsfaktor, wegen der Aussteuergrenze des Ladungsverstärkers',
    'sensitivity in cable drive': 'Übertragungsfaktor, wegen des Speisestroms in die Kabelkapazität',
    output: 'Ausgang, den ein Eingang annimmt',
    axes: 'Achsen',
  },
  fr: {
    'sensor mass': 'masse du capteur',
    'full scale': 'étendue de mesure',
    noise: 'bruit efficace de la voie',
    'white noise density': 'densité de bruit, s’il est blanc',
    'dynamic range': 'dynamique',
    'mounted resonance': 'résonance une fois fixé',
    'sensor resonance': 'résonance propre du capteur',
    'low corner': 'coupure basse (−3 dB)',
    'low limit': 'limite basse de fréquence',
    'thermal coefficient': 'coefficient thermique, en valeur absolue',
    'thermal deviation': 'écart thermique, sans correction',
    'corrected deviation': 'écart thermique après correction à son milieu',
    'lowest rated temperature': 'limite basse de température',
    'highest rated temperature': 'limite haute de température',
    'sensitivity over input noise': 'sensibilité, pour le bruit de l’entrée',
    'sensitivity in input range': 'sensibilité, pour la gamme de l’entrée',
    'sensitivity in bias swing': 'sensibilité, pour l’excursion autour de la tension de polarisation',
    'sensitivity in amplifier output': 'sensibilité, pour la sortie de l’amplificateur de charge',
    'sensitivity in cable drive': 'sensibilité, pour ce que le courant fournit à la capacité du câble',
    output: 'sortie acceptée par une entrée',
    axes: 'axes',
  },
};

export const LIMIT_WORDS: InLanguages<Readonly<Record<BoundLimit['name'], string>>> = {
  en: {
    signalToNoise: 'signal to noise',
    headroom: 'headroom',
    massRatio: 'mass ratio',
    thermalTolerance: 'thermal tolerance',
    spanTolerance: 'flatness',
  },
  de: {
    signalToNoise: 'Störabstand',
    headroom: 'Aussteuerungsreserve',
    massRatio: 'Massenverhältnis',
    thermalTolerance: 'zulässige Temperaturabweichung',
    spanTolerance: 'zulässige Frequenzgangabweichung',
  },
  fr: {
    signalToNoise: 'rapport signal sur bruit',
    headroom: 'réserve',
    massRatio: 'rapport de masses',
    thermalTolerance: 'écart thermique admis',
    spanTolerance: 'écart de réponse admis',
  },
};

export interface Texts {
  readonly between: string;
  readonly atInput: (name: string) => string;
  readonly notKnown: (name: string, fields: string) => string;
  readonly nothing: (name: string) => string;
  readonly anything: (name: string) => string;
  readonly askedBy: (fields: string) => string;
  readonly limit: (words: string) => string;
  readonly without: (fields: string) => string;
  readonly atLoss: (loss: string) => string;
  readonly atMass: (mass: string, of: 'sensor' | 'heaviest allowed') => string;
  readonly tooHeavy: string;
  readonly value: (value: string) => string;
  readonly valueNotKnown: (fields: string) => string;
  readonly spareFactor: (factor: string) => string;
  readonly shortFactor: (factor: string) => string;
  readonly spare: (size: string) => string;
  readonly short: (size: string) => string;
}

export const TEXTS: InLanguages<Texts> = {
  en: {
    between: '; ',
    atInput: (name) => ` at input ${name}`,
    notKnown: (name, fields) => `Not known: ${name}, for want of ${fields}.`,
    nothing: (name) => `Nothing suffices: ${name}`,
    anything: (name) => `Anything will do: ${name}`,
    askedBy: (fields) => `asked by ${fields}`,
    limit: (words) => `limit: ${words}`,
    without: (fields) => `stricter perhaps once known: ${fields}`,
    atLoss: (loss) => `stated at −${loss}`,
    atMass: (mass, of) => (of === 'sensor' ? `for its ${mass}` : `for the heaviest sensor that fits, ${mass}`),
    tooHeavy: 'mount and cable alone are too heavy; only a sensor without contact or another point would help',
    value: (value) => `This sensor: ${value}`,
    valueNotKnown: (fields) => `This sensor: not known, for want of ${fields}.`,
    spareFactor: (factor) => `a factor ${factor} to spare`,
    shortFactor: (factor) => `a factor ${factor} too far`,
    spare: (size) => `${size} to spare`,
    short: (size) => `${size} too far`,
  },
  de: {
    between: '; ',
    atInput: (name) => ` am Eingang ${name}`,
    notKnown: (name, fields) => `Nicht bekannt: ${name}; es fehlt: ${fields}.`,
    nothing: (name) => `Nichts genügt: ${name}`,
    anything: (name) => `Jeder Wert genügt: ${name}`,
    askedBy: (fields) => `gefordert durch ${fields}`,
    limit: (words) => `Grenze: ${words}`,
    without: (fields) => `womöglich strenger, sobald bekannt: ${fields}`,
    atLoss: (loss) => `angegeben bei −${loss}`,
    atMass: (mass, of) => (of === 'sensor' ? `für seine ${mass}` : `für den schwersten zulässigen Aufnehmer, ${mass}`),
    tooHeavy:
      'Ankopplung und Kabel sind allein schon zu schwer; nur berührungslose Messung oder ein anderer Punkt hilft',
    value: (value) => `Dieser Aufnehmer: ${value}`,
    valueNotKnown: (fields) => `Dieser Aufnehmer: nicht bekannt; es fehlt: ${fields}.`,
    spareFactor: (factor) => `Reserve: Faktor ${factor}`,
    shortFactor: (factor) => `verfehlt um den Faktor ${factor}`,
    spare: (size) => `Reserve: ${size}`,
    short: (size) => `verfehlt um ${size}`,
  },
  fr: {
    between: ' ; ',
    atInput: (name) => ` sur l’entrée ${name}`,
    notKnown: (name, fields) => `Inconnu : ${name} ; il manque : ${fields}.`,
    nothing: (name) => `Rien ne suffit : ${name}`,
    anything: (name) => `Toute valeur convient : ${name}`,
    askedBy: (fields) => `demandé par ${fields}`,
    limit: (words) => `limite : ${words}`,
    without: (fields) => `peut-être plus sévère une fois connu : ${fields}`,
    atLoss: (loss) => `donnée à −${loss}`,
    atMass: (mass, of) => (of === 'sensor' ? `pour ses ${mass}` : `pour le capteur le plus lourd admis, ${mass}`),
    tooHeavy:
      'la fixation et le câble sont déjà trop lourds ; seule une mesure sans contact ou un autre point conviendrait',
    value: (value) => `Ce capteur : ${value}`,
    valueNotKnown: (fields) => `Ce capteur : inconnu ; il manque : ${fields}.`,
    spareFactor: (factor) => `marge d’un facteur ${factor}`,
    shortFactor: (factor) => `dépassement d’un facteur ${factor}`,
    spare: (size) => `marge de ${size}`,
    short: (size) => `dépassement de ${size}`,
  },
};
