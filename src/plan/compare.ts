import { verdictCounts, type Verdict } from '../core/verdict';
import type { ChannelCheck } from './check';
import { compareChecks } from './choosing/what-if';
import { compareLimits, type LimitChange } from './compare-limits';
import { compareLists, type ListChange } from './compare-lists';
import { matchChannels, type Pair } from './compare-match';
import { isSameHeld, type Held } from './compare-values';
import { fieldsOf, type TableName } from './fields';
import type { Finding, Headline } from './finding';
import { channelField, isChannelFieldUnread } from './item-fields';
import type { Plan } from './model';
import { acrossRows } from './rules-across';

/** A plan with its checks in the order of its channels, and what its cells say. */
export interface ComparedPlan {
  readonly plan: Plan;
  readonly checks: readonly ChannelCheck[];
  /** The cell of a channel (by its place) or of a list's item (by its name); undefined where there is none. */
  readonly typed?: (table: TableName, item: number | string, key: string) => string | undefined;
}

export interface FieldChange {
  readonly table: TableName;
  readonly key: string;
  readonly before: Held;
  readonly after: Held;
}

export interface VerdictChange {
  readonly before: Verdict;
  readonly after: Verdict;
  readonly turn: 'better' | 'worse' | 'same';
  readonly headlines: readonly Headline[];
  /** What keeps it from a PASS now and did not before, and the other way round. */
  readonly came: readonly Finding[];
  readonly gone: readonly Finding[];
}

/** A channel that both plans have, with what differs. */
export interface ChannelChange extends Pair {
  readonly fields: readonly FieldChange[];
  /** Only where a verdict of the row changed, of a headline or of the whole. */
  readonly verdict?: VerdictChange;
}

export interface PlanComparison {
  readonly before: ComparedPlan;
  readonly after: ComparedPlan;
  readonly pairs: readonly Pair[];
  /** Places in the new list, and in the old one. */
  readonly added: readonly number[];
  readonly removed: readonly number[];
  /** Renamed, edited or judged otherwise; the worst turn first. */
  readonly changed: readonly ChannelChange[];
  readonly lists: readonly ListChange[];
  readonly limits: readonly LimitChange[];
  /** What shows only when rows are taken together. */
  readonly across: { readonly came: readonly Finding[]; readonly gone: readonly Finding[] };
  /** Cells that are typed otherwise and read the same; no change of the plan. */
  readonly respelt: number;
  readonly counts: {
    readonly before: Readonly<Record<Verdict, number>>;
    readonly after: Readonly<Record<Verdict, number>>;
  };
}

export interface CompareOptions {
  /** Take no channel for another with a different name: it is removed, and one is added. */
  readonly withoutRenames?: boolean;
}

export const comparePlans = (
  before: ComparedPlan,
  after: ComparedPlan,
  { withoutRenames = false }: CompareOptions = {},
): PlanComparison => {
  const found = matchChannels(before.plan.channels, after.plan.channels);
  const isKept = (pair: Pair) => !(withoutRenames && pair.isRename);
  const pairs = found.pairs.filter(isKept);
  const dropped = found.pairs.filter((pair) => !isKept(pair));
  const verdicts = compareChecks(
    pairs.map((pair) => before.checks[pair.before]!),
    pairs.map((pair) => after.checks[pair.after]!),
    before.plan.limits,
    after.plan.limits,
  ).channels;
  let respelt = 0;
  const changes = pairs.map((pair, i): ChannelChange => {
    const compared = fieldChanges('channels', held(before, pair.before), held(after, pair.after));
    respelt += compared.respelt;
    const { before: was, after: is, turn, headlines, came, gone } = verdicts[i]!;
    const verdict = { before: was.verdict, after: is.verdict, turn, headlines, came, gone };
    return { ...pair, fields: compared.fields, ...(headlines.length > 0 ? { verdict } : {}) };
  });
  const lists = compareLists(before, after);
  const byPlace = (places: readonly number[]) => [...places].sort((a, b) => a - b);
  return {
    before,
    after,
    pairs,
    added: byPlace([...found.added, ...dropped.map((pair) => pair.after)]),
    removed: byPlace([...found.removed, ...dropped.map((pair) => pair.before)]),
    changed: changes
      .filter(({ fields, verdict, isRename }) => fields.length > 0 || verdict || isRename)
      .sort((a, b) => rank(a) - rank(b) || a.after - b.after),
    lists: lists.changes,
    limits: compareLimits(before.plan.limits, after.plan.limits),
    across: acrossChanges(before, after),
    respelt: respelt + lists.respelt,
    counts: { before: verdictCounts(before.checks), after: verdictCounts(after.checks) },
  };
};

/** False when the two plans say the same, however it is typed. */
export const isChanged = ({ added, removed, changed, lists, limits }: PlanComparison): boolean =>
  [added, removed, changed, lists, limits].some(({ length }) => length > 0);

const RANK = { worse: 0, better: 1, same: 2 } as const;
const rank = ({ verdict, isRename }: ChannelChange): number => (verdict ? RANK[verdict.turn] : isRename ? 3 : 4);

type HeldAt = (key: string) => Held;

const held =
  ({ plan, typed }: ComparedPlan, place: number): HeldAt =>
  (key) => {
    const channel = plan.channels[place]!;
    return {
      typed: typed?.('channels', place, key),
      value: channelField(channel, key),
      isUnread: isChannelFieldUnread(channel, key),
    };
  };

/** Fields of one table that read otherwise, and how many are merely typed otherwise. */
export const fieldChanges = (table: TableName, before: HeldAt, after: HeldAt) => {
  const fields: FieldChange[] = [];
  let respelt = 0;
  for (const { key } of fieldsOf(table)) {
    const change = { table, key, before: before(key), after: after(key) };
    const typed = [change.before.typed, change.after.typed];
    if (!isSameHeld(key, change.before, change.after)) fields.push(change);
    else if (typed.every((text) => text !== undefined) && typed[0] !== typed[1]) respelt++;
  }
  return { fields, respelt };
};

const acrossChanges = (before: ComparedPlan, after: ComparedPlan) => {
  const found = ({ checks, plan }: ComparedPlan) =>
    acrossRows(checks, plan.limits).flatMap(({ finding }) => (finding.verdict === 'PASS' ? [] : [finding]));
  const [olds, news] = [found(before), found(after)];
  const [had, has] = [new Set(olds.map(findingKey)), new Set(news.map(findingKey))];
  return {
    came: news.filter((finding) => !had.has(findingKey(finding))),
    gone: olds.filter((finding) => !has.has(findingKey(finding))),
  };
};

/** Equal for findings that say the same; numbers count as equal to 12 digits, as cells do. */
const findingKey = (finding: Finding): string =>
  JSON.stringify(finding, (_, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value));
