import type { InLanguages } from '../../core/language';
import type { Assigned } from '../../plan/assign/assignment';
import type { Part } from '../../plan/choosing/candidate';
import { writeEdits, type PlanSource, type RowEdit, type WriteOptions } from '../choosing/row-edits';
import type { Spreadsheet } from '../port';
import type { RowAssignment } from './assign-plan';

/** Shown by hosts that name undo steps. */
const LABEL: InLanguages<string> = {
  en: 'Assign sensors from stock',
  de: 'Aufnehmer aus dem Bestand zuordnen',
  fr: 'Affecter les capteurs du stock',
};

/**
 * Cells of an assignment: the sensor of every channel that got one, and the parts that are wanted as well. Channels that
 * keep their sensor and those that got none are left as they are; so are parts that the row names already, unless they
 * were free to change.
 */
export const assignmentEdits = (
  { assigned, channels, rows }: RowAssignment,
  parts: readonly Part[] = [],
  free: readonly Part[] = [],
): readonly RowEdit[] =>
  assigned.flatMap(({ channel, combination, isPinned }: Assigned): RowEdit[] => {
    const row = rows[channel];
    if (row === undefined) return [];
    const named = channels[channel]!.named;
    return [
      ...(isPinned ? [] : [{ row, key: 'sensor', value: combination.sensor.name }]),
      ...parts.flatMap((part): RowEdit[] => {
        const chosen = combination[part];
        if (!chosen || chosen === channels[channel]![part]) return [];
        const mayWrite = named?.[part] === undefined || (free.includes(part) && !isPinned);
        return mayWrite ? [{ row, key: part, value: chosen.name }] : [];
      }),
    ];
  });

/** Writes an assignment as one action; rejects with a HostProblem that says why nothing was changed. */
export const writeAssignment = (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  assignment: RowAssignment,
  {
    parts,
    free,
    ...options
  }: WriteOptions & { readonly parts?: readonly Part[]; readonly free?: readonly Part[] } = {},
): Promise<number> => {
  const edits = assignmentEdits(assignment, parts, free);
  return writeEdits(spreadsheet, source, edits, LABEL[options.language ?? 'en'], options);
};
