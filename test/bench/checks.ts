import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkChannel, checkChannels } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Channel, Plan } from '../../src/plan/model';
import { usableSpan } from '../../src/core/frequency/span';
import { bandNoise } from '../../src/core/level/noise';

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
const timed = (work: () => void, times: number): number =>
  median(
    Array.from({ length: times }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );

/** The twelve cases over and over, with levels and temperatures varied so that rows differ as in a real list. */
const manyChannels = (plan: Plan, count: number): Channel[] =>
  Array.from({ length: count }, (_, i) => {
    const channel = plan.channels[i % plan.channels.length]!;
    const { requirement } = channel;
    const factor = 1 + (i % 97) / 97;
    return {
      ...channel,
      id: `${i}`,
      requirement: {
        ...requirement,
        levelHigh: requirement.levelHigh! * factor,
        levelLow: requirement.levelLow! * factor,
        temperatureHigh: requirement.temperatureHigh! - (i % 5),
      },
    };
  });

/** The floor: the same closed forms in a bare loop over typed arrays, no findings, no missing fields, no verdict text. */
const floorLoop = (channels: readonly Channel[]) => {
  const n = channels.length;
  const column = (of: (c: Channel) => number) => Float64Array.from(channels, of);
  const low = column((c) => c.requirement.levelLow!);
  const high = column((c) => c.requirement.levelHigh!);
  const bandLow = column((c) => c.requirement.bandLow!);
  const bandHigh = column((c) => c.requirement.bandHigh!);
  const cold = column((c) => c.requirement.temperatureLow!);
  const hot = column((c) => c.requirement.temperatureHigh!);
  const added = column((c) => c.sensor!.mass! + c.mount!.mass! + c.cable!.mass!);
  const local = column(() => 0.12);
  const out = Array.from({ length: 8 }, () => new Float64Array(n));
  const spans = new Map<string, { low: number; high: number } | null>();
  const white = { x: [1, 1e5], y: [1e-4, 1e-4] };
  return () => {
    for (let i = 0; i < n; i++) {
      const { sensor, input } = channels[i]!;
      const curve = sensor!.deviation!;
      let least = Infinity;
      let most = -Infinity;
      const at = (t: number): number => {
        let k = 1;
        while (k < curve.x.length - 1 && curve.x[k]! < t) k++;
        const [x0, x1, y0, y1] = [curve.x[k - 1]!, curve.x[k]!, curve.y[k - 1]!, curve.y[k]!];
        return y0 + ((y1 - y0) * (t - x0)) / (x1 - x0);
      };
      for (const t of [cold[i]!, hot[i]!]) {
        const y = at(t);
        least = Math.min(least, y);
        most = Math.max(most, y);
      }
      for (let k = 0; k < curve.x.length; k++)
        if (curve.x[k]! > cold[i]! && curve.x[k]! < hot[i]!) {
          least = Math.min(least, curve.y[k]!);
          most = Math.max(most, curve.y[k]!);
        }
      const s = sensor!.sensitivity ?? sensor!.chargeSensitivity! * input!.gain!;
      const ofSensor = bandNoise(sensor!.noiseDensity ?? white, bandLow[i]!, bandHigh[i]!);
      const density = (input!.range! / Math.SQRT2) * 10 ** (-input!.dynamicRange! / 20);
      const ofInput =
        (density * Math.sqrt((bandHigh[i]! - bandLow[i]!) / (input!.sampleRate! / 2))) / (s * (1 + least));
      const noise = Math.hypot(ofSensor, ofInput);
      out[0]![i] = 20 * Math.log10(low[i]! / noise);
      out[1]![i] = 20 * Math.log10(Math.min(sensor!.fullScale!, input!.range! / (s * (1 + most))) / high[i]!);
      out[2]![i] = added[i]! / local[i]!;
      out[3]![i] = least;
      out[4]![i] = most;
      for (const tolerance of [0.05, 0.1]) {
        const key = `${sensor!.name}|${input!.name}|${tolerance}`;
        let span = spans.get(key);
        if (span === undefined) {
          span = usableSpan({
            lowPoles: input!.couplingPoles!,
            resonance: sensor!.resonance!,
            qualityFactor: sensor!.qualityFactor!,
            reference: 160,
            tolerance,
          });
          spans.set(key, span);
        }
        out[5]![i] = span?.low ?? 0;
        out[6]![i] = span?.high ?? 0;
      }
    }
  };
};

export const run = async (root: string): Promise<void> => {
  const json: unknown = JSON.parse(readFileSync(join(root, 'test/fixtures/cases.json'), 'utf8'));
  const { plan } = readJsonPlan(json);
  console.log('All checks of a plan, in milliseconds; the floor is a bare typed-array loop of the same closed forms');
  console.log('  channels    checks     floor    ratio   per channel');
  for (const count of [1_000, 10_000, 100_000]) {
    const channels = manyChannels(plan, count);
    const floor = floorLoop(channels);
    checkChannels(channels, plan.limits);
    floor();
    const times = count > 50_000 ? 5 : 15;
    const ours = timed(() => checkChannels(channels, plan.limits), times);
    const bare = timed(floor, times);
    const cells = [
      String(count),
      ours.toFixed(2),
      bare.toFixed(2),
      (ours / bare).toFixed(2),
      `${((ours / count) * 1e3).toFixed(2)} µs`,
    ];
    console.log(cells.map((cell, i) => cell.padStart([10, 10, 10, 9, 14][i]!)).join(''));
  }
  const one = plan.channels[0]!;
  console.log(
    `  one channel alone: ${(timed(() => void checkChannel(one, plan.limits), 2_001) * 1e3).toFixed(1)} µs\n`,
  );
};
