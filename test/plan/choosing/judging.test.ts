import { VERDICTS } from '../../../src/core/verdict';
import { pairSteps } from '../../../src/plan/assign/pairs';
import { checkChannel } from '../../../src/plan/check';
import { combinationsOf, partChoices } from '../../../src/plan/choosing/candidate-options';
import { withCombination, type Part, type Stock } from '../../../src/plan/choosing/candidate';
import { marginsOf } from '../../../src/plan/choosing/candidate-margins';
import { rankCandidates } from '../../../src/plan/choosing/rank';
import { modeMismatch } from '../../../src/plan/level';
import { DEFAULT_LIMITS, type Limits } from '../../../src/plan/limits';
import type { Channel, SensorType } from '../../../src/plan/model';
import { randomChannel, seeded } from './random-channels';
import { STOCK } from './stock';

const PAIRS = Number(process.env['JUDGING_PAIRS'] ?? 600);

const SCOPED: Limits = {
  ...DEFAULT_LIMITS,
  scoped: [
    { limit: 'signalToNoise', group: 'Tail', pass: 26, origin: 'a test' },
    { limit: 'massRatio', purpose: 'modal', pass: 0.05, warn: 0.3, origin: 'a test' },
    { limit: 'thermalTolerance', group: 'Tail', purpose: 'survey', pass: 0.12, origin: 'a test' },
    { limit: 'spanTolerance', group: 'Wing', pass: 0.02, warn: 0.03, origin: 'a test' },
  ],
};

/** Every field of a part now and then left out, or given and not readable. */
const holed = <T extends object>(part: T, random: () => number, keys: readonly string[]): T => {
  if (random() < 0.9) return part;
  const key = keys[Math.floor(random() * keys.length)]!;
  const rest = Object.fromEntries(Object.entries(part).filter(([name]) => name !== key));
  return (random() < 0.5 ? rest : { ...rest, unread: [key] }) as T;
};

interface Drawn {
  readonly channels: readonly Channel[];
  readonly stock: Stock;
  readonly limits: Limits;
  readonly free: readonly Part[];
}

/** Rows whose requirements, parts and limits are partly the same, with what they lack. */
const drawn = (seed: number): Drawn => {
  const random = seeded(seed);
  const oneOf = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)]!;
  const few = <T>(most: number, make: () => T): T[] => Array.from({ length: 1 + Math.floor(random() * most) }, make);
  const models = few(2, () => randomChannel(random));
  const part = <K extends 'sensor' | 'mount' | 'cable' | 'input'>(key: K) => oneOf(models)[key]!;
  const sensors = few(4, (): SensorType =>
    holed(random() < 0.7 ? { ...part('sensor') } : oneOf(STOCK.sensors), random, ['mass', 'output', 'resonance', 'noiseDensity', 'deviation', 'coefficient', 'lowLimit', 'temperatureMin', 'lowLimitLoss', 'calibrationTemperature', 'biasMin'])); // prettier-ignore
  const mounts = few(3, () => holed(random() < 0.7 ? { ...part('mount') } : oneOf(STOCK.mounts), random, ['mass', 'stiffness', 'temperatureMax'])); // prettier-ignore
  const cables = few(3, () => holed(random() < 0.7 ? { ...part('cable') } : oneOf(STOCK.cables), random, ['mass', 'capacitance', 'temperatureMin'])); // prettier-ignore
  const inputs = few(4, () => holed(random() < 0.7 ? { ...part('input') } : oneOf(STOCK.inputs), random, ['mode', 'range', 'sampleRate', 'couplingPoles', 'timeConstant'])); // prettier-ignore
  const row = (): Channel => {
    const { requirement } = oneOf(models);
    const levelHigh = requirement.levelHigh! * (random() < 0.5 ? 1 : 2 ** (random() - 0.5));
    const own = random() < 0.2 ? { signalToNoiseLimit: 15, massRatioLimit: 0.2 } : {};
    const asked = holed({ ...requirement, levelHigh, ...own }, random, ['levelLow', 'bandHigh', 'temperatureHigh', 'thermalTolerance', 'spanTolerance', 'purpose', 'localMass', 'signalToNoiseLimit', 'massRatioLimit', 'referenceFrequency']); // prettier-ignore
    return {
      id: 'row',
      group: oneOf(['Wing', 'Tail', undefined]),
      requirement: { ...asked, localMass: asked.localMass ?? [] },
      mount: random() < 0.6 ? oneOf(mounts) : undefined,
      cable: random() < 0.4 ? oneOf(cables) : undefined,
      input: random() < 0.4 ? oneOf(inputs) : undefined,
    };
  };
  return {
    channels: few(6, row),
    stock: { sensors, mounts, cables, inputs },
    limits: random() < 0.4 ? SCOPED : DEFAULT_LIMITS,
    free: (['mount', 'cable', 'input'] as const).filter(() => random() < 0.5),
  };
};

/** The best combination by the plain checks: each of them in full, nothing remembered, nothing left out. */
const plainBest = (channel: Channel, sensor: SensorType, { stock, limits, free }: Drawn) => {
  const choices = partChoices(channel, stock, free);
  const fitting = choices.inputs.filter((input) => !modeMismatch(sensor, input));
  const inputs = fitting.length > 0 ? fitting : choices.inputs.slice(0, 1);
  const all = [...combinationsOf(sensor, { ...choices, inputs })].map((combination) => {
    const check = checkChannel(withCombination(channel, combination), limits);
    const margins = marginsOf(check, limits).map(({ dB }) => dB);
    return {
      combination,
      verdict: check.verdict,
      margin: margins[0],
      rank: [
        VERDICTS.indexOf(check.verdict),
        -margins.reduce<number>((least, dB) => (dB !== undefined && dB < least ? dB : least), Infinity),
        check.mass.total ?? Infinity,
      ],
      margins: margins.map((dB) => dB ?? Infinity),
      place: [choices.cables.indexOf(combination.cable), choices.mounts.indexOf(combination.mount), choices.inputs.indexOf(combination.input)], // prettier-ignore
    };
  });
  const firstUnequal = (a: readonly number[], b: readonly number[]): number => a.findIndex((number, i) => number !== b[i]); // prettier-ignore
  /** Whether the one is better; of equals the first in the lists stays. */
  const isBetter = (a: (typeof all)[number], b: (typeof all)[number]): boolean => {
    const at = firstUnequal(a.rank, b.rank);
    if (at >= 0) return a.rank[at]! < b.rank[at]!;
    const next = firstUnequal(a.margins, b.margins);
    return next >= 0 && a.rank[1]! > -Infinity && a.margins[next]! > b.margins[next]!;
  };
  all.sort((a, b) => a.place[0]! - b.place[0]! || a.place[1]! - b.place[1]! || a.place[2]! - b.place[2]!);
  const { combination, verdict, margin } = all.reduce((best, next) => (isBetter(next, best) ? next : best));
  return { combination, verdict, margin };
};

describe('judging all types on all channels', () => {
  it('gives the combination, verdict and margin of the plain checks, for every pair of seeded random lists', () => {
    const verdicts = new Map<string, number>();
    let pairs = 0;
    for (let seed = 1; pairs < PAIRS; seed++) {
      const given = drawn(seed);
      const { channels, stock, limits, free } = given;
      const steps = pairSteps(channels, stock, limits, free);
      let step = steps.next();
      while (!step.done) step = steps.next();
      const found = step.value;
      const ranked = rankCandidates([channels[0]!], stock, limits, { free }).candidates;
      channels.forEach((channel, c) =>
        stock.sensors.forEach((sensor, s) => {
          const expected = plainBest(channel, sensor, given);
          const { combination, verdict, margin } = found[c]![s]!;
          const isSame = (['sensor', 'mount', 'cable', 'input'] as const).every((key) => combination[key] === expected.combination[key]); // prettier-ignore
          if (!isSame || verdict !== expected.verdict || !Object.is(margin, expected.margin))
            expect({ seed, c, s, combination, verdict, margin }).toEqual({ seed, c, s, ...expected });
          pairs += 1;
          verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
          const fit = c === 0 ? ranked.find((candidate) => candidate.sensor === sensor)!.worst : undefined;
          if (fit) expect([fit.check.verdict, fit.margin]).toEqual([expected.verdict, expected.margin]);
        }),
      );
    }
    for (const verdict of VERDICTS)
      expect([verdict, (verdicts.get(verdict) ?? 0) > PAIRS / 100]).toEqual([verdict, true]);
  });
});
