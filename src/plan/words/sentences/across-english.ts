import { dateText } from '../../json-date';
import type { RowsTogether } from '../../sentence';

const AXES_PROBLEM = {
  unreadable: 'is neither turns such as "Z30 Y-10" nor nine direction cosines; it counts as not known',
  'left-handed': 'is a left-handed set (determinant −1) and no rotation; one axis has the wrong sign',
  'not at right angles': 'is no rotation: its axes are not three unit vectors at right angles',
} as const;
const MEANT = 'if they are not measured together, give their runs';

export const ENGLISH_TOGETHER: RowsTogether = {
  'same direction': ({ point, direction, channels }) =>
    `${channels.length} channels (${channels.join(', ')}) measure point ${point} along one line (${direction}): keep them only if that is meant.`,
  'other point': ({ channel, point, direction }) =>
    `Channel ${channel} stands at point ${point}, but its direction ${direction} names another point: correct one of them.`,
  'local axes': ({ channel, text, problem }) =>
    `Local axes "${text}" of channel ${channel}: this ${AXES_PROBLEM[problem]}.`,
  'housing axes': ({ sensor, point, axes, number, housings, directions, problem }) => {
    const rows = `${number} of ${axes * housings} axes of ${sensor} at point ${point} (${directions.join(', ')})`;
    if (problem === 'twice') return `${rows}: one housing cannot measure along one line twice.`;
    return problem === 'missing'
      ? `${rows} planned: add the missing ones, or say that they stay open.`
      : `${rows}: a direction is missing, so it is not known whether all axes differ.`;
  },
  handedness: ({ sensor, point, directions, problem }) => {
    const set = `Axes ${directions} of ${sensor} at point ${point}`;
    if (problem === 'not at right angles') return `${set} are not at right angles, those of one housing are.`;
    return problem === 'left-handed'
      ? `${set} are a left-handed set in the order of its own axes, so it cannot lie like that: a sign is wrong or two axes are exchanged.`
      : `${set} are a left-handed set: a right-handed sensor gives them only with two of its axes exchanged; note the sensor axes, or correct a sign.`;
  },
  'same input channel': ({ inputChannel, channels, verdict }) =>
    `Input channel ${inputChannel} takes ${channels.length} channels (${channels.join(', ')}): it has room for one${verdict === 'WARN' ? `; ${MEANT}` : ''}.`,
  'same sensor': ({ sensor, axes, points, channels, verdict }) => {
    const where = points.length > 1 ? ` at points ${points.join(', ')}` : '';
    const rows = `Sensor ${sensor} is planned for ${channels.length} channels${where} (${channels.join(', ')})`;
    if (verdict === 'INCOMPLETE') return `${rows}: not known whether it has so many axes.`;
    const room =
      axes === undefined ? 'it is one housing' : `it is one housing with ${axes === 1 ? '1 axis' : `${axes} axes`}`;
    return `${rows}: ${room}${verdict === 'WARN' ? `; ${MEANT}` : ''}.`;
  },
  'piece of another type': ({ serial, type, listed, channels }) =>
    `${channels.length === 1 ? 'Channel' : 'Channels'} ${channels.join(', ')}: planned with ${type}, but serial number ${serial} is a ${listed} in the sensor list: correct the type or the number.`,
  'overlapping runs': ({ sensor, runs, number, from, verdict }) =>
    verdict === 'WARN'
      ? `Sensor ${sensor} is used in ${runs[0] || 'the rows without a run'} and ${runs[1]}, which meet on ${dateText(from)}: leave time to move it.`
      : `Sensor ${sensor} is used in ${runs[0] || 'the rows without a run'} and ${runs[1]}, which share ${number} days from ${dateText(from)}: it cannot be in both.`,
  'calibration due': ({ sensor, run, number, limit, verdict }) => {
    const when = `Calibration of ${sensor} is due on ${dateText(number)}, before ${run === '' ? 'the test' : run}`;
    return verdict === 'FAIL'
      ? `${when} begins on ${dateText(limit)}: calibrate it before, or take another.`
      : `${when} ends on ${dateText(limit)}: calibrate it before, or check it after.`;
  },
  'input modules': ({ mode, run, number, limit, modules, moduleSize, verdict }) => {
    const more =
      modules === undefined
        ? 'more modules'
        : `${modules} more ${modules === 1 ? 'module' : 'modules'} of ${moduleSize}`;
    return `${number} channels need ${mode} input${run === '' ? '' : ` in ${run}`}, the modules have ${limit}: ${more} or fewer channels would help${verdict === 'WARN' ? `; ${MEANT}` : ''}.`;
  },
};
