import type { IMutationInfo, Nullable, Worksheet } from '@univerjs/core';
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  ConditionalFormattingRuleModel,
  DeleteConditionalRuleMutation,
  DeleteConditionalRuleMutationUndoFactory,
  type IConditionFormattingRule,
} from '@univerjs/sheets-conditional-formatting';
import type { MarkRule } from '../../workbook/port';
import type { Action } from './action';
import { rangeOf } from './change-beside-cells';

const PREFIX = 'chan-mark-';
let marksMade = 0;

const sameColor = (found: Nullable<string>, ours: string): boolean =>
  found?.toLowerCase().replace('#', '') === ours.toLowerCase().replace('#', '');

/** A rule read from a file is ours if it tests for the same word and paints in the same colours. */
const isOwn = (found: IConditionFormattingRule, marks: readonly MarkRule[]): boolean => {
  if (found.cfId.startsWith(PREFIX)) return true;
  const { rule } = found;
  if (rule.type !== CFRuleType.highlightCell || !('subType' in rule) || rule.subType !== CFSubRuleType.text)
    return false;
  return (
    rule.operator === CFTextOperator.equal &&
    marks.some(
      ({ equals, ink, ground }) =>
        rule.value === equals && sameColor(rule.style.cl?.rgb, ink) && sameColor(rule.style.bg?.rgb, ground),
    )
  );
};

const ruleOf = ({ range, equals, ink, ground }: MarkRule): IConditionFormattingRule => ({
  cfId: `${PREFIX}${++marksMade}`,
  ranges: [rangeOf(range)],
  stopIfTrue: false,
  rule: {
    type: CFRuleType.highlightCell,
    subType: CFSubRuleType.text,
    operator: CFTextOperator.equal,
    value: equals,
    style: { cl: { rgb: ink }, bg: { rgb: ground } },
  },
});

export const replaceMarks = (action: Action, sheet: Worksheet, marks: readonly MarkRule[]): void => {
  const { injector } = action.services;
  const at = { unitId: action.unitId, subUnitId: sheet.getSheetId() };
  const model = injector.get(ConditionalFormattingRuleModel);
  const remove = (cfId: string): IMutationInfo => ({ id: DeleteConditionalRuleMutation.id, params: { ...at, cfId } });
  for (const rule of [...(model.getSubunitRules(at.unitId, at.subUnitId) ?? [])]) {
    if (!isOwn(rule, marks)) continue;
    const deletion = remove(rule.cfId);
    const back = DeleteConditionalRuleMutationUndoFactory(injector, deletion.params as never) as IMutationInfo[];
    action.run(deletion, back);
  }
  // The model puts a new rule on top, so the last one goes first.
  for (const mark of [...marks].reverse()) {
    const rule = ruleOf(mark);
    action.run({ id: AddConditionalRuleMutation.id, params: { ...at, rule } }, [remove(rule.cfId)]);
  }
};
