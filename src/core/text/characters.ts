/** Longer texts are remarks, not values; nothing in this folder looks at them. */
export const LONGEST_TEXT = 4096;

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const PLAIN: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2015': '-',
  '\u2212': '-',
  '\u00b5': 'u',
  '\u025b': 'ε',
  '\u03f5': 'ε',
  '\u03bc': 'u',
  '\u00b7': '*',
  '\u00d7': '*',
  '\u22c5': '*',
  '\u2022': '*',
  '\u2219': '*',
  '\u2044': '/',
  '\u2215': '/',
  '\u00f7': '..',
  '\u2026': '..',
  '\u00ba': '°',
  '\u02da': '°',
  '\u223c': '~',
  '\u2248': '~',
  '\u2243': '~',
  '\u2265': '≥',
  '\u2a7e': '≥',
  '\u2a7d': '≤',
  '\u2019': "'",
  '\u2018': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u00bd': '^0.5',
  '\u2103': '°C',
  '\u2109': '°F',
};
/** Zero-width characters, soft hyphen, direction marks: never seen by the person who typed. */
const INVISIBLE = new Set('\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff');

const plain = (char: string): string => {
  if (char < '\u0080') return char;
  const known = PLAIN[char];
  if (known !== undefined) return known;
  if (INVISIBLE.has(char)) return '';
  if (char === '√' || char === 'ε' || char === '±' || char === '°' || char === '≤' || char === '†' || char === '‡')
    return char;
  return char.normalize('NFKC');
};

/** One spelling for each dash, multiplication sign, micro sign, space and superscript; `²` becomes `^2`. */
export const plainText = (text: string): string => {
  let out = '';
  let raised = false;
  for (const char of text) {
    const power = SUPERSCRIPTS.indexOf(char);
    if (power >= 0) {
      out += raised ? power : `^${power}`;
      raised = true;
    } else if (char === '⁻' || char === '⁺') {
      out += char === '⁻' ? '^-' : '^';
      raised = true;
    } else {
      out += plain(char);
      raised = false;
    }
  }
  return out
    .replaceAll('<=', '≤')
    .replaceAll('>=', '≥')
    .replaceAll('+/-', '±')
    .replaceAll('-/+', '±')
    .replaceAll('+-', '±')
    .replaceAll('...', '..')
    .trim();
};

export const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';
export const isSpace = (char: string | undefined): boolean =>
  char === ' ' || char === '\t' || char === '\n' || char === '\r';
export const isLetter = (char: string | undefined): boolean =>
  char !== undefined && ((char >= 'a' && char <= 'z') || (char >= 'A' && char <= 'Z') || char === 'ε' || char === 'Ω');

/** The text as shown back in a message. */
export const shown = (text: string): string => (text.length > 80 ? `${text.slice(0, 79)}…` : text.trim());
