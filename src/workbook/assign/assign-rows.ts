import type { AssignOptions } from '../../plan/assign/options';
import type { Assigner } from '../../plan/assign/assigner';
import { pinnedPlaces } from '../../plan/assign/plan-problem';
import { withTestEnd } from '../../plan/assign/test-end';
import { stockOf } from '../../plan/choosing/candidate';
import type { JudgedPlan } from '../plan-of';
import type { RowAssignment } from './assign-plan';

export interface ScopedAssignment extends RowAssignment {
  /** Channels of other rows that name more pieces than there are, by name. */
  readonly overdrawn: readonly string[];
}

/**
 * Assigns sensors to the channels of these sheet rows. What other rows name stays with them and is taken off the stock;
 * a housing there may still serve a row here with a free axis. Nothing is written.
 */
export const assignRows = async (
  { plan, byRow, limits }: JudgedPlan,
  scope: ReadonlySet<number>,
  asked: AssignOptions,
  assign: Assigner,
): Promise<ScopedAssignment> => {
  const all = [...byRow.keys()];
  const options = withTestEnd([...byRow.values()].map(({ channel }) => channel), asked); // prettier-ignore
  const own = all.filter((row) => scope.has(row));
  const others = all.filter((row) => !scope.has(row) && byRow.get(row)!.channel.sensor !== undefined);
  const channelsOf = (rows: readonly number[]) => rows.map((row) => byRow.get(row)!.channel);
  const channels = channelsOf([...own, ...others]);
  const outside = others.map((_, n) => own.length + n);
  const pinned = [...pinnedPlaces(channels, options), ...outside];
  const found = await assign(channels, stockOf(plan), limits, { ...options, pinned });
  const isOwn = ({ channel }: { readonly channel: number }) => channel < own.length;
  return {
    ...found,
    rows: own,
    channels: channels.slice(0, own.length),
    assigned: found.assigned.filter(isOwn),
    unserved: found.unserved.filter(isOwn),
    overdrawn: found.unserved.flatMap((one) => (isOwn(one) ? [] : [channels[one.channel]!.id])),
  };
};
