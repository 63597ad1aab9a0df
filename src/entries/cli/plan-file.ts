import { checkChannels, type ChannelCheck } from '../../plan/check';
import { readJsonPlan } from '../../plan/json-plan';
import { describeMisread } from '../../plan/misread';
import type { Plan } from '../../plan/model';
import { HostProblem } from '../../workbook/port';
import type { Mapping } from '../../workbook/tables';
import { kindOf } from './find-plans';
import { parseJson } from './json-file';
import { refuseForJson } from './lists-option';
import { CommandProblem } from './status';
import { openPlan, type OpenOptions, type WorkbookPlan } from './workbook-plan';

/** One plan from a workbook or a JSON file, judged. */
export interface PlanOnDisk {
  readonly path: string;
  readonly plan: Plan;
  readonly checks: readonly ChannelCheck[];
  /** Cells or keys that say nothing readable, in sentences. */
  readonly unread: readonly string[];
  /** How a sensor list was laid out for it. */
  readonly stocked: readonly string[];
  /** Only where the file is a workbook. */
  readonly workbook?: WorkbookPlan;
}

export const planOnDisk = async (
  path: string,
  mapping: Mapping | undefined,
  open: OpenOptions = {},
): Promise<PlanOnDisk> => {
  if (kindOf(path) !== 'json') {
    const workbook = await openPlan(path, mapping, open).catch((error: unknown) => {
      if (!(error instanceof HostProblem)) throw error;
      throw new CommandProblem(error.message.includes(path) ? error.message : `${path}: ${error.message}`);
    });
    const { judged, advice, stocked = [] } = workbook;
    const unread = [...judged.unread.map(({ text }) => text), ...advice];
    return { path, plan: judged.plan, checks: [...judged.byRow.values()], unread, stocked, workbook };
  }
  refuseForJson(path, open);
  const { plan, misreads } = readJsonPlan(await parseJson(path, 'a plan as JSON'));
  if (plan.channels.length === 0)
    throw new CommandProblem(
      `${path}: the plan has no channels; expected a list "channels" or "cases" with one object per channel.`,
    );
  const checks = checkChannels(plan.channels, plan.limits);
  return { path, plan, checks, unread: misreads.map((misread) => describeMisread(misread)), stocked: [] };
};
