import {
  argumentsFromExcel,
  associateFunctions,
  cellFromExcel,
  excelFunction,
  type FunctionsRuntime,
} from '../../../src/adapters/office/functions';
import { callFunction } from '../../../src/engine/call';
import { errorValueOf } from '../../../src/engine/errors';
import type { AnyFunction, Block, Cell } from '../../../src/functions/define';
import { defineFunction } from '../../../src/functions/define';
import { FUNCTIONS } from '../../../src/functions/index';
import { customFunctionsMetadata } from '../../../src/generate/metadata';

class RuntimeError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}
const runtimeOf = (associated = new Map<string, (...given: unknown[]) => unknown>()): FunctionsRuntime => ({
  associate: (id, body) => void associated.set(id, body),
  error: (value, message) => new RuntimeError(value, message),
});
const INVOCATION = { functionName: 'X', address: undefined };

const probe: AnyFunction = defineFunction({
  name: 'PROBE',
  family: 'trust',
  summary: 'A probe.',
  equation: 'none',
  args: {
    amount: { unit: 'g', text: 'An amount.', above: 0 },
    curve: { kind: 'curve', x: 'Hz', y: 'g', text: 'A curve.', optional: true },
    one: { kind: 'cell', text: 'Any cell.', optional: true },
    rest: { kind: 'block', repeating: true, text: 'Any cells.', optional: true },
  },
  result: { kind: 'block', text: 'What arrived.' },
  validity: 'none',
  source: { kind: 'practice', note: 'common practice, no source' },
  compute: ({ amount, curve, one, rest }) => [
    [amount / 9.80665, curve ? curve.x.length : 0, JSON.stringify(one), JSON.stringify(rest)],
  ],
  examples: [],
});
const call = (...given: unknown[]): unknown => {
  try {
    return excelFunction(runtimeOf(), probe)(...given, INVOCATION);
  } catch (error) {
    return error;
  }
};

describe('the functions in Excel', () => {
  it('are associated by exactly the ids of functions.json', () => {
    const associated = new Map<string, (...given: unknown[]) => unknown>();
    associateFunctions(runtimeOf(associated), FUNCTIONS);
    expect([...associated.keys()]).toEqual(customFunctionsMetadata(FUNCTIONS).functions.map(({ id }) => id));
  });

  it.each<[string, unknown, Cell]>([
    ['a number', 2.5, 2.5],
    ['a blank', null, null],
    ['an omitted argument', undefined, null],
    ['an empty text', '', null],
    ['FALSE', false, false],
    ['an error of the runtime', new RuntimeError('#REF!'), { error: '#REF!' }],
    ['an error as a rich value', { type: 'Error', basicType: 'Error', basicValue: '#BUSY!' }, { error: '#BUSY!' }],
    ['a currency', { type: 'FormattedNumber', basicType: 'Double', basicValue: 12, numberFormat: '0 "€"' }, 12],
    ['a blank as a rich value', { type: 'Empty', basicType: 'Empty', basicValue: '' }, null],
    ['a card with a text', { type: 'Entity', text: 'S-12', basicType: 'String', basicValue: 'S-12' }, 'S-12'],
    [
      'a card without a plain value',
      { type: 'Entity', basicType: 'Error', basicValue: '#VALUE!' },
      { error: '#VALUE!' },
    ],
    ['something unheard of', { basicValue: { basicValue: 1 } }, { error: '#VALUE!' }],
  ])('take %s', (_what, given, cell) => {
    expect(cellFromExcel(given)).toEqual(cell);
  });

  it('ignore the invocation that Excel appends', () => {
    expect(call(2, null, null, null)).toEqual([[2, 0, 'null', '[]']]);
  });

  it('take a repeating argument as one array of ranges', () => {
    const given = argumentsFromExcel(probe, [
      1,
      null,
      null,
      [[[1, null]], [['PASS'], [new RuntimeError('#N/A')]]],
      INVOCATION,
    ]);
    expect(given).toEqual([1, null, null, [[1, null]], [['PASS'], [{ error: '#N/A' }]]]);
    expect(argumentsFromExcel(probe, [1, null, null, [[1, 2]]])).toEqual([1, null, null, [[1, 2]]]);
  });

  it('read an omitted curve as blank, also where an older Excel hands over 0', () => {
    expect(call(2, [[null]], null, null)).toEqual([[2, 0, 'null', '[]']]);
    expect(call(2, [[0]], null, null)).toEqual([[2, 0, 'null', '[]']]);
    expect(call(2, [['1:2; 3:4']], null, null)).toEqual([[2, 2, 'null', '[]']]);
  });

  it('say what is wrong where Excel can show it', () => {
    const error = call(-1, null, null, null) as RuntimeError;
    expect(error).toBeInstanceOf(RuntimeError);
    expect([error.code, error.message]).toEqual(['#VALUE!', 'amount must be > 0 g; got -1 g.']);
    expect(call(null, null, null, null)).toMatchObject({ code: '#N/A', message: 'amount is missing.' });
    expect(call(new RuntimeError('#DIV/0!'), null, null, null)).toMatchObject({ code: '#N/A' });
  });

  it('give #NUM! without words, which Excel would not show', () => {
    const empty: AnyFunction = { ...probe, compute: () => ({ ok: false, issue: { code: 'no-result', rule: 'none' } }) };
    try {
      excelFunction(runtimeOf(), empty)(1);
      throw new Error('expected a refusal');
    } catch (error) {
      expect(error).toEqual(new RuntimeError('#NUM!', undefined));
    }
  });

  it('spill a single value as a block of one, and blanks as empty text', () => {
    expect(excelFunction(runtimeOf(), { ...probe, compute: () => 'done' })(1)).toEqual([['done']]);
    expect(excelFunction(runtimeOf(), { ...probe, compute: () => [[null, { error: '#N/A' }]] as never })(1)).toEqual([
      ['', new RuntimeError('#N/A')],
    ]);
  });
});

describe('every worked example, called as Excel calls it', () => {
  /** By the metadata Excel hands a scalar over as it is and a range always as rows; arguments left out are null. */
  const asExcelCalls = (fn: AnyFunction, args: readonly (Cell | Block)[]): unknown[] => {
    const parameters = customFunctionsMetadata([fn]).functions[0]?.parameters ?? [];
    const rows = (arg: Cell | Block | undefined) => (Array.isArray(arg) ? arg : [[arg ?? null]]);
    const error = (cell: unknown) =>
      typeof cell === 'object' && cell !== null && 'error' in cell ? new RuntimeError(String(cell.error)) : cell;
    return parameters.map(({ dimensionality, repeating }, i) => {
      const inExcel = (arg: Cell | Block | undefined) => rows(arg).map((row: readonly Cell[]) => row.map(error));
      if (repeating) return i < args.length ? args.slice(i).map(inExcel) : null;
      const arg = args[i];
      if (dimensionality === 'matrix') return i < args.length ? inExcel(arg) : null;
      return Array.isArray(arg) ? inExcel(arg) : error(arg ?? null);
    });
  };

  it.each(FUNCTIONS.map((fn) => [fn.name, fn] as const))('%s', (_name, fn) => {
    const body = excelFunction(runtimeOf(), fn);
    for (const { args } of fn.examples) {
      const direct = callFunction(fn, args);
      let result: unknown;
      try {
        result = body(...asExcelCalls(fn, args), INVOCATION);
      } catch (error) {
        result = error;
      }
      if (!direct.ok) expect(result).toMatchObject({ code: errorValueOf(direct.issue.code) });
      else if (Array.isArray(direct.value))
        expect(result).toEqual(direct.value.map((row) => row.map((cell) => (cell === null ? '' : cell))));
      else expect(result).toEqual(fn.result.kind === 'block' ? [[direct.value]] : direct.value);
    }
  });
});
