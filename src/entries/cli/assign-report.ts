import type { Language } from '../../core/language';
import { marginWords } from '../../plan/choosing/candidate-words';
import type { Assigned, Assignment } from '../../plan/assign/assignment';
import { handedOutWords } from '../../plan/assign/piece-words';
import { objectiveWords, outcomeWords, shortageWords, unservedWords } from '../../plan/assign/words';
import { dateText } from '../../plan/json-date';
import { planningAid } from '../../plan/words/cautions';
import { plainLine, type Pen } from './terminal';
import { hanging } from './wrap';

/** "#2", its serial number, and the axis of the housing where it has several. */
const pieceOf = ({ piece, serial, axis }: Assigned): string =>
  [serial ?? `#${piece}`, ...(axis === undefined ? [] : [`axis ${axis}`])].join(' ');

/** Columns as wide as their longest cell. */
const table = (rows: readonly (readonly string[])[]): readonly string[] => {
  const widths = rows[0]!.map((_, c) => Math.max(...rows.map((row) => row[c]!.length)));
  return rows.map((row) => row.map((cell, c) => cell.padEnd(widths[c]!)).join('  ').trimEnd()); // prettier-ignore
};

export const assignReport = (
  path: string,
  assignment: Assignment,
  done: readonly string[],
  language: Language,
  columns: number,
  pen: Pen,
  hasSerialColumn = true,
): string => {
  const { channels, assigned, unserved, uses } = assignment;
  const section = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ['', pen.strong(title), ...lines];
  const wrapped = (lines: readonly string[]) => lines.map((line) => hanging('  ', plainLine(line), columns));
  const rows = assigned.map((one) => {
    const { id, point, direction } = channels[one.channel]!;
    const { sensor, mount, input } = one.combination;
    return [id, `${point ?? ''}${direction ?? ''}`, sensor.name, pieceOf(one), mount?.name ?? '–', input?.name ?? '–', one.verdict, marginWords(one.margin, language), one.isPinned ? 'pinned' : ''].map(plainLine); // prettier-ignore
  });
  const heading = ['Channel', 'Place', 'Sensor type', 'Piece', 'Mount', 'Input', 'Verdict', 'Margin', ''];
  const used = uses.filter((use) => use.used > 0 || use.kept > 0 || use.overdue > 0);
  const count = (n: number | undefined): string => (n === undefined ? 'no limit' : String(n));
  const useRows = used.map((use) => [use.sensor.name, count(use.quantity), String(use.used), String(use.channels), String(use.kept), String(use.overdue), count(use.left)].map(plainLine)); // prettier-ignore
  const objective = objectiveWords(assignment, language);
  return [
    pen.strong(plainLine(path)),
    ...wrapped(outcomeWords(assignment, language)),
    ...(rows.length === 0 ? [] : ['', ...table([heading, ...rows])]),
    ...(rows.length === 0 ? [] : wrapped(handedOutWords(assignment, hasSerialColumn, language))),
    ...section('Without a sensor', wrapped(unserved.map((one) => unservedWords(one, channels, language)))),
    ...section('What is missing', wrapped(shortageWords(assignment, language))),
    ...(used.length === 0 ? [] : ['', ...table([['Sensor type', 'In stock', 'Used', 'Channels', 'Kept back', 'Calibration', 'Left'], ...useRows])]), // prettier-ignore
    ...section(objective[0] ?? '', wrapped(objective.slice(1))),
    ...section('Done', wrapped(done)),
    '',
    hanging('', planningAid(language), columns),
    '',
  ].join('\n');
};

export const assignJson = (path: string, assignment: Assignment, language: Language) => {
  const { channels, assigned, unserved, uses, shortage, terms, cost, status, isOptimal, isFewest, gap } = assignment;
  return {
    plan: path,
    status,
    proven: { cheapest: isOptimal, fewest_left_out: isFewest, gap },
    assigned: assigned.map(({ channel, combination, verdict, margin, piece, serial, axis, isPinned }) => ({
      channel: channels[channel]!.id,
      sensor: combination.sensor.name,
      mount: combination.mount?.name,
      cable: combination.cable?.name,
      input: combination.input?.name,
      piece,
      serial,
      axis,
      verdict,
      margin_dB: margin !== undefined && Number.isFinite(margin) ? margin : undefined,
      pinned: isPinned || undefined,
    })),
    unserved: unserved.map((one) => ({
      channel: channels[one.channel]!.id,
      why: one.why,
      sentence: unservedWords(one, channels, language),
    })),
    types: uses.map(({ sensor, ...use }) => ({ sensor: sensor.name, ...use })),
    shortage: shortage && {
      fewest: shortage.fewest.map(plainMissing),
      any_one_of: shortage.alone.map(plainMissing),
      proven: shortage.isProven,
      sentences: shortageWords(assignment, language),
    },
    test_end: assignment.testEnd === undefined ? undefined : dateText(assignment.testEnd),
    pieces: handedOutWords(assignment, true, language),
    objective: { cost, terms, sentences: objectiveWords(assignment, language) },
  };
};

type Missing = NonNullable<Assignment['shortage']>['fewest'][number];
const plainMissing = (missing: Missing) =>
  missing.kind === 'sensor'
    ? { sensor: missing.sensor.name, count: missing.count }
    : { input: missing.mode, count: missing.count };
