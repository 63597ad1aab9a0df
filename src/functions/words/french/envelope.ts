import type { Translations } from '../wording';

export const envelope: Translations = {
  'What a sensor must satisfy at each row of a channel list: every bound with what asks for it.':
    'Ce qu’un capteur doit satisfaire à chaque ligne d’une liste de voies : chaque borne avec ce qui la demande.',
  'The sensor list with its heading row, to put the sensor that a row names beside its bounds.':
    'La liste des capteurs avec sa ligne d’en-tête, pour placer le capteur que nomme une ligne à côté de ses bornes.',
  'The input list with its heading row; for a row that names no input, all of them are at hand.':
    'La liste des entrées avec sa ligne d’en-tête ; pour une ligne qui ne nomme aucune entrée, toutes sont disponibles.',
  'Names of the bounds to show, separated by semicolons; blank: all.':
    'Noms anglais des bornes à montrer, séparés par des points-virgules ; vide : toutes.',
  'A heading row and one row for each bound of each channel. A bound that is not known names the fields it lacks.':
    'Une ligne d’en-tête et une ligne par borne de chaque voie. Une borne inconnue nomme les champs qui lui manquent.',
  'Which sensing elements and outputs stay admissible at each row of a channel list, and why the others fall.':
    'Quels éléments sensibles et quelles sorties restent admissibles à chaque ligne d’une liste de voies, et pourquoi les autres sont écartés.',
  'What else holds, separated by semicolons: hard impact, integrated, several earths, immersion, vacuum, radiation, explosive atmosphere, magnetic field.':
    'Ce qui vaut en outre, séparé par « ; » : hard impact (choc dur), integrated (intégré), several earths (plusieurs terres), immersion, vacuum (vide), radiation, explosive atmosphere, magnetic field (champ magnétique).',
  'Directions measured at the point.': 'Directions mesurées au point.',
  'Duration of a single shock.': 'Durée d’un choc isolé.',
  'Rate at which the temperature changes.': 'Vitesse à laquelle la température change.',
  'Names of the elements and outputs to show, separated by semicolons; blank: all.':
    'Noms anglais des éléments et des sorties à montrer, séparés par des points-virgules ; vide : tous.',
  'A heading row; for each kind one row, or one for each reason against it, with its mark; then notes.':
    'Une ligne d’en-tête ; pour chaque famille une ligne, ou une par raison qui s’y oppose, avec sa marque ; puis des remarques.',
};
