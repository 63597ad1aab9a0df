import type { BesideKind, Restructured } from '../../adapters/embedded/edit-log';
import type { InLanguages, Language } from '../../core/language';
import type { LostKind } from './lost-kinds';
import type { SavedFile } from './save-file';

interface SaveWords {
  readonly saved: (name: string, edited: number, own: number) => string;
  readonly looks: (cells: number) => string;
  readonly added: (names: readonly string[]) => string;
  readonly renewed: (formulas: number) => string;
  readonly keeps: (kinds: string) => string;
  readonly stale: (places: string) => string;
  readonly more: (count: number) => string;
  readonly newWorkbook: (stem: string) => string;
  readonly savedNew: (name: string) => string;
  readonly restructured: (change: Restructured) => string;
  readonly beside: Readonly<Record<BesideKind, string>>;
  readonly lost: Readonly<Record<LostKind, string>>;
}

const HOW_GERMAN = { inserted: 'eingefügt', removed: 'gelöscht', moved: 'verschoben' } as const;
const HOW_FRENCH = { inserted: 'insérées', removed: 'supprimées', moved: 'déplacées' } as const;
const none = (count: number, no: string): string => (count === 0 ? no : String(count));

export const SAVE_WORDS: InLanguages<SaveWords> = {
  en: {
    saved: (name, edited, own) => {
      const cells = (count: number) => `${none(count, 'no')} ${count === 1 ? 'cell' : 'cells'}`;
      return `Saved ${name}: ${cells(edited)} of yours changed, ${cells(own)} of ours written.`;
    },
    looks: (count) => `${count} ${count === 1 ? 'cell of yours looks' : 'cells of yours look'} as here.`,
    added: (names) => `${names.length === 1 ? 'New sheet' : 'New sheets'}: ${names.join(', ')}.`,
    renewed: (count) =>
      `${count} ${count === 1 ? 'formula of yours has its' : 'formulas of yours have their'} new value.`,
    keeps: (kinds) => `The copy keeps these as they are in the file, although they were changed here: ${kinds}.`,
    stale: (places) =>
      `${places}: formulas that read changed cells and cannot be worked out here keep their old values until a spreadsheet program renews them.`,
    more: (count) => ` and ${count} more`,
    newWorkbook: (stem) => `${stem} (new workbook).xlsx`,
    savedNew: (name) =>
      `Saved ${name}: a new workbook with the sheets as they are shown here. Your own file is as it was.`,
    restructured: (change) => {
      if ('how' in change)
        return `${change.what === 'rows' ? 'Rows' : 'Columns'} were ${change.how} on “${change.sheet}”.`;
      return change.what === 'sheet'
        ? `The sheet “${change.sheet}” was removed.`
        : `Merged cells changed on “${change.sheet}”.`;
    },
    beside: {
      sizes: 'widths, heights and hidden rows or columns',
      frozen: 'frozen panes',
      tabs: 'sheet tabs',
      notes: 'notes',
      conditional: 'conditional formats',
      filters: 'filters',
      tables: 'tables',
      names: 'names',
      formats: 'formats of cells',
      lines: 'formats of whole rows and columns',
    },
    lost: {
      charts: 'charts',
      macros: 'macros',
      pictures: 'pictures',
      pivots: 'pivot tables',
      slicers: 'slicers',
      controls: 'buttons and other controls',
      embedded: 'embedded documents',
      external: 'links to other workbooks',
      connections: 'data connections',
      threads: 'comment threads',
      diagrams: 'diagrams',
      printer: 'printer settings',
      signature: 'the digital signature',
      validation: 'validation of entries',
      conditional: 'conditional formats',
      print: 'print set-up',
      protection: 'protection',
      links: 'links',
      sparklines: 'small charts in cells',
      filters: 'filters',
      groups: 'groups of rows or columns',
      shapes: 'drawn shapes',
      rich: 'formats within a text',
    },
  },
  de: {
    saved: (name, edited, own) =>
      `${name} gespeichert: ${none(edited, 'keine')} Ihrer Zellen geändert, ${none(own, 'keine')} Prüfzellen geschrieben.`,
    looks: (count) => `${count} Ihrer Zellen ${count === 1 ? 'sieht' : 'sehen'} aus wie hier.`,
    added: (names) => `${names.length === 1 ? 'Neues Blatt' : 'Neue Blätter'}: ${names.join(', ')}.`,
    renewed: (count) => `${count} Ihrer Formeln ${count === 1 ? 'hat' : 'haben'} einen neuen Wert.`,
    keeps: (kinds) => `Wie in der Datei, obwohl hier geändert, bleiben in der Kopie: ${kinds}.`,
    stale: (places) =>
      `${places}: Formeln, die geänderte Zellen lesen und hier nicht berechnet werden können, behalten ihren alten Wert, bis ein Tabellenprogramm sie erneuert.`,
    more: (count) => ` und ${count} weitere`,
    newWorkbook: (stem) => `${stem} (neue Mappe).xlsx`,
    savedNew: (name) =>
      `${name} gespeichert: eine neue Mappe mit den Blättern, wie sie hier stehen. Ihre eigene Datei ist, wie sie war.`,
    restructured: (change) => {
      if ('how' in change)
        return `Auf „${change.sheet}“ wurden ${change.what === 'rows' ? 'Zeilen' : 'Spalten'} ${HOW_GERMAN[change.how]}.`;
      return change.what === 'sheet'
        ? `Das Blatt „${change.sheet}“ wurde entfernt.`
        : `Verbundene Zellen haben sich auf „${change.sheet}“ geändert.`;
    },
    beside: {
      sizes: 'Breiten, Höhen und ausgeblendete Zeilen oder Spalten',
      frozen: 'fixierte Bereiche',
      tabs: 'Blattregister',
      notes: 'Notizen',
      conditional: 'bedingte Formate',
      filters: 'Filterungen',
      tables: 'Tabellen',
      names: 'Namen',
      formats: 'Formate von Zellen',
      lines: 'Formate ganzer Zeilen und Spalten',
    },
    lost: {
      charts: 'Diagramme',
      macros: 'Makros',
      pictures: 'Bilder',
      pivots: 'Pivot-Tabellen',
      slicers: 'Datenschnitte',
      controls: 'Schaltflächen und andere Steuerelemente',
      embedded: 'eingebettete Dokumente',
      external: 'Verknüpfungen mit anderen Mappen',
      connections: 'Datenverbindungen',
      threads: 'Kommentarverläufe',
      diagrams: 'Schaubilder',
      printer: 'Druckereinstellungen',
      signature: 'die digitale Signatur',
      validation: 'Prüfregeln für Eingaben',
      conditional: 'bedingte Formate',
      print: 'Seiteneinrichtung',
      protection: 'Blattschutz',
      links: 'Links',
      sparklines: 'kleine Diagramme in Zellen',
      filters: 'Filterungen',
      groups: 'gruppierte Zeilen oder Spalten',
      shapes: 'gezeichnete Formen',
      rich: 'Formate innerhalb eines Textes',
    },
  },
  fr: {
    saved: (name, edited, own) =>
      `${name} enregistré : ${none(edited, 'aucune')} de vos cellules ${edited > 1 ? 'modifiées' : 'modifiée'}, ${none(own, 'aucune')} ${own > 1 ? 'cellules de contrôle écrites' : 'cellule de contrôle écrite'}.`,
    looks: (count) => `${count} de vos cellules ${count > 1 ? 'ont' : 'a'} l’aspect montré ici.`,
    added: (names) => `${names.length > 1 ? 'Nouvelles feuilles' : 'Nouvelle feuille'} : ${names.join(', ')}.`,
    renewed: (count) => `${count} de vos formules ${count > 1 ? 'ont' : 'a'} une nouvelle valeur.`,
    keeps: (kinds) => `La copie garde tels qu’ils sont dans le fichier, bien que modifiés ici : ${kinds}.`,
    stale: (places) =>
      `${places} : des formules qui lisent des cellules modifiées et ne peuvent être calculées ici gardent leur ancienne valeur jusqu’à ce qu’un tableur les renouvelle.`,
    more: (count) => ` et ${count} autres`,
    newWorkbook: (stem) => `${stem} (nouveau classeur).xlsx`,
    savedNew: (name) =>
      `${name} enregistré : un nouveau classeur avec les feuilles telles qu’elles sont montrées ici. Votre propre fichier est resté tel quel.`,
    restructured: (change) => {
      if ('how' in change)
        return `Des ${change.what === 'rows' ? 'lignes' : 'colonnes'} ont été ${HOW_FRENCH[change.how]} sur « ${change.sheet} ».`;
      return change.what === 'sheet'
        ? `La feuille « ${change.sheet} » a été supprimée.`
        : `Des cellules fusionnées ont changé sur « ${change.sheet} ».`;
    },
    beside: {
      sizes: 'largeurs, hauteurs et lignes ou colonnes masquées',
      frozen: 'volets figés',
      tabs: 'onglets',
      notes: 'annotations',
      conditional: 'mises en forme conditionnelles',
      filters: 'filtrages',
      tables: 'tableaux',
      names: 'noms définis',
      formats: 'formats de cellules',
      lines: 'formats de lignes et de colonnes entières',
    },
    lost: {
      charts: 'graphiques',
      macros: 'programmes (macros)',
      pictures: 'images',
      pivots: 'tableaux croisés dynamiques',
      slicers: 'segments',
      controls: 'boutons et autres contrôles',
      embedded: 'documents incorporés',
      external: 'liaisons avec d’autres classeurs',
      connections: 'connexions de données',
      threads: 'fils de commentaires',
      diagrams: 'diagrammes',
      printer: 'réglages de l’imprimante',
      signature: 'la signature numérique',
      validation: 'règles de saisie',
      conditional: 'mises en forme conditionnelles',
      print: 'mise en page',
      protection: 'verrouillage',
      links: 'liens',
      sparklines: 'petits graphiques dans les cellules',
      filters: 'filtrages',
      groups: 'lignes ou colonnes groupées',
      shapes: 'formes dessinées',
      rich: 'formats à l’intérieur d’un texte',
    },
  },
};

const MOST_NAMED = 5;
const named = (places: readonly string[], { more }: SaveWords): string =>
  places.slice(0, MOST_NAMED).join(', ') + (places.length > MOST_NAMED ? more(places.length - MOST_NAMED) : '');

/** What a person is told of a saved copy. */
export const savedWords = (
  name: string,
  { counts, added, stale, told }: SavedFile,
  beside: readonly BesideKind[],
  language: Language,
): string => {
  const words = SAVE_WORDS[language];
  return [
    words.saved(name, counts.edited, counts.own),
    ...(counts.looks > 0 ? [words.looks(counts.looks)] : []),
    ...(added.length > 0 ? [words.added(added)] : []),
    ...(counts.renewed > 0 ? [words.renewed(counts.renewed)] : []),
    ...(beside.length > 0 ? [words.keeps(beside.map((kind) => words.beside[kind]).join(', '))] : []),
    ...told,
    ...(stale.length > 0 ? [words.stale(named(stale, words))] : []),
  ].join(' ');
};
