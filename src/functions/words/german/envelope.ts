import type { Translations } from '../wording';

export const envelope: Translations = {
  'What a sensor must satisfy at each row of a channel list: every bound with what asks for it.':
    'Was ein Aufnehmer in jeder Zeile einer Kanalliste erfüllen muss: jede Grenze mit dem, was sie fordert.',
  'The sensor list with its heading row, to put the sensor that a row names beside its bounds.':
    'Die Aufnehmerliste mit ihrer Kopfzeile, um den Aufnehmer, den eine Zeile nennt, neben seine Grenzen zu stellen.',
  'The input list with its heading row; for a row that names no input, all of them are at hand.':
    'Die Eingangsliste mit ihrer Kopfzeile; für eine Zeile, die keinen Eingang nennt, gelten alle als verfügbar.',
  'Names of the bounds to show, separated by semicolons; blank: all.':
    'Englische Namen der Grenzen, die gezeigt werden, durch Semikolon getrennt; leer: alle.',
  'A heading row and one row for each bound of each channel. A bound that is not known names the fields it lacks.':
    'Eine Kopfzeile und je Grenze jedes Kanals eine Zeile. Eine Grenze, die nicht bekannt ist, nennt die Felder, die ihr fehlen.',
  'Which sensing elements and outputs stay admissible at each row of a channel list, and why the others fall.':
    'Welche Wandlerelemente und Ausgänge in jeder Zeile einer Kanalliste zulässig bleiben, und warum die anderen ausscheiden.',
  'What else holds, separated by semicolons: hard impact, integrated, several earths, immersion, vacuum, radiation, explosive atmosphere, magnetic field.':
    'Was sonst gilt, mit Semikolon: hard impact (harter Stoß), integrated, several earths (mehrere Erden), immersion (unter Wasser), vacuum, radiation (Strahlung), explosive atmosphere (explosionsfähig), magnetic field (Magnetfeld).',
  'Directions measured at the point.': 'Richtungen, die an dem Punkt gemessen werden.',
  'Duration of a single shock.': 'Dauer eines einzelnen Stoßes.',
  'Rate at which the temperature changes.': 'Geschwindigkeit, mit der sich die Temperatur ändert.',
  'Names of the elements and outputs to show, separated by semicolons; blank: all.':
    'Englische Namen der Elemente und Ausgänge, die gezeigt werden, durch Semikolon getrennt; leer: alle.',
  'A heading row; for each kind one row, or one for each reason against it, with its mark; then notes.':
    'Eine Kopfzeile; je Bauart eine Zeile oder eine für jeden Grund, der gegen sie spricht, mit seiner Herkunft; danach Hinweise.',
};
