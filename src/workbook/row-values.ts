import { callFunction } from '../engine/call';
import { errorValueOf } from '../engine/errors';
import { isCellError, type Cell } from '../functions/define';
import { functionByName, NAMESPACE } from '../functions/index';
import { dittosOf, type Dittos } from './dittos';
import { formulaTree, type FormulaTree } from './formula-tree';
import { rowWriter } from './formulas';
import { ListLookup } from './list-lookup';
import { OWN_KEYS } from './own-columns';
import type { SheetContent } from './port';
import type { PlanTables } from './row-sources';

type Work = (row: number) => Cell;

const NOT_KNOWN: Cell = { error: '#N/A' };
const NO_VALUE: Cell = { error: '#VALUE!' };
const NO_REFERENCE: Cell = { error: '#REF!' };

/** A cell as text in a formula, numbers to the fifteen digits that spreadsheets keep. */
const asText = (cell: Cell): string => {
  if (cell === null || isCellError(cell)) return '';
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return typeof cell === 'number' ? String(Number(cell.toPrecision(15))) : cell;
};

const isEqual = (a: Cell, b: Cell): Cell => {
  if (isCellError(a)) return a;
  if (isCellError(b)) return b;
  if (a === null) return b === null || b === '' || b === 0 || b === false;
  if (b === null) return a === '' || a === 0 || a === false;
  return typeof a === 'string' && typeof b === 'string' ? a.toLowerCase() === b.toLowerCase() : a === b;
};

const joined = (a: Cell, b: Cell): Cell => (isCellError(a) ? a : isCellError(b) ? b : asText(a) + asText(b));

const numberOf = (cell: Cell): number | undefined =>
  cell === null ? 0 : typeof cell === 'boolean' ? Number(cell) : typeof cell === 'number' ? cell : undefined;
const quotient = (a: Cell, b: Cell): Cell => {
  if (isCellError(a)) return a;
  if (isCellError(b)) return b;
  const [over, under] = [numberOf(a), numberOf(b)];
  if (over === undefined || under === undefined) return NO_VALUE;
  return under === 0 ? { error: '#DIV/0!' } : over / under;
};

/** Of texts that are a number as we write them, which is all that our formulas go by. */
const valueOf = (cell: Cell): Cell => {
  if (cell === null || isCellError(cell)) return cell ?? 0;
  const number = Number(asText(cell));
  return asText(number) === asText(cell) ? number : NO_VALUE;
};

const OPERATORS = { '=': isEqual, '&': joined, '/': quotient } as const;

/**
 * Works out our cells of any row of the channel sheet, in the order of OWN_COLUMNS, as a spreadsheet would. It runs the
 * formulas that rowWriter writes, and no others; the functions in them are called as every host calls them.
 */
export const rowValues = (
  tables: PlanTables,
  ownColumn: number,
  contentOf: (sheet: string) => SheetContent,
): ((row: number) => Cell[]) => {
  const dittos = dittosOf(tables.channels, contentOf(tables.channels.sheet));
  const evaluator = new RowEvaluator(tables.channels.sheet, ownColumn, contentOf, dittos);
  const writtenFor = tables.channels.firstRow;
  evaluator.own.push(...rowWriter(tables, ownColumn)(writtenFor).map((text) => evaluator.compile(formulaTree(text))));
  return (row) => evaluator.valuesOf(row);
};

/** A place where a function is called: it is asked once for what many rows ask alike, such as all with the same sensor. */
class Answers {
  private static readonly MOST = 20_000;
  /** After so many calls it shows whether rows ask alike often enough to be worth the looking up. */
  private static readonly TRIAL = 2_000;
  private static readonly WORTH = 0.3;
  private known: Map<string, Cell> | undefined = new Map();
  private asked = 0;
  private found = 0;

  constructor(private readonly ask: (given: readonly Cell[]) => Cell) {}

  of(given: readonly Cell[]): Cell {
    if (!this.known) return this.ask(given);
    const key = keyOf(given);
    const known = this.known.get(key);
    this.asked += 1;
    if (known !== undefined) {
      this.found += 1;
      return known;
    }
    const answer = this.ask(given);
    if (this.known.size < Answers.MOST) this.known.set(key, answer);
    if (this.asked === Answers.TRIAL && this.found < Answers.WORTH * this.asked) this.known = undefined;
    return answer;
  }
}

/** Different for different cells: each tells its kind, and a text its length. */
const keyOf = (cells: readonly Cell[]): string => {
  let key = '';
  for (const cell of cells)
    if (typeof cell === 'number') key += `#${cell}`;
    else if (typeof cell === 'string') key += `"${cell.length}:${cell}`;
    else key += isCellError(cell) ? `!${cell.error}` : `,${cell}`;
  return key;
};

class RowEvaluator {
  readonly own: Work[] = [];
  private readonly known: (Cell | undefined)[] = [];
  private readonly lookups = new Map<string, ListLookup>();

  constructor(
    private readonly sheet: string,
    private readonly ownColumn: number,
    private readonly contentOf: (sheet: string) => SheetContent,
    private readonly dittos: Dittos,
  ) {}

  valuesOf(row: number): Cell[] {
    this.known.length = 0;
    return OWN_KEYS.map((_, i) => this.ownValue(row, i));
  }

  private ownValue(row: number, i: number): Cell {
    const known = this.known[i];
    return known !== undefined ? known : (this.known[i] = this.own[i]!(row));
  }

  private reader(sheet: string): (row: number, column: number) => Cell {
    const { values, row: firstRow, column: firstColumn } = this.contentOf(sheet);
    return (row, column) => values[row - firstRow]?.[column - firstColumn] ?? null;
  }

  compile(tree: FormulaTree): Work {
    switch (tree.kind) {
      case 'value':
        return () => tree.value;
      case 'cell':
        return this.cell(tree);
      case 'operator': {
        const [left, right, work] = [this.compile(tree.left), this.compile(tree.right), OPERATORS[tree.sign]];
        return (row) => work(left(row), right(row));
      }
      case 'call':
        return this.call(tree.name, tree.args);
      case 'range':
        throw new Error('A column stands where one cell belongs.');
    }
  }

  private cell({ sheet = this.sheet, row: fixed, column }: Extract<FormulaTree, { kind: 'cell' }>): Work {
    const own = column - this.ownColumn;
    if (fixed === undefined && own >= 0 && own < OWN_KEYS.length) return (row) => this.ownValue(row, own);
    const at = this.reader(sheet);
    if (fixed !== undefined || this.dittos.size === 0) return (row) => at(fixed ?? row, column);
    return (row) => at(this.dittos.get(row)?.find((ditto) => ditto.column === column)?.origin ?? row, column);
  }

  private call(name: string, args: readonly (FormulaTree | undefined)[]): Work {
    if (name.startsWith(`${NAMESPACE}.`)) return this.ownFunction(name.slice(NAMESPACE.length + 1), args);
    const [first, second, third] = args;
    switch (name) {
      case 'NA':
        return () => NOT_KNOWN;
      case 'IF':
        return this.choice(this.needed(first), this.needed(second), this.needed(third));
      case 'TRIM': {
        const text = this.needed(first);
        return (row) => {
          const cell = text(row);
          return isCellError(cell) ? cell : asText(cell).replace(/ +/g, ' ').replace(/^ | $/g, '');
        };
      }
      case 'IFERROR': {
        const [wanted, otherwise] = [this.needed(first), this.needed(second)];
        return (row) => {
          const cell = wanted(row);
          return isCellError(cell) ? otherwise(row) : cell;
        };
      }
      case 'VALUE': {
        const text = this.needed(first);
        return (row) => valueOf(text(row));
      }
      case 'MATCH': {
        const [wanted, list] = [this.needed(first), this.lookup(second)];
        return (row) => list.lineOf(wanted(row));
      }
      case 'INDEX':
        return this.item(second, first);
      default:
        throw new Error(`Our formulas do not use ${name}.`);
    }
  }

  private needed(tree: FormulaTree | undefined): Work {
    return tree ? this.compile(tree) : () => null;
  }

  private choice(condition: Work, then: Work, otherwise: Work): Work {
    return (row) => {
      const cell = condition(row);
      if (isCellError(cell)) return cell;
      if (typeof cell === 'string') return NO_VALUE;
      return cell ? then(row) : otherwise(row);
    };
  }

  private range(tree: FormulaTree | undefined): Extract<FormulaTree, { kind: 'range' }> {
    if (tree?.kind === 'range') return tree;
    if (tree?.kind !== 'cell' || tree.row === undefined) throw new Error('A list is not a column.');
    return { kind: 'range', sheet: tree.sheet, column: tree.column, firstRow: tree.row, lastRow: tree.row };
  }

  private item(line: FormulaTree | undefined, list: FormulaTree | undefined): Work {
    const { sheet = this.sheet, column, firstRow, lastRow } = this.range(list);
    const [at, work] = [this.reader(sheet), this.needed(line)];
    return (row) => {
      const n = work(row);
      if (typeof n !== 'number') return n !== null && isCellError(n) ? n : NO_VALUE;
      return n < 1 || firstRow + n - 1 > lastRow ? NO_REFERENCE : at(firstRow + Math.trunc(n) - 1, column);
    };
  }

  private lookup(tree: FormulaTree | undefined): ListLookup {
    const { sheet = this.sheet, column, firstRow, lastRow } = this.range(tree);
    const key = JSON.stringify([sheet, column, firstRow, lastRow]);
    const known = this.lookups.get(key);
    if (known) return known;
    const at = this.reader(sheet);
    const cells = Array.from({ length: lastRow - firstRow + 1 }, (_, i) => at(firstRow + i, column));
    const made = new ListLookup(cells);
    this.lookups.set(key, made);
    return made;
  }

  private ownFunction(name: string, args: readonly (FormulaTree | undefined)[]): Work {
    const fn = functionByName(name);
    if (!fn) throw new Error(`There is no function ${name}.`);
    const works = args.map((arg) => this.needed(arg));
    const answers = new Answers((given) => {
      const called = callFunction(fn, given);
      if (!called.ok) return { error: errorValueOf(called.issue.code) };
      return Array.isArray(called.value) ? (called.value[0]?.[0] ?? null) : called.value;
    });
    return (row) => answers.of(works.map((work) => work(row)));
  }
}
