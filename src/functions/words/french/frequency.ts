import type { Translations } from '../wording';

export const frequency: Translations = {
  'Both ends of the band a channel measures within tolerance.':
    'Les deux bouts de la bande qu’une voie mesure dans la tolérance.',
  'Mounted resonance.': 'Fréquence de résonance, fixation comprise.',
  'Quality factor of the resonance, 1/(2ζ).': 'Facteur de qualité de la résonance, 1/(2ζ).',
  'How the signal leaves the sensor. IEPE and voltage need the low limit, charge the time constant.':
    'Type de sortie du capteur. IEPE et voltage (tension) demandent la limite basse, charge la constante de temps.',
  'Lower limit by the data sheet.': 'Limite basse selon la fiche technique.',
  'Loss meant by the lower limit.': 'Perte qu’entend la limite basse.',
  'Discharge time constant of the charge amplifier.': 'Constante de temps de décharge de l’amplificateur de charge.',
  'Corner of each AC-coupling pole (−3 dB); "none" when DC coupled.':
    'Fréquence de coupure de chaque pôle de couplage AC (−3 dB) ; "none" en couplage DC.',
  'Flatness asked for.': 'Planéité demandée.',
  'Frequency of the certified sensitivity.': 'Fréquence de la sensibilité certifiée.',
  'Sample rate; the analyser ends at this over 2.56.':
    'Fréquence d’échantillonnage ; l’analyseur s’arrête à cette valeur divisée par 2,56.',
  'Cable drive limit.': 'Limite due au courant dans le câble.',
  'Upper limit by the data sheet.': 'Limite haute selon la fiche technique.',
  'Largest rise, where it differs from the fall.': 'Plus forte hausse, si elle diffère de la baisse.',
  'Low end; 0 when nothing limits it.': 'Bout inférieur ; 0 si rien ne le limite.',
  'High end.': 'Bout supérieur.',
  'Lowest frequency a channel measures within tolerance; 0 when it measures static acceleration.':
    'Plus basse fréquence qu’une voie mesure dans la tolérance ; 0 si elle mesure l’accélération statique.',
  'Low end of the usable span.': 'Bout inférieur de la plage utilisable.',
  'Highest frequency a channel measures within tolerance, or up to which its analyser or cable reaches.':
    'Plus haute fréquence qu’une voie mesure dans la tolérance, ou jusqu’à laquelle vont son analyseur ou son câble.',
  'High end of the usable span.': 'Bout supérieur de la plage utilisable.',
  'Resonance of a sensor on its mount; a soft joint lowers it.':
    'Fréquence de résonance d’un capteur sur sa fixation ; une liaison souple l’abaisse.',
  'Resonance by the data sheet, stiff stud on steel.':
    'Fréquence de résonance selon la fiche technique, goujon rigide sur acier.',
  'Mass of the sensor.': 'Masse du capteur.',
  'Axial stiffness of the joint; blank for a stiff stud: the resonance stays.':
    'Raideur axiale de la liaison ; vide pour un goujon rigide : la résonance reste.',
  'Highest frequency at which an IEPE sensor still drives its cable at the expected peak.':
    'Plus haute fréquence où un capteur IEPE charge encore la capacité de son câble à la crête attendue.',
  'Constant current of the supply.': 'Courant constant de l’alimentation.',
  'Current the sensor keeps for itself.': 'Courant que le capteur garde pour lui.',
  'Corner (−3 dB) of a lower limit that a data sheet states with its loss.':
    'Fréquence de coupure (−3 dB) d’une limite basse que la fiche technique donne avec sa perte.',
  'Loss meant by the limit.': 'Perte qu’entend la limite.',
  'Corner frequency.': 'Fréquence de coupure.',
  'Lower limit at a stated loss of one high-pass pole.': 'Limite basse d’un pôle passe-haut pour une perte donnée.',
  'Corner (−3 dB).': 'Fréquence de coupure (−3 dB).',
  'Frequency at which the pole loses δ.': 'Fréquence où le pôle perd δ.',
  'Corner of a discharge time constant.': 'Fréquence de coupure d’une constante de temps de décharge.',
  'Discharge time constant.': 'Constante de temps de décharge.',
  'Discharge time constant of a corner.': 'Constante de temps de décharge d’une fréquence de coupure.',
  'Corner of a resistance and a capacitance, such as a charge amplifier’s feedback.':
    'Fréquence de coupure d’une résistance et d’une capacité, comme la contre-réaction d’un amplificateur de charge.',
  'Resistance.': 'Résistance.',
  'Capacitance.': 'Capacité.',
  'Largest corner of a further high-pass pole that keeps loss and phase at the lower band edge.':
    'Plus haute fréquence de coupure d’un pôle passe-haut de plus qui respecte perte et phase à la borne inférieure de la bande.',
  'Lower edge of the needed band.': 'Borne inférieure de la bande requise.',
  'Largest loss there.': 'Plus forte perte à cet endroit.',
  'Largest phase lead there, where one is set.': 'Plus forte avance de phase à cet endroit, si elle est fixée.',
  'Corners of poles already there.': 'Fréquences de coupure des pôles déjà présents.',
  'Corner frequency (−3 dB).': 'Fréquence de coupure du pôle (−3 dB).',
  'Smallest time constant of a further high-pass pole that keeps loss and phase at the lower band edge.':
    'Plus petite constante de temps d’un pôle passe-haut de plus qui respecte perte et phase à la borne inférieure de la bande.',
  'Frequency at which several high-pass poles together lose a share.':
    'Fréquence où plusieurs pôles passe-haut perdent ensemble une part donnée.',
  'Corner of each high-pass pole (−3 dB).': 'Fréquence de coupure de chaque pôle passe-haut (−3 dB).',
  'Lower limit of the cascade; 0 without poles.': 'Limite basse de la cascade ; 0 sans pôle.',
  'Deviation of a channel’s sensitivity at a frequency from that at the reference.':
    'Écart de la sensibilité d’une voie à une fréquence par rapport à celle à la fréquence de référence.',
  'Frequency looked at.': 'Fréquence considérée.',
  'Corner of each high-pass pole; "none".': 'Fréquence de coupure de chaque pôle passe-haut ; "none" : aucun.',
  'Mounted resonance; blank: none.': 'Fréquence de résonance, fixation comprise ; vide : aucune.',
  'Quality factor of the resonance.': 'Facteur de qualité de la résonance.',
  'Frequency where the deviation is 0.': 'Fréquence où l’écart vaut 0.',
  'Negative: reads low.': 'Négatif : lecture trop faible.',
  'Phase of a channel at a frequency: lead of its high-pass poles, lag of its resonance.':
    'Phase d’une voie à une fréquence : avance de ses pôles passe-haut, retard de sa résonance.',
  'Positive: leads.': 'Positive : en avance.',
  'Response of a channel at a frequency: deviation, the same in dB, and phase.':
    'Réponse d’une voie à une fréquence : écart, le même en dB, et phase.',
  'From the reference; negative reads low.': 'Par rapport à la référence ; négatif : lecture trop faible.',
  'The same as a level.': 'Le même sous forme de niveau.',
  'Positive leads.': 'Positive, elle est en avance.',
  'Wait after a step until only a residue is left.':
    'Attente après un échelon jusqu’à ce qu’il n’en reste qu’un résidu.',
  'Corner of the slowest pole (−3 dB).': 'Fréquence de coupure du pôle le plus lent (−3 dB).',
  'Step, such as the bias when power comes on.': 'Échelon, comme la polarisation à la mise sous tension.',
  'What may be left of it.': 'Ce qui peut en rester.',
  'Waiting time.': 'Temps d’attente.',
  'Smallest corner that lets a step decay to a residue within a wait.':
    'Plus petite fréquence de coupure qui laisse un échelon décroître jusqu’à un résidu en un temps donné.',
  'Frequency up to which a resonance alone changes the sensitivity by no more than a tolerance.':
    'Fréquence jusqu’à laquelle une résonance seule ne change pas la sensibilité de plus d’une tolérance.',
  'Change allowed.': 'Changement admis.',
  'Quality factor; blank: undamped.': 'Facteur de qualité ; vide : sans amortissement.',
  'Upper limit.': 'Limite haute en fréquence.',
  'Mounted resonance that keeps the sensitivity within a tolerance up to the upper band edge.':
    'Fréquence de résonance, fixation comprise, qui garde la sensibilité dans une tolérance jusqu’à la borne supérieure de la bande.',
  'Upper edge of the needed band.': 'Borne supérieure de la bande requise.',
  'Mounted resonance needed, mount included.': 'Fréquence de résonance nécessaire, fixation comprise.',
  'Resonance of a sensor on its mount, base and seismic mass solved exactly.':
    'Fréquence de résonance d’un capteur sur sa fixation, embase et masse sismique résolues exactement.',
  'Resonance by the data sheet, base held fixed.':
    'Fréquence de résonance selon la fiche technique, embase tenue immobile.',
  'Mass of the sensor without its seismic mass.': 'Masse du capteur sans sa masse sismique.',
  'Seismic mass.': 'Masse sismique.',
  'Axial stiffness of the joint.': 'Raideur axiale de la liaison.',
  'Mounted resonance, the lower of the two.': 'Fréquence de résonance, fixation comprise, la plus basse des deux.',
  'Joint stiffness that a mounted resonance needs.':
    'Raideur de la liaison que demande une fréquence de résonance, fixation comprise.',
  'Mounted resonance needed.': 'Fréquence de résonance demandée, fixation comprise.',
  'Axial stiffness of a thin adhesive layer.': 'Raideur axiale d’une mince couche de colle.',
  'Elastic modulus of the layer.': 'Module d’élasticité de la couche.',
  'Area of the joint.': 'Aire de la liaison.',
  'Thickness of the layer.': 'Épaisseur de la couche.',
  'Axial stiffness.': 'Raideur axiale.',
  'Thickest adhesive layer that keeps a joint stiffness.':
    'Plus épaisse couche de colle qui respecte une raideur de la liaison.',
  'Supply current that drives a cable at the upper band edge and the expected peak.':
    'Courant d’alimentation qui charge la capacité d’un câble à la borne supérieure de la bande et à la crête attendue.',
  'Longest cable that an IEPE supply drives at the upper band edge and the expected peak.':
    'Plus long câble dont une alimentation IEPE charge la capacité à la borne supérieure de la bande et à la crête attendue.',
  'Sensitivity that a charge amplifier loses to the capacitance at its input.':
    'Sensibilité que perd un amplificateur de charge à cause de la capacité à son entrée.',
  'Capacitance of sensor and cable.': 'Capacité du capteur et du câble.',
  'Open-loop gain of the amplifier.': 'Gain en boucle ouverte de l’amplificateur.',
  'Feedback capacitance.': 'Capacité de contre-réaction.',
  'Loss of sensitivity.': 'Perte de sensibilité.',
  'Capacitance at which a charge amplifier loses a share of its sensitivity.':
    'Capacité pour laquelle un amplificateur de charge perd une part de sa sensibilité.',
  'Loss of sensitivity allowed.': 'Perte de sensibilité admise.',
  'Low-pass corner that a series resistance makes with a cable.':
    'Fréquence de coupure passe-bas qu’une résistance en série forme avec un câble.',
  'Series resistance.': 'Résistance en série.',
  'Capacitance of the cable.': 'Capacité du câble.',
  'Voltage sensitivity of a piezoelectric sensor without built-in electronics on its cable.':
    'Sensibilité en tension, sur son câble, d’un capteur piézoélectrique sans électronique intégrée.',
  'Charge sensitivity.': 'Sensibilité en charge.',
  'Voltage sensitivity.': 'Sensibilité en tension.',
  'Highest frequency an analyser measures without aliasing.':
    'Plus haute fréquence qu’un analyseur mesure sans repliement.',
  'Sample rate.': 'Fréquence d’échantillonnage.',
  'Sample rate for an upper band edge.': 'Fréquence d’échantillonnage pour une borne supérieure de bande.',
  'Sample rate; take the next one above.': 'Fréquence d’échantillonnage ; prendre la valeur immédiatement supérieure.',
  'Length of a record that gives a line spacing.': 'Durée d’un bloc de mesure qui donne un pas en fréquence.',
  'Length of one record.': 'Durée d’un bloc de mesure.',
  'Line spacing of a record.': 'Pas en fréquence d’un bloc de mesure.',
  'Phase that a delay between two channels makes.': 'Phase que crée un retard entre deux voies.',
  'Frequency.': 'Fréquence.',
  'Delay between the channels.': 'Retard entre les voies.',
  'Phase difference.': 'Différence de phase.',
  'Delay between two channels that keeps a phase.': 'Retard entre deux voies qui respecte une phase.',
  'Largest phase difference.': 'Plus grande différence de phase.',
  'Delay.': 'Retard.',
  'Error that the low end makes in a half-sine shock pulse.':
    'Erreur que le bas de la bande fait sur un choc demi-sinus.',
  'Discharge time constant of the slowest pole.': 'Constante de temps de décharge du pôle le plus lent.',
  'Duration of the half-sine pulse.': 'Durée du choc demi-sinus.',
  'Error of the peak, undershoot after the pulse, or error of the velocity change.':
    'Erreur de la crête (peak), dépassement négatif après le choc (undershoot), ou erreur de la variation de vitesse (velocity).',
  'Of the pulse’s height or velocity change; negative reads low.':
    'De la hauteur du choc ou de sa variation de vitesse ; négatif : lecture trop faible.',
  'Time constant that keeps the low-end error of a half-sine shock pulse.':
    'Constante de temps qui limite l’erreur du bas de la bande sur un choc demi-sinus.',
  'Largest error, as a positive number.': 'Plus grande erreur, en nombre positif.',
  'Error that the resonance makes in the peak of a half-sine shock pulse.':
    'Erreur que la résonance fait sur la crête d’un choc demi-sinus.',
  'Of the pulse’s height; positive reads high.': 'De la hauteur du choc ; positif : lecture trop forte.',
  'Mounted resonance from which on the peak of a half-sine shock pulse stays within an error.':
    'Fréquence de résonance, fixation comprise, à partir de laquelle la crête d’un choc demi-sinus reste dans une erreur.',
  'Largest error of the peak, as a positive number.': 'Plus grande erreur de la crête, en nombre positif.',
  'Shortest half-sine shock pulse that a resonance follows.': 'Plus court choc demi-sinus qu’une résonance suit.',
  'Turns of the resonance per pulse.': 'Périodes de la résonance par choc.',
  'Duration of the pulse.': 'Durée du choc.',
  'Table of how far the usual mounts reach, for a sensor of a given mass.':
    'Tableau de la portée des fixations usuelles, pour un capteur de masse donnée.',
  'A heading row, then one row for each mount.': 'Une ligne d’en-tête, puis une ligne par fixation.',
  'Table of a channel’s response over frequency: deviation from the reference, and phase.':
    'Tableau de la réponse d’une voie en fréquence : écart par rapport à la référence, et phase.',
  'First frequency.': 'Première fréquence.',
  'Last frequency.': 'Dernière fréquence.',
  'A heading row, then frequency in Hz, deviation in % and phase in degrees.':
    'Une ligne d’en-tête, puis fréquence en Hz, écart en % et phase en degrés.',
  'What limits each end of the usable span, in words.':
    'Ce qui limite chaque bout de la plage utilisable, en toutes lettres.',
  'Low end: nothing, sensor, charge amplifier, AC coupling, response. High end: response, analyser, cable drive, data sheet.':
    'Bout inférieur : nothing (rien), sensor (capteur), charge amplifier (amplificateur de charge), AC coupling (couplage AC), response (réponse). Bout supérieur : response, analyser (analyseur), cable drive (courant dans le câble), data sheet (fiche technique).',
};
