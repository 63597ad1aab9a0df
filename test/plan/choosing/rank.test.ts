import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { VERDICTS } from '../../../src/core/verdict';
import { checkChannel } from '../../../src/plan/check';
import { MODE_OF } from '../../../src/plan/level';
import type { Channel } from '../../../src/plan/model';
import { withCombination, type Combination, type Stock } from '../../../src/plan/choosing/candidate';
import { marginsOf } from '../../../src/plan/choosing/candidate-margins';
import { rankCandidates } from '../../../src/plan/choosing/rank';
import { channel, LIMITS_OF_RANDOM, RUNS, smallStock } from './random-stock';
import { asked, CASES, caseOf, LIMITS, STOCK } from './stock';

interface ExpectedCase {
  readonly id: string;
  readonly requirement: Readonly<Record<string, number & string>>;
  readonly expected: {
    readonly level: Readonly<Record<string, number | null>>;
    readonly mass: Readonly<Record<string, number | null>>;
    readonly thermal: Readonly<Record<string, number | null>>;
    readonly frequency: { readonly span_5_percent: { readonly low_Hz: number; readonly high_Hz: number } | null };
  };
}
const EXPECTED = (
  JSON.parse(readFileSync(join(__dirname, '../../fixtures/cases.json'), 'utf8')) as { cases: ExpectedCase[] }
).cases;

describe('margins of a checked channel', () => {
  const dB = (ratio: number) => 20 * Math.log10(ratio);

  // Numbers of the complete cases, computed independently with Python/scipy; the limits are 20 dB, 3.5 dB, 5 % and 0.1 or 0.02.
  it.each(EXPECTED.map((given) => [given.id, given] as const))(
    'of %s follow from its independent numbers',
    (id, given) => {
      const { level, mass, thermal, frequency } = given.expected;
      const { requirement } = given;
      const check = checkChannel(caseOf(id), LIMITS);
      const margin = (aim: string) => marginsOf(check, LIMITS).find((m) => m.aim === aim)?.dB;
      expect(margin('signal to noise')).toBeCloseTo(level['signal_to_noise_dB']! - 20, 6);
      expect(margin('headroom')).toBeCloseTo(level['headroom_dB']! - 3.5, 6);
      const massLimit = requirement['purpose'] === 'modal' ? 0.02 : 0.1;
      expect(margin('mass ratio')).toBeCloseTo(dB(massLimit / mass['mass_ratio']!), 6);
      if (thermal['worst_percent'] != null)
        expect(margin('thermal deviation')).toBeCloseTo(
          dB(requirement['thermal_tolerance_percent']! / thermal['worst_percent']),
          6,
        );
      const span = frequency.span_5_percent!;
      expect(margin('span high')).toBeCloseTo(dB(span.high_Hz / requirement['band_high_Hz']!), 5);
      if (span.low_Hz > 0) expect(margin('span low')).toBeCloseTo(dB(requirement['band_low_Hz']! / span.low_Hz), 4);
      else expect(margin('span low')).toBe(Infinity);
    },
  );

  it('come smallest first, and 0 dB is the limit itself', () => {
    const c5 = checkChannel(caseOf('C5'), LIMITS);
    const margins = marginsOf(c5, LIMITS).map(({ dB: value }) => value!);
    expect([...margins].sort((a, b) => a - b)).toEqual(margins);
    // 98.25 g by hand: 1 V over 10 mV/g, 1.8 % more at 35 °C; over 65 g that is 3.59 dB, limit 3.5 dB.
    expect(margins[0]).toBeCloseTo(0.09, 2);
  });

  it('of a temperature beyond a limit is what the part may leave its calibration by, over what it must', () => {
    // 135 °C needed, 121 °C allowed, calibrated at 23 °C: 98 K over 112 K.
    const margins = marginsOf(checkChannel(caseOf('C9'), LIMITS), LIMITS);
    expect(margins.find(({ aim }) => aim === 'temperature limit')?.dB).toBeCloseTo(dB(98 / 112), 9);
  });

  it('are not below 0 dB where a check passes, and not above where it does not', () => {
    fc.assert(
      fc.property(channel, smallStock, (asks, { sensors, mounts, cables, inputs }) => {
        const combination = { sensor: sensors[0]!, mount: mounts[0], cable: cables[0], input: inputs[0] };
        const check = checkChannel(withCombination(asks, combination), LIMITS_OF_RANDOM);
        for (const { verdict, dB: value } of marginsOf(check, LIMITS_OF_RANDOM)) {
          if (verdict === 'PASS') expect(value).toBeGreaterThanOrEqual(0);
          else if (value !== undefined) expect(value).toBeLessThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });
});

/** Every combination, judged without memory, grouping or pruning. */
const everyCombination = (asks: Channel, stock: Stock, sensor: Combination['sensor']) => {
  const all: Combination[] = [];
  for (const mount of stock.mounts)
    for (const cable of stock.cables) for (const input of stock.inputs) all.push({ sensor, mount, cable, input });
  return all.map((combination) => {
    const check = checkChannel(withCombination(asks, combination), LIMITS_OF_RANDOM);
    const margin = Math.min(...marginsOf(check, LIMITS_OF_RANDOM).flatMap(({ dB }) => dB ?? []));
    return { check, margin, severity: VERDICTS.indexOf(check.verdict), mass: check.mass.total ?? Infinity };
  });
};

describe('candidates', () => {
  it('have the best verdict, then the largest margin, then the least mass that any combination has', () => {
    fc.assert(
      fc.property(channel, smallStock, (asks, stock) => {
        const { candidates } = rankCandidates([asks], stock, LIMITS_OF_RANDOM);
        expect(candidates).toHaveLength(stock.sensors.length);
        for (const { sensor, worst, margin, mass } of candidates) {
          const all = everyCombination(asks, stock, sensor);
          const severity = Math.min(...all.map((c) => c.severity));
          expect(VERDICTS.indexOf(worst.check.verdict)).toBe(severity);
          const equal = all.filter((c) => c.severity === severity);
          const widest = Math.max(...equal.map((c) => c.margin));
          expect(margin).toBe(widest);
          expect(mass).toBe(Math.min(...equal.filter((c) => c.margin === widest).map((c) => c.mass)));
        }
      }),
      RUNS,
    );
  });

  it('are judged by the worst of several channels', () => {
    fc.assert(
      fc.property(fc.array(channel, { minLength: 2, maxLength: 4 }), smallStock, (all, stock) => {
        const together = rankCandidates(all, stock, LIMITS_OF_RANDOM).candidates;
        const alone = all.map((one) => rankCandidates([one], stock, LIMITS_OF_RANDOM).candidates);
        for (const { sensor, verdict, counts, margin } of together) {
          const each = alone.map((candidates) => candidates.find((c) => c.sensor === sensor)!);
          const worst = Math.max(...each.map((c) => VERDICTS.indexOf(c.verdict)));
          expect(VERDICTS.indexOf(verdict)).toBe(worst);
          for (const word of VERDICTS) expect(counts[word]).toBe(each.filter((c) => c.verdict === word).length);
          expect(margin).toBe(
            Math.min(...each.filter((c) => VERDICTS.indexOf(c.verdict) === worst).map((c) => c.margin ?? Infinity)),
          );
        }
      }),
      { ...RUNS, numRuns: RUNS.numRuns / 2 },
    );
  });

  it('answer equal demands once, whatever the rows are called and whatever sensor they name', () => {
    const [c1, c2] = [caseOf('C1'), caseOf('C7')];
    const rows = Array.from({ length: 400 }, (_, i) => ({
      ...asked(i % 2 ? c1 : c2),
      id: String(i),
      sensor: STOCK.sensors[i % STOCK.sensors.length],
      requirement: { ...(i % 2 ? c1 : c2).requirement },
    }));
    const ranking = rankCandidates(rows, STOCK, LIMITS);
    expect(ranking.demands).toBe(2);
    expect(ranking.checked).toBe(rankCandidates(rows.slice(0, 2), STOCK, LIMITS).checked);
    for (const { counts } of ranking.candidates) expect(Object.values(counts).reduce((a, b) => a + b)).toBe(400);
  });

  it('keep what the row names, unless that is free', () => {
    const row = caseOf('C2');
    const kept = rankCandidates([row], STOCK, LIMITS).candidates;
    for (const { worst } of kept) {
      expect(worst.combination.mount).toBe(row.mount);
      expect(worst.combination.input).toBe(row.input);
    }
    // The AC coupling of the row's input stops every type; the slower one of C1 lets its sensor pass.
    expect(kept.map(({ verdict }) => verdict)).not.toContain('PASS');
    const [first] = rankCandidates([row], STOCK, LIMITS, { free: ['input'] }).candidates;
    expect([first?.sensor.name, first?.verdict, first?.worst.combination.mount]).toEqual(['S7', 'PASS', row.mount]);
  });

  it('with an input of the wrong mode fail without any margin', () => {
    const row = caseOf('C7');
    for (const { sensor, worst, margin, limiting } of rankCandidates([row], STOCK, LIMITS).candidates)
      if (MODE_OF[sensor.output!] !== row.input?.mode) {
        expect([worst.check.verdict, margin, limiting?.aim]).toEqual(['FAIL', -Infinity, 'input mode']);
      }
  });

  it('are INCOMPLETE, never better, when the row lacks a number', () => {
    const { requirement, id } = caseOf('C12');
    const { candidates } = rankCandidates([{ id, requirement: { ...requirement, localMass: [] } }], STOCK, LIMITS);
    for (const { verdict } of candidates) expect(['INCOMPLETE', 'FAIL']).toContain(verdict);
    expect(candidates[0]?.verdict).toBe('INCOMPLETE');
  });

  it('can be limited to an element, an output, a number of axes or a mount', () => {
    const names = (filter: Parameters<typeof rankCandidates>[3]) =>
      rankCandidates([asked(caseOf('C10'))], STOCK, LIMITS, filter)
        .candidates.map(({ sensor }) => sensor.name)
        .sort();
    expect(names({ filter: { technology: ['quartz'] } })).toEqual(['S5']);
    expect(names({ filter: { output: ['charge'] } })).toEqual(['S3', 'S4']);
    expect(names({ filter: { axes: 3 } })).toEqual(['S9']);
    const [first] = rankCandidates([caseOf('C10')], STOCK, LIMITS, { filter: { mounts: ['m4'] } }).candidates;
    expect(first?.worst.combination.mount?.name).toBe('M4');
  });

  it('come by mass or by number in stock when that is asked, the verdict still first', () => {
    const stock = { ...STOCK, sensors: STOCK.sensors.map((sensor, i) => ({ ...sensor, quantity: (i * 7) % 9 })) };
    const row = [asked(caseOf('C10'))];
    const passing = (order: 'mass' | 'stock') =>
      rankCandidates(row, stock, LIMITS, { order }).candidates.filter(({ verdict }) => verdict === 'PASS');
    const masses = passing('mass').map(({ mass }) => mass!);
    expect(masses.length).toBeGreaterThan(2);
    expect([...masses].sort((a, b) => a - b)).toEqual(masses);
    const numbers = passing('stock').map(({ sensor }) => sensor.quantity!);
    expect([...numbers].sort((a, b) => b - a)).toEqual(numbers);
  });

  it('of the complete cases hold the chosen type where that passes', () => {
    for (const row of CASES.channels.filter((c) => checkChannel(c, LIMITS).verdict === 'PASS')) {
      const found = rankCandidates([row], STOCK, LIMITS).candidates.find(({ sensor }) => sensor === row.sensor);
      expect([row.id, found?.verdict, found?.chosenBy]).toEqual([row.id, 'PASS', 1]);
    }
  });
});
