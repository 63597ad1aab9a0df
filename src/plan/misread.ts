import type { Problem } from '../core/issue';
import type { TableName } from './fields';

/** Where in a plan something could not be read. */
export type Place =
  | { readonly kind: 'path'; readonly path: string }
  | {
      readonly kind: 'cell';
      readonly table: TableName;
      readonly row?: number;
      readonly heading: string;
      readonly key?: string;
    };

/** What was read, and what was expected instead. The value counts as not known. */
export interface Misread {
  readonly place: Place;
  readonly read: string;
  readonly expected: string;
  readonly problem?: Problem;
}

export const describeMisread = ({ place, read, expected, problem }: Misread): string =>
  `${describePlace(place)}: read ${read === '' ? 'nothing' : `"${read}"`}${aside(problem)}, expected ${expected}.`;

const aside = (problem: Problem | undefined): string => {
  if (problem?.code === 'ambiguous') return `, which can mean ${problem.readings[0]} or ${problem.readings[1]}`;
  return problem?.code === 'wrong-unit' ? ', which is another quantity' : '';
};

const describePlace = (place: Place): string => {
  if (place.kind === 'path') return place.path;
  const row = place.row === undefined ? '' : `, row ${place.row}`;
  return `${place.table}${row}, ${place.heading}`;
};
