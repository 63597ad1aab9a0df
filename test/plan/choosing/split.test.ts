import fc from 'fast-check';
import { checkChannel } from '../../../src/plan/check';
import { withCombination } from '../../../src/plan/choosing/candidate';
import { splitLevels } from '../../../src/plan/choosing/split';
import { chooseHandover } from '../../../src/plan/choosing/split-handover';
import { channel, LIMITS_OF_RANDOM, RUNS, smallStock } from './random-stock';
import { asked, CASES, caseOf, g, LIMITS, STOCK } from './stock';

const VOLTAGE_FED = { filter: { output: ['IEPE'] as const } };
const WING_SKIN = asked(caseOf('C3'));

describe('two sensors for two ranges of level', () => {
  const split = splitLevels(WING_SKIN, STOCK, LIMITS, VOLTAGE_FED)!;

  it('on the wing skin are the quiet, heavier one in a narrow band below and the light one above', () => {
    expect(split.low.fit.combination.sensor.name).toBe('S1');
    expect(split.low.narrower).toEqual(['one line', 'band high']);
    expect(split.low.channel.requirement.bandHigh).toBe(500);
    expect(split.high.fit.combination.sensor.name).toBe('S2');
    expect([split.low.fit.check.verdict, split.high.fit.check.verdict]).toEqual(['PASS', 'PASS']);
  });

  it('overlap by 10.5 dB when handed over at 2 g and 0.6 g', () => {
    const given = splitLevels(WING_SKIN, STOCK, LIMITS, {
      ...VOLTAGE_FED,
      handover: { lowTop: g(2), highFrom: g(0.6) },
    })!;
    // 20·log10(2/0.6), by hand.
    expect(given.overlap).toBeCloseTo(10.458, 3);
  });

  it('are not offered with less than 10 dB in common', () => {
    const handover = { lowTop: g(1.8), highFrom: g(0.6) };
    expect(splitLevels(WING_SKIN, STOCK, LIMITS, { ...VOLTAGE_FED, handover })).toBeUndefined();
  });

  it('count both masses: with the parts of the worked pair 6.8 gram, ratio 0.329 at 2 kHz, so the low one comes off', () => {
    // Panel sum P1 of the cases, computed independently with Python/scipy.
    const [low, high] = [caseOf('C4'), caseOf('C5')];
    const only = {
      sensors: [low.sensor!, high.sensor!],
      mounts: [low.mount!, high.mount!],
      cables: [low.cable!, high.cable!],
      inputs: [low.input!, high.input!],
    };
    // The glue of the low channel and the heavier cable stand for both, so the light half is C5's or heavier.
    const pair = splitLevels(WING_SKIN, only, LIMITS)!;
    expect(pair.mayStay).toBe(false);
    expect(pair.linking.total).toBeCloseTo(pair.low.fit.check.mass.total! + pair.high.fit.check.mass.total!, 12);
    expect(pair.together.ratio).toBeCloseTo(pair.linking.total / 0.02069014, 5);
    expect(pair.together.ratio).toBeGreaterThan(0.1);
    expect(pair.linking.ratio).toBeLessThanOrEqual(0.1);
    const panel = CASES.channels.filter(({ id }) => ['C4', 'C5'].includes(id)).map((c) => checkChannel(c, LIMITS));
    expect(panel.reduce((sum, { mass }) => sum + mass.total!, 0) / panel[1]!.mass.localMass!).toBeCloseTo(0.3287, 4);
  });

  it('pass, each on its levels and both with both mounted, whatever the stock', () => {
    let offered = 0;
    fc.assert(
      fc.property(channel, smallStock, fc.constantFrom(1, 2), (asks, stock, sensors) => {
        const found = splitLevels(asks, stock, LIMITS_OF_RANDOM, { sensors });
        if (!found) return;
        offered++;
        const { low, high, overlap, linking, together, mayStay } = found;
        for (const half of [low, high])
          expect(checkChannel(withCombination(half.channel, half.fit.combination), LIMITS_OF_RANDOM).verdict).toBe(
            'PASS',
          );
        expect(low.channel.requirement.levelLow).toBe(asks.requirement.levelLow);
        expect(high.channel.requirement.levelHigh).toBe(asks.requirement.levelHigh);
        expect(high.channel.requirement.bandHigh).toBe(asks.requirement.bandHigh);
        expect(overlap).toBeGreaterThanOrEqual(10 - 1e-6);
        expect(linking.ratio).toBeLessThanOrEqual(0.1);
        expect(mayStay).toBe(together.ratio <= 0.1);
        const isOne = low.fit.combination.sensor === high.fit.combination.sensor;
        expect(isOne).toBe(sensors === 1);
        if (isOne) expect(linking.total).toBe(high.fit.check.mass.total);
      }),
      { ...RUNS, numRuns: RUNS.numRuns * 3 },
    );
    expect(offered).toBeGreaterThan(0);
  });

  it('are not offered where one is enough', () => {
    expect(splitLevels(asked(caseOf('C12')), STOCK, LIMITS)).toBeUndefined();
  });
});

describe('the handover', () => {
  it('lies inside what both read, in round figures where they fit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        (lowest, ratio) => {
          const found = chooseHandover(lowest, lowest * ratio);
          if (!found) return expect(ratio).toBeLessThan(10 ** 0.5 * (1 + 1e-9));
          expect(found.highFrom).toBeGreaterThanOrEqual(lowest * (1 - 1e-12));
          expect(found.lowTop).toBeLessThanOrEqual(lowest * ratio * (1 + 1e-12));
          expect(20 * Math.log10(found.lowTop / found.highFrom)).toBeGreaterThanOrEqual(10 - 1e-9);
        },
      ),
    );
    // The middle of 0.02 g and 6.5 g is 0.36 g; 5 dB to each side, to one digit.
    const found = chooseHandover(g(0.02), g(6.5))!;
    expect([found.highFrom / g(1), found.lowTop / g(1)]).toEqual([0.2, 0.7].map((v) => expect.closeTo(v, 9) as number));
  });
});
