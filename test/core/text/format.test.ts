import fc from 'fast-check';
import { readCurve } from '../../../src/core/text/curve';
import { formatCurve, formatQuantity } from '../../../src/core/text/format';
import { readQuantity } from '../../../src/core/text/quantity';
import { UNITS, type UnitId } from '../../../src/core/units';

const units = Object.keys(UNITS) as UnitId[];
const ordinary = fc.double({ min: -1e12, max: 1e12, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-18);

describe('a formatted quantity', () => {
  it('reads back as the same number in every unit', () => {
    fc.assert(
      fc.property(ordinary, fc.constantFrom(...units), (si, unit) => {
        const reading = readQuantity(formatQuantity(si, unit), unit);
        if (!reading.ok) return false;
        return Math.abs(reading.value.si - si) <= 1e-12 * Math.abs(si);
      }),
      { numRuns: 10_000 },
    );
  });

  it('shows the digits asked for', () => {
    expect(formatQuantity(637.43225, 'g')).toBe('65 g');
    expect(formatQuantity(0.0011111, 'gram', 3)).toBe('1.11 gram');
    expect(formatQuantity(12345, '1', 3)).toBe('12300');
  });

  it('shows no number as a dash', () => {
    expect(formatQuantity(Number.NaN, 'g')).toBe('–');
    expect(formatQuantity(Infinity, 'g')).toBe('–');
  });

  it('writes a curve that reads back', () => {
    const curve = { x: [-54, 0, 121], y: [-0.11, 0, 0.1234] };
    expect(readCurve(formatCurve(curve, '°C', '%'), '°C', '%')).toEqual({ ok: true, value: curve });
  });
});
