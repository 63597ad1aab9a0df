import { dateText } from '../../json-date';
import type { RowsTogether } from '../../sentence';

const AXES_PROBLEM = {
  unreadable: 'das sind weder Drehungen wie „Z30 Y-10“ noch neun Richtungskosinus; es gilt als nicht bekannt',
  'left-handed': 'das ist ein Linkssystem (Determinante −1) und keine Drehung; eine Achse hat das falsche Vorzeichen',
  'not at right angles': 'das ist keine Drehung: die Achsen sind nicht drei Einheitsvektoren im rechten Winkel',
} as const;
const MEANT = 'wird nicht gleichzeitig gemessen, so sind die Läufe anzugeben';
const withoutRun = 'den Zeilen ohne Lauf';

export const GERMAN_TOGETHER: RowsTogether = {
  'same direction': ({ point, direction, channels }) =>
    `${channels.length} Kanäle (${channels.join(', ')}) messen Punkt ${point} auf einer Linie (${direction}): nur so lassen, wenn das gemeint ist.`,
  'other point': ({ channel, point, direction }) =>
    `Kanal ${channel} steht an Punkt ${point}, seine Richtung ${direction} nennt aber einen anderen: eines von beiden berichtigen.`,
  'local axes': ({ channel, text, problem }) =>
    `Örtliche Achsen „${text}“ von Kanal ${channel}: ${AXES_PROBLEM[problem]}.`,
  'housing axes': ({ sensor, point, axes, number, housings, directions, problem }) => {
    const rows = `${number} von ${axes * housings} Achsen von ${sensor} an Punkt ${point} (${directions.join(', ')})`;
    if (problem === 'twice') return `${rows}: ein Gehäuse kann nicht zweimal auf einer Linie messen.`;
    return problem === 'missing'
      ? `${rows} geplant: die fehlenden ergänzen oder sagen, dass sie offen bleiben.`
      : `${rows}: eine Richtung fehlt, daher ist nicht bekannt, ob alle Achsen verschieden sind.`;
  },
  handedness: ({ sensor, point, directions, problem }) => {
    const set = `Die Achsen ${directions} von ${sensor} an Punkt ${point}`;
    if (problem === 'not at right angles')
      return `${set} stehen nicht im rechten Winkel, die eines Gehäuses aber schon.`;
    return problem === 'left-handed'
      ? `${set} sind in der Reihenfolge der Aufnehmerachsen ein Linkssystem, so kann er nicht sitzen: ein Vorzeichen ist falsch oder zwei Achsen sind vertauscht.`
      : `${set} sind ein Linkssystem: ein rechtshändiger Aufnehmer gibt sie nur mit zwei vertauschten Achsen; die Aufnehmerachsen angeben oder ein Vorzeichen berichtigen.`;
  },
  'same input channel': ({ inputChannel, channels, verdict }) =>
    `Eingangskanal ${inputChannel} nimmt ${channels.length} Kanäle auf (${channels.join(', ')}): er hat Platz für einen${verdict === 'WARN' ? `; ${MEANT}` : ''}.`,
  'same sensor': ({ sensor, axes, points, channels, verdict }) => {
    const where = points.length > 1 ? ` an den Punkten ${points.join(', ')}` : '';
    const rows = `Aufnehmer ${sensor} ist für ${channels.length} Kanäle${where} vorgesehen (${channels.join(', ')})`;
    if (verdict === 'INCOMPLETE') return `${rows}: nicht bekannt, ob er so viele Achsen hat.`;
    const room =
      axes === undefined ? 'er ist ein Gehäuse' : `er ist ein Gehäuse mit ${axes === 1 ? '1 Achse' : `${axes} Achsen`}`;
    return `${rows}: ${room}${verdict === 'WARN' ? `; ${MEANT}` : ''}.`;
  },
  'piece of another type': ({ serial, type, listed, channels }) =>
    `${channels.length === 1 ? 'Kanal' : 'Kanäle'} ${channels.join(', ')}: geplant mit ${type}, die Seriennummer ${serial} gehört in der Aufnehmerliste aber zu ${listed}: Typ oder Nummer berichtigen.`,
  'overlapping runs': ({ sensor, runs, number, from, verdict }) =>
    verdict === 'WARN'
      ? `Aufnehmer ${sensor} ist in ${runs[0] || withoutRun} und ${runs[1]} vorgesehen, die sich am ${dateText(from)} treffen: Zeit zum Umsetzen lassen.`
      : `Aufnehmer ${sensor} ist in ${runs[0] || withoutRun} und ${runs[1]} vorgesehen, die ab ${dateText(from)} ${number} Tage teilen: er kann nicht in beiden sein.`,
  'calibration due': ({ sensor, run, number, limit, verdict }) => {
    const when = `Die Kalibrierung von ${sensor} ist am ${dateText(number)} fällig`;
    const what = run === '' ? 'der Versuch' : run;
    return verdict === 'FAIL'
      ? `${when}, bevor ${what} am ${dateText(limit)} beginnt: vorher kalibrieren oder einen anderen nehmen.`
      : `${when}, bevor ${what} am ${dateText(limit)} endet: vorher kalibrieren oder hinterher prüfen.`;
  },
  'input modules': ({ mode, run, number, limit, modules, moduleSize, verdict }) => {
    const more =
      modules === undefined
        ? 'mehr Module'
        : `${modules} ${modules === 1 ? 'Modul' : 'Module'} mit ${moduleSize} Kanälen mehr`;
    return `${number} Kanäle brauchen ${mode}-Eingänge${run === '' ? '' : ` in ${run}`}, die Module haben ${limit}: ${more} oder weniger Kanäle hülfen${verdict === 'WARN' ? `; ${MEANT}` : ''}.`;
  },
};
