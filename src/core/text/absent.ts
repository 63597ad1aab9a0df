const ABSENT = new Set(['', '-', '–', '—', '?', 'n/a', 'na', 'tbd', 'tbc']);

/** A text that says "no value": blank, a lone dash or question mark, n/a, tbd. */
export const isAbsentText = (text: string): boolean => ABSENT.has(text.trim().toLowerCase());
