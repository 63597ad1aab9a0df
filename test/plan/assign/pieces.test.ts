import fc from 'fast-check';
import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { assignChannels } from '../../../src/plan/assign/assign-channels';
import type { Assignment } from '../../../src/plan/assign/assignment';
import { handedOutWords } from '../../../src/plan/assign/piece-words';
import type { AssignOptions } from '../../../src/plan/assign/options';
import { shortageWords } from '../../../src/plan/assign/words';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel, Piece, SensorType } from '../../../src/plan/model';
import { bySerial } from '../../../src/plan/pieces';

jest.setTimeout(60_000);

/** A type that suits every channel here, with pieces by serial number and the day on which each is due. */
const typeWith = (
  name: string,
  dues: Readonly<Record<string, number | undefined>>,
  more: Partial<SensorType> = {},
): SensorType => ({
  name,
  output: 'IEPE',
  axes: 1,
  sensitivity: 0.01,
  fullScale: 500,
  mass: 0.005,
  noiseDensity: { x: [1, 1000], y: [1e-4, 1e-5] },
  resonance: 30_000,
  qualityFactor: 30,
  biasMin: 8,
  biasMax: 12,
  temperatureMin: -50,
  temperatureMax: 120,
  deviation: { x: [-50, 23, 120], y: [-0.01, 0, 0.01] },
  quantity: Object.keys(dues).length,
  pieces: Object.entries(dues).map(([serial, calibrationDue], line): Piece => ({
    serial,
    type: name,
    line,
    calibrationDue,
  })),
  ...more,
});
const LAST = 100;
const channel = (id: string, more: Partial<Channel> = {}): Channel => ({
  id,
  requirement: { detector: { kind: 'band' }, levelLow: 1, levelHigh: 100, bandLow: 10, bandHigh: 1000, temperatureLow: 10, temperatureHigh: 30, localMass: [{ model: 'value', mass: 10 }] }, // prettier-ignore
  mount: { name: 'stud', mass: 0.001 },
  cable: { name: 'cable', capacitance: 3e-10, mass: 0.001 },
  input: { name: 'in', mode: 'IEPE', range: 10, dynamicRange: 110, sampleRate: 51_200, couplingPoles: [0.16], supply: 24, sourceDrop: 1, biasFloor: 2 }, // prettier-ignore
  ...more,
});
const naming = (type: SensorType, serial?: string): Partial<Channel> => ({
  sensor: type,
  serial,
  named: { sensor: type.name },
});
const assign = (channels: readonly Channel[], sensors: readonly SensorType[], options: AssignOptions = {}) =>
  assignChannels(channels, { sensors, mounts: [], cables: [], inputs: [] }, DEFAULT_LIMITS, nodeSolver, { allowWarn: true, allowIncomplete: true, ...options }); // prettier-ignore
const given = ({ assigned, channels }: Assignment): Record<string, string | undefined> =>
  Object.fromEntries(assigned.map(({ channel: place, serial }) => [channels[place]!.id, serial]));

describe('pieces given out by serial number', () => {
  const six = typeWith('six', { S10: 200, S2: 200, S9: 99, S1: 100, S3: undefined, S4: 20 });

  it('go out in the order of their numbers, by hand: S4 and S9 are due before day 100, S1 on it, S3 has no date', async () => {
    const rows = ['a', 'b', 'c', 'd', 'e'].map((id) => channel(id));
    rows[4] = channel('e', { runEnd: LAST });
    const found = await assign(rows, [six]);
    expect(given(found)).toEqual({ a: 'S1', b: 'S2', c: 'S3', d: 'S10' });
    expect(found.unserved.map(({ channel: place }) => place)).toEqual([4]);
    expect(shortageWords(found).at(-1)).toBe(
      '2 of 6 pieces of type “six” are due for calibration before the end of the test on 1900-04-09 and were not given out: S4, S9.',
    );
    expect(handedOutWords(found, false).join(' ')).toMatch(/lowest free number.*before 1900-04-09.*no column/);
  });

  it('must have a date where the last day was asked for', async () => {
    expect(given(await assign(['a', 'b', 'c', 'd'].map((id) => channel(id)), [six], { testEnd: LAST }))).toEqual({ a: 'S1', b: 'S2', c: 'S10' }); // prettier-ignore
  });

  it('stay with the rows that name them where they still do, and with kept rows in any case', async () => {
    const rows = [
      channel('a'),
      channel('b', naming(six, 's2')),
      channel('c', naming(six, 'S9')),
      channel('d', { runEnd: LAST }),
    ];
    expect(given(await assign(rows, [six]))).toEqual({ a: 'S1', b: 'S2', c: 'S3', d: 'S10' });
    const kept = await assign(rows, [six], { pinned: 'filled' });
    expect(given(kept)).toEqual({ a: 'S1', b: 's2', c: 'S9', d: 'S3' });
    const six2 = kept.uses[0]!;
    // Of four good pieces three are in use beside the late one.
    expect([six2.quantity, six2.overdue, six2.used, six2.left]).toEqual([6, 2, 4, 1]);
  });

  it('a kept piece that the list does not have takes none of the others', async () => {
    const one = typeWith('one', { A: undefined });
    const found = await assign([channel('a', naming(one, 'lent')), channel('b')], [one], { pinned: ['a'] });
    expect(given(found)).toEqual({ a: 'lent', b: 'A' });
  });

  it('serve three directions as one housing with one number', async () => {
    const cube = typeWith('cube', { K1: 500, K2: 500 }, { axes: 3 });
    const at = (id: string, point: string, direction: string, more: Partial<Channel> = {}) => channel(id, { point, direction, ...more }); // prettier-ignore
    const rows = [at('1x', '1', '+X'), at('1y', '1', '+Y'), at('1z', '1', '+Z'), at('2x', '2', '+X', naming(cube, 'K1')), at('2y', '2', '+Y')]; // prettier-ignore
    expect(given(await assign(rows, [cube], { pinned: ['2x'] }))).toEqual({ '1x': 'K2', '1y': 'K2', '1z': 'K2', '2x': 'K1', '2y': 'K1' }); // prettier-ignore
  });

  it('two kept pieces at one point are two housings', async () => {
    const cube = typeWith('cube', { K1: 500, K2: 500, K3: 500 }, { axes: 3 });
    const at = (id: string, direction: string, serial?: string) => channel(id, { point: '1', direction, ...(serial && naming(cube, serial)) }); // prettier-ignore
    const found = await assign([at('x', '+X', 'K2'), at('y', '+Y', 'K1'), at('z', '+Z')], [cube], { pinned: 'filled' });
    expect([given(found)['x'], given(found)['y']]).toEqual(['K2', 'K1']);
    expect(found.uses[0]!.used).toBe(2);
  });
});

it('numbers within serial numbers count as numbers', () => {
  expect(['S10', 's9', 'S1-20', 'S1-3', '07', 'S1'].sort(bySerial)).toEqual(['07', 'S1', 'S1-3', 'S1-20', 's9', 'S10']);
});

/** The most rows that can have a piece, by trying every piece for every row. */
const mostServed = (rows: readonly (readonly number[])[], good: number, taken: ReadonlySet<string>): number => {
  const [runs, ...rest] = rows;
  if (!runs) return 0;
  let best = mostServed(rest, good, taken);
  for (let piece = 0; piece < good; piece++) {
    const use = runs.map((run) => `${piece} ${run}`);
    if (use.some((key) => taken.has(key))) continue;
    best = Math.max(best, 1 + mostServed(rest, good, new Set([...taken, ...use])));
  }
  return best;
};

it('as many rows have a piece as trying every piece for every row gives, and no piece is twice in a run or late', async () => {
  const PARTS = ['A', 'B', undefined] as const;
  const row = fc.record({ part: fc.constantFrom(...PARTS), keeps: fc.option(fc.nat(3), { nil: undefined, freq: 3 }) });
  const instance = fc.record({
    dues: fc.array(fc.constantFrom(50, 100, 150, undefined), { minLength: 1, maxLength: 4 }),
    rows: fc.array(row, { minLength: 1, maxLength: 6 }),
  });
  await fc.assert(
    fc.asyncProperty(instance, async ({ dues, rows }) => {
      const type = typeWith('t', Object.fromEntries(dues.map((due, i) => [`S${i}`, due])));
      const good = dues.flatMap((due, i) => (due !== undefined && due < LAST ? [] : [i]));
      const runsOf = (part: string | undefined): number[] => (part === undefined ? [0, 1] : [part === 'A' ? 0 : 1]);
      // Kept rows name good pieces, each once in a run; those of both parts only where nothing else is kept.
      const taken = new Set<string>();
      const kept = rows.map(({ part, keeps }) => {
        const piece = keeps === undefined ? undefined : good[keeps];
        if (piece === undefined || part === undefined || taken.has(`${piece} ${part}`)) return undefined;
        taken.add(`${piece} ${part}`);
        return piece;
      });
      const open = rows.filter((_, i) => kept[i] === undefined);
      fc.pre(taken.size === 0 || open.every(({ part }) => part !== undefined));
      const channels = rows.map(({ part }, i) => channel(`c${i}`, { group: part, runEnd: LAST, ...(kept[i] === undefined ? {} : naming(type, `S${kept[i]}`)) })); // prettier-ignore
      const runs = new Map([['A', { first: 0, last: 0 }], ['B', { first: 1, last: 1 }]]); // prettier-ignore
      const found = await assign(channels, [type], { runs, pinned: 'filled', shortage: false });
      const used = new Set([...taken].map((key) => { const [piece, part] = key.split(' '); return `${good.indexOf(Number(piece))} ${part === 'A' ? 0 : 1}`; })); // prettier-ignore
      const most = mostServed(open.map(({ part }) => runsOf(part)), good.length, used); // prettier-ignore
      expect(found.assigned.length).toBe(kept.filter((piece) => piece !== undefined).length + most);
      const seen = new Set<string>();
      for (const { channel: place, serial } of found.assigned) {
        expect(good.map((i) => `S${i}`)).toContain(serial);
        for (const run of runsOf(rows[place]!.part)) {
          expect(seen.has(`${serial} ${run}`)).toBe(false);
          seen.add(`${serial} ${run}`);
        }
      }
    }),
    { numRuns: Number(process.env['PIECE_CASES'] ?? 60), seed: 4 },
  );
});
