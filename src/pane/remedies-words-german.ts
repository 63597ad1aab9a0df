import type { RemediesWords } from './remedies-words';

export const german: RemediesWords = {
  title: 'Abhilfe und Zustand',
  note: 'defekte Formeln, Werte, Bericht',
  hintsTitle: 'Erste Schritte',
  hints: [
    '=CHAN. in eine Zelle tippen: Dort öffnet sich die Liste der Funktionen.',
    'Unten „Kanäle prüfen“ drücken: Die Urteile stehen dann neben der Liste, Ihre eigenen Zellen bleiben unverändert.',
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
