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
 * keep their sensor and those that got none are left as they are; so are parts that the row names already.
 */
export const assignmentEdits = (
  { assigned, channels, rows }: RowAssignment,
  parts: readonly Part[] = [],
): readonly RowEdit[] =>
  assigned.flatMap(({ channel, combination, isPinned }: Assigned): RowEdit[] => {
    const row = rows[channel];
    if (row === undefined) return [];
    const named = channels[channel]!.named;
    return [
      ...(isPinned ? [] : [{ row, key: 'sensor', value: combination.sensor.name }]),
      ...parts.flatMap((part): RowEdit[] => {
        const chosen = combination[part];
        return chosen && chosen !== channels[channel]![part] && named?.[part] === undefined ? [{ row, key: part, value: chosen.name }] : []; // prettier-ignore
      }),
    ];
  });

/** Writes an assignment as one action; rejects with a HostProblem that says why nothing was changed. */
export const writeAssignment = (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  assignment: RowAssignment,
  { parts, ...options }: WriteOptions & { readonly parts?: readonly Part[] } = {},
): Promise<number> => {
  const edits = assignmentEdits(assignment, parts);
  return writeEdits(spreadsheet, source, edits, LABEL[options.language ?? 'en'], options);
};
