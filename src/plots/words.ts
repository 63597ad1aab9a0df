import type { CeilingCause } from '../core/level/ceiling';
import type { HighCause } from '../core/frequency/span';
import type { InLanguages } from '../core/language';
import type { PoleCause } from '../plan/frequency';

export interface PlotWords {
  readonly ladder: string;
  readonly span: string;
  readonly thermal: string;
  readonly notKnown: string;
  readonly empty: string;
  readonly noise: string;
  readonly lowest: string;
  readonly highest: string;
  readonly upperLimit: string;
  readonly signalToNoise: string;
  readonly headroom: string;
  readonly bandNeeded: string;
  readonly usable: (tolerance: string) => string;
  readonly from: string;
  readonly to: string;
  readonly deviation: string;
  readonly limit: string;
  readonly rated: string;
  readonly temperature: string;
  readonly calibrated: string;
  readonly accelerationAxis: string;
  readonly frequencyAxis: string;
  readonly temperatureAxis: string;
  readonly ladderBar: string;
  readonly ladderBracket: string;
  readonly ladderLimits: string;
  readonly spanBar: string;
  readonly spanWide: string;
  readonly spanBracket: string;
  readonly thermalBand: string;
  readonly thermalNeeded: string;
  readonly thermalCurve: string;
  readonly ceiling: Readonly<Record<CeilingCause, string>>;
  readonly low: Readonly<Record<PoleCause, string>>;
  readonly high: Readonly<Record<HighCause, string>>;
}

export const PLOT_WORDS: InLanguages<PlotWords> = {
  en: {
    ladder: 'Level range',
    span: 'Frequency span',
    thermal: 'Thermal deviation',
    notKnown: 'not known',
    empty: 'no span is left',
    noise: 'noise',
    lowest: 'lowest level',
    highest: 'highest level',
    upperLimit: 'upper limit',
    signalToNoise: 'signal to noise',
    headroom: 'headroom',
    bandNeeded: 'band needed',
    usable: (tolerance) => `usable at ±${tolerance} %`,
    from: 'from',
    to: 'to',
    deviation: 'deviation',
    limit: 'limit',
    rated: 'rated',
    temperature: 'temperature',
    calibrated: 'calibrated at',
    accelerationAxis: 'g (noise, lowest: r.m.s.; others: peak)',
    frequencyAxis: 'frequency, Hz',
    temperatureAxis: 'temperature, °C',
    ladderBar: 'noise to upper limit',
    ladderBracket: 'lowest to highest level',
    ladderLimits: 'where noise and upper limit would just pass',
    spanBar: 'usable span',
    spanWide: 'at the wider tolerance',
    spanBracket: 'band needed',
    thermalBand: 'tolerance',
    thermalNeeded: 'temperatures needed',
    thermalCurve: 'deviation of the sensitivity, %',
    ceiling: {
      'full scale': 'full scale',
      'input range': 'input range',
      'bias swing': 'bias swing',
      'amplifier output': 'amplifier output',
    },
    low: { sensor: 'sensor', 'charge amplifier': 'charge amplifier', 'AC coupling': 'AC coupling' },
    high: {
      response: 'mounted resonance',
      analyser: 'analyser',
      'cable drive': 'cable drive',
      'data sheet': 'data sheet',
    },
  },
  de: {
    ladder: 'Pegelbereich',
    span: 'Frequenzbereich',
    thermal: 'Temperaturgang',
    notKnown: 'nicht bekannt',
    empty: 'kein Bereich bleibt übrig',
    noise: 'Rauschen',
    lowest: 'kleinster Pegel',
    highest: 'größter Pegel',
    upperLimit: 'obere Grenze',
    signalToNoise: 'Rauschabstand',
    headroom: 'Aussteuerreserve',
    bandNeeded: 'benötigtes Band',
    usable: (tolerance) => `nutzbar bei ±${tolerance} %`,
    from: 'von',
    to: 'bis',
    deviation: 'Abweichung',
    limit: 'Grenze',
    rated: 'zugelassen',
    temperature: 'Temperatur',
    calibrated: 'kalibriert bei',
    accelerationAxis: 'g (Rauschen, kleinster: effektiv; sonst Spitze)',
    frequencyAxis: 'Frequenz, Hz',
    temperatureAxis: 'Temperatur, °C',
    ladderBar: 'Rauschen bis obere Grenze',
    ladderBracket: 'kleinster bis größter Pegel',
    ladderLimits: 'wo Rauschen und obere Grenze gerade genügen',
    spanBar: 'nutzbarer Bereich',
    spanWide: 'bei der weiteren Toleranz',
    spanBracket: 'benötigtes Band',
    thermalBand: 'Toleranz',
    thermalNeeded: 'benötigte Temperaturen',
    thermalCurve: 'Abweichung der Empfindlichkeit, %',
    ceiling: {
      'full scale': 'Messbereich',
      'input range': 'Eingangsbereich',
      'bias swing': 'Aussteuerung um die Ruhespannung',
      'amplifier output': 'Verstärkerausgang',
    },
    low: { sensor: 'Aufnehmer', 'charge amplifier': 'Ladungsverstärker', 'AC coupling': 'AC-Kopplung' },
    high: {
      response: 'Resonanz mit Ankopplung',
      analyser: 'Analysator',
      'cable drive': 'Kabeltreiber',
      'data sheet': 'Datenblatt',
    },
  },
  fr: {
    ladder: 'Plage de niveaux',
    span: 'Plage de fréquences',
    thermal: 'Dérive thermique',
    notKnown: 'inconnu',
    empty: 'aucune plage ne reste',
    noise: 'bruit',
    lowest: 'niveau le plus faible',
    highest: 'niveau le plus fort',
    upperLimit: 'limite supérieure',
    signalToNoise: 'rapport signal sur bruit',
    headroom: 'réserve',
    bandNeeded: 'bande requise',
    usable: (tolerance) => `utilisable à ±${tolerance} %`,
    from: 'de',
    to: 'à',
    deviation: 'écart',
    limit: 'limite',
    rated: 'admis',
    temperature: 'température',
    calibrated: 'étalonné à',
    accelerationAxis: 'g (bruit, faible : efficace ; autres : crête)',
    frequencyAxis: 'fréquence, Hz',
    temperatureAxis: 'température, °C',
    ladderBar: 'du bruit à la limite supérieure',
    ladderBracket: 'du niveau le plus faible au plus fort',
    ladderLimits: 'où le bruit et la limite suffiraient tout juste',
    spanBar: 'plage utilisable',
    spanWide: 'à la tolérance élargie',
    spanBracket: 'bande requise',
    thermalBand: 'tolérance',
    thermalNeeded: 'températures requises',
    thermalCurve: 'écart de la sensibilité, %',
    ceiling: {
      'full scale': 'étendue de mesure',
      'input range': 'calibre d’entrée',
      'bias swing': 'excursion autour de la polarisation',
      'amplifier output': 'sortie de l’amplificateur',
    },
    low: { sensor: 'capteur', 'charge amplifier': 'amplificateur de charge', 'AC coupling': 'couplage alternatif' },
    high: {
      response: 'résonance montée',
      analyser: 'analyseur',
      'cable drive': 'courant dans le câble',
      'data sheet': 'fiche technique',
    },
  },
};
