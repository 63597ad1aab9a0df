import fc from 'fast-check';
import type { Argument } from '../../../src/engine/arguments';
import { functionByName } from '../../../src/functions/index';
import { between, block, issueOf, number } from '../inverse';

const named = (name: string) => {
  const fn = functionByName(name);
  if (!fn) throw new Error(`no function ${name}`);
  return fn;
};
const call = (name: string, ...args: Argument[]): number => number(named(name), args);
const issue = (name: string, ...args: Argument[]) => issueOf(named(name), args);
const SPECTRUM = '20:0.026; 50:0.16; 800:0.16; 2000:0.026';

describe('levels', () => {
  it('in g and in m/s² give the same margins', () => {
    fc.assert(
      fc.property(between(0.01, 1000), between(0.01, 1000), (highest, ceiling) => {
        const si = call('HEADROOM', `${highest * 9.80665} m/s²`, `${ceiling * 9.80665} m/s²`);
        expect(si).toBeCloseTo(call('HEADROOM', highest, ceiling), 9);
      }),
    );
  });

  it('of a sine grow with frequency squared at constant displacement and in step at constant velocity', () => {
    expect(call('LEVEL.SINE', 80, 1) / call('LEVEL.SINE', 40, 1)).toBeCloseTo(4, 12);
    expect(call('LEVEL.SINE', 80, null, 1) / call('LEVEL.SINE', 40, null, 1)).toBeCloseTo(2, 12);
  });

  it('of a sweep follow the smallest of its limits', () => {
    fc.assert(
      fc.property(between(1, 2000), between(0.01, 10), between(1, 1000), between(0.1, 50), (f, x, v, a) => {
        const all = call('LEVEL.SINE', f, x, v, a);
        const single = [call('LEVEL.SINE', f, x), call('LEVEL.SINE', f, null, v), call('LEVEL.SINE', f, null, null, a)];
        expect(all).toBeCloseTo(Math.min(...single), 9);
      }),
    );
  });

  it('without displacement, velocity or acceleration are missing', () => {
    expect(issue('LEVEL.SINE', 100)).toEqual({ code: 'missing', arg: 'displacement' });
  });

  it('of a sine on random vibration are those of either part when the other vanishes', () => {
    const [[rms, peak] = []] = block(named('LEVEL.COMBINED'), [10, 1e-9]);
    expect(rms).toBeCloseTo(10 / Math.SQRT2, 9);
    expect(peak).toBeCloseTo(10, 6);
  });
});

describe('PSD.RMS', () => {
  it('doubles when every breakpoint is four times as high', () => {
    expect(call('PSD.RMS', '20:0.104; 50:0.64; 800:0.64; 2000:0.104')).toBeCloseTo(2 * call('PSD.RMS', SPECTRUM), 9);
  });
  it('adds in squares over adjacent parts', () => {
    fc.assert(
      fc.property(between(21, 1999), (cut) => {
        const parts = Math.hypot(call('PSD.RMS', SPECTRUM, 20, cut), call('PSD.RMS', SPECTRUM, cut, 2000));
        expect(parts).toBeCloseTo(call('PSD.RMS', SPECTRUM), 9);
      }),
    );
  });
  it('counts nothing outside the breakpoints', () => {
    expect(call('PSD.RMS', SPECTRUM, 1, 20000)).toBeCloseTo(call('PSD.RMS', SPECTRUM), 12);
  });
  it.each([
    ['a zero density', '20:0; 50:0.16', 'bad-curve'],
    ['a band beside the spectrum', SPECTRUM, 'no-result'],
  ])('refuses %s', (title, spectrum, code) => {
    const args = title.includes('beside') ? [spectrum, 3000, 4000] : [spectrum];
    expect(issue('PSD.RMS', ...args)).toMatchObject({ code });
  });
});

describe('PSD.LEVEL', () => {
  it('does not go beyond the breakpoints', () => {
    expect(issue('PSD.LEVEL', SPECTRUM, 10)).toMatchObject({ code: 'beyond-data', arg: 'frequency' });
  });
  it('is each breakpoint at its frequency', () => {
    expect(call('PSD.LEVEL', SPECTRUM, 50)).toBeCloseTo(0.16, 12);
  });
});

describe('peaks of random vibration', () => {
  it('grow with time, ever more slowly', () => {
    const peak = (seconds: number) => call('PEAK.EXPECTED', 1, 1000, seconds);
    expect(peak(10)).toBeGreaterThan(peak(1));
    expect(peak(100) - peak(10)).toBeLessThan(peak(10) - peak(1));
  });
  it('of fewer than ten cycles are refused', () => {
    expect(issue('PEAK.EXPECTED', 1, 10, 0.9)).toMatchObject({ code: 'out-of-range', arg: 'duration' });
    expect(issue('PEAK.DURATION', 1, 10, 1)).toMatchObject({ code: 'out-of-range', arg: 'peak' });
  });
});

describe('noise', () => {
  it('in a band adds in squares over adjacent bands', () => {
    fc.assert(
      fc.property(between(2, 900), (cut) => {
        const noise = (low: number, high: number) => call('NOISE.BAND', '1:60; 10:15; 100:5', low, high);
        expect(Math.hypot(noise(1, cut), noise(cut, 1000)) / noise(1, 1000)).toBeCloseTo(1, 10);
      }),
    );
  });
  it('is the same whatever the order of the parts, and never below the largest', () => {
    fc.assert(
      fc.property(fc.array(between(1e-6, 1), { minLength: 2, maxLength: 6 }), (parts) => {
        const total = call('NOISE.SUM', ...parts);
        expect(call('NOISE.SUM', ...[...parts].reverse())).toBeCloseTo(total, 12);
        expect(total).toBeGreaterThanOrEqual(Math.max(...parts));
      }),
    );
  });
  it('of an input falls as sensitivity rises and grows with the square root of the band', () => {
    const noise = (s: number, high: number) => call('NOISE.INPUT', 10, 110, 51200, s, 0, high);
    expect(noise(10, 1000) / noise(100, 1000)).toBeCloseTo(10, 12);
    expect(noise(10, 4000) / noise(10, 1000)).toBeCloseTo(2, 12);
  });
  it('of a charge amplifier grows with its cable while sensitivity stays', () => {
    const noise = (cable: number) => call('NOISE.CHARGE', 10, 350, cable, 100, 1.2, 20, 2000);
    expect(noise(2450) / noise(1000)).toBeCloseTo(2, 12);
  });
  it('down to 0 Hz has no finite value when its density rises as 1/f', () => {
    expect(issue('NOISE.MODEL', 2, 50, 0, 1000)).toMatchObject({ code: 'no-result' });
    expect(issue('NOISE.BAND', '1:10; 10:1', 0, 1000)).toMatchObject({ code: 'no-result' });
  });
  it.each(['NOISE.BAND', 'NOISE.CURVE'])('of %s needs a band with an upper edge above the lower', (name) => {
    expect(issue(name, '1:10; 10:1', 100, 100)).toMatchObject({ code: 'out-of-range', arg: 'high' });
  });
  it('takes a band written as one text', () => {
    expect(call('NOISE.BAND', '1:10', '5..2000 Hz', null)).toBe(call('NOISE.BAND', '1:10', 5, 2000));
  });
  it('summed along NOISE.CURVE ends at NOISE.BAND', () => {
    const rows = block(named('NOISE.CURVE'), ['1:60; 10:15; 100:5', 2, 800, 7]);
    expect(rows).toHaveLength(8);
    expect(rows[7]?.[2]).toBeCloseTo(call('NOISE.BAND', '1:60; 10:15; 100:5', 2, 800), 12);
  });
});

describe('CEILING', () => {
  const iepe = (overrides: Partial<Record<'fullScale' | 's' | 'range' | 'supply', number>> = {}): Argument[] => {
    const { fullScale = 50, s = 100, range = 10, supply = 24 } = overrides;
    return [fullScale, 'IEPE', s, range, supply, 8, 12, 1.5, 2];
  };
  it('never rises when a part gets smaller', () => {
    fc.assert(
      fc.property(
        between(1, 100),
        between(0.5, 20),
        between(14, 30),
        between(0.1, 1),
        (fullScale, range, supply, k) => {
          const whole = call('CEILING', ...iepe({ fullScale, range, supply }));
          expect(call('CEILING', ...iepe({ fullScale: k * fullScale, range, supply }))).toBeLessThanOrEqual(whole);
          expect(call('CEILING', ...iepe({ fullScale, range: k * range, supply }))).toBeLessThanOrEqual(whole);
          expect(call('CEILING', ...iepe({ fullScale, range, supply: k * supply }))).toBeLessThanOrEqual(whole);
        },
      ),
    );
  });
  it('is 0 when the supply leaves no swing, and says so', () => {
    expect(call('CEILING', ...iepe({ supply: 13 }))).toBe(0);
    expect(block(named('CEILING.CAUSE'), iepe({ supply: 13 }))).toBe('bias swing');
  });
  it.each([
    ['IEPE', 'supply'],
    ['charge', 'outputLimit'],
  ])('of %s output needs the %s', (output, arg) => {
    expect(issue('CEILING', 50, output, 100, 10)).toEqual({ code: 'missing', arg });
  });
  it.each(['DC', 'voltage', 'bridge'])('of %s output needs neither supply nor amplifier', (output) => {
    expect(call('CEILING', 50, output, 100, 10)).toBeCloseTo(50, 12);
  });
  it('refuses a highest bias below the lowest', () => {
    expect(issue('CEILING', 50, 'IEPE', 100, 10, 24, 12, 8, 1.5, 2)).toMatchObject({
      code: 'out-of-range',
      arg: 'biasMax',
    });
  });
  it('is lowered by an offset of either sign', () => {
    expect(call('CEILING.OFFSET', 5, -1)).toBe(call('CEILING.OFFSET', 5, 1));
    expect(call('CEILING.OFFSET', 5, 6)).toBe(0);
  });
});

describe('SUPPLY.NEEDED', () => {
  it('has no answer when the bias leaves too little downward', () => {
    expect(issue('SUPPLY.NEEDED', 100, 100, 8, 12, 1.5, 2)).toMatchObject({ code: 'no-result' });
  });
});

describe('RANGE.CHOICE', () => {
  const table = (...args: Argument[]) => block(named('RANGE.CHOICE'), args);
  it('marks the smallest range that holds the peak with its margin', () => {
    fc.assert(
      fc.property(between(0.1, 60), (peak) => {
        const rows = table('0.1; 1; 10', 110, 51200, 100, 0.0001, 0.01, peak, 5, 2000).slice(1);
        const marked = rows.filter((row) => row[6] !== '').map((row) => row[0]);
        expect(marked).toEqual([0.1, 1, 10].filter((range) => range >= 1.5 * 0.1 * peak).slice(0, 1));
      }),
    );
  });
  it('trades noise against headroom: every gain step lowers both', () => {
    const rows = table('10', 110, 51200, 10, 0, 0.01, 5, 5, 2000, null, '1; 10; 100').slice(1);
    for (const [i, row] of rows.entries()) {
      if (i === 0) continue;
      expect(row[2]).toBeLessThan(rows[i - 1]?.[2] as number);
      expect(row[5]).toBeLessThan(rows[i - 1]?.[5] as number);
    }
  });
  it('refuses two dynamic ranges for three input ranges', () => {
    expect(issue('RANGE.CHOICE', '0.1; 1; 10', '100; 110', 51200, 100, 0, 0.01, 5, 5, 2000)).toMatchObject({
      code: 'wrong-size',
      arg: 'dynamicRanges',
    });
  });
});

describe('converters and detectors', () => {
  it('gain 6.02 dB and half the step with every bit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (bits) => {
        expect(call('BITS.RANGE', bits + 1) - call('BITS.RANGE', bits)).toBeCloseTo(20 * Math.log10(2), 9);
        expect(call('QUANTISATION.STEP', bits, 10) / call('QUANTISATION.STEP', bits + 1, 10)).toBeCloseTo(2, 12);
      }),
    );
  });
  it('have a full-scale sine over quantisation noise that is the range of the bits', () => {
    const noise = call('QUANTISATION.NOISE', 16, 10);
    expect(20 * Math.log10(10 / Math.SQRT2 / noise)).toBeCloseTo(call('BITS.RANGE', 16), 9);
  });
  it('tile an octave with three thirds', () => {
    const thirds = [-1, 0, 1].map((k) => call('BANDWIDTH.OCTAVE', 1000 * 2 ** (k / 3), 3, 'two'));
    expect(thirds.reduce((sum, b) => sum + b, 0)).toBeCloseTo(call('BANDWIDTH.OCTAVE', 1000, 1, 'two'), 9);
  });
  it('read a Hann line half as wide again as a rectangular one', () => {
    expect(call('BANDWIDTH.LINE', 2) / call('BANDWIDTH.LINE', 2, 'rectangular')).toBe(1.5);
  });
});
