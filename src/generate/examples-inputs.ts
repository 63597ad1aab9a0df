import { isCellError, type Block, type Cell, type Example } from '../functions/define';
import { argumentText } from '../functions/describe';
import { rangeAddress } from '../workbook/address';
import type { WorkedExample } from './examples';
import { body, Draft, heading, plain, title, type LaidOut } from './examples-draft';

const INPUTS = 'Inputs';
/** Formulas that go wrong in this way. */
const GOES_WRONG: Readonly<Record<string, string>> = {
  '#N/A': '=NA()',
  '#NUM!': '=SQRT(-1)',
  '#DIV/0!': '=1/0',
  '#VALUE!': '=VALUE("x")',
};

type Arg = Example['args'][number];

/** Ranges, and texts that a spreadsheet may take for numbers where a formula holds them. */
const needsCells = (arg: Arg): boolean => Array.isArray(arg) || (typeof arg === 'string' && /^[\d.,\s]*\d$/.test(arg));
const blockOf = (arg: Arg): Block => (Array.isArray(arg) ? (arg as Block) : [[arg as Cell]]);

/** The cells that examples refer to, and each example as it is typed, with its '='. */
export const inputsSheet = (examples: readonly WorkedExample[]): LaidOut & { formulas: Map<WorkedExample, string> } => {
  const draft = new Draft(INPUTS);
  const formulas = new Map<WorkedExample, string>();
  draft.put(0, 0, 'Cells that the examples refer to', title);
  draft.put(1, 0, 'Ranges, and texts that look like numbers.', plain);
  let row = 3;
  let widest = 1;
  const place = (name: string, arg: Arg): string => {
    const block = blockOf(arg);
    const columns = block[0]?.length ?? 1;
    draft.put(row, 0, name, heading(false));
    block.forEach((cells, r) =>
      cells.forEach((cell, c) => {
        const plainly = typeof cell === 'number' || typeof cell === 'string' ? cell : null;
        draft.put(row + r, c + 1, plainly, body(typeof cell === 'number'));
        if (typeof cell === 'boolean') draft.write(row + r, c + 1, [[cell]]);
        if (isCellError(cell)) draft.write(row + r, c + 1, [[{ formula: GOES_WRONG[cell.error]!, value: cell }]]);
      }),
    );
    const range = rangeAddress({ row, column: 1, rows: block.length, columns });
    row += block.length + 1;
    widest = Math.max(widest, columns);
    return `${INPUTS}!${range}`;
  };
  for (const example of examples) {
    const args = example.args.map((arg) => (needsCells(arg) ? place(example.name, arg) : argumentText(arg)));
    formulas.set(example, `=${example.name}(${args.join(',')})`);
  }
  const widths = Array.from({ length: widest + 1 }, (_, c) => ({ width: c === 0 ? 30 : 16 }));
  return { ...draft.done({ columns: widths, freezePane: { rows: 2, columns: 1 } }), formulas };
};
