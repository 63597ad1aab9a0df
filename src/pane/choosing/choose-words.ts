import type { InLanguages } from '../../core/language';
import type { Part } from '../../plan/choosing/candidate';
import type { CandidateOrder } from '../../plan/choosing/rank-order';
import type { Filter } from './choose-state';

export interface ChoosePaneWords {
  readonly title: string;
  readonly target: string;
  readonly thisRow: string;
  readonly part: (name: string, count: string) => string;
  readonly shown: (count: string) => string;
  readonly selected: string;
  readonly noneSelected: string;
  readonly free: string;
  readonly parts: Readonly<Record<Part, string>>;
  readonly rank: string;
  readonly ranking: string;
  readonly fitting: (passing: string, all: string) => string;
  readonly nothing: string;
  readonly onlyWarn: string;
  readonly margin: string;
  readonly marginNote: string;
  readonly added: string;
  readonly use: (count: string, one: boolean) => string;
  readonly plots: string;
  readonly more: (count: string) => string;
  readonly whyNot: string;
  readonly order: string;
  readonly orders: Readonly<Record<CandidateOrder, string>>;
  readonly filters: Readonly<Record<Filter, string>>;
  readonly any: string;
  readonly noneLeft: string;
}

export const CHOOSE_PANE_WORDS: InLanguages<ChoosePaneWords> = {
  en: {
    title: 'Choose a sensor from your list',
    target: 'For',
    thisRow: 'this row',
    part: (name, count) => `all rows of “${name}” (${count})`,
    shown: (count) => `all rows shown (${count})`,
    selected: 'the rows selected in the sheet',
    noneSelected: 'No row of the channel list is selected in the sheet. Select cells of the rows, then rank again.',
    free: 'May change too',
    parts: { mount: 'mount', cable: 'cable', input: 'input' },
    rank: 'Rank the types',
    ranking: 'Ranking',
    fitting: (passing, all) => `${passing} of ${all} types pass.`,
    nothing: 'No type of your list passes here. What would help:',
    onlyWarn: 'No type passes without a warning. What would help:',
    margin: 'margin',
    marginNote: 'Margins: how many times better than the PASS limit, in dB, of the check that is nearest to it.',
    added: 'added',
    use: (count, one) => `Use for ${count} ${one ? 'row' : 'rows'}`,
    plots: 'Compare in plots',
    more: (count) => `Show ${count} more`,
    whyNot: 'Why not:',
    order: 'After the verdict',
    orders: { margin: 'largest margin first', mass: 'lightest first', stock: 'most in stock first' },
    filters: { technology: 'Sensing element', output: 'Output', axes: 'Axes' },
    any: 'any',
    noneLeft: 'No type of this kind.',
  },
  de: {
    title: 'Aufnehmer aus Ihrer Liste wählen',
    target: 'Für',
    thisRow: 'diese Zeile',
    part: (name, count) => `alle Zeilen von „${name}“ (${count})`,
    shown: (count) => `alle gezeigten Zeilen (${count})`,
    selected: 'die im Blatt markierten Zeilen',
    noneSelected:
      'Im Blatt ist keine Zeile der Kanalliste markiert. Zellen der Zeilen markieren und noch einmal ordnen.',
    free: 'Darf sich auch ändern',
    parts: { mount: 'Ankopplung', cable: 'Kabel', input: 'Eingang' },
    rank: 'Typen ordnen',
    ranking: 'Wird geordnet',
    fitting: (passing, all) => `${passing} von ${all} Typen sind PASS.`,
    nothing: 'Kein Typ Ihrer Liste genügt hier. Was hülfe:',
    onlyWarn: 'Kein Typ genügt ohne Warnung. Was hülfe:',
    margin: 'Reserve',
    marginNote: 'Reserven: um wie viel besser als die PASS-Grenze, in dB, bei der Prüfung, die ihr am nächsten ist.',
    added: 'Zusatzmasse',
    use: (count, one) => `Für ${count} ${one ? 'Zeile' : 'Zeilen'} verwenden`,
    plots: 'Im Bild vergleichen',
    more: (count) => `${count} weitere zeigen`,
    whyNot: 'Warum nicht:',
    order: 'Nach dem Urteil',
    orders: { margin: 'größte Reserve zuerst', mass: 'leichteste zuerst', stock: 'größter Bestand zuerst' },
    filters: { technology: 'Messelement', output: 'Ausgang', axes: 'Achsen' },
    any: 'beliebig',
    noneLeft: 'Kein Typ dieser Art.',
  },
  fr: {
    title: 'Choisir un capteur dans votre liste',
    target: 'Pour',
    thisRow: 'cette ligne',
    part: (name, count) => `toutes les lignes de « ${name} » (${count})`,
    shown: (count) => `toutes les lignes montrées (${count})`,
    selected: 'les lignes sélectionnées dans la feuille',
    noneSelected:
      'Aucune ligne de la liste de voies n’est sélectionnée dans la feuille. Sélectionner des cellules des lignes, puis classer à nouveau.',
    free: 'Peut changer aussi',
    parts: { mount: 'fixation', cable: 'câble', input: 'entrée' },
    rank: 'Classer les types',
    ranking: 'Classement',
    fitting: (passing, all) => `${passing} types sur ${all} sont PASS.`,
    nothing: 'Aucun type de votre liste ne convient ici. Ce qui aiderait :',
    onlyWarn: 'Aucun type ne convient sans avertissement. Ce qui aiderait :',
    margin: 'marge',
    marginNote: 'Marges : de combien mieux que la limite PASS, en dB, pour le contrôle qui en est le plus proche.',
    added: 'masse ajoutée',
    use: (count, one) => `Employer pour ${count} ${one ? 'ligne' : 'lignes'}`,
    plots: 'Comparer en images',
    more: (count) => `Montrer ${count} de plus`,
    whyNot: 'Pourquoi pas :',
    order: 'Après le verdict',
    orders: {
      margin: 'la plus grande marge d’abord',
      mass: 'le plus léger d’abord',
      stock: 'le plus en stock d’abord',
    },
    filters: { technology: 'Élément sensible', output: 'Sortie', axes: 'Axes' },
    any: 'indifférent',
    noneLeft: 'Aucun type de ce genre.',
  },
};
