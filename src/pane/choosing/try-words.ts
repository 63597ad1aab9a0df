import type { InLanguages } from '../../core/language';

export interface TryWords {
  readonly title: string;
  readonly note: string;
  readonly target: string;
  readonly all: (count: string) => string;
  readonly shown: (count: string) => string;
  readonly selected: string;
  readonly field: string;
  readonly value: string;
  readonly blank: string;
  readonly go: string;
  readonly trial: (field: string, value: string, count: string, one: boolean) => string;
  readonly remove: (what: string) => string;
  readonly noRows: string;
  readonly unread: (text: string, expected: string) => string;
  readonly verdict: string;
  readonly before: string;
  readonly after: string;
  readonly difference: string;
  readonly changed: (count: string, one: boolean) => string;
  readonly nothing: string;
  readonly came: string;
  readonly gone: string;
  readonly margin: string;
  readonly more: (count: string) => string;
  readonly across: string;
  readonly keep: string;
  readonly drop: string;
  readonly again: string;
  readonly cannot: string;
}

export const TRY_WORDS: InLanguages<TryWords> = {
  en: {
    title: 'Try a change',
    note: 'The list stays as it is until you keep the change.',
    target: 'For',
    all: (count) => `all rows (${count})`,
    shown: (count) => `all rows shown (${count})`,
    selected: 'the rows selected in the sheet',
    field: 'Change',
    value: 'to',
    blank: 'blank',
    go: 'Try it',
    trial: (field, value, count, one) => `${field} = ${value} in ${count} ${one ? 'row' : 'rows'}`,
    remove: (what) => `Do not try: ${what}`,
    noRows: 'No row of the channel list is selected in the sheet. Select cells of the rows, then try again.',
    unread: (text, expected) => `“${text}” cannot be read here; expected is ${expected}.`,
    verdict: 'Verdict',
    before: 'Before',
    after: 'After',
    difference: 'Change',
    changed: (count, one) => `${count} ${one ? 'row changes' : 'rows change'}, those that get worse first.`,
    nothing: 'No verdict and no margin changes.',
    came: 'New:',
    gone: 'Gone:',
    margin: 'margin',
    more: (count) => `Show ${count} more`,
    across: 'Rows taken together',
    keep: 'Keep the change',
    drop: 'Drop it',
    again: 'Cells have changed since. Work it out again',
    cannot: 'This cannot be kept:',
  },
  de: {
    title: 'Eine Änderung probieren',
    note: 'Die Liste bleibt, wie sie ist, bis Sie die Änderung übernehmen.',
    target: 'Für',
    all: (count) => `alle Zeilen (${count})`,
    shown: (count) => `alle gezeigten Zeilen (${count})`,
    selected: 'die im Blatt markierten Zeilen',
    field: 'Ändern',
    value: 'auf',
    blank: 'leer',
    go: 'Probieren',
    trial: (field, value, count, one) => `${field} = ${value} in ${count} ${one ? 'Zeile' : 'Zeilen'}`,
    remove: (what) => `Nicht probieren: ${what}`,
    noRows: 'Im Blatt ist keine Zeile der Kanalliste markiert. Zellen der Zeilen markieren und noch einmal probieren.',
    unread: (text, expected) => `„${text}“ ist hier nicht lesbar; erwartet wird: ${expected}.`,
    verdict: 'Urteil',
    before: 'Vorher',
    after: 'Nachher',
    difference: 'Änderung',
    changed: (count, one) =>
      `${count} ${one ? 'Zeile ändert' : 'Zeilen ändern'} sich, die schlechter werdenden zuerst.`,
    nothing: 'Kein Urteil und keine Reserve ändert sich.',
    came: 'Neu:',
    gone: 'Entfällt:',
    margin: 'Reserve',
    more: (count) => `${count} weitere zeigen`,
    across: 'Zeilen zusammen betrachtet',
    keep: 'Änderung übernehmen',
    drop: 'Verwerfen',
    again: 'Zellen haben sich seither geändert. Neu berechnen',
    cannot: 'Das lässt sich nicht übernehmen:',
  },
  fr: {
    title: 'Essayer un changement',
    note: 'La liste reste telle quelle tant que vous ne gardez pas le changement.',
    target: 'Pour',
    all: (count) => `toutes les lignes (${count})`,
    shown: (count) => `toutes les lignes affichées (${count})`,
    selected: 'les lignes sélectionnées dans la feuille',
    field: 'Changer',
    value: 'en',
    blank: 'vide',
    go: 'Essayer',
    trial: (field, value, count, one) => `${field} = ${value} dans ${count} ${one ? 'ligne' : 'lignes'}`,
    remove: (what) => `Ne pas essayer : ${what}`,
    noRows:
      'Aucune ligne de la liste de voies n’est sélectionnée dans la feuille. Sélectionner des cellules des lignes, puis réessayer.',
    unread: (text, expected) => `« ${text} » n’est pas lisible ici ; attendu : ${expected}.`,
    verdict: 'Verdict',
    before: 'Avant',
    after: 'Après',
    difference: 'Écart',
    changed: (count, one) => `${count} ${one ? 'ligne change' : 'lignes changent'}, celles qui se dégradent d’abord.`,
    nothing: 'Aucun verdict ni aucune marge ne change.',
    came: 'Nouveau :',
    gone: 'Disparu :',
    margin: 'marge',
    more: (count) => `Montrer ${count} de plus`,
    across: 'Lignes considérées ensemble',
    keep: 'Garder le changement',
    drop: 'Abandonner',
    again: 'Des cellules ont changé depuis. Recalculer',
    cannot: 'Ceci ne peut pas être gardé :',
  },
};
