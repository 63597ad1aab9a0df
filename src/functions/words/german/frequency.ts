import type { Translations } from '../wording';

export const frequency: Translations = {
  'Both ends of the band a channel measures within tolerance.':
    'Beide Enden des Bands, das ein Kanal innerhalb der Toleranz misst.',
  'Mounted resonance.': 'Resonanzfrequenz mit Ankopplung.',
  'Quality factor of the resonance, 1/(2ζ).': 'Gütefaktor der Resonanz, 1/(2ζ).',
  'How the signal leaves the sensor. IEPE and voltage need the low limit, charge the time constant.':
    'Art des Aufnehmerausgangs. IEPE und voltage (Spannung) brauchen die untere Grenze, charge (Ladung) die Zeitkonstante.',
  'Lower limit by the data sheet.': 'Untere Frequenzgrenze laut Datenblatt.',
  'Loss meant by the lower limit.': 'Abfall, den die untere Grenze meint.',
  'Discharge time constant of the charge amplifier.': 'Entladezeitkonstante des Ladungsverstärkers.',
  'Corner of each AC-coupling pole (−3 dB); "none" when DC coupled.':
    'Grenzfrequenz jedes Hochpasses der AC-Kopplung (−3 dB); "none" bei DC-Kopplung.',
  'Flatness asked for.': 'Geforderte Ebenheit des Frequenzgangs.',
  'Frequency of the certified sensitivity.': 'Frequenz der Empfindlichkeit auf dem Kalibrierschein.',
  'Sample rate; the analyser ends at this over 2.56.': 'Abtastrate; der Analysator endet bei diesem Wert durch 2,56.',
  'Cable drive limit.': 'Frequenzgrenze durch den Kabeltreiber.',
  'Upper limit by the data sheet.': 'Obere Frequenzgrenze laut Datenblatt.',
  'Largest rise, where it differs from the fall.': 'Größter Anstieg, falls er vom Abfall verschieden ist.',
  'Low end; 0 when nothing limits it.': 'Unteres Ende; 0, wenn nichts es begrenzt.',
  'High end.': 'Oberes Ende.',
  'Lowest frequency a channel measures within tolerance; 0 when it measures static acceleration.':
    'Tiefste Frequenz, die ein Kanal innerhalb der Toleranz misst; 0, wenn er statische Beschleunigung misst.',
  'Low end of the usable span.': 'Unteres Ende des nutzbaren Bereichs.',
  'Highest frequency a channel measures within tolerance, or up to which its analyser or cable reaches.':
    'Höchste Frequenz, die ein Kanal innerhalb der Toleranz misst, oder bis zu der Analysator oder Kabel reichen.',
  'High end of the usable span.': 'Oberes Ende des nutzbaren Bereichs.',
  'Resonance of a sensor on its mount; a soft joint lowers it.':
    'Resonanzfrequenz eines Aufnehmers auf seiner Ankopplung; eine weiche Koppelstelle senkt sie.',
  'Resonance by the data sheet, stiff stud on steel.':
    'Resonanzfrequenz laut Datenblatt, steifer Gewindestift auf Stahl.',
  'Mass of the sensor.': 'Masse des Aufnehmers.',
  'Axial stiffness of the joint; blank for a stiff stud: the resonance stays.':
    'Axiale Steifigkeit der Koppelstelle; leer für einen steifen Gewindestift: Die Resonanz bleibt.',
  'Highest frequency at which an IEPE sensor still drives its cable at the expected peak.':
    'Höchste Frequenz, bei der ein IEPE-Aufnehmer sein Kabel mit dem erwarteten Spitzenwert noch treibt.',
  'Constant current of the supply.': 'Konstantstrom der Speisung.',
  'Current the sensor keeps for itself.': 'Strom, den der Aufnehmer selbst braucht.',
  'Corner (−3 dB) of a lower limit that a data sheet states with its loss.':
    'Grenzfrequenz (−3 dB) zu einer unteren Grenze, die ein Datenblatt mit ihrem Abfall angibt.',
  'Loss meant by the limit.': 'Abfall, den die Grenze meint.',
  'Corner frequency.': 'Grenzfrequenz.',
  'Lower limit at a stated loss of one high-pass pole.':
    'Untere Grenze bei gegebenem Abfall eines Hochpasses erster Ordnung.',
  'Corner (−3 dB).': 'Grenzfrequenz (−3 dB).',
  'Frequency at which the pole loses δ.': 'Frequenz, bei der der Hochpass δ verliert.',
  'Corner of a discharge time constant.': 'Grenzfrequenz zu einer Entladezeitkonstante.',
  'Discharge time constant.': 'Entladezeitkonstante.',
  'Discharge time constant of a corner.': 'Entladezeitkonstante zu einer Grenzfrequenz.',
  'Corner of a resistance and a capacitance, such as a charge amplifier’s feedback.':
    'Grenzfrequenz aus Widerstand und Kapazität, etwa der Gegenkopplung eines Ladungsverstärkers.',
  'Resistance.': 'Widerstand.',
  'Capacitance.': 'Kapazität.',
  'Largest corner of a further high-pass pole that keeps loss and phase at the lower band edge.':
    'Größte Grenzfrequenz eines weiteren Hochpasses, der Abfall und Phase an der unteren Bandgrenze einhält.',
  'Lower edge of the needed band.': 'Untere Grenze des benötigten Bands.',
  'Largest loss there.': 'Größter Abfall dort.',
  'Largest phase lead there, where one is set.': 'Größte Phasenvoreilung dort, falls eine gefordert ist.',
  'Corners of poles already there.': 'Grenzfrequenzen der schon vorhandenen Hochpässe.',
  'Corner frequency (−3 dB).': 'Grenzfrequenz des Hochpasses (−3 dB).',
  'Smallest time constant of a further high-pass pole that keeps loss and phase at the lower band edge.':
    'Kleinste Zeitkonstante eines weiteren Hochpasses, der Abfall und Phase an der unteren Bandgrenze einhält.',
  'Frequency at which several high-pass poles together lose a share.':
    'Frequenz, bei der mehrere Hochpässe zusammen einen Anteil verlieren.',
  'Corner of each high-pass pole (−3 dB).': 'Grenzfrequenz jedes Hochpasses (−3 dB).',
  'Lower limit of the cascade; 0 without poles.': 'Untere Grenze der Kette; 0 ohne Hochpass.',
  'Deviation of a channel’s sensitivity at a frequency from that at the reference.':
    'Abweichung der Empfindlichkeit eines Kanals bei einer Frequenz von der bei der Bezugsfrequenz.',
  'Frequency looked at.': 'Betrachtete Frequenz.',
  'Corner of each high-pass pole; "none".': 'Grenzfrequenz jedes Hochpasses; "none" für keinen.',
  'Mounted resonance; blank: none.': 'Resonanzfrequenz mit Ankopplung; leer: keine.',
  'Quality factor of the resonance.': 'Gütefaktor der Resonanz.',
  'Frequency where the deviation is 0.': 'Frequenz, bei der die Abweichung 0 ist.',
  'Negative: reads low.': 'Negativ: zeigt zu wenig an.',
  'Phase of a channel at a frequency: lead of its high-pass poles, lag of its resonance.':
    'Phase eines Kanals bei einer Frequenz: Voreilung der Hochpässe, Nacheilung der Resonanz.',
  'Positive: leads.': 'Positiv: eilt vor.',
  'Response of a channel at a frequency: deviation, the same in dB, and phase.':
    'Frequenzgang eines Kanals bei einer Frequenz: Abweichung, dieselbe in dB, und Phase.',
  'From the reference; negative reads low.': 'Gegenüber der Bezugsfrequenz; negativ zeigt zu wenig an.',
  'The same as a level.': 'Dieselbe als Pegeldifferenz.',
  'Positive leads.': 'Positiv eilt vor.',
  'Wait after a step until only a residue is left.': 'Wartezeit nach einem Sprung, bis nur noch ein Rest bleibt.',
  'Corner of the slowest pole (−3 dB).': 'Grenzfrequenz des langsamsten Hochpasses (−3 dB).',
  'Step, such as the bias when power comes on.': 'Sprung, etwa der Arbeitspunkt beim Einschalten.',
  'What may be left of it.': 'Was davon bleiben darf.',
  'Waiting time.': 'Wartezeit.',
  'Smallest corner that lets a step decay to a residue within a wait.':
    'Kleinste Grenzfrequenz, mit der ein Sprung innerhalb einer Wartezeit auf einen Rest abklingt.',
  'Frequency up to which a resonance alone changes the sensitivity by no more than a tolerance.':
    'Frequenz, bis zu der eine Resonanz allein die Empfindlichkeit höchstens um eine Toleranz ändert.',
  'Change allowed.': 'Zulässige Änderung.',
  'Quality factor; blank: undamped.': 'Gütefaktor; leer: ungedämpft.',
  'Upper limit.': 'Obere Frequenzgrenze.',
  'Mounted resonance that keeps the sensitivity within a tolerance up to the upper band edge.':
    'Resonanzfrequenz mit Ankopplung, die die Empfindlichkeit bis zur oberen Bandgrenze innerhalb einer Toleranz hält.',
  'Upper edge of the needed band.': 'Obere Grenze des benötigten Bands.',
  'Mounted resonance needed, mount included.': 'Erforderliche Resonanzfrequenz, die Ankopplung eingerechnet.',
  'Resonance of a sensor on its mount, base and seismic mass solved exactly.':
    'Resonanzfrequenz eines Aufnehmers auf seiner Ankopplung, mit Grundkörper und seismischer Masse genau gelöst.',
  'Resonance by the data sheet, base held fixed.': 'Resonanzfrequenz laut Datenblatt, Grundkörper festgehalten.',
  'Mass of the sensor without its seismic mass.': 'Masse des Aufnehmers ohne seine seismische Masse.',
  'Seismic mass.': 'Seismische Masse.',
  'Axial stiffness of the joint.': 'Axiale Steifigkeit der Koppelstelle.',
  'Mounted resonance, the lower of the two.': 'Resonanzfrequenz mit Ankopplung, die tiefere von beiden.',
  'Joint stiffness that a mounted resonance needs.':
    'Steifigkeit der Koppelstelle, die eine Resonanzfrequenz mit Ankopplung erfordert.',
  'Mounted resonance needed.': 'Erforderliche Resonanzfrequenz mit Ankopplung.',
  'Axial stiffness of a thin adhesive layer.': 'Axiale Steifigkeit einer dünnen Klebschicht.',
  'Elastic modulus of the layer.': 'Elastizitätsmodul der Schicht.',
  'Area of the joint.': 'Fläche der Koppelstelle.',
  'Thickness of the layer.': 'Dicke der Schicht.',
  'Axial stiffness.': 'Axiale Steifigkeit.',
  'Thickest adhesive layer that keeps a joint stiffness.':
    'Dickste Klebschicht, die eine Steifigkeit der Koppelstelle einhält.',
  'Supply current that drives a cable at the upper band edge and the expected peak.':
    'Speisestrom, der ein Kabel an der oberen Bandgrenze mit dem erwarteten Spitzenwert treibt.',
  'Longest cable that an IEPE supply drives at the upper band edge and the expected peak.':
    'Längstes Kabel, das eine IEPE-Speisung an der oberen Bandgrenze mit dem erwarteten Spitzenwert treibt.',
  'Sensitivity that a charge amplifier loses to the capacitance at its input.':
    'Empfindlichkeit, die ein Ladungsverstärker durch die Kapazität an seinem Eingang verliert.',
  'Capacitance of sensor and cable.': 'Kapazität von Aufnehmer und Kabel.',
  'Open-loop gain of the amplifier.': 'Leerlaufverstärkung des Verstärkers.',
  'Feedback capacitance.': 'Gegenkopplungskapazität.',
  'Loss of sensitivity.': 'Verlust an Empfindlichkeit.',
  'Capacitance at which a charge amplifier loses a share of its sensitivity.':
    'Kapazität, bei der ein Ladungsverstärker einen Anteil seiner Empfindlichkeit verliert.',
  'Loss of sensitivity allowed.': 'Zulässiger Verlust an Empfindlichkeit.',
  'Low-pass corner that a series resistance makes with a cable.':
    'Tiefpass-Grenzfrequenz, die ein Reihenwiderstand mit einem Kabel bildet.',
  'Series resistance.': 'Reihenwiderstand.',
  'Capacitance of the cable.': 'Kapazität des Kabels.',
  'Voltage sensitivity of a piezoelectric sensor without built-in electronics on its cable.':
    'Spannungsempfindlichkeit eines piezoelektrischen Aufnehmers ohne eingebaute Elektronik an seinem Kabel.',
  'Charge sensitivity.': 'Ladungsempfindlichkeit.',
  'Voltage sensitivity.': 'Spannungsempfindlichkeit.',
  'Highest frequency an analyser measures without aliasing.':
    'Höchste Frequenz, die ein Analysator ohne Aliasing misst.',
  'Sample rate.': 'Abtastrate.',
  'Sample rate for an upper band edge.': 'Abtastrate für eine obere Bandgrenze.',
  'Sample rate; take the next one above.': 'Abtastrate; die nächsthöhere nehmen.',
  'Length of a record that gives a line spacing.': 'Länge eines Messblocks, die einen Linienabstand ergibt.',
  'Length of one record.': 'Länge eines Messblocks.',
  'Line spacing of a record.': 'Linienabstand eines Messblocks.',
  'Phase that a delay between two channels makes.': 'Phase, die eine Laufzeitdifferenz zwischen zwei Kanälen bewirkt.',
  'Frequency.': 'Frequenz.',
  'Delay between the channels.': 'Laufzeitdifferenz zwischen den Kanälen.',
  'Phase difference.': 'Phasendifferenz.',
  'Delay between two channels that keeps a phase.': 'Laufzeitdifferenz zwischen zwei Kanälen, die eine Phase einhält.',
  'Largest phase difference.': 'Größte Phasendifferenz.',
  'Delay.': 'Laufzeitdifferenz.',
  'Error that the low end makes in a half-sine shock pulse.':
    'Fehler, den das untere Frequenzende bei einem Halbsinusstoß verursacht.',
  'Discharge time constant of the slowest pole.': 'Entladezeitkonstante des langsamsten Hochpasses.',
  'Duration of the half-sine pulse.': 'Dauer des Halbsinusstoßes.',
  'Error of the peak, undershoot after the pulse, or error of the velocity change.':
    'Fehler des Spitzenwerts (peak), Unterschwingen nach dem Stoß (undershoot) oder Fehler der Geschwindigkeitsänderung (velocity).',
  'Of the pulse’s height or velocity change; negative reads low.':
    'Von der Höhe oder der Geschwindigkeitsänderung des Stoßes; negativ zeigt zu wenig an.',
  'Time constant that keeps the low-end error of a half-sine shock pulse.':
    'Zeitkonstante, die den Fehler des unteren Frequenzendes bei einem Halbsinusstoß einhält.',
  'Largest error, as a positive number.': 'Größter Fehler, als positive Zahl.',
  'Error that the resonance makes in the peak of a half-sine shock pulse.':
    'Fehler, den die Resonanz im Spitzenwert eines Halbsinusstoßes verursacht.',
  'Of the pulse’s height; positive reads high.': 'Von der Höhe des Stoßes; positiv zeigt zu viel an.',
  'Mounted resonance from which on the peak of a half-sine shock pulse stays within an error.':
    'Resonanzfrequenz mit Ankopplung, ab der der Spitzenwert eines Halbsinusstoßes innerhalb eines Fehlers bleibt.',
  'Largest error of the peak, as a positive number.': 'Größter Fehler des Spitzenwerts, als positive Zahl.',
  'Shortest half-sine shock pulse that a resonance follows.': 'Kürzester Halbsinusstoß, dem eine Resonanz folgt.',
  'Turns of the resonance per pulse.': 'Perioden der Resonanz je Stoß.',
  'Duration of the pulse.': 'Dauer des Stoßes.',
  'Table of how far the usual mounts reach, for a sensor of a given mass.':
    'Tabelle, wie weit die üblichen Ankopplungen reichen, für einen Aufnehmer gegebener Masse.',
  'A heading row, then one row for each mount.': 'Eine Kopfzeile, dann eine Zeile je Ankopplung.',
  'Table of a channel’s response over frequency: deviation from the reference, and phase.':
    'Tabelle des Frequenzgangs eines Kanals: Abweichung gegenüber der Bezugsfrequenz, und Phase.',
  'First frequency.': 'Erste Frequenz.',
  'Last frequency.': 'Letzte Frequenz.',
  'A heading row, then frequency in Hz, deviation in % and phase in degrees.':
    'Eine Kopfzeile, dann Frequenz in Hz, Abweichung in % und Phase in Grad.',
  'What limits each end of the usable span, in words.': 'Was beide Enden des nutzbaren Bereichs begrenzt, in Worten.',
  'Low end: nothing, sensor, charge amplifier, AC coupling, response. High end: response, analyser, cable drive, data sheet.':
    'Unteres Ende: nothing (nichts), sensor (Aufnehmer), charge amplifier (Ladungsverstärker), AC coupling (AC-Kopplung), response (Frequenzgang). Oberes Ende: response, analyser (Analysator), cable drive (Kabeltreiber), data sheet (Datenblatt).',
};
