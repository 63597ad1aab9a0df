import type { InLanguages, Language } from '../../core/language';
import { HostProblem } from '../../workbook/port';

type Answer = readonly [HostProblem['code'], InLanguages<string>];

const ITS_ANSWER: InLanguages<string> = { en: ' Its answer was: ', de: ' Die Antwort war: ', fr: ' Sa réponse : ' };

const BUSY: Answer = [
  'host',
  {
    en: 'Excel is busy with something else. Finish what is open there, then try again.',
    de: 'Excel ist mit etwas anderem beschäftigt. Schließen Sie dort ab, was offen ist, und versuchen Sie es noch einmal.',
    fr: 'Excel est occupé à autre chose. Terminez ce qui y est ouvert, puis réessayez.',
  },
];
const TOO_LARGE: Answer = [
  'too-large',
  {
    en: 'That is more than Excel takes at once. Try again with fewer rows.',
    de: 'Das ist mehr, als Excel auf einmal annimmt. Versuchen Sie es mit weniger Zeilen.',
    fr: 'C’est plus qu’Excel n’accepte en une fois. Réessayez avec moins de lignes.',
  },
];
const MISSING: Answer = [
  'not-found',
  {
    en: 'Something that was there before is gone: a sheet, a table or a cell. Read the sheet again.',
    de: 'Etwas, das vorher da war, fehlt nun: ein Blatt, eine Tabelle oder eine Zelle. Lesen Sie das Blatt neu ein.',
    fr: 'Quelque chose a disparu : une feuille, un tableau ou une cellule. Relisez la feuille.',
  },
];
const MERGED: Answer = [
  'occupied',
  {
    en: 'Merged cells are in the way. Take the merge apart there, or choose other columns.',
    de: 'Verbundene Zellen sind im Weg. Heben Sie die Verbindung dort auf oder wählen Sie andere Spalten.',
    fr: 'Des cellules fusionnées gênent. Défusionnez-les ou choisissez d’autres colonnes.',
  },
];
const UNSUPPORTED: Answer = [
  'unsupported',
  {
    en: 'This version of Excel cannot do that.',
    de: 'Diese Version von Excel kann das nicht.',
    fr: 'Cette version d’Excel ne sait pas le faire.',
  },
];
const REFUSED: Answer = [
  'host',
  { en: 'Excel refused the change.', de: 'Excel hat die Änderung abgelehnt.', fr: 'Excel a refusé la modification.' },
];
const ELSEWHERE: Answer = [
  'host',
  {
    en: 'The data behind this workbook cannot be reached now. Try again later.',
    de: 'Die Daten hinter dieser Arbeitsmappe sind gerade nicht erreichbar. Versuchen Sie es später noch einmal.',
    fr: 'Les données liées à ce classeur sont inaccessibles pour l’instant. Réessayez plus tard.',
  },
];

/** Every code that Excel documents, and what it means for a planner. */
const ANSWERS = {
  AccessDenied: [
    'protected',
    {
      en: 'The sheet or the workbook is protected. Remove the protection (Review tab), then try again.',
      de: 'Das Blatt oder die Arbeitsmappe ist geschützt. Heben Sie den Schutz auf (Registerkarte Überprüfen) und versuchen Sie es noch einmal.',
      fr: 'La feuille ou le classeur est protégé. Ôtez la protection (onglet Révision), puis réessayez.',
    },
  ],
  ApiNotFound: UNSUPPORTED,
  Conflict: [
    'host',
    {
      en: 'Somebody else changed the same cells at the same time. Try again.',
      de: 'Jemand anderes hat gleichzeitig dieselben Zellen geändert. Versuchen Sie es noch einmal.',
      fr: 'Quelqu’un d’autre a modifié les mêmes cellules en même temps. Réessayez.',
    },
  ],
  DirtySupportingFormula: BUSY,
  EmptyChartSeries: REFUSED,
  FilteredRangeConflict: [
    'occupied',
    {
      en: 'A filter is in the way. Clear the filter of this sheet, then try again.',
      de: 'Ein Filter ist im Weg. Löschen Sie den Filter dieses Blatts und versuchen Sie es noch einmal.',
      fr: 'Un filtre gêne. Effacez le filtre de cette feuille, puis réessayez.',
    },
  ],
  FormulaLengthExceedsLimit: [
    'too-large',
    {
      en: 'A formula is longer than Excel allows (8,192 characters).',
      de: 'Eine Formel ist länger, als Excel erlaubt (8192 Zeichen).',
      fr: 'Une formule est plus longue qu’Excel ne le permet (8192 caractères).',
    },
  ],
  GeneralException: REFUSED,
  InactiveWorkbook: [
    'host',
    {
      en: 'This workbook is not in front. Bring its window to the front, then try again.',
      de: 'Diese Arbeitsmappe liegt nicht vorn. Holen Sie ihr Fenster nach vorn und versuchen Sie es noch einmal.',
      fr: 'Ce classeur n’est pas au premier plan. Amenez sa fenêtre devant, puis réessayez.',
    },
  ],
  InsertDeleteConflict: [
    'occupied',
    {
      en: 'There is no room: something lies where the columns should go.',
      de: 'Kein Platz: Wo die Spalten hinsollen, liegt schon etwas.',
      fr: 'Pas de place : quelque chose occupe l’endroit des colonnes.',
    },
  ],
  InvalidArgument: REFUSED,
  InvalidBinding: MISSING,
  InvalidOperation: REFUSED,
  InvalidReference: MISSING,
  InvalidSelection: [
    'not-found',
    { en: 'No cells are selected.', de: 'Es sind keine Zellen markiert.', fr: 'Aucune cellule n’est sélectionnée.' },
  ],
  ItemAlreadyExists: [
    'occupied',
    {
      en: 'Something of that name is there already.',
      de: 'Etwas mit diesem Namen gibt es schon.',
      fr: 'Quelque chose porte déjà ce nom.',
    },
  ],
  ItemNotFound: MISSING,
  MergedRangeConflict: MERGED,
  NonBlankCellOffSheet: [
    'occupied',
    {
      en: 'There is no room at the end of the sheet.',
      de: 'Am Ende des Blatts ist kein Platz.',
      fr: 'Il n’y a pas de place à la fin de la feuille.',
    },
  ],
  NotImplemented: UNSUPPORTED,
  OpenWorkbookLinksBlocked: ELSEWHERE,
  OperationCellsExceedLimit: TOO_LARGE,
  PivotTableRangeConflict: [
    'occupied',
    {
      en: 'A pivot table is in the way. Move it, or choose other columns.',
      de: 'Eine Pivot-Tabelle ist im Weg. Verschieben Sie sie oder wählen Sie andere Spalten.',
      fr: 'Un tableau croisé dynamique gêne. Déplacez-le ou choisissez d’autres colonnes.',
    },
  ],
  PowerQueryRefreshResourceChallenge: ELSEWHERE,
  RangeExceedsLimit: TOO_LARGE,
  RangeImageExceedsLimit: TOO_LARGE,
  RefreshWorkbookLinksBlocked: ELSEWHERE,
  RequestAborted: [
    'host',
    {
      en: 'Excel broke the request off. Try again.',
      de: 'Excel hat die Anfrage abgebrochen. Versuchen Sie es noch einmal.',
      fr: 'Excel a interrompu la demande. Réessayez.',
    },
  ],
  ResponsePayloadSizeLimitExceeded: TOO_LARGE,
  UnsupportedFeature: UNSUPPORTED,
  UnsupportedFillType: UNSUPPORTED,
  UnsupportedOperation: UNSUPPORTED,
  UnsupportedSheet: [
    'unsupported',
    {
      en: 'This kind of sheet holds no cells. Choose a worksheet.',
      de: 'Ein Blatt dieser Art hat keine Zellen. Wählen Sie ein Tabellenblatt.',
      fr: 'Ce type de feuille n’a pas de cellules. Choisissez une feuille de calcul.',
    },
  ],
  InvalidOperationInCellEditMode: [
    'host',
    {
      en: 'A cell is being edited. Press Enter or Esc there, then try again.',
      de: 'Eine Zelle wird gerade bearbeitet. Drücken Sie dort die Eingabetaste oder Esc und versuchen Sie es noch einmal.',
      fr: 'Une cellule est en cours de saisie. Appuyez-y sur Entrée ou Échap, puis réessayez.',
    },
  ],
} as const satisfies Record<`${Excel.ErrorCodes}`, Answer>;

/** Codes that the shared layer below Excel adds. */
const SHARED_ANSWERS: Readonly<Record<string, Answer>> = {
  ActivityLimitReached: BUSY,
  ApiNotAvailable: UNSUPPORTED,
  InvalidCellAddress: MISSING,
  InvalidObjectPath: MISSING,
  RequestPayloadSizeLimitExceeded: TOO_LARGE,
  ServiceNotAvailable: BUSY,
  Timeout: [
    'host',
    {
      en: 'Excel did not answer in time. Try again.',
      de: 'Excel hat nicht rechtzeitig geantwortet. Versuchen Sie es noch einmal.',
      fr: 'Excel n’a pas répondu à temps. Réessayez.',
    },
  ],
  TooManyRequests: BUSY,
};

export const hostCodeOf = (error: unknown): string | undefined =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string'
    ? error.code
    : undefined;

/** Any rejection of Office.js as a sentence for the user. What is no host error is a fault of ours and passes unchanged. */
export const asHostProblem = (error: unknown): unknown => {
  if (error instanceof HostProblem) return error;
  const code = hostCodeOf(error);
  if (code === undefined || code === 'PropertyNotLoaded') return error;
  const answer = (ANSWERS as Readonly<Record<string, Answer>>)[code] ?? SHARED_ANSWERS[code];
  const [kind, sentence] = answer ?? REFUSED;
  if (answer && answer !== REFUSED) return new HostProblem(sentence, kind);
  const said = error instanceof Error ? error.message : code;
  const whole = (language: Language) => sentence[language] + ITS_ANSWER[language] + said;
  return new HostProblem({ en: whole('en'), de: whole('de'), fr: whole('fr') }, kind);
};
