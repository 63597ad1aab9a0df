import type { HelpWords } from './help-words';
import { limitZones } from './limit-zones';

const zones = limitZones(true);

export const FRENCH: HelpWords = {
  title: 'Aide de Channelwright',
  lead: [
    'Channelwright vérifie chaque ligne d’une liste de voies de mesure vibratoire : dynamique, charge massique, écart thermique et bande utile. Les résultats sont des formules ordinaires à côté de votre liste ; rien d’autre n’est modifié.',
  ],
  start: {
    heading: 'Pour commencer',
    steps: [
      'Ouvrez votre liste de voies dans Excel et choisissez « Planifier les voies » sous l’onglet Accueil, ou ouvrez-la dans [l’atelier](workbench.html), qui se passe d’Excel.',
      'Regardez dans le volet quelle colonne a été lue comme quoi, et choisissez-en une autre en cas d’erreur. Ce qui n’est pas sûr est demandé, jamais deviné.',
      'Choisissez « Contrôler les voies ». Les lignes en échec viennent d’abord, chacune avec sa valeur, sa limite et un remède. Une seule annulation défait tout.',
      'Modifiez des cellules : les verdicts suivent d’eux-mêmes. Pour les seules fonctions de feuille : tapez `=CHAN.` dans une cellule.',
    ],
  },
  verdicts: {
    heading: 'Verdicts',
    columns: ['Contrôle', 'Valeur', 'PASS', 'WARN', 'FAIL'],
    rows: [
      ['Niveau, bas', 'rapport signal sur bruit du plus petit niveau', ...zones.noise],
      ['Niveau, haut', 'marge au-dessus de la plus grande crête', ...zones.headroom],
      ['Masse, reconnaissance et choc', 'masse ajoutée sur masse effective locale', ...zones.survey],
      ['Masse, modal', 'idem', ...zones.modal],
      [
        'Thermique',
        'plus grand écart sur la plage',
        `≤ ${zones.thermal}`,
        `dans ${zones.thermal} une fois le milieu corrigé`,
        'sinon, ou hors des limites d’un élément',
      ],
      ['Fréquence', 'bande demandée dans la bande utile', `dans ±${zones.span[0]}`, `dans ±${zones.span[1]}`, 'sinon'],
    ],
    after: [
      'INCOMPLETE signifie qu’une donnée nécessaire manque ; le motif la nomme. Une valeur absente ne passe jamais. Le verdict d’une ligne est le plus mauvais de ses quatre.',
      'Ces limites relèvent de la pratique courante, d’aucune norme. Une feuille de limites dans votre classeur les remplace.',
    ],
  },
  errors: {
    heading: 'Valeurs d’erreur',
    points: [
      '`#N/A` – une donnée nécessaire manque ou se trouve hors des données.',
      '`#NOMBRE!` – une telle valeur n’existe pas, par exemple pour une bande vide.',
      '`#VALEUR!` – une cellule n’a pas pu être lue ou sort des bornes ; le message d’Excel nomme l’argument, ce qui a été lu et ce qui était attendu.',
      '`#NOM?` – le complément n’est pas chargé : ouvrez son volet, puis recalculez avec Ctrl+Alt+F9 ; celles qui restent ainsi se réécrivent sous « Remèdes et état ».',
    ],
  },
  units: {
    heading: 'Unités',
    text: [
      'Un nombre seul est dans l’unité de l’argument. Un texte peut porter toute unité de la même grandeur, par exemple « 15 m/s² ». L’argument décide si g est la pesanteur normale ou le gramme. Un texte à double sens est refusé avec ses deux lectures.',
    ],
    columns: ['Grandeur', 'Unité'],
  },
  numbers: {
    heading: 'D’où viennent les valeurs',
    points: [
      'Chaque fonction donne son équation, son domaine de validité et sa source : une norme, un livre, une démonstration ou « common practice, no source » (pratique courante, sans source). « From memory » signifie que la page n’a pas été relue.',
      'Chaque fonction a des exemples calculés sans ce programme. [Le classeur d’exemples](examples.xlsx) les contient tous en formules vives à côté des valeurs attendues et compte combien concordent.',
    ],
  },
  cautions: {
    heading: 'Prudence',
    text: [
      'Une aide à la préparation, pas une fonction de protection ; aucun verdict n’autorise un essai. Pièces chaudes, pots vibrants, colles, hauteur, lasers, enceintes et céramiques au plomb peuvent blesser. Les règles locales et les personnes habilitées priment toujours.',
      'Un essai piloté par un seul accéléromètre peut s’emballer si ce capteur est perdu : le pot est poussé à pleine puissance.',
    ],
  },
  privacy: {
    heading: 'Confidentialité',
    text: [
      'Pas de compte, pas de télémétrie, pas de serveur à nous. Les calculs se font dans Excel ou dans votre navigateur. Les pages ne demandent que leurs propres fichiers et, dans Excel, Office.js de Microsoft, que Microsoft impose.',
    ],
  },
  install: 'Installer, mettre à jour, retirer : [voir cette page](install.fr.html).',
  functions: {
    heading: 'Fonctions de feuille',
    text: [
      'Les crochets marquent les arguments facultatifs. Les bornes sont dans l’unité de l’argument. Validité, sources et exemples sont en anglais.',
    ],
    index: 'Toutes les fonctions',
    arguments: 'Arguments',
    result: 'Résultat',
    valid: 'Validité',
    source: 'Source',
    examples: 'Exemples',
    ifBlank: 'si vide',
    needed: 'nécessaire',
    families: {
      'level and dynamic range': 'Niveau et dynamique',
      'mass loading': 'Charge massique',
      thermal: 'Thermique',
      'frequency span': 'Bande de fréquence',
      trust: 'Confiance dans la mesure',
      verdict: 'Verdict',
      choosing: 'Choix',
      'text and units': 'Texte et unités',
    },
  },
};
