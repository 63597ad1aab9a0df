import type { InLanguages } from '../../core/language';

export interface StockWords {
  readonly title: (from: string) => string;
  readonly how: string;
  readonly none: (from: string) => string;
  readonly yours: (sheet: string) => string;
  readonly noName: (row: number) => string;
  readonly pieces: (types: number, rows: number) => string;
  readonly turned: string;
  readonly differs: (name: string, field: string, values: string) => string;
  readonly rowsAsPieces: (name: string, rows: number) => string;
  readonly volts: (name: string) => string;
  readonly stated: (name: string, text: string, kind: 'unsigned' | 'signed') => string;
  readonly temperatures: (count: number) => string;
  readonly twice: (serial: string) => string;
}

export const STOCK_WORDS: InLanguages<StockWords> = {
  en: {
    title: (from) => `Sensor list, laid out from ${from}`,
    how: 'Made anew from its source each time: correct the source, not this sheet. Formulas look sensors up here.',
    yours: (sheet) =>
      `A sheet of yours is named “${sheet}”: rename it, and lay the list out again. Nothing was written.`,
    none: (from) =>
      `${from}: no sensor list was found. Expected are sensor types with sensitivity, full scale, mass or resonance, one per row or one per column.`,
    noName: (row) => `Row ${row} of the sensor list names no type and was left out.`,
    pieces: (types, rows) => `${rows} rows of the sensor list make ${types} types.`,
    turned: 'The sensor list has its properties in rows; they were turned into columns.',
    differs: (name, field, values) => `${name}: ${field} differs between its pieces (${values}); the first is taken.`,
    rowsAsPieces: (name, rows) => `${name} stands in ${rows} rows without serial numbers; each is taken for one piece.`,
    volts: (name) => `${name}: full scale is the stated voltage over the sensitivity.`,
    stated: (name, text, kind) =>
      `${name}: "${text}" is taken as ${kind === 'unsigned' ? 'an unsigned' : 'a signed'} coefficient from the calibration temperature on.`,
    temperatures: (count) => `The deviation was read from ${count} columns of temperatures.`,
    twice: (serial) => `Serial number ${serial} stands in the list more than once and is counted once.`,
  },
  de: {
    title: (from) => `Aufnehmerliste, übernommen aus ${from}`,
    how: 'Wird jedes Mal neu aus der Quelle erzeugt: dort berichtigen, nicht hier. Die Formeln schlagen hier nach.',
    yours: (sheet) =>
      `Ein Blatt von Ihnen heißt „${sheet}“: umbenennen und die Liste noch einmal übernehmen. Nichts wurde geschrieben.`,
    none: (from) =>
      `${from}: keine Aufnehmerliste gefunden. Erwartet werden Aufnehmertypen mit Empfindlichkeit, Messbereich, Masse oder Resonanz, je Zeile oder je Spalte einer.`,
    noName: (row) => `Zeile ${row} der Aufnehmerliste nennt keinen Typ und wurde ausgelassen.`,
    pieces: (types, rows) => `${rows} Zeilen der Aufnehmerliste ergeben ${types} Typen.`,
    turned: 'Die Aufnehmerliste hat ihre Eigenschaften in Zeilen; sie wurden zu Spalten gedreht.',
    differs: (name, field, values) =>
      `${name}: ${field} unterscheidet sich zwischen den Stücken (${values}); der erste Wert gilt.`,
    rowsAsPieces: (name, rows) => `${name} steht in ${rows} Zeilen ohne Seriennummern; jede zählt als ein Stück.`,
    volts: (name) => `${name}: der Messbereich ist die angegebene Spannung durch die Empfindlichkeit.`,
    stated: (name, text, kind) =>
      `${name}: „${text}“ gilt als Koeffizient ${kind === 'unsigned' ? 'ohne' : 'mit'} Vorzeichen ab der Kalibriertemperatur.`,
    temperatures: (count) => `Der Temperaturgang wurde aus ${count} Temperaturspalten gelesen.`,
    twice: (serial) => `Die Seriennummer ${serial} steht mehrmals in der Liste und zählt einmal.`,
  },
  fr: {
    title: (from) => `Liste des capteurs, reprise de ${from}`,
    how: 'Refaite à chaque fois d’après sa source : corriger la source, pas cette feuille. Les formules cherchent ici.',
    yours: (sheet) =>
      `Une feuille à vous s’appelle « ${sheet} » : la renommer, puis reprendre la liste. Rien n’a été écrit.`,
    none: (from) =>
      `${from} : aucune liste de capteurs trouvée. Attendus : des types avec sensibilité, étendue, masse ou résonance, un par ligne ou un par colonne.`,
    noName: (row) => `La ligne ${row} de la liste des capteurs ne nomme aucun type ; elle a été laissée de côté.`,
    pieces: (types, rows) => `${rows} lignes de la liste des capteurs font ${types} types.`,
    turned: 'La liste des capteurs a ses propriétés en lignes ; elles ont été tournées en colonnes.',
    differs: (name, field, values) =>
      `${name} : ${field} diffère entre les exemplaires (${values}) ; la première valeur est prise.`,
    rowsAsPieces: (name, rows) =>
      `${name} figure sur ${rows} lignes sans numéro de série ; chacune compte pour un exemplaire.`,
    volts: (name) => `${name} : l’étendue est la tension indiquée divisée par la sensibilité.`,
    stated: (name, text, kind) =>
      `${name} : « ${text} » est pris comme coefficient ${kind === 'unsigned' ? 'sans signe' : 'signé'} à partir de la température d’étalonnage.`,
    temperatures: (count) => `La dérive a été lue dans ${count} colonnes de températures.`,
    twice: (serial) => `Le numéro de série ${serial} figure plusieurs fois et compte une fois.`,
  },
};
