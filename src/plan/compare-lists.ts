import { fieldChanges, type ComparedPlan, type FieldChange } from './compare';
import { joinName } from './join-name';
import { isItemFieldUnread, itemField, type ListName } from './item-fields';
import type { Plan } from './model';

export const LISTS = ['sensors', 'mounts', 'cables', 'inputs'] as const satisfies readonly ListName[];
export const PART_OF = { sensors: 'sensor', mounts: 'mount', cables: 'cable', inputs: 'input' } as const;

/** An item of a list that came, went or is described otherwise. */
export interface ListChange {
  readonly table: ListName;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'changed';
  readonly fields: readonly FieldChange[];
  /** Places of the channels that name it: in the new plan, or in the old one where it was removed. */
  readonly channels: readonly number[];
}

const usersOf = ({ channels }: Plan, table: ListName, name: string): readonly number[] =>
  channels.flatMap((channel, place) => {
    const typed = channel.named?.[PART_OF[table]] ?? channel[PART_OF[table]]?.name;
    return typed !== undefined && joinName(typed) === joinName(name) ? [place] : [];
  });

const heldIn =
  ({ typed }: ComparedPlan, table: ListName, name: string, item: object) =>
  (key: string) => ({
    typed: typed?.(table, name, key),
    value: itemField(table, item, key),
    isUnread: isItemFieldUnread(table, item, key),
  });

export const compareLists = (before: ComparedPlan, after: ComparedPlan) => {
  let respelt = 0;
  const changes = LISTS.flatMap((table): ListChange[] => {
    const [olds, news] = [before, after].map(
      ({ plan }) => new Map([...plan[table]].map(([name, item]) => [joinName(name), { name, item }])),
    );
    const removed = [...olds!].flatMap(([key, { name }]): ListChange[] =>
      news!.has(key) ? [] : [{ table, name, kind: 'removed', fields: [], channels: usersOf(before.plan, table, name) }],
    );
    const others = [...news!].flatMap(([key, { name, item }]): ListChange[] => {
      const old = olds!.get(key);
      const channels = usersOf(after.plan, table, name);
      if (!old) return [{ table, name, kind: 'added', fields: [], channels }];
      const compared = fieldChanges(table, heldIn(before, table, old.name, old.item), heldIn(after, table, name, item));
      respelt += compared.respelt;
      return compared.fields.length > 0 ? [{ table, name, kind: 'changed', fields: compared.fields, channels }] : [];
    });
    return [...removed, ...others];
  });
  return { changes, respelt };
};
