import type { ICellData, IStyleData, Nullable, Worksheet } from '@univerjs/core';
import {
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  ConditionalFormattingRuleModel,
} from '@univerjs/sheets-conditional-formatting';
import { SheetsNoteModel } from '@univerjs/sheets-note';
import { isOwnNote, unsignedNote } from '../../../workbook/own-note';
import type { MarkRule, SheetContent } from '../../../workbook/port';
import type { WholeLook } from '../../../workbook/whole-look';
import type { SheetFrame, WholeSheet } from '../../../workbook/whole-sheet';
import { spillsOf } from '../grid-facts';
import { Services, type Host } from '../host';
import { MARK_PREFIX } from '../import/rules';
import { factsOf } from '../own-drawings';
import { addressOf } from '../read-sheet';
import { LookBlocks, type LookBlock } from './look-blocks';
import { colourOf, lookOf } from './looks';
import { simpleTables } from './tables';
import { POINTS_PER_PIXEL, widthOfPixels } from './pixels';

const frameOf = (
  sheet: Worksheet,
  content: SheetContent,
  styleOf: (s: Nullable<string | IStyleData>) => WholeLook | undefined,
): SheetFrame => {
  const config = sheet.getConfig();
  const columns: NonNullable<SheetFrame['columns']> = new Map(
    Object.entries(config.columnData).map(([column, data]) => {
      const look = styleOf(data?.s);
      return [
        Number(column),
        {
          width: widthOfPixels(sheet.getColumnWidth(Number(column))),
          ...(data?.hd === 1 && { isHidden: true }),
          ...(look && { look }),
        },
      ];
    }),
  );
  const rows = Object.entries(config.rowData).flatMap(([key, data]) => {
    const pixels = sheet.getRowHeight(Number(key));
    const hasHeight = data?.hd !== 1 && (data?.ia === 0 || pixels > config.defaultRowHeight);
    const found = {
      ...(hasHeight && { height: pixels * POINTS_PER_PIXEL }),
      ...(data?.hd === 1 && { isHidden: true }),
    };
    return Object.keys(found).length > 0 ? [[Number(key), found] as const] : [];
  });
  const tabColour = colourOf({ rgb: config.tabColor });
  const { reading } = factsOf(sheet);
  return {
    usualWidth: widthOfPixels(config.defaultColumnWidth),
    columns,
    rows: new Map(rows),
    merged: sheet.getMergeData().map(addressOf),
    tables: simpleTables(content),
    frozen: { rows: Math.max(0, config.freeze.ySplit), columns: Math.max(0, config.freeze.xSplit) },
    isHidden: sheet.isSheetHidden() === 1,
    hasGridLines: config.showGridlines !== 0,
    ...(tabColour && { tabColour }),
    ...(reading && { reading }),
  };
};

const looksOf = (sheet: Worksheet, styleOf: (cell: Nullable<ICellData>) => WholeLook | undefined): LookBlock[] => {
  const blocks = new LookBlocks();
  sheet.getCellMatrix().forValue((row, column, cell: Nullable<ICellData>) => blocks.add(row, column, styleOf(cell)));
  return blocks.blocks();
};

const marksOf = (services: Services, sheetId: string): MarkRule[] => {
  const rules = services.injector
    .get(ConditionalFormattingRuleModel)
    .getSubunitRules(services.workbook().getUnitId(), sheetId);
  return (rules ?? []).flatMap(({ cfId, ranges, rule }) => {
    if (!cfId.startsWith(MARK_PREFIX) || rule.type !== CFRuleType.highlightCell) return [];
    if (rule.subType !== CFSubRuleType.text || rule.operator !== CFTextOperator.equal) return [];
    const [ink, ground] = [colourOf(rule.style.cl), colourOf(rule.style.bg)];
    const equals = String(rule.value ?? '');
    return ink && ground ? ranges.map((range) => ({ range: addressOf(range), equals, ink, ground })) : [];
  });
};

/** Whether a sheet of ours was written anew since it was opened. */
export const hasNewDrawings = (host: Host, sheet: string): boolean =>
  factsOf(new Services(host).sheet(sheet)).drawings !== undefined;

/** A sheet as the grid shows it, with what is known of it beside that; `content` has its formulas written out. */
export const wholeSheet = (host: Host, content: SheetContent): WholeSheet => {
  const services = new Services(host);
  const sheet = services.sheet(content.sheet);
  const styles = services.workbook().getStyles();
  const known = new Map<string, WholeLook>();
  const look = (style: Nullable<string | IStyleData>): WholeLook | undefined => {
    if (!style) return undefined;
    if (typeof style !== 'string') return lookOf(style);
    const found = known.get(style) ?? lookOf(styles.get(style) ?? {});
    known.set(style, found);
    return found;
  };
  const notes = services.injector
    .get(SheetsNoteModel)
    .getSheetNotes(services.workbook().getUnitId(), sheet.getSheetId());
  return {
    content,
    spills: spillsOf(host, content.sheet),
    frame: frameOf(sheet, content, look),
    looks: looksOf(sheet, (cell) => look(cell?.s)),
    notes: [...(notes?.values() ?? [])].map(({ row, col, note }) => ({
      row,
      column: col,
      text: unsignedNote(note),
      isOurs: isOwnNote({ text: note }),
    })),
    marks: marksOf(services, sheet.getSheetId()),
    drawings: factsOf(sheet).drawings,
  };
};
