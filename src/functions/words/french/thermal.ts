import type { Translations } from '../wording';

export const thermal: Translations = {
  'Smallest and largest deviation of the sensitivity over a temperature range.':
    'Plus petit et plus grand écart de la sensibilité sur une plage de température.',
  'Deviation of the sensitivity against temperature; goes before the coefficient.':
    'Écart de la sensibilité en fonction de la température ; passe avant le coefficient.',
  'Lowest temperature of the sensor itself, or both as a range text.':
    'Plus basse température du capteur lui-même, ou les deux sous forme de texte de plage.',
  'Highest temperature of the sensor itself.': 'Plus haute température du capteur lui-même.',
  'Temperature on the calibration certificate.': 'Température du certificat d’étalonnage.',
  'Linear coefficient, used when there is no curve.': 'Coefficient linéaire, utilisé quand il n’y a pas de courbe.',
  'Unsigned: the data sheet gives a size only, so the band is taken both ways.':
    'unsigned : la fiche technique ne donne que la valeur absolue, la bande vaut donc dans les deux sens.',
  'Smallest deviation in the range.': 'Plus petit écart de la plage.',
  'Largest deviation in the range.': 'Plus grand écart de la plage.',
  'Smallest deviation of the sensitivity over a temperature range.':
    'Plus petit écart de la sensibilité sur une plage de température.',
  'Largest deviation of the sensitivity over a temperature range.':
    'Plus grand écart de la sensibilité sur une plage de température.',
  'Largest deviation either way over a temperature range: the error of an uncorrected reading.':
    'Plus grand écart dans un sens ou dans l’autre sur une plage de température : l’erreur d’une lecture non corrigée.',
  'Largest size of the deviation in the range.': 'Plus grande valeur absolue de l’écart dans la plage.',
  'What stays either way when the sensitivity is scaled to the middle of its band.':
    'Ce qui reste dans un sens ou dans l’autre quand la sensibilité est ramenée au milieu de sa bande.',
  'Remaining deviation either way.': 'Écart restant dans un sens ou dans l’autre.',
  'Deviation of the sensitivity at one temperature from that at another.':
    'Écart de la sensibilité à une température par rapport à celle à une autre.',
  'Temperature of the sensor itself.': 'Température du capteur lui-même.',
  'Temperature of the sensitivity that is used, as on the calibration certificate.':
    'Température de la sensibilité utilisée, comme au certificat d’étalonnage.',
  'Deviation; a reading not corrected for it is wrong by as much.':
    'Écart ; une lecture qui n’en est pas corrigée est fausse d’autant.',
  'The deviation of the sensitivity against temperature as a table, zero at the calibration temperature.':
    'Dérive thermique de la sensibilité en tableau, nulle à la température d’étalonnage.',
  'Deviation of the sensitivity against temperature.': 'Écart de la sensibilité en fonction de la température.',
  'Distance of the rows; curve points and both ends always have one. Blank: only these.':
    'Pas des lignes ; les points de la courbe et les deux bouts en ont toujours une. Vide : seulement celles-ci.',
  'Temperature in °C and deviation in %, one row each, rising.':
    'Température en °C et écart en %, une ligne chacun, en ordre croissant.',
  'A deviation in decibel.': 'Un écart en décibels.',
  'Deviation of an amplitude.': 'Écart d’une amplitude.',
  'The same as a level difference.': 'Le même en différence de niveau.',
  'A level difference in decibel as a deviation.': 'Une différence de niveau en décibels, sous forme d’écart.',
  'Level difference of an amplitude.': 'Différence de niveau d’une amplitude.',
  'The same as a deviation.': 'La même sous forme d’écart.',
  'Largest temperature coefficient that keeps a tolerance over a temperature range.':
    'Plus grand coefficient de température qui respecte une tolérance sur une plage de température.',
  'Largest deviation allowed either way.': 'Plus grand écart admis dans un sens ou dans l’autre.',
  'Size of the coefficient, either sign.': 'Valeur absolue du coefficient, signe indifférent.',
  'Coefficient that a deviation at one temperature would mean if the response were a straight line.':
    'Coefficient que signifierait un écart à une température si la dérive thermique était une droite.',
  'Deviation at the temperature, zero at calibration.': 'Écart à la température, nul à l’étalonnage.',
  'Temperature of the deviation.': 'Température de l’écart.',
  'Mean slope between the two temperatures.': 'Pente moyenne entre les deux températures.',
  'Temperature range round the calibration temperature in which the deviation keeps a tolerance.':
    'Plage de température autour de la température d’étalonnage où l’écart respecte une tolérance.',
  'Lowest temperature.': 'Plus basse température.',
  'Highest temperature.': 'Plus haute température.',
  'Steepest change of the deviation per kelvin over a temperature range.':
    'Plus forte variation de l’écart par kelvin sur une plage de température.',
  'Size of the steepest slope.': 'Valeur absolue de la plus forte pente.',
  'What stays after a correction by the logged sensor temperature.':
    'Ce qui reste après une correction par la température enregistrée du capteur.',
  'Steepest slope of the deviation, either sign.': 'Plus forte pente de l’écart, signe indifférent.',
  'Uncertainty of the sensor’s temperature, lag included.': 'Incertitude de la température du capteur, retard compris.',
  'How well the sensor’s temperature must be known for a correction to keep a tolerance.':
    'Avec quelle précision connaître la température du capteur pour qu’une correction respecte une tolérance.',
  'Size of the steepest slope of the deviation.': 'Valeur absolue de la plus forte pente de l’écart.',
  'Deviation that may remain.': 'Écart qui peut rester.',
  'Uncertainty of the temperature.': 'Incertitude de la température.',
  'False output that a steady temperature ramp causes above a low corner.':
    'Faux signal qu’une variation régulière de température provoque au-dessus d’une fréquence de coupure basse.',
  'Transient temperature sensitivity of the sensor.': 'Sensibilité du capteur aux transitoires de température.',
  'Steady rate of the temperature, its size.': 'Vitesse régulière de variation de la température, en valeur absolue.',
  'Low corner (−3 dB) of the chain.': 'Fréquence de coupure basse (−3 dB) de la chaîne.',
  'Size of the false acceleration, after about five time constants.':
    'Valeur absolue de la fausse accélération, après environ cinq constantes de temps.',
  'Lowest low corner that keeps the false output of a temperature ramp.':
    'Plus petite fréquence de coupure basse qui limite le faux signal d’une variation de température.',
  'False acceleration accepted.': 'Fausse accélération acceptée.',
  'Low corner (−3 dB).': 'Fréquence de coupure basse (−3 dB).',
  'Fastest temperature ramp that keeps its false output.':
    'Plus rapide variation de température qui limite son faux signal.',
  'Rate of the temperature.': 'Vitesse de variation de la température.',
  'Largest zero offset of a static-response sensor over a temperature range.':
    'Plus grand décalage de zéro d’un capteur à réponse statique sur une plage de température.',
  'Lowest temperature of the sensor, or both as a range text.':
    'Plus basse température du capteur, ou les deux sous forme de texte de plage.',
  'Highest temperature of the sensor.': 'Plus haute température du capteur.',
  'Temperature at which the zero was set.': 'Température à laquelle le zéro a été réglé.',
  'Size of the offset.': 'Valeur absolue du décalage.',
  'Largest zero drift that keeps an offset over a temperature range.':
    'Plus grande dérive de zéro qui limite un décalage sur une plage de température.',
  'Offset accepted.': 'Décalage accepté.',
  'Size of the drift.': 'Valeur absolue de la dérive.',
  'Heat that a constant-current sensor makes of its supply.':
    'Chaleur qu’un capteur à courant constant tire de son alimentation.',
  'Bias voltage at the sensor.': 'Tension de polarisation au capteur.',
  'Constant current.': 'Courant constant.',
  'Heat in the sensor.': 'Puissance thermique dans le capteur.',
  'Caution for people who handle the point at these temperatures.':
    'Mise en garde pour les personnes qui touchent le point à ces températures.',
  'Lowest temperature of the surface, or both as a range text.':
    'Plus basse température de la surface, ou les deux sous forme de texte de plage.',
  'Highest temperature of the surface.': 'Plus haute température de la surface.',
  'A caution, or a statement that temperature alone gives none.':
    'Une mise en garde, ou l’indication que la température seule n’en donne pas.',
  'Operating limits of sensor, mount, cable and adhesive against a needed temperature range, each named.':
    'Limites d’emploi du capteur, de la fixation, du câble et de la colle face à une plage de température requise, chacune nommée.',
  'Lowest temperature needed, or both as a range text.':
    'Plus basse température requise, ou les deux sous forme de texte de plage.',
  'Highest temperature needed.': 'Plus haute température requise.',
  'Three columns: name, lower limit, upper limit in °C; a range text in the second is enough. Empty rows are passed over.':
    'Trois colonnes : nom, limite basse, limite haute en °C ; un texte de plage dans la deuxième suffit. Les lignes vides sont sautées.',
  'One row per part: name, verdict, the margin or what it lacks.':
    'Une ligne par élément : nom, verdict, la marge ou ce qui manque.',
};
