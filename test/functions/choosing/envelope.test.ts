import { callFunction } from '../../../src/engine/call';
import { envelope } from '../../../src/functions/choosing/envelope';
import { technology } from '../../../src/functions/choosing/technology';
import type { Block, Cell } from '../../../src/functions/define';
import { BOUND_KEYS } from '../../../src/plan/choosing/envelope-bound';

type Row = readonly Cell[];
const rows = (fn: typeof envelope | typeof technology, args: readonly (Cell | Block | undefined)[]): readonly Row[] => {
  const called = callFunction(fn, args);
  if (!called.ok) throw new Error(called.issue.code);
  return called.value as readonly Row[];
};
const channels: Block = [
  ['Channel', 'Highest level', 'Local mass', 'Mount', 'Cable', 'Input'],
  ['a', 10, 50, 'wax', 'thin', null],
  ['b', 20, 50, 'wax', 'thin', 'small'],
];
const mounts: Block = [
  ['Mount', 'Mount mass'],
  ['wax', 0.5],
];
const cables: Block = [
  ['Cable', 'Effective mass'],
  ['thin', 0.5],
];
const inputs: Block = [
  ['Input', 'Mode', 'Range'],
  ['small', 'voltage', 1],
  ['large', 'voltage', 10],
];
const envelopeRows = (bounds: string | null) => rows(envelope, [channels, null, mounts, cables, inputs, null, bounds]);

describe('ENVELOPE', () => {
  it('shows all bounds of all rows unless some are picked', () => {
    const all = new Set(envelopeRows(null).map((row) => row[1]));
    for (const key of BOUND_KEYS.filter((k) => !/swing|amplifier|drive/.test(k))) expect(all).toContain(key);
    expect(envelopeRows('Sensor Mass').map((row) => row[1])).toEqual(['Bound', 'sensor mass', 'sensor mass']);
  });

  it('takes every input of the list for a row that names none, else the one named', () => {
    const range = envelopeRows('sensitivity in input range').slice(1);
    expect(range.map(([channel, , , , , , input]) => `${channel} ${input}`)).toEqual(['a small', 'a large', 'b small']);
  });

  it('scales the largest sensitivity with the range and against the level', () => {
    const [, small, large, other] = envelopeRows('sensitivity in input range').map((row) => row[3] as number);
    expect(large! / small!).toBeCloseTo(10, 12);
    expect(small! / other!).toBeCloseTo(2, 12);
  });

  it('refuses a bound that does not exist, and a range without headings', () => {
    expect(callFunction(envelope, [channels, null, null, null, null, null, 'weight'])).toMatchObject({
      ok: false,
      issue: { code: 'unknown-choice', arg: 'bounds', given: 'weight' },
    });
    expect(callFunction(envelope, [[[1, 2]]])).toMatchObject({
      ok: false,
      issue: { code: 'wrong-size', arg: 'channels' },
    });
  });
});

describe('TECHNOLOGY', () => {
  const standing = (
    circumstances: string | null,
    kind: string,
    axes: number | null = null,
    pulse: number | null = null,
  ) =>
    rows(technology, [channels, mounts, cables, null, circumstances, axes, pulse, null, kind])
      .filter((row) => row[0] === 'a' && row[1] === kind)
      .map((row) => row[2])[0];

  it('takes circumstances by their words, whatever the case', () => {
    expect(standing(null, 'charge')).toBe('admissible');
    expect(standing('Immersion; several earths', 'charge')).toBe('doubtful');
    expect(standing('hard impact', 'ceramic')).toBe('falls');
  });

  it('takes a pulse in milliseconds', () => {
    expect(standing(null, 'quartz', null, 20)).toBe('admissible');
    expect(standing(null, 'quartz', null, 200)).toBe('doubtful');
    expect(standing(null, 'quartz', null, 2000)).toBe('falls');
  });

  it('doubts a housing of several axes where one axis fits', () => {
    expect(standing(null, 'quartz')).toBe('admissible');
    expect(standing(null, 'quartz', 3)).toBe('doubtful');
  });

  it('refuses a circumstance that it does not know', () => {
    expect(callFunction(technology, [channels, null, null, null, 'rain'])).toMatchObject({
      ok: false,
      issue: { code: 'unknown-choice', arg: 'circumstances', given: 'rain' },
    });
  });
});
