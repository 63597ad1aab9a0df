import fc from 'fast-check';
import { between, number } from '../inverse';
import { VERDICTS } from '../../../src/core/verdict';
import type { Argument } from '../../../src/engine/arguments';
import type { AnyFunction } from '../../../src/functions/define';
import { verdictAtleast } from '../../../src/functions/verdict/verdict-atleast';
import { verdictAtmost } from '../../../src/functions/verdict/verdict-atmost';
import { verdictRamp } from '../../../src/functions/verdict/verdict-ramp';
import { verdictSpan } from '../../../src/functions/verdict/verdict-span';
import { verdictThermal } from '../../../src/functions/verdict/verdict-thermal';
import { verdictWorst } from '../../../src/functions/verdict/verdict-worst';

const verdict = (fn: AnyFunction, args: readonly Argument[]) => String(number(fn, args));
const UNKNOWN = [null, '', 'tbd', { error: '#N/A' }, { error: '#VALUE!' }];

describe('verdicts in cells', () => {
  it.each(UNKNOWN)('never pass on %j', (cell) => {
    expect(verdict(verdictAtleast, [cell, 20, 10])).toBe('INCOMPLETE');
    expect(verdict(verdictAtmost, [cell, 0.1, 0.2])).toBe('INCOMPLETE');
    expect(verdict(verdictWorst, ['PASS', cell])).toBe('INCOMPLETE');
    expect(verdict(verdictThermal, [cell, 1, 5, 15, 35, -54, 121])).toBe('INCOMPLETE');
    expect(verdict(verdictThermal, [-1, 1, 5, 15, cell, -54, 121])).toBe('INCOMPLETE');
    expect(verdict(verdictThermal, [-1, 1, 5, 15, 35, -54, cell])).toBe('INCOMPLETE');
    expect(verdict(verdictRamp, [0.001, cell, 5, 0.1])).toBe('INCOMPLETE');
    for (let i = 0; i < 6; i++) {
      const args: Argument[] = [5, 2000, 1.6, 7350, 1.1, 10150];
      args[i] = cell;
      expect(verdict(verdictSpan, args)).toBe('INCOMPLETE');
    }
  });
  it('are the same whatever the number of an empty span is, as long as it says #NUM!', () => {
    const empty = { error: '#NUM!' };
    expect(verdict(verdictSpan, [5, 2000, empty, empty, 1.1, 10150])).toBe('FAIL');
    expect(verdict(verdictSpan, [null, null, empty, null, null, null])).toBe('FAIL');
  });
  it('join by severity over ranges and single cells, in any order and case', () => {
    const cells = fc.array(fc.constantFrom(...VERDICTS), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(cells, (list) => {
        const severest = VERDICTS[Math.max(...list.map((one) => VERDICTS.indexOf(one)))];
        expect(verdict(verdictWorst, [list.map((one) => [one.toLowerCase()])])).toBe(severest);
        expect(verdict(verdictWorst, [...list].reverse())).toBe(severest);
      }),
    );
    expect(verdict(verdictWorst, [[]])).toBe('INCOMPLETE');
    expect(verdict(verdictWorst, ['good'])).toBe('INCOMPLETE');
  });
  it('mirror each other: at least x is at most −x', () => {
    fc.assert(
      fc.property(between(-100, 100), between(-100, 100), between(0, 50), (x, pass, zone) => {
        expect(verdict(verdictAtleast, [x, pass, pass - zone])).toBe(verdict(verdictAtmost, [-x, -pass, zone - pass]));
      }),
    );
  });
  it('fail for mount and cable as for the sensor, and do without their limits', () => {
    const base = [-1, 1, 5, 15, 60, -54, 121];
    expect(verdict(verdictThermal, base)).toBe('PASS');
    expect(verdict(verdictThermal, [...base, null, 40])).toBe('FAIL');
    expect(verdict(verdictThermal, [...base, null, null, 20, null])).toBe('FAIL');
    expect(verdict(verdictThermal, [...base, -10, 80, -10, 80])).toBe('PASS');
  });
});
