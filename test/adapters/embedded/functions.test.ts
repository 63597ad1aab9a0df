import { defineFunction, isCellError, type AnyFunction, type Block, type Cell } from '../../../src/functions/define';
import { openWorkbook, valuesOf, workbookOf } from './headless';

const practice = { kind: 'practice', note: 'common practice, no source' } as const;
const rest = { family: 'text and units', equation: '', validity: '', source: practice, examples: [] } as const;

const describeCell = (cell: Cell): string =>
  cell === null ? 'blank' : isCellError(cell) ? `error ${cell.error}` : `${typeof cell} ${String(cell)}`;

const see = defineFunction({
  ...rest,
  name: 'SEE',
  summary: 'Says what kind of cell arrived.',
  args: { cell: { kind: 'cell', text: 'Any cell.' } },
  result: { kind: 'text', text: 'Its kind.' },
  compute: ({ cell }) => describeCell(cell),
});
const shape = defineFunction({
  ...rest,
  name: 'SHAPE.OF',
  summary: 'Says how large a range arrived.',
  args: { block: { kind: 'block', text: 'A range.' } },
  result: { kind: 'text', text: 'Rows by columns and its cells.' },
  compute: ({ block }) => `${block.length}x${block[0]?.length}: ${block.flat().map(describeCell).join(', ')}`,
});
const fails = defineFunction({
  ...rest,
  name: 'FAILS',
  summary: 'Throws.',
  args: { cell: { kind: 'cell', text: 'Any cell.' } },
  result: { kind: 'text', text: 'Nothing.' },
  compute: () => {
    throw new Error('a bug of ours');
  },
});
const twice = defineFunction({
  ...rest,
  name: 'TWICE',
  summary: 'Doubles a mass.',
  args: {
    mass: { unit: 'gram', text: 'A mass.', atLeast: 0 },
    times: { unit: '1', text: 'How often.', default: 2 },
  },
  result: { unit: 'gram', text: 'Twice the mass.' },
  compute: ({ mass, times }) => mass * times,
});
const pair = defineFunction({
  ...rest,
  name: 'PAIR',
  summary: 'Spills a row.',
  args: { cell: { unit: '1', text: 'A number.' } },
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: '1', text: 'Low.' },
      { title: 'high', unit: '1', text: 'High.' },
    ],
  },
  compute: ({ cell }) => [cell - 1, cell + 1],
});
const echo = defineFunction({
  ...rest,
  name: 'ECHO',
  summary: 'Gives the text back.',
  args: { text: { kind: 'text', text: 'A text.' } },
  result: { kind: 'text', text: 'The same.' },
  compute: ({ text }) => text,
});
const many = defineFunction({
  ...rest,
  name: 'MANY',
  summary: 'Counts ranges.',
  args: { blocks: { kind: 'block', text: 'Ranges.', repeating: true } },
  result: { kind: 'text', text: 'How many.' },
  compute: ({ blocks }) => `${blocks.length} ranges, ${blocks.map((block: Block) => block.length).join('+')} rows`,
});
const FUNCTIONS = [see, shape, fails, twice, pair, echo, many] as readonly AnyFunction[];

const calculate = async (...rows: Parameters<typeof workbookOf>[0]) => {
  const { spreadsheet } = await openWorkbook(workbookOf(rows), FUNCTIONS);
  return valuesOf(spreadsheet);
};

describe('a worksheet function in the embedded spreadsheet', () => {
  it('tells a blank cell from a zero; a formula that gives an empty text counts as blank', async () => {
    const [, second] = await calculate([null, 0, '=""'], ['=CHAN.SEE(A1)', '=CHAN.SEE(B1)', '=CHAN.SEE(C1)']);
    expect(second).toEqual(['blank', 'number 0', 'blank']);
  });

  it('sees numbers, texts that look like numbers, truths and errors as what they are', async () => {
    const [, second] = await calculate(
      [1.5, '12', true, '=1/0'],
      ['=CHAN.SEE(A1)', '=CHAN.SEE(B1)', '=CHAN.SEE(C1)', '=CHAN.SEE(D1)'],
    );
    expect(second).toEqual(['number 1.5', 'string 12', 'boolean true', 'error #DIV/0!']);
  });

  it('gets a range with its blanks, also across the edge of the data', async () => {
    const [, , third] = await calculate([1, null], ['x', false], ['=CHAN.SHAPE.OF(A1:C2)']);
    expect(third?.[0]).toBe('2x3: number 1, blank, blank, string x, boolean false, blank');
  });

  it('turns a bug of ours into an error value and leaves the other cells alone', async () => {
    const [first] = await calculate(['=CHAN.FAILS(1)', '=CHAN.TWICE(3)', '=1+1']);
    expect(first).toEqual([{ error: '#VALUE!' }, 6, 2]);
  });

  it('answers a wrong number of arguments with #N/A', async () => {
    const [first] = await calculate(['=CHAN.TWICE()', '=CHAN.TWICE(1,2,3)', '=CHAN.TWICE(1,3)']);
    expect(first).toEqual([{ error: '#N/A' }, { error: '#N/A' }, 3]);
  });

  it('takes an argument left empty between commas as left out', async () => {
    const [first] = await calculate(['=CHAN.TWICE(4,)', '=CHAN.SEE(IF(TRUE,,1))']);
    expect(first?.[0]).toBe(8);
  });

  it('gives each refusal its error value', async () => {
    const [, second] = await calculate(
      [null, 'heavy', -1],
      ['=CHAN.TWICE(A1)', '=CHAN.TWICE(B1)', '=CHAN.TWICE(C1)', '=CHAN.TWICE(1/0)'],
    );
    expect(second).toEqual([{ error: '#N/A' }, { error: '#VALUE!' }, { error: '#VALUE!' }, { error: '#N/A' }]);
  });

  it('is found in any case', async () => {
    const [first] = await calculate(['=chan.Twice(1)', '=CHAN.TWICE(2)']);
    expect(first).toEqual([2, 4]);
  });

  it('spills a row into the cells beside it, and says #SPILL! where one is taken', async () => {
    const values = await calculate(['=CHAN.PAIR(5)', null], ['=CHAN.PAIR(7)', 'mine'], ['=A1+B1', null]);
    expect(values[0]).toEqual([4, 6]);
    expect(values[1]).toEqual([{ error: '#SPILL!' }, 'mine']);
    expect(values[2]?.[0]).toBe(10);
  });

  it.each(['TRUE', '12', '1e3', '{1,2}', '=A1', '12%', "'quoted"])('keeps the text %s a text', async (text) => {
    const [first] = await calculate([text.startsWith('=') ? `="${text}"` : text, '=CHAN.ECHO(A1)', '=CHAN.SEE(B1)']);
    expect(first?.[1]).toBe(text);
    expect(first?.[2]).toBe(`string ${text}`);
  });

  it('takes repeated ranges', async () => {
    const [, second] = await calculate([1, 2, 3], ['=CHAN.MANY(A1:A1,B1:B3,C1)']);
    expect(second?.[0]).toBe('3 ranges, 1+3+1 rows');
  });

  it('keeps all digits of its result', async () => {
    const [first] = await calculate([0.1, '=CHAN.TWICE(A1,3)']);
    expect(first?.[1]).toBe((0.1e-3 * 3) / 1e-3);
  });
});
