import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { VERDICTS, type Verdict } from '../../src/core/verdict';
import { checkChannel, type ChannelCheck } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Channel, Requirement, SensorType } from '../../src/plan/model';

const { plan } = readJsonPlan({ ...fixture, panel_sums: undefined });
const anyChannel = fc.constantFrom(...plan.channels);
const anyFactor = fc.double({ min: 1, max: 30, noNaN: true });
const severity = (verdict: Verdict): number => VERDICTS.indexOf(verdict);
const check = (channel: Channel): ChannelCheck => checkChannel(channel, plan.limits);
const asking = (channel: Channel, change: Partial<Requirement>): Channel => ({
  ...channel,
  requirement: { ...channel.requirement, ...change },
});
const withSensor = (channel: Channel, change: Partial<SensorType>): Channel => ({
  ...channel,
  sensor: { ...channel.sensor!, ...change },
});
/** `harder` must not be judged milder than `milder`. */
const rising = (pair: (channel: Channel, factor: number) => readonly [milder: Verdict, harder: Verdict]): void =>
  fc.assert(
    fc.property(anyChannel, anyFactor, (channel, factor) => {
      const [milder, harder] = pair(channel, factor);
      expect(severity(harder)).toBeGreaterThanOrEqual(severity(milder));
    }),
  );

describe('verdicts of a channel', () => {
  it('do not improve when the sensor grows heavier', () => {
    rising((channel, factor) => [
      check(channel).mass.verdict,
      check(withSensor(channel, { mass: channel.sensor!.mass! * factor })).mass.verdict,
    ]);
  });

  it('do not improve when the structure grows lighter', () => {
    rising((channel, factor) => {
      const { localMass } = check(channel).mass;
      const lighter = asking(channel, { localMass: [{ model: 'value', mass: localMass! / factor }] });
      return [check(channel).mass.verdict, check(lighter).mass.verdict];
    });
  });

  it('do not improve when the highest level rises', () => {
    rising((channel, factor) => [
      check(channel).level.highEnd,
      check(asking(channel, { levelHigh: channel.requirement.levelHigh! * factor })).level.highEnd,
    ]);
  });

  it('do not improve when the lowest level falls', () => {
    rising((channel, factor) => [
      check(channel).level.lowEnd,
      check(asking(channel, { levelLow: channel.requirement.levelLow! / factor })).level.lowEnd,
    ]);
  });

  it('do not improve when a tolerance narrows', () => {
    rising((channel, factor) => [
      check(channel).thermal.verdict,
      check(asking(channel, { thermalTolerance: 0.05 / factor })).thermal.verdict,
    ]);
    rising((channel, factor) => [
      check(channel).frequency.verdict,
      check(asking(channel, { spanTolerance: 0.05 / factor })).frequency.verdict,
    ]);
  });

  it('do not improve when the temperature range widens or the band widens', () => {
    rising((channel, factor) => {
      const { temperatureLow, temperatureHigh } = channel.requirement;
      const wider = { temperatureLow: temperatureLow! - factor, temperatureHigh: temperatureHigh! + factor };
      return [check(channel).thermal.verdict, check(asking(channel, wider)).thermal.verdict];
    });
    rising((channel, factor) => {
      const { bandLow, bandHigh } = channel.requirement;
      const wider = { bandLow: bandLow! / factor, bandHigh: bandHigh! * factor };
      return [check(channel).frequency.verdict, check(asking(channel, wider)).frequency.verdict];
    });
  });

  it('stay FAIL whatever else is changed for the better', () => {
    const tooHot = plan.channels.find(({ id }) => id === 'C9')!;
    fc.assert(
      fc.property(anyFactor, (factor) => {
        const eased = withSensor(asking(tooHot, { levelHigh: tooHot.requirement.levelHigh! / factor }), {
          mass: tooHot.sensor!.mass! / factor,
        });
        expect(check(eased).verdict).toBe('FAIL');
      }),
    );
  });

  it('follow neither sensitivity nor range when both scale together: the headroom stays', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (factor) => {
        const base = plan.channels.find(({ id }) => id === 'C12')!;
        const scaled = {
          ...withSensor(base, { sensitivity: base.sensor!.sensitivity! * factor, fullScale: Infinity }),
          input: { ...base.input!, range: base.input!.range! * factor },
        };
        const before = check(withSensor(base, { fullScale: Infinity })).level.headroom!;
        expect(check(scaled).level.headroom).toBeCloseTo(before, 9);
      }),
    );
  });
});

describe('an input of another kind than the sensor’s output', () => {
  const channelWith = (mode: 'IEPE' | 'charge' | 'voltage' | 'bridge') => {
    const base = plan.channels.find(({ id }) => id === 'C12')!;
    return check({ ...base, input: { ...base.input!, mode } });
  };

  it.each([['IEPE'], ['charge'], ['bridge']] as const)('fails the level of a DC sensor on %s', (mode) => {
    expect(channelWith(mode).level.verdict).toBe('FAIL');
    expect(channelWith(mode).verdict).toBe('FAIL');
  });
  it('passes a DC sensor on a voltage input', () => {
    expect(channelWith('voltage').level.verdict).toBe('PASS');
  });
});

describe('a mount or cable with temperature limits of its own', () => {
  const base = plan.channels.find(({ id }) => id === 'C8')!;

  it.each([
    ['mount', { mount: { ...base.mount!, temperatureMax: 40 } }],
    ['cable', { cable: { ...base.cable!, temperatureMin: 20 } }],
  ] as const)('fails the thermal headline outside them and is named: %s', (part, change) => {
    const { thermal } = check({ ...base, ...change });
    expect(thermal.verdict).toBe('FAIL');
    expect(thermal.isInsideLimits).toBe(false);
    expect(thermal.excesses.map((excess) => excess.part)).toEqual([part]);
  });
});

describe('noise from 0 Hz on', () => {
  const base = plan.channels.find(({ id }) => id === 'C12')!;

  it('is known for a flat density', () => {
    // White: 1500 µg/√Hz over 5 kHz are 106.07 mg by hand, over 4.9 kHz 105.00 mg.
    const { level } = check(asking(base, { bandLow: 0 }));
    expect(level.sensorNoise! / 9.80665).toBeCloseTo(0.10607, 5);
  });
  it('is not known for one that rises towards 0 Hz', () => {
    const rising = withSensor(asking(base, { bandLow: 0 }), { noiseDensity: { x: [1, 10], y: [0.02, 0.01] } });
    expect(check(rising).level.lowEnd).toBe('PASS');
    const steep = withSensor(asking(base, { bandLow: 0 }), { noiseDensity: { x: [1, 10], y: [0.02, 0.002] } });
    expect(check(steep).level.lowEnd).toBe('INCOMPLETE');
  });
});
