import { checkChannel, type ChannelCheck } from './check';
import type { ChannelChange, FieldChange, PlanComparison } from './compare';
import { withLimitOf, type LimitChange } from './compare-limits';
import { LISTS, PART_OF } from './compare-lists';
import type { Headline } from './finding';
import { joinName } from './join-name';
import { modelKey, REQUIREMENT_FIELDS, type ListName } from './item-fields';
import type { Limits } from './limits';
import type { Channel, Requirement } from './model';

/** One thing that differs and can have changed a verdict: a cell of the row, a cell of a list, a limit. */
export type Cause =
  | { readonly kind: 'row'; readonly change: FieldChange }
  | { readonly kind: 'list'; readonly table: ListName; readonly name: string; readonly change: FieldChange }
  | { readonly kind: 'limit'; readonly change: LimitChange };

export interface Causes {
  readonly causes: readonly Cause[];
  /** No single one decides; it takes several of them. */
  readonly onlyTogether: boolean;
}

interface Side {
  readonly channel: Channel;
  readonly limits: Limits;
}

/**
 * What changed the verdicts of a row, found by trial: a difference counts when it alone, made in the old plan, changes a
 * verdict that changed, or when undoing it alone in the new plan does.
 */
export const causesOf = (comparison: PlanComparison, change: ChannelChange): Causes => {
  const { before, after } = comparison;
  const was = before.checks[change.before]!;
  const is = after.checks[change.after]!;
  const old: Side = { channel: was.channel, limits: before.plan.limits };
  const fresh: Side = { channel: is.channel, limits: after.plan.limits };
  const headlines = change.verdict?.headlines ?? [];
  const possible = differencesOf(comparison, change);
  const causes = possible.filter((cause) => {
    const done = checked(withCauseOf(old, fresh, cause));
    const undone = checked(withCauseOf(fresh, old, cause));
    return isMoved(headlines, was, done) || isMoved(headlines, is, undone);
  });
  return causes.length > 0 ? { causes, onlyTogether: false } : { causes: possible, onlyTogether: true };
};

const checked = ({ channel, limits }: Side): ChannelCheck => checkChannel(channel, limits);
const isMoved = (headlines: readonly Headline[], from: ChannelCheck, to: ChannelCheck): boolean =>
  headlines.some((headline) => from[headline].verdict !== to[headline].verdict);

const PARTS = ['sensor', 'mount', 'cable', 'input'] as const;
type PartName = (typeof PARTS)[number];
const isPart = (key: string): key is PartName => PARTS.some((part) => part === key);

/** Everything between the two plans that reaches this row. */
export const differencesOf = (comparison: PlanComparison, { fields, after }: ChannelChange): readonly Cause[] => {
  const channel = comparison.after.plan.channels[after]!;
  const replaced = fields.map(({ key }) => key);
  const ofRow = fields
    .filter(({ key }) => isPart(key) || REQUIREMENT_FIELDS.includes(key))
    .map((change): Cause => ({ kind: 'row', change }));
  const ofLists = LISTS.flatMap((table) => {
    const part = PART_OF[table];
    const name = channel.named?.[part] ?? channel[part]?.name;
    if (name === undefined || replaced.includes(part)) return [];
    const changed = comparison.lists.find((list) => list.table === table && joinName(list.name) === joinName(name));
    if (!changed) return [];
    // A type that came or went under a name that stayed is a change of the whole part.
    if (changed.kind !== 'changed') {
      const held = (isThere: boolean) => ({ value: isThere ? name : undefined, isUnread: false });
      const change = {
        table,
        key: part,
        before: held(changed.kind === 'removed'),
        after: held(changed.kind === 'added'),
      };
      return [{ kind: 'list', table, name: changed.name, change } as const];
    }
    return changed.fields.map((change): Cause => ({ kind: 'list', table, name: changed.name, change }));
  });
  return [...ofRow, ...ofLists, ...comparison.limits.map((change): Cause => ({ kind: 'limit', change }))];
};

/** One side with a single thing taken from the other. */
export const withCauseOf = (to: Side, from: Side, cause: Cause): Side => {
  if (cause.kind === 'limit') return { ...to, limits: withLimitOf(to.limits, from.limits, cause.change) };
  const { key } = cause.change;
  if (cause.kind === 'row')
    return { ...to, channel: isPart(key) ? withPart(to.channel, from.channel, key) : withRequirement(to.channel, from.channel, key) }; // prettier-ignore
  const part = PART_OF[cause.table];
  const [own, other] = [to.channel[part], from.channel[part]];
  if (!own || !other || key === part) return { ...to, channel: withPart(to.channel, from.channel, part) };
  return { ...to, channel: { ...to.channel, [part]: withKey(own, other, modelKey(cause.table, key)) } };
};

const withPart = (to: Channel, from: Channel, part: PartName): Channel => {
  const requirement = withUnread(to.requirement, from.requirement, part);
  return { ...to, [part]: from[part], named: { ...to.named, [part]: from.named?.[part] }, requirement };
};

const withRequirement = (to: Channel, from: Channel, key: string): Channel => {
  const taken = key === 'lineSpacing' ? 'detector' : (key as keyof Requirement);
  return { ...to, requirement: withKey(to.requirement, from.requirement, taken, key) };
};

type Readable = { readonly unread?: readonly string[] };
const withKey = <T extends Readable>(to: T, from: T, key: string, unreadKey = key): T =>
  withUnread({ ...to, [key]: (from as Record<string, unknown>)[key] }, from, unreadKey);

const withUnread = <T extends Readable>(to: T, from: T, key: string): T => {
  const others = (to.unread ?? []).filter((known) => known !== key);
  const unread = from.unread?.includes(key) ? [...others, key] : others;
  return { ...to, unread: unread.length > 0 ? unread : undefined };
};
