import type { AcrossFinding } from './finding';
import { ratioAgainst, withUnit } from './numbers-in-words';
import type { Sentences } from './sentence';
import { because, from } from './sentence-parts';

export const ACROSS_SENTENCES: Sentences<AcrossFinding> = {
  'added masses': (f) => {
    const what = `${f.housings} sensors together at ${f.place}`;
    if (f.number === undefined) return `${what}: not known how much they load it, a mass is missing.`;
    const [number, limit] = ratioAgainst(f.number, f.limit);
    const masses =
      f.total === undefined || f.localMass === undefined
        ? undefined
        : `${withUnit(f.total, 'gram')} on ${withUnit(f.localMass, 'gram')}, at most ${withUnit(f.limit * f.localMass, 'gram')} in all would stay within`;
    const least = f.isBound ? 'at least ' : '';
    return `Mass ratio ${least}${number} of ${what}, limit ${limit}${from(f.origin)}${because(f, masses)}`;
  },
  'control count': ({ group }) =>
    `1 control channel${group === '' ? '' : ` in ${group}`}: if it is lost the controller drives harder; a second, independent one would help.`,
  'control verdict': ({ channel, verdict }) =>
    `Control channel ${channel} is ${verdict}: a wrong control reading drives the article too hard; resolve it before the run.`,
  'same channel': ({ channel, number }) =>
    `${number} rows are called channel ${channel}: each needs a name of its own.`,
  'same direction': ({ point, direction, channels }) =>
    `${channels.length} channels (${channels.join(', ')}) measure point ${point} in direction ${direction}: keep them only if that is meant.`,
};
