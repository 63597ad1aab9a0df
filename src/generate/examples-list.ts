import type { Block, Cell } from '../functions/define';
import { planningAid } from '../plan/words/cautions';
import { cellAddress, rangeAddress } from '../workbook/address';
import { agreementFormula, agreementOf, isBlock, said, saying, type WorkedExample } from './examples';
import type { Placed } from './examples-blocks';
import { body, Draft, heading, plain, strong, title, type LaidOut } from './examples-draft';

const LIST = 'Examples';
/** Rows above the list; its headings stand in the last of them. */
const ABOVE = 6;
const HEADINGS: readonly (readonly [heading: string, characters: number, isNumber?: true])[] = [
  ['Family', 22],
  ['Function', 32],
  ['Formula as typed', 64],
  ['Result', 18, true],
  ['Unit', 14],
  ['Expected', 18, true],
  ['Relative room', 10, true],
  ['Agreement', 14],
  ['Where the expected value comes from', 64],
  ['Source of the equation', 64],
];
const [RESULT, EXPECTED, ROOM, AGREEMENT] = [3, 5, 6, 7] as const;
const ABOUT = [
  'Each expected value was worked out without this program; the last two columns say how.',
  'Without the add-in the stored results are shown. With it, Ctrl+Alt+F9 calculates all of them again.',
  planningAid('en'),
] as const;

const shapeOf = ({ value, unit }: WorkedExample): string =>
  isBlock(value) ? `${value.length} × ${value[0]?.length} cells` : unit;

const putScalar = (draft: Draft, row: number, example: WorkedExample, typed: string): boolean => {
  const expected = example.expected as number | string;
  const value = example.value as Cell;
  const word = agreementOf(value, expected, example.room);
  const at = (column: number) => cellAddress(row, column);
  const formula = agreementFormula(at(RESULT), at(EXPECTED), at(ROOM));
  draft.put(row, EXPECTED, said(expected), body(typeof expected === 'number'));
  draft.write(row, RESULT, [[{ formula: saying(typed, expected), value: said(value) }]]);
  draft.write(row, AGREEMENT, [[{ formula, value: word }]]);
  return word === 'agree';
};

/** The first of its cells, and whether all of them agree. */
const putPlaced = (draft: Draft, row: number, { value, expected }: WorkedExample, place: Placed): boolean => {
  const formula = `=IF(COUNTIF(${place.agreement},"agree")=${place.count},"agree","differ")`;
  const want = (expected as readonly (readonly (number | string)[])[])[0]?.[0] ?? null;
  draft.write(row, RESULT, [[{ formula: place.first, value: (value as Block)[0]?.[0] ?? null }]]);
  draft.write(row, EXPECTED, [[{ formula: place.expected, value: want }]]);
  draft.write(row, AGREEMENT, [[{ formula, value: place.agrees ? 'agree' : 'differ' }]]);
  return place.agrees;
};

/** One row per example, and on top how many of them agree. */
export const listSheet = (
  examples: readonly WorkedExample[],
  formulas: ReadonlyMap<WorkedExample, string>,
  places: ReadonlyMap<WorkedExample, Placed>,
): LaidOut => {
  const draft = new Draft(LIST);
  const words = { row: ABOVE, column: AGREEMENT, rows: examples.length, columns: 1 };
  draft.put(0, 0, 'Worked examples of every worksheet function', title);
  draft.put(1, 0, null, strong);
  ABOUT.forEach((text, i) => draft.put(2 + i, 0, text, plain));
  HEADINGS.forEach(([text, , isNumber], c) => draft.put(ABOVE - 1, c, text, heading(isNumber ?? false)));
  let agreeing = 0;
  examples.forEach((example, i) => {
    const row = ABOVE + i;
    const typed = formulas.get(example) ?? '';
    const first = isBlock(example.value) ? example.value[0]?.[0] : example.value;
    const { family, name, room, from, source } = example;
    const line = [family, name, typed, null, shapeOf(example), null, room, null, from, source];
    line.forEach((text, c) => {
      const isNumber = c === ROOM || ((c === RESULT || c === EXPECTED) && typeof first === 'number');
      draft.put(row, c, text, body(isNumber));
    });
    const place = places.get(example);
    const agrees = place ? putPlaced(draft, row, example, place) : putScalar(draft, row, example, typed);
    if (agrees) agreeing += 1;
  });
  const column = rangeAddress(words);
  const formula = `=COUNTIF(${column},"agree")&" of "&ROWS(${column})&" agree"`;
  draft.write(1, 0, [[{ formula, value: `${agreeing} of ${examples.length} agree` }]]);
  draft.mark(words);
  return draft.done({
    columns: HEADINGS.map(([, width]) => ({ width })),
    freezePane: { rows: ABOVE, columns: 2 },
    rowDefs: new Map([[ABOVE - 1, { height: 30 }]]),
  });
};
