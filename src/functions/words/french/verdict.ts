import type { Translations } from '../wording';

export const verdict: Translations = {
  'PASS, WARN, FAIL or INCOMPLETE for a number that must be large enough.':
    'PASS, WARN, FAIL ou INCOMPLETE pour un nombre qui doit être assez grand.',
  'The number to judge; a blank, text or error is INCOMPLETE.':
    'Le nombre à juger ; une cellule vide, un texte ou une erreur donne INCOMPLETE.',
  'Smallest number that passes.': 'Plus petit nombre accepté.',
  'Smallest number that only warns; blank: there is no WARN.':
    'Plus petit nombre qui ne donne qu’un avertissement ; vide : il n’y a pas de WARN.',
  'PASS, WARN, FAIL or INCOMPLETE.': 'PASS, WARN, FAIL ou INCOMPLETE.',
  'PASS, WARN, FAIL or INCOMPLETE for a number that must be small enough.':
    'PASS, WARN, FAIL ou INCOMPLETE pour un nombre qui doit être assez petit.',
  'Largest number that passes.': 'Plus grand nombre accepté.',
  'Largest number that only warns; blank: there is no WARN.':
    'Plus grand nombre qui ne donne qu’un avertissement ; vide : il n’y a pas de WARN.',
  'The worst of several verdicts.': 'Le plus mauvais de plusieurs verdicts.',
  'Verdict cells or ranges; a blank, an error or any other word counts as INCOMPLETE.':
    'Cellules ou plages de verdicts ; une cellule vide, une erreur ou tout autre mot compte comme INCOMPLETE.',
  'Verdict on a thermal deviation band and on the temperature limits of sensor, mount and cable.':
    'Verdict sur une bande d’écart thermique et sur les limites de température du capteur, de la fixation et du câble.',
  'Lowest temperature needed.': 'Plus basse température requise.',
  'Lower operating limit of the sensor.': 'Limite basse d’emploi du capteur.',
  'Upper operating limit of the sensor.': 'Limite haute d’emploi du capteur.',
  'Lower limit of the mount; blank: not limited.': 'Limite basse de la fixation ; vide : sans limite.',
  'Upper limit of the mount; blank: not limited.': 'Limite haute de la fixation ; vide : sans limite.',
  'Lower limit of the cable; blank: not limited.': 'Limite basse du câble ; vide : sans limite.',
  'Upper limit of the cable; blank: not limited.': 'Limite haute du câble ; vide : sans limite.',
  'Verdict on a needed frequency band against the usable span and a wider one.':
    'Verdict sur une bande de fréquences requise face à la plage utilisable et à une plage plus large.',
  'Low end of the usable span in Hz; #NUM! means that the span is empty.':
    'Bout inférieur de la plage utilisable en Hz ; #NUM! (en français #NOMBRE!) signifie que la plage est vide.',
  'High end of the usable span in Hz.': 'Bout supérieur de la plage utilisable en Hz.',
  'Low end of the span at the wider tolerance, in Hz.': 'Bout inférieur de la plage à la tolérance élargie, en Hz.',
  'High end of the span at the wider tolerance, in Hz.': 'Bout supérieur de la plage à la tolérance élargie, en Hz.',
  'Whether the input can take what the sensor gives: PASS, FAIL, or INCOMPLETE when one is not known.':
    'Si l’entrée peut recevoir ce que donne le capteur : PASS, FAIL, ou INCOMPLETE quand l’un des deux n’est pas connu.',
  'Output mode of the sensor.': 'Type de sortie du capteur.',
  'Mode of the input.': 'Mode de l’entrée.',
  'Why VERDICT.MODE fails, in words: which output stands on which input, and what would help.':
    'Pourquoi VERDICT.MODE donne FAIL, en mots : quelle sortie sur quelle entrée, et ce qui aiderait.',
  'Upper limit of the channel; 0 where the supply leaves no swing.':
    'Limite haute de la voie ; 0 si l’alimentation ne laisse aucune excursion.',
  'A sentence; a dash where the input takes it, or one of both is not known.':
    'Une phrase ; un tiret là où l’entrée convient ou si l’un des deux n’est pas connu.',
  'Which temperature lies beyond which operating limit, in words: sensor, mount and cable.':
    'Quelle température dépasse quelle limite d’emploi, en mots : capteur, fixation et câble.',
  'Sentences; a dash where no known limit is exceeded.':
    'Des phrases ; un tiret là où aucune limite connue n’est dépassée.',
  'PASS, FAIL or INCOMPLETE.': 'PASS, FAIL ou INCOMPLETE.',
  'Checks every row of a channel list against the lists it names: numbers, verdicts and reasons.':
    'Vérifie chaque ligne d’une liste de voies avec les listes qu’elle nomme : nombres, verdicts et raisons.',
  'The channel list with its heading row.': 'La liste des voies avec sa ligne d’en-tête.',
  'The sensor list with its heading row.': 'La liste des capteurs avec sa ligne d’en-tête.',
  'The mount list with its heading row.': 'La liste des fixations avec sa ligne d’en-tête.',
  'The cable list with its heading row.': 'La liste des câbles avec sa ligne d’en-tête.',
  'The input list with its heading row.': 'La liste des entrées avec sa ligne d’en-tête.',
  'The limits with their heading row; blank: the defaults.':
    'Les limites avec leur ligne d’en-tête ; vide : les valeurs par défaut.',
  'A heading row and one row for each row of the list; a blank row stays blank. What cannot be computed is blank and makes its verdict INCOMPLETE.':
    'Une ligne d’en-tête et une ligne par ligne de la liste ; une ligne vide reste vide. Ce qui ne peut être calculé reste vide et rend son verdict INCOMPLETE.',
  'One short text for a channel row: what keeps it from a PASS, worst first, and what would help.':
    'Un texte court pour une ligne de voie : ce qui la sépare de PASS, le pire d’abord, et ce qui aiderait.',
  'Verdict of the level; its cause may follow.': 'Verdict sur le niveau ; la cause peut suivre.',
  'Signal to noise.': 'Rapport signal sur bruit.',
  'Verdict of the mass loading; its cause may follow.': 'Verdict sur la charge massique ; la cause peut suivre.',
  'Mass ratio.': 'Rapport de charge massique.',
  'Heaviest sensor that passes.': 'Capteur accepté le plus lourd.',
  'Verdict of the thermal deviation; its cause may follow.': 'Verdict sur l’écart thermique ; la cause peut suivre.',
  'Lowest deviation.': 'Plus petit écart.',
  'Highest deviation.': 'Plus grand écart.',
  'Verdict of the frequency span; its cause may follow.': 'Verdict sur la plage de fréquences ; la cause peut suivre.',
  'Lower end of the span.': 'Bout inférieur de la plage.',
  'Upper end of the span.': 'Bout supérieur de la plage.',
  'Limit of the signal to noise.': 'Limite du rapport signal sur bruit.',
  'Limit of the headroom.': 'Limite de la réserve.',
  'Limit of the mass ratio.': 'Limite du rapport de charge massique.',
  'Thermal tolerance.': 'Tolérance thermique.',
  'Cells that name what is not known, as MISSING gives them; used for an INCOMPLETE row.':
    'Cellules qui nomment ce qui n’est pas connu, telles que MISSING les donne ; utilisées pour une ligne INCOMPLETE.',
  'Sentences; a dash for a row that passes.': 'Des phrases ; un tiret pour une ligne acceptée.',
  'Which of several cells are blank, errors, or texts such as “tbd”: their names, or nothing.':
    'Lesquelles de plusieurs cellules sont vides, des erreurs ou des textes comme « tbd » : leurs noms, ou rien.',
  'Names of the cells, separated by semicolons.': 'Noms des cellules, séparés par des points-virgules.',
  'The cells, in the order of the names.': 'Les cellules, dans l’ordre des noms.',
  'Names joined by commas; empty when nothing is missing.': 'Noms joints par des virgules ; vide quand rien ne manque.',
  'Verdict on the false output of a temperature ramp beside the lowest level.':
    'Verdict sur le faux signal d’une variation de température face au plus petit niveau.',
  'False output of the ramp, as by THERMAL.RAMP.': 'Faux signal de la variation, comme par THERMAL.RAMP.',
  'Lowest level that must be read.': 'Plus petit niveau à mesurer.',
};
