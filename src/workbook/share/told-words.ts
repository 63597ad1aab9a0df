import type { InLanguages } from '../../core/language';

/** What a person is told about a copy that was made, and why one is refused. */
export interface ToldWords {
  readonly values: (cells: number) => string;
  readonly frozen: (cells: number, places: string) => string;
  readonly rules: (count: number) => string;
  readonly charts: (count: number) => string;
  readonly pivots: (count: number) => string;
  readonly names: (names: string) => string;
  readonly linksCut: (count: number) => string;
  readonly linksKept: (count: number) => string;
  readonly connectionsCut: string;
  readonly connectionsKept: string;
  readonly cubes: string;
  readonly macrosCut: string;
  readonly notesStay: (places: string) => string;
  readonly people: (count: number) => string;
  readonly locked: string;
  readonly stale: (places: string) => string;
  readonly noted: (places: string) => string;
  readonly differs: (place: string, cells: string, plan: string) => string;
  readonly proved: (place: string) => string;
  readonly more: (places: string, count: number) => string;
  readonly stillThere: (text: string, part: string) => string;
  readonly also: (places: string) => string;
  readonly keepList: string;
}

export const TOLD_WORDS: InLanguages<ToldWords> = {
  en: {
    values: (cells) => `Our ${cells} cells hold values in full precision, no formulas.`,
    frozen: (cells, places) => `${cells} formulas of yours became values, for they read what a customer does not get: ${places}.`, // prettier-ignore
    rules: (count) => `${count} rules for cells (formats, permitted entries) went, for they read what is left out.`,
    charts: (count) => `${count} charts draw left-out cells; those series are empty now.`,
    pivots: (count) => `${count} pivot tables over left-out cells became plain cells.`,
    names: (names) => `Names that stood for left-out cells were removed: ${names}.`,
    linksCut: (count) => `${count} links to other workbooks were cut; their formulas became values.`,
    linksKept: (count) => `${count} links to other workbooks are still in the copy, with the paths of those files.`,
    connectionsCut: 'Connections to data were cut; the cells keep what they held.',
    connectionsKept: 'Connections to data are still in the copy.',
    cubes: 'Data of a cube held left-out texts; it was taken out, and its formulas became values.',
    macrosCut: 'Macros were taken out: the copy is a plain .xlsx workbook.',
    notesStay: (places) => `Notes of yours go with the copy: ${places}. Look whether a customer should read them; they can be left out.`, // prettier-ignore
    people: (count) => `Names of ${count} authors of notes were replaced.`,
    locked: 'Sheets are locked against accidents, without a password: anybody can unlock them.',
    stale: (places) => `${places}: formulas of yours read cells that changed; open the copy once and save it to renew their values.`, // prettier-ignore
    noted: (places) => `${places}: somebody’s note stands there, so ours was not written; look whether a customer should read it.`, // prettier-ignore
    differs: (place, cells, plan) => `${place}: the cells of the plan say ${cells}, the plan as a whole ${plan}, and so does the copy; look at this first.`, // prettier-ignore
    proved: (place) => `${place}: the copy says FAIL, which is proved, where the cells of the plan leave INCOMPLETE because something is not known.`, // prettier-ignore
    more: (places, count) => `${places} and ${count} more`,
    stillThere: (text, part) =>
      `"${text}" is to be left out but stands in ${part} as well, which cannot be cleaned. No copy was made. Remove it there, or leave that out too.`,
    also: (places) => `Left-out texts stand in cells that stay as well: ${places}.`,
    keepList: 'The sheet with the channel list and its column of channels cannot be left out.',
  },
  de: {
    values: (cells) => `Unsere ${cells} Zellen enthalten Werte in voller Genauigkeit, keine Formeln.`,
    frozen: (cells, places) => `${cells} Ihrer Formeln wurden zu Werten, denn sie lesen, was ein Kunde nicht bekommt: ${places}.`, // prettier-ignore
    rules: (count) =>
      `${count} Regeln für Zellen (Formate, erlaubte Eingaben) entfielen, denn sie lesen Weggelassenes.`,
    charts: (count) => `${count} Diagramme zeigen weggelassene Zellen; diese Reihen sind jetzt leer.`,
    pivots: (count) => `${count} Pivot-Tabellen über weggelassenen Zellen wurden zu gewöhnlichen Zellen.`,
    names: (names) => `Namen für weggelassene Zellen wurden entfernt: ${names}.`,
    linksCut: (count) => `${count} Verknüpfungen mit anderen Mappen wurden getrennt; ihre Formeln wurden zu Werten.`,
    linksKept: (count) => `${count} Verknüpfungen mit anderen Mappen sind noch in der Kopie, mit deren Pfaden.`,
    connectionsCut: 'Datenverbindungen wurden getrennt; die Zellen behalten ihren Inhalt.',
    connectionsKept: 'Datenverbindungen sind noch in der Kopie.',
    cubes: 'Cube-Daten enthielten weggelassene Texte; sie wurden entfernt, ihre Formeln wurden zu Werten.',
    macrosCut: 'Makros wurden entfernt: Die Kopie ist eine gewöhnliche .xlsx-Mappe.',
    notesStay: (places) => `Ihre Notizen gehen mit der Kopie hinaus: ${places}. Prüfen Sie, ob ein Kunde sie lesen soll; sie lassen sich weglassen.`, // prettier-ignore
    people: (count) => `Die Namen von ${count} Verfassern von Notizen wurden ersetzt.`,
    locked: 'Die Blätter sind gegen Versehen gesperrt, ohne Kennwort: Jeder kann die Sperre aufheben.',
    stale: (places) => `${places}: Ihre Formeln lesen geänderte Zellen; öffnen und speichern Sie die Kopie einmal, damit ihre Werte stimmen.`, // prettier-ignore
    noted: (places) => `${places}: Dort steht schon eine Notiz, unsere wurde nicht geschrieben; prüfen Sie, ob ein Kunde sie lesen soll.`, // prettier-ignore
    differs: (place, cells, plan) => `${place}: Die Zellen des Plans sagen ${cells}, der Plan als Ganzes ${plan}, ebenso die Kopie; sehen Sie das zuerst an.`, // prettier-ignore
    proved: (place) => `${place}: Die Kopie sagt FAIL, das schon feststeht, wo die Zellen des Plans INCOMPLETE lassen, weil etwas nicht bekannt ist.`, // prettier-ignore
    more: (places, count) => `${places} und ${count} weitere`,
    stillThere: (text, part) =>
      `„${text}“ soll wegbleiben, steht aber auch in ${part}, was sich nicht bereinigen lässt. Es wurde keine Kopie gemacht. Entfernen Sie es dort, oder lassen Sie auch das weg.`,
    also: (places) => `Weggelassene Texte stehen auch in Zellen, die bleiben: ${places}.`,
    keepList: 'Das Blatt mit der Kanalliste und deren Spalte der Kanäle können nicht weggelassen werden.',
  },
  fr: {
    values: (cells) => `Nos ${cells} cellules contiennent des valeurs en pleine précision, sans formule.`,
    frozen: (cells, places) => `${cells} de vos formules sont devenues des valeurs, car elles lisent ce qu’un client ne reçoit pas : ${places}.`, // prettier-ignore
    rules: (count) => `${count} règles de cellules (formats, saisies admises) ont été retirées, car elles lisent ce qui est omis.`, // prettier-ignore
    charts: (count) => `${count} graphiques tracent des cellules omises ; ces séries sont vides.`,
    pivots: (count) => `${count} tableaux croisés sur des cellules omises sont devenus de simples cellules.`,
    names: (names) => `Les noms de cellules omises ont été retirés : ${names}.`,
    linksCut: (count) => `${count} liaisons vers d’autres classeurs ont été coupées ; leurs formules sont des valeurs.`,
    linksKept: (count) => `${count} liaisons vers d’autres classeurs restent dans la copie, avec leurs chemins.`,
    connectionsCut: 'Les connexions à des données ont été coupées ; les cellules gardent leur contenu.',
    connectionsKept: 'Des connexions à des données restent dans la copie.',
    cubes:
      'Des données de cube contenaient des textes omis ; elles ont été retirées et leurs formules sont des valeurs.',
    macrosCut: 'Les macros ont été retirées : la copie est un simple classeur .xlsx.',
    notesStay: (places) => `Vos notes partent avec la copie : ${places}. Voyez si un client doit les lire ; elles peuvent être omises.`, // prettier-ignore
    people: (count) => `Les noms de ${count} auteurs de notes ont été remplacés.`,
    locked: 'Les feuilles sont verrouillées contre les accidents, sans mot de passe : chacun peut les déverrouiller.',
    stale: (places) => `${places} : vos formules lisent des cellules modifiées ; ouvrez la copie et enregistrez-la une fois.`, // prettier-ignore
    noted: (places) => `${places} : une note s’y trouve déjà, la nôtre n’a pas été écrite ; voyez si un client doit la lire.`, // prettier-ignore
    differs: (place, cells, plan) => `${place} : les cellules du plan disent ${cells}, le plan dans son ensemble ${plan}, la copie aussi ; voyez d’abord cela.`, // prettier-ignore
    proved: (place) => `${place} : la copie dit FAIL, déjà établi, là où les cellules du plan laissent INCOMPLETE parce qu’il manque une donnée.`, // prettier-ignore
    more: (places, count) => `${places} et ${count} autres`,
    stillThere: (text, part) =>
      `« ${text} » doit être omis mais figure aussi dans ${part}, qui ne peut être nettoyé. Aucune copie n’a été faite. Retirez-le de là, ou omettez cela aussi.`,
    also: (places) => `Des textes omis figurent aussi dans des cellules qui restent : ${places}.`,
    keepList: 'La feuille de la liste des voies et sa colonne des voies ne peuvent pas être omises.',
  },
};

const MOST = 5;
export const listedPlaces = (places: readonly string[], { more }: Pick<ToldWords, 'more'>): string =>
  places.length <= MOST ? places.join(', ') : more(places.slice(0, MOST).join(', '), places.length - MOST);

/** Words inside the copy, in the customer's language. */
export interface CopyWords {
  readonly summarySheet: string;
  readonly leftOut: (n: number) => string;
  readonly author: (n: number) => string;
  readonly page: string;
}
export const COPY_WORDS: InLanguages<CopyWords> = {
  en: {
    summarySheet: 'Check summary',
    leftOut: (n) => `left out ${n}`,
    author: (n) => `Author ${n}`,
    page: 'Page &P of &N',
  },
  de: {
    summarySheet: 'Prüfübersicht',
    leftOut: (n) => `weggelassen ${n}`,
    author: (n) => `Verfasser ${n}`,
    page: 'Seite &P von &N',
  },
  fr: {
    summarySheet: 'Synthèse des contrôles',
    leftOut: (n) => `omis ${n}`,
    author: (n) => `Auteur ${n}`,
    page: 'Page &P sur &N',
  },
};
