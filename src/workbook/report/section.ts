export type Typed = number | string | null;
/** A name, a text, then what the columns say. */
export type Line = readonly Typed[];

export const SECTION_KEYS = [
  'channels',
  'counts',
  'parts',
  'checks',
  'decisions',
  'together',
  'unread',
  'asked',
  'sensors',
  'technologies',
  'mounts',
  'adhesives',
  'cables',
  'connections',
  'inputs',
  'modules',
  'due',
  'waits',
  'control',
  'assumptions',
  'cautions',
  'limits',
  'legend',
] as const;
export type SectionKey = (typeof SECTION_KEYS)[number];

/** One table of a report: a column of names, one of texts, and up to five of numbers, words or verdicts. */
export interface Section {
  readonly key: SectionKey;
  readonly title: string;
  readonly text: string;
  readonly columns: readonly string[];
  readonly lines: readonly Line[];
  /** Where verdict words stand: in the names or in the columns. */
  readonly verdicts?: 'names' | 'columns';
  /** The last line sums the others up. */
  readonly hasTotal?: true;
}

const MOST_NAMES = 6;
export const shortList = (names: readonly string[], more: (names: string, count: number) => string): string =>
  names.length <= MOST_NAMES
    ? names.join(', ')
    : more(names.slice(0, MOST_NAMES).join(', '), names.length - MOST_NAMES);

/** Items by a key, in the order of their first appearance. */
export const groupedBy = <T>(items: readonly T[], keyOf: (item: T) => string): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
};
