import type { InLanguages } from '../../core/language';
import type { Assigned } from '../../plan/assign/assignment';
import type { Part } from '../../plan/choosing/candidate';
import { joinName } from '../../plan/join-name';
import type { Channel } from '../../plan/model';
import { channelLists, listRowOf } from '../channel-lists';
import { writeEdits, type PlanSource, type RowEdit, type WriteOptions } from '../choosing/row-edits';
import type { Spreadsheet } from '../port';
import type { RowAssignment } from './assign-plan';

/** Shown by hosts that name undo steps. */
const LABEL: InLanguages<string> = {
  en: 'Assign sensors from stock',
  de: 'Aufnehmer aus dem Bestand zuordnen',
  fr: 'Affecter les capteurs du stock',
};

export interface AssignmentCells {
  /** Parts that are wanted as well. */
  readonly parts?: readonly Part[];
  /** Of these, parts that may change although a row names them. */
  readonly free?: readonly Part[];
}

/** Whether each sheet of the channel list has a column for this field. */
export const hasColumn = ({ tables }: Pick<PlanSource, 'tables'>, key: string): boolean =>
  channelLists(tables).every(({ columns }) => columns.has(key));

/**
 * Cells of an assignment: the sensor of every channel that got one, its serial number where the list has a column for
 * it, and the parts that are wanted as well. Channels that keep their sensor and those that got none are left as they
 * are, but for a serial number that a kept one lacks; so are parts that the row names already, unless they were free to
 * change.
 */
export const assignmentEdits = (
  source: PlanSource,
  { assigned, channels, rows }: RowAssignment,
  { parts = [], free = [] }: AssignmentCells = {},
): readonly RowEdit[] => {
  const [withSerial, withDue] = ['serial', 'calibrationDue'].map((key) => hasColumn(source, key));
  return assigned.flatMap((one): RowEdit[] => {
    const { channel: place, combination, isPinned } = one;
    const row = rows[place];
    if (row === undefined) return [];
    const channel = channels[place]!;
    // Where nothing else in the row says which piece it is, the cell of the type goes on doing so.
    const saysPiece =
      !withSerial && one.serial !== undefined && cellText(source, row, 'sensor') === joinName(one.serial);
    return [
      ...(isPinned || saysPiece ? [] : [{ row, key: 'sensor', value: combination.sensor.name }]),
      ...(withSerial ? pieceEdits(row, cellText(source, row, 'serial'), channel, one, withDue === true) : []),
      ...parts.flatMap((part): RowEdit[] => {
        const chosen = combination[part];
        if (!chosen || chosen === channel[part]) return [];
        const mayWrite = channel.named?.[part] === undefined || (free.includes(part) && !isPinned);
        return mayWrite ? [{ row, key: part, value: chosen.name }] : [];
      }),
    ];
  });
};

/** The name or number as it stands in the row's own column, which another column may say in its place. */
const cellText = ({ tables, contentOf }: PlanSource, id: number, key: string): string => {
  const at = listRowOf(tables, id);
  const use = at?.table.columns.get(key);
  if (!at || !use) return '';
  const { values, row, column } = contentOf(at.table.sheet);
  const cell = values[at.row - row]?.[use.column - column] ?? '';
  return typeof cell === 'object' ? '' : joinName(String(cell));
};

/** The number of the piece, and the row's own date of calibration where it was that of another. */
const pieceEdits = (
  row: number,
  now: string,
  channel: Channel,
  { combination, serial }: Assigned,
  withDue: boolean,
): RowEdit[] => {
  const { sensor } = combination;
  // Without numbers in stock a row of the same type keeps what it says.
  if (serial === undefined ? now === '' || channel.sensor === sensor : joinName(serial) === now) return [];
  const piece = sensor.pieces?.find((known) => serial !== undefined && joinName(known.serial) === joinName(serial));
  const isOther = serial === undefined || joinName(serial) !== joinName(channel.serial ?? '');
  const hasDate = withDue && isOther && channel.calibrationDue !== undefined;
  return [
    { row, key: 'serial', value: serial ?? null },
    ...(hasDate ? [{ row, key: 'calibrationDue', value: piece?.calibrationDue ?? null }] : []),
  ];
};

/** Writes an assignment as one action; rejects with a HostProblem that says why nothing was changed. */
export const writeAssignment = (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  assignment: RowAssignment,
  { parts, free, ...options }: WriteOptions & AssignmentCells = {},
): Promise<number> => {
  const edits = assignmentEdits(source, assignment, { parts, free });
  return writeEdits(spreadsheet, source, edits, LABEL[options.language ?? 'en'], options);
};
