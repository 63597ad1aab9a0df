import type { AnyFunction } from '../functions/define';

/** What a released workbook relies on: the id of each function and the order of its arguments. */
export type Frozen = Readonly<Record<string, readonly string[]>>;

/** Released names that the catalogue no longer honours, in words. A new argument may only come last. */
export const brokenPromises = (frozen: Frozen, functions: readonly AnyFunction[]): string[] => {
  const now = new Map(functions.map((fn) => [fn.name, Object.keys(fn.args)]));
  return Object.entries(frozen).flatMap(([id, args]) => {
    const keys = now.get(id);
    if (!keys) return [`${id} is gone`];
    const moved = args.find((arg, i) => keys[i] !== arg);
    return moved === undefined ? [] : [`${id}: argument ${moved} is no longer in its place`];
  });
};

/** The list with everything new added; it never loses an entry. */
export const grown = (frozen: Frozen, functions: readonly AnyFunction[]): Frozen => {
  const all = { ...frozen, ...Object.fromEntries(functions.map((fn) => [fn.name, Object.keys(fn.args)])) };
  return Object.fromEntries(Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1)));
};
