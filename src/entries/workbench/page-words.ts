import type { InLanguages } from '../../core/language';

/** What the page itself says; texts of workbench.html stand under the names that its `data-word` attributes give. */
export interface PageWords {
  readonly texts: Readonly<Record<PageText, string>>;
  readonly opening: (title: string) => string;
  readonly notOpened: (title: string, reason: string) => string;
  readonly notSaved: (reason: string) => string;
  readonly pageTitle: (title: string) => string;
}

export type PageText =
  | 'skip'
  | 'noWorkbook'
  | 'help'
  | 'examples'
  | 'undo'
  | 'redo'
  | 'demo'
  | 'open'
  | 'save'
  | 'hidePane'
  | 'showPane'
  | 'closeMessage'
  | 'offerTitle'
  | 'offerText'
  | 'offerLost'
  | 'offerSave'
  | 'cancel'
  | 'workbook'
  | 'sheetHelp'
  | 'loading'
  | 'paneWidth'
  | 'pane'
  | 'drop'
  | 'dropHint'
  | 'saving'
  | 'copyFailed'
  | 'cannotShow'
  | 'demoMissing'
  | 'cannotStart'
  | 'cellAddress'
  | 'names'
  | 'tallerFormula'
  | 'sheetList'
  | 'addSheet';

export const PAGE_WORDS: InLanguages<PageWords> = {
  en: {
    texts: {
      skip: 'Skip to the plan pane',
      noWorkbook: 'No workbook open',
      help: 'Help',
      examples: 'Examples workbook',
      undo: 'Undo',
      redo: 'Redo',
      demo: 'Demo plan',
      open: 'Open…',
      save: 'Save a copy',
      hidePane: 'Hide pane',
      showPane: 'Show pane',
      closeMessage: 'Close message',
      offerTitle: 'Your file cannot take this over as it is',
      offerText:
        'A copy of your file holds edited cells and the check columns, but not a new arrangement. A new workbook can be made from the sheets as they are shown here: values, formulas, looks, widths, merged cells, notes and tables.',
      offerLost: 'Your file has these, and the new workbook would not:',
      offerSave: 'Save as a new workbook',
      cancel: 'Cancel',
      workbook: 'Workbook',
      sheetHelp: 'Move with the arrow keys; the active cell and its verdict are spoken. F6 moves to the plan pane.',
      loading: 'Loading the spreadsheet…',
      paneWidth: 'Width of the plan pane',
      pane: 'Plan pane',
      drop: 'Drop the workbook to open it',
      dropHint: 'one .xlsx or .xlsm file; it stays on this machine',
      saving: 'Saving…',
      copyFailed: 'The copy could not be written.',
      cannotShow: 'The spreadsheet could not show this workbook.',
      demoMissing: 'The demo plan is missing from this installation. Build the project again.',
      cannotStart: 'The spreadsheet could not start. Reload the page; if it stays so, use a newer browser.',
      cellAddress: 'Address of the active cell',
      names: 'Names in this workbook',
      tallerFormula: 'Make the formula bar taller',
      sheetList: 'List of sheets',
      addSheet: 'Add a sheet',
    },
    opening: (title) => `Opening ${title}…`,
    notOpened: (title, reason) => `${title} was not opened. ${reason}`,
    notSaved: (reason) => `Nothing was saved. ${reason}`,
    pageTitle: (title) => `${title} – Channelwright workbench`,
  },
  de: {
    texts: {
      skip: 'Zum Planbereich springen',
      noWorkbook: 'Keine Mappe geöffnet',
      help: 'Hilfe',
      examples: 'Beispielmappe',
      undo: 'Rückgängig',
      redo: 'Wiederholen',
      demo: 'Beispielplan',
      open: 'Öffnen …',
      save: 'Kopie speichern',
      hidePane: 'Bereich ausblenden',
      showPane: 'Bereich zeigen',
      closeMessage: 'Meldung schließen',
      offerTitle: 'Ihre Datei kann dies so nicht aufnehmen',
      offerText:
        'Eine Kopie Ihrer Datei nimmt geänderte Zellen und die Prüfspalten auf, aber keine neue Anordnung. Aus den Blättern, wie sie hier stehen, lässt sich eine neue Mappe machen: Werte, Formeln, Aussehen, Breiten, verbundene Zellen, Notizen und Tabellen.',
      offerLost: 'Ihre Datei hat dies, die neue Mappe hätte es nicht:',
      offerSave: 'Als neue Mappe speichern',
      cancel: 'Abbrechen',
      workbook: 'Mappe',
      sheetHelp:
        'Mit den Pfeiltasten bewegen; die aktive Zelle und ihr Urteil werden gesprochen. F6 führt zum Planbereich.',
      loading: 'Die Tabelle wird geladen …',
      paneWidth: 'Breite des Planbereichs',
      pane: 'Planbereich',
      drop: 'Mappe zum Öffnen hier ablegen',
      dropHint: 'eine Datei .xlsx oder .xlsm; sie bleibt auf diesem Rechner',
      saving: 'Wird gespeichert …',
      copyFailed: 'Die Kopie ließ sich nicht schreiben.',
      cannotShow: 'Die Tabelle konnte diese Mappe nicht zeigen.',
      demoMissing: 'Der Beispielplan fehlt in dieser Installation. Das Projekt neu bauen.',
      cannotStart:
        'Die Tabelle konnte nicht starten. Die Seite neu laden; bleibt es dabei, einen neueren Browser nehmen.',
      cellAddress: 'Adresse der aktiven Zelle',
      names: 'Namen in dieser Mappe',
      tallerFormula: 'Formelzeile höher machen',
      sheetList: 'Liste der Blätter',
      addSheet: 'Blatt hinzufügen',
    },
    opening: (title) => `${title} wird geöffnet …`,
    notOpened: (title, reason) => `${title} wurde nicht geöffnet. ${reason}`,
    notSaved: (reason) => `Nichts wurde gespeichert. ${reason}`,
    pageTitle: (title) => `${title} – Channelwright`,
  },
  fr: {
    texts: {
      skip: 'Aller au volet du plan',
      noWorkbook: 'Aucun classeur ouvert',
      help: 'Aide',
      examples: 'Classeur d’exemples',
      undo: 'Annuler',
      redo: 'Rétablir',
      demo: 'Plan d’exemple',
      open: 'Ouvrir…',
      save: 'Enregistrer une copie',
      hidePane: 'Masquer le volet',
      showPane: 'Montrer le volet',
      closeMessage: 'Fermer le message',
      offerTitle: 'Votre fichier ne peut pas recevoir cela tel quel',
      offerText:
        'Une copie de votre fichier reçoit les cellules modifiées et les colonnes de contrôle, mais pas une nouvelle disposition. Un nouveau classeur peut être fait des feuilles telles qu’elles sont montrées ici : valeurs, formules, aspect, largeurs, cellules fusionnées, notes et tableaux.',
      offerLost: 'Votre fichier contient ceci, que le nouveau classeur n’aurait pas :',
      offerSave: 'Enregistrer comme nouveau classeur',
      cancel: 'Annuler',
      workbook: 'Classeur',
      sheetHelp:
        'Se déplacer avec les flèches ; la cellule active et son verdict sont énoncés. F6 mène au volet du plan.',
      loading: 'Chargement du tableur…',
      paneWidth: 'Largeur du volet du plan',
      pane: 'Volet du plan',
      drop: 'Déposer le classeur pour l’ouvrir',
      dropHint: 'un fichier .xlsx ou .xlsm ; il reste sur cette machine',
      saving: 'Enregistrement…',
      copyFailed: 'La copie n’a pas pu être écrite.',
      cannotShow: 'Le tableur n’a pas pu montrer ce classeur.',
      demoMissing: 'Le plan d’exemple manque à cette installation. Construire à nouveau le projet.',
      cannotStart:
        'Le tableur n’a pas pu démarrer. Recharger la page ; si cela persiste, prendre un navigateur plus récent.',
      cellAddress: 'Adresse de la cellule active',
      names: 'Noms de ce classeur',
      tallerFormula: 'Agrandir la barre de formule',
      sheetList: 'Liste des feuilles',
      addSheet: 'Ajouter une feuille',
    },
    opening: (title) => `Ouverture de ${title}…`,
    notOpened: (title, reason) => `${title} n’a pas été ouvert. ${reason}`,
    notSaved: (reason) => `Rien n’a été enregistré. ${reason}`,
    pageTitle: (title) => `${title} – Channelwright`,
  },
};
