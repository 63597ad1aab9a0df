import { isMarkFormula, markFormula } from '../../workbook/mark-formula';
import type { MarkRule } from '../../workbook/port';

/** Deletes the rules that we set before and no others. */
export const deleteOwnMarks = async (context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> => {
  const formats = sheet.getRange().conditionalFormats;
  formats.load('items/type');
  await context.sync();
  const custom = formats.items.filter(({ type }) => type === 'Custom');
  custom.forEach((format) => format.custom.rule.load('formula'));
  if (custom.length > 0) await context.sync();
  for (const format of custom) if (isMarkFormula(format.custom.rule.formula)) format.delete();
};

export const addMark = (sheet: Excel.Worksheet, rule: MarkRule): void => {
  const { row, column, rows, columns } = rule.range;
  const format = sheet.getRangeByIndexes(row, column, rows, columns).conditionalFormats.add('Custom');
  format.custom.rule.formula = markFormula(rule);
  format.custom.format.font.color = rule.ink;
  format.custom.format.fill.color = rule.ground;
};
