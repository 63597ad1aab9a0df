import type { MarkRule, RangeAddress } from '../../workbook/port';
import { cellAddress } from '../../workbook/address';
import { overlap, parseRange } from './cell-reference';
import { setMarks } from './marks-edit';
import { refuse } from './refuse';
import { RowsOutOfOrder, SheetDataEdit, type EditContext } from './sheet-data-edit';
import { resolve, type Effect } from './sheet-effects';
import type { Packer } from './codec';
import { SheetOutput } from './sheet-output';
import type { SheetPlan } from './sheet-plan';
import {
  columnSpans,
  growDimension,
  placeFor,
  sectionOf,
  sectionsNamed,
  setWidths,
  styleOfColumn,
  union,
  type ColumnSpan,
  type Section,
  type SheetLayout,
} from './sheet-sections';
import { walkSheet } from './sheet-walk';
import { Splice } from './splice';
import type { XmlScanner } from './xml-scan';
import { escapeAttribute, fromUtf8, utf8 } from './xml-text';
import { onOff, prefixed } from './xml-tree';
import { STRICT, TRANSITIONAL } from './relations';

export type SheetEdit = Pick<SheetPlan, 'effects' | 'widths' | 'marks'>;

export interface SheetEditContext extends EditContext {
  packer(expected: number): Packer;
  differential(rule: MarkRule): number;
  /** Notes live in parts beside the sheet: given the relation id of its drawing for note boxes, returns that of a new one. */
  setNotes(place: { relationSpace: string }, drawing: string | undefined): string | undefined;
}

export interface EditedSheet {
  readonly output: SheetOutput;
  readonly formulasChanged: boolean;
  readonly hasOtherFormulas: boolean;
  readonly isProtected: boolean;
}

/** Makes all edits of one sheet in one walk over its part. */
export function editSheet(bytes: Uint8Array, part: string, edit: SheetEdit, context: SheetEditContext): EditedSheet {
  try {
    return editInOrder(bytes, part, edit, context, undefined);
  } catch (error) {
    if (!(error instanceof RowsOutOfOrder)) throw error;
    const existing = new Set<number>();
    walkSheet(bytes, part, {
      row({ row }) {
        if (existing.has(row)) refuse('unsupported', `Sheet ${context.sheet} has row ${row + 1} twice.`);
        existing.add(row);
      },
    });
    return editInOrder(bytes, part, edit, context, existing);
  }
}

function editInOrder(
  bytes: Uint8Array,
  part: string,
  edit: SheetEdit,
  context: SheetEditContext,
  existing: ReadonlySet<number> | undefined,
): EditedSheet {
  const sections: Section[] = [];
  const layout: Mutable = {
    bytes,
    part,
    prefix: '',
    relationSpace: TRANSITIONAL,
    relationPrefix: undefined,
    sections,
    rootEnd: bytes.length,
  };
  let spans: ColumnSpan[] = [];
  let data: SheetDataEdit | undefined;
  let output: SheetOutput | undefined;
  let rootTag = { start: 0, end: 0 };
  let dataEnd = 0;
  walkSheet(bytes, part, {
    root(scanner) {
      readRoot(scanner, layout);
      rootTag = { start: scanner.start, end: scanner.end };
    },
    data(start, openEnd, selfClosing) {
      sections.push({ local: 'sheetData', start, end: openEnd });
      spans = columnSpans(layout);
      const style = (column: number): number => styleOfColumn(spans, column);
      output = new SheetOutput(layout, rowFrame(layout, rootTag), selfClosing, context.packer(bytes.length));
      output.start(editHead(layout, edit, openEnd));
      const emit = (rows: Uint8Array): void => output!.rows(rows);
      data = new SheetDataEdit(bytes, layout.prefix, edit.effects, context, style, existing, openEnd, emit);
    },
    row: (row, scanner) => data!.row(row, scanner),
    cell: (cell) => data!.cell(cell),
    rowEnd: (row) => data!.rowEnd(row),
    dataEnd(closeStart) {
      dataEnd = closeStart;
      data!.finish(closeStart);
    },
    section: (local, start, end) => void sections.push(sectionOf(bytes, part, local, start, end)),
    rootEnd: (closeStart) => void (layout.rootEnd = closeStart),
  });
  checkMerges(layout, edit.effects, context.sheet);
  output!.end(editTail(layout, edit, context, dataEnd));
  const [protection] = sectionsNamed(layout, 'sheetProtection');
  return {
    output: output!,
    formulasChanged: data!.formulasChanged,
    hasOtherFormulas: data!.hasOtherFormulas,
    isProtected: onOff(protection?.attributes.get('sheet')),
  };
}

function readRoot(scanner: XmlScanner, layout: Mutable): void {
  layout.prefix = scanner.prefix() === '' ? '' : `${scanner.prefix()}:`;
  if (scanner.uri().startsWith('http://purl.oclc.org/')) layout.relationSpace = STRICT;
  const declared = scanner.attributes
    .all()
    .find(([name, value]) => name.startsWith('xmlns:') && value === layout.relationSpace);
  layout.relationPrefix = declared?.[0].slice(6);
}

type Mutable = { -readonly [K in keyof SheetLayout]: SheetLayout[K] };

/** What stands before the rows, edited: all of it comes before the cells in the order of the format. */
function editHead(layout: SheetLayout, edit: SheetEdit, end: number): Uint8Array {
  const splice = new Splice(layout.bytes);
  setWidths(layout, splice, edit.widths);
  growDimension(layout, splice, writtenRange(edit.effects));
  return splice.apply(0, end);
}

/** What stands behind the rows, edited. */
function editTail(layout: SheetLayout, edit: SheetEdit, context: SheetEditContext, from: number): Uint8Array {
  const splice = new Splice(layout.bytes);
  if (edit.marks) setMarks(layout, splice, edit.marks, (rule) => context.differential(rule));
  const [drawing] = sectionsNamed(layout, 'legacyDrawing');
  const newDrawing = context.setNotes(layout, drawing && prefixed(drawing, 'id'));
  if (newDrawing !== undefined) addNoteDrawing(layout, splice, newDrawing);
  if (!splice.isWithin(from, layout.bytes.length))
    refuse('unsupported', `Sheet ${context.sheet} is damaged: what belongs behind its cells stands before them.`);
  return splice.apply(from);
}

function rowFrame({ bytes, prefix }: SheetLayout, root: { start: number; end: number }) {
  const tag = fromUtf8(bytes.subarray(root.start, root.end));
  return { open: utf8(`${tag}<${prefix}sheetData>`), close: utf8(`</${prefix}sheetData></${prefix}worksheet>`) };
}

/** Only the first cell of a merged block shows: a value anywhere else in it would be lost from sight. */
function checkMerges(layout: SheetLayout, effects: readonly Effect[], sheet: string): void {
  const merges = sectionsNamed(layout, 'mergeCells').flatMap((merge) => merge.children);
  for (const merge of merges) {
    const range = parseRange(merge.attributes.get('ref') ?? '');
    if (!range) continue;
    for (const effect of effects) {
      if (effect.kind !== 'write' || !overlap(effect.range, range)) continue;
      for (let r = Math.max(range.row, effect.range.row); r < range.row + range.rows; r++) {
        if (r >= effect.range.row + effect.range.rows) break;
        for (let c = Math.max(range.column, effect.range.column); c < range.column + range.columns; c++) {
          if (c >= effect.range.column + effect.range.columns) break;
          if ((r !== range.row || c !== range.column) && resolve(effects, r, c)?.input)
            refuse('occupied', `Cell ${cellAddress(r, c)} of sheet ${sheet} lies inside a merged block.`);
        }
      }
    }
  }
}

function writtenRange(effects: readonly Effect[]): RangeAddress | undefined {
  const ranges = effects.filter(({ kind }) => kind !== 'clear').map(({ range }) => range);
  return ranges.length === 0 ? undefined : ranges.reduce(union);
}

function addNoteDrawing(layout: SheetLayout, splice: Splice, id: string): void {
  const known = layout.relationPrefix;
  const declaration = known === undefined ? ` xmlns:r="${layout.relationSpace}"` : '';
  const xml = `<${layout.prefix}legacyDrawing${declaration} ${known ?? 'r'}:id="${escapeAttribute(id)}"/>`;
  splice.insert(placeFor(layout, 'legacyDrawing'), xml);
}
