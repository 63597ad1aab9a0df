import { dateText } from '../../json-date';
import type { RowsTogether } from '../../sentence';

const AXES_PROBLEM = {
  unreadable: 'ni rotations comme « Z30 Y-10 » ni neuf cosinus directeurs ; considéré comme inconnu',
  'left-handed': 'trièdre indirect (déterminant −1), donc pas une rotation ; un axe a le mauvais signe',
  'not at right angles': 'pas une rotation : les axes ne sont pas trois vecteurs unitaires à angle droit',
} as const;
const MEANT = 'si elles ne sont pas mesurées ensemble, indiquer les passages';
const withoutRun = 'les lignes sans passage';

export const FRENCH_TOGETHER: RowsTogether = {
  'same direction': ({ point, direction, channels }) =>
    `${channels.length} voies (${channels.join(', ')}) mesurent le point ${point} selon une même ligne (${direction}) : à garder seulement si c’est voulu.`,
  'other point': ({ channel, point, direction }) =>
    `La voie ${channel} est au point ${point}, mais sa direction ${direction} en nomme un autre : corriger l’un des deux.`,
  'local axes': ({ channel, text, problem }) =>
    `Axes locaux « ${text} » de la voie ${channel} : ${AXES_PROBLEM[problem]}.`,
  'housing axes': ({ sensor, point, axes, number, housings, directions, problem }) => {
    const rows = `${number} ${number === 1 ? 'axe' : 'axes'} sur ${axes * housings} de ${sensor} au point ${point} (${directions.join(', ')})`;
    if (problem === 'twice') return `${rows} : un boîtier ne peut mesurer deux fois selon une même ligne.`;
    return problem === 'missing'
      ? `${rows} prévus : ajouter ceux qui manquent, ou dire qu’ils restent libres.`
      : `${rows} : une direction manque, on ne sait donc pas si tous les axes diffèrent.`;
  },
  handedness: ({ sensor, point, directions, problem }) => {
    const set = `Les axes ${directions} de ${sensor} au point ${point}`;
    if (problem === 'not at right angles') return `${set} ne sont pas à angle droit, ceux d’un boîtier le sont.`;
    return problem === 'left-handed'
      ? `${set} forment un trièdre indirect dans l’ordre des axes du capteur, il ne peut être posé ainsi : un signe est faux ou deux axes sont échangés.`
      : `${set} forment un trièdre indirect : un capteur direct ne les donne qu’en échangeant deux axes ; indiquer les axes du capteur, ou corriger un signe.`;
  },
  'same input channel': ({ inputChannel, channels, verdict }) =>
    `La voie d’entrée ${inputChannel} reçoit ${channels.length} voies (${channels.join(', ')}) : elle n’en prend qu’une${verdict === 'WARN' ? ` ; ${MEANT}` : ''}.`,
  'same sensor': ({ sensor, axes, points, channels, verdict }) => {
    const where = points.length > 1 ? ` aux points ${points.join(', ')}` : '';
    const rows = `Le capteur ${sensor} est prévu pour ${channels.length} voies${where} (${channels.join(', ')})`;
    if (verdict === 'INCOMPLETE') return `${rows} : on ne sait pas s’il a autant d’axes.`;
    const room =
      axes === undefined ? 'c’est un seul boîtier' : `c’est un seul boîtier à ${axes === 1 ? '1 axe' : `${axes} axes`}`;
    return `${rows} : ${room}${verdict === 'WARN' ? ` ; ${MEANT}` : ''}.`;
  },
  'piece of another type': ({ serial, type, listed, channels }) =>
    `${channels.length === 1 ? 'Voie' : 'Voies'} ${channels.join(', ')} avec ${type} : le numéro de série ${serial} est celui d’un ${listed} dans la liste des capteurs : corriger le type ou le numéro.`,
  'overlapping runs': ({ sensor, runs, number, from, verdict }) =>
    verdict === 'WARN'
      ? `Le capteur ${sensor} sert dans ${runs[0] || withoutRun} et ${runs[1]}, qui se touchent le ${dateText(from)} : prévoir le temps de le déplacer.`
      : `Le capteur ${sensor} sert dans ${runs[0] || withoutRun} et ${runs[1]}, qui ont ${number} jours communs dès le ${dateText(from)} : il ne peut être dans les deux.`,
  'calibration due': ({ sensor, run, number, limit, verdict }) => {
    const when = `L’étalonnage de ${sensor} échoit le ${dateText(number)}, avant`;
    const what = run === '' ? 'de l’essai' : `de ${run}`;
    return verdict === 'FAIL'
      ? `${when} le début ${what} le ${dateText(limit)} : l’étalonner avant, ou en prendre un autre.`
      : `${when} la fin ${what} le ${dateText(limit)} : l’étalonner avant, ou le vérifier après.`;
  },
  'input modules': ({ mode, run, number, limit, modules, moduleSize, verdict }) => {
    const more =
      modules === undefined
        ? 'd’autres modules'
        : `${modules} ${modules === 1 ? 'module' : 'modules'} de ${moduleSize} en plus`;
    return `${number} voies demandent une entrée ${mode}${run === '' ? '' : ` dans ${run}`}, les modules en ont ${limit} : ${more} ou moins de voies aideraient${verdict === 'WARN' ? ` ; ${MEANT}` : ''}.`;
  },
};
