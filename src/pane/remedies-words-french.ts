import type { RemediesWords } from './remedies-words';

export const french: RemediesWords = {
  title: 'Remèdes et état',
  note: 'formules en défaut, valeurs, rapport',
  hintsTitle: 'Premiers pas',
  hints: [
    'Saisir =CHAN. dans une cellule : la liste des fonctions s’y ouvre.',
    'Appuyer ci-dessous sur « Contrôler les voies » : les verdicts s’écrivent à côté de la liste, vos cellules restent intactes.',
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
