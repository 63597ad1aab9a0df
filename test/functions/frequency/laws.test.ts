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

describe('FREQUENCY.SPAN', () => {
  const channel = (lowLimit: number | null, coupling: string, tolerance = 5): Argument[] => [
    28000,
    30,
    'IEPE',
    lowLimit,
    5,
    null,
    coupling,
    tolerance,
  ];
  it('has FREQUENCY.LOW and FREQUENCY.HIGH as its ends', () => {
    fc.assert(
      fc.property(between(0.01, 10), between(0.01, 10), between(1, 20), (lowLimit, coupling, tolerance) => {
        const args = channel(lowLimit, String(coupling), tolerance);
        const [ends] = block(named('FREQUENCY.SPAN'), args);
        expect(ends).toEqual([call('FREQUENCY.LOW', ...args), call('FREQUENCY.HIGH', ...args)]);
      }),
    );
  });
  it('starts higher with every coupling pole', () => {
    const low = (coupling: string) => call('FREQUENCY.LOW', ...channel(0.5, coupling));
    expect(low('0.5')).toBeGreaterThan(low('none'));
    expect(low('0.5; 0.5')).toBeGreaterThan(low('0.5'));
  });
  it('takes a pole of 0 Hz as none', () => {
    expect(call('FREQUENCY.LOW', ...channel(0.5, '0'))).toBe(call('FREQUENCY.LOW', ...channel(0.5, 'none')));
  });
  it('of a charge channel is that of the equal low limit', () => {
    const corner = call('CORNER.FROM.TIME', 0.5);
    const limit = call('LIMIT.FROM.CORNER', corner);
    const charge = call('FREQUENCY.LOW', 28000, 30, 'charge', null, null, 0.5, 0.5);
    expect(charge).toBeCloseTo(call('FREQUENCY.LOW', ...channel(limit, '0.5')), 9);
  });
  it.each([
    ['IEPE', 'lowLimit'],
    ['voltage', 'lowLimit'],
    ['charge', 'timeConstant'],
  ])('of %s output needs the %s', (output, arg) => {
    expect(issue('FREQUENCY.SPAN', 28000, 30, output, null, null, null, 'none')).toEqual({ code: 'missing', arg });
  });
  it('needs to know the coupling', () => {
    expect(issue('FREQUENCY.SPAN', 28000, 30, 'DC', null, null, null, null)).toEqual({
      code: 'missing',
      arg: 'couplingPoles',
    });
  });
  it('uses a low limit that a static sensor states all the same', () => {
    expect(call('FREQUENCY.LOW', 28000, 30, 'DC', 0.5, null, null, 'none')).toBeGreaterThan(0);
  });
  it('is empty when the analyser ends below its low end', () => {
    expect(issue('FREQUENCY.SPAN', 28000, 30, 'IEPE', 10, 5, null, 'none', 5, 160, 20)).toMatchObject({
      code: 'no-result',
    });
  });
  it('ends where the larger rise is reached when one is allowed', () => {
    const args = [...channel(0.5, 'none'), 160, null, null, null];
    expect(call('FREQUENCY.HIGH', ...args, 10)).toBeGreaterThan(call('FREQUENCY.HIGH', ...args));
    expect(call('FREQUENCY.LOW', ...args, 10)).toBe(call('FREQUENCY.LOW', ...args));
  });
});

describe('RESONANCE.MOUNTED', () => {
  it('rises with stiffness, falls with mass, and never passes the sensor’s own', () => {
    fc.assert(
      fc.property(between(1000, 1e5), between(0.1, 50), between(1e4, 1e10), (own, mass, stiffness) => {
        const mounted = call('RESONANCE.MOUNTED', own, mass, stiffness);
        expect(mounted).toBeLessThan(own);
        expect(call('RESONANCE.MOUNTED', own, mass, 2 * stiffness)).toBeGreaterThan(mounted);
        expect(call('RESONANCE.MOUNTED', own, 2 * mass, stiffness)).toBeLessThan(mounted);
      }),
    );
  });
  it('lies below the two bodies solved exactly, by no more than √½: the sum of two terms against the larger', () => {
    fc.assert(
      fc.property(
        between(1000, 1e5),
        between(0.5, 20),
        between(0.05, 0.9),
        between(1e4, 1e10),
        (own, mass, share, k) => {
          const exact = call('RESONANCE.BODIES', own, mass * (1 - share), mass * share, k);
          const bound = call('RESONANCE.MOUNTED', own, mass, k);
          expect(bound / exact).toBeLessThanOrEqual(1 + 1e-9);
          expect(bound / exact).toBeGreaterThan(Math.SQRT1_2 * (1 - 1e-9));
        },
      ),
    );
  });
});

describe('RESPONSE.LOSS', () => {
  it('agrees with its single parts', () => {
    fc.assert(
      fc.property(between(0.1, 20000), between(0.01, 10), between(0.5, 100), (f, pole, q) => {
        const args = [f, pole, 20000, q];
        const [[deviation, level, phase] = []] = block(named('RESPONSE.LOSS'), args);
        expect(deviation).toBe(call('RESPONSE.DEVIATION', ...args));
        expect(phase).toBe(call('RESPONSE.PHASE', ...args));
        expect(20 * Math.log10(1 + (deviation as number) / 100)).toBeCloseTo(level as number, 8);
      }),
    );
  });
  it('adds levels and phases of poles one after the other', () => {
    const of = (poles: string) => block(named('RESPONSE.LOSS'), [3, poles, null, null, 1e9])[0] as number[];
    expect(of('1; 2')[1]).toBeCloseTo(of('1')[1]! + of('2')[1]!, 9);
    expect(of('1; 2')[2]).toBeCloseTo(of('1')[2]! + of('2')[2]!, 9);
  });
  it('needs the quality factor of a resonance', () => {
    expect(issue('RESPONSE.LOSS', 100, 1, 20000)).toEqual({ code: 'missing', arg: 'qualityFactor' });
  });
});

describe('RESPONSE.CURVE', () => {
  it('passes through RESPONSE.DEVIATION at each of its frequencies, both ends included', () => {
    const rows = block(named('RESPONSE.CURVE'), [1, 10000, 0.5, 30000, 20, 160, 9]).slice(1) as number[][];
    expect(rows.map(([f]) => f)[0]).toBe(1);
    expect(rows.map(([f]) => f)[8]).toBe(10000);
    for (const [f, deviation] of rows) expect(deviation).toBeCloseTo(call('RESPONSE.DEVIATION', f!, 0.5, 30000, 20), 9);
  });
});

describe('SETTLING.TIME', () => {
  it('doubles when the corner is halved', () => {
    expect(call('SETTLING.TIME', 0.05, 10, 1e-4) / call('SETTLING.TIME', 0.1, 10, 1e-4)).toBeCloseTo(2, 12);
  });
  it('adds up over two stages', () => {
    const whole = call('SETTLING.TIME', 0.05, 10, 1e-3);
    expect(call('SETTLING.TIME', 0.05, 10, 0.1) + call('SETTLING.TIME', 0.05, 0.1, 1e-3)).toBeCloseTo(whole, 9);
  });
  it.each(['SETTLING.TIME', 'CORNER.FOR.SETTLING'])('in %s needs a residue below the step', (name) => {
    expect(issue(name, 1, 1, 1)).toMatchObject({ code: 'out-of-range', arg: 'residue' });
  });
});

describe('CORNER.ALLOWED', () => {
  it('has no answer when the other poles alone lose too much', () => {
    expect(issue('CORNER.ALLOWED', 1, 5, null, 1)).toMatchObject({ code: 'no-result' });
    expect(issue('TIME.CONSTANT.NEEDED', 1, 50, 5, 0.5)).toMatchObject({ code: 'no-result' });
  });
});

describe('IEPE supply and cable', () => {
  it('reach half as far with twice the peak, sensitivity or capacitance', () => {
    const limit = call('CABLE.LIMIT', 4, 1, 3000, 50, 100);
    expect(call('CABLE.LIMIT', 4, 1, 6000, 50, 100) / limit).toBeCloseTo(0.5, 12);
    expect(call('CABLE.LIMIT', 4, 1, 3000, 100, 100) / limit).toBeCloseTo(0.5, 12);
    expect(call('CABLE.LIMIT', 4, 1, 3000, 50, 200) / limit).toBeCloseTo(0.5, 12);
  });
  it('drive nothing when the sensor keeps the whole current', () => {
    expect(issue('CABLE.LIMIT', 2, 2, 3000, 50, 100)).toMatchObject({ code: 'out-of-range', arg: 'supplyCurrent' });
    expect(issue('CABLE.RUN.ALLOWED', 2, 2, 100, 50, 100, 1000)).toMatchObject({ code: 'no-result' });
  });
  it('do not change the sensitivity, while a bare piezoelectric sensor loses it to the cable', () => {
    expect(call('SENSITIVITY.VOLTAGE', 10, 500, 500)).toBeCloseTo(call('SENSITIVITY.VOLTAGE', 10, 500, 0) / 2, 12);
  });
});

describe('half-sine shock pulse', () => {
  it('depends on the ratio of time constant and duration alone', () => {
    fc.assert(
      fc.property(between(0.001, 10), between(0.1, 100), between(0.1, 10), (time, duration, k) => {
        expect(call('PULSE.ERROR', k * time, k * duration)).toBeCloseTo(call('PULSE.ERROR', time, duration), 8);
      }),
    );
  });
  it('is distorted less by every longer time constant, in peak and velocity change', () => {
    fc.assert(
      fc.property(between(0.001, 1), between(1.01, 5), (time, k) => {
        for (const kind of ['peak', 'velocity'])
          expect(call('PULSE.ERROR', k * time, 11, kind)).toBeGreaterThan(call('PULSE.ERROR', time, 11, kind));
      }),
    );
  });
  it('needs 6.03 and 2.84 durations of time constant for 5 % and 10 % of peak (computed with scipy)', () => {
    expect(call('PULSE.TIME.NEEDED', 1000, 5)).toBeCloseTo(6.03, 2);
    expect(call('PULSE.TIME.NEEDED', 1000, 10)).toBeCloseTo(2.84, 2);
  });
  it('has no time constant that undershoots by more than the worst', () => {
    expect(issue('PULSE.TIME.NEEDED', 11, 90, 'undershoot')).toMatchObject({ code: 'no-result' });
  });
  it('is followed within the error by every resonance above the one needed', () => {
    fc.assert(
      fc.property(between(0.6, 100), between(1, 30), between(1, 20), (q, error, k) => {
        const needed = call('PULSE.RESONANCE.NEEDED', 1, q, error);
        expect(Math.abs(call('PULSE.OVERSHOOT', needed, q, 1))).toBeCloseTo(error, 6);
        expect(Math.abs(call('PULSE.OVERSHOOT', k * needed, q, 1))).toBeLessThanOrEqual(error * (1 + 1e-6));
      }),
    );
  });
});

describe('MOUNT.PRACTICE', () => {
  it('calls itself common practice in every row', () => {
    const [head = [], ...rows] = block(named('MOUNT.PRACTICE'), [10]);
    expect(head[5]).toBe('source');
    for (const row of rows) expect(row[5]).toBe('common practice, no source');
  });
  it('lets a lighter sensor reach further on the same joint', () => {
    const [heavy, light] = [40, 10].map((mass) => block(named('MOUNT.PRACTICE'), [mass]));
    light!.slice(1).forEach((row, i) => expect(row[2]).toBe((heavy![i + 1]![2] as number) * 2));
  });
});

describe('FREQUENCY.CAUSE', () => {
  it.each([
    ['cable drive', [null, 3000, null]],
    ['data sheet', [null, null, 2500]],
    ['analyser', [5120, 3000, 2500]],
    ['response', [null, null, null]],
  ])('names %s when it ends the span', (cause, caps) => {
    const [row] = block(named('FREQUENCY.CAUSE'), [28000, 30, 'IEPE', 0.5, null, null, 'none', 5, 160, ...caps]);
    expect(row).toEqual(['sensor', cause]);
  });
  it('names the response when the reference sits on the resonance of a static sensor', () => {
    const [row] = block(named('FREQUENCY.CAUSE'), [28000, 30, 'DC', null, null, null, 'none', 5, 20000]);
    expect(row).toEqual(['response', 'response']);
  });
});
