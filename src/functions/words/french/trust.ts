import type { Translations } from '../wording';

export const trust: Translations = {
  'Combined standard uncertainty of a level from a table of contributions.':
    'Incertitude-type composée d’un niveau à partir d’un tableau de contributions.',
  'Three to five columns: name, ± value in %, distribution (rectangular, triangular, U-shaped, normal, standard, bias) or divisor, degrees of freedom, effect. A heading row is passed over.':
    'Trois à cinq colonnes : nom, valeur ± en %, loi (rectangular, triangular, U-shaped, normal, standard, bias) ou diviseur, degrés de liberté, effet. Une ligne d’en-tête est sautée.',
  'Combined standard uncertainty.': 'Incertitude-type composée.',
  'Expanded uncertainty of a level, enlarged by an uncorrected one-sided error.':
    'Incertitude élargie d’un niveau, augmentée d’une erreur non corrigée d’un seul signe.',
  'Coverage factor; 2 is about 95 % if the effective degrees of freedom exceed 30.':
    'Facteur d’élargissement ; 2 donne environ 95 % si les degrés de liberté effectifs dépassent 30.',
  'Expanded uncertainty.': 'Incertitude élargie.',
  'Sum of the one-sided errors that were not corrected, with sign.':
    'Somme, avec leur signe, des erreurs d’un seul signe non corrigées.',
  'Uncorrected bias of the reading.': 'Biais non corrigé de la lecture.',
  'Effective degrees of freedom of a combined uncertainty.': 'Degrés de liberté effectifs d’une incertitude composée.',
  'Degrees of freedom, or “infinite”.': 'Degrés de liberté, ou « infinite » (infini).',
  'Coverage factor for a probability at given degrees of freedom.':
    'Facteur d’élargissement pour une probabilité, à degrés de liberté donnés.',
  'Effective degrees of freedom; blank: infinite.': 'Degrés de liberté effectifs ; vide : infini.',
  'Probability of ±k·u.': 'Probabilité de ±k·u.',
  'Coverage factor.': 'Facteur d’élargissement.',
  'The contributions of an uncertainty, largest first: what to improve.':
    'Les contributions d’une incertitude, la plus grande d’abord : ce qu’il faut améliorer.',
  'Per row: name, given value in %, divisor, standard uncertainty in %, share of u_c² in %, remark.':
    'Par ligne : nom, valeur donnée en %, diviseur, incertitude-type en %, part de u_c² en %, remarque.',
  'Standard uncertainty that one more contribution may have within a limit of the expanded uncertainty.':
    'Incertitude-type qu’une contribution de plus peut avoir sans dépasser une limite de l’incertitude élargie.',
  'Largest expanded uncertainty.': 'Plus grande incertitude élargie.',
  'Standard uncertainty left over.': 'Incertitude-type qui reste disponible.',
  'Standard uncertainty of a ± value.': 'Incertitude-type d’une valeur ±.',
  'The ± value.': 'La valeur ±.',
  'Distribution of the true value; normal: expanded with k = 2.':
    'Loi de la valeur vraie : rectangulaire, triangulaire, en U ou normale ; normal : élargie avec k = 2.',
  'Standard uncertainty.': 'Incertitude-type.',
  'The ± value that a standard uncertainty allows.': 'La valeur ± que permet une incertitude-type.',
  'Standard uncertainty from transverse motion at an unknown angle.':
    'Incertitude-type due à un mouvement transverse d’angle inconnu.',
  'Transverse sensitivity of the sensor.': 'Sensibilité transverse du capteur.',
  'Transverse over axial level at the point.': 'Niveau transverse sur niveau axial au point.',
  'Standard uncertainty of the axial level.': 'Incertitude-type du niveau axial.',
  'False acceleration from strain of the surface under the sensor.':
    'Fausse accélération due à la déformation de la surface sous le capteur.',
  'Base strain sensitivity of the sensor.': 'Sensibilité du capteur à la déformation de sa base.',
  'Strain of the surface at the point.': 'Déformation de la surface au point.',
  'False acceleration; over the level it is a contribution.':
    'Fausse accélération ; divisée par le niveau, c’est une contribution.',
  'Statistical uncertainty of an r.m.s. value of random vibration.':
    'Incertitude statistique d’une valeur efficace de vibration aléatoire.',
  'Bandwidth of the r.m.s. value or of one line.': 'Largeur de bande de la valeur efficace ou d’une raie.',
  'Averaging time.': 'Durée de moyennage.',
  'Averaging time that brings the statistical uncertainty down.':
    'Durée de moyennage qui abaisse l’incertitude statistique.',
  'Standard uncertainty accepted.': 'Incertitude-type acceptée.',
  'Loss of level by an angle between the sensor’s axis and the intended one.':
    'Perte de niveau due à un angle entre l’axe du capteur et l’axe voulu.',
  'Angle between both axes.': 'Angle entre les deux axes.',
  'Loss of the axial level.': 'Perte du niveau axial.',
};
