import { found, row, TRIAX, UNI, verdicts } from './rows';
import type { Channel } from '../../../src/plan/model';

const axis = (id: string, direction: string | undefined, more: Partial<Channel> = {}): Channel =>
  row(id, { point: '12', direction, sensor: TRIAX, ...more });
const set = (...directions: string[]) => directions.map((direction, i) => axis('abc'[i]!, direction));
const noted = (...directions: string[]) =>
  directions.map((direction, i) => axis('abc'[i]!, direction, { sensorAxis: String(i + 1) }));

describe('a triaxial sensor', () => {
  it('with three different axes is complete', () => {
    expect(verdicts('housing axes', ...set('X', 'Y', 'Z'))).toEqual([]);
    expect(verdicts('housing axes', ...set('12X+', '12Y+', '12Z-'))).toEqual([]);
  });
  it('with an axis left open is worth a look', () => {
    expect(verdicts('housing axes', ...set('X', 'Y'))).toEqual([['WARN', 'a b']]);
    expect(found('housing axes', ...set('X', 'X', 'Y'))[0]).toMatchObject({ verdict: 'WARN', number: 3, housings: 2 });
  });
  it('cannot measure along one line twice', () => {
    const serial = { serial: '77' };
    const rows = [axis('a', '+X', serial), axis('b', '-X', serial), axis('c', 'Y', serial)];
    expect(verdicts('housing axes', ...rows)).toEqual([['FAIL', 'a b c']]);
  });
  it('with a direction missing is not known', () => {
    expect(verdicts('housing axes', axis('a', 'X'), axis('b', 'Y'), axis('c', undefined))).toEqual([
      ['INCOMPLETE', 'a b c'],
    ]);
  });
  it('is looked at point by point, part by part and run by run, and single axes not at all', () => {
    const [a, b, c] = set('X', 'Y', 'Z');
    expect(verdicts('housing axes', a!, b!, { ...c!, run: '2' })).toEqual([['WARN', 'a b'], ['WARN', 'c']]); // prettier-ignore
    expect(verdicts('housing axes', { ...a!, sensor: UNI }, { ...b!, sensor: UNI })).toEqual([]);
  });
  it('counts axes turned onto each other as one line', () => {
    const rows = [axis('a', 'X'), axis('b', 'Y', { localAxes: 'Z-90' }), axis('c', 'Z')];
    expect(found('housing axes', ...rows)[0]).toMatchObject({ verdict: 'WARN', housings: 2 });
  });
});

describe('handedness of a housing', () => {
  // By hand, rows as direction cosines: det(X, Y, −Z) = −1, det(X, −Y, −Z) = +1, det(Y, X, Z) = −1.
  it('is right with an even number of minus signs', () => {
    expect(verdicts('handedness', ...set('+X', '+Y', '+Z'))).toEqual([]);
    expect(verdicts('handedness', ...set('+X', '-Y', '-Z'))).toEqual([]);
  });
  it('of a left-handed set asks for the sensor axes while they are not noted', () => {
    expect(found('handedness', ...set('+X', '+Y', '-Z'))[0]).toMatchObject({ verdict: 'WARN', problem: 'not noted' });
    expect(verdicts('handedness', ...set('X', 'Y', '-Z'))).toEqual([]);
  });
  it('fails when the noted axes cannot lie like that', () => {
    expect(found('handedness', ...noted('+X', '+Y', '-Z'))[0]).toMatchObject({
      verdict: 'FAIL',
      problem: 'left-handed',
    });
    expect(found('handedness', ...noted('+Y', '+X', '+Z'))[0]).toMatchObject({
      verdict: 'FAIL',
      directions: 'Y+, X+, Z+',
    });
    expect(verdicts('handedness', ...noted('+Y', '+X', '-Z'))).toEqual([]);
    expect(verdicts('handedness', ...noted('+Y', '+Z', '+X'))).toEqual([]);
  });
  it('is kept by local axes that are a rotation, whichever they are', () => {
    const turned = (sign: string) => [axis('a', '+X', { localAxes: 'Z30 Y10' }), axis('b', '+Y', { localAxes: 'Z30 Y10' }), axis('c', `${sign}Z`, { localAxes: 'Z30 Y10' })]; // prettier-ignore
    expect(verdicts('handedness', ...turned('+'))).toEqual([]);
    expect(verdicts('handedness', ...turned('-'))).toEqual([['WARN', 'a b c']]);
  });
  it('fails for axes of one housing that are not at right angles', () => {
    const rows = [axis('a', 'X'), axis('b', 'Y', { localAxes: 'Z30' }), axis('c', 'Z')];
    expect(found('handedness', ...rows)[0]).toMatchObject({ verdict: 'FAIL', problem: 'not at right angles' });
  });
});

describe('points and local axes', () => {
  it('a direction that names another point is told', () => {
    expect(verdicts('other point', row('a', { point: '1', direction: '12X+' }))).toEqual([['WARN', 'a']]);
  });
  it('axes that are no rotation fail, and those that cannot be read are not known', () => {
    const given = (localAxes: string) => found('local axes', row('a', { point: '1', direction: 'X', localAxes }))[0];
    expect(given('1 0 0 0 1 0 0 0 -1')).toMatchObject({ verdict: 'FAIL', problem: 'left-handed' });
    expect(given('about 30')).toMatchObject({ verdict: 'INCOMPLETE', problem: 'unreadable' });
    expect(given('Z30')).toBeUndefined();
  });
});
