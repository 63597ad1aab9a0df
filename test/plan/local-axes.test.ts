import fc from 'fast-check';
import { handedness } from '../../src/core/stock/handedness';
import { directionVector, dot, lineKey, readLocalAxes, type Axes } from '../../src/plan/local-axes';
import type { Channel } from '../../src/plan/model';

const axesOf = (text: string): Axes => {
  const reading = readLocalAxes(text);
  if (!('axes' in reading)) throw new Error(reading.problem);
  return reading.axes;
};
const channel = (direction: string, localAxes?: string): Channel =>
  ({
    id: '1',
    point: '12',
    direction,
    localAxes,
    requirement: { detector: { kind: 'band' }, localMass: [] },
  }) as Channel;
const along = (direction: string, localAxes?: string) =>
  directionVector(channel(direction, localAxes))!.map((cosine) => Number(cosine.toFixed(6)) || 0);

describe('local axes', () => {
  // By hand: a right-handed quarter turn about z takes x to y and y to −x.
  it('a quarter turn about z takes x to y', () => {
    expect(along('X+', 'Z90')).toEqual([0, 1, 0]);
    expect(along('Y+', 'Z90')).toEqual([-1, 0, 0]);
    expect(along('Z-', 'Z90')).toEqual([0, 0, -1]);
  });

  // By hand: after Z90 the local y is −X of the article; turning x (= Y) about it by 90° takes it to −Z.
  it('a later turn is about an axis that the earlier ones have moved', () => {
    expect(along('X+', 'Z90 Y90')).toEqual([0, 0, -1]);
    expect(along('X', 'y 90°, z 90°')).toEqual([0, 1, 0]);
  });

  it.each([
    ['0.866 0.5 0; -0.5 0.866 0; 0 0 1'],
    ['0,866 0,5 0; −0,5 0,866 0; 0 0 1'],
    ['[0.866, 0.5, 0], [-0.5, 0.866, 0], [0, 0, 1]'],
    ['Z30'],
    ['z: +30 deg'],
  ])('"%s" is a turn of 30° about z', (text) => {
    expect(axesOf(text)[0]).toEqual([expect.closeTo(0.866, 3), expect.closeTo(0.5, 6), 0]);
  });

  it.each([
    ['1 0 0; 0 1 0; 0 0 -1', 'left-handed'],
    ['1 0 0; 0.5 1 0; 0 0 1', 'not at right angles'],
    ['2 0 0; 0 1 0; 0 0 1', 'not at right angles'],
    ['30, 0, 0', 'unreadable'],
    ['skewed', 'unreadable'],
    ['Z30 and Y', 'unreadable'],
  ])('"%s" is %s', (text, problem) => {
    expect(readLocalAxes(text)).toEqual({ problem });
  });

  it('any turns give three unit vectors at right angles with determinant +1', () => {
    const turn = fc.tuple(fc.constantFrom('X', 'Y', 'Z'), fc.double({ min: -720, max: 720, noNaN: true }));
    fc.assert(
      fc.property(fc.array(turn, { minLength: 1, maxLength: 5 }), (turns) => {
        const axes = axesOf(turns.map(([axis, degrees]) => `${axis}${degrees.toFixed(3)}`).join(' '));
        expect(handedness(axes)).toBeCloseTo(1, 9);
        axes.forEach((a, i) => axes.forEach((b, j) => expect(dot(a, b)).toBeCloseTo(i === j ? 1 : 0, 9)));
      }),
      { numRuns: 200 },
    );
  });
});

describe('the line along which a channel measures', () => {
  it('is the same for both senses, and for axes that are turned onto each other', () => {
    expect(lineKey(channel('X+'))).toBe(lineKey(channel('-X')));
    expect(lineKey(channel('X+', 'Z90'))).toBe(lineKey(channel('Y')));
    expect(lineKey(channel('Y', 'Z45'))).toBe(lineKey(channel('X', 'Z135')));
    expect(lineKey(channel('1+'))).toBe(lineKey(channel('X')));
  });
  it('is another one for a turn about it, and for axes that differ', () => {
    expect(lineKey(channel('RX'))).not.toBe(lineKey(channel('X')));
    expect(lineKey(channel('X', 'Z2'))).not.toBe(lineKey(channel('X')));
    expect(lineKey(channel('X', 'not read'))).not.toBe(lineKey(channel('X')));
  });
});
