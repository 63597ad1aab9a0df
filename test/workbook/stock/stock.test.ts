import truth from '../../fixtures/lists/stock-truth.json';
import { nearestName } from '../../../src/core/text/nearest';
import { laidOutAgain, stockOf } from './read-back';

const stockIn = (name: string) => stockOf(`stock/${name}.xlsx`);
const readBack = (name: string) => laidOutAgain(stockIn(name), name);

const near = (read: unknown, expected: unknown): void => {
  if (typeof expected === 'number')
    expect(Math.abs((read as number) - expected)).toBeLessThan(1e-8 * Math.max(1e-6, Math.abs(expected))); // prettier-ignore
  else if (typeof expected === 'object' && expected !== null) {
    for (const axis of ['x', 'y'] as const)
      (expected as Record<string, number[]>)[axis]!.forEach((value, i) => near((read as Record<string, number[]>)[axis]![i], value)); // prettier-ignore
  } else expect(read).toEqual(expected);
};

describe('sensor lists as stores keep them', () => {
  it.each(Object.keys(truth))('%s is laid out to types that read back to the same values', (name) => {
    const { plan, misreads } = readBack(name);
    expect(misreads).toEqual([]);
    const expected = (truth as Record<string, Record<string, Record<string, unknown>>>)[name]!;
    expect([...plan.sensors.keys()].sort()).toEqual(Object.keys(expected).sort());
    for (const [type, values] of Object.entries(expected))
      for (const [key, value] of Object.entries(values))
        near((plan.sensors.get(type) as unknown as Record<string, unknown>)[key], value);
  });

  it('tells of every reading that is not plain', () => {
    const said = (name: string) => stockIn(name).notices.join('\n');
    expect(said('turned')).toContain('properties in rows');
    expect(said('by-serial')).toContain('6 rows of the sensor list make 3 types');
    expect(said('by-serial')).toMatch(/Ce-50 light: Sensitivity differs between its pieces \(50 mV\/g … 51 mV\/g\)/);
    expect(said('deviation-columns')).toContain('4 columns of temperatures');
    expect(said('stated-deviation')).toContain('"±5 % at 50 °C" is taken as an unsigned coefficient');
    expect(said('full-scale-volts')).toContain('over the sensitivity');
    expect(said('conflict')).toMatch(/Mass differs between its pieces \(2.1 gram … 2.4 gram\)/);
    expect(stockIn('by-type-metric').notices).toEqual([]);
  });

  it('keeps each piece of a list with one row per serial number, with its own certificate', () => {
    const { pieces } = stockIn('by-serial').types[0]!;
    expect(pieces.map(({ serial }) => serial)).toEqual(['SN107', 'SN114', 'SN121']);
    const { plan } = readBack('by-serial');
    const [first] = plan.sensors.values();
    expect(first!.pieces!.map(({ serial }) => serial)).toEqual(['SN107', 'SN114', 'SN121']);
    expect(first!.quantity).toBe(3);
  });
});

describe('the name that was meant', () => {
  const names = ['Ce-100 general', 'Ce-100 triax', 'Qz-10 shear', 'Ce-50'];
  it('is one typing error away', () => {
    expect(nearestName('Ce-100 genral', names)).toBe('Ce-100 general');
    expect(nearestName('qz10 shaer', names)).toBe('Qz-10 shear');
  });
  it('is not offered when none is near, or two are as near', () => {
    expect(nearestName('Si-2 bridge', names)).toBeUndefined();
    expect(nearestName('Ce-60', ['Ce-50', 'Ce-61', 'Ce-70'])).toBeUndefined();
  });
});
