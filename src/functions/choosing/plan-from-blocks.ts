import { failure, outcome, type Outcome } from '../../core/issue';
import { planFromTables, type TablePlan } from '../../plan/from-tables';
import type { Block } from '../define';
import { tableFromBlock } from '../verdict/table-from-block';

const LISTS = ['sensors', 'mounts', 'cables', 'inputs', 'limits'] as const;

/** Ranges with heading rows, read as CHECK reads them. */
export const planFromBlocks = (
  blocks: Readonly<{ channels: Block } & Partial<Record<(typeof LISTS)[number], Block>>>,
): Outcome<TablePlan> => {
  const channels = tableFromBlock('channels', blocks.channels);
  if (!channels || channels.columns.size === 0)
    return failure({
      code: 'wrong-size',
      arg: 'channels',
      given: 'a range without headings of a channel list',
      rule: 'the heading row and the rows below it',
    });
  const lists = LISTS.flatMap((name) => (blocks[name] && tableFromBlock(name, blocks[name])) ?? []);
  return outcome(planFromTables([channels, ...lists]));
};
