import type { Translations } from '../wording';

export const thermal: Translations = {
  'Smallest and largest deviation of the sensitivity over a temperature range.':
    'Kleinste und größte Abweichung der Empfindlichkeit über einen Temperaturbereich.',
  'Deviation of the sensitivity against temperature; goes before the coefficient.':
    'Abweichung der Empfindlichkeit über der Temperatur; geht dem Koeffizienten vor.',
  'Lowest temperature of the sensor itself, or both as a range text.':
    'Tiefste Temperatur des Aufnehmers selbst, oder beide als Bereichstext.',
  'Highest temperature of the sensor itself.': 'Höchste Temperatur des Aufnehmers selbst.',
  'Temperature on the calibration certificate.': 'Temperatur auf dem Kalibrierschein.',
  'Linear coefficient, used when there is no curve.': 'Linearer Koeffizient, benutzt, wenn es keine Kurve gibt.',
  'Unsigned: the data sheet gives a size only, so the band is taken both ways.':
    'unsigned: Das Datenblatt nennt nur den Betrag, deshalb gilt das Band nach beiden Seiten.',
  'Smallest deviation in the range.': 'Kleinste Abweichung im Bereich.',
  'Largest deviation in the range.': 'Größte Abweichung im Bereich.',
  'Smallest deviation of the sensitivity over a temperature range.':
    'Kleinste Abweichung der Empfindlichkeit über einen Temperaturbereich.',
  'Largest deviation of the sensitivity over a temperature range.':
    'Größte Abweichung der Empfindlichkeit über einen Temperaturbereich.',
  'Largest deviation either way over a temperature range: the error of an uncorrected reading.':
    'Größte Abweichung nach beiden Seiten über einen Temperaturbereich: der Fehler eines unkorrigierten Messwerts.',
  'Largest size of the deviation in the range.': 'Größter Betrag der Abweichung im Bereich.',
  'What stays either way when the sensitivity is scaled to the middle of its band.':
    'Was nach beiden Seiten bleibt, wenn die Empfindlichkeit auf die Mitte ihres Bands umgerechnet wird.',
  'Remaining deviation either way.': 'Verbleibende Abweichung nach beiden Seiten.',
  'Deviation of the sensitivity at one temperature from that at another.':
    'Abweichung der Empfindlichkeit bei einer Temperatur von der bei einer anderen.',
  'Temperature of the sensor itself.': 'Temperatur des Aufnehmers selbst.',
  'Temperature of the sensitivity that is used, as on the calibration certificate.':
    'Temperatur der benutzten Empfindlichkeit, wie auf dem Kalibrierschein.',
  'Deviation; a reading not corrected for it is wrong by as much.':
    'Abweichung; um so viel ist ein nicht korrigierter Messwert falsch.',
  'The deviation of the sensitivity against temperature as a table, zero at the calibration temperature.':
    'Temperaturgang der Empfindlichkeit als Tabelle, null bei der Kalibriertemperatur.',
  'Deviation of the sensitivity against temperature.': 'Abweichung der Empfindlichkeit über der Temperatur.',
  'Distance of the rows; curve points and both ends always have one. Blank: only these.':
    'Abstand der Zeilen; Kurvenpunkte und beide Enden haben immer eine. Leer: nur diese.',
  'Temperature in °C and deviation in %, one row each, rising.':
    'Temperatur in °C und Abweichung in %, je eine Zeile, steigend.',
  'A deviation in decibel.': 'Eine Abweichung in Dezibel.',
  'Deviation of an amplitude.': 'Abweichung einer Amplitude.',
  'The same as a level difference.': 'Dasselbe als Pegeldifferenz.',
  'A level difference in decibel as a deviation.': 'Eine Pegeldifferenz in Dezibel als Abweichung.',
  'Level difference of an amplitude.': 'Pegeldifferenz einer Amplitude.',
  'The same as a deviation.': 'Dasselbe als Abweichung.',
  'Largest temperature coefficient that keeps a tolerance over a temperature range.':
    'Größter Temperaturkoeffizient, der über einen Temperaturbereich eine Toleranz einhält.',
  'Largest deviation allowed either way.': 'Größte zulässige Abweichung nach beiden Seiten.',
  'Size of the coefficient, either sign.': 'Betrag des Koeffizienten, Vorzeichen beliebig.',
  'Coefficient that a deviation at one temperature would mean if the response were a straight line.':
    'Koeffizient, den eine Abweichung bei einer Temperatur bedeuten würde, wenn der Temperaturgang eine Gerade wäre.',
  'Deviation at the temperature, zero at calibration.': 'Abweichung bei der Temperatur, null bei der Kalibrierung.',
  'Temperature of the deviation.': 'Temperatur der Abweichung.',
  'Mean slope between the two temperatures.': 'Mittlere Steigung zwischen den beiden Temperaturen.',
  'Temperature range round the calibration temperature in which the deviation keeps a tolerance.':
    'Temperaturbereich um die Kalibriertemperatur, in dem die Abweichung eine Toleranz einhält.',
  'Lowest temperature.': 'Tiefste Temperatur.',
  'Highest temperature.': 'Höchste Temperatur.',
  'Steepest change of the deviation per kelvin over a temperature range.':
    'Steilste Änderung der Abweichung je Kelvin über einen Temperaturbereich.',
  'Size of the steepest slope.': 'Betrag der steilsten Steigung.',
  'What stays after a correction by the logged sensor temperature.':
    'Was nach einer Korrektur mit der aufgezeichneten Aufnehmertemperatur bleibt.',
  'Steepest slope of the deviation, either sign.': 'Steilste Steigung der Abweichung, Vorzeichen beliebig.',
  'Uncertainty of the sensor’s temperature, lag included.':
    'Unsicherheit der Aufnehmertemperatur, Nacheilen eingeschlossen.',
  'How well the sensor’s temperature must be known for a correction to keep a tolerance.':
    'Wie genau die Aufnehmertemperatur bekannt sein muss, damit eine Korrektur eine Toleranz einhält.',
  'Size of the steepest slope of the deviation.': 'Betrag der steilsten Steigung der Abweichung.',
  'Deviation that may remain.': 'Abweichung, die bleiben darf.',
  'Uncertainty of the temperature.': 'Unsicherheit der Temperatur.',
  'False output that a steady temperature ramp causes above a low corner.':
    'Falsches Signal, das eine gleichmäßige Temperaturänderung oberhalb einer unteren Grenzfrequenz bewirkt.',
  'Transient temperature sensitivity of the sensor.': 'Transiente Temperaturempfindlichkeit des Aufnehmers.',
  'Steady rate of the temperature, its size.': 'Gleichmäßige Änderungsgeschwindigkeit der Temperatur, Betrag.',
  'Low corner (−3 dB) of the chain.': 'Untere Grenzfrequenz (−3 dB) der Messkette.',
  'Size of the false acceleration, after about five time constants.':
    'Betrag der vorgetäuschten Beschleunigung, nach etwa fünf Zeitkonstanten.',
  'Lowest low corner that keeps the false output of a temperature ramp.':
    'Tiefste untere Grenzfrequenz, die das falsche Signal einer Temperaturänderung einhält.',
  'False acceleration accepted.': 'Hingenommene vorgetäuschte Beschleunigung.',
  'Low corner (−3 dB).': 'Untere Grenzfrequenz (−3 dB).',
  'Fastest temperature ramp that keeps its false output.':
    'Schnellste Temperaturänderung, die ihr falsches Signal einhält.',
  'Rate of the temperature.': 'Änderungsgeschwindigkeit der Temperatur.',
  'Largest zero offset of a static-response sensor over a temperature range.':
    'Größte Nullpunktabweichung eines statisch messenden Aufnehmers über einen Temperaturbereich.',
  'Lowest temperature of the sensor, or both as a range text.':
    'Tiefste Temperatur des Aufnehmers, oder beide als Bereichstext.',
  'Highest temperature of the sensor.': 'Höchste Temperatur des Aufnehmers.',
  'Temperature at which the zero was set.': 'Temperatur, bei der der Nullpunkt abgeglichen wurde.',
  'Size of the offset.': 'Betrag der Nullpunktabweichung.',
  'Largest zero drift that keeps an offset over a temperature range.':
    'Größte Nullpunktdrift, die über einen Temperaturbereich eine Nullpunktabweichung einhält.',
  'Offset accepted.': 'Hingenommene Nullpunktabweichung.',
  'Size of the drift.': 'Betrag der Drift.',
  'Heat that a constant-current sensor makes of its supply.':
    'Wärme, die ein Konstantstrom-Aufnehmer aus seiner Speisung macht.',
  'Bias voltage at the sensor.': 'Ruhespannung am Aufnehmer.',
  'Constant current.': 'Konstantstrom.',
  'Heat in the sensor.': 'Wärmeleistung im Aufnehmer.',
  'Caution for people who handle the point at these temperatures.':
    'Warnhinweis für Menschen, die den Punkt bei diesen Temperaturen anfassen.',
  'Lowest temperature of the surface, or both as a range text.':
    'Tiefste Temperatur der Oberfläche, oder beide als Bereichstext.',
  'Highest temperature of the surface.': 'Höchste Temperatur der Oberfläche.',
  'A caution, or a statement that temperature alone gives none.':
    'Ein Warnhinweis, oder die Aussage, dass die Temperatur allein keinen ergibt.',
  'Operating limits of sensor, mount, cable and adhesive against a needed temperature range, each named.':
    'Betriebsgrenzen von Aufnehmer, Ankopplung, Kabel und Klebstoff gegen einen benötigten Temperaturbereich, jede benannt.',
  'Lowest temperature needed, or both as a range text.': 'Tiefste benötigte Temperatur, oder beide als Bereichstext.',
  'Highest temperature needed.': 'Höchste benötigte Temperatur.',
  'Three columns: name, lower limit, upper limit in °C; a range text in the second is enough. Empty rows are passed over.':
    'Drei Spalten: Name, untere Grenze, obere Grenze in °C; ein Bereichstext in der zweiten genügt. Leere Zeilen werden übergangen.',
  'One row per part: name, verdict, the margin or what it lacks.':
    'Eine Zeile je Teil: Name, Urteil, der Abstand oder was fehlt.',
};
