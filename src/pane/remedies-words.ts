import type { InLanguages } from '../core/language';
import type { Staying } from '../workbook/remedies/freeze';
import type { Remainder } from '../workbook/remedies/rewrite';
import type { Stale } from '../workbook/remedies/state';

/** What the part "Help and remedies" of the pane says. */
export interface RemediesWords {
  readonly title: string;
  readonly note: string;
  readonly hintsTitle: string;
  readonly hints: readonly [string, string, string];
  readonly dismiss: string;
  readonly showHints: string;
  readonly namesTitle: string;
  readonly namesText: string;
  readonly find: string;
  readonly noneFound: string;
  readonly found: (count: string, one: boolean) => string;
  readonly foundPerhaps: (count: string, one: boolean) => string;
  readonly foundText: (count: string, one: boolean) => string;
  readonly andMore: (count: string) => string;
  readonly writeAgain: (count: string) => string;
  readonly include: (count: string, one: boolean) => string;
  readonly rewritten: (working: string, count: string) => string;
  readonly failing: Readonly<Record<Remainder, string>>;
  readonly freezeTitle: string;
  readonly freezeText: string;
  readonly scope: string;
  readonly checkColumns: string;
  readonly everyFormula: string;
  readonly look: string;
  readonly freezeOffer: (count: string, one: boolean) => string;
  readonly freeze: string;
  readonly staying: (count: string, why: Staying) => string;
  readonly frozen: (count: string, one: boolean) => string;
  readonly cancel: string;
  readonly stateTitle: string;
  readonly stateText: string;
  readonly showState: string;
  readonly copy: string;
  readonly copied: string;
  readonly copyByHand: string;
  readonly reportLabel: string;
  readonly stale: (stale: Stale) => string;
  readonly state: {
    readonly version: string;
    readonly host: string;
    readonly functions: (known: string | undefined, total: string) => string;
    readonly runtime: string;
    readonly runtimes: Readonly<Record<'shared' | 'separate' | 'page' | 'none', string>>;
    readonly calculation: string;
    readonly separators: string;
    readonly formulas: string;
    readonly errors: string;
    readonly noErrors: string;
    readonly writtenBy: string;
    readonly has: string;
    readonly lacks: string;
    /** What each ability that a host may lack costs where it is missing. */
    readonly costs: Readonly<Record<string, string>>;
  };
}

const english: RemediesWords = {
  title: 'Remedies and state',
  note: 'broken formulas, values, report',
  hintsTitle: 'First steps',
  hints: [
    'Type =CHAN. in a cell: the list of functions opens there.',
    'Press “Check channels” above: verdicts are written beside the list, and nothing of yours is changed.',
    'Nothing leaves this machine: the workbook is read and calculated here.',
  ],
  dismiss: 'Got it',
  showHints: 'Show first steps',
  namesTitle: 'Formulas that show #NAME?',
  namesText: 'Formulas entered before the add-in was loaded, or kept by another program, must be written once more.',
  find: 'Look for them',
  noneFound: 'No formula of ours shows #NAME?.',
  found: (count, one) => `${count} ${one ? 'formula shows' : 'formulas show'} #NAME? and will be written again.`,
  foundPerhaps: (count, one) =>
    `${count} more ${one ? 'has' : 'have'} a name like ours under another prefix; it may belong to another add-in.`,
  foundText: (count, one) => `${count} ${one ? 'text reads' : 'texts read'} like a formula of ours.`,
  andMore: (count) => `and ${count} more`,
  writeAgain: (count) => `Write ${count} again`,
  include: (count, one) => (one ? 'Include this one' : `Include these ${count}`),
  rewritten: (working, count) => `${working} of ${count} work now. One undo takes this back.`,
  failing: {
    'unknown name': 'still unknown: the functions are not loaded; close and open the pane, then try again',
    'other error': 'the name is known now, but the formula gives an error',
    'not taken': 'the cell did not take the formula',
  },
  freezeTitle: 'Values instead of formulas',
  freezeText: 'For readers without the add-in. “Check channels” brings the formulas of the check columns back.',
  scope: 'Which cells',
  checkColumns: 'the check columns',
  everyFormula: 'every cell with a function of ours',
  look: 'Count them',
  freezeOffer: (count, one) =>
    `${count} ${one ? 'formula' : 'formulas'} would become exact values; looks and notes stay.`,
  freeze: 'Make them values',
  staying: (count, why) =>
    ({
      error: `${count} with an error stay formulas.`,
      'fills cells': `${count} may fill several cells and stay formulas.`,
      'reads as a formula': `${count} give a text that begins with “=” and stay formulas.`,
    })[why],
  frozen: (count, one) =>
    `${count} ${one ? 'formula is a value' : 'formulas are values'} now. One undo takes this back.`,
  cancel: 'Cancel',
  stateTitle: 'State of the add-in',
  stateText: 'For a question to whoever looks after the add-in. No names, no paths, no cell contents.',
  showState: 'Show state',
  copy: 'Copy report',
  copied: 'Copied.',
  copyByHand: 'Copying is not allowed here: the text is selected, press Ctrl+C.',
  reportLabel: 'Report',
  stale: (stale) => {
    if (stale.kind === 'older than the workbook')
      return `A newer version (${stale.writtenBy}) wrote into this workbook. Close the program and open it again to load that version; until then some results may differ.`;
    if (stale.kind === 'unknown functions')
      return `This version does not know: ${stale.names.join(', ')}. Close the program and open it again; if it stays so, ask for the newer version.`;
    return `The list of functions (${stale.listed}) is not that of this version (${stale.known}): an old copy is kept. Close the program and open it again; the copy is renewed within a day.`;
  },
  state: {
    version: 'Version',
    host: 'Runs in',
    functions: (known, total) => `Functions: ${known ?? 'an unknown number'} of ${total} known to the program`,
    runtime: 'Functions run',
    runtimes: {
      shared: 'together with the pane',
      separate: 'apart from the pane',
      page: 'in this page',
      none: 'nowhere',
    },
    calculation: 'Calculation',
    separators: 'Separators',
    formulas: 'Formulas of ours',
    errors: 'Errors among them',
    noErrors: 'none',
    writtenBy: 'Newest version that wrote here',
    has: 'present',
    lacks: 'missing',
    costs: {
      separators: 'the decimal separator is not known',
      mergedAreas: 'merged cells are not seen before writing',
      tableResize: 'check columns stand beside a table, not in it',
      changeTrigger: 'events are off while the add-in writes',
      notes: 'no notes on verdicts; the column Reason says the same',
      oneUndo: 'an action may take several undo steps, or none',
    },
  },
};

const german: RemediesWords = {
  title: 'Abhilfe und Zustand',
  note: 'defekte Formeln, Werte, Bericht',
  hintsTitle: 'Erste Schritte',
  hints: [
    '=CHAN. in eine Zelle tippen: Dort öffnet sich die Liste der Funktionen.',
    'Oben „Kanäle prüfen“ drücken: Die Urteile stehen dann neben der Liste, Ihre eigenen Zellen bleiben unverändert.',
    'Nichts verlässt diesen Rechner: Die Arbeitsmappe wird hier gelesen und gerechnet.',
  ],
  dismiss: 'Verstanden',
  showHints: 'Erste Schritte zeigen',
  namesTitle: 'Formeln, die #NAME? zeigen',
  namesText:
    'Formeln, die vor dem Laden des Add-ins eingegeben oder von einem anderen Programm gespeichert wurden, müssen einmal neu geschrieben werden.',
  find: 'Danach suchen',
  noneFound: 'Keine unserer Formeln zeigt #NAME?.',
  found: (count, one) =>
    `${count} ${one ? 'Formel zeigt' : 'Formeln zeigen'} #NAME? und ${one ? 'wird' : 'werden'} neu geschrieben.`,
  foundPerhaps: (count, one) =>
    `${count} weitere ${one ? 'hat' : 'haben'} einen Namen wie unsere mit anderem Vorsatz; er kann zu einem anderen Add-in gehören.`,
  foundText: (count, one) => `${count} ${one ? 'Text liest' : 'Texte lesen'} sich wie eine Formel von uns.`,
  andMore: (count) => `und ${count} weitere`,
  writeAgain: (count) => `${count} neu schreiben`,
  include: (count, one) => (one ? 'Diese mit einschließen' : `Diese ${count} mit einschließen`),
  rewritten: (working, count) => `${working} von ${count} rechnen jetzt. Einmal Rückgängig nimmt es zurück.`,
  failing: {
    'unknown name': 'weiterhin unbekannt: Die Funktionen sind nicht geladen; Bereich schließen, öffnen und wiederholen',
    'other error': 'der Name ist jetzt bekannt, aber die Formel ergibt einen Fehler',
    'not taken': 'die Zelle hat die Formel nicht angenommen',
  },
  freezeTitle: 'Werte statt Formeln',
  freezeText: 'Für Leser ohne das Add-in. „Kanäle prüfen“ bringt die Formeln der Prüfspalten zurück.',
  scope: 'Welche Zellen',
  checkColumns: 'die Prüfspalten',
  everyFormula: 'alle Zellen mit einer unserer Funktionen',
  look: 'Zählen',
  freezeOffer: (count, one) =>
    `${count} ${one ? 'Formel würde zum genauen Wert' : 'Formeln würden zu genauen Werten'}; Formate und Notizen bleiben.`,
  freeze: 'In Werte umwandeln',
  staying: (count, why) =>
    ({
      error: `${count} mit Fehler bleiben Formeln.`,
      'fills cells': `${count} können mehrere Zellen füllen und bleiben Formeln.`,
      'reads as a formula': `${count} ergeben einen Text, der mit „=“ beginnt, und bleiben Formeln.`,
    })[why],
  frozen: (count, one) =>
    `${count} ${one ? 'Formel ist jetzt ein Wert' : 'Formeln sind jetzt Werte'}. Einmal Rückgängig nimmt es zurück.`,
  cancel: 'Abbrechen',
  stateTitle: 'Zustand des Add-ins',
  stateText: 'Für eine Rückfrage bei der Betreuung des Add-ins. Ohne Namen, ohne Pfade, ohne Zellinhalte.',
  showState: 'Zustand zeigen',
  copy: 'Bericht kopieren',
  copied: 'Kopiert.',
  copyByHand: 'Kopieren ist hier nicht erlaubt: Der Text ist markiert, Strg+C drücken.',
  reportLabel: 'Bericht',
  stale: (stale) => {
    if (stale.kind === 'older than the workbook')
      return `Eine neuere Version (${stale.writtenBy}) hat in diese Arbeitsmappe geschrieben. Das Programm schließen und neu öffnen, damit sie geladen wird; bis dahin können Ergebnisse abweichen.`;
    if (stale.kind === 'unknown functions')
      return `Diese Version kennt nicht: ${stale.names.join(', ')}. Das Programm schließen und neu öffnen; bleibt es so, die neuere Version anfordern.`;
    return `Die Liste der Funktionen (${stale.listed}) gehört nicht zu dieser Version (${stale.known}): Eine alte Kopie wird aufbewahrt. Das Programm schließen und neu öffnen; die Kopie erneuert sich binnen eines Tages.`;
  },
  state: {
    version: 'Version',
    host: 'Läuft in',
    functions: (known, total) => `Funktionen: ${known ?? 'unbekannt viele'} von ${total} dem Programm bekannt`,
    runtime: 'Funktionen laufen',
    runtimes: {
      shared: 'zusammen mit dem Aufgabenbereich',
      separate: 'getrennt vom Aufgabenbereich',
      page: 'in dieser Seite',
      none: 'nirgends',
    },
    calculation: 'Berechnung',
    separators: 'Trennzeichen',
    formulas: 'Formeln mit unseren Funktionen',
    errors: 'Fehler darunter',
    noErrors: 'keine',
    writtenBy: 'Neueste Version, die hier schrieb',
    has: 'vorhanden',
    lacks: 'fehlt',
    costs: {
      separators: 'das Dezimaltrennzeichen ist nicht bekannt',
      mergedAreas: 'verbundene Zellen werden vor dem Schreiben nicht gesehen',
      tableResize: 'die Prüfspalten stehen neben einer Tabelle, nicht in ihr',
      changeTrigger: 'Ereignisse ruhen, während das Add-in schreibt',
      notes: 'keine Notizen an Urteilen; die Spalte „Reason“ sagt dasselbe',
      oneUndo: 'eine Aktion kann mehrere Rückgängig-Schritte brauchen, oder es gibt keinen',
    },
  },
};

const french: RemediesWords = {
  title: 'Remèdes et état',
  note: 'formules en défaut, valeurs, rapport',
  hintsTitle: 'Premiers pas',
  hints: [
    'Saisir =CHAN. dans une cellule : la liste des fonctions s’y ouvre.',
    'Appuyer ci-dessus sur « Contrôler les voies » : les verdicts s’écrivent à côté de la liste, vos cellules restent intactes.',
    'Rien ne quitte cette machine : le classeur est lu et calculé ici.',
  ],
  dismiss: 'Compris',
  showHints: 'Montrer les premiers pas',
  namesTitle: 'Formules qui montrent #NAME? (#NOM?)',
  namesText:
    'Les formules saisies avant le chargement du complément, ou conservées par un autre programme, doivent être réécrites une fois.',
  find: 'Les chercher',
  noneFound: 'Aucune de nos formules ne montre #NAME?.',
  found: (count, one) =>
    `${count} ${one ? 'formule montre #NAME? et sera réécrite' : 'formules montrent #NAME? et seront réécrites'}.`,
  foundPerhaps: (count, one) =>
    `${count} de plus ${one ? 'porte' : 'portent'} un nom semblable sous un autre préfixe ; il peut appartenir à un autre complément.`,
  foundText: (count, one) => `${count} ${one ? 'texte ressemble' : 'textes ressemblent'} à une de nos formules.`,
  andMore: (count) => `et ${count} de plus`,
  writeAgain: (count) => `Réécrire (${count})`,
  include: (count, one) => (one ? 'L’inclure' : `Inclure ces ${count}`),
  rewritten: (working, count) => `${working} sur ${count} fonctionnent. Une seule annulation suffit pour revenir.`,
  failing: {
    'unknown name':
      'toujours inconnu : les fonctions ne sont pas chargées ; fermer et rouvrir le volet, puis recommencer',
    'other error': 'le nom est reconnu, mais la formule donne une erreur',
    'not taken': 'la cellule n’a pas pris la formule',
  },
  freezeTitle: 'Des valeurs au lieu de formules',
  freezeText:
    'Pour les lecteurs sans le complément. « Contrôler les voies » rétablit les formules des colonnes de contrôle.',
  scope: 'Quelles cellules',
  checkColumns: 'les colonnes de contrôle',
  everyFormula: 'toute cellule avec une de nos fonctions',
  look: 'Les compter',
  freezeOffer: (count, one) =>
    `${count} ${one ? 'formule deviendrait une valeur exacte' : 'formules deviendraient des valeurs exactes'} ; formats et notes restent.`,
  freeze: 'Convertir en valeurs',
  staying: (count, why) =>
    ({
      error: `${count} en erreur restent des formules.`,
      'fills cells': `${count} peuvent remplir plusieurs cellules et restent des formules.`,
      'reads as a formula': `${count} donnent un texte qui commence par « = » et restent des formules.`,
    })[why],
  frozen: (count, one) =>
    `${count} ${one ? 'formule est maintenant une valeur' : 'formules sont maintenant des valeurs'}. Une seule annulation suffit pour revenir.`,
  cancel: 'Annuler',
  stateTitle: 'État du complément',
  stateText: 'Pour une question à qui s’occupe du complément. Sans noms, sans chemins, sans contenu de cellules.',
  showState: 'Montrer l’état',
  copy: 'Copier le rapport',
  copied: 'Copié.',
  copyByHand: 'La copie n’est pas permise ici : le texte est sélectionné, appuyer sur Ctrl+C.',
  reportLabel: 'Rapport',
  stale: (stale) => {
    if (stale.kind === 'older than the workbook')
      return `Une version plus récente (${stale.writtenBy}) a écrit dans ce classeur. Fermer le programme et le rouvrir pour la charger ; d’ici là, des résultats peuvent différer.`;
    if (stale.kind === 'unknown functions')
      return `Cette version ne connaît pas : ${stale.names.join(', ')}. Fermer le programme et le rouvrir ; si cela persiste, demander la version plus récente.`;
    return `La liste des fonctions (${stale.listed}) n’est pas celle de cette version (${stale.known}) : une ancienne copie est conservée. Fermer le programme et le rouvrir ; la copie se renouvelle en un jour.`;
  },
  state: {
    version: 'Version',
    host: 'Fonctionne dans',
    functions: (known, total) => `Fonctions : ${known ?? 'un nombre inconnu'} sur ${total} connues du programme`,
    runtime: 'Les fonctions s’exécutent',
    runtimes: {
      shared: 'avec le volet',
      separate: 'à part du volet',
      page: 'dans cette page',
      none: 'nulle part',
    },
    calculation: 'Calcul',
    separators: 'Séparateurs',
    formulas: 'Formules avec nos fonctions',
    errors: 'Erreurs parmi elles',
    noErrors: 'aucune',
    writtenBy: 'Version la plus récente qui a écrit ici',
    has: 'présent',
    lacks: 'absent',
    costs: {
      separators: 'le séparateur décimal n’est pas connu',
      mergedAreas: 'les cellules fusionnées ne sont pas vues avant l’écriture',
      tableResize: 'les colonnes de contrôle sont à côté d’un tableau, pas dedans',
      changeTrigger: 'les événements sont suspendus pendant l’écriture',
      notes: 'pas de notes sur les verdicts ; la colonne « Reason » dit la même chose',
      oneUndo: 'une action peut demander plusieurs annulations, ou n’en avoir aucune',
    },
  },
};

export const REMEDIES_WORDS: InLanguages<RemediesWords> = { en: english, de: german, fr: french };
