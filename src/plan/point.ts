import type { Channel } from './model';

/** A direction as typed, taken apart. */
export interface Direction {
  /** In lower case: x, ry, radial. */
  readonly axis: string;
  /** Absent where none is given; such a direction counts as positive. */
  readonly sign?: 1 | -1;
  readonly isRotation: boolean;
  /** The point that the text itself names, as in 12X+. */
  readonly node?: string;
}

const DASHES = /[‐‑‒–—―−﹣－]/g;
const AXIS_WORDS = /[-_\s]?(?:axis|achse|axe|asse|eje|direction|richtung|dirección|direzione)$/;
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^(?:plus|positive?|pos\.?|positiv)\s*/, '+'],
  [/^(?:minus|negative?|neg\.?|negativ)\s*/, '-'],
  [/\s+(?:plus|positive?|pos\.?|positiv)$/, '+'],
  [/\s+(?:minus|negative?|neg\.?|negativ)$/, '-'],
];

const folded = (text: string | undefined): string =>
  (text ?? '').trim().toLowerCase().replace(DASHES, '-').replaceAll('＋', '+');
const joined = (text: string): string => text.replace(/[\s:/.,;_]/g, '');

const MAIN = /^([+-]?)(r?[xyz])([+-]?)$/;
const PLAIN = /^([+-]?)([^\d+-][^+]*?|[123])([+-]?)$/;
const NODE_FIRST = /^(.*\d)([+-]?r?[xyz][+-]?)$/;
const NODE_LAST = /^([+-]?r?[xyz][+-]?)(\d+)$/;

const alone = (text: string, pattern: RegExp): Direction | undefined => {
  const [, before = '', axis = '', after = ''] = pattern.exec(text) ?? [];
  if (axis === '' || (before !== '' && after !== '' && before !== after)) return undefined;
  const sign = after || before;
  return { axis, sign: sign === '' ? undefined : sign === '-' ? -1 : 1, isRotation: /^r[xyz]$/.test(axis) };
};

/**
 * Reads node, axis and sign in any order: X, +X, X-, 12X+, +X12, 12:+X, 12RX+, also "negative Z" or "z-axis".
 * Undefined where there is no direction or two signs contradict each other.
 */
export const readDirection = (direction: string | undefined, point?: string): Direction | undefined => {
  let words = folded(direction).replace(AXIS_WORDS, '');
  for (const [word, sign] of WORDS) words = words.replace(word, sign);
  const text = joined(words);
  const node = joined(folded(point));
  const withNode = (rest: string, pattern: RegExp, of: string): Direction | undefined => {
    const read = alone(rest, pattern);
    return read && { ...read, node: of };
  };
  const main = alone(text, MAIN);
  if (main) return main;
  if (node !== '' && text.startsWith(node)) {
    const own = withNode(text.slice(node.length), PLAIN, node);
    if (own) return own;
  }
  const first = NODE_FIRST.exec(text);
  if (first) return withNode(first[2]!, MAIN, first[1]!);
  const last = NODE_LAST.exec(text);
  if (last) return withNode(last[1]!, MAIN, last[2]!);
  return alone(text, PLAIN);
};

/** Where a channel measures: the point column, or the node that the direction names, or both out of "12X+". */
export const placeOf = ({ point, direction }: Pick<Channel, 'point' | 'direction'>) => {
  const typed = folded(direction) === '' ? undefined : direction;
  const signed = typed === undefined ? readDirection(point) : undefined;
  if (signed?.node !== undefined && signed.sign !== undefined) return { point: signed.node, direction: signed };
  const read = readDirection(typed, point);
  return { point: folded(point) || read?.node, direction: read };
};

/** The direction named without its node and with its sign last; without a sign it counts as positive. */
export const plainDirection = (direction: string | undefined, point: string | undefined): string | undefined => {
  const read = readDirection(direction, point);
  return read && signedLast(read);
};
/** The sign last, as modal practice has it; without one it counts as positive. */
export const signedLast = ({ axis, sign }: Direction): string => axis + (sign === -1 ? '-' : '+');

/** One form for every order of typing: 12X+, 105RZ-. The point keeps its letters. */
export const degreeOfFreedom = (channel: Pick<Channel, 'point' | 'direction'>): string | undefined => {
  const { point, direction } = placeOf(channel);
  if (point === undefined || direction === undefined) return undefined;
  const typed = channel.point?.trim();
  return `${typed && folded(typed) === point ? typed : point}${signedLast(direction).toUpperCase()}`;
};

/** The node that a direction names when the point column says another one. */
export const otherNode = ({ point, direction }: Pick<Channel, 'point' | 'direction'>): string | undefined => {
  const own = joined(folded(point));
  const node = readDirection(direction, point)?.node;
  return own !== '' && node !== undefined && node !== own ? node : undefined;
};
