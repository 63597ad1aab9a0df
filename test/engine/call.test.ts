import { callFunction } from '../../src/engine/call';
import { describeIssue } from '../../src/engine/messages';
import { defineFunction, type Cell, type Block } from '../../src/functions/define';
import { failure } from '../../src/core/issue';

const base = {
  family: 'mass loading',
  summary: '',
  equation: '',
  validity: '',
  source: { kind: 'derivation', from: '' },
  examples: [],
} as const;

const force = defineFunction({
  ...base,
  name: 'FORCE',
  args: {
    mass: { unit: 'gram', text: '', above: 0 },
    level: { unit: 'g', text: '', statistic: 'peak' },
    factor: { unit: '1', text: '', default: 2, atMost: 10 },
    extra: { unit: '%', text: '', optional: true },
  },
  result: { unit: 'N', text: '' },
  compute: ({ mass, level, factor, extra }) => mass * level * factor * (1 + (extra ?? 0)),
});
const sum = defineFunction({
  ...base,
  name: 'SUM.OF',
  args: { parts: { kind: 'list', unit: 'g', text: '', repeating: true } },
  result: { unit: 'g', text: '' },
  compute: ({ parts }) => parts.reduce((a, b) => a + b, 0),
});
const span = defineFunction({
  ...base,
  name: 'SPAN.OF',
  args: { low: { unit: '°C', text: '', rangeWith: 'high' }, high: { unit: '°C', text: '' } },
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: '°C', text: '' },
      { title: 'high', unit: '°C', text: '' },
    ],
  },
  compute: ({ low, high }) => [low, high],
});
const area = defineFunction({
  ...base,
  name: 'AREA.OF',
  args: { curve: { kind: 'curve', x: 'Hz', y: '%', text: '' } },
  result: { unit: '1', text: '' },
  compute: ({ curve }) => curve.x.reduce((total, x, i) => total + x * (curve.y[i] as number), 0),
});

const answer = (called: ReturnType<typeof callFunction>) => (called.ok ? called.value : called.issue);
const G = 9.80665;

describe('a worksheet call', () => {
  it('computes in SI and answers in the documented unit', () => {
    expect(answer(callFunction(force, [5, 10]))).toBeCloseTo(0.005 * 10 * G * 2, 12);
  });
  it('takes text with any unit of the same quantity', () => {
    expect(answer(callFunction(force, ['0.005 kg', '98.0665 m/s²']))).toBeCloseTo(0.005 * 10 * G * 2, 12);
  });
  it('reads a comma as the decimal mark where it can be nothing else', () => {
    expect(answer(callFunction(force, ['12,5', 1]))).toBeCloseTo(0.0125 * G * 2, 12);
  });
  it('uses the default for a blank or omitted argument', () => {
    const omitted = answer(callFunction(force, [5, 10]));
    expect(answer(callFunction(force, [5, 10, null]))).toBe(omitted);
    expect(answer(callFunction(force, [5, 10, '', null]))).toBe(omitted);
  });
  it('halves a peak-to-peak level where a peak is asked for', () => {
    expect(answer(callFunction(force, [5, '20 g p-p']))).toBeCloseTo(
      answer(callFunction(force, [5, 10])) as number,
      12,
    );
  });
  it.each<[string, (Cell | Block)[], string]>([
    ['a blank', [null, 1], 'missing'],
    ['text that is no number', ['heavy', 1], 'not-a-number'],
    ['another quantity', ['5 Hz', 1], 'wrong-unit'],
    ['an ambiguous number', ['1,250', 1], 'ambiguous'],
    ['the wrong statistic', [5, '1 g rms'], 'wrong-statistic'],
    ['a value out of bounds', [0, 1], 'out-of-range'],
    ['a default’s upper bound', [1, 1, 11], 'out-of-range'],
    ['an error cell', [{ error: '#REF!' }, 1], 'cell-error'],
    ['a boolean', [true, 1], 'not-a-number'],
    ['a range where one cell is meant', [[[1, 2]], 1], 'wrong-size'],
    ['too many arguments', [1, 1, 1, 1, 1], 'argument-count'],
    ['too few arguments', [1], 'missing'],
    ['no argument at all', [], 'argument-count'],
  ])('refuses %s with a sentence that says what was read and expected', (_, args, code) => {
    const called = callFunction(force, args);
    expect(called).toMatchObject({ ok: false, issue: { code } });
    if (!called.ok) expect(describeIssue(called.issue)).toMatch(/\.$/);
  });
  it('keeps zero and blank apart', () => {
    expect(answer(callFunction(force, [5, 0]))).toBe(0);
    expect(answer(callFunction(force, [5, null]))).toMatchObject({ code: 'missing' });
  });
  it('joins ranges, numbers and texts of a repeating argument and passes over blanks', () => {
    expect(
      answer(
        callFunction(sum, [
          1,
          [
            [2, null],
            [3, '4 g'],
          ],
          '5; 6 g',
        ]),
      ),
    ).toBeCloseTo(21, 12);
  });
  it('fills a pair of arguments from one range text', () => {
    expect(answer(callFunction(span, ['-54..121 °C', null]))).toEqual([[-54, 121]]);
    expect(answer(callFunction(span, ['−54…+121 °C', undefined]))).toEqual([[-54, 121]]);
    expect(answer(callFunction(span, ['10 -20', null]))).toMatchObject({
      code: 'ambiguous',
      readings: ['10 to 20', '10 and -20'],
    });
    expect(answer(callFunction(span, [1, 2]))).toEqual([[1, 2]]);
  });
  it('holds both ends of a range text to their limits', () => {
    const bounded = defineFunction({
      ...span,
      args: {
        low: { unit: '°C', text: '', rangeWith: 'high', atLeast: -100 },
        high: { unit: '°C', text: '', atMost: 200 },
      },
    });
    expect(answer(callFunction(bounded, ['-54..121 °C', null]))).toEqual([[-54, 121]]);
    expect(answer(callFunction(bounded, ['-54..221 °C', null]))).toMatchObject({ code: 'out-of-range', arg: 'high' });
    expect(answer(callFunction(bounded, ['-154..121 °C', null]))).toMatchObject({ code: 'out-of-range', arg: 'low' });
  });
  it('takes a curve as text pairs, as two columns and as two rows', () => {
    const expected = 10 * 0.01 + 20 * 0.03;
    expect(answer(callFunction(area, ['10:1; 20:3']))).toBeCloseTo(expected, 12);
    expect(
      answer(
        callFunction(area, [
          [
            [10, 1],
            [20, 3],
            [null, null],
          ],
        ]),
      ),
    ).toBeCloseTo(expected, 12);
    expect(
      answer(
        callFunction(area, [
          [
            [10, 20, 30],
            [1, 3, 0],
          ],
        ]),
      ),
    ).toBeCloseTo(expected, 12);
    expect(
      answer(
        callFunction(area, [
          [
            [20, 1],
            [10, 3],
          ],
        ]),
      ),
    ).toMatchObject({ code: 'bad-curve' });
  });
  it('never shows a number that is not finite', () => {
    const odd = defineFunction({ ...force, compute: () => Number.NaN });
    expect(answer(callFunction(odd, [1, 1]))).toMatchObject({ code: 'no-result' });
    const none = defineFunction({ ...force, compute: () => failure({ code: 'no-result', rule: 'the span is empty' }) });
    expect(answer(callFunction(none, [1, 1]))).toMatchObject({ code: 'no-result' });
  });
});
