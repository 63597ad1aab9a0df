import type { Translations } from '../wording';

export const level: Translations = {
  'Range a channel offers, from the smallest level that keeps the signal-to-noise ratio up to its upper limit.':
    'Plage qu’offre une voie, du plus petit niveau qui respecte le rapport signal sur bruit jusqu’à sa limite supérieure.',
  'Upper limit of the channel, peak.': 'Limite supérieure de la voie, valeur crête.',
  'Total r.m.s. noise.': 'Bruit total, valeur efficace.',
  'Signal-to-noise ratio kept at the low end.': 'Rapport signal sur bruit respecté au bas de la plage.',
  'Range from smallest r.m.s. to largest peak.':
    'Plage de la plus petite valeur efficace à la plus grande valeur crête.',
  'Margin of the smallest level over the total noise.': 'Écart entre le plus petit niveau et le bruit total.',
  'Smallest level that must still be read, r.m.s.': 'Plus petit niveau qu’il faut encore mesurer, valeur efficace.',
  'Total r.m.s. noise in the same band.': 'Bruit total dans la même bande, valeur efficace.',
  'Signal-to-noise ratio.': 'Rapport signal sur bruit.',
  'Margin of the upper limit over the largest expected peak; negative means clipping.':
    'Écart entre la limite supérieure et la plus grande crête attendue ; négatif : écrêtage.',
  'Largest expected peak, unfiltered.': 'Plus grande crête attendue, non filtrée.',
  'Headroom.': 'Réserve avant écrêtage.',
  'Largest peak that passes sensor, amplifier and input without clipping.':
    'Plus grande crête qui traverse capteur, amplificateur et entrée sans écrêtage.',
  'Full scale of the sensor, peak.': 'Pleine échelle du capteur, valeur crête.',
  'How the signal leaves the sensor. IEPE needs the five supply and bias voltages, charge the output limit.':
    'Type de sortie du capteur. IEPE demande les cinq tensions d’alimentation et de polarisation, charge la limite de sortie.',
  'Largest sensitivity over the temperature range; charge: pC/g times mV/pC.':
    'Plus grande sensibilité sur la plage de température ; en charge : pC/g fois mV/pC.',
  'Peak voltage of the input range.': 'Tension crête du calibre d’entrée.',
  'Compliance voltage of the supply.': 'Tension d’alimentation de la source de courant.',
  'Lowest bias over the temperature range.': 'Plus petite tension de polarisation sur la plage de température.',
  'Highest bias over the temperature range.': 'Plus grande tension de polarisation sur la plage de température.',
  'Voltage lost in the current source.': 'Chute de tension dans la source de courant.',
  'Lowest output that still follows.': 'Plus petite tension de sortie qui suit encore le signal.',
  'Largest output of the charge amplifier.': 'Plus grande tension de sortie de l’amplificateur de charge.',
  'Upper limit, peak; 0 when the supply leaves no swing about the bias.':
    'Limite supérieure, valeur crête ; 0 si l’alimentation ne laisse aucune excursion autour de la polarisation.',
  'What sets the upper limit of the channel, in words.':
    'Ce qui fixe la limite supérieure de la voie, en toutes lettres.',
  'full scale, input range, bias swing, amplifier output.':
    'full scale (pleine échelle), input range (calibre d’entrée), bias swing (excursion autour de la polarisation), amplifier output (sortie de l’amplificateur).',
  'R.m.s. noise of a sensor in the analysed band, from its noise density.':
    'Valeur efficace du bruit d’un capteur dans la bande analysée, à partir de sa densité de bruit.',
  'Noise density against frequency.': 'Densité de bruit en fonction de la fréquence.',
  'Lower band edge, or both edges as a range text.':
    'Borne inférieure de la bande, ou les deux bornes sous forme de texte de plage.',
  'Upper band edge.': 'Borne supérieure de la bande.',
  'Line spacing when the level is read in one Hann line at the lower edge; blank: whole band.':
    'Pas en fréquence si le niveau est lu sur une raie de Hann à la borne inférieure ; vide : toute la bande.',
  'R.m.s. noise.': 'Valeur efficace du bruit.',
  'R.m.s. noise of an analyser input in the analysed band, as acceleration at the sensor.':
    'Valeur efficace du bruit d’une entrée d’analyseur dans la bande analysée, ramenée en accélération au capteur.',
  'Peak voltage of the input range in use.': 'Tension crête du calibre d’entrée utilisé.',
  'Noise below an r.m.s. full-scale sine of that range, over half the sample rate.':
    'Bruit sous la valeur efficace d’un sinus à pleine échelle de ce calibre, sur la moitié de la fréquence d’échantillonnage.',
  'Sample rate for which the dynamic range holds.':
    'Fréquence d’échantillonnage pour laquelle la dynamique est donnée.',
  'Smallest sensitivity over the temperature range; charge: pC/g times mV/pC.':
    'Plus petite sensibilité sur la plage de température ; en charge : pC/g fois mV/pC.',
  'R.m.s. noise at the sensor.': 'Valeur efficace du bruit au capteur.',
  'R.m.s. noise of a charge amplifier in the analysed band, as acceleration at the sensor; grows with cable.':
    'Valeur efficace du bruit d’un amplificateur de charge dans la bande analysée, ramenée en accélération au capteur ; croît avec le câble.',
  'Input noise voltage of the amplifier.': 'Tension de bruit à l’entrée de l’amplificateur.',
  'Capacitance of the sensor.': 'Capacité du capteur.',
  'Capacitance of the whole cable.': 'Capacité de tout le câble.',
  'Feedback capacitance of the amplifier.': 'Capacité de contre-réaction de l’amplificateur.',
  'Smallest charge sensitivity over the temperature range.':
    'Plus petite sensibilité en charge sur la plage de température.',
  'Total r.m.s. noise of independent parts: sensor, amplifier, input.':
    'Valeur efficace du bruit total de parts indépendantes : capteur, amplificateur, entrée.',
  'R.m.s. noise of each part in the same band.': 'Valeur efficace du bruit de chaque part dans la même bande.',
  'Voltage sensitivity of a charge-output sensor behind its charge amplifier.':
    'Sensibilité en tension d’un capteur à sortie en charge derrière son amplificateur de charge.',
  'Charge sensitivity of the sensor.': 'Sensibilité en charge du capteur.',
  'Gain of the charge amplifier.': 'Gain de l’amplificateur de charge.',
  'Sensitivity at the analyser input.': 'Sensibilité à l’entrée de l’analyseur.',
  'The smallest sensitivity over the temperature range.': 'La plus petite sensibilité sur la plage de température.',
  'Sensitivity at the calibration temperature.': 'Sensibilité à la température d’étalonnage.',
  'Lowest thermal deviation; where it is not known the sensitivity itself is returned.':
    'Plus petit écart thermique ; s’il n’est pas connu, la sensibilité elle-même est rendue.',
  'For noise: a lower sensitivity makes input noise larger in acceleration.':
    'Pour le bruit : une sensibilité plus faible rend le bruit d’entrée plus grand en accélération.',
  'The largest sensitivity over the temperature range.': 'La plus grande sensibilité sur la plage de température.',
  'Highest thermal deviation; where it is not known the sensitivity itself is returned.':
    'Plus grand écart thermique ; s’il n’est pas connu, la sensibilité elle-même est rendue.',
  'For the upper limit: a higher sensitivity reaches the input range sooner.':
    'Pour la limite supérieure : une sensibilité plus forte atteint plus tôt le calibre d’entrée.',
  'R.m.s. acceleration of a spectrum, from its breakpoints.':
    'Valeur efficace de l’accélération d’un spectre, à partir de ses points de définition.',
  'Acceleration spectral density against frequency.': 'Densité spectrale d’accélération en fonction de la fréquence.',
  'Lower edge of the part wanted; blank: the whole spectrum.':
    'Borne inférieure de la partie voulue ; vide : tout le spectre.',
  'Upper edge of the part wanted; blank: the whole spectrum.':
    'Borne supérieure de la partie voulue ; vide : tout le spectre.',
  'R.m.s. acceleration.': 'Valeur efficace de l’accélération.',
  'Spectral density at one frequency of a spectrum given by breakpoints.':
    'Densité spectrale à une fréquence d’un spectre donné par ses points de définition.',
  'Frequency between the first and the last breakpoint.':
    'Fréquence entre le premier et le dernier point de définition.',
  'Acceleration spectral density.': 'Densité spectrale d’accélération.',
  'Spectral density reached from one point along a slope in dB per octave.':
    'Densité spectrale atteinte depuis un point en suivant une pente en dB par octave.',
  'Frequency of the known point.': 'Fréquence du point connu.',
  'Spectral density there.': 'Densité spectrale en ce point.',
  'Slope; negative falls with frequency.': 'Pente ; négative, elle descend avec la fréquence.',
  'Frequency wanted.': 'Fréquence cherchée.',
  'Slope between two points of a spectrum, in dB per octave.':
    'Pente entre deux points d’un spectre, en dB par octave.',
  'Frequency of the first point.': 'Fréquence du premier point.',
  'Frequency of the second point.': 'Fréquence du second point.',
  'Slope in dB of power per octave.': 'Pente en dB de puissance par octave.',
  'By how much to raise a whole spectrum to reach an r.m.s. acceleration.':
    'De combien relever tout un spectre pour atteindre une valeur efficace d’accélération.',
  'R.m.s. acceleration wanted or allowed.': 'Valeur efficace d’accélération voulue ou admise.',
  'Change of every breakpoint; negative lowers them.':
    'Changement de tous les points de définition ; négatif, il les abaisse.',
  'Largest peak to expect from narrow-band random vibration in a given time.':
    'Plus grande crête à attendre d’une vibration aléatoire à bande étroite pendant une durée donnée.',
  'R.m.s. level.': 'Valeur efficace.',
  'Middle frequency of the response, or upper edge of a wide band.':
    'Fréquence centrale de la réponse, ou borne supérieure d’une bande large.',
  'Duration.': 'Durée.',
  'Mean of the largest peak.': 'Moyenne de la plus grande crête.',
  'Time after which a peak is to be expected in narrow-band random vibration.':
    'Durée au bout de laquelle une crête est à attendre dans une vibration aléatoire à bande étroite.',
  'Middle frequency of the response.': 'Fréquence centrale de la réponse.',
  'Peak, for instance the upper limit.': 'Crête, par exemple la limite supérieure.',
  'Duration in which the largest peak is on average this one.':
    'Durée pendant laquelle la plus grande crête est en moyenne celle-ci.',
  'Share of time in which random vibration exceeds a level, on either side.':
    'Part du temps où une vibration aléatoire dépasse un niveau, de part et d’autre.',
  'Level looked at.': 'Niveau considéré.',
  'Share of time outside ±a.': 'Part du temps hors de ±a.',
  'Level that random vibration exceeds for a given share of time, on either side.':
    'Niveau qu’une vibration aléatoire dépasse pendant une part donnée du temps, de part et d’autre.',
  'Level.': 'Niveau.',
  'Peak over r.m.s., for a signal or for the room under an upper limit.':
    'Crête sur valeur efficace, pour un signal ou pour la place sous une limite supérieure.',
  'Peak level, or upper limit.': 'Niveau crête, ou limite supérieure.',
  'Crest factor; for random vibration the room in standard deviations.':
    'Facteur de crête ; pour une vibration aléatoire, la place en écarts-types.',
  'Peak to plan for, from an r.m.s. level and a crest factor.':
    'Crête à prévoir, à partir d’une valeur efficace et d’un facteur de crête.',
  'Crest factor.': 'Facteur de crête.',
  'Peak level.': 'Niveau crête.',
  'R.m.s. response of one mode to random vibration at its base.':
    'Valeur efficace de la réponse d’un mode à une vibration aléatoire à sa base.',
  'Natural frequency of the mode.': 'Fréquence propre du mode.',
  'Quality factor, 1/(2ζ).': 'Facteur de qualité, 1/(2ζ).',
  'Spectral density of the base at the natural frequency.': 'Densité spectrale de la base à la fréquence propre.',
  'R.m.s. absolute acceleration of the response.': 'Valeur efficace de l’accélération absolue de la réponse.',
  'Flat spectral density at which one mode responds with a given r.m.s. level.':
    'Densité spectrale plate pour laquelle un mode répond avec une valeur efficace donnée.',
  'R.m.s. response allowed.': 'Valeur efficace admise de la réponse.',
  'Spectral density of the base about the natural frequency.':
    'Densité spectrale de la base autour de la fréquence propre.',
  'Peak response of a mode driven by a sine at its resonance.':
    'Crête de la réponse d’un mode excité par un sinus à sa résonance.',
  'Peak level at the base.': 'Niveau crête à la base.',
  'Peak level of the response.': 'Niveau crête de la réponse.',
  'Largest sine at the base whose resonant response stays under a limit.':
    'Plus grand sinus à la base dont la réponse résonante reste sous une limite.',
  'Upper limit of the channel on the mode, peak.': 'Limite supérieure de la voie sur le mode, valeur crête.',
  'Peak acceleration of a sine given by displacement, velocity or acceleration; of several limits the smallest rules.':
    'Accélération crête d’un sinus donné par déplacement, vitesse ou accélération ; de plusieurs limites, la plus petite l’emporte.',
  'Frequency of the sine.': 'Fréquence du sinus.',
  'Peak displacement; write "pk-pk" for a peak-to-peak value.':
    'Déplacement crête ; écrire "pk-pk" pour une valeur crête à crête.',
  'Peak velocity.': 'Vitesse crête.',
  'Peak acceleration.': 'Accélération crête.',
  'Peak acceleration at that frequency.': 'Accélération crête à cette fréquence.',
  'Peak displacement of a sine of given acceleration.': 'Déplacement crête d’un sinus d’accélération donnée.',
  'Peak displacement.': 'Déplacement crête.',
  'Peak velocity of a sine of given acceleration.': 'Vitesse crête d’un sinus d’accélération donnée.',
  'Frequency at which a sweep changes from constant displacement to constant acceleration.':
    'Fréquence où un balayage passe du déplacement constant à l’accélération constante.',
  'Crossover frequency.': 'Fréquence de transition.',
  'R.m.s. and planning peak of a sine on top of random vibration.':
    'Valeur efficace et crête à prévoir d’un sinus superposé à une vibration aléatoire.',
  'Peak of the sine.': 'Crête du sinus.',
  'R.m.s. of the random part.': 'Valeur efficace de la part aléatoire.',
  'Multiple of the random r.m.s. planned for.': 'Multiple de la valeur efficace aléatoire à prévoir.',
  'R.m.s. of both.': 'Valeur efficace des deux.',
  'Peak to plan for.': 'Crête à prévoir.',
  'Random r.m.s. level that fits under a limit together with a sine.':
    'Valeur efficace aléatoire qui tient sous une limite en même temps qu’un sinus.',
  'Upper limit, peak.': 'Limite supérieure, valeur crête.',
  'R.m.s. of the random part allowed.': 'Valeur efficace admise de la part aléatoire.',
  'R.m.s. noise in the analysed band of a sensor described by a white level and a 1/f corner.':
    'Valeur efficace du bruit, dans la bande analysée, d’un capteur décrit par un bruit blanc et une fréquence de coude en 1/f.',
  'White noise density.': 'Densité du bruit blanc.',
  'Frequency where the 1/f part equals the white part; 0 for none.':
    'Fréquence où la part en 1/f égale la part blanche ; 0 : aucune.',
  'White noise density that keeps a signal-to-noise ratio over the smallest level.':
    'Densité de bruit blanc qui respecte un rapport signal sur bruit au plus petit niveau.',
  'Signal-to-noise ratio kept.': 'Rapport signal sur bruit à respecter.',
  'Largest density of the total noise.': 'Plus grande densité du bruit total.',
  'Widest band in which white noise keeps a signal-to-noise ratio over the smallest level.':
    'Bande la plus large où un bruit blanc respecte un rapport signal sur bruit au plus petit niveau.',
  'Total noise density.': 'Densité du bruit total.',
  'Bandwidth; one Hann line of spacing Δf takes 1.5·Δf.':
    'Largeur de bande ; une raie de Hann de pas Δf occupe 1,5·Δf.',
  'By how much noise inflates an r.m.s. reading.': 'De combien le bruit gonfle une valeur efficace lue.',
  'Signal-to-noise ratio; negative when noise exceeds the signal.':
    'Rapport signal sur bruit ; négatif si le bruit dépasse le signal.',
  'Excess of the reading.': 'Excès de la lecture.',
  'Signal-to-noise ratio that keeps the bias of an r.m.s. reading, or a coherence.':
    'Rapport signal sur bruit qui respecte le biais d’une valeur efficace lue, ou une cohérence.',
  'Largest excess of an r.m.s. reading.': 'Plus grand excès d’une valeur efficace lue.',
  'Coherence wanted, noise at the output.': 'Cohérence voulue, bruit sur la sortie.',
  'Signal-to-noise ratio needed.': 'Rapport signal sur bruit nécessaire.',
  'Largest coherence that noise at the output leaves.': 'Plus grande cohérence que laisse un bruit sur la sortie.',
  'Signal-to-noise ratio of the output.': 'Rapport signal sur bruit de la sortie.',
  'Coherence.': 'Cohérence.',
  'Bits of an ideal converter with the same dynamic range.':
    'Nombre de bits d’un convertisseur idéal de même dynamique.',
  'Noise and distortion below an r.m.s. full-scale sine.':
    'Bruit et distorsion sous la valeur efficace d’un sinus à pleine échelle.',
  'Effective number of bits.': 'Nombre effectif de bits.',
  'Dynamic range of an ideal converter.': 'Dynamique d’un convertisseur idéal.',
  'Bits of the converter.': 'Nombre de bits du convertisseur.',
  'Below an r.m.s. full-scale sine.': 'Sous la valeur efficace d’un sinus à pleine échelle.',
  'Voltage step of a converter.': 'Pas en tension d’un convertisseur.',
  'Peak voltage of the range.': 'Tension crête du calibre.',
  'Step.': 'Pas.',
  'R.m.s. quantisation noise of a converter.': 'Valeur efficace du bruit de quantification d’un convertisseur.',
  'R.m.s. noise from 0 to half the sample rate.':
    'Valeur efficace du bruit de 0 à la moitié de la fréquence d’échantillonnage.',
  'Noise density of an analyser input as acceleration at the sensor.':
    'Densité de bruit d’une entrée d’analyseur, ramenée en accélération au capteur.',
  'Noise below an r.m.s. full-scale sine of that range.':
    'Bruit sous la valeur efficace d’un sinus à pleine échelle de ce calibre.',
  'Noise density at the sensor.': 'Densité de bruit au capteur.',
  'Dynamic range an input needs for its noise to stay under a share of the noise budget.':
    'Dynamique qu’il faut à une entrée pour que son bruit reste sous une part du bruit admis.',
  'R.m.s. noise allowed to the input, at the sensor.': 'Bruit accordé à l’entrée, au capteur, valeur efficace.',
  'Dynamic range re r.m.s. full-scale sine.': 'Dynamique rapportée à la valeur efficace d’un sinus à pleine échelle.',
  'Noise bandwidth of one spectral line.': 'Bande de bruit d’une raie spectrale.',
  'Line spacing.': 'Pas en fréquence.',
  'Window of the analysis.': 'Fenêtre de l’analyse ; rectangular : fenêtre rectangulaire.',
  'Equivalent noise bandwidth.': 'Bande de bruit équivalente.',
  'Bandwidth of an octave or fractional-octave band.': 'Largeur d’une bande d’octave ou de fraction d’octave.',
  'Exact centre frequency.': 'Fréquence centrale exacte.',
  '3 for third octaves, 1 for octaves.': '3 pour les tiers d’octave, 1 pour les octaves.',
  'Octave ratio: 10^0.3 or 2.': 'Rapport d’octave : 10^0,3 (ten) ou 2 (two).',
  'Bandwidth.': 'Largeur de bande.',
  'Table of input ranges and gains with the margin at both ends, and the smallest that fits marked.':
    'Tableau des calibres d’entrée et des gains avec l’écart aux deux bouts ; le plus petit qui convient est marqué.',
  'Peak voltage of each input range.': 'Tension crête de chaque calibre d’entrée.',
  'Dynamic range of each, or one for all.': 'Dynamique de chacun, ou une pour tous.',
  'Sample rate for which the dynamic ranges hold.':
    'Fréquence d’échantillonnage pour laquelle les dynamiques sont données.',
  'Sensitivity before the gain; for charge pC/g × mV/pC.': 'Sensibilité avant le gain ; en charge pC/g × mV/pC.',
  'R.m.s. noise of the sensor in the same band.': 'Valeur efficace du bruit du capteur dans la même bande.',
  'Smallest level that must still be read.': 'Plus petit niveau qu’il faut encore mesurer.',
  'Largest expected peak.': 'Plus grande crête attendue.',
  'Gains between sensor and input.': 'Gains entre capteur et entrée.',
  'Margin over the peak for a range to fit.': 'Marge au-dessus de la crête pour qu’un calibre convienne.',
  'A heading row, then one row for each range and gain.':
    'Une ligne d’en-tête, puis une ligne par calibre et par gain.',
  'Input range that a peak needs.': 'Calibre d’entrée qu’il faut à une crête.',
  'Margin over the peak.': 'Marge au-dessus de la crête.',
  'Peak voltage; take the next range above.': 'Tension crête ; prendre le calibre immédiatement supérieur.',
  'Largest sensitivity whose peak still fits an input range.':
    'Plus grande sensibilité dont la crête tient encore dans un calibre d’entrée.',
  'Peak voltage of the input range, or swing of the supply.':
    'Tension crête du calibre d’entrée, ou excursion permise par l’alimentation.',
  'Largest sensitivity over the temperature range.': 'Plus grande sensibilité sur la plage de température.',
  'Peak voltage an IEPE sensor can swing about its bias.':
    'Tension crête qu’un capteur IEPE peut parcourir autour de sa polarisation.',
  'Swing, the smaller of the two ways; 0 when there is none.':
    'Excursion, la plus petite des deux ; 0 s’il n’y en a pas.',
  'Supply voltage that lets an IEPE sensor swing to a peak.':
    'Tension d’alimentation qui permet à un capteur IEPE une excursion jusqu’à une crête.',
  'Compliance voltage needed.': 'Tension nécessaire de la source de courant.',
  'Range a channel must offer, from the smallest to the largest level with margins at both ends.':
    'Plage qu’une voie doit offrir, du plus petit au plus grand niveau, avec une marge aux deux bouts.',
  'From the noise to the upper limit.': 'Du bruit à la limite supérieure.',
  'Upper limit left by a zero offset and its drift.':
    'Limite supérieure que laissent un décalage de zéro et sa dérive.',
  'Upper limit without offset, peak.': 'Limite supérieure sans décalage, valeur crête.',
  'Zero offset, either sign.': 'Décalage de zéro, signe indifférent.',
  'Drift of the zero, either sign.': 'Dérive du zéro, signe indifférent.',
  'Largest distance from the temperature of the zero.': 'Plus grand écart à la température du réglage de zéro.',
  'Peak that still fits; 0 when the offset takes it all.': 'Crête qui tient encore ; 0 si le décalage prend tout.',
  'Linearity error at a level, for a data sheet that states it in percent of full scale.':
    'Erreur de linéarité à un niveau, pour une fiche technique qui la donne en pour cent de la pleine échelle.',
  'Linearity, percent of full scale.': 'Linéarité, pour cent de la pleine échelle.',
  'Full scale of the sensor.': 'Pleine échelle du capteur.',
  'Level reported.': 'Niveau indiqué.',
  'Half-width of the error, of the reading.': 'Demi-largeur de l’erreur, rapportée à la lecture.',
  'Linearity error at a level, for a data sheet that states growth per 1000 m/s².':
    'Erreur de linéarité à un niveau, pour une fiche technique qui donne l’accroissement par 1000 m/s².',
  'Growth of sensitivity per 1000 m/s².': 'Accroissement de la sensibilité par 1000 m/s².',
  'Smallest level at which linearity in percent of full scale stays within an error.':
    'Plus petit niveau où la linéarité en pour cent de la pleine échelle reste dans une erreur.',
  'Error allowed, of the reading.': 'Erreur admise, rapportée à la lecture.',
  'Smallest level.': 'Plus petit niveau.',
  'Largest level at which growth per 1000 m/s² stays within an error.':
    'Plus grand niveau où l’accroissement par 1000 m/s² reste dans une erreur.',
  'Growth of sensitivity per 1000 m/s², either sign.':
    'Accroissement de la sensibilité par 1000 m/s², signe indifférent.',
  'Largest level.': 'Plus grand niveau.',
  'Longest charge cable whose noise keeps a signal-to-noise ratio.':
    'Plus long câble de charge dont le bruit respecte un rapport signal sur bruit.',
  'Capacitance of the cable per metre.': 'Capacité du câble par mètre.',
  'Cable length.': 'Longueur de câble.',
  'Low-frequency noise gain of a charge amplifier on a leaky, hot source.':
    'Gain de bruit en basse fréquence d’un amplificateur de charge sur une source chaude et mal isolée.',
  'Feedback resistance of the charge amplifier.': 'Résistance de contre-réaction de l’amplificateur de charge.',
  'Insulation resistance of sensor and cable.': 'Résistance d’isolement du capteur et du câble.',
  'Factor on the amplifier’s noise voltage and offset below its corner.':
    'Facteur sur la tension de bruit et le décalage de l’amplificateur sous sa fréquence de coupure.',
  'Insulation resistance that keeps the noise gain of a charge amplifier.':
    'Résistance d’isolement qui respecte le gain de bruit d’un amplificateur de charge.',
  'Largest noise gain.': 'Plus grand gain de bruit.',
  'Table of a sensor’s noise over the band: density, and r.m.s. noise from the lower edge up to each frequency.':
    'Tableau du bruit d’un capteur sur la bande : densité, et valeur efficace du bruit de la borne inférieure à chaque fréquence.',
  'Lower edge.': 'Borne inférieure.',
  'Upper edge.': 'Borne supérieure.',
  'Number of points, evenly spaced on a logarithmic axis.':
    'Nombre de points, régulièrement espacés sur un axe logarithmique.',
  'A heading row, then frequency in Hz, density in µg/√Hz and r.m.s. noise in g.':
    'Une ligne d’en-tête, puis fréquence en Hz, densité en µg/√Hz et valeur efficace du bruit en g.',
};
