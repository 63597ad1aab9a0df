import { readHeading, type HeadingText } from './heading-text';

/** The ways in which one heading may be read. */
export interface HeadingViews {
  /** All of it. */
  readonly whole: HeadingText;
  /** Without the heading of the group above it, and the words of that group. */
  readonly own?: HeadingText;
  readonly groupWords: readonly string[];
  /** The same said twice, as in "Kanal / Voie". */
  readonly halves: readonly HeadingText[];
}

const HALVES = /\s+[/|]\s+|\n+|(?<=[\p{L}.]{3})\/(?=[\p{L}]{3})/u;

/** A unit or statistic at the end of the whole holds for each half. */
const halvesOf = (heading: string, whole: HeadingText): HeadingText[] => {
  const pieces = heading
    .replace(/[[(][^\])]*[\])]/g, ' ')
    .split(HALVES)
    .map((piece) => piece.trim());
  if (pieces.length < 2 || pieces.some((piece) => !/\p{L}/u.test(piece))) return [];
  return pieces.map((piece) => {
    const half = readHeading(piece);
    return { ...half, unitText: half.unitText ?? whole.unitText, statistic: half.statistic ?? whole.statistic };
  });
};

const remembered = new Map<string, HeadingViews>();

/** A heading, and the part of it that stands in its own column alone where a group heading stands above. */
export const viewsOf = (heading: string, ownText?: string): HeadingViews => {
  const key = `${heading}\u0000${ownText ?? ''}`;
  let views = remembered.get(key);
  if (!views) {
    const whole = readHeading(heading);
    const own = ownText === undefined ? undefined : readHeading(ownText);
    views = {
      whole,
      ...(own && {
        own: { ...own, unitText: own.unitText ?? whole.unitText, statistic: own.statistic ?? whole.statistic },
      }),
      groupWords: own ? whole.words.filter((word) => !own.words.includes(word)) : [],
      halves: halvesOf(heading, whole),
    };
    if (remembered.size > 5_000) remembered.clear();
    remembered.set(key, views);
  }
  return views;
};
