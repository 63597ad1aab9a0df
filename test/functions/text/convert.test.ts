import fc from 'fast-check';
import { callFunction } from '../../../src/engine/call';
import type { Cell } from '../../../src/functions/define';
import { convert } from '../../../src/functions/text/convert';
import { UNITS, type UnitId } from '../../../src/core/units';

const call = (...cells: Cell[]) => callFunction(convert, cells);
const number = (...cells: Cell[]): number => {
  const result = call(...cells);
  if (!result.ok) throw new Error(JSON.stringify(result.issue));
  return result.value as number;
};

describe('CONVERT', () => {
  it('undoes itself between all documented units of a quantity', () => {
    const ids = Object.keys(UNITS) as UnitId[];
    const pairs = ids.flatMap((a) =>
      ids.filter((b) => UNITS[a].quantity === UNITS[b].quantity).map((b) => [a, b] as const),
    );
    fc.assert(
      fc.property(fc.double({ min: 1e-200, max: 1e6, noNaN: true }), fc.constantFrom(...pairs), (value, [a, b]) => {
        const back = number(number(value, a, b), b, a);
        return Math.abs(back - value) <= 1e-12 * Math.abs(value);
      }),
    );
  });

  it('takes g beside a mass as gram and beside an acceleration as standard gravity', () => {
    expect(number(1, 'g', 'oz')).toBeCloseTo(1 / 28.349523125, 12);
    expect(number(1, 'g', 'm/s²')).toBeCloseTo(9.80665, 12);
    expect(number(5, 'mg', 'gram')).toBeCloseTo(0.005, 15);
    expect(number(5, 'mg', 'm/s²')).toBeCloseTo(0.04903325, 12);
    expect(number(1, 'g', 'mg')).toBeCloseTo(1000, 9);
  });

  it('moves temperatures with their offset', () => {
    expect(number(300, 'K', '°C')).toBeCloseTo(26.85, 10);
    expect(number(212, '°F', '°C')).toBeCloseTo(100, 10);
    expect(number(-40, '°C', '°F')).toBeCloseTo(-40, 10);
  });

  it('keeps small kelvins', () => {
    expect(number(1e-5, 'K', 'K')).toBe(1e-5);
    expect(number('1e-5 K', 'K', 'K')).toBe(1e-5);
  });

  it('lets a text carry its own unit', () => {
    expect(number('5 kHz', 'Hz', 'Hz')).toBe(5000);
    expect(number('5', 'kHz', 'Hz')).toBe(5000);
  });

  it('refuses another quantity and an unknown unit', () => {
    expect(call(1, 'g', 'Hz')).toMatchObject({
      ok: false,
      issue: { code: 'wrong-unit', arg: 'to', given: 'Hz', unit: 'g' },
    });
    expect(call('5 Hz', 'g', 'm/s²')).toMatchObject({ ok: false, issue: { code: 'wrong-unit', arg: 'value' } });
    expect(call(1, 'parsnip', 'Hz')).toMatchObject({ ok: false, issue: { code: 'unknown-choice', arg: 'from' } });
    expect(call(null, 'g', 'm/s²')).toMatchObject({ ok: false, issue: { code: 'missing', arg: 'value' } });
  });
});
