import { degreeOfFreedom, otherNode, placeOf, plainDirection, readDirection } from '../../src/plan/point';

describe('one degree of freedom has one form, whatever order it was typed in', () => {
  // Node, axis, sign is the form of modal practice; the other orders are usual in channel lists.
  it.each([
    ['12', '+X', '12X+'],
    ['12', 'X', '12X+'],
    ['12', '12X+', '12X+'],
    ['12', '+X12', '12X+'],
    ['12', '12:+X', '12X+'],
    ['12', '12 X -', '12X-'],
    ['12', '−x', '12X-'],
    ['12', 'X–', '12X-'],
    ['105', '105Z+', '105Z+'],
    ['12', '12RX+', '12RX+'],
    ['12', 'ry-', '12RY-'],
    ['W7', 'W7Z-', 'W7Z-'],
    ['12', 'negative Z', '12Z-'],
    ['12', 'z axis', '12Z+'],
    ['12', '-Z-Achse', '12Z-'],
    ['12', 'X minus', '12X-'],
    ['1', '2', '12+'],
    [undefined, '12X+', '12X+'],
    [undefined, '+X12', '12X+'],
    ['12X-', undefined, '12X-'],
    ['Rib 3', 'radial', 'Rib 3RADIAL+'],
  ])('point %s, direction %s is %s', (point, direction, dof) => {
    expect(degreeOfFreedom({ point, direction })).toBe(dof);
  });

  it('a node is never cut out of the middle of another one', () => {
    expect(plainDirection('12X+', '1')).toBe('x+');
    expect(plainDirection('12X+', '12')).toBe('x+');
    expect(plainDirection('X', 'X')).toBe('x+');
    expect(placeOf({ point: '1', direction: '12X+' })).toMatchObject({ point: '1', direction: { node: '12' } });
  });

  it('every minus sign counts, not only the first', () => {
    expect(plainDirection('−X−', '12')).toBe('x-');
    expect(plainDirection('+X+', '12')).toBe('x+');
  });

  it('signs that contradict each other are no direction', () => {
    expect(readDirection('+X-')).toBeUndefined();
    expect(degreeOfFreedom({ point: '12', direction: '' })).toBeUndefined();
  });

  it('a direction without a sign says so', () => {
    expect(readDirection('X')?.sign).toBeUndefined();
    expect(readDirection('X+')?.sign).toBe(1);
  });

  it('another node than the point column names is seen', () => {
    expect(otherNode({ point: '1', direction: '12X+' })).toBe('12');
    expect(otherNode({ point: '12', direction: '12X+' })).toBeUndefined();
    expect(otherNode({ point: 'W 7', direction: 'W7Z-' })).toBeUndefined();
    expect(otherNode({ point: '12', direction: '+Y' })).toBeUndefined();
  });
});
