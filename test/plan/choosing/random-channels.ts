import type { OutputMode } from '../../../src/plan/fields';
import { MODE_OF } from '../../../src/plan/level';
import type { Channel, Input, SensorType } from '../../../src/plan/model';

/** Mulberry32 (public domain): the same numbers for the same seed on every machine. */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/**
 * A complete channel with a sensor. Each property of the sensor is drawn round what the channel roughly asks, by rules of
 * thumb of this file alone, so that both sides of every bound are met.
 */
export const randomChannel = (random: () => number): Channel => {
  const between = (low: number, high: number) => low + (high - low) * random();
  const decades = (low: number, high: number) => low * (high / low) ** random();
  const near = (value: number, spread = 2.5) => value * decades(1 / spread, spread);
  /** A third of the sensors is made to fit: their properties lie on the good side of what is asked, more or less. */
  const isFitting = random() < 0.35;
  const small = (value: number, spread = 2.5) => (isFitting ? value / decades(1.2, 2 * spread) : near(value, spread));
  const large = (value: number, spread = 2.5) => (isFitting ? value * decades(1.2, 2 * spread) : near(value, spread));
  const oneOf = <T>(...items: readonly T[]): T => items[Math.floor(random() * items.length)]!;

  const levelHigh = decades(1, 20000);
  const levelLow = levelHigh / decades(30, 30000);
  const bandLow = decades(0.1, 400);
  const bandHigh = bandLow * decades(3, 300);
  const reference = oneOf(20, 80, 160, 160, bandLow * decades(1, bandHigh / bandLow));
  const isLine = random() < 0.3;
  const lineSpacing = decades(0.1, 10);
  const bandwidth = isLine ? 1.5 * lineSpacing : bandHigh - bandLow;
  const temperatureLow = between(-60, 40);
  const temperatureHigh = temperatureLow + between(0, 150);
  const tolerance = between(0.02, 0.12);
  const localMass = decades(1e-3, 1);
  const output = oneOf<OutputMode>('IEPE', 'IEPE', 'charge', 'DC', 'bridge', 'voltage');
  const isCharge = output === 'charge';
  const noise = levelLow / 10;

  const range = decades(0.5, 10);
  const sensitivity = small(range / (1.5 * levelHigh), 2);
  const gain = decades(1e8, 1e10);
  const capacitance = decades(1e-11, 1e-9);
  const supply = between(18, 28);
  const supplyCurrent = between(2e-3, 1e-2);
  const cableCapacitance = small((supplyCurrent - 1e-3) / (2 * Math.PI * bandHigh * levelHigh * sensitivity), 4);
  const isMatched = random() < 0.9;
  const input: Input = {
    name: 'input',
    mode: isMatched ? MODE_OF[output] : oneOf('IEPE', 'charge', 'voltage', 'bridge'),
    range,
    dynamicRange: 20 * Math.log10(large((range * Math.sqrt(bandwidth)) / (sensitivity * noise * Math.SQRT2 * 160), 4)),
    sampleRate: 51_200,
    couplingPoles: oneOf<readonly number[]>([], [bandLow / decades(4, 40)], [bandLow / 10, bandLow / 20]),
    supply,
    supplyCurrent,
    sourceDrop: 1.5,
    biasFloor: 2,
    sensorCurrent: 1e-3,
    gain,
    noiseVoltage: small((noise * (sensitivity / gain)) / (Math.sqrt(bandwidth) * cableCapacitance), 4),
    feedbackCapacitance: 1e-10,
    timeConstant: large(0.5 / bandLow, 3),
    outputLimit: large(range, 2),
  };
  const bias = between(7, 13);
  const needed = large(Math.max(bandHigh, reference * decades(0.3, 1)) * 4.6, 2);
  const mass = small(0.1 * localMass, 3);
  const isCurve = random() < 0.5;
  const slope = Math.min(0.003, small(tolerance / (temperatureHigh - temperatureLow + 5), 4)) * oneOf(1, -1);
  const sensor: SensorType = {
    name: 'sensor',
    output,
    axes: 1,
    sensitivity: isCharge ? undefined : sensitivity,
    chargeSensitivity: isCharge ? sensitivity / gain : undefined,
    fullScale: large(1.5 * levelHigh),
    mass,
    noiseDensity: { x: [1, 10, 1000], y: [10, 3, 1].map((y) => (y * small(noise / 4, 3)) / Math.sqrt(bandwidth)) },
    capacitance,
    resonance: needed,
    qualityFactor: oneOf(30, decades(0.6, 50)),
    lowLimit: random() < 0.9 || output === 'IEPE' || output === 'voltage' ? small(bandLow, 3) : undefined,
    lowLimitLoss: oneOf(undefined, 0.05, 0.1, 0.3),
    biasMin: bias - 0.5,
    biasMax: bias + 0.5,
    temperatureMin: temperatureLow + between(-30, isFitting ? 0 : 15),
    temperatureMax: temperatureHigh + between(isFitting ? 0 : -15, 30),
    deviation: isCurve ? { x: [-120, 23, 260], y: [-143 * slope, 0, 237 * small(slope, 2)] } : undefined,
    coefficient: slope,
    coefficientSign: oneOf('signed', 'unsigned'),
    calibrationTemperature: oneOf(undefined, between(18, 28)),
  };
  // So stiff a joint that it takes a tenth off the resonance, or a stud.
  const stiffness = oneOf(undefined, mass * (2 * Math.PI * needed) ** 2 * decades(isFitting ? 20 : 0.5, 40));
  return {
    id: 'random',
    requirement: {
      purpose: oneOf(undefined, 'survey', 'modal', 'shock'),
      levelLow,
      levelHigh,
      bandLow,
      bandHigh,
      detector: isLine ? { kind: 'line', lineSpacing } : { kind: 'band' },
      temperatureLow,
      temperatureHigh,
      thermalTolerance: oneOf(undefined, tolerance),
      spanTolerance: oneOf(undefined, 0.03, 0.08),
      referenceFrequency: reference,
      localMass: [{ model: 'value', mass: localMass }],
    },
    sensor,
    mount: { name: 'mount', mass: localMass * decades(0.001, 0.05), stiffness },
    cable: { name: 'cable', mass: localMass * decades(0.001, 0.02), capacitance: cableCapacitance },
    input,
  };
};
