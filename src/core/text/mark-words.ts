import type { Statistic } from '../issue';

/** What stands around a value: statistic, bound, tolerance, footnote marks, doubts. */
export interface Marks {
  statistic?: Statistic;
  bound?: 'at most' | 'at least';
  tolerance?: number;
  /** Two different statistics were written. */
  contradicts?: true;
  assumed: string[];
}
type Effect = (marks: Marks) => void;
const statistic =
  (value: Statistic): Effect =>
  (marks) => {
    if (marks.statistic !== undefined && marks.statistic !== value) marks.contradicts = true;
    marks.statistic = value;
  };
const bound =
  (value: 'at most' | 'at least'): Effect =>
  (marks) => {
    marks.bound = value;
    marks.assumed.push(`read as the bound itself (${value})`);
  };
const note =
  (text: string): Effect =>
  (marks) => {
    marks.assumed.push(text);
  };

export const LEADING: readonly (readonly [string, Effect])[] = [
  ['≤', bound('at most')],
  ['<', bound('at most')],
  ['≥', bound('at least')],
  ['>', bound('at least')],
  ['up to ', bound('at most')],
  ['at most ', bound('at most')],
  ['at least ', bound('at least')],
  ['max. ', bound('at most')],
  ['max ', bound('at most')],
  ['min. ', bound('at least')],
  ['min ', bound('at least')],
  ['~', note('approximate')],
  ['approx. ', note('approximate')],
  ['approx ', note('approximate')],
  ['about ', note('approximate')],
  ['ca. ', note('approximate')],
  ['ca ', note('approximate')],
  ['typ. ', note('typical value')],
  ['typ ', note('typical value')],
  ['peak ', statistic('peak')],
  ['pk ', statistic('peak')],
  ['rms ', statistic('rms')],
];
/** Longest first, so that "pk-pk" is not taken for "pk". Glued: may follow a unit without a space, as in "Vpp". */
export const TRAILING: readonly (readonly [string, Effect, 'glued' | 'apart' | 'mark'])[] = [
  ['peak-to-peak', statistic('peak-to-peak'), 'glued'],
  ['peak to peak', statistic('peak-to-peak'), 'glued'],
  ['zero-to-peak', statistic('peak'), 'glued'],
  ['peak-peak', statistic('peak-to-peak'), 'glued'],
  ['pk to pk', statistic('peak-to-peak'), 'glued'],
  ['0-peak', statistic('peak'), 'apart'],
  ['nominal', note('nominal value'), 'apart'],
  ['typical', note('typical value'), 'apart'],
  ['maximum', bound('at most'), 'apart'],
  ['minimum', bound('at least'), 'apart'],
  ['r.m.s.', statistic('rms'), 'glued'],
  ['r.m.s', statistic('rms'), 'glued'],
  ['pk-pk', statistic('peak-to-peak'), 'glued'],
  ['approx.', note('approximate'), 'apart'],
  ['0-pk', statistic('peak'), 'apart'],
  ['pkpk', statistic('peak-to-peak'), 'glued'],
  ['peak', statistic('peak'), 'glued'],
  ['typ.', note('typical value'), 'apart'],
  ['max.', bound('at most'), 'apart'],
  ['min.', bound('at least'), 'apart'],
  ['nom.', note('nominal value'), 'apart'],
  ['p-p', statistic('peak-to-peak'), 'glued'],
  ['0-p', statistic('peak'), 'apart'],
  ['rms', statistic('rms'), 'glued'],
  ['typ', note('typical value'), 'apart'],
  ['nom', note('nominal value'), 'apart'],
  ['max', bound('at most'), 'apart'],
  ['min', bound('at least'), 'apart'],
  ['pk', statistic('peak'), 'glued'],
  ['pp', statistic('peak-to-peak'), 'glued'],
  ['?', note('marked with a question mark'), 'mark'],
];
