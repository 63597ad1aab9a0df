import type { Translations } from '../wording';

export const mass: Translations = {
  'Mass-loading ratio: everything added at the point over the local effective mass there.':
    'Massenverhältnis: alles am Punkt Hinzugefügte durch die örtliche wirksame Masse dort.',
  'Mount hardware and adhesive.': 'Teile der Ankopplung und Klebstoff.',
  'Effective mass of the cable.': 'Wirksame Masse des Kabels.',
  'Local effective mass at the point, in its direction, at the highest frequency of interest.':
    'Örtliche wirksame Masse am Punkt, in seiner Richtung, bei der höchsten interessierenden Frequenz.',
  'Added mass over local mass.': 'Hinzugefügte Masse durch örtliche Masse.',
  'Change of a natural frequency that an added mass causes.':
    'Änderung einer Eigenfrequenz durch eine hinzugefügte Masse.',
  'Mass-loading ratio with the modal local mass.': 'Massenverhältnis zur modalen örtlichen Masse.',
  'Change of the natural frequency; negative is a drop.': 'Änderung der Eigenfrequenz; negativ ist ein Abfall.',
  'Change of the measured level that an added mass causes.':
    'Änderung des gemessenen Pegels durch eine hinzugefügte Masse.',
  'Mass-loading ratio.': 'Massenverhältnis.',
  'What the local mass stands for: a mode or rigid part, a large plate, a long beam.':
    'Wofür die örtliche Masse steht: mass für eine Mode oder ein starres Teil, plate für eine große Platte, beam für einen langen Balken.',
  'Change of the level; negative is a drop.': 'Änderung des Pegels; negativ ist ein Abfall.',
  'Heaviest sensor that keeps a mass-loading ratio; negative when no contact sensor fits.':
    'Schwerster Aufnehmer, der ein Massenverhältnis einhält; negativ, wenn kein berührender Aufnehmer passt.',
  'Local effective mass at the point.': 'Örtliche wirksame Masse am Punkt.',
  'Largest mass-loading ratio accepted.': 'Größtes hingenommenes Massenverhältnis.',
  'Allowed sensor mass. Negative: measure without contact or elsewhere.':
    'Zulässige Masse des Aufnehmers. Negativ: berührungslos oder an anderer Stelle messen.',
  'Local effective mass of a large thin plate or skin at a frequency.':
    'Örtliche wirksame Masse einer großen dünnen Platte oder Beplankung bei einer Frequenz.',
  'Highest frequency of interest.': 'Höchste interessierende Frequenz.',
  'Thickness of the plate.': 'Dicke der Platte.',
  'Young’s modulus.': 'Elastizitätsmodul.',
  'Density.': 'Dichte.',
  'Poisson’s ratio.': 'Querkontraktionszahl.',
  'Modulus of the local effective mass; falls with frequency.':
    'Betrag der örtlichen wirksamen Masse; fällt mit der Frequenz.',
  'Local effective mass at a frequency from a known point impedance.':
    'Örtliche wirksame Masse bei einer Frequenz aus einer bekannten Punktimpedanz.',
  'Driving-point impedance, force over velocity, at that frequency.':
    'Eingangsimpedanz am Punkt, Kraft durch Geschwindigkeit, bei dieser Frequenz.',
  'Modulus of the local effective mass.': 'Betrag der örtlichen wirksamen Masse.',
  'Change of the phase that an added mass causes.': 'Änderung der Phase durch eine hinzugefügte Masse.',
  'Change of the phase; negative is a lag.': 'Änderung der Phase; negativ ist eine Nacheilung.',
  'Largest mass-loading ratio that keeps a drop of frequency or level.':
    'Größtes Massenverhältnis, das einen Abfall von Frequenz oder Pegel einhält.',
  'Largest drop accepted, as a positive number.': 'Größter hingenommener Abfall, als positive Zahl.',
  'Which drop is limited.':
    'Welcher Abfall begrenzt ist: der der Eigenfrequenz (frequency) oder der des Pegels (level).',
  'Largest mass-loading ratio.': 'Größtes Massenverhältnis.',
  'Smallest local mass that takes a sensor within a mass-loading ratio.':
    'Kleinste örtliche Masse, die einen Aufnehmer innerhalb eines Massenverhältnisses trägt.',
  'Smallest local effective mass.': 'Kleinste örtliche wirksame Masse.',
  'Local effective mass of a long beam in bending at a frequency.':
    'Örtliche wirksame Masse eines langen Balkens in Biegung bei einer Frequenz.',
  'Bending stiffness in the direction of motion.': 'Biegesteifigkeit in Bewegungsrichtung.',
  'Mass per length.': 'Masse je Länge.',
  'Far from both ends, or at the free end.': 'Fern von beiden Enden (interior) oder am freien Ende (end).',
  'Point impedance of a large thin plate, the same at every frequency.':
    'Punktimpedanz einer großen dünnen Platte, bei jeder Frequenz dieselbe.',
  'Driving-point impedance, real.': 'Eingangsimpedanz am Punkt, reell.',
  'Modulus of the point impedance of a long beam in bending.':
    'Betrag der Punktimpedanz eines langen Balkens in Biegung.',
  'Modulus of the driving-point impedance; its argument is 45°.':
    'Betrag der Eingangsimpedanz am Punkt; ihr Winkel ist 45°.',
  'Frequency up to which an added mass keeps a mass-loading ratio on a large plate.':
    'Frequenz, bis zu der eine hinzugefügte Masse auf einer großen Platte ein Massenverhältnis einhält.',
  'Point impedance of the plate.': 'Punktimpedanz der Platte.',
  'Sensor, mount and cable together.': 'Aufnehmer, Ankopplung und Kabel zusammen.',
  'Highest frequency.': 'Höchste Frequenz.',
  'Local effective mass from modal masses and mode shapes; of several modes the smallest.':
    'Örtliche wirksame Masse aus modalen Massen und Eigenformen; von mehreren Moden die kleinste.',
  'Modal mass of each mode in the band.': 'Modale Masse jeder Mode im Band.',
  'Mode shape at the point, along the sensor’s axis, in the scaling of the modal mass.':
    'Eigenform am Punkt entlang der Aufnehmerachse, in der Normierung der modalen Masse.',
  'Smallest modal local mass.': 'Kleinste modale örtliche Masse.',
  'Local effective mass of a free rigid part at a point off its centre of mass.':
    'Örtliche wirksame Masse eines freien starren Teils an einem Punkt abseits seines Schwerpunkts.',
  'Mass of the part.': 'Masse des Teils.',
  'Moment of inertia about the centre of mass, for the tilt that the sensor’s axis causes.':
    'Massenträgheitsmoment um den Schwerpunkt, für die Kippung, die die Aufnehmerachse bewirkt.',
  'Distance of the sensor’s axis from the centre of mass.': 'Abstand der Aufnehmerachse vom Schwerpunkt.',
  'Local effective mass.': 'Örtliche wirksame Masse.',
  'Mass-loading ratio of several units on one panel, beam or point.':
    'Massenverhältnis mehrerer Einheiten auf einem Plattenfeld, Balken oder Punkt.',
  'Sensor, mount and cable of each unit together.': 'Aufnehmer, Ankopplung und Kabel jeder Einheit zusammen.',
  'Modal mass of the panel, or the local mass when all units sit at one point.':
    'Modale Masse des Plattenfelds, oder die örtliche Masse, wenn alle Einheiten an einem Punkt sitzen.',
  'Mode shape at each unit, in the scaling of the modal mass; blank: all 1.':
    'Eigenform an jeder Einheit, in der Normierung der modalen Masse; leer: überall 1.',
  'Summed mass-loading ratio.': 'Summiertes Massenverhältnis.',
  'How many units, spread evenly, a beam or panel takes within a mass-loading ratio.':
    'Wie viele gleichmäßig verteilte Einheiten ein Balken oder Plattenfeld innerhalb eines Massenverhältnisses trägt.',
  'Mass of the whole beam or panel.': 'Masse des ganzen Balkens oder Plattenfelds.',
  'Largest summed mass-loading ratio.': 'Größtes summiertes Massenverhältnis.',
  'Sensor, mount and cable of one unit together.': 'Aufnehmer, Ankopplung und Kabel einer Einheit zusammen.',
  'Number of units.': 'Anzahl der Einheiten.',
  'Spread of a natural frequency over the runs when one sensor roves across a structure.':
    'Streuung einer Eigenfrequenz über die Messläufe, wenn ein Aufnehmer über eine Struktur wandert.',
  'Mass-loading ratio at the antinode.': 'Massenverhältnis im Schwingungsbauch.',
  'Largest difference between two runs.': 'Größter Unterschied zwischen zwei Messläufen.',
  'Heaviest second sensor of a low-and-high pair at one point; negative when it does not fit.':
    'Schwerster zweiter Aufnehmer eines Paars für tiefes und hohes Frequenzband an einem Punkt; negativ, wenn er nicht passt.',
  'Local effective mass at the higher of both bands.': 'Örtliche wirksame Masse im höheren der beiden Bänder.',
  'First sensor with its mount and cable.': 'Erster Aufnehmer mit Ankopplung und Kabel.',
  'Mount of the second sensor.': 'Ankopplung des zweiten Aufnehmers.',
  'Effective cable mass of the second sensor.': 'Wirksame Kabelmasse des zweiten Aufnehmers.',
  'Allowed mass of the second sensor.': 'Zulässige Masse des zweiten Aufnehmers.',
  'Change of the level at the old peak when a lightly damped mode moves.':
    'Änderung des Pegels am alten Maximum, wenn eine schwach gedämpfte Mode wandert.',
  'Relative shift of the mode, either sign.': 'Relative Verschiebung der Mode, Vorzeichen beliebig.',
  'Damping ratio of the mode.': 'Dämpfungsgrad der Mode.',
  'Change of the level at the old peak; negative.': 'Änderung des Pegels am alten Maximum; negativ.',
  'Largest shift of a lightly damped mode that keeps the level at its old peak.':
    'Größte Verschiebung einer schwach gedämpften Mode, die den Pegel am alten Maximum einhält.',
  'Largest relative shift, either way.': 'Größte relative Verschiebung, nach beiden Seiten.',
  'Rotary effect of a tall unit on bending waves, over its translational effect.':
    'Drehwirkung einer hohen Einheit auf Biegewellen, bezogen auf ihre translatorische Wirkung.',
  'Bending wavelength of the structure at the highest frequency.':
    'Biegewellenlänge der Struktur bei der höchsten Frequenz.',
  'Height of the centre of mass above the surface.': 'Höhe des Schwerpunkts über der Oberfläche.',
  'Radius of gyration about its own centre, √(J/m).': 'Trägheitsradius um den eigenen Schwerpunkt, √(J/m).',
  'Rotary over translational effect.': 'Drehwirkung durch translatorische Wirkung.',
  'Largest height of a unit’s centre of mass that keeps its rotary effect.':
    'Größte Schwerpunkthöhe einer Einheit, die ihre Drehwirkung einhält.',
  'Rotary effect accepted.': 'Hingenommene Drehwirkung.',
  'Height above the surface, radius of gyration included.': 'Höhe über der Oberfläche, Trägheitsradius eingerechnet.',
  'Bending wavelength of a thin plate.': 'Biegewellenlänge einer dünnen Platte.',
  'Bending wavelength.': 'Biegewellenlänge.',
  'Bending wavelength of a slender beam.': 'Biegewellenlänge eines schlanken Balkens.',
  'Modes per hertz of a thin panel.': 'Moden je Hertz eines dünnen Plattenfelds.',
  'Length of the panel.': 'Länge des Plattenfelds.',
  'Width of the panel.': 'Breite des Plattenfelds.',
  'Modal density, the same at every frequency.': 'Modendichte, bei jeder Frequenz dieselbe.',
  'How many modes of a simply supported panel lie up to a frequency.':
    'Wie viele Moden eines gelenkig gelagerten Plattenfelds bis zu einer Frequenz liegen.',
  'Number of modes.': 'Anzahl der Moden.',
  'How far lightly damped resonances of a panel stand above the plate average.':
    'Wie weit schwach gedämpfte Resonanzen eines Plattenfelds über dem Plattenmittel liegen.',
  'Frequency of interest.': 'Interessierende Frequenz.',
  'Modal density of the panel.': 'Modendichte des Plattenfelds.',
  'Damping ratio, half the loss factor.': 'Dämpfungsgrad, der halbe Verlustfaktor.',
  'Peak over mean of the mobility; the local mass at a peak is smaller by it.':
    'Maximum durch Mittelwert der Mobilität; um diesen Faktor ist die örtliche Masse im Maximum kleiner.',
  'Effective mass of a cable at the sensor.': 'Wirksame Masse eines Kabels am Aufnehmer.',
  'Free length from the sensor to the first tie.': 'Freie Länge vom Aufnehmer bis zur ersten Befestigung.',
  'Mass of the cable per length.': 'Masse des Kabels je Länge.',
  'Effective mass.': 'Wirksame Masse.',
  'Longest free length of a cable that keeps its effective mass.':
    'Größte freie Länge eines Kabels, die seine wirksame Masse einhält.',
  'Effective mass that may be used.': 'Wirksame Masse, die verbraucht werden darf.',
  'Free length to the first tie.': 'Freie Länge bis zur ersten Befestigung.',
  'Stiffness that a free cable length adds at the sensor.':
    'Steifigkeit, die eine freie Kabellänge am Aufnehmer hinzufügt.',
  'Bending stiffness of the cable.': 'Biegesteifigkeit des Kabels.',
  'Stiffness.': 'Steifigkeit.',
  'Rise of a natural frequency by the stiffness of a cable.':
    'Anstieg einer Eigenfrequenz durch die Steifigkeit eines Kabels.',
  'Stiffness of the cable.': 'Steifigkeit des Kabels.',
  'Local mass of the mode at the point.': 'Örtliche Masse der Mode am Punkt.',
  'Natural frequency.': 'Eigenfrequenz.',
  'Change of the frequency; positive.': 'Änderung der Frequenz; positiv.',
  'Shortest free length of a cable that keeps its effect on a natural frequency.':
    'Kleinste freie Länge eines Kabels, die seine Wirkung auf eine Eigenfrequenz einhält.',
  'Largest rise of the frequency accepted.': 'Größter hingenommener Anstieg der Frequenz.',
  'Inertia force that a mount must hold.': 'Trägheitskraft, die eine Ankopplung halten muss.',
  'Sensor with everything that hangs on the joint.': 'Aufnehmer mit allem, was an der Koppelstelle hängt.',
  'Highest peak along the axis.': 'Größter Spitzenwert entlang der Achse.',
  'Highest peak across the axis.': 'Größter Spitzenwert quer zur Achse.',
  'Force on the joint.': 'Kraft an der Koppelstelle.',
  'How many times the force a mount holds.': 'Das Wievielfache der Kraft eine Ankopplung hält.',
  'Force at which the joint lets go.': 'Kraft, bei der sich die Koppelstelle löst.',
  'Inertia force on the joint.': 'Trägheitskraft an der Koppelstelle.',
  'Holding force over inertia force.': 'Haltekraft durch Trägheitskraft.',
  'Highest level that a mount holds with a reserve.': 'Größter Pegel, den eine Ankopplung mit einer Reserve hält.',
  'Highest peak of the whole acceleration.': 'Größter Spitzenwert der gesamten Beschleunigung.',
  'Mean stress in a joint under the inertia force.':
    'Mittlere Spannung in einer Koppelstelle unter der Trägheitskraft.',
  'Bonded or clamped area.': 'Geklebte oder geklemmte Fläche.',
  'Mean stress.': 'Mittlere mechanische Spannung.',
  'Exact change of the first natural frequency of a beam with a point mass.':
    'Genaue Änderung der ersten Eigenfrequenz eines Balkens mit einer Punktmasse.',
  'Added mass over the mass of the whole beam.': 'Hinzugefügte Masse durch Masse des ganzen Balkens.',
  'Which beam, and where the mass sits.':
    'Welcher Balken, und wo die Masse sitzt: Kragbalken mit Masse am Ende, oder gelenkig gelagerter mit Masse in Feldmitte.',
  'Change of the first natural frequency; negative.': 'Änderung der ersten Eigenfrequenz; negativ.',
  'Smallest local effective mass in a band, from a measured driving-point response.':
    'Kleinste örtliche wirksame Masse in einem Band, aus einer am Anregungspunkt gemessenen Übertragungsfunktion.',
  'Frequency in Hz and the measured response, two or three columns; a heading row is passed over.':
    'Frequenz in Hz und die gemessene Übertragungsfunktion, zwei oder drei Spalten; eine Kopfzeile wird übergangen.',
  'Lower edge of the band, or both as a range text.': 'Untere Grenze des Bands, oder beide als Bereichstext.',
  'Upper edge of the band.': 'Obere Grenze des Bands.',
  'What was measured, in SI: (m/s²)/N, (m/s)/N, m/N, kg, N·s/m or N/m.':
    'Was gemessen wurde, in SI, der Reihe nach: (m/s²)/N, (m/s)/N, m/N, kg, N·s/m oder N/m.',
  'What the columns hold; dB re 1 SI unit, phase in degrees.':
    'Was die Spalten enthalten; dB bezogen auf 1 SI-Einheit, Phase in Grad.',
  'Smallest local effective mass from the low to the high edge.':
    'Kleinste örtliche wirksame Masse von der unteren bis zur oberen Grenze.',
  'Exact change of the level by an added mass, smallest and largest over a band, from a free driving-point response.':
    'Genaue Änderung des Pegels durch eine hinzugefügte Masse, kleinste und größte im Band, aus der unbelasteten Übertragungsfunktion am Anregungspunkt.',
  'Largest drop, or smallest rise, in the band.': 'Größter Abfall, oder kleinster Anstieg, im Band.',
  'Largest rise in the band: just below a resonance the level goes up.':
    'Größter Anstieg im Band: Knapp unter einer Resonanz steigt der Pegel.',
  'A measured response with the sensor’s mass taken off again, line by line.':
    'Eine gemessene Übertragungsfunktion, aus der die Aufnehmermasse Linie für Linie herausgerechnet ist.',
  'Mass to take off: sensor, mount and cable together.':
    'Masse, die herauszurechnen ist: Aufnehmer, Ankopplung und Kabel zusammen.',
  'For a transfer response: the measured driving-point response at the mass, same lines, quantity and form.':
    'Für eine Übertragung zwischen zwei Punkten: die gemessene Übertragungsfunktion am Ort der Masse, mit denselben Linien, Größe und Form.',
  'Frequency and the corrected response, in the columns of the given form.':
    'Frequenz und die korrigierte Übertragungsfunktion, in den Spalten der gegebenen Form.',
  'A free response as it will be measured with the sensor’s mass on, line by line.':
    'Eine unbelastete Übertragungsfunktion, wie sie mit der Aufnehmermasse gemessen würde, Linie für Linie.',
  'Mass to put on: sensor, mount and cable together.':
    'Masse, die aufzusetzen ist: Aufnehmer, Ankopplung und Kabel zusammen.',
  'For a transfer response: the free driving-point response at the mass, same lines, quantity and form.':
    'Für eine Übertragung zwischen zwei Punkten: die unbelastete Übertragungsfunktion am Ort der Masse, mit denselben Linien, Größe und Form.',
  'Frequency and the loaded response, in the columns of the given form.':
    'Frequenz und die belastete Übertragungsfunktion, in den Spalten der gegebenen Form.',
  'Local effective mass at a frequency from a list of modes, with its phase.':
    'Örtliche wirksame Masse bei einer Frequenz aus einer Liste von Moden, mit ihrer Phase.',
  'Natural frequencies; 0 for a rigid-body mode.': 'Eigenfrequenzen; 0 für eine Starrkörpermode.',
  'Modal mass of each mode.': 'Modale Masse jeder Mode.',
  'Mode shape at the point, along the axis, in the scaling of the modal mass.':
    'Eigenform am Punkt, entlang der Achse, in der Normierung der modalen Masse.',
  'Damping ratio of all modes.': 'Dämpfungsgrad aller Moden.',
  'Its phase: 0 mass-like, 180 spring-like.': 'Ihre Phase: 0 wie eine Masse, 180 wie eine Feder.',
  'Natural frequencies with a mass added at the point, exact for the listed modes.':
    'Eigenfrequenzen mit einer am Punkt hinzugefügten Masse, genau für die aufgeführten Moden.',
  'Natural frequencies in Hz, rising, one below the other.': 'Eigenfrequenzen in Hz, steigend, untereinander.',
  'Exact change of the level at one frequency from the complex local mass.':
    'Genaue Änderung des Pegels bei einer Frequenz aus der komplexen örtlichen Masse.',
  'Its phase: 0 mass-like, 90 damper-like, 180 spring-like.':
    'Ihre Phase: 0 wie eine Masse, 90 wie ein Dämpfer, 180 wie eine Feder.',
  'Change of the level; positive where the unit brings a resonance nearer.':
    'Änderung des Pegels; positiv, wo die Einheit eine Resonanz näher rückt.',
  'Heaviest sensor that keeps the level within a tolerance, from the complex local mass.':
    'Schwerster Aufnehmer, der den Pegel innerhalb einer Toleranz hält, aus der komplexen örtlichen Masse.',
  'Largest change of the level either way.': 'Größte Änderung des Pegels nach beiden Seiten.',
  'Local effective mass of a uniform beam or plate in one mode.':
    'Örtliche wirksame Masse eines gleichförmigen Balkens oder einer Platte in einer Mode.',
  'Mass of the whole beam or plate.': 'Masse des ganzen Balkens oder der ganzen Platte.',
  'Which member, by its supports.':
    'Bauteil nach seiner Lagerung; cantilever: Kragbalken, clamped: eingespannt, pinned, supported: gelenkig, plate: Platte.',
  'Number of the mode, 1 the lowest.': 'Nummer der Mode, 1 die tiefste.',
  'Position over the length from the first-named end, or radius over the rim’s; blank: where it moves most.':
    'Lage bezogen auf die Länge vom erstgenannten Ende, oder Radius bezogen auf den Randradius; leer: wo die Bewegung am größten ist.',
  'Rectangular plate: number of half waves across.': 'Rechteckplatte: Anzahl der Halbwellen quer.',
  'Rectangular plate: position over the width; blank: where it moves most.':
    'Rechteckplatte: Lage bezogen auf die Breite; leer: wo die Bewegung am größten ist.',
  'Local effective mass in this mode.': 'Örtliche wirksame Masse in dieser Mode.',
  'The smallest of several estimates of the local mass, with its name.':
    'Die kleinste von mehreren Schätzungen der örtlichen Masse, mit ihrem Namen.',
  'Two columns: name of the estimate, local mass in gram. Empty rows are passed over; a name without a mass is missing.':
    'Zwei Spalten: Name der Schätzung, örtliche Masse in Gramm. Leere Zeilen werden übergangen; ein Name ohne Masse gilt als fehlend.',
  'One row: local mass in gram, name of the estimate that gave it.':
    'Eine Zeile: örtliche Masse in Gramm, Name der Schätzung, von der sie stammt.',
};
