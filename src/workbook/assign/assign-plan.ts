import { stockOf } from '../../plan/choosing/candidate';
import type { Assigner } from '../../plan/assign/assigner';
import type { Assignment } from '../../plan/assign/assignment';
import type { AssignOptions } from '../../plan/assign/options';
import type { JudgedPlan } from '../plan-of';

/** An assignment with the 0-based sheet row of each of its channels. */
export interface RowAssignment extends Assignment {
  readonly rows: readonly number[];
}

/** Assigns the sensors of the workbook's lists to the channels of its channel list. Nothing is written. */
export const assignPlan = async (
  { plan, byRow, limits }: JudgedPlan,
  options: AssignOptions,
  assign: Assigner,
): Promise<RowAssignment> => {
  const rows = [...byRow.keys()];
  const channels = rows.map((row) => byRow.get(row)!.channel);
  return { ...(await assign(channels, stockOf(plan), limits, options)), rows };
};
