import type { InLanguages } from '../../core/language';
import type { Assumed } from '../report/assumed';

export interface NoteWords {
  /** Name of a sheet made for the notes. */
  readonly sheet: string;
  /** First and last line of the block; the number tells which filling this was. */
  readonly begin: string;
  readonly about: (filling: number) => string;
  readonly end: string;
  readonly date: string;
  readonly assumptions: string;
  readonly readings: string;
  readonly topics: Readonly<Record<Assumed | 'limits', string>>;
  readonly defaults: (names: string) => string;
  readonly noRoom: (sheet: string, row: number, rows: number) => string;
  readonly held: (sheet: string, row: number) => string;
  readonly filled: (sheet: string, kept: number) => string;
  readonly asBefore: (sheet: string) => string;
}

export const NOTE_WORDS: InLanguages<NoteWords> = {
  en: {
    sheet: 'Plan notes',
    begin: 'Filled by Channelwright',
    about: (filling) =>
      `Filling ${filling}. Down to the last line of this block, lines are renewed with the plan; what you change or add stays.`,
    end: 'End of what is filled',
    date: 'Date',
    assumptions: 'Assumptions taken',
    readings: 'Readings made',
    topics: {
      purpose: 'Purpose',
      tolerance: 'Tolerance',
      reference: 'Reference frequency',
      calibration: 'Calibration temperature',
      spares: 'Spares',
      limits: 'Limits',
    },
    defaults: (names) => `Defaults without a standard behind them: ${names}.`,
    noRoom: (sheet, row, rows) =>
      `The notes on “${sheet}” need more room: row ${row} holds something of yours. Insert ${rows} ${rows === 1 ? 'row' : 'rows'} above it, then fill the notes again. Nothing was changed.`,
    held: (sheet, row) =>
      `Row ${row} of “${sheet}” would have to move, but holds a formula, a number or cells beside the notes. Move it below the block, then fill the notes again. Nothing was changed.`,
    filled: (sheet, kept) =>
      `The notes on “${sheet}” are filled${kept > 0 ? `; ${kept} ${kept === 1 ? 'line of yours was' : 'lines of yours were'} kept` : ''}.`,
    asBefore: (sheet) => `The notes on “${sheet}” say all of it already.`,
  },
  de: {
    sheet: 'Plan-Notizen',
    begin: 'Ausgefüllt von Channelwright',
    about: (filling) =>
      `Ausfüllung ${filling}. Bis zur letzten Zeile dieses Blocks werden Zeilen mit dem Plan erneuert; was Sie ändern oder hinzufügen, bleibt.`,
    end: 'Ende des Ausgefüllten',
    date: 'Datum',
    assumptions: 'Annahmen',
    readings: 'Lesarten',
    topics: {
      purpose: 'Zweck',
      tolerance: 'Toleranz',
      reference: 'Bezugsfrequenz',
      calibration: 'Kalibriertemperatur',
      spares: 'Ersatz',
      limits: 'Grenzen',
    },
    defaults: (names) => `Vorgaben, hinter denen keine Norm steht: ${names}.`,
    noRoom: (sheet, row, rows) =>
      `Die Notizen auf „${sheet}“ brauchen mehr Platz: In Zeile ${row} steht etwas von Ihnen. Fügen Sie darüber ${rows} ${rows === 1 ? 'Zeile' : 'Zeilen'} ein und füllen Sie die Notizen erneut aus. Nichts wurde geändert.`,
    held: (sheet, row) =>
      `Zeile ${row} auf „${sheet}“ müsste verschoben werden, enthält aber eine Formel, eine Zahl oder Zellen neben den Notizen. Setzen Sie sie unter den Block und füllen Sie die Notizen erneut aus. Nichts wurde geändert.`,
    filled: (sheet, kept) =>
      `Die Notizen auf „${sheet}“ sind ausgefüllt${kept > 0 ? `; ${kept} ${kept === 1 ? 'Ihrer Zeilen blieb' : 'Ihrer Zeilen blieben'} stehen` : ''}.`,
    asBefore: (sheet) => `Die Notizen auf „${sheet}“ sagen das alles schon.`,
  },
  fr: {
    sheet: 'Notes du plan',
    begin: 'Rempli par Channelwright',
    about: (filling) =>
      `Remplissage ${filling}. Jusqu’à la dernière ligne de ce bloc, les lignes sont renouvelées avec le plan ; ce que vous modifiez ou ajoutez reste.`,
    end: 'Fin du remplissage',
    date: 'Date',
    assumptions: 'Hypothèses retenues',
    readings: 'Lectures faites',
    topics: {
      purpose: 'Objectif',
      tolerance: 'Tolérance',
      reference: 'Fréquence de référence',
      calibration: 'Température d’étalonnage',
      spares: 'Rechanges',
      limits: 'Limites',
    },
    defaults: (names) => `Valeurs par défaut sans norme : ${names}.`,
    noRoom: (sheet, row, rows) =>
      `Les notes de « ${sheet} » manquent de place : la ligne ${row} contient quelque chose de vous. Insérez ${rows} ${rows === 1 ? 'ligne' : 'lignes'} au-dessus, puis remplissez de nouveau. Rien n’a été modifié.`,
    held: (sheet, row) =>
      `La ligne ${row} de « ${sheet} » devrait être déplacée, mais contient une formule, un nombre ou des cellules à côté des notes. Placez-la sous le bloc, puis remplissez de nouveau. Rien n’a été modifié.`,
    filled: (sheet, kept) =>
      `Les notes de « ${sheet} » sont remplies${kept > 0 ? ` ; ${kept} ${kept === 1 ? 'de vos lignes est restée' : 'de vos lignes sont restées'}` : ''}.`,
    asBefore: (sheet) => `Les notes de « ${sheet} » disent déjà tout cela.`,
  },
};

/** The first and the last line of a block, whatever language it was filled in. */
export const BEGINS: readonly string[] = Object.values(NOTE_WORDS).map(({ begin }) => begin);
export const ENDS: readonly string[] = Object.values(NOTE_WORDS).map(({ end }) => end);
