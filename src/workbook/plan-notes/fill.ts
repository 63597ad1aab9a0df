import type { Language } from '../../core/language';
import type { Cell } from '../../functions/define';
import { TABLES } from '../../plan/fields';
import { HostProblem, type ApplyOptions, type Change, type SheetContent, type Spreadsheet } from '../port';
import type { RecognisedTables } from '../recognise';
import { factsAsked, isNotesSheet } from '../report/plan-notes';
import { findBlock, textIn, type Block, type Row, type Typed } from './block';
import { blockLooks } from './looks';
import { mergeLines, type Merged } from './merge-lines';
import { DATE_KEY, noteLines, type NoteLine, type NotesOf } from './note-lines';
import { fillingsJson, NOTES_SETTING, parseFillings, type Filling } from './record';
import { COPY_WORDS } from '../share/told-words';
import { NOTE_WORDS } from './words';

export interface FilledNotes {
  readonly sheet: string;
  readonly isChanged: boolean;
  /** What stands in the block, for hosts that do not fit the heights of rows by themselves. */
  readonly block?: { readonly row: number; readonly column: number; readonly rows: readonly Row[] };
  /** In a sentence for the user. */
  readonly told: string;
}
interface Target {
  readonly sheet: string;
  readonly content?: SheetContent;
  readonly block?: Block;
}

const EMPTY = { row: 0, column: 0, values: [], formulas: [], tables: [], merged: [], hiddenRows: [] };

/** The sheet with the block; else a sheet of notes that is no list of the plan; else one to be made. */
const targetIn = async (
  spreadsheet: Spreadsheet,
  tables: RecognisedTables,
  fillings: readonly Filling[],
  name: string,
): Promise<Target> => {
  const known = new Set(fillings.flatMap(({ lines }) => lines.map(({ topic }) => topic)).filter(Boolean));
  const lists = new Set(TABLES.flatMap((table) => tables[table]?.sheet ?? []));
  const infos = (await spreadsheet.sheets()).filter((info) => !lists.has(info.name));
  const found: Target[] = [];
  for (const { name: sheet } of infos) {
    const content = await spreadsheet.readSheet(sheet);
    const block = findBlock(content, (text) => known.has(text));
    if (block) return { sheet, content, block };
    if (isNotesSheet(sheet)) found.push({ sheet, content });
  }
  if (found[0]) return found[0];
  const taken = new Set((await spreadsheet.sheets()).map((info) => info.name.toLowerCase()));
  for (let n = 1; ; n++) {
    const free = n === 1 ? name : `${name} ${n}`;
    if (!taken.has(free.toLowerCase())) return { sheet: free };
  }
};

/** The same sheet without the block: what a person laid out. */
export const outsideBlock = (content: SheetContent, block: Block | undefined): SheetContent =>
  block
    ? {
        ...content,
        values: content.values.filter((_, i) => content.row + i < block.row || content.row + i >= block.end),
      }
    : content;

const rowOf = ({ topic, text }: { readonly topic: Cell; readonly text: Cell }): Row => {
  const typed = (cell: Cell): Typed => (cell === '' || (typeof cell === 'object' && cell) ? null : cell) as Typed;
  return [typed(topic), typed(text)];
};

/** Refuses where a line of the user's would have to be rewritten elsewhere and cannot be without loss. */
const refuseMoves = ({ lines }: Merged, { sheet, block }: Target, language: Language): void => {
  lines.forEach(({ from }, i) => {
    if (block && from !== undefined && from !== i && block.lines[from]!.isFixed)
      throw new HostProblem(NOTE_WORDS[language].held(sheet, block.row + 2 + from), 'occupied');
  });
};

/** Refuses where the block would grow over something below it. */
const refuseGrowth = ({ sheet, content, block }: Target, end: number, language: Language): void => {
  if (!block || !content) return;
  for (let row = block.end; row < end; row++) {
    const line = content.values[row - content.row] ?? [];
    const formulas = content.formulas[row - content.row] ?? [];
    if (line.some((cell) => textIn(cell ?? null) !== '') || formulas.some((formula) => formula !== ''))
      throw new HostProblem(NOTE_WORDS[language].noRoom(sheet, row + 1, end - row), 'occupied');
  }
};

/** Runs of rows that differ from what stands there; rows as they are stay untouched. */
const writes = (sheet: string, row: number, column: number, rows: readonly Row[], before: readonly Row[]): Change[] => {
  const changes: (Extract<Change, { kind: 'cells' }> & { cells: Row[] })[] = [];
  rows.forEach((cells, i) => {
    const old = before[i];
    if (old && old[0] === cells[0] && old[1] === cells[1]) return;
    const last = changes.at(-1);
    if (last && last.row + last.cells.length === row + i) last.cells.push(cells);
    else changes.push({ kind: 'cells', sheet, row: row + i, column, cells: [cells] });
  });
  return changes;
};

const asFound = (content: SheetContent, { row, column, end }: Block): Row[] =>
  Array.from({ length: end - row }, (_, i) => {
    const line = content.values[row + i - content.row] ?? [];
    return rowOf({ topic: line[column - content.column] ?? null, text: line[column + 1 - content.column] ?? null });
  });

const rowsOf = ({ lines }: Merged, filling: number, language: Language): Row[] => {
  const words = NOTE_WORDS[language];
  return [[words.begin, words.about(filling)], ...lines.map(rowOf), [words.end, null]];
};

/** Where the block stands, or will stand: below all that is there, with a blank row between. */
const placeOf = ({ content, block }: Target): { row: number; column: number } => {
  if (block) return block;
  if (!content || content.values.length === 0) return { row: 0, column: 0 };
  return { row: content.row + content.values.length + 1, column: content.column };
};

/**
 * Fills the marked block of the plan's notes, as one action. What a person wrote or changed in it stays, what a person
 * took away stays away, and nothing outside the block is touched. Rejects with a HostProblem where there is no room.
 */
export const fillPlanNotes = async (
  spreadsheet: Spreadsheet,
  tables: RecognisedTables,
  notes: NotesOf,
  {
    language,
    today,
    ...options
  }: Omit<ApplyOptions, 'label'> & { readonly language: Language; readonly today: string },
): Promise<FilledNotes> => {
  const words = NOTE_WORDS[language];
  const fillings = parseFillings(await spreadsheet.getSetting(NOTES_SETTING));
  const target = await targetIn(spreadsheet, tables, fillings, words.sheet);
  const { sheet, content = { ...EMPTY, sheet }, block } = target;
  const said = factsAsked(outsideBlock(content, block));
  const linesOn = (date: string) => noteLines(notes, { language, date, said });
  const last = block && fillings.find(({ number }) => number === block.filling);
  const merged = (now: readonly NoteLine[]) => mergeLines(block?.lines ?? [], last, now);
  const before = block ? asFound(content, block) : [];
  const isAsBefore = (lines: Merged) =>
    block !== undefined && JSON.stringify(rowsOf(lines, block.filling, language)) === JSON.stringify(before);
  const dated = last?.lines.find(({ key }) => key === DATE_KEY)?.text ?? today;
  if (isAsBefore(merged(linesOn(dated)))) return { sheet, isChanged: false, told: words.asBefore(sheet) };
  const now = linesOn(today);
  const lines = merged(now);
  refuseMoves(lines, target, language);
  const number = Math.max(0, ...fillings.map((filling) => filling.number), block?.filling ?? 0) + 1;
  const rows = rowsOf(lines, number, language);
  const { row, column } = placeOf(target);
  refuseGrowth(target, row + rows.length, language);
  const surplus = before.length - rows.length;
  const changed = writes(sheet, row, column, rows, before);
  await spreadsheet.apply(
    [
      ...(target.content
        ? []
        : [{ kind: 'sheet', name: sheet, reading: { foot: COPY_WORDS[language].page } } as const]),
      ...changed,
      ...blockLooks(sheet, row, column, rows, lines, changed),
      ...(target.content ? [] : ([[0, 24], [1, 96]] as const).map(([at, characters]) => ({ kind: 'width' as const, sheet, column: at, columns: 1, characters }))), // prettier-ignore
      { kind: 'fit', sheet, row, rows: rows.length },
      ...(surplus > 0
        ? [{ kind: 'clear', sheet, range: { row: row + rows.length, column, rows: surplus, columns: 2 } } as const]
        : []),
    ],
    { ...options, label: words.begin },
  );
  const kept = { number, lines: now, removed: lines.removed };
  await spreadsheet.setSetting(NOTES_SETTING, fillingsJson([...fillings, kept]));
  return { sheet, isChanged: true, block: { row, column, rows }, told: words.filled(sheet, lines.kept) };
};
