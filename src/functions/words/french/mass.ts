import type { Translations } from '../wording';

export const mass: Translations = {
  'Mass-loading ratio: everything added at the point over the local effective mass there.':
    'Rapport de charge massique : tout ce qui est ajouté au point, sur la masse effective locale.',
  'Mount hardware and adhesive.': 'Pièces de fixation et colle.',
  'Effective mass of the cable.': 'Masse effective du câble.',
  'Local effective mass at the point, in its direction, at the highest frequency of interest.':
    'Masse effective locale au point, dans sa direction, à la plus haute fréquence utile.',
  'Added mass over local mass.': 'Masse ajoutée sur masse locale.',
  'Change of a natural frequency that an added mass causes.':
    'Changement d’une fréquence propre dû à une masse ajoutée.',
  'Mass-loading ratio with the modal local mass.': 'Rapport de charge massique avec la masse modale locale.',
  'Change of the natural frequency; negative is a drop.': 'Changement de la fréquence propre ; négatif : baisse.',
  'Change of the measured level that an added mass causes.': 'Changement du niveau mesuré dû à une masse ajoutée.',
  'Mass-loading ratio.': 'Rapport de charge massique.',
  'What the local mass stands for: a mode or rigid part, a large plate, a long beam.':
    'Ce que représente la masse locale : mass pour un mode ou une pièce rigide, plate pour une grande plaque, beam pour une longue poutre.',
  'Change of the level; negative is a drop.': 'Changement du niveau ; négatif : baisse.',
  'Heaviest sensor that keeps a mass-loading ratio; negative when no contact sensor fits.':
    'Capteur le plus lourd qui respecte un rapport de charge massique ; négatif si aucun capteur à contact ne convient.',
  'Local effective mass at the point.': 'Masse effective locale au point.',
  'Largest mass-loading ratio accepted.': 'Plus grand rapport de charge massique accepté.',
  'Allowed sensor mass. Negative: measure without contact or elsewhere.':
    'Masse de capteur admise. Négative : mesurer sans contact ou ailleurs.',
  'Local effective mass of a large thin plate or skin at a frequency.':
    'Masse effective locale d’une grande plaque ou peau mince à une fréquence.',
  'Highest frequency of interest.': 'Plus haute fréquence utile.',
  'Thickness of the plate.': 'Épaisseur de la plaque.',
  'Young’s modulus.': 'Module d’Young.',
  'Density.': 'Masse volumique.',
  'Poisson’s ratio.': 'Coefficient de Poisson.',
  'Modulus of the local effective mass; falls with frequency.':
    'Module de la masse effective locale ; décroît avec la fréquence.',
  'Local effective mass at a frequency from a known point impedance.':
    'Masse effective locale à une fréquence à partir d’une impédance connue au point.',
  'Driving-point impedance, force over velocity, at that frequency.':
    'Impédance au point d’excitation, force sur vitesse, à cette fréquence.',
  'Modulus of the local effective mass.': 'Module de la masse effective locale.',
  'Change of the phase that an added mass causes.': 'Changement de phase dû à une masse ajoutée.',
  'Change of the phase; negative is a lag.': 'Changement de phase ; négatif : retard.',
  'Largest mass-loading ratio that keeps a drop of frequency or level.':
    'Plus grand rapport de charge massique qui limite une baisse de fréquence ou de niveau.',
  'Largest drop accepted, as a positive number.': 'Plus forte baisse acceptée, en nombre positif.',
  'Which drop is limited.':
    'Quelle baisse est limitée : celle de la fréquence propre (frequency) ou celle du niveau (level).',
  'Largest mass-loading ratio.': 'Plus grand rapport de charge massique.',
  'Smallest local mass that takes a sensor within a mass-loading ratio.':
    'Plus petite masse locale qui porte un capteur dans un rapport de charge massique.',
  'Smallest local effective mass.': 'Plus petite masse effective locale.',
  'Local effective mass of a long beam in bending at a frequency.':
    'Masse effective locale d’une longue poutre en flexion à une fréquence.',
  'Bending stiffness in the direction of motion.': 'Raideur de flexion dans la direction du mouvement.',
  'Mass per length.': 'Masse linéique.',
  'Far from both ends, or at the free end.': 'Loin des deux bouts (interior), ou au bout libre (end).',
  'Point impedance of a large thin plate, the same at every frequency.':
    'Impédance au point d’une grande plaque mince, la même à toute fréquence.',
  'Driving-point impedance, real.': 'Impédance au point d’excitation, réelle.',
  'Modulus of the point impedance of a long beam in bending.':
    'Module de l’impédance au point d’une longue poutre en flexion.',
  'Modulus of the driving-point impedance; its argument is 45°.':
    'Module de l’impédance au point d’excitation ; son argument est de 45°.',
  'Frequency up to which an added mass keeps a mass-loading ratio on a large plate.':
    'Fréquence jusqu’à laquelle une masse ajoutée respecte un rapport de charge massique sur une grande plaque.',
  'Point impedance of the plate.': 'Impédance au point de la plaque.',
  'Sensor, mount and cable together.': 'Capteur, fixation et câble ensemble.',
  'Highest frequency.': 'Plus haute fréquence.',
  'Local effective mass from modal masses and mode shapes; of several modes the smallest.':
    'Masse effective locale à partir des masses modales et des déformées ; de plusieurs modes, la plus petite.',
  'Modal mass of each mode in the band.': 'Masse modale de chaque mode de la bande.',
  'Mode shape at the point, along the sensor’s axis, in the scaling of the modal mass.':
    'Déformée modale au point, selon l’axe du capteur, dans la normalisation de la masse modale.',
  'Smallest modal local mass.': 'Plus petite masse modale locale.',
  'Local effective mass of a free rigid part at a point off its centre of mass.':
    'Masse effective locale d’une pièce rigide libre en un point écarté de son centre d’inertie.',
  'Mass of the part.': 'Masse de la pièce.',
  'Moment of inertia about the centre of mass, for the tilt that the sensor’s axis causes.':
    'Moment d’inertie autour du centre d’inertie, pour le basculement que provoque l’axe du capteur.',
  'Distance of the sensor’s axis from the centre of mass.': 'Distance de l’axe du capteur au centre d’inertie.',
  'Local effective mass.': 'Masse effective locale.',
  'Mass-loading ratio of several units on one panel, beam or point.':
    'Rapport de charge massique de plusieurs unités sur un panneau, une poutre ou un point.',
  'Sensor, mount and cable of each unit together.': 'Capteur, fixation et câble de chaque unité ensemble.',
  'Modal mass of the panel, or the local mass when all units sit at one point.':
    'Masse modale du panneau, ou la masse locale si toutes les unités sont en un point.',
  'Mode shape at each unit, in the scaling of the modal mass; blank: all 1.':
    'Déformée modale à chaque unité, dans la normalisation de la masse modale ; vide : toutes à 1.',
  'Summed mass-loading ratio.': 'Somme des rapports de charge massique.',
  'How many units, spread evenly, a beam or panel takes within a mass-loading ratio.':
    'Combien d’unités réparties également une poutre ou un panneau porte dans un rapport de charge massique.',
  'Mass of the whole beam or panel.': 'Masse de toute la poutre ou de tout le panneau.',
  'Largest summed mass-loading ratio.': 'Plus grande somme des rapports de charge massique.',
  'Sensor, mount and cable of one unit together.': 'Capteur, fixation et câble d’une unité ensemble.',
  'Number of units.': 'Nombre d’unités.',
  'Spread of a natural frequency over the runs when one sensor roves across a structure.':
    'Dispersion d’une fréquence propre entre les mesures quand un capteur se déplace sur une structure.',
  'Mass-loading ratio at the antinode.': 'Rapport de charge massique au ventre.',
  'Largest difference between two runs.': 'Plus grande différence entre deux mesures.',
  'Heaviest second sensor of a low-and-high pair at one point; negative when it does not fit.':
    'Second capteur le plus lourd d’une paire bande basse et bande haute en un point ; négatif s’il ne convient pas.',
  'Local effective mass at the higher of both bands.': 'Masse effective locale à la plus haute des deux bandes.',
  'First sensor with its mount and cable.': 'Premier capteur avec sa fixation et son câble.',
  'Mount of the second sensor.': 'Fixation du second capteur.',
  'Effective cable mass of the second sensor.': 'Masse effective du câble du second capteur.',
  'Allowed mass of the second sensor.': 'Masse admise du second capteur.',
  'Change of the level at the old peak when a lightly damped mode moves.':
    'Changement du niveau à l’ancien pic quand un mode peu amorti se déplace.',
  'Relative shift of the mode, either sign.': 'Déplacement relatif du mode, signe indifférent.',
  'Damping ratio of the mode.': 'Taux d’amortissement du mode.',
  'Change of the level at the old peak; negative.': 'Changement du niveau à l’ancien pic ; négatif.',
  'Largest shift of a lightly damped mode that keeps the level at its old peak.':
    'Plus grand déplacement d’un mode peu amorti qui garde le niveau à son ancien pic.',
  'Largest relative shift, either way.': 'Plus grand déplacement relatif, dans un sens ou dans l’autre.',
  'Rotary effect of a tall unit on bending waves, over its translational effect.':
    'Effet rotatif d’une unité haute sur les ondes de flexion, rapporté à son effet de translation.',
  'Bending wavelength of the structure at the highest frequency.':
    'Longueur d’onde de flexion de la structure à la plus haute fréquence.',
  'Height of the centre of mass above the surface.': 'Hauteur du centre d’inertie au-dessus de la surface.',
  'Radius of gyration about its own centre, √(J/m).': 'Rayon de giration autour de son propre centre, √(J/m).',
  'Rotary over translational effect.': 'Effet rotatif sur effet de translation.',
  'Largest height of a unit’s centre of mass that keeps its rotary effect.':
    'Plus grande hauteur du centre d’inertie d’une unité qui limite son effet rotatif.',
  'Rotary effect accepted.': 'Effet rotatif accepté.',
  'Height above the surface, radius of gyration included.':
    'Hauteur au-dessus de la surface, rayon de giration compris.',
  'Bending wavelength of a thin plate.': 'Longueur d’onde de flexion d’une plaque mince.',
  'Bending wavelength.': 'Longueur d’onde de flexion.',
  'Bending wavelength of a slender beam.': 'Longueur d’onde de flexion d’une poutre élancée.',
  'Modes per hertz of a thin panel.': 'Modes par hertz d’un panneau mince.',
  'Length of the panel.': 'Longueur du panneau.',
  'Width of the panel.': 'Largeur du panneau.',
  'Modal density, the same at every frequency.': 'Densité modale, la même à toute fréquence.',
  'How many modes of a simply supported panel lie up to a frequency.':
    'Combien de modes d’un panneau simplement appuyé se trouvent jusqu’à une fréquence.',
  'Number of modes.': 'Nombre de modes.',
  'How far lightly damped resonances of a panel stand above the plate average.':
    'De combien les résonances peu amorties d’un panneau dépassent la moyenne de la plaque.',
  'Frequency of interest.': 'Fréquence utile.',
  'Modal density of the panel.': 'Densité modale du panneau.',
  'Damping ratio, half the loss factor.': 'Taux d’amortissement, moitié du facteur de perte.',
  'Peak over mean of the mobility; the local mass at a peak is smaller by it.':
    'Pic sur moyenne de la mobilité ; la masse locale au pic est plus petite de ce facteur.',
  'Effective mass of a cable at the sensor.': 'Masse effective d’un câble au capteur.',
  'Free length from the sensor to the first tie.': 'Longueur libre du capteur à la première attache.',
  'Mass of the cable per length.': 'Masse linéique du câble.',
  'Effective mass.': 'Masse effective.',
  'Longest free length of a cable that keeps its effective mass.':
    'Plus grande longueur libre d’un câble qui limite sa masse effective.',
  'Effective mass that may be used.': 'Masse effective disponible.',
  'Free length to the first tie.': 'Longueur libre jusqu’à la première attache.',
  'Stiffness that a free cable length adds at the sensor.': 'Raideur qu’une longueur libre de câble ajoute au capteur.',
  'Bending stiffness of the cable.': 'Raideur de flexion du câble.',
  'Stiffness.': 'Raideur.',
  'Rise of a natural frequency by the stiffness of a cable.':
    'Hausse d’une fréquence propre due à la raideur d’un câble.',
  'Stiffness of the cable.': 'Raideur du câble.',
  'Local mass of the mode at the point.': 'Masse locale du mode au point.',
  'Natural frequency.': 'Fréquence propre.',
  'Change of the frequency; positive.': 'Changement de la fréquence ; positif.',
  'Shortest free length of a cable that keeps its effect on a natural frequency.':
    'Plus petite longueur libre d’un câble qui limite son effet sur une fréquence propre.',
  'Largest rise of the frequency accepted.': 'Plus forte hausse de fréquence acceptée.',
  'Inertia force that a mount must hold.': 'Force d’inertie qu’une fixation doit tenir.',
  'Sensor with everything that hangs on the joint.': 'Capteur avec tout ce qui est porté par la liaison.',
  'Highest peak along the axis.': 'Plus forte crête selon l’axe.',
  'Highest peak across the axis.': 'Plus forte crête en travers de l’axe.',
  'Force on the joint.': 'Force sur la liaison.',
  'How many times the force a mount holds.': 'Combien de fois une fixation tient la force.',
  'Force at which the joint lets go.': 'Force à laquelle la liaison lâche.',
  'Inertia force on the joint.': 'Force d’inertie sur la liaison.',
  'Holding force over inertia force.': 'Force de tenue sur force d’inertie.',
  'Highest level that a mount holds with a reserve.': 'Plus fort niveau qu’une fixation tient avec une réserve.',
  'Highest peak of the whole acceleration.': 'Plus forte crête de l’accélération totale.',
  'Mean stress in a joint under the inertia force.': 'Contrainte moyenne dans une liaison sous la force d’inertie.',
  'Bonded or clamped area.': 'Aire collée ou serrée.',
  'Mean stress.': 'Contrainte moyenne.',
  'Exact change of the first natural frequency of a beam with a point mass.':
    'Changement exact de la première fréquence propre d’une poutre portant une masse ponctuelle.',
  'Added mass over the mass of the whole beam.': 'Masse ajoutée sur masse de toute la poutre.',
  'Which beam, and where the mass sits.':
    'Quelle poutre, et où se trouve la masse : console avec masse au bout, ou poutre sur deux appuis avec masse au milieu.',
  'Change of the first natural frequency; negative.': 'Changement de la première fréquence propre ; négatif.',
  'Smallest local effective mass in a band, from a measured driving-point response.':
    'Plus petite masse effective locale dans une bande, à partir d’une réponse mesurée au point d’excitation.',
  'Frequency in Hz and the measured response, two or three columns; a heading row is passed over.':
    'Fréquence en Hz et fonction de réponse mesurée, deux ou trois colonnes ; une ligne d’en-tête est sautée.',
  'Lower edge of the band, or both as a range text.':
    'Borne inférieure de la bande, ou les deux sous forme de texte de plage.',
  'Upper edge of the band.': 'Borne supérieure de la bande.',
  'What was measured, in SI: (m/s²)/N, (m/s)/N, m/N, kg, N·s/m or N/m.':
    'Ce qui a été mesuré, en SI, dans l’ordre : (m/s²)/N, (m/s)/N, m/N, kg, N·s/m ou N/m.',
  'What the columns hold; dB re 1 SI unit, phase in degrees.':
    'Ce que contiennent les colonnes ; dB rapportés à 1 unité SI, phase en degrés.',
  'Smallest local effective mass from the low to the high edge.':
    'Plus petite masse effective locale entre les bornes inférieure et supérieure.',
  'Exact change of the level by an added mass, smallest and largest over a band, from a free driving-point response.':
    'Changement exact du niveau par une masse ajoutée, le plus petit et le plus grand dans une bande, à partir d’une réponse libre au point d’excitation.',
  'Largest drop, or smallest rise, in the band.': 'Plus forte baisse, ou plus faible hausse, dans la bande.',
  'Largest rise in the band: just below a resonance the level goes up.':
    'Plus forte hausse dans la bande : juste sous une résonance, le niveau monte.',
  'A measured response with the sensor’s mass taken off again, line by line.':
    'Une fonction de réponse mesurée dont la masse du capteur est retirée, raie par raie.',
  'Mass to take off: sensor, mount and cable together.': 'Masse à retirer : capteur, fixation et câble ensemble.',
  'For a transfer response: the measured driving-point response at the mass, same lines, quantity and form.':
    'Pour une réponse de transfert : la réponse mesurée au point d’excitation à l’endroit de la masse, avec les mêmes raies, grandeur et forme.',
  'Frequency and the corrected response, in the columns of the given form.':
    'Fréquence et fonction de réponse corrigée, dans les colonnes de la forme donnée.',
  'A free response as it will be measured with the sensor’s mass on, line by line.':
    'Une fonction de réponse libre telle qu’elle sera mesurée avec la masse du capteur, raie par raie.',
  'Mass to put on: sensor, mount and cable together.': 'Masse à poser : capteur, fixation et câble ensemble.',
  'For a transfer response: the free driving-point response at the mass, same lines, quantity and form.':
    'Pour une réponse de transfert : la réponse libre au point d’excitation à l’endroit de la masse, avec les mêmes raies, grandeur et forme.',
  'Frequency and the loaded response, in the columns of the given form.':
    'Fréquence et fonction de réponse chargée, dans les colonnes de la forme donnée.',
  'Local effective mass at a frequency from a list of modes, with its phase.':
    'Masse effective locale à une fréquence à partir d’une liste de modes, avec sa phase.',
  'Natural frequencies; 0 for a rigid-body mode.': 'Fréquences propres ; 0 pour un mode de corps rigide.',
  'Modal mass of each mode.': 'Masse modale de chaque mode.',
  'Mode shape at the point, along the axis, in the scaling of the modal mass.':
    'Déformée modale au point, selon l’axe, dans la normalisation de la masse modale.',
  'Damping ratio of all modes.': 'Taux d’amortissement de tous les modes.',
  'Its phase: 0 mass-like, 180 spring-like.': 'Sa phase : 0 comme une masse, 180 comme un ressort.',
  'Natural frequencies with a mass added at the point, exact for the listed modes.':
    'Fréquences propres avec une masse ajoutée au point, exactes pour les modes de la liste.',
  'Natural frequencies in Hz, rising, one below the other.':
    'Fréquences propres en Hz, croissantes, l’une sous l’autre.',
  'Exact change of the level at one frequency from the complex local mass.':
    'Changement exact du niveau à une fréquence à partir de la masse locale complexe.',
  'Its phase: 0 mass-like, 90 damper-like, 180 spring-like.':
    'Sa phase : 0 comme une masse, 90 comme un amortisseur, 180 comme un ressort.',
  'Change of the level; positive where the unit brings a resonance nearer.':
    'Changement du niveau ; positif là où l’unité rapproche une résonance.',
  'Heaviest sensor that keeps the level within a tolerance, from the complex local mass.':
    'Capteur le plus lourd qui garde le niveau dans une tolérance, à partir de la masse locale complexe.',
  'Largest change of the level either way.': 'Plus grand changement du niveau, dans un sens ou dans l’autre.',
  'Local effective mass of a uniform beam or plate in one mode.':
    'Masse effective locale d’une poutre ou d’une plaque uniforme dans un mode.',
  'Mass of the whole beam or plate.': 'Masse de toute la poutre ou de toute la plaque.',
  'Which member, by its supports.':
    'Pièce selon ses appuis ; cantilever : console, clamped : encastré, supported, pinned : appuyé, plate : plaque.',
  'Number of the mode, 1 the lowest.': 'Numéro du mode, 1 pour le plus bas.',
  'Position over the length from the first-named end, or radius over the rim’s; blank: where it moves most.':
    'Position sur la longueur depuis le bout nommé en premier, ou rayon sur celui du bord ; vide : là où le mouvement est le plus grand.',
  'Rectangular plate: number of half waves across.': 'Plaque rectangulaire : nombre de demi-ondes en travers.',
  'Rectangular plate: position over the width; blank: where it moves most.':
    'Plaque rectangulaire : position sur la largeur ; vide : là où le mouvement est le plus grand.',
  'Local effective mass in this mode.': 'Masse effective locale dans ce mode.',
  'The smallest of several estimates of the local mass, with its name.':
    'La plus petite de plusieurs estimations de la masse locale, avec son nom.',
  'Two columns: name of the estimate, local mass in gram. Empty rows are passed over; a name without a mass is missing.':
    'Deux colonnes : nom de l’estimation, masse locale en grammes. Les lignes vides sont sautées ; un nom sans masse compte comme manquant.',
  'One row: local mass in gram, name of the estimate that gave it.':
    'Une ligne : masse locale en grammes, nom de l’estimation dont elle vient.',
};
