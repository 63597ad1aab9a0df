import { cellAddress } from '../../../workbook/address';
import { parseRange } from '../cell-reference';
import type { Package } from '../package';
import { SharedFormulas } from '../sheet-read';
import { walkSheet, type CellRecord } from '../sheet-walk';
import { Splice } from '../splice';
import { textXml } from '../cell-xml';
import { escapeXml, fromUtf8, readCellText } from '../xml-text';
import type { LeftOut } from './left-out';

export interface CellPass {
  /** Cells whose formulas became values: ours, and those of the user. */
  readonly ours: number;
  readonly frozen: readonly string[];
}

/** What a heading of a table says whose column is left out; undefined for any other cell. */
export type HeadingFor = (row: number, column: number) => string | undefined;

const FORMULA = /<(?:[\w.-]+:)?f(?:\s[^>]*)?(?:\/>|>[^]*?<\/(?:[\w.-]+:)?f>)/;

/** Empties the cells of columns that are left out and turns formulas that cannot stay into their values. */
export const passCells = (
  pkg: Package,
  { name: sheet, part }: { readonly name: string; readonly part: string },
  leftOut: LeftOut,
  options: { readonly freezeAll: boolean; readonly isOwn: (formula: string) => boolean; readonly heading: HeadingFor },
): CellPass => {
  const bytes = pkg.read(part);
  const breaking = sharedGroups(bytes, part, (formula) => options.freezeAll || leftOut.breaks(formula, sheet));
  const shared = new SharedFormulas();
  const splice = new Splice(bytes);
  const frozen: string[] = [];
  let ours = 0;
  walkSheet(bytes, part, {
    cell(cell) {
      const formula = cell.formula ? shared.expand(cell.formula, cell.row, cell.column) : undefined;
      const xml = (): string => fromUtf8(bytes.subarray(cell.start, cell.end));
      if (leftOut.hasColumn(sheet, cell.column)) {
        const heading = options.heading(cell.row, cell.column);
        if (heading !== undefined) return splice.replace(cell.start, cell.end, withText(cell, xml(), heading));
        return cell.selfClosing ? undefined : splice.replace(cell.start, cell.end, emptied(cell, xml()));
      }
      if (!cell.formula || formula === undefined) return;
      const filled = cell.formula.type === 'array' ? parseRange(cell.formula.ref ?? '') : undefined;
      if (
        options.freezeAll ||
        cell.formula.type === 'dataTable' ||
        leftOut.breaks(formula, sheet) ||
        (filled && leftOut.touches(sheet, filled))
      ) {
        if (options.isOwn(formula)) ours++;
        else frozen.push(`${sheet}!${cellAddress(cell.row, cell.column)}`);
        return splice.replace(cell.start, cell.end, asValue(cell, xml()));
      }
      // Its group lost a member, maybe the one that holds the text.
      if (cell.formula.shared !== undefined && breaking.has(cell.formula.shared))
        splice.replace(cell.start, cell.end, xml().replace(FORMULA, () => `<${prefixOf(xml())}f>${escapeXml(formula)}</${prefixOf(xml())}f>`)); // prettier-ignore
    },
  });
  if (!splice.isEmpty) pkg.write(part, splice.apply());
  return { ours, frozen };
};

/** Groups of cells with one formula of which some cannot stay. */
const sharedGroups = (bytes: Uint8Array, part: string, isBroken: (formula: string) => boolean): ReadonlySet<string> => {
  const shared = new SharedFormulas();
  const found = new Set<string>();
  walkSheet(bytes, part, {
    cell({ formula, row, column }) {
      if (formula?.type !== 'shared' || formula.shared === undefined) return;
      if (isBroken(shared.expand(formula, row, column))) found.add(formula.shared);
    },
  });
  return found;
};

const prefixOf = (xml: string): string => /^<((?:[\w.-]+:)?)c[\s/>]/.exec(xml)?.[1] ?? '';
/** The start tag of a cell without what tells of its content. */
const startTag = (xml: string, type = ''): string =>
  /^<[^>]*>/
    .exec(xml)![0]
    .replace(/\s(?:t|cm|vm)="[^"]*"|\s(?:t|cm|vm)='[^']*'/g, '')
    .replace(/\s*\/?>$/, type);

const emptied = (_: CellRecord, xml: string): string => `${startTag(xml)}/>`;

const withText = (_: CellRecord, xml: string, text: string): string => {
  const p = prefixOf(xml);
  return `${startTag(xml, ' t="inlineStr"')}><${p}is>${textXml(text, p)}</${p}is></${p}c>`;
};

const asValue = (cell: CellRecord, xml: string): string => {
  if (cell.value === undefined) return emptied(cell, xml);
  if (cell.type === 'str') return withText(cell, xml, readCellText(cell.value));
  return xml.replace(FORMULA, '').replace(/^(<[^>]*?)\scm="[^"]*"/, '$1');
};
