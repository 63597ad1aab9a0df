import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { handedness } from '../../../src/core/stock/handedness';
import { toSi } from '../../../src/core/units';
import { assignChannels } from '../../../src/plan/assign/assign-channels';
import { sensorAxes, siteAxes } from '../../../src/plan/assign/axes';
import { WEIGHTS, type AssignOptions } from '../../../src/plan/assign/options';
import { objectiveWords, outcomeWords, shortageWords } from '../../../src/plan/assign/words';
import type { Stock } from '../../../src/plan/choosing/candidate';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel, Input, Requirement, SensorType } from '../../../src/plan/model';

const input: Input = {
  name: 'IEPE 10 V',
  mode: 'IEPE',
  range: 10,
  dynamicRange: 120,
  sampleRate: 51200,
  couplingPoles: [0.1],
  supply: 28,
  supplyCurrent: 0.004,
  sourceDrop: 1,
  biasFloor: 1,
  sensorCurrent: 0.001,
};
/** A light sensor that passes wherever its full scale reaches. */
const sensor = (name: string, fullScale: number, more: Partial<SensorType> = {}): SensorType => ({
  name,
  output: 'IEPE',
  axes: 1,
  sensitivity: toSi(10, 'mV/g'),
  fullScale: toSi(fullScale, 'g'),
  mass: toSi(1, 'gram'),
  noiseDensity: { x: [1, 20000], y: [toSi(5, 'µg/√Hz'), toSi(5, 'µg/√Hz')] },
  resonance: 60000,
  qualityFactor: 30,
  lowLimit: 0.5,
  biasMin: 10,
  biasMax: 12,
  temperatureMin: -50,
  temperatureMax: 120,
  coefficient: 0.0001,
  quantity: 1,
  ...more,
});
const requirement = (peak: number): Requirement => ({
  purpose: 'survey',
  levelLow: toSi(0.05, 'g'),
  levelHigh: toSi(peak, 'g'),
  bandLow: 10,
  bandHigh: 2000,
  detector: { kind: 'band' },
  temperatureLow: 15,
  temperatureHigh: 35,
  localMass: [{ model: 'value', mass: 1 }],
});
const channel = (id: string, peak: number, more: Partial<Channel> = {}): Channel => ({
  id,
  input,
  mount: { name: 'stud', mass: 0, temperatureMin: -50, temperatureMax: 200 },
  cable: { name: 'short', capacitance: 1e-10, mass: 0, temperatureMin: -50, temperatureMax: 200 },
  named: { input: input.name, mount: 'stud', cable: 'short' },
  requirement: requirement(peak),
  ...more,
});
const assign = (channels: readonly Channel[], sensors: readonly SensorType[], options: AssignOptions = {}) => {
  const stock: Stock = { sensors, mounts: [], cables: [], inputs: [input] };
  return assignChannels(channels, stock, DEFAULT_LIMITS, nodeSolver, options);
};
const chosen = ({ channels, assigned }: Awaited<ReturnType<typeof assign>>) =>
  Object.fromEntries(assigned.map((one) => [channels[one.channel]!.id, one.combination.sensor.name]));

const wide = sensor('wide', 400);
const narrow = sensor('narrow', 40);

describe('assigning sensors from stock', () => {
  it('serves both where row order would leave one out: the first accepts either, the second only one', async () => {
    const result = await assign([channel('1', 10), channel('2', 100)], [wide, narrow]);
    expect(chosen(result)).toEqual({ 1: 'narrow', 2: 'wide' });
    expect(result.isOptimal).toBe(true);
  });

  it('takes a worse pair for one channel where that saves a WARN elsewhere', async () => {
    // 200 g ask for 299 g of full scale (3.5 dB): of the two only "wide" passes, and greed would give it to the first.
    const near = sensor('near', 250);
    const result = await assign([channel('1', 100), channel('2', 200)], [wide, near], { allowWarn: true });
    expect(chosen(result)).toEqual({ 1: 'near', 2: 'wide' });
    expect(result.assigned.map(({ verdict }) => verdict)).toEqual(['PASS', 'PASS']);
  });

  it('never takes FAIL, and WARN only when asked', async () => {
    const near = sensor('near', 250);
    expect((await assign([channel('1', 200)], [near])).unserved).toMatchObject([{ why: 'nothing fits', nearest: { verdict: 'WARN' } }]); // prettier-ignore
    expect(chosen(await assign([channel('1', 200)], [near], { allowWarn: true }))).toEqual({ 1: 'near' });
    expect((await assign([channel('1', 300)], [near], { allowWarn: true })).assigned).toEqual([]);
  });

  it('serves three directions of one point with one housing, and says which axis lies where', async () => {
    const triax = sensor('triax', 400, { axes: 3 });
    const at = (direction: string) => channel(direction, 10, { point: '7', direction });
    const result = await assign([at('+X'), at('+Y'), at('-Z')], [triax, { ...narrow, quantity: 2 }]);
    expect(chosen(result)).toEqual({ '+X': 'triax', '+Y': 'triax', '-Z': 'triax' });
    expect(result.assigned.map(({ axis }) => axis)).toEqual([2, 1, 3]);
    expect(result.uses[0]).toMatchObject({ used: 1, channels: 3, left: 0 });
  });

  it('gives every signed set of directions the axes of a right-handed housing', () => {
    const unit = (order: number, sign: number): [number, number, number] => [0, 1, 2].map((k) => (k === order ? sign : 0)) as [number, number, number]; // prettier-ignore
    for (const [x, y, z] of [
      [1, 1, 1],
      [-1, 1, 1],
      [1, -1, 1],
      [-1, -1, -1],
      [1, -1, -1],
    ] as const) {
      const sites = siteAxes([['X', x], ['Y', y], ['Z', z]].map(([axis, sign]) => channel('c', 1, { point: '1', direction: `${sign === 1 ? '+' : '-'}${axis}` }))); // prettier-ignore
      const axes = sensorAxes(sites.map((site) => site!));
      const byAxis = [1, 2, 3].map((axis) => axes.indexOf(axis)).map((place) => unit(place, [x, y, z][place]!));
      expect(handedness(byAxis as never)).toBe(1);
    }
  });

  it('moves sensors from run to run when asked', async () => {
    const runs = ['wing', 'tail'].map((group) => channel(group, 10, { group }));
    expect((await assign(runs, [narrow])).assigned).toHaveLength(1);
    const roving = await assign(runs, [narrow], { roving: true });
    expect(roving.assigned.map(({ piece }) => piece)).toEqual([1, 1]);
    expect(roving.runs).toBe(2);
  });

  it('keeps spares back, at least one of each type', async () => {
    const channels = [1, 2, 3].map((n) => channel(String(n), 10));
    const result = await assign(channels, [{ ...narrow, quantity: 3 }], { spare: 0.05 });
    expect(result.assigned).toHaveLength(2);
    expect(result.uses[0]).toMatchObject({ quantity: 3, kept: 1, used: 2, left: 0 });
    expect(shortageWords(result)).toEqual(['The least that is missing: 1 more of type “narrow”.']);
  });

  it('keeps pinned sensors although another choice would be better', async () => {
    const pinned = channel('1', 10, { sensor: wide, named: { sensor: 'wide' } });
    const result = await assign([pinned, channel('2', 100)], [wide, narrow], { pinned: ['1'] });
    expect(chosen(result)).toEqual({ 1: 'wide' });
    expect(result.unserved).toMatchObject([{ channel: 1, why: 'stock' }]);
  });

  it('serves who keeps a sensor before others where stock is short, even two for one', async () => {
    const cube = sensor('cube', 40, { axes: 3, quantity: 1 });
    const at = (point: string, direction: string) => ({ point, direction, group: 'wing' });
    const keeper = channel('keeper', 10, { ...at('1', '+X'), sensor: cube, named: { ...channel('', 1).named, sensor: 'cube' } }); // prettier-ignore
    const others = [channel('2x', 10, at('2', '+X')), channel('2y', 10, at('2', '+Y'))];
    const free = await assign([keeper, ...others], [cube]);
    expect(chosen(free)).toEqual({ '2x': 'cube', '2y': 'cube' });
    const kept = await assign([keeper, ...others], [cube], { pinned: [0] });
    expect(chosen(kept)).toEqual({ keeper: 'cube' });
    expect(kept.unserved.map(({ channel: place }) => place)).toEqual([1, 2]);
    expect(kept.terms.some(({ term }) => term === 'kept')).toBe(false);
  });

  it('changes parts that are free to change, but none of a channel that keeps its sensor', async () => {
    const stock: Stock = { sensors: [narrow], mounts: [], cables: [], inputs: [{ ...input, range: 0.001 }, input] };
    const small = stock.inputs[0]!;
    const one = channel('1', 10, { input: small, sensor: narrow, named: { mount: 'stud', cable: 'short', input: small.name, sensor: 'narrow' } }); // prettier-ignore
    const run = (pinned?: 'filled') => assignChannels([one], stock, DEFAULT_LIMITS, nodeSolver, { free: ['input'], pinned }); // prettier-ignore
    expect((await run()).assigned[0]!.combination.input).toBe(input);
    const kept = (await run('filled')).assigned[0]!;
    expect([kept.combination.input, kept.verdict]).toEqual([small, 'FAIL']);
  });

  it('leaves out pieces whose calibration ends before the test, or takes them at a cost', async () => {
    const serials = new Map([['narrow', [{ serial: 'A1', calibrationDue: 100 }, { serial: 'A2', calibrationDue: 300 }]]]); // prettier-ignore
    const channels = [channel('1', 10), channel('2', 10)];
    const strict = await assign(channels, [narrow], { serials, testEnd: 200 });
    expect(strict.assigned.map(({ serial }) => serial)).toEqual(['A2']);
    const lenient = await assign(channels, [narrow], { serials, testEnd: 200, calibration: 'cost' });
    expect(lenient.assigned.map(({ serial }) => serial).sort()).toEqual(['A1', 'A2']);
    expect(lenient.terms.find(({ term }) => term === 'calibration')?.count).toBe(1);
  });

  it('counts the inputs there are', async () => {
    const channels = [1, 2, 3].map((n) => channel(String(n), 10));
    const inputs = [{ name: 'front end', modes: ['IEPE' as const], channels: 2, count: 1 }];
    const result = await assign(channels, [{ ...narrow, quantity: 5 }], { inputs });
    expect(result.assigned).toHaveLength(2);
    expect(shortageWords(result)).toEqual(['The least that is missing: 1 more IEPE input channel.']);
  });

  it('keeps one response group to one type where that costs less than thin margins', async () => {
    const channels = [1, 2].map((n) => channel(String(n), 10, { group: 'wing' }));
    const mixed = await assign(channels, [wide, { ...narrow, quantity: 2 }]);
    expect(new Set(Object.values(chosen(mixed)))).toEqual(new Set(['narrow']));
    const free = await assign(channels, [
      { ...wide, quantity: 2 },
      { ...narrow, mass: 0.9, quantity: 2 },
    ]);
    expect(new Set(Object.values(chosen(free)))).toEqual(new Set(['wide']));
  });

  it('offers what helps alone when there is a choice', async () => {
    const result = await assign([channel('1', 10), channel('2', 10), channel('3', 10)], [wide, narrow]);
    expect(shortageWords(result)[1]).toBe('Any one of these is enough: 1 more of type “wide”, or 1 more of type “narrow”.'); // prettier-ignore
    expect(shortageWords(result, 'de')[1]).toBe('Eines davon genügt: 1 weitere vom Typ „wide“ oder 1 weitere vom Typ „narrow“.'); // prettier-ignore
    expect(outcomeWords(result, 'fr')[0]).toBe('2 voies sur 3 ont un capteur.');
  });

  it('explains a cost that is the sum of its terms', async () => {
    const channels = [channel('1', 10), channel('2', 200), channel('3', 20, { group: 'a' })];
    const result = await assign(channels, [sensor('near', 250), wide, narrow], { allowWarn: true });
    for (const { term, count, cost } of result.terms) expect(cost).toBeCloseTo(count * WEIGHTS[term], 9);
    expect(result.cost).toBeCloseTo(result.terms.reduce((sum, { cost }) => sum + cost, 0), 9); // prettier-ignore
    expect(objectiveWords(result).length).toBe(result.terms.length + 1);
  });

  it('assigns nothing once it is cancelled', async () => {
    const result = await assign([channel('1', 10)], [narrow], { signal: { aborted: true } });
    expect(result).toMatchObject({ status: 'cancelled', assigned: [] });
  });
});
