import { plainText } from './characters';

const ABSENT = new Set([
  '',
  '-',
  '--',
  '---',
  '?',
  '??',
  '.',
  '..',
  '/',
  'n/a',
  'n.a.',
  'n.a',
  'na',
  'tbd',
  'tbc',
  'tba',
  'open',
  'unknown',
]);
/** "The same as above", which only the list as a whole can answer. */
const DITTO = new Set([
  '"',
  "''",
  '„',
  'ditto',
  'do.',
  'dto.',
  'dto',
  'id.',
  'idem',
  '〃',
  '′′',
  ',,',
  '-"-',
  'same as above',
  'as above',
  'same',
  'wie oben',
  's. o.',
  'siehe oben',
  'comme ci-dessus',
  'voir ci-dessus',
  'ídem',
  'come sopra',
]);

/** A text that says "no value": blank, a lone dash or question mark, n/a, tbd. */
export const isAbsentText = (text: string): boolean => text.length < 16 && ABSENT.has(plainText(text).toLowerCase());

/** A text that says "as in the cell above". */
export const isDittoText = (text: string): boolean => text.length < 20 && DITTO.has(plainText(text).toLowerCase());
