import type { InLanguages, Language } from '../../core/language';

export interface PaperWords {
  readonly title: string;
  readonly note: string;
  readonly report: string;
  readonly kind: string;
  readonly kinds: { readonly page: string; readonly markdown: string };
  readonly language: string;
  readonly paper: string;
  readonly makeReport: string;
  readonly ready: string;
  readonly open: string;
  readonly perhaps: string;
  readonly noWindow: string;
  readonly summary: string;
  readonly summaryText: string;
  readonly makeSummary: string;
  readonly summaryMade: (sheet: string) => string;
  readonly chartsInFile: string;
  readonly notes: string;
  readonly notesText: string;
  readonly fillNotes: string;
  readonly notYet: string;
  readonly sheetOf: string;
  readonly sheetMade: (sheet: string) => string;
  readonly plotsInFile: string;
  readonly mapping: string;
  readonly mappingText: string;
  readonly saveMapping: string;
  readonly loadMapping: string;
  readonly nothingCorrected: string;
  readonly noJson: (file: string) => string;
  readonly taken: (file: string, count: number) => string;
  readonly notHere: (headings: string) => string;
  readonly mappingFile: string;
}

/** Languages by their own names. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch', fr: 'Français' };

export const PAPER_WORDS: InLanguages<PaperWords> = {
  en: {
    title: 'Report and notes',
    note: 'to print, to send, to keep with the plan',
    report: 'Report',
    kind: 'Kind',
    kinds: { page: 'Page to print', markdown: 'Markdown' },
    language: 'Language',
    paper: 'Paper',
    makeReport: 'Make report',
    ready: 'Report ready:',
    open: 'Open in a window',
    perhaps:
      'If no file arrives, this program keeps add-ins from saving: open it in a window and print or save it there.',
    noWindow:
      'This program opens no window for an add-in. The workbench and the command “check PLAN --report FILE” write the same report.',
    summary: 'Summary sheet',
    summaryText: 'Counts, decisions, lists to order and charts on a sheet of this workbook, ready to print.',
    makeSummary: 'Make summary sheet',
    summaryMade: (sheet) => `The sheet “${sheet}” sums up the plan.`,
    chartsInFile: 'Its charts stand in the copy that you save, in the room left free for them here.',
    notes: 'Plan notes',
    notesText:
      'Assumptions taken, readings made, revision, date and names, in a marked block on the sheet of notes. Your own lines and changes stay.',
    fillNotes: 'Fill plan notes',
    notYet: 'The plan is still being read; press again in a moment.',
    sheetOf: 'Sheet of this channel',
    sheetMade: (sheet) => `The sheet “${sheet}” shows this channel.`,
    plotsInFile: 'Its three plots stand in the copy that you save, in the room left free for them here.',
    mapping: 'For the next list of the same lab',
    mappingText: 'What you corrected above can be saved as a file and loaded with another list.',
    saveMapping: 'Save corrections',
    loadMapping: 'Load corrections…',
    nothingCorrected: 'Nothing was corrected here; there is nothing to save.',
    noJson: (file) => `“${file}” holds no corrections: it is not JSON.`,
    taken: (file, count) => `${count} ${count === 1 ? 'correction' : 'corrections'} taken from “${file}”.`,
    notHere: (headings) => `Not in this list: ${headings}.`,
    mappingFile: 'columns',
  },
  de: {
    title: 'Bericht und Notizen',
    note: 'zum Drucken, Versenden und Ablegen beim Plan',
    report: 'Bericht',
    kind: 'Art',
    kinds: { page: 'Seite zum Drucken', markdown: 'Markdown' },
    language: 'Sprache',
    paper: 'Papier',
    makeReport: 'Bericht erstellen',
    ready: 'Bericht fertig:',
    open: 'In einem Fenster öffnen',
    perhaps:
      'Kommt keine Datei an, lässt dieses Programm Add-ins nicht speichern: dann in einem Fenster öffnen und dort drucken oder speichern.',
    noWindow:
      'Dieses Programm öffnet einem Add-in kein Fenster. Die Werkbank und der Befehl „check PLAN --report DATEI“ schreiben denselben Bericht.',
    summary: 'Übersichtsblatt',
    summaryText:
      'Anzahlen, Entscheidungen, Bestelllisten und Diagramme auf einem Blatt dieser Mappe, fertig zum Drucken.',
    makeSummary: 'Übersichtsblatt erstellen',
    summaryMade: (sheet) => `Das Blatt „${sheet}“ fasst den Plan zusammen.`,
    chartsInFile: 'Die Diagramme stehen in der gespeicherten Kopie, dort, wo hier Platz frei ist.',
    notes: 'Plan-Notizen',
    notesText:
      'Annahmen, Lesarten, Revision, Datum und Namen, in einem gekennzeichneten Block auf dem Notizblatt. Ihre Zeilen und Änderungen bleiben.',
    fillNotes: 'Plan-Notizen ausfüllen',
    notYet: 'Der Plan wird noch gelesen; gleich noch einmal drücken.',
    sheetOf: 'Blatt dieses Kanals',
    sheetMade: (sheet) => `Das Blatt „${sheet}“ zeigt diesen Kanal.`,
    plotsInFile: 'Die drei Bilder stehen in der gespeicherten Kopie, dort, wo hier Platz frei ist.',
    mapping: 'Für die nächste Liste desselben Labors',
    mappingText: 'Was Sie oben berichtigt haben, lässt sich als Datei speichern und mit einer anderen Liste laden.',
    saveMapping: 'Berichtigungen speichern',
    loadMapping: 'Berichtigungen laden …',
    nothingCorrected: 'Hier wurde nichts berichtigt; es gibt nichts zu speichern.',
    noJson: (file) => `„${file}“ enthält keine Berichtigungen: kein JSON.`,
    taken: (file, count) => `${count} ${count === 1 ? 'Berichtigung' : 'Berichtigungen'} aus „${file}“ übernommen.`,
    notHere: (headings) => `Nicht in dieser Liste: ${headings}.`,
    mappingFile: 'Spalten',
  },
  fr: {
    title: 'Rapport et notes',
    note: 'à imprimer, à envoyer, à garder avec le plan',
    report: 'Rapport',
    kind: 'Forme',
    kinds: { page: 'Page à imprimer', markdown: 'Markdown' },
    language: 'Langue',
    paper: 'Papier',
    makeReport: 'Établir le rapport',
    ready: 'Rapport prêt :',
    open: 'Ouvrir dans une fenêtre',
    perhaps:
      'Si aucun fichier n’arrive, ce programme interdit aux compléments d’enregistrer : ouvrez le rapport dans une fenêtre, puis imprimez ou enregistrez.',
    noWindow:
      'Ce programme n’ouvre pas de fenêtre pour un complément. L’atelier et la commande « check PLAN --report FICHIER » écrivent le même rapport.',
    summary: 'Feuille de synthèse',
    summaryText:
      'Nombres, décisions, listes à commander et graphiques sur une feuille de ce classeur, prête à imprimer.',
    makeSummary: 'Établir la synthèse',
    summaryMade: (sheet) => `La feuille « ${sheet} » résume le plan.`,
    chartsInFile: 'Ses graphiques figurent dans la copie enregistrée, à la place laissée libre ici.',
    notes: 'Notes du plan',
    notesText:
      'Hypothèses, lectures, révision, date et noms, dans un bloc marqué de la feuille de notes. Vos lignes et vos changements restent.',
    fillNotes: 'Remplir les notes',
    notYet: 'Le plan est encore en cours de lecture ; appuyez de nouveau dans un instant.',
    sheetOf: 'Feuille de cette voie',
    sheetMade: (sheet) => `La feuille « ${sheet} » montre cette voie.`,
    plotsInFile: 'Ses trois graphiques figurent dans la copie enregistrée, à la place laissée libre ici.',
    mapping: 'Pour la prochaine liste du même laboratoire',
    mappingText:
      'Vos corrections ci-dessus peuvent être enregistrées dans un fichier et chargées avec une autre liste.',
    saveMapping: 'Enregistrer les corrections',
    loadMapping: 'Charger des corrections…',
    nothingCorrected: 'Rien n’a été corrigé ici ; il n’y a rien à enregistrer.',
    noJson: (file) => `« ${file} » ne contient pas de corrections : ce n’est pas du JSON.`,
    taken: (file, count) => `${count} ${count === 1 ? 'correction reprise' : 'corrections reprises'} de « ${file} ».`,
    notHere: (headings) => `Absent de cette liste : ${headings}.`,
    mappingFile: 'colonnes',
  },
};
