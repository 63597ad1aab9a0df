import fc from 'fast-check';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel, Input, SensorType } from '../../../src/plan/model';
import type { Stock } from '../../../src/plan/choosing/candidate';
import { STOCK, g } from './stock';

/** The same in every run, more of it when asked: CHOOSING_RUNS=20000. */
export const RUNS = { numRuns: Number(process.env.CHOOSING_RUNS ?? 60), seed: 20261125 };

const factor = fc.double({ min: -1, max: 1, noNaN: true }).map((exponent) => 4 ** exponent);

/** A type of the lab made lighter or heavier, quieter or noisier, with another full scale. */
const sensor = fc
  .tuple(fc.constantFrom(...STOCK.sensors), factor, factor, factor, fc.nat(999))
  .map(([base, mass, noise, scale, serial]): SensorType => ({
    ...base,
    name: `${base.name}-${serial}`,
    mass: base.mass! * mass,
    fullScale: base.fullScale! * scale,
    noiseDensity: base.noiseDensity && { x: base.noiseDensity.x, y: base.noiseDensity.y.map((y) => y * noise) },
  }));

const input = fc
  .tuple(fc.constantFrom(...STOCK.inputs), fc.constantFrom(0.1, 1, 10))
  .map(([base, range]): Input => ({ ...base, name: `${base.name} at ${range} V`, range }));

/** Small enough to be searched without any cleverness. */
export const smallStock: fc.Arbitrary<Stock> = fc.record({
  sensors: fc.array(sensor, { minLength: 1, maxLength: 4 }),
  mounts: fc.subarray([...STOCK.mounts], { minLength: 1, maxLength: 3 }),
  cables: fc.subarray([...STOCK.cables], { minLength: 1, maxLength: 2 }),
  inputs: fc.array(input, { minLength: 1, maxLength: 4 }),
});

const logUniform = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

export const channel: fc.Arbitrary<Channel> = fc
  .record({
    low: logUniform(5e-4, 0.05),
    ratio: logUniform(100, 3e4),
    bandLow: logUniform(2, 50),
    span: logUniform(4, 100),
    cold: fc.integer({ min: 5, max: 20 }),
    hot: fc.integer({ min: 26, max: 70 }),
    local: logUniform(0.005, 1),
    asPlate: fc.boolean(),
    line: fc.boolean(),
  })
  .map((r): Channel => {
    const bandHigh = r.bandLow * r.span;
    return {
      id: 'random',
      requirement: {
        purpose: 'survey',
        levelLow: g(r.low),
        levelHigh: g(r.low * r.ratio),
        bandLow: r.bandLow,
        bandHigh,
        temperatureLow: r.cold,
        temperatureHigh: r.hot,
        detector: r.line ? { kind: 'line', lineSpacing: 4 } : { kind: 'band' },
        localMass: r.asPlate
          ? [{ model: 'plate', impedance: r.local * 2 * Math.PI * bandHigh, frequency: bandHigh }]
          : [{ model: 'value', mass: r.local }],
      },
    };
  });

export const LIMITS_OF_RANDOM = DEFAULT_LIMITS;
