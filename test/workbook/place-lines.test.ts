import type { Channel } from '../../src/plan/model';
import { placeLines } from '../../src/workbook/place-lines';

const row = (given: Partial<Channel>): Channel => ({ id: '1', requirement: { detector: { kind: 'band' }, localMass: [] }, ...given }); // prettier-ignore
const told = (given: Partial<Channel>, language: 'en' | 'de' = 'en') =>
  placeLines(row(given), language).map(({ value }) => value);

it('a row tells its degree of freedom in one form, with local axes as direction cosines', () => {
  expect(told({ point: '12', direction: '+X12' })).toEqual(['12X+']);
  // cos 30° and sin 30°.
  expect(told({ point: '12', direction: '-X', localAxes: 'Z30' }, 'de')).toEqual(['12X-', '-0,866; -0,500; 0,000']);
  expect(told({ point: '12', direction: 'X', localAxes: 'skewed' })).toEqual(['12X+']);
  expect(told({ point: '12' })).toEqual([]);
});
