import type { RangeAddress } from '../../../workbook/port';
import type { ColumnPlace, ShareChoices } from '../../../workbook/share/choices';
import { LAST_ROW } from '../limits';
import { referencesIn, tokenize } from '../formula-text';
import type { FormulaNames } from '../formula-names';
import type { Package } from '../package';
import { tablesOf } from '../tables';
import type { WorkbookPart } from '../workbook-part';
import { childrenOf, child, parseTree } from '../xml-tree';
import { readCellText } from '../xml-text';

const lower = (text: string): string => text.toLowerCase();
/** Headings within brackets carry an apostrophe in front of signs that mean something there. */
const unescaped = (text: string): string => lower(text).replace(/'(.)/g, '$1');

/** What is left out, and which formulas cannot stay because of it. */
export class LeftOut {
  private readonly sheets: ReadonlySet<string>;
  private readonly columns: ReadonlyMap<string, ReadonlySet<number>>;
  /** Names of tables on sheets that go, and of columns that go in tables that stay. */
  private readonly tables = new Map<string, readonly string[] | 'all'>();
  private readonly names = new Set<string>();

  constructor(
    pkg: Package,
    book: WorkbookPart,
    private readonly choices: Pick<ShareChoices, 'leftOutColumns' | 'leftOutSheets' | 'dropLinks'>,
    private readonly own: FormulaNames,
    /** Columns that stay under another heading, so that formulas which name them in a table cannot. */
    renamed: readonly ColumnPlace[] = [],
  ) {
    this.sheets = new Set(choices.leftOutSheets.map(lower));
    const columns = new Map<string, Set<number>>();
    for (const { sheet, column } of choices.leftOutColumns)
      columns.set(lower(sheet), (columns.get(lower(sheet)) ?? new Set()).add(column));
    this.columns = columns;
    for (const { name, part } of book.sheets)
      for (const table of tablesOf(pkg, part)) {
        const root = parseTree(pkg.read(table.part), table.part);
        const titles = childrenOf(child(root, 'tableColumns'), 'tableColumn').map((column) =>
          readCellText(column.attributes.get('name') ?? ''),
        );
        const gone = titles.filter((_, i) => {
          const column = table.range.column + i;
          return (
            this.hasColumn(name, column) || renamed.some((place) => place.sheet === name && place.column === column)
          );
        });
        if (this.hasSheet(name)) this.tables.set(lower(table.name), 'all');
        else if (gone.length > 0) this.tables.set(lower(table.name), gone);
      }
    // A name may be made of another one.
    for (let before = -1; before < this.names.size;) {
      before = this.names.size;
      for (const { name, text, sheet } of book.names) if (this.breaks(text, sheet ?? '')) this.names.add(lower(name));
    }
  }

  hasSheet(name: string): boolean {
    return this.sheets.has(lower(name));
  }

  hasColumn(sheet: string, column: number): boolean {
    return this.columns.get(lower(sheet))?.has(column) ?? false;
  }

  columnsOf(sheet: string): readonly number[] {
    return [...(this.columns.get(lower(sheet)) ?? [])].sort((a, b) => a - b);
  }

  hasName(name: string): boolean {
    return this.names.has(lower(name));
  }

  touches(sheet: string, range: RangeAddress): boolean {
    return (
      this.hasSheet(sheet) ||
      this.columnsOf(sheet).some((column) => column >= range.column && column < range.column + range.columns)
    );
  }

  /** Whether a stored formula on a sheet reads what is left out, another workbook that is cut off, or calls our functions. */
  breaks(formula: string, sheet: string): boolean {
    if (this.own.isOwn(formula) || /\bCHAN\./i.test(formula) || /_xldudf_|_xll\./i.test(formula)) return true;
    const tokens = tokenize(formula);
    const isOutside = tokens.some(
      ({ kind, text }, n) =>
        (kind === 'bracket' && /^\[\d+\]$/.test(text) && tokens[n - 1]?.kind !== 'word') ||
        (kind === 'quoted' && /^'[^']*\[/.test(text)),
    );
    if (
      this.choices.dropLinks &&
      (isOutside || tokens.some(({ kind, text }) => kind === 'word' && /^CUBE/i.test(text)))
    )
      return true;
    const named = tokens.some(({ kind, text }, n) => {
      if (kind === 'text') return [...this.sheets].some((name) => lower(text).includes(name));
      if (kind !== 'word' && kind !== 'quoted') return false;
      const plain = lower(kind === 'quoted' ? text.slice(1, -1).replaceAll("''", "'") : text);
      const next = tokens[n + 1];
      if (next?.text === '!' || next?.text === ':') {
        if (this.sheets.has(plain) || plain.split(':').some((part) => this.sheets.has(part))) return true;
      }
      const table = this.tables.get(plain);
      if (table === 'all') return true;
      if (table && (next?.kind !== 'bracket' || table.some((title) => unescaped(next.text).includes(lower(title)))))
        return true;
      return next?.text !== '(' && this.names.has(plain);
    });
    if (named) return true;
    // "[@Price]" inside its own table.
    const ofOwnTable = tokens.some(
      ({ kind, text }, n) =>
        kind === 'bracket' &&
        tokens[n - 1]?.kind !== 'word' &&
        [...this.tables.values()].some(
          (gone) => gone !== 'all' && gone.some((title) => unescaped(text).includes(lower(title))),
        ),
    );
    return (
      ofOwnTable || referencesIn(formula).some((reference) => this.touches(reference.sheet ?? sheet, reference.range))
    );
  }

  /** Ranges without the columns that go: what is left of "A1:D9" without B is A1:A9 and C1:D9. */
  without(sheet: string, ranges: readonly RangeAddress[]): readonly RangeAddress[] {
    return this.columnsOf(sheet).reduce<readonly RangeAddress[]>(
      (left, column) => left.flatMap((range) => cut(range, column)),
      ranges,
    );
  }
}

const cut = (range: RangeAddress, column: number): RangeAddress[] => {
  const end = range.column + range.columns;
  if (column < range.column || column >= end) return [range];
  return [
    { ...range, columns: column - range.column },
    { ...range, column: column + 1, columns: end - column - 1 },
  ].filter(({ columns }) => columns > 0);
};

export const wholeColumn = (column: number): RangeAddress => ({ row: 0, column, rows: LAST_ROW + 1, columns: 1 });
