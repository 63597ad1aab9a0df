import type { InLanguages } from '../../core/language';

export interface RevisionWords {
  readonly title: string;
  readonly note: string;
  readonly compare: string;
  readonly compareText: string;
  readonly pickEarlier: string;
  readonly takeBack: string;
  readonly takeBackText: string;
  readonly pickReturned: string;
  readonly pickSent: string;
  readonly sentIs: (name: string) => string;
  readonly stock: string;
  readonly stockText: string;
  readonly pickStock: string;
  readonly stockTaken: (told: string) => string;
  readonly noPlan: (name: string) => string;
  readonly noCopy: (name: string) => string;
  readonly notRead: (name: string, why: string) => string;
  readonly checkFirst: string;
  readonly reading: string;
  readonly all: (count: string) => string;
  readonly chooseEasy: string;
  readonly chooseNone: string;
  readonly take: (count: string, isOne: boolean) => string;
  readonly taken: (count: string, isOne: boolean) => string;
}

export const REVISION_WORDS: InLanguages<RevisionWords> = {
  en: {
    title: 'Other files',
    note: 'compare revisions, take a copy back, sensor lists',
    compare: 'Compare with an earlier revision',
    compareText: 'Tells what changed since: channels, verdicts and why, lists and limits. The file is only read.',
    pickEarlier: 'Choose the earlier file…',
    takeBack: 'Take a returned copy back',
    takeBackText: 'Lists the cells that a customer’s copy has otherwise. Nothing is written before you choose.',
    pickReturned: 'Choose the returned copy…',
    pickSent: 'Choose the copy as it left…',
    sentIs: (name) => `As it left: ${name}. Cells changed on both sides since are told.`,
    stock: 'Take sensors from another list',
    stockText:
      'Lays out the sensor list of another workbook on a sheet “Sensor stock”, whatever its shape: one row per type or per serial number, properties in rows, deviations in columns of temperatures. Your own sheets stay as they are.',
    pickStock: 'Choose the sensor list…',
    stockTaken: (told) =>
      `${told} Check again, so that the formulas look sensors up there; one undo takes the sheet away.`,
    noPlan: (name) => `${name}: no channel list was found in it.`,
    noCopy: (name) => `${name}: no sheet has the headings and channels of this list; headings must stay as they are.`,
    notRead: (name, why) => `${name} could not be read. ${why}`,
    checkFirst: 'The open workbook has no channel list.',
    reading: 'Reading the file',
    all: (count) => `Show all ${count}`,
    chooseEasy: 'Choose all that need no care',
    chooseNone: 'Choose none',
    take: (count, isOne) => `Take the chosen ${isOne ? 'one' : `ones (${count})`}`,
    taken: (count, isOne) => `${count} ${isOne ? 'cell' : 'cells'} taken; one undo takes it back.`,
  },
  de: {
    title: 'Andere Dateien',
    note: 'Stände vergleichen, Kopie übernehmen, Aufnehmerlisten',
    compare: 'Mit einem früheren Stand vergleichen',
    compareText:
      'Sagt, was sich seither geändert hat: Kanäle, Urteile und warum, Listen und Grenzwerte. Die Datei wird nur gelesen.',
    pickEarlier: 'Frühere Datei wählen …',
    takeBack: 'Eine zurückgekommene Kopie übernehmen',
    takeBackText:
      'Nennt die Zellen, die in der Kopie des Kunden anders sind. Nichts wird geschrieben, bevor Sie wählen.',
    pickReturned: 'Zurückgekommene Kopie wählen …',
    pickSent: 'Kopie wählen, wie sie hinausging …',
    sentIs: (name) => `Wie sie hinausging: ${name}. Auf beiden Seiten geänderte Zellen werden genannt.`,
    stock: 'Aufnehmer aus einer anderen Liste übernehmen',
    stockText:
      'Überträgt die Aufnehmerliste einer anderen Mappe auf ein Blatt „Sensor stock“, gleich welcher Form: eine Zeile je Typ oder je Seriennummer, Eigenschaften in Zeilen, Abweichungen in Temperaturspalten. Ihre eigenen Blätter bleiben, wie sie sind.',
    pickStock: 'Aufnehmerliste wählen …',
    stockTaken: (told) =>
      `${told} Noch einmal prüfen, damit die Formeln dort nachschlagen; ein Rückgängig nimmt das Blatt weg.`,
    noPlan: (name) => `${name}: Darin wurde keine Kanalliste gefunden.`,
    noCopy: (name) =>
      `${name}: Kein Blatt hat die Überschriften und Kanäle dieser Liste; Überschriften müssen bleiben, wie sie sind.`,
    notRead: (name, why) => `${name} war nicht zu lesen. ${why}`,
    checkFirst: 'Die offene Mappe hat keine Kanalliste.',
    reading: 'Die Datei wird gelesen',
    all: (count) => `Alle ${count} zeigen`,
    chooseEasy: 'Alle wählen, die keine Vorsicht brauchen',
    chooseNone: 'Keine wählen',
    take: (count, isOne) => (isOne ? 'Die gewählte übernehmen' : `Die gewählten übernehmen (${count})`),
    taken: (count, isOne) => `${count} ${isOne ? 'Zelle' : 'Zellen'} übernommen; ein Rückgängig nimmt es zurück.`,
  },
  fr: {
    title: 'Autres fichiers',
    note: 'comparer des révisions, reprendre une copie',
    compare: 'Comparer à une révision antérieure',
    compareText:
      'Dit ce qui a changé depuis : voies, verdicts et pourquoi, listes et limites. Le fichier est seulement lu.',
    pickEarlier: 'Choisir le fichier antérieur…',
    takeBack: 'Reprendre une copie revenue',
    takeBackText: 'Énumère les cellules qui diffèrent dans la copie du client. Rien n’est écrit avant votre choix.',
    pickReturned: 'Choisir la copie revenue…',
    pickSent: 'Choisir la copie telle que partie…',
    sentIs: (name) => `Telle que partie : ${name}. Les cellules modifiées des deux côtés sont signalées.`,
    stock: 'Reprendre les capteurs d’une autre liste',
    stockText:
      'Reporte la liste de capteurs d’un autre classeur sur une feuille « Sensor stock », quelle que soit sa forme : une ligne par type ou par numéro de série, propriétés en lignes, écarts en colonnes de températures. Vos feuilles restent telles quelles.',
    pickStock: 'Choisir la liste de capteurs…',
    stockTaken: (told) =>
      `${told} Vérifier à nouveau, pour que les formules y cherchent les capteurs ; une annulation retire la feuille.`,
    noPlan: (name) => `${name} : aucune liste de voies n’y a été trouvée.`,
    noCopy: (name) =>
      `${name} : aucune feuille n’a les en-têtes et les voies de cette liste ; les en-têtes doivent rester tels quels.`,
    notRead: (name, why) => `${name} n’a pas pu être lu. ${why}`,
    checkFirst: 'Le classeur ouvert n’a pas de liste de voies.',
    reading: 'Lecture du fichier',
    all: (count) => `Montrer les ${count}`,
    chooseEasy: 'Choisir tout ce qui ne demande pas d’attention',
    chooseNone: 'Ne rien choisir',
    take: (count, isOne) => (isOne ? 'Reprendre la cellule choisie' : `Reprendre les cellules choisies (${count})`),
    taken: (count, isOne) => `${count} ${isOne ? 'cellule reprise' : 'cellules reprises'} ; une annulation suffit.`,
  },
};
