import { stockOf, type Stock } from '../../plan/choosing/candidate';
import { rankCandidates, type RankOptions, type Ranking } from '../../plan/choosing/rank';
import { waysOut, type WaysOut } from '../../plan/choosing/relax';
import type { StockOptions } from '../../plan/choosing/relax-trials';
import type { Channel } from '../../plan/model';
import type { JudgedPlan } from '../plan-of';

/** Candidates for channels of a workbook, with the sheet rows they were ranked for. */
export interface RowRanking extends Ranking {
  /** 0-based sheet rows, in the order of the channels. */
  readonly rows: readonly number[];
}

export const stockIn = ({ plan }: JudgedPlan): Stock => stockOf(plan);

/** Rows that carry no channel are left out. */
export const rankRows = (judged: JudgedPlan, rows: readonly number[], options?: RankOptions): RowRanking => {
  const known = rows.filter((row) => judged.byRow.has(row));
  const channels = known.map((row) => judged.byRow.get(row)!.channel);
  return { rows: known, ...rankCandidates(channels, stockIn(judged), judged.limits, options) };
};

/** Why nothing fits one row; undefined when something does, or the row carries no channel. */
export const waysOutForRow = (judged: JudgedPlan, row: number, options?: StockOptions): WaysOut | undefined => {
  const channel: Channel | undefined = judged.byRow.get(row)?.channel;
  return channel && waysOut(channel, stockIn(judged), judged.limits, options);
};
