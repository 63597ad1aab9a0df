import { readCurve } from '../../../src/core/text/curve';

describe('a curve in one cell', () => {
  it('reads pairs with either separator, decimal commas and units on either side', () => {
    const expected = { ok: true, value: { x: [-54, 0, 23], y: [-0.115, -0.032, 0] } };
    expect(readCurve('-54:-11.5; 0:-3.2; 23:0', '°C', '%')).toEqual(expected);
    expect(readCurve('−54:−11,5 | 0:−3,2 | 23:0;', '°C', '%')).toEqual(expected);
    expect(readCurve('-54 °C: -11.5 %\n0 °C: -3.2 %\r\n23: 0', '°C', '%')).toEqual(expected);
    expect(readCurve('-54:-11.5, 0:-3.2, 23:0', '°C', '%')).toEqual(expected);
  });

  it('reads multipliers of single points', () => {
    const reading = readCurve('10:15; 1k:3; 10 kHz:3', 'Hz', 'µg/√Hz');
    expect(reading.ok && reading.value.x).toEqual([10, 1000, 10_000]);
  });

  it('takes one point as a curve', () => {
    expect(readCurve('1:1', 'Hz', '%')).toEqual({ ok: true, value: { x: [1], y: [0.01] } });
  });

  it.each([
    ['0:1; 0:2', 'x must rise from pair to pair'],
    ['5:1; 0:2', 'x must rise from pair to pair'],
    ['5', 'pairs x:y, separated by semicolons'],
    ['5:1:2', 'pairs x:y, separated by semicolons'],
    ['', 'at least one pair x:y'],
    ['1:±2', 'a point has one value, not ±'],
  ])('refuses %j', (text, rule) => {
    expect(readCurve(text, 'Hz', '%')).toMatchObject({ ok: false, problem: { code: 'bad-curve', rule } });
  });

  it('names the pair that cannot be read', () => {
    expect(readCurve('1:1; x:2', 'Hz', '%')).toMatchObject({ problem: { code: 'not-a-number', given: 'x:2' } });
    expect(readCurve('1:1; 2:1,250', 'Hz', '%')).toMatchObject({ problem: { code: 'ambiguous', given: '2:1,250' } });
  });
});
