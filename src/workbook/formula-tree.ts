import type { Cell } from '../functions/define';

/** A formula of ours, read back. Only what we write is understood: see formulas.ts. */
export type FormulaTree =
  | { readonly kind: 'value'; readonly value: Cell }
  /** A cell; without a fixed row it is in the formula's own row. */
  | { readonly kind: 'cell'; readonly sheet?: string; readonly row?: number; readonly column: number }
  /** Part of one column. */
  | {
      readonly kind: 'range';
      readonly sheet?: string;
      readonly firstRow: number;
      readonly lastRow: number;
      readonly column: number;
    }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly (FormulaTree | undefined)[] }
  | {
      readonly kind: 'operator';
      readonly sign: '=' | '&' | '/';
      readonly left: FormulaTree;
      readonly right: FormulaTree;
    };

const TOKEN =
  /("(?:[^"]|"")*")|(\d+(?:\.\d+)?(?:[eE][-+]?\d+)?)|((?:'(?:[^']|'')*'|[A-Za-z_][A-Za-z0-9_]*)!)|(\$[A-Z]{1,3}\$?\d+)|([A-Z][A-Z0-9.]*)(?=\()|([(),:=&/-])/y;

type Token = { readonly kind: 'text' | 'number' | 'sheet' | 'place' | 'name' | 'sign'; readonly text: string };
const KINDS = ['text', 'number', 'sheet', 'place', 'name', 'sign'] as const;

const tokensOf = (formula: string): Token[] => {
  const tokens: Token[] = [];
  let at = formula.startsWith('=') ? 1 : 0;
  while (at < formula.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(formula);
    if (!match) throw new Error(`Not a formula of ours at ${at}: ${formula}`);
    const group = match.slice(1).findIndex((text) => text !== undefined);
    tokens.push({ kind: KINDS[group]!, text: match[0] });
    at = TOKEN.lastIndex;
  }
  return tokens;
};

const columnOf = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** `$C4` is in the formula's own row, `$C$4` is fixed. */
const placeOf = (text: string) => {
  const [, letters = '', fixed, digits] = /^\$([A-Z]+)(\$?)(\d+)$/.exec(text) ?? [];
  return { column: columnOf(letters), row: fixed ? Number(digits) - 1 : undefined };
};

class Reader {
  private at = 0;
  constructor(
    private readonly tokens: readonly Token[],
    private readonly formula: string,
  ) {}

  whole(): FormulaTree {
    const tree = this.binary(0);
    if (this.at < this.tokens.length) this.fail();
    return tree;
  }

  private binary(level: number): FormulaTree {
    const sign = (['=', '&', '/'] as const)[level];
    if (sign === undefined) return this.single();
    let left = this.binary(level + 1);
    while (this.take(sign)) left = { kind: 'operator', sign, left, right: this.binary(level + 1) };
    return left;
  }

  private single(): FormulaTree {
    if (this.take('-')) {
      const tree = this.single();
      return tree.kind === 'value' && typeof tree.value === 'number'
        ? { kind: 'value', value: -tree.value }
        : this.fail();
    }
    const token = this.tokens[this.at++];
    switch (token?.kind) {
      case 'text':
        return { kind: 'value', value: token.text.slice(1, -1).replaceAll('""', '"') };
      case 'number':
        return { kind: 'value', value: Number(token.text) };
      case 'name':
        return { kind: 'call', name: token.text, args: this.args() };
      case 'sheet':
        return this.reference(this.next('place'), sheetOf(token.text));
      case 'place':
        return this.reference(token.text, undefined);
      default:
        return this.fail();
    }
  }

  private reference(text: string, sheet: string | undefined): FormulaTree {
    const { column, row } = placeOf(text);
    if (!this.take(':')) return { kind: 'cell', sheet, column, row };
    const end = placeOf(this.next('place'));
    if (row === undefined || end.row === undefined || end.column !== column) return this.fail();
    return { kind: 'range', sheet, column, firstRow: row, lastRow: end.row };
  }

  private args(): (FormulaTree | undefined)[] {
    this.take('(');
    if (this.take(')')) return [];
    const args: (FormulaTree | undefined)[] = [];
    for (;;) {
      const next = this.tokens[this.at]?.text;
      args.push(next === ',' || next === ')' ? undefined : this.binary(0));
      if (this.take(')')) return args;
      if (!this.take(',')) this.fail();
    }
  }

  private take(sign: string): boolean {
    const token = this.tokens[this.at];
    if (token?.kind !== 'sign' || token.text !== sign) return false;
    this.at += 1;
    return true;
  }

  private next(kind: Token['kind']): string {
    const token = this.tokens[this.at++];
    return token?.kind === kind ? token.text : this.fail();
  }

  private fail(): never {
    throw new Error(`Not a formula of ours: ${this.formula}`);
  }
}

const sheetOf = (text: string): string => {
  const name = text.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
};

export const formulaTree = (formula: string): FormulaTree => new Reader(tokensOf(formula), formula).whole();
