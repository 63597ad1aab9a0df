import type { InLanguages } from '../../core/language';

interface EditWords {
  readonly noColumn: (field: string) => string;
  readonly formula: (at: string, formula: string) => string;
  readonly merged: (at: string) => string;
  readonly range: (at: string, now: string) => string;
  readonly equals: (value: string) => string;
  readonly nothing: (refused: readonly string[]) => string;
  readonly useCandidate: string;
  readonly keepChange: string;
}

/** More reasons than these tell nobody anything new. */
const SHOWN = 3;
const first = (refused: readonly string[], more: (rest: number) => string): string =>
  [...refused.slice(0, SHOWN), ...(refused.length > SHOWN ? [more(refused.length - SHOWN)] : [])].join(' ');

export const EDIT_WORDS: InLanguages<EditWords> = {
  en: {
    noColumn: (field) => `The channel list has no column for “${field}”: add one, or say which column holds it.`,
    formula: (at, formula) =>
      `${at} holds a formula (${formula}): change what it refers to, or type a value there first.`,
    merged: (at) => `${at} belongs to merged cells: unmerge them first.`,
    range: (at, now) => `${at} holds both ends of a range (${now}): type the new range there.`,
    equals: (value) => `“${value}” begins with an equals sign and would become a formula: rename it in its list.`,
    nothing: (refused) => `${first(refused, (rest) => `${rest} more like this.`)} Nothing was changed.`,
    useCandidate: 'Use sensor type for channels',
    keepChange: 'Keep tried change',
  },
  de: {
    noColumn: (field) =>
      `Die Kanalliste hat keine Spalte für „${field}“: eine anlegen oder sagen, welche Spalte das enthält.`,
    formula: (at, formula) =>
      `${at} enthält eine Formel (${formula}): ändern, worauf sie sich bezieht, oder dort zuerst einen Wert eintragen.`,
    merged: (at) => `${at} gehört zu verbundenen Zellen: den Verbund zuerst aufheben.`,
    range: (at, now) => `${at} enthält beide Enden eines Bereichs (${now}): dort den neuen Bereich eintragen.`,
    equals: (value) => `„${value}“ beginnt mit einem Gleichheitszeichen und würde zur Formel: in der Liste umbenennen.`,
    nothing: (refused) => `${first(refused, (rest) => `${rest} weitere dieser Art.`)} Nichts wurde geändert.`,
    useCandidate: 'Aufnehmertyp für Kanäle übernehmen',
    keepChange: 'Probierte Änderung übernehmen',
  },
  fr: {
    noColumn: (field) =>
      `La liste de voies n’a pas de colonne pour « ${field} » : en ajouter une, ou dire quelle colonne le contient.`,
    formula: (at, formula) =>
      `${at} contient une formule (${formula}) : changer ce à quoi elle renvoie, ou y saisir d’abord une valeur.`,
    merged: (at) => `${at} fait partie de cellules fusionnées : les dissocier d’abord.`,
    range: (at, now) => `${at} contient les deux bornes d’une plage (${now}) : y saisir la nouvelle plage.`,
    equals: (value) =>
      `« ${value} » commence par un signe égal et deviendrait une formule : le renommer dans sa liste.`,
    nothing: (refused) => `${first(refused, (rest) => `${rest} autres du même genre.`)} Rien n’a été modifié.`,
    useCandidate: 'Utiliser le type de capteur pour des voies',
    keepChange: 'Garder le changement essayé',
  },
};
