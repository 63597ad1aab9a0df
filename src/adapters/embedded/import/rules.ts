import type { IRange } from '@univerjs/core';
import {
  CFNumberOperator,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  CFValueType,
  type IConditionalFormattingRuleConfig,
  type IConditionFormattingRule,
} from '@univerjs/sheets-conditional-formatting';
import { parseRange, type ConditionalRule, type Sheet } from 'hucre';
import { isMarkFormula } from '../../../workbook/mark-formula';
import { formulaFromFile } from './formula-text';
import { styleFromFile, type ColorReader } from './styles';

/** Rules with such an id are ours, made here or read from a file. */
export const MARK_PREFIX = 'chan-mark-';
const MARKED_WORD = /EXACT\([^,]*,\s*"((?:[^"]|"")*)"\)/;

export const rangeFromFile = (reference: string): IRange => {
  const { startRow, startCol, endRow, endCol } = parseRange(reference.replaceAll('$', ''));
  return { startRow, startColumn: startCol, endRow, endColumn: endCol };
};

/** A rule for whole columns is drawn as far as a person looks, as the grid keeps a place for each of its cells. */
const MOST_ROWS = 20_000;
const MOST_COLUMNS = 500;
const withinReach = (range: IRange): IRange => ({
  ...range,
  endRow: Math.min(range.endRow, range.startRow + MOST_ROWS),
  endColumn: Math.min(range.endColumn, range.startColumn + MOST_COLUMNS),
});

const TEXT_RULES: Partial<Record<ConditionalRule['type'], CFTextOperator>> = {
  containsText: CFTextOperator.containsText,
  notContainsText: CFTextOperator.notContainsText,
  beginsWith: CFTextOperator.beginsWith,
  endsWith: CFTextOperator.endsWith,
  containsBlanks: CFTextOperator.containsBlanks,
  notContainsBlanks: CFTextOperator.notContainsBlanks,
};

const comparison = (rule: ConditionalRule, style: object): IConditionalFormattingRuleConfig | undefined => {
  const [first, second] = [rule.formula ?? []].flat();
  const operator = rule.operator as CFNumberOperator | undefined;
  if (first === undefined || !operator) return undefined;
  const highlight = { type: CFRuleType.highlightCell as const, style };
  const text = /^"((?:[^"]|"")*)"$/.exec(first)?.[1]?.replaceAll('""', '"');
  if (text !== undefined && (operator === CFNumberOperator.equal || operator === CFNumberOperator.notEqual)) {
    const sameness = operator === CFNumberOperator.equal ? CFTextOperator.equal : CFTextOperator.notEqual;
    return { ...highlight, subType: CFSubRuleType.text, operator: sameness, value: text };
  }
  const numbers = [first, second].filter((part) => part !== undefined).map(Number);
  if (numbers.some(Number.isNaN)) return undefined;
  const number = { ...highlight, subType: CFSubRuleType.number as const };
  if (operator === CFNumberOperator.between || operator === CFNumberOperator.notBetween)
    return { ...number, operator, value: [numbers[0] ?? 0, numbers[1] ?? 0] };
  return { ...number, operator, value: numbers[0] };
};

const colorScale = (rule: ConditionalRule): IConditionalFormattingRuleConfig | undefined => {
  const scale = rule.colorScale;
  if (!scale) return undefined;
  return {
    type: CFRuleType.colorScale,
    config: scale.cfvo.map(({ type, value }, index) => ({
      index,
      color: /[0-9a-f]{6}$/i.exec(scale.colors[index] ?? '')?.[0].replace(/^/, '#') ?? '#FFFFFF',
      value: { type: CFValueType[type], value: Number(value ?? 0) },
    })),
  };
};

const isOwnMark = ({ type, formula }: ConditionalRule): boolean =>
  type === 'expression' && isMarkFormula([formula ?? ''].flat().join(''));

const config = (rule: ConditionalRule, color: ColorReader): IConditionalFormattingRuleConfig | undefined => {
  const { bg, cl, bl, it } = rule.style ? styleFromFile(rule.style, color, true) : {};
  const style = { ...(bg && { bg }), ...(cl && { cl }), ...(bl && { bl }), ...(it && { it }) };
  const highlight = { type: CFRuleType.highlightCell as const, style };
  if (rule.type === 'expression') {
    const formula = [rule.formula ?? []].flat()[0];
    if (formula === undefined) return undefined;
    const word = isOwnMark(rule) ? MARKED_WORD.exec(formula)?.[1] : undefined;
    // The grid shifts the references of a formula rule wrongly when rows are inserted; a text rule has none.
    if (word !== undefined)
      return { ...highlight, subType: CFSubRuleType.text, operator: CFTextOperator.equal, value: word };
    return { ...highlight, subType: CFSubRuleType.formula, value: formulaFromFile(formula) };
  }
  if (rule.type === 'cellIs') return comparison(rule, style);
  if (rule.type === 'colorScale') return colorScale(rule);
  if (rule.type === 'duplicateValues') return { ...highlight, subType: CFSubRuleType.duplicateValues };
  if (rule.type === 'uniqueValues') return { ...highlight, subType: CFSubRuleType.uniqueValues };
  const operator = TEXT_RULES[rule.type];
  return operator && { ...highlight, subType: CFSubRuleType.text, operator, value: rule.text ?? '' };
};

/** The conditional formats that the grid can draw, first in force first. Others stay in the file and are not drawn. */
export const rulesFromFile = (sheet: Sheet, sheetId: string, color: ColorReader): IConditionFormattingRule[] =>
  [...(sheet.conditionalRules ?? [])]
    .sort((a, b) => a.priority - b.priority)
    .flatMap((rule, i) => {
      const found = config(rule, color);
      if (!found) return [];
      const ranges = rule.range.split(' ').filter(Boolean).map(rangeFromFile).map(withinReach);
      const cfId = `${isOwnMark(rule) ? MARK_PREFIX : ''}file-${sheetId}-${i}`;
      return [{ cfId, ranges, stopIfTrue: rule.stopIfTrue ?? false, rule: found }];
    });
