import type { Translations } from '../wording';

export const trust: Translations = {
  'Combined standard uncertainty of a level from a table of contributions.':
    'Kombinierte Standardunsicherheit eines Pegels aus einer Tabelle von Beiträgen.',
  'Three to five columns: name, ± value in %, distribution (rectangular, triangular, U-shaped, normal, standard, bias) or divisor, degrees of freedom, effect. A heading row is passed over.':
    'Drei bis fünf Spalten: Name, ±-Wert in %, Verteilung (rectangular, triangular, U-shaped, normal, standard, bias) oder Divisor, Freiheitsgrade, Einfluss. Eine Kopfzeile wird übergangen.',
  'Combined standard uncertainty.': 'Kombinierte Standardunsicherheit.',
  'Expanded uncertainty of a level, enlarged by an uncorrected one-sided error.':
    'Erweiterte Messunsicherheit eines Pegels, vergrößert um einen nicht korrigierten einseitigen Fehler.',
  'Coverage factor; 2 is about 95 % if the effective degrees of freedom exceed 30.':
    'Erweiterungsfaktor; 2 entspricht etwa 95 %, wenn die effektiven Freiheitsgrade über 30 liegen.',
  'Expanded uncertainty.': 'Erweiterte Messunsicherheit.',
  'Sum of the one-sided errors that were not corrected, with sign.':
    'Summe der einseitigen Fehler, die nicht korrigiert wurden, mit Vorzeichen.',
  'Uncorrected bias of the reading.': 'Nicht korrigierte systematische Abweichung des Messwerts.',
  'Effective degrees of freedom of a combined uncertainty.':
    'Effektive Freiheitsgrade einer kombinierten Unsicherheit.',
  'Degrees of freedom, or “infinite”.': 'Freiheitsgrade, oder „infinite“ (unendlich).',
  'Coverage factor for a probability at given degrees of freedom.':
    'Erweiterungsfaktor für eine Wahrscheinlichkeit bei gegebenen Freiheitsgraden.',
  'Effective degrees of freedom; blank: infinite.': 'Effektive Freiheitsgrade; leer: unendlich.',
  'Probability of ±k·u.': 'Wahrscheinlichkeit von ±k·u.',
  'Coverage factor.': 'Erweiterungsfaktor.',
  'The contributions of an uncertainty, largest first: what to improve.':
    'Die Beiträge einer Messunsicherheit, der größte zuerst: was zu verbessern ist.',
  'Per row: name, given value in %, divisor, standard uncertainty in %, share of u_c² in %, remark.':
    'Je Zeile: Name, gegebener Wert in %, Divisor, Standardunsicherheit in %, Anteil an u_c² in %, Bemerkung.',
  'Standard uncertainty that one more contribution may have within a limit of the expanded uncertainty.':
    'Standardunsicherheit, die ein weiterer Beitrag innerhalb einer Grenze der erweiterten Messunsicherheit haben darf.',
  'Largest expanded uncertainty.': 'Größte erweiterte Messunsicherheit.',
  'Standard uncertainty left over.': 'Verbleibende Standardunsicherheit.',
  'Standard uncertainty of a ± value.': 'Standardunsicherheit eines ±-Werts.',
  'The ± value.': 'Der ±-Wert.',
  'Distribution of the true value; normal: expanded with k = 2.':
    'Verteilung des wahren Werts: Rechteck, Dreieck, U-förmig oder normal; normal: erweitert mit k = 2.',
  'Standard uncertainty.': 'Standardunsicherheit.',
  'The ± value that a standard uncertainty allows.': 'Der ±-Wert, den eine Standardunsicherheit zulässt.',
  'Standard uncertainty from transverse motion at an unknown angle.':
    'Standardunsicherheit durch Querbewegung unter unbekanntem Winkel.',
  'Transverse sensitivity of the sensor.': 'Querempfindlichkeit des Aufnehmers.',
  'Transverse over axial level at the point.': 'Querpegel durch Axialpegel am Punkt.',
  'Standard uncertainty of the axial level.': 'Standardunsicherheit des Axialpegels.',
  'False acceleration from strain of the surface under the sensor.':
    'Vorgetäuschte Beschleunigung durch Dehnung der Oberfläche unter dem Aufnehmer.',
  'Base strain sensitivity of the sensor.': 'Dehnungsempfindlichkeit der Grundfläche des Aufnehmers.',
  'Strain of the surface at the point.': 'Dehnung der Oberfläche am Punkt.',
  'False acceleration; over the level it is a contribution.':
    'Vorgetäuschte Beschleunigung; durch den Pegel geteilt ist sie ein Beitrag.',
  'Statistical uncertainty of an r.m.s. value of random vibration.':
    'Statistische Unsicherheit eines Effektivwerts einer Zufallsschwingung.',
  'Bandwidth of the r.m.s. value or of one line.': 'Bandbreite des Effektivwerts oder einer Linie.',
  'Averaging time.': 'Mittelungsdauer.',
  'Averaging time that brings the statistical uncertainty down.':
    'Mittelungsdauer, die die statistische Unsicherheit senkt.',
  'Standard uncertainty accepted.': 'Hingenommene Standardunsicherheit.',
  'Loss of level by an angle between the sensor’s axis and the intended one.':
    'Pegelverlust durch einen Winkel zwischen der Aufnehmerachse und der beabsichtigten Achse.',
  'Angle between both axes.': 'Winkel zwischen beiden Achsen.',
  'Loss of the axial level.': 'Verlust des Axialpegels.',
};
