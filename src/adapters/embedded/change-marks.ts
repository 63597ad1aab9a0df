import type { IMutationInfo, Worksheet } from '@univerjs/core';
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
import { MARK_PREFIX } from './import/rules';

let marksMade = 0;

const ruleOf = ({ range, equals, ink, ground }: MarkRule): IConditionFormattingRule => ({
  cfId: `${MARK_PREFIX}${++marksMade}`,
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
    if (!rule.cfId.startsWith(MARK_PREFIX)) continue;
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
