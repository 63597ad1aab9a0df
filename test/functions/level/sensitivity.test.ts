import { callFunction } from '../../../src/engine/call';
import { sensitivityCharge } from '../../../src/functions/level/sensitivity-charge';
import { sensitivityLeast } from '../../../src/functions/level/sensitivity-least';
import { sensitivityMost } from '../../../src/functions/level/sensitivity-most';
import type { AnyFunction, Cell } from '../../../src/functions/define';

const number = (fn: AnyFunction, args: Cell[]): number => {
  const called = callFunction(fn, args);
  if (!called.ok) throw new Error(called.issue.code);
  return called.value as number;
};

describe('SENSITIVITY.LEAST and SENSITIVITY.MOST', () => {
  it.each([-11, -2.85, 0, 0.2, 12])('hold the reference between them at a deviation of %s %%', (deviation) => {
    expect(number(sensitivityLeast, [100, deviation])).toBeLessThanOrEqual(100);
    expect(number(sensitivityMost, [100, deviation])).toBeGreaterThanOrEqual(100);
  });
  it('scale with the sensitivity', () => {
    expect(number(sensitivityLeast, [250, -4])).toBeCloseTo(2.5 * number(sensitivityLeast, [100, -4]), 12);
  });
  it('use the reference where the deviation is an error cell', () => {
    expect(number(sensitivityMost, [10, { error: '#N/A' }])).toBeCloseTo(10, 12);
  });
});

describe('SENSITIVITY.CHARGE', () => {
  it('doubles with the gain', () => {
    expect(number(sensitivityCharge, [5, 20])).toBeCloseTo(2 * number(sensitivityCharge, [5, 10]), 12);
  });
  it.each([[0], [-1]])('refuses a gain of %s', (gain) => {
    expect(callFunction(sensitivityCharge, [5, gain])).toMatchObject({
      ok: false,
      issue: { code: 'out-of-range', arg: 'gain' },
    });
  });
});
