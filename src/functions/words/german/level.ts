import type { Translations } from '../wording';

export const level: Translations = {
  'Range a channel offers, from the smallest level that keeps the signal-to-noise ratio up to its upper limit.':
    'Bereich, den ein Kanal bietet: vom kleinsten Pegel, der den Rauschabstand einhält, bis zur oberen Grenze.',
  'Upper limit of the channel, peak.': 'Obere Grenze des Kanals, Spitzenwert.',
  'Total r.m.s. noise.': 'Gesamtrauschen, Effektivwert.',
  'Signal-to-noise ratio kept at the low end.': 'Rauschabstand, der am unteren Ende eingehalten wird.',
  'Range from smallest r.m.s. to largest peak.': 'Bereich vom kleinsten Effektivwert bis zum größten Spitzenwert.',
  'Margin of the smallest level over the total noise.': 'Abstand des kleinsten Pegels vom Gesamtrauschen.',
  'Smallest level that must still be read, r.m.s.': 'Kleinster Pegel, der noch gemessen werden soll, Effektivwert.',
  'Total r.m.s. noise in the same band.': 'Gesamtrauschen im selben Band, Effektivwert.',
  'Signal-to-noise ratio.': 'Rauschabstand.',
  'Margin of the upper limit over the largest expected peak; negative means clipping.':
    'Abstand der oberen Grenze vom größten erwarteten Spitzenwert; negativ bedeutet Übersteuerung.',
  'Largest expected peak, unfiltered.': 'Größter erwarteter Spitzenwert, ungefiltert.',
  'Headroom.': 'Aussteuerreserve.',
  'Largest peak that passes sensor, amplifier and input without clipping.':
    'Größter Spitzenwert, der Aufnehmer, Verstärker und Eingang ohne Übersteuerung durchläuft.',
  'Full scale of the sensor, peak.': 'Messbereichsendwert des Aufnehmers, Spitzenwert.',
  'How the signal leaves the sensor. IEPE needs the five supply and bias voltages, charge the output limit.':
    'Art des Aufnehmerausgangs. IEPE braucht die fünf Speise- und Ruhespannungen, charge (Ladung) die Ausgangsgrenze.',
  'Largest sensitivity over the temperature range; charge: pC/g times mV/pC.':
    'Größte Empfindlichkeit im Temperaturbereich; bei Ladung: pC/g mal mV/pC.',
  'Peak voltage of the input range.': 'Spitzenspannung des Eingangsbereichs.',
  'Compliance voltage of the supply.': 'Speisespannung der Konstantstromquelle.',
  'Lowest bias over the temperature range.': 'Kleinste Ruhespannung im Temperaturbereich.',
  'Highest bias over the temperature range.': 'Größte Ruhespannung im Temperaturbereich.',
  'Voltage lost in the current source.': 'Spannungsabfall in der Stromquelle.',
  'Lowest output that still follows.': 'Kleinste Ausgangsspannung, die dem Signal noch folgt.',
  'Largest output of the charge amplifier.': 'Größte Ausgangsspannung des Ladungsverstärkers.',
  'Upper limit, peak; 0 when the supply leaves no swing about the bias.':
    'Obere Grenze, Spitzenwert; 0, wenn die Speisung keine Aussteuerung um den Arbeitspunkt lässt.',
  'What sets the upper limit of the channel, in words.': 'Was die obere Grenze des Kanals bestimmt, in Worten.',
  'full scale, input range, bias swing, amplifier output.':
    'full scale (Messbereich), input range (Eingangsbereich), bias swing (Aussteuerung um den Arbeitspunkt), amplifier output (Verstärkerausgang).',
  'R.m.s. noise of a sensor in the analysed band, from its noise density.':
    'Effektivwert des Aufnehmerrauschens im ausgewerteten Band, aus der Rauschdichte.',
  'Noise density against frequency.': 'Rauschdichte über der Frequenz.',
  'Lower band edge, or both edges as a range text.': 'Untere Bandgrenze, oder beide Grenzen als Bereichstext.',
  'Upper band edge.': 'Obere Bandgrenze.',
  'Line spacing when the level is read in one Hann line at the lower edge; blank: whole band.':
    'Linienabstand, wenn der Pegel in einer Hann-Linie an der unteren Grenze abgelesen wird; leer: ganzes Band.',
  'R.m.s. noise.': 'Effektivwert des Rauschens.',
  'R.m.s. noise of an analyser input in the analysed band, as acceleration at the sensor.':
    'Effektivwert des Rauschens eines Analysatoreingangs im ausgewerteten Band, als Beschleunigung am Aufnehmer.',
  'Peak voltage of the input range in use.': 'Spitzenspannung des benutzten Eingangsbereichs.',
  'Noise below an r.m.s. full-scale sine of that range, over half the sample rate.':
    'Rauschen unter dem Effektivwert eines voll aussteuernden Sinus dieses Bereichs, über die halbe Abtastrate.',
  'Sample rate for which the dynamic range holds.': 'Abtastrate, für die der Dynamikumfang gilt.',
  'Smallest sensitivity over the temperature range; charge: pC/g times mV/pC.':
    'Kleinste Empfindlichkeit im Temperaturbereich; bei Ladung: pC/g mal mV/pC.',
  'R.m.s. noise at the sensor.': 'Effektivwert des Rauschens am Aufnehmer.',
  'R.m.s. noise of a charge amplifier in the analysed band, as acceleration at the sensor; grows with cable.':
    'Effektivwert des Rauschens eines Ladungsverstärkers im ausgewerteten Band, als Beschleunigung am Aufnehmer; wächst mit dem Kabel.',
  'Input noise voltage of the amplifier.': 'Eingangsrauschspannung des Verstärkers.',
  'Capacitance of the sensor.': 'Kapazität des Aufnehmers.',
  'Capacitance of the whole cable.': 'Kapazität des ganzen Kabels.',
  'Feedback capacitance of the amplifier.': 'Gegenkopplungskapazität des Verstärkers.',
  'Smallest charge sensitivity over the temperature range.': 'Kleinste Ladungsempfindlichkeit im Temperaturbereich.',
  'Total r.m.s. noise of independent parts: sensor, amplifier, input.':
    'Effektivwert des Gesamtrauschens aus unabhängigen Anteilen: Aufnehmer, Verstärker, Eingang.',
  'R.m.s. noise of each part in the same band.': 'Effektivwert des Rauschens jedes Anteils im selben Band.',
  'Voltage sensitivity of a charge-output sensor behind its charge amplifier.':
    'Spannungsempfindlichkeit eines Aufnehmers mit Ladungsausgang hinter seinem Ladungsverstärker.',
  'Charge sensitivity of the sensor.': 'Ladungsempfindlichkeit des Aufnehmers.',
  'Gain of the charge amplifier.': 'Verstärkung des Ladungsverstärkers.',
  'Sensitivity at the analyser input.': 'Empfindlichkeit am Analysatoreingang.',
  'The smallest sensitivity over the temperature range.': 'Kleinste Empfindlichkeit im Temperaturbereich.',
  'Sensitivity at the calibration temperature.': 'Empfindlichkeit bei der Kalibriertemperatur.',
  'Lowest thermal deviation; where it is not known the sensitivity itself is returned.':
    'Kleinste Abweichung mit der Temperatur; ist sie unbekannt, wird die Empfindlichkeit selbst zurückgegeben.',
  'For noise: a lower sensitivity makes input noise larger in acceleration.':
    'Für das Rauschen: Eine kleinere Empfindlichkeit macht das Eingangsrauschen, als Beschleunigung gesehen, größer.',
  'The largest sensitivity over the temperature range.': 'Größte Empfindlichkeit im Temperaturbereich.',
  'Highest thermal deviation; where it is not known the sensitivity itself is returned.':
    'Größte Abweichung mit der Temperatur; ist sie unbekannt, wird die Empfindlichkeit selbst zurückgegeben.',
  'For the upper limit: a higher sensitivity reaches the input range sooner.':
    'Für die obere Grenze: Eine größere Empfindlichkeit erreicht den Eingangsbereich früher.',
  'R.m.s. acceleration of a spectrum, from its breakpoints.':
    'Effektivwert der Beschleunigung eines Spektrums aus seinen Stützpunkten.',
  'Acceleration spectral density against frequency.': 'Leistungsdichtespektrum der Beschleunigung über der Frequenz.',
  'Lower edge of the part wanted; blank: the whole spectrum.':
    'Untere Grenze des gewünschten Teils; leer: das ganze Spektrum.',
  'Upper edge of the part wanted; blank: the whole spectrum.':
    'Obere Grenze des gewünschten Teils; leer: das ganze Spektrum.',
  'R.m.s. acceleration.': 'Effektivwert der Beschleunigung.',
  'Spectral density at one frequency of a spectrum given by breakpoints.':
    'Leistungsdichte bei einer Frequenz eines durch Stützpunkte gegebenen Spektrums.',
  'Frequency between the first and the last breakpoint.': 'Frequenz zwischen dem ersten und dem letzten Stützpunkt.',
  'Acceleration spectral density.': 'Leistungsdichte der Beschleunigung.',
  'Spectral density reached from one point along a slope in dB per octave.':
    'Leistungsdichte, die von einem Punkt aus entlang einer Steigung in dB je Oktave erreicht wird.',
  'Frequency of the known point.': 'Frequenz des bekannten Punkts.',
  'Spectral density there.': 'Leistungsdichte dort.',
  'Slope; negative falls with frequency.': 'Steigung; negativ fällt mit der Frequenz.',
  'Frequency wanted.': 'Gesuchte Frequenz.',
  'Slope between two points of a spectrum, in dB per octave.':
    'Steigung zwischen zwei Punkten eines Spektrums, in dB je Oktave.',
  'Frequency of the first point.': 'Frequenz des ersten Punkts.',
  'Frequency of the second point.': 'Frequenz des zweiten Punkts.',
  'Slope in dB of power per octave.': 'Steigung in dB der Leistung je Oktave.',
  'By how much to raise a whole spectrum to reach an r.m.s. acceleration.':
    'Um wie viel ein ganzes Spektrum anzuheben ist, um einen Effektivwert der Beschleunigung zu erreichen.',
  'R.m.s. acceleration wanted or allowed.': 'Gewünschter oder zulässiger Effektivwert der Beschleunigung.',
  'Change of every breakpoint; negative lowers them.': 'Änderung aller Stützpunkte; negativ senkt sie ab.',
  'Largest peak to expect from narrow-band random vibration in a given time.':
    'Größter Spitzenwert, der von schmalbandiger Zufallsschwingung in einer gegebenen Zeit zu erwarten ist.',
  'R.m.s. level.': 'Effektivwert.',
  'Middle frequency of the response, or upper edge of a wide band.':
    'Mittenfrequenz der Antwort, oder obere Grenze eines breiten Bands.',
  'Duration.': 'Dauer.',
  'Mean of the largest peak.': 'Mittelwert des größten Spitzenwerts.',
  'Time after which a peak is to be expected in narrow-band random vibration.':
    'Zeit, nach der ein Spitzenwert in schmalbandiger Zufallsschwingung zu erwarten ist.',
  'Middle frequency of the response.': 'Mittenfrequenz der Antwort.',
  'Peak, for instance the upper limit.': 'Spitzenwert, zum Beispiel die obere Grenze.',
  'Duration in which the largest peak is on average this one.':
    'Dauer, in der der größte Spitzenwert im Mittel gerade dieser ist.',
  'Share of time in which random vibration exceeds a level, on either side.':
    'Zeitanteil, in dem eine Zufallsschwingung einen Pegel überschreitet, nach beiden Seiten.',
  'Level looked at.': 'Betrachteter Pegel.',
  'Share of time outside ±a.': 'Zeitanteil außerhalb von ±a.',
  'Level that random vibration exceeds for a given share of time, on either side.':
    'Pegel, den eine Zufallsschwingung in einem gegebenen Zeitanteil überschreitet, nach beiden Seiten.',
  'Level.': 'Pegel.',
  'Peak over r.m.s., for a signal or for the room under an upper limit.':
    'Spitzenwert durch Effektivwert, für ein Signal oder für den Raum unter einer oberen Grenze.',
  'Peak level, or upper limit.': 'Spitzenwert, oder obere Grenze.',
  'Crest factor; for random vibration the room in standard deviations.':
    'Scheitelfaktor; bei Zufallsschwingung der Raum in Standardabweichungen.',
  'Peak to plan for, from an r.m.s. level and a crest factor.':
    'Spitzenwert, mit dem zu planen ist, aus Effektivwert und Scheitelfaktor.',
  'Crest factor.': 'Scheitelfaktor.',
  'Peak level.': 'Spitzenwert.',
  'R.m.s. response of one mode to random vibration at its base.':
    'Effektivwert der Antwort einer Mode auf Zufallsschwingung an ihrer Basis.',
  'Natural frequency of the mode.': 'Eigenfrequenz der Mode.',
  'Quality factor, 1/(2ζ).': 'Gütefaktor, 1/(2ζ).',
  'Spectral density of the base at the natural frequency.': 'Leistungsdichte der Basis bei der Eigenfrequenz.',
  'R.m.s. absolute acceleration of the response.': 'Effektivwert der Absolutbeschleunigung der Antwort.',
  'Flat spectral density at which one mode responds with a given r.m.s. level.':
    'Ebene Leistungsdichte, bei der eine Mode mit einem gegebenen Effektivwert antwortet.',
  'R.m.s. response allowed.': 'Zulässiger Effektivwert der Antwort.',
  'Spectral density of the base about the natural frequency.': 'Leistungsdichte der Basis um die Eigenfrequenz.',
  'Peak response of a mode driven by a sine at its resonance.':
    'Spitzenwert der Antwort einer Mode, die ein Sinus in ihrer Resonanz anregt.',
  'Peak level at the base.': 'Spitzenwert an der Basis.',
  'Peak level of the response.': 'Spitzenwert der Antwort.',
  'Largest sine at the base whose resonant response stays under a limit.':
    'Größter Sinus an der Basis, dessen Resonanzantwort unter einer Grenze bleibt.',
  'Upper limit of the channel on the mode, peak.': 'Obere Grenze des Kanals auf der Mode, Spitzenwert.',
  'Peak acceleration of a sine given by displacement, velocity or acceleration; of several limits the smallest rules.':
    'Spitzenbeschleunigung eines Sinus aus Weg, Geschwindigkeit oder Beschleunigung; von mehreren Grenzen gilt die kleinste.',
  'Frequency of the sine.': 'Frequenz des Sinus.',
  'Peak displacement; write "pk-pk" for a peak-to-peak value.':
    'Spitzenwert des Wegs; für einen Spitze-Spitze-Wert "pk-pk" dazuschreiben.',
  'Peak velocity.': 'Spitzenwert der Geschwindigkeit.',
  'Peak acceleration.': 'Spitzenwert der Beschleunigung.',
  'Peak acceleration at that frequency.': 'Spitzenbeschleunigung bei dieser Frequenz.',
  'Peak displacement of a sine of given acceleration.': 'Spitzenwert des Wegs eines Sinus gegebener Beschleunigung.',
  'Peak displacement.': 'Spitzenwert des Wegs.',
  'Peak velocity of a sine of given acceleration.':
    'Spitzenwert der Geschwindigkeit eines Sinus gegebener Beschleunigung.',
  'Frequency at which a sweep changes from constant displacement to constant acceleration.':
    'Frequenz, bei der ein Gleitsinus von konstantem Weg zu konstanter Beschleunigung übergeht.',
  'Crossover frequency.': 'Übergangsfrequenz.',
  'R.m.s. and planning peak of a sine on top of random vibration.':
    'Effektivwert und Planungsspitze eines Sinus, der einer Zufallsschwingung überlagert ist.',
  'Peak of the sine.': 'Spitzenwert des Sinus.',
  'R.m.s. of the random part.': 'Effektivwert des Zufallsanteils.',
  'Multiple of the random r.m.s. planned for.':
    'Vielfaches des Effektivwerts des Zufallsanteils, mit dem geplant wird.',
  'R.m.s. of both.': 'Effektivwert von beiden.',
  'Peak to plan for.': 'Spitzenwert, mit dem zu planen ist.',
  'Random r.m.s. level that fits under a limit together with a sine.':
    'Effektivwert des Zufallsanteils, der zusammen mit einem Sinus unter eine Grenze passt.',
  'Upper limit, peak.': 'Obere Grenze, Spitzenwert.',
  'R.m.s. of the random part allowed.': 'Zulässiger Effektivwert des Zufallsanteils.',
  'R.m.s. noise in the analysed band of a sensor described by a white level and a 1/f corner.':
    'Effektivwert des Rauschens im ausgewerteten Band, für einen Aufnehmer mit weißem Rauschen und einer 1/f-Eckfrequenz.',
  'White noise density.': 'Rauschdichte des weißen Anteils.',
  'Frequency where the 1/f part equals the white part; 0 for none.':
    'Frequenz, bei der der 1/f-Anteil dem weißen gleicht; 0 für keinen.',
  'White noise density that keeps a signal-to-noise ratio over the smallest level.':
    'Weiße Rauschdichte, die einen Rauschabstand unter dem kleinsten Pegel einhält.',
  'Signal-to-noise ratio kept.': 'Rauschabstand, der eingehalten wird.',
  'Largest density of the total noise.': 'Größte Dichte des Gesamtrauschens.',
  'Widest band in which white noise keeps a signal-to-noise ratio over the smallest level.':
    'Breitestes Band, in dem weißes Rauschen einen Rauschabstand unter dem kleinsten Pegel einhält.',
  'Total noise density.': 'Dichte des Gesamtrauschens.',
  'Bandwidth; one Hann line of spacing Δf takes 1.5·Δf.':
    'Bandbreite; eine Hann-Linie mit Abstand Δf beansprucht 1,5·Δf.',
  'By how much noise inflates an r.m.s. reading.': 'Um wie viel Rauschen einen gemessenen Effektivwert erhöht.',
  'Signal-to-noise ratio; negative when noise exceeds the signal.':
    'Rauschabstand; negativ, wenn das Rauschen das Signal übersteigt.',
  'Excess of the reading.': 'Überschuss des Messwerts.',
  'Signal-to-noise ratio that keeps the bias of an r.m.s. reading, or a coherence.':
    'Rauschabstand, der die Verfälschung eines Effektivwerts oder eine Kohärenz einhält.',
  'Largest excess of an r.m.s. reading.': 'Größter Überschuss eines gemessenen Effektivwerts.',
  'Coherence wanted, noise at the output.': 'Gewünschte Kohärenz, Rauschen am Ausgang.',
  'Signal-to-noise ratio needed.': 'Erforderlicher Rauschabstand.',
  'Largest coherence that noise at the output leaves.': 'Größte Kohärenz, die das Rauschen am Ausgang zulässt.',
  'Signal-to-noise ratio of the output.': 'Rauschabstand des Ausgangs.',
  'Coherence.': 'Kohärenz.',
  'Bits of an ideal converter with the same dynamic range.':
    'Bitzahl eines idealen Wandlers mit demselben Dynamikumfang.',
  'Noise and distortion below an r.m.s. full-scale sine.':
    'Rauschen und Verzerrungen unter dem Effektivwert eines voll aussteuernden Sinus.',
  'Effective number of bits.': 'Effektive Bitzahl.',
  'Dynamic range of an ideal converter.': 'Dynamikumfang eines idealen Wandlers.',
  'Bits of the converter.': 'Bitzahl des Wandlers.',
  'Below an r.m.s. full-scale sine.': 'Unter dem Effektivwert eines voll aussteuernden Sinus.',
  'Voltage step of a converter.': 'Spannungsstufe eines Wandlers.',
  'Peak voltage of the range.': 'Spitzenspannung des Bereichs.',
  'Step.': 'Stufe.',
  'R.m.s. quantisation noise of a converter.': 'Effektivwert des Quantisierungsrauschens eines Wandlers.',
  'R.m.s. noise from 0 to half the sample rate.': 'Effektivwert des Rauschens von 0 bis zur halben Abtastrate.',
  'Noise density of an analyser input as acceleration at the sensor.':
    'Rauschdichte eines Analysatoreingangs als Beschleunigung am Aufnehmer.',
  'Noise below an r.m.s. full-scale sine of that range.':
    'Rauschen unter dem Effektivwert eines voll aussteuernden Sinus dieses Bereichs.',
  'Noise density at the sensor.': 'Rauschdichte am Aufnehmer.',
  'Dynamic range an input needs for its noise to stay under a share of the noise budget.':
    'Dynamikumfang, den ein Eingang braucht, damit sein Rauschen unter einem Anteil des Rauschbudgets bleibt.',
  'R.m.s. noise allowed to the input, at the sensor.': 'Dem Eingang zugestandenes Rauschen am Aufnehmer, Effektivwert.',
  'Dynamic range re r.m.s. full-scale sine.':
    'Dynamikumfang, bezogen auf den Effektivwert eines voll aussteuernden Sinus.',
  'Noise bandwidth of one spectral line.': 'Rauschbandbreite einer Spektrallinie.',
  'Line spacing.': 'Linienabstand.',
  'Window of the analysis.': 'Fenster der Analyse; rectangular: Rechteckfenster.',
  'Equivalent noise bandwidth.': 'Äquivalente Rauschbandbreite.',
  'Bandwidth of an octave or fractional-octave band.': 'Bandbreite eines Oktav- oder Teiloktavbands.',
  'Exact centre frequency.': 'Genaue Mittenfrequenz.',
  '3 for third octaves, 1 for octaves.': '3 für Terzen, 1 für Oktaven.',
  'Octave ratio: 10^0.3 or 2.': 'Oktavverhältnis: 10^0,3 (ten) oder 2 (two).',
  'Bandwidth.': 'Bandbreite.',
  'Table of input ranges and gains with the margin at both ends, and the smallest that fits marked.':
    'Tabelle der Eingangsbereiche und Verstärkungen mit dem Abstand an beiden Enden; der kleinste passende ist markiert.',
  'Peak voltage of each input range.': 'Spitzenspannung jedes Eingangsbereichs.',
  'Dynamic range of each, or one for all.': 'Dynamikumfang jedes Bereichs, oder einer für alle.',
  'Sample rate for which the dynamic ranges hold.': 'Abtastrate, für die die Dynamikumfänge gelten.',
  'Sensitivity before the gain; for charge pC/g × mV/pC.':
    'Empfindlichkeit vor der Verstärkung; bei Ladung pC/g × mV/pC.',
  'R.m.s. noise of the sensor in the same band.': 'Effektivwert des Aufnehmerrauschens im selben Band.',
  'Smallest level that must still be read.': 'Kleinster Pegel, der noch gemessen werden soll.',
  'Largest expected peak.': 'Größter erwarteter Spitzenwert.',
  'Gains between sensor and input.': 'Verstärkungen zwischen Aufnehmer und Eingang.',
  'Margin over the peak for a range to fit.': 'Abstand über dem Spitzenwert, ab dem ein Bereich passt.',
  'A heading row, then one row for each range and gain.': 'Eine Kopfzeile, dann eine Zeile je Bereich und Verstärkung.',
  'Input range that a peak needs.': 'Eingangsbereich, den ein Spitzenwert braucht.',
  'Margin over the peak.': 'Abstand über dem Spitzenwert.',
  'Peak voltage; take the next range above.': 'Spitzenspannung; den nächstgrößeren Bereich nehmen.',
  'Largest sensitivity whose peak still fits an input range.':
    'Größte Empfindlichkeit, deren Spitzenwert noch in einen Eingangsbereich passt.',
  'Peak voltage of the input range, or swing of the supply.':
    'Spitzenspannung des Eingangsbereichs, oder Aussteuerung der Speisung.',
  'Largest sensitivity over the temperature range.': 'Größte Empfindlichkeit über den Temperaturbereich.',
  'Peak voltage an IEPE sensor can swing about its bias.':
    'Spitzenspannung, die ein IEPE-Aufnehmer um seinen Arbeitspunkt aussteuern kann.',
  'Swing, the smaller of the two ways; 0 when there is none.':
    'Aussteuerung, die kleinere der beiden Richtungen; 0, wenn es keine gibt.',
  'Supply voltage that lets an IEPE sensor swing to a peak.':
    'Speisespannung, mit der ein IEPE-Aufnehmer bis zu einem Spitzenwert aussteuern kann.',
  'Compliance voltage needed.': 'Erforderliche Speisespannung der Konstantstromquelle.',
  'Range a channel must offer, from the smallest to the largest level with margins at both ends.':
    'Bereich, den ein Kanal bieten muss: vom kleinsten bis zum größten Pegel mit Abstand an beiden Enden.',
  'From the noise to the upper limit.': 'Vom Rauschen bis zur oberen Grenze.',
  'Upper limit left by a zero offset and its drift.':
    'Obere Grenze, die eine Nullpunktabweichung und ihre Drift übrig lassen.',
  'Upper limit without offset, peak.': 'Obere Grenze ohne Nullpunktabweichung, Spitzenwert.',
  'Zero offset, either sign.': 'Nullpunktabweichung, Vorzeichen beliebig.',
  'Drift of the zero, either sign.': 'Drift des Nullpunkts, Vorzeichen beliebig.',
  'Largest distance from the temperature of the zero.': 'Größter Abstand von der Temperatur des Nullabgleichs.',
  'Peak that still fits; 0 when the offset takes it all.':
    'Spitzenwert, der noch hineinpasst; 0, wenn die Nullpunktabweichung alles verbraucht.',
  'Linearity error at a level, for a data sheet that states it in percent of full scale.':
    'Linearitätsabweichung bei einem Pegel, für ein Datenblatt, das sie in Prozent des Messbereichsendwerts angibt.',
  'Linearity, percent of full scale.': 'Linearität, Prozent des Messbereichsendwerts.',
  'Full scale of the sensor.': 'Messbereichsendwert des Aufnehmers.',
  'Level reported.': 'Angegebener Pegel.',
  'Half-width of the error, of the reading.': 'Halbe Breite der Abweichung, bezogen auf den Messwert.',
  'Linearity error at a level, for a data sheet that states growth per 1000 m/s².':
    'Linearitätsabweichung bei einem Pegel, für ein Datenblatt, das den Zuwachs je 1000 m/s² angibt.',
  'Growth of sensitivity per 1000 m/s².': 'Zuwachs der Empfindlichkeit je 1000 m/s².',
  'Smallest level at which linearity in percent of full scale stays within an error.':
    'Kleinster Pegel, bei dem die Linearität in Prozent des Messbereichsendwerts innerhalb einer Abweichung bleibt.',
  'Error allowed, of the reading.': 'Zulässige Abweichung, bezogen auf den Messwert.',
  'Smallest level.': 'Kleinster Pegel.',
  'Largest level at which growth per 1000 m/s² stays within an error.':
    'Größter Pegel, bei dem der Zuwachs je 1000 m/s² innerhalb einer Abweichung bleibt.',
  'Growth of sensitivity per 1000 m/s², either sign.': 'Zuwachs der Empfindlichkeit je 1000 m/s², Vorzeichen beliebig.',
  'Largest level.': 'Größter Pegel.',
  'Longest charge cable whose noise keeps a signal-to-noise ratio.':
    'Längstes Ladungskabel, dessen Rauschen einen Rauschabstand einhält.',
  'Capacitance of the cable per metre.': 'Kapazität des Kabels je Meter.',
  'Cable length.': 'Kabellänge.',
  'Low-frequency noise gain of a charge amplifier on a leaky, hot source.':
    'Rauschverstärkung eines Ladungsverstärkers bei tiefen Frequenzen an einer heißen Quelle mit geringem Isolationswiderstand.',
  'Feedback resistance of the charge amplifier.': 'Gegenkopplungswiderstand des Ladungsverstärkers.',
  'Insulation resistance of sensor and cable.': 'Isolationswiderstand von Aufnehmer und Kabel.',
  'Factor on the amplifier’s noise voltage and offset below its corner.':
    'Faktor auf Rauschspannung und Offset des Verstärkers unterhalb seiner Grenzfrequenz.',
  'Insulation resistance that keeps the noise gain of a charge amplifier.':
    'Isolationswiderstand, der die Rauschverstärkung eines Ladungsverstärkers einhält.',
  'Largest noise gain.': 'Größte Rauschverstärkung.',
  'Table of a sensor’s noise over the band: density, and r.m.s. noise from the lower edge up to each frequency.':
    'Tabelle des Aufnehmerrauschens über dem Band: Dichte, und Effektivwert des Rauschens von der unteren Grenze bis zu jeder Frequenz.',
  'Lower edge.': 'Untere Grenze.',
  'Upper edge.': 'Obere Grenze.',
  'Number of points, evenly spaced on a logarithmic axis.': 'Anzahl der Punkte, gleichmäßig auf logarithmischer Achse.',
  'A heading row, then frequency in Hz, density in µg/√Hz and r.m.s. noise in g.':
    'Eine Kopfzeile, dann Frequenz in Hz, Dichte in µg/√Hz und Effektivwert des Rauschens in g.',
};
