import type { HelpWords } from './help-words';
import { limitZones } from './limit-zones';

const zones = limitZones(true);

export const GERMAN: HelpWords = {
  title: 'Hilfe zu Channelwright',
  lead: [
    'Channelwright prüft jede Zeile einer Liste von Schwingungsmesskanälen: Dynamikbereich, Massenbelastung, Temperaturabweichung und nutzbaren Frequenzbereich. Die Ergebnisse stehen als gewöhnliche Formeln neben Ihrer Liste; sonst wird nichts verändert.',
  ],
  start: {
    heading: 'Erste Schritte',
    steps: [
      'Öffnen Sie Ihre Kanalliste in Excel und wählen Sie auf der Registerkarte Start die Schaltfläche „Kanäle planen“, oder öffnen Sie sie in [der Werkbank](workbench.html), die ohne Excel auskommt.',
      'Sehen Sie im Aufgabenbereich nach, welche Spalte als was gelesen wurde, und wählen Sie eine andere, wo das nicht stimmt. Was unsicher ist, wird gefragt und nie geraten.',
      'Drücken Sie „Kanäle prüfen“. Zeilen, die nicht bestehen, stehen oben, jede mit Zahl, Grenze und Abhilfe. Einmal Rückgängig nimmt alles zurück.',
      'Ändern Sie Zellen: Die Urteile folgen von selbst. Nur die Tabellenfunktionen: Geben Sie `=CHAN.` in eine Zelle ein.',
    ],
  },
  verdicts: {
    heading: 'Urteile',
    columns: ['Prüfung', 'Zahl', 'PASS', 'WARN', 'FAIL'],
    rows: [
      ['Pegel, unten', 'Signal-Rausch-Abstand des kleinsten Pegels', ...zones.noise],
      ['Pegel, oben', 'Reserve über dem größten Scheitelwert', ...zones.headroom],
      ['Masse, Übersicht und Stoß', 'zusätzliche Masse zu örtlich wirksamer Masse', ...zones.survey],
      ['Masse, modal', 'ebenso', ...zones.modal],
      [
        'Temperatur',
        'größte Abweichung über den Bereich',
        `≤ ${zones.thermal}`,
        `innerhalb ${zones.thermal}, wenn die Mitte korrigiert wird`,
        'sonst, oder jenseits der Grenze eines Teils',
      ],
      [
        'Frequenz',
        'benötigtes Band im nutzbaren Bereich',
        `innerhalb ±${zones.span[0]}`,
        `innerhalb ±${zones.span[1]}`,
        'sonst',
      ],
    ],
    after: [
      'INCOMPLETE heißt, dass etwas Nötiges nicht bekannt ist; der Grund nennt es. Ein fehlender Wert besteht nie. Das Urteil einer Zeile ist das schlechteste ihrer vier.',
      'Diese Grenzen sind übliche Praxis, keine Norm. Ein Blatt mit Grenzen in Ihrer Arbeitsmappe ersetzt sie.',
    ],
  },
  errors: {
    heading: 'Fehlerwerte',
    points: [
      '`#NV` – etwas Nötiges fehlt oder liegt außerhalb der Daten.',
      '`#ZAHL!` – einen solchen Wert gibt es nicht, etwa bei einem leeren Bereich.',
      '`#WERT!` – eine Zelle war nicht lesbar oder liegt außerhalb der Grenzen; die Meldung in Excel nennt Argument, Gelesenes und Erwartetes.',
      '`#NAME?` – das Add-In ist nicht geladen: Aufgabenbereich öffnen, dann mit Strg+Alt+F9 neu berechnen; Formeln, die so bleiben, schreibt „Abhilfe und Zustand“ neu.',
    ],
  },
  units: {
    heading: 'Einheiten',
    text: [
      'Eine bloße Zahl steht in der Einheit des Arguments. Ein Text darf jede Einheit derselben Größe tragen, etwa „15 m/s²“. Das Argument entscheidet, ob g Normfallbeschleunigung oder Gramm ist. Was zweierlei heißen kann, wird mit beiden Lesarten zurückgewiesen.',
    ],
    columns: ['Größe', 'Einheit'],
  },
  numbers: {
    heading: 'Woher die Zahlen kommen',
    points: [
      'Jede Funktion nennt ihre Gleichung, ihren Gültigkeitsbereich und ihre Quelle: eine Norm, ein Buch, eine Herleitung oder „common practice, no source“ (übliche Praxis, keine Quelle). „From memory“ heißt, dass die Stelle nicht nochmals gelesen wurde.',
      'Jede Funktion hat durchgerechnete Beispiele, die ohne dieses Programm berechnet wurden. [Die Arbeitsmappe der Beispiele](examples.xlsx) enthält sie alle als lebende Formeln neben den erwarteten Werten und zählt, wie viele übereinstimmen.',
    ],
  },
  cautions: {
    heading: 'Vorsicht',
    text: [
      'Eine Planungshilfe, keine Schutzfunktion; kein Urteil gibt einen Versuch frei. Heiße Teile, Schwingerreger, Klebstoffe, Höhe, Laser, Prüfkammern und bleihaltige Keramik können Menschen verletzen. Örtliche Vorschriften und befugte Fachleute gehen immer vor.',
      'Ein Versuch, den ein einziger Beschleunigungsaufnehmer regelt, kann durchgehen, wenn dieser ausfällt: Der Erreger wird auf volle Leistung gefahren.',
    ],
  },
  privacy: {
    heading: 'Datenschutz',
    text: [
      'Kein Konto, keine Telemetrie, kein Server von uns. Gerechnet wird in Excel oder in Ihrem Browser. Die Seiten fordern nur ihre eigenen Dateien an, und in Excel dazu Office.js von Microsoft, das Microsoft vorschreibt.',
    ],
  },
  install: 'Einrichten, Aktualisieren und Entfernen: [siehe diese Seite](install.de.html).',
  functions: {
    heading: 'Tabellenfunktionen',
    text: [
      'Eckige Klammern bezeichnen Argumente, die fehlen dürfen. Grenzen stehen in der Einheit des Arguments. Gültigkeit, Quellen und Beispiele sind englisch.',
    ],
    index: 'Alle Funktionen',
    arguments: 'Argumente',
    result: 'Ergebnis',
    valid: 'Gültig',
    source: 'Quelle',
    examples: 'Beispiele',
    ifBlank: 'wenn leer',
    needed: 'nötig',
    families: {
      'level and dynamic range': 'Pegel und Dynamikbereich',
      'mass loading': 'Massenbelastung',
      thermal: 'Temperatur',
      'frequency span': 'Frequenzbereich',
      trust: 'Vertrauen in die Messung',
      verdict: 'Urteil',
      choosing: 'Auswahl',
      'text and units': 'Text und Einheiten',
    },
  },
};
