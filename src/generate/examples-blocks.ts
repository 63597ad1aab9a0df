import type { FileCell } from '../adapters/xlsx/changes';
import type { Block } from '../functions/define';
import { cellAddress, rangeAddress } from '../workbook/address';
import { agreementFormula, agreementOf, isBlock, said, saying, type WorkedExample } from './examples';
import { body, Draft, heading, plain, title, type LaidOut } from './examples-draft';

const BLOCKS = 'Blocks';
const ABOUT =
  'Left what the function gives, in the middle the expected values, right the two compared. ' +
  'Typed alone, each formula fills the cells by itself.';

/** Where a result that fills several cells stands, for its line in the list. */
export interface Placed {
  readonly first: string;
  readonly expected: string;
  /** The words of its comparison. */
  readonly agreement: string;
  readonly count: number;
  readonly agrees: boolean;
}
interface Columns {
  readonly live: number;
  readonly room: number;
  readonly expected: number;
  readonly compared: number;
  readonly end: number;
}

const putHeading = (draft: Draft, row: number, at: Columns, name: string, typed: string): void => {
  for (let c = at.live; c < at.end; c++) draft.put(row, c, null, heading(false));
  draft.put(row, 0, name, heading(false));
  draft.put(row, at.live, typed, heading(false));
  draft.put(row, at.room, 'Room', heading(true));
  draft.put(row, at.expected, 'Expected', heading(false));
  draft.put(row, at.compared, 'Agreement', heading(false));
};

const putBlock = (draft: Draft, top: number, at: Columns, example: WorkedExample, typed: string): Placed => {
  const value = example.value as Block;
  const wanted = example.expected as readonly (readonly (number | string)[])[];
  const [rows, columns] = [value.length, value[0]!.length];
  const cell = (row: number, column: number) => cellAddress(top + row, column);
  draft.put(top, at.room, example.room, body(true));
  const live: FileCell[][] = wanted.map((cells, r) =>
    cells.map((want, c) => {
      const got = value[r]?.[c] ?? null;
      draft.put(top + r, at.live + c, null, body(typeof got === 'number'));
      draft.put(top + r, at.expected + c, said(want), body(typeof want === 'number'));
      draft.put(top + r, at.compared + c, null, body(false));
      return { formula: saying(`=INDEX(${typed.slice(1)},${r + 1},${c + 1})`, want), value: said(got) };
    }),
  );
  const words = wanted.map((cells, r) =>
    cells.map((want, c) => agreementOf(value[r]?.[c] ?? null, want, example.room)),
  );
  draft.write(top, at.live, live);
  draft.write(
    top,
    at.compared,
    words.map((line, r) =>
      line.map((word, c) => ({
        formula: agreementFormula(cell(r, at.live + c), cell(r, at.expected + c), `$${cell(0, at.room)}`),
        value: word,
      })),
    ),
  );
  return {
    first: `=${BLOCKS}!${cell(0, at.live)}`,
    expected: `=${BLOCKS}!${cell(0, at.expected)}`,
    agreement: `${BLOCKS}!${rangeAddress({ row: top, column: at.compared, rows, columns })}`,
    count: rows * columns,
    agrees: words.flat().every((word) => word === 'agree'),
  };
};

/**
 * Results that fill several cells, cell by cell beside what is expected. Each cell asks for its own part by INDEX: a
 * formula that fills cells would lose its stored values in LibreOffice.
 */
export const blocksSheet = (
  examples: readonly WorkedExample[],
  formulas: ReadonlyMap<WorkedExample, string>,
): LaidOut & { places: ReadonlyMap<WorkedExample, Placed> } => {
  const draft = new Draft(BLOCKS);
  const places = new Map<WorkedExample, Placed>();
  const blocks = examples.filter(({ value }) => isBlock(value));
  const widest = Math.max(...blocks.map(({ value }) => (value as Block)[0]!.length));
  const compared = 2 * widest + 5;
  const at = { live: 1, room: widest + 2, expected: widest + 3, compared, end: compared + widest };
  draft.put(0, 0, 'Results that fill several cells', title);
  draft.put(1, 0, ABOUT, plain);
  let row = 3;
  for (const example of blocks) {
    const typed = formulas.get(example) ?? '';
    putHeading(draft, row, at, example.name, typed);
    places.set(example, putBlock(draft, row + 1, at, example, typed));
    row += (example.value as Block).length + 2;
  }
  draft.mark({ row: 3, column: compared, rows: row - 3, columns: widest });
  const widths = Array.from({ length: at.end }, (_, c) => ({ width: c === 0 ? 30 : 14 }));
  return { ...draft.done({ columns: widths, freezePane: { rows: 2, columns: 1 } }), places };
};
