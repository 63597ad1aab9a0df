import type { Language } from '../../core/language';
import { UNITS } from '../../core/units';
import { isChanged, type ChannelChange, type FieldChange, type PlanComparison } from '../../plan/compare';
import { causesOf } from '../../plan/compare-causes';
import { valueText, type Held } from '../../plan/compare-values';
import { sentenceOf } from '../../plan/sentence';
import { causeText, limitChangeText } from './change-text';

const sideJson = (table: FieldChange['table'], key: string, held: Held) => ({
  typed: held.typed ?? null,
  read: held.isUnread ? null : (valueText(table, key, held.value) ?? null),
  ...(held.isUnread ? { unreadable: true } : {}),
});
const fieldJson = ({ table, key, before, after }: FieldChange) => ({
  field: key,
  before: sideJson(table, key, before),
  after: sideJson(table, key, after),
});

const changeJson = (comparison: PlanComparison, change: ChannelChange, language: Language) => {
  const { verdict } = change;
  const old = comparison.before.plan.channels[change.before]!.id;
  const { id } = comparison.after.plan.channels[change.after]!;
  const found = verdict && causesOf(comparison, change);
  return {
    channel: id,
    ...(change.isRename ? { renamed_from: old } : {}),
    matched_by: change.by,
    fields: change.fields.map(fieldJson),
    ...(verdict && found
      ? {
          verdict: { before: verdict.before, after: verdict.after, turn: verdict.turn, checks: verdict.headlines },
          causes: found.causes.map((cause) => causeText(cause, language)),
          causes_only_together: found.onlyTogether,
          findings_new: verdict.came.map((finding) => sentenceOf(finding, language)),
          findings_gone: verdict.gone.map((finding) => sentenceOf(finding, language)),
        }
      : {}),
  };
};

/** A comparison for programs. */
export const compareJson = (comparison: PlanComparison, language: Language) => {
  const { before, after, lists, limits, across } = comparison;
  return {
    is_changed: isChanged(comparison),
    counts: comparison.counts,
    changed: comparison.changed.map((change) => changeJson(comparison, change, language)),
    added: comparison.added.map((place) => after.plan.channels[place]!.id),
    removed: comparison.removed.map((place) => before.plan.channels[place]!.id),
    lists: lists.map(({ table, name, kind, fields, channels }) => ({
      list: table,
      name,
      change: kind,
      fields: fields.map(fieldJson),
      channels: channels.map((place) => (kind === 'removed' ? before : after).plan.channels[place]!.id),
    })),
    limits: limits.map((change) => ({
      limit: change.name,
      bound: change.bound,
      unit: UNITS[change.unit].label,
      text: limitChangeText(change, language),
    })),
    rows_together: {
      new: across.came.map((finding) => sentenceOf(finding, language)),
      gone: across.gone.map((finding) => sentenceOf(finding, language)),
    },
    typed_otherwise_only: comparison.respelt,
  };
};
