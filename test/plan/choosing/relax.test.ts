import fc from 'fast-check';
import { checkChannel } from '../../../src/plan/check';
import { modeMismatch } from '../../../src/plan/level';
import type { Limits } from '../../../src/plan/limits';
import type { Channel } from '../../../src/plan/model';
import { AIMS, withCombination, type Aim, type Stock } from '../../../src/plan/choosing/candidate';
import { marginsOf } from '../../../src/plan/choosing/candidate-margins';
import { waysOut } from '../../../src/plan/choosing/relax';
import { KNOB_RULES } from '../../../src/plan/choosing/relax-knobs';
import { roundedAway } from '../../../src/plan/choosing/relax-numbers';
import { channel, LIMITS_OF_RANDOM, RUNS, smallStock } from './random-stock';
import { asked, caseOf, EVERYTHING, LIMITS, STOCK } from './stock';

/** Every combination of the stock judged one by one. */
const checksOf = (asks: Channel, stock: Stock, limits: Limits) => {
  const checks = [];
  for (const sensor of stock.sensors)
    for (const mount of stock.mounts)
      for (const cable of stock.cables)
        for (const input of stock.inputs) {
          const isOnlyWrong = stock.inputs.every((other) => modeMismatch(sensor, other));
          if (modeMismatch(sensor, input) && !isOnlyWrong) continue;
          checks.push(checkChannel(withCombination(asks, { sensor, mount, cable, input }), limits));
        }
  return checks;
};
const passes = (asks: Channel, stock: Stock, limits: Limits): boolean =>
  checksOf(asks, stock, limits).some(({ verdict }) => verdict === 'PASS');

describe('the smallest change of one figure', () => {
  it('really lets something pass, and 1 % less of it lets nothing pass', () => {
    let offered = 0;
    fc.assert(
      fc.property(channel, smallStock, (asks, stock) => {
        const ways = waysOut(asks, stock, LIMITS_OF_RANDOM);
        expect(ways === undefined).toBe(passes(asks, stock, LIMITS_OF_RANDOM));
        for (const { knob, from, to } of ways?.relaxations ?? []) {
          const given = { channel: asks, limits: LIMITS_OF_RANDOM };
          const at = (value: number) => {
            const relaxed = KNOB_RULES[knob].set(given, value);
            return passes(relaxed.channel, stock, relaxed.limits);
          };
          expect([knob, from, to, at(to)]).toEqual([knob, from, to, true]);
          expect([knob, 'rounded', at(roundedAway(knob, from, to))]).toEqual([knob, 'rounded', true]);
          expect([knob, from, to, at(from + 0.99 * (to - from))]).toEqual([knob, from, to, false]);
          offered++;
        }
      }),
      RUNS,
    );
    expect(offered).toBeGreaterThan(RUNS.numRuns / 2);
  });

  it('comes with the others, the smallest first', () => {
    const sizes = waysOut(asked(caseOf('C3')), STOCK, LIMITS)!.relaxations.map(({ size }) => size);
    expect(sizes.length).toBeGreaterThan(2);
    expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
  });

  it('is found for every figure that a search over a fine grid finds one for', () => {
    fc.assert(
      fc.property(channel, smallStock, (asks, stock) => {
        const ways = waysOut(asks, stock, LIMITS_OF_RANDOM);
        if (!ways) return;
        for (const knob of ['lowest level', 'highest level', 'temperature high', 'mass ratio limit'] as const) {
          const given = { channel: asks, limits: LIMITS_OF_RANDOM };
          const range = KNOB_RULES[knob].range(given);
          const isPossible =
            range !== undefined &&
            Array.from({ length: 21 }, (_, i) => range.from + (i / 20) * (range.end - range.from)).some((value) => {
              const relaxed = KNOB_RULES[knob].set(given, value);
              return passes(relaxed.channel, stock, relaxed.limits);
            });
          expect([knob, ways.relaxations.some((found) => found.knob === knob)]).toEqual([knob, isPossible]);
        }
      }),
      { ...RUNS, numRuns: RUNS.numRuns / 3 },
    );
  });

  it('of the lowest level is the one that the noise asks for: ten times 0.387 mg, by hand', () => {
    // 3.87 mg over a noise of 0.387 mg is 20 dB; 13.7 dB above 0.8 mg.
    const { relaxations } = waysOut(asked(caseOf('C3')), STOCK, LIMITS)!;
    const level = relaxations.find(({ knob }) => knob === 'lowest level')!;
    expect(level.to).toBeCloseTo(10 * level.fit.check.level.noise!, 4);
    expect(level.size).toBeCloseTo(20 * Math.log10(level.to / level.from), 9);
  });
});

const SUBSETS = Array.from({ length: 2 ** AIMS.length - 1 }, (_, i) =>
  AIMS.filter((_aim, bit) => ((i + 1) >> bit) & 1),
);

describe('a conflict', () => {
  it('is a smallest set that no combination meets, and all such sets are named', () => {
    fc.assert(
      fc.property(channel, smallStock, (asks, stock) => {
        const ways = waysOut(asks, stock, LIMITS_OF_RANDOM);
        if (!ways) return;
        const met = checksOf(asks, stock, LIMITS_OF_RANDOM).map(
          (check) =>
            new Set(marginsOf(check, LIMITS_OF_RANDOM).flatMap(({ aim, verdict }) => (verdict === 'PASS' ? aim : []))),
        );
        const isMet = (aims: readonly Aim[]) => met.some((set) => aims.every((aim) => set.has(aim)));
        const known = SUBSETS.filter((aims) => !aims.some((aim) => ways.unknown.includes(aim)));
        const smallest = known.filter(
          (aims) => !isMet(aims) && aims.every((aim) => isMet(aims.filter((other) => other !== aim))),
        );
        const named = ways.conflicts.map(({ aims }) => aims.join());
        expect([...named].sort()).toEqual(smallest.map((aims) => aims.join()).sort());
      }),
      RUNS,
    );
  });

  it('between noise and mass stops one sensor for 0.8 mg to 65 g on 20.7 gram of local mass', () => {
    for (const asks of [EVERYTHING, asked(caseOf('C3'))]) {
      const { conflicts } = waysOut(asks, STOCK, LIMITS)!;
      expect(conflicts.map(({ aims }) => aims)).toContainEqual(['signal to noise', 'mass ratio']);
    }
  });

  it('of one aim alone says that nothing in stock meets it', () => {
    const { conflicts, answers } = waysOut(asked(caseOf('C6')), STOCK, LIMITS)!;
    expect(conflicts.map(({ aims }) => aims)).toEqual([['mass ratio']]);
    expect(conflicts[0]?.meeting).toEqual([0]);
    expect(answers.map(({ kind }) => kind)).toEqual(['other point', 'without contact']);
  });

  it('is not told of what cannot be judged at all', () => {
    const { requirement, id } = caseOf('C3');
    const ways = waysOut({ id, requirement: { ...requirement, localMass: [] } }, STOCK, LIMITS)!;
    expect(ways.unknown).toEqual(['mass ratio']);
    expect(ways.conflicts.flatMap(({ aims }) => aims)).not.toContain('mass ratio');
  });
});

describe('other answers', () => {
  it('name the part of the row that stands in the way', () => {
    const { answers } = waysOut(caseOf('C2'), STOCK, LIMITS)!;
    const other = answers.find(({ kind }) => kind === 'other part');
    expect(other).toMatchObject({ part: 'input' });
    expect(other && 'fit' in other && other.fit.check.verdict).toBe('PASS');
  });

  it('ask for the local mass that carries the lightest way: 9.2 gram on 92 gram at a ratio of 0.1, by hand', () => {
    const answer = waysOut(EVERYTHING, STOCK, LIMITS)!.answers.find(({ kind }) => kind === 'other point');
    if (answer?.kind !== 'other point') throw new Error('no other point');
    expect(answer.needed).toBeCloseTo(10 * answer.fit.check.mass.total!, 4);
    expect(answer.needed / answer.localMass).toBeGreaterThan(1);
  });

  it('log the temperature where half the deviation band stays inside the tolerance', () => {
    // C7's own parts at a tolerance of 8 %: −1.4 to +12.7 %, half 6.6 % (independent case).
    const row = caseOf('C7');
    const asks = { ...row, requirement: { ...row.requirement, thermalTolerance: 0.08 } };
    const onlyThis = { ...STOCK, sensors: [row.sensor!] };
    const answer = waysOut(asks, onlyThis, LIMITS)!.answers.find(({ kind }) => kind === 'correction');
    if (answer?.kind !== 'correction') throw new Error('no correction');
    expect(answer.halfBand).toBeCloseTo(0.066, 3);
    expect(answer.fit.check.verdict).toBe('WARN');
  });

  it('keep silent when something passes', () => {
    expect(waysOut(caseOf('C8'), STOCK, LIMITS)).toBeUndefined();
  });

  it('take a warning for a fit when that is asked', () => {
    expect(waysOut(caseOf('C4'), { ...STOCK, sensors: [caseOf('C4').sensor!] }, LIMITS)).toBeDefined();
    expect(
      waysOut(caseOf('C4'), { ...STOCK, sensors: [caseOf('C4').sensor!] }, LIMITS, { accept: 'WARN' }),
    ).toBeUndefined();
  });
});
