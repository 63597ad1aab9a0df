import type { Combination } from '../../plan/choosing/candidate';
import type { Candidate } from '../../plan/choosing/rank';
import type { Spreadsheet } from '../port';
import { EDIT_WORDS } from './row-edit-words';
import { writeEdits, type PlanSource, type RowEdit, type WriteOptions } from './row-edits';

const KEYS = ['sensor', 'mount', 'cable', 'input'] as const;

/** Names of a combination for these sheet rows; a part that is not known leaves its cell alone. */
export const editsForCombination = (rows: readonly number[], combination: Combination): readonly RowEdit[] =>
  rows.flatMap((row) =>
    KEYS.flatMap((key): RowEdit[] => {
      const part = combination[key];
      return part ? [{ row, key, value: part.name }] : [];
    }),
  );

/** A candidate's best combination for each of the channels it was ranked for; `rows` are their sheet rows, in that order. */
export const editsForCandidate = (rows: readonly number[], { fits }: Candidate): readonly RowEdit[] =>
  fits.flatMap(({ channels, fit }) =>
    editsForCombination(
      channels.flatMap((place) => rows[place] ?? []),
      fit.combination,
    ),
  );

/** Writes a choice into the rows as one action; rejects with a HostProblem that says why nothing was changed. */
export const useChoice = (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  edits: readonly RowEdit[],
  options: WriteOptions = {},
): Promise<number> => {
  const label = EDIT_WORDS[options.language ?? 'en'].useCandidate;
  return writeEdits(spreadsheet, source, edits, label, options);
};
