import fc from 'fast-check';
import { between, block, issueOf, number as n } from '../inverse';
import { BEAMS } from '../../../src/core/mass/beam-modes';
import { frfLoaded } from '../../../src/functions/mass/frf-loaded';
import { localMassFrf } from '../../../src/functions/mass/local-mass-frf';
import { localMassGoverning } from '../../../src/functions/mass/local-mass-governing';
import { localMassMember } from '../../../src/functions/mass/local-mass-member';
import { localMassModal } from '../../../src/functions/mass/local-mass-modal';
import { localMassModes } from '../../../src/functions/mass/local-mass-modes';
import { localMassRigid } from '../../../src/functions/mass/local-mass-rigid';
import { massCorrection } from '../../../src/functions/mass/mass-correction';
import { massCountAllowed } from '../../../src/functions/mass/mass-count-allowed';
import { massLevelExact } from '../../../src/functions/mass/mass-level-exact';
import { massLevelFrf } from '../../../src/functions/mass/mass-level-frf';
import { massPhase } from '../../../src/functions/mass/mass-phase';
import { massShift } from '../../../src/functions/mass/mass-shift';
import { massShiftExact } from '../../../src/functions/mass/mass-shift-exact';
import { massSum } from '../../../src/functions/mass/mass-sum';
import { mobilityPeak } from '../../../src/functions/mass/mobility-peak';
import { modalDensityPlate } from '../../../src/functions/mass/modal-density-plate';
import { modesLoaded } from '../../../src/functions/mass/modes-loaded';
import { modesPlate } from '../../../src/functions/mass/modes-plate';
import { wavelengthBeam } from '../../../src/functions/mass/wavelength-beam';
import { wavelengthPlate } from '../../../src/functions/mass/wavelength-plate';

/** Rows of a response: rising frequencies, real and imaginary part. */
const response = fc
  .array(fc.tuple(between(0.5, 50), between(-50, 50), between(0.5, 50)), { minLength: 2, maxLength: 12 })
  .map((rows) => {
    let frequency = 0;
    return rows.map(([step, re, im]) => [(frequency += step), re, im]);
  });
const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-8 * (1 + Math.abs(b)));

describe('responses in cells', () => {
  it.each(['real and imaginary', 'magnitude and phase', 'dB and phase'])(
    'MASS.CORRECTION takes off what FRF.LOADED puts on (%s)',
    (form) => {
      fc.assert(
        fc.property(response, between(0.1, 20), (rows, mass) => {
          const polar = rows.map(([f, re, im]) => {
            const size = Math.hypot(re!, im!);
            const phase = (Math.atan2(im!, re!) * 180) / Math.PI;
            return form.startsWith('dB') ? [f!, 20 * Math.log10(size), phase] : [f!, size, phase];
          });
          const given = form.startsWith('real') ? rows : polar;
          const loaded = block(frfLoaded, [given as number[][], mass, null, form]) as number[][];
          const free = block(massCorrection, [loaded, mass, 'accelerance', form]);
          free.forEach((row, i) => row.forEach((cell, k) => close(cell as number, given[i]![k]!)));
        }),
        { numRuns: 30 },
      );
    },
  );
  it('MASS.CORRECTION with the response itself as driving point is the driving-point correction', () => {
    fc.assert(
      fc.property(response, between(0.1, 20), (rows, mass) => {
        const table = rows as number[][];
        expect(block(massCorrection, [table, mass, null, null, table])).toEqual(block(massCorrection, [table, mass]));
      }),
      { numRuns: 30 },
    );
  });
  it('LOCAL.MASS.FRF only falls when the band widens, whichever quantity was measured', () => {
    fc.assert(
      fc.property(response, (rows) => {
        const table = rows as number[][];
        const [first, last] = [table[0]![0]!, table[table.length - 1]![0]!];
        const middle = (first + last) / 2;
        const narrow = n(localMassFrf, [table, middle, last]);
        expect(n(localMassFrf, [table, first, last])).toBeLessThanOrEqual(narrow * (1 + 1e-12));
        const mobility = table.map(([f, re, im]) => {
          const omega = 2 * Math.PI * f!;
          return [f!, im! / omega, -re! / omega];
        });
        close(n(localMassFrf, [mobility, first, last, 'mobility']), n(localMassFrf, [table, first, last]));
      }),
      { numRuns: 50 },
    );
  });
  it('MASS.LEVEL.FRF says at one line what MASS.LEVEL.EXACT says of its local mass', () => {
    fc.assert(
      fc.property(between(-50, 50), between(0.5, 50), between(0.1, 20), (re, im, mass) => {
        const table = [[100, re, im]];
        const phase = (-Math.atan2(im, re) * 180) / Math.PI;
        const [[low, high]] = block(massLevelFrf, [table, mass, 100, 100]) as [[number, number]];
        close(low, n(massLevelExact, [mass, n(localMassFrf, [table, 100, 100]), phase]));
        expect(low).toBe(high);
      }),
    );
  });
  it.each([
    ['no phase', [[[100, 1]], 1, 100, 100, null, 'magnitude'], 'wrong-size'],
    [
      'falling frequencies',
      [
        [
          [100, 1, 1],
          [50, 1, 1],
        ],
        1,
        50,
        100,
      ],
      'bad-curve',
    ],
    ['a missing column', [[[100, 1]], 1, 100, 100], 'bad-curve'],
    ['a band beyond the data', [[[100, 1, 1]], 1, 100, 200], 'beyond-data'],
    ['an error in the range', [[[100, { error: '#REF!' }, 1]], 1, 100, 100], 'cell-error'],
    ['an empty range', [[[null, null, null]], 1, 100, 100], 'missing'],
    ['a heading alone', [[['Hz', 're', 'im']], 1, 100, 100], 'missing'],
    [
      'a band upside down',
      [
        [
          [100, 1, 1],
          [200, 1, 1],
        ],
        1,
        200,
        100,
      ],
      'out-of-range',
    ],
  ] as const)('refuses %s', (_, args, code) => {
    expect(issueOf(massLevelFrf, args as never).code).toBe(code);
  });
  it('reads numbers typed as text and passes over a heading and blank rows', () => {
    const table = [
      ['f', 're', 'im'],
      ['50 Hz', '3', 4],
      [null, null, null],
      [100, '30', -40],
    ];
    expect(n(localMassFrf, [table, 50, 100])).toBeCloseTo(20, 9);
  });
  it('refuses driving-point lines other than the response’s', () => {
    expect(issueOf(massCorrection, [[[100, 1, 1]], 1, null, null, [[101, 1, 1]]])).toMatchObject({
      code: 'bad-curve',
      arg: 'drivingPoint',
    });
  });
});

describe('modes in cells', () => {
  const list = fc.array(fc.tuple(between(5, 2000), between(10, 5000), between(0.1, 2)), { minLength: 1, maxLength: 6 });
  const columns = (modes: [number, number, number][]) => [0, 1, 2].map((k) => modes.map((mode) => [mode[k]!]));
  it('MODES.LOADED never raises a mode and is the free list without a mass', () => {
    fc.assert(
      fc.property(list, between(0.1, 500), (modes, mass) => {
        const free = modes.map(([f]) => f).sort((a, b) => a - b);
        block(modesLoaded, [0, ...columns(modes)]).forEach(([f], i) => close(f as number, free[i]!));
        block(modesLoaded, [mass, ...columns(modes)]).forEach(([f], i) =>
          expect(f as number).toBeLessThanOrEqual(free[i]! * (1 + 1e-9)),
        );
      }),
    );
  });
  it('LOCAL.MASS.MODES far above all modes is the inverse of the summed mobilities of mass', () => {
    fc.assert(
      fc.property(list, (modes) => {
        const [[mass]] = block(localMassModes, [1e6, ...columns(modes), 1]) as [[number]];
        const expected = 1 / modes.reduce((sum, [, modal, shape]) => sum + shape ** 2 / modal, 0);
        expect(mass / expected).toBeCloseTo(1, 4);
      }),
    );
  });
  it('LOCAL.MASS.MODAL is the smallest of its modes and refuses lists of different length', () => {
    fc.assert(
      fc.property(list, (modes) => {
        const [, masses, shapes] = columns(modes);
        const each = modes.map(([, mass, shape]) => n(localMassModal, [mass, shape]));
        expect(n(localMassModal, [masses, shapes])).toBe(Math.min(...each));
      }),
    );
    expect(issueOf(localMassModal, [[[1, 2]], 1])).toMatchObject({ code: 'wrong-size', arg: 'shapes' });
    expect(issueOf(modesLoaded, [1, [[1, 2]], 1, 1])).toMatchObject({ code: 'wrong-size', arg: 'modalMasses' });
    expect(issueOf(localMassModal, [1, 0])).toMatchObject({ code: 'no-result' });
  });
  it('LOCAL.MASS.MEMBER is least where no position is given, and proportional to the mass', () => {
    fc.assert(
      fc.property(fc.constantFrom(...BEAMS), fc.integer({ min: 1, max: 6 }), between(0.01, 1), (beam, mode, x) => {
        const least = n(localMassMember, [1000, beam, mode]);
        fc.pre(beam === 'cantilever' || beam === 'free beam' || Math.abs(Math.sin(mode * Math.PI * x)) > 0.05);
        expect(n(localMassMember, [1000, beam, mode, x])).toBeGreaterThanOrEqual(least * (1 - 1e-9));
        expect(n(localMassMember, [500, beam, mode])).toBeCloseTo(least / 2, 6);
      }),
    );
  });
  it('LOCAL.MASS.MEMBER refuses half modes, a node, and disc modes it cannot calculate', () => {
    expect(issueOf(localMassMember, [1, 'cantilever', 1.5])).toMatchObject({ code: 'out-of-range', arg: 'mode' });
    expect(issueOf(localMassMember, [1, 'simply supported beam', 2, 0.5])).toMatchObject({ code: 'no-result' });
    expect(issueOf(localMassMember, [1, 'clamped circular plate', 6])).toMatchObject({ code: 'out-of-range' });
  });
  it('LOCAL.MASS.RIGID never exceeds the part’s mass', () => {
    fc.assert(
      fc.property(
        between(1, 500),
        between(1e-6, 1),
        between(0, 200),
        (m, j, d) => n(localMassRigid, [m, j, d]) <= m * (1 + 1e-12),
      ),
    );
  });
  it('LOCAL.MASS.GOVERNING names the smallest and never passes over a name without a mass', () => {
    fc.assert(
      fc.property(fc.uniqueArray(between(0.1, 1000), { minLength: 1, maxLength: 6 }), (masses) => {
        const rows = masses.map((mass, i) => [`estimate ${i}`, mass]);
        const [[mass, name]] = block(localMassGoverning, [rows]) as [[number, string]];
        expect(mass).toBeCloseTo(Math.min(...masses), 9);
        expect(name).toBe(`estimate ${masses.indexOf(Math.min(...masses))}`);
      }),
    );
    expect(
      issueOf(localMassGoverning, [
        [
          ['a', 3],
          ['b', null],
        ],
      ]),
    ).toMatchObject({ code: 'missing', arg: 'branches (b)' });
    expect(issueOf(localMassGoverning, [[['a', 0]]]).code).toBe('out-of-range');
    expect(issueOf(localMassGoverning, [[['a', 'heavy']]]).code).toBe('not-a-number');
    expect(issueOf(localMassGoverning, [[[null, null]]]).code).toBe('missing');
  });
});

describe('plates, beams and several units in cells', () => {
  it('MASS.SHIFT.EXACT drops more than MASS.SHIFT of the same modal ratio', () => {
    fc.assert(
      fc.property(between(0.01, 2), (share) => {
        expect(n(massShiftExact, [share, 'cantilever, mass at the tip'])).toBeLessThan(n(massShift, [4 * share]));
      }),
    );
  });
  it('MASS.PHASE lags more for the heavier unit, and most on a plate', () => {
    fc.assert(
      fc.property(between(0.01, 5), (ratio) => {
        expect(n(massPhase, [ratio, 'plate'])).toBeLessThan(n(massPhase, [ratio, 'beam']));
        expect(n(massPhase, [1.1 * ratio, 'plate'])).toBeLessThan(n(massPhase, [ratio, 'plate']));
      }),
    );
  });
  it('MASS.COUNT.ALLOWED units keep MASS.SUM spread evenly, one more does not', () => {
    fc.assert(
      fc.property(between(100, 5000), between(0.05, 0.5), between(0.5, 20), (member, limit, unit) => {
        const count = n(massCountAllowed, [member, limit, unit]);
        const ratio = (units: number) => (units === 0 ? 0 : n(massSum, [[Array<number>(units).fill(unit)], member]));
        expect(ratio(count)).toBeLessThanOrEqual(limit * (1 + 1e-8));
        expect(ratio(count + 1)).toBeGreaterThan(limit * (1 - 1e-8));
      }),
      { numRuns: 30 },
    );
  });
  it('MASS.SUM refuses shapes that do not match the masses', () => {
    expect(issueOf(massSum, ['1; 2', 10, '1; 1; 1'])).toMatchObject({ code: 'wrong-size', arg: 'shapes' });
  });
  it('WAVELENGTH.PLATE and WAVELENGTH.BEAM halve at four times the frequency', () => {
    const plate = [1, 70, 2700, 0.33];
    fc.assert(
      fc.property(between(10, 5000), (f) => {
        close(n(wavelengthPlate, [4 * f, ...plate]), n(wavelengthPlate, [f, ...plate]) / 2);
        close(n(wavelengthBeam, [4 * f, 3, 0.2]), n(wavelengthBeam, [f, 3, 0.2]) / 2);
      }),
    );
  });
  it('MODES.PLATE counts no more than MODAL.DENSITY.PLATE times the frequency, and refuses to count for ever', () => {
    fc.assert(
      fc.property(between(10, 10000), between(50, 2000), between(50, 2000), between(0.2, 10), (f, a, b, h) => {
        const plate = [a, b, h, 70, 2700, 0.33];
        expect(n(modesPlate, [f, ...plate])).toBeLessThanOrEqual(f * n(modalDensityPlate, plate));
      }),
    );
    expect(issueOf(modesPlate, [1e12, 1e6, 1e6, 0.01, 1, 9000, 0.3]).code).toBe('no-result');
  });
  it('MOBILITY.PEAK falls in proportion to damping', () => {
    fc.assert(
      fc.property(between(10, 5000), between(0.001, 1), between(0.1, 10), (f, density, damping) => {
        close(n(mobilityPeak, [f, density, 2 * damping]), n(mobilityPeak, [f, density, damping]) / 2);
      }),
    );
  });
});
