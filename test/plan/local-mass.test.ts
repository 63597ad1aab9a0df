import { governingLocalMass, localMassOf } from '../../src/plan/local-mass';

describe('the local mass at a point', () => {
  it('of a rigid part falls when the sensor sits off its centre of mass', () => {
    // By hand: 1/(1/0.06 + 0.02²/2.4e-5) = 1/(16.67 + 16.67) = 0.03 kg.
    expect(localMassOf({ model: 'rigid', mass: 0.06, inertia: 2.4e-5, offset: 0.02 })).toBeCloseTo(0.03, 12);
  });

  it('of a mode is its modal mass over the square of its shape', () => {
    expect(localMassOf({ model: 'modal', modalMass: 0.4, shape: 2 })).toBeCloseTo(0.1, 12);
  });

  it('of an aluminium beam 20 mm × 3 mm follows its point impedance', () => {
    // By hand: EI 3.15 N·m², m′ 0.162 kg/m, c = (3.15·628.3²/0.162)^¼ = 52.64 m/s, |Z| = 2·0.162·52.64·√2 = 24.12 N·s/m.
    const beam = {
      model: 'beam',
      frequency: 100,
      modulus: 7e10,
      density: 2700,
      width: 0.02,
      thickness: 0.003,
    } as const;
    expect(localMassOf(beam)! / (24.12 / (2 * Math.PI * 100))).toBeCloseTo(1, 3);
  });

  it('is that of the smallest branch, with its model', () => {
    const governing = governingLocalMass([
      { model: 'value', mass: 0.2 },
      { model: 'plate', impedance: 260, frequency: 2000 },
      { model: 'value', mass: 0.05 },
    ]);
    // By hand: 260/(2π·2000) = 0.020690 kg.
    expect(governing).toMatchObject({ model: 'plate', complete: true });
    expect(governing!.mass).toBeCloseTo(0.02069, 5);
  });

  it('is not complete while one branch is not known, for that one could be smaller', () => {
    const branches = [{ model: 'value', mass: 0.2 } as const, { model: 'plate', frequency: 2000 } as const];
    expect(governingLocalMass(branches)).toEqual({ mass: 0.2, model: 'mass', complete: false });
    expect(governingLocalMass([])).toBeUndefined();
  });
});
