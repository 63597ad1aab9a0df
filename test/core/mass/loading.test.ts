import fc from 'fast-check';
import {
  allowedSensorMass,
  frequencyShift,
  levelEffect,
  LOADING_MODELS,
  massRatio,
  neededLocalMass,
  ratioForFrequencyDrop,
  ratioForLevelDrop,
  totalAddedMass,
} from '../../../src/core/mass/loading';

const mass = fc.double({ min: 0, max: 1, noNaN: true });
const positive = fc.double({ min: 1e-6, max: 100, noNaN: true });
const ratio = fc.double({ min: 0, max: 50, noNaN: true });
const drop = fc.double({ min: 1e-4, max: 0.9, noNaN: true });
const model = fc.constantFrom(...LOADING_MODELS);

describe('mass loading', () => {
  it('never gives a negative ratio, and none without added mass', () => {
    fc.assert(fc.property(mass, positive, (added, local) => massRatio(added, local) >= 0 && massRatio(0, local) === 0));
  });
  it('grows with every part that is added', () => {
    fc.assert(
      fc.property(mass, mass, mass, positive, (sensor, mount, cable, more) => {
        const before = totalAddedMass(sensor, mount, cable);
        return (
          totalAddedMass(sensor + more, mount, cable) > before &&
          totalAddedMass(sensor, mount + more, cable) > before &&
          totalAddedMass(sensor, mount, cable + more) > before
        );
      }),
    );
  });
  it('lowers a frequency and a level more the heavier the unit, and never to nothing', () => {
    fc.assert(
      fc.property(ratio, positive, model, (r, more, structure) => {
        const [light, heavy] = [levelEffect(r, structure).level, levelEffect(r + more, structure).level];
        expect(heavy).toBeLessThan(light);
        expect(frequencyShift(r + more)).toBeLessThan(frequencyShift(r));
        expect(Math.min(heavy, frequencyShift(r + more))).toBeGreaterThan(-1);
      }),
    );
  });
  it('costs a mass-like structure most level and a plate least', () => {
    fc.assert(
      fc.property(positive, (r) => {
        const [onMass, onPlate, onBeam] = LOADING_MODELS.map((structure) => levelEffect(r, structure).level);
        return onMass! < onBeam! && onBeam! < onPlate!;
      }),
    );
  });
  it('turns the phase by less than the structure’s own angle', () => {
    fc.assert(
      fc.property(ratio, (r) => {
        expect(levelEffect(r, 'mass').phase).toBeCloseTo(0, 12);
        expect(levelEffect(r, 'plate').phase).toBeGreaterThan(-Math.PI / 2);
        expect(levelEffect(r, 'beam').phase).toBeGreaterThan(-Math.PI / 4);
      }),
    );
  });
  it('meets exactly the drop that the allowed ratio was made for', () => {
    fc.assert(
      fc.property(drop, model, (limit, structure) => {
        expect(-frequencyShift(ratioForFrequencyDrop(limit))).toBeCloseTo(limit, 10);
        expect(-levelEffect(ratioForLevelDrop(limit, structure), structure).level).toBeCloseTo(limit, 10);
      }),
    );
  });
  it('reaches the ratio limit with the allowed sensor and with the needed local mass', () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 0.01, max: 1, noNaN: true }), mass, mass, (local, limit, mount, cable) => {
        const sensor = allowedSensorMass(local, limit, mount, cable);
        expect(massRatio(totalAddedMass(sensor, mount, cable), local)).toBeCloseTo(limit, 9);
        expect(massRatio(local, neededLocalMass(local, limit))).toBeCloseTo(limit, 12);
      }),
    );
  });
  it('says with a negative mass that mount and cable alone are too heavy', () => {
    expect(allowedSensorMass(0.002, 0.1, 0.0001, 0.00015)).toBeLessThan(0);
  });
});
