import { tokenize } from './formula-text';

const OWN = 'CHAN';
const STORED = `_xldudf_${OWN}_`;
const NEWER = /^_xlfn\.(?:_xlws\.)?/i;
/** These two have their own signs (@ and #) where people type formulas, so their stored name stays visible. */
const KEPT = new Set(['_XLFN.SINGLE', '_XLFN.ANCHORARRAY']);
/** Functions newer than the file format; a file keeps them with a prefix. */
const PREFIXED = new Map(
  (
    'XLOOKUP XMATCH IFS SWITCH TEXTJOIN CONCAT MAXIFS MINIFS UNIQUE SEQUENCE SORTBY IFNA NUMBERVALUE FORMULATEXT ' +
    'VSTACK HSTACK TAKE DROP CHOOSECOLS CHOOSEROWS TOCOL TOROW TEXTBEFORE TEXTAFTER TEXTSPLIT'
  )
    .split(' ')
    .map((name) => [name, `_xlfn.${name}`] as const)
    .concat(['SORT', 'FILTER'].map((name) => [name, `_xlfn._xlws.${name}`] as const)),
);

/**
 * Between formulas as people read them, CHAN.NAME(…), and as a file keeps them, _xldudf_CHAN_NAME(…). The dots cannot be
 * guessed back from underscores, so the names of all our functions are needed.
 */
export class FormulaNames {
  private readonly shown = new Map<string, string>();
  private readonly stored = new Map<string, string>();

  constructor(functionNames: readonly string[]) {
    for (const name of functionNames) {
      const stored = STORED + name.replaceAll('.', '_');
      this.shown.set(stored.toUpperCase(), `${OWN}.${name}`);
      this.stored.set(`${OWN}.${name}`.toUpperCase(), stored);
    }
  }

  /** Stored to readable, without '='. Also mends names that another program tied to a foreign workbook: [2]!_xldudf_… */
  read(stored: string): string {
    if (!/_xl/i.test(stored)) return stored;
    const out: string[] = [];
    const tokens = tokenize(stored);
    tokens.forEach(({ kind, text }, n) => {
      const called = kind === 'word' && tokens[n + 1]?.text === '(';
      const own = called ? this.shown.get(text.toUpperCase()) : undefined;
      if (own && out.at(-1) === '!' && tokens[n - 2]?.kind === 'bracket') out.splice(-2);
      const plain = NEWER.test(text) && !KEPT.has(text.toUpperCase()) ? text.replace(NEWER, '') : text;
      out.push(own ?? (called ? plain : text));
    });
    return out.join('');
  }

  /** Readable to stored, without '='. */
  write(readable: string): string {
    const tokens = tokenize(readable);
    return tokens
      .map(({ kind, text }, n) => {
        if (kind !== 'word' || tokens[n + 1]?.text !== '(') return text;
        const name = text.toUpperCase();
        return this.stored.get(name) ?? PREFIXED.get(name) ?? text;
      })
      .join('');
  }

  isOwn(stored: string): boolean {
    return stored.includes(STORED);
  }
}
