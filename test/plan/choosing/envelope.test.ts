import { toSi } from '../../../src/core/units';
import { DEFAULT_LIMITS, type Limits } from '../../../src/plan/limits';
import type { Channel, Input } from '../../../src/plan/model';
import { envelopeOf } from '../../../src/plan/choosing/envelope';
import type { BoundKey, NumberBound } from '../../../src/plan/choosing/envelope-bound';

/** A wing skin of Z = 260 N·s/m at 2 kHz, in a chamber; 5 V swing of an IEPE input. */
const wingSkin: Channel = {
  id: 'skin 12',
  requirement: {
    levelLow: toSi(0.0008, 'g'),
    levelHigh: toSi(65, 'g'),
    bandLow: 5,
    bandHigh: 2000,
    temperatureLow: 15,
    temperatureHigh: 135,
    detector: { kind: 'band' },
    localMass: [{ model: 'plate', impedance: 260, frequency: 2000 }],
  },
  mount: { name: 'glue', mass: 0.0003 },
  cable: { name: 'thin', mass: 0.0005 },
};
const fiveVolts: Input = { name: 'five volts', mode: 'IEPE', range: 10, supply: 13.5, sourceDrop: 1.5, biasFloor: 2 };
/** A margin of ×1.5 to full digits; the default limit rounds it to 3.5 dB. */
const HALF_AS_MUCH_AGAIN: Limits = {
  ...DEFAULT_LIMITS,
  headroom: { ...DEFAULT_LIMITS.headroom, pass: 20 * Math.log10(1.5) },
};

const numberBound = (key: BoundKey, channel = wingSkin, limits = HALF_AS_MUCH_AGAIN, inputs = [fiveVolts]) => {
  const bound = envelopeOf(channel, limits, inputs).bounds.find(
    (b): b is NumberBound => b.key === key && b.kind === 'number',
  );
  if (!bound) throw new Error(`no bound ${key}`);
  return bound;
};

describe('envelope of a light panel from 0.8 mg r.m.s. to 65 g in a chamber', () => {
  // Computed independently with Python, printed to three digits: half a unit of the last digit is allowed.
  it.each([
    ['sensor mass', 'gram', 1.27, 0.005],
    ['full scale', 'g', 97.5, 0.05],
    ['noise', 'g', 0.08e-3, 0.5e-6],
    ['white noise density', 'µg/√Hz', 1.79, 0.005],
    ['dynamic range', 'dB', 121.7, 0.05],
    ['thermal coefficient', '%/K', 0.0446, 0.00005],
    ['highest rated temperature', '°C', 135, 0],
    ['lowest rated temperature', '°C', 15, 0],
    ['sensitivity in bias swing', 'mV/g', 51.3, 0.05],
    ['low corner', 'Hz', 1.64, 0.005],
  ] as const)('bounds the %s in %s by %d', (key, unit, expected, within) => {
    const bound = numberBound(key);
    expect(bound.unit).toBe(unit);
    expect(Math.abs(bound.pass! / toSi(1, unit) - expected)).toBeLessThanOrEqual(within);
  });

  it('asks for 9.17 kHz of mounted resonance against the static response, and 0.3 % less against a reference at 160 Hz', () => {
    const near = { ...wingSkin, requirement: { ...wingSkin.requirement, referenceFrequency: 6 } };
    expect(Math.abs(numberBound('mounted resonance', near).pass! - 9170)).toBeLessThanOrEqual(5);
    // At f_r = 9.137 kHz by hand: H(2000) = 1/(1 − 0.047914) = 1.050325, H(160) = 1/(1 − 0.00030665) = 1.000307.
    expect(numberBound('mounted resonance').pass).toBeCloseTo(9137, -1);
  });

  it('asks for 97.3 g of full scale by the default headroom of 3.5 dB', () => {
    // By hand: 65 × 10^(3.5/20) = 65 × 1.496236.
    expect(numberBound('full scale', wingSkin, DEFAULT_LIMITS).pass! / toSi(1, 'g')).toBeCloseTo(97.25531, 4);
  });

  it('states a low limit 3.042 times the corner, for data sheets that mean −5 %', () => {
    const limit = numberBound('low limit');
    expect(limit.atLoss).toBe(0.05);
    // One pole, −5 %: f/f_c = 0.95/√(1 − 0.9025) = 3.042435.
    expect(limit.pass! / numberBound('low corner').pass!).toBeCloseTo(3.042435, 5);
  });

  it('asks more of the sensor than of the mounted resonance on a soft joint, for the heaviest sensor that fits', () => {
    const waxed = { ...wingSkin, mount: { name: 'wax', mass: 0.0003, stiffness: 5e7 } };
    const own = numberBound('sensor resonance', waxed);
    expect(own.atMass).toEqual({ mass: numberBound('sensor mass').pass, of: 'heaviest allowed' });
    // By hand: √(5e7/1.269e-3)/2π = 31.59 kHz of joint; 1/√(1/9.137² − 1/31.59²) = 9.545 kHz.
    expect(own.pass! / 1000).toBeCloseTo(9.545, 2);
  });

  it('takes the warning limits as a second level', () => {
    // By hand: 0.2 × 20.690 gram − 0.8 gram; 65 g × 1; 0.8 mg / 10^(10/20).
    expect(numberBound('sensor mass').warn! * 1000).toBeCloseTo(3.338, 3);
    expect(numberBound('full scale').warn! / toSi(1, 'g')).toBeCloseTo(65, 9);
    expect(numberBound('noise').warn! / toSi(1e-3, 'g')).toBeCloseTo(0.252982, 6);
  });

  it('carries each limit with its origin and each requirement by its field', () => {
    const mass = numberBound('sensor mass');
    expect(mass.limit).toMatchObject({ name: 'massRatio', pass: 0.1, warn: 0.2, origin: 'default, no standard' });
    expect(mass.causes.map(({ table, key }) => `${table}.${key}`)).toContain('channels.localMass');
  });

  it('judges nothing while no sensor is named', () => {
    expect(envelopeOf(wingSkin, DEFAULT_LIMITS, [fiveVolts]).bounds.every((b) => b.verdict === undefined)).toBe(true);
  });
});

describe('an envelope with gaps', () => {
  const nothing: Channel = { id: '1', requirement: { detector: { kind: 'band' }, localMass: [] } };

  it('names what is not known for every bound, and never leaves one out', () => {
    const { bounds } = envelopeOf(nothing, DEFAULT_LIMITS);
    const unknown = bounds.filter((b) => b.missing.length > 0).map((b) => b.key);
    // Tolerances have defaults and one axis is always asked: these three are known without a requirement.
    expect(bounds.map((b) => b.key).filter((key) => !unknown.includes(key))).toEqual(['thermal deviation', 'corrected deviation', 'axes']); // prettier-ignore
    for (const bound of bounds)
      if (bound.kind === 'number') expect(bound.pass === undefined).toBe(bound.missing.length > 0);
  });

  it.each(['levelLow', 'levelHigh', 'bandLow', 'bandHigh', 'temperatureLow', 'temperatureHigh'] as const)(
    'blames the blank %s where it leaves a bound unknown, and nothing else changes',
    (key) => {
      const before = envelopeOf(wingSkin, DEFAULT_LIMITS, [fiveVolts]).bounds;
      const rest = { ...wingSkin.requirement, [key]: undefined };
      const after = envelopeOf({ ...wingSkin, requirement: rest }, DEFAULT_LIMITS, [fiveVolts]).bounds;
      expect(after.map((b) => b.key)).toEqual(before.map((b) => b.key));
      let lost = 0;
      after.forEach((bound, i) => {
        const old = before[i]!;
        if (bound.missing.some((field) => field.key === key)) lost += 1;
        else if (bound.kind === 'number' && old.kind === 'number') expect(bound.pass).toBe(old.pass);
      });
      expect(lost).toBeGreaterThan(0);
    },
  );

  it('does not take a text that could not be read for a default', () => {
    const unreadable = {
      ...wingSkin,
      requirement: { ...wingSkin.requirement, unread: ['thermalTolerance', 'purpose'] },
    };
    expect(numberBound('thermal coefficient', unreadable).missing.map(({ key }) => key)).toEqual(['thermalTolerance']);
    expect(numberBound('sensor mass', unreadable).missing.map(({ key }) => key)).toEqual(['purpose']);
  });

  it('tells a heaviest mass below nothing where mount and cable alone are too heavy', () => {
    // A 0.3 mm sheet, Z = 3.027 N·s/m at 2 kHz: 0.1 × 0.2409 gram − 0.8 gram, by hand.
    const sheet: Channel = {
      ...wingSkin,
      requirement: { ...wingSkin.requirement, localMass: [{ model: 'plate', impedance: 3.027, frequency: 2000 }] },
    };
    expect(numberBound('sensor mass', sheet).pass! * 1000).toBeCloseTo(-0.7759, 4);
  });
});
