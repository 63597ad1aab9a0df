import fc from 'fast-check';
import type { Channel } from '../../../src/plan/model';
import { acrossOf, INPUT, row, TRIAX, UNI } from './rows';

// The order of a list says nothing: sorting it by any column may change neither what is found nor the words for it.
const mounts = [{ name: 'Wax', mass: 0.0002 }, { name: 'Block', mass: 0.06 }, { name: 'Unknown' }];
const cable = { name: 'Thin', mass: 0.0005 };
const pick = <T>(...of: readonly T[]) => fc.constantFrom(...of);
const anyRow = fc.record({
  group: pick(undefined, 'Wing', 'wing ', 'Tail'),
  run: pick(undefined, 'A', 'a', 'B'),
  runStart: pick(undefined, 46_000, 46_003),
  runEnd: pick(undefined, 46_004, 46_006),
  point: pick(undefined, '1', '12', 'P 3', 'p 3'),
  direction: pick(undefined, 'X', '-x', '12Y+', 'Z', '+Z', 'RX'),
  localAxes: pick(undefined, undefined, 'Z90', 'Z30 Y10', '1 0 0 0 1 0 0 0 -1'),
  panel: pick(undefined, undefined, 'P1', 'p1'),
  role: pick(undefined, 'control' as const),
  sensor: pick(undefined, TRIAX, UNI, { ...TRIAX, calibrationDue: 46_002 }),
  sensorAxis: pick(undefined, '1', '2', '3'),
  serial: pick(undefined, '7', '8'),
  calibrationDue: pick(undefined, 46_001, 46_005),
  mount: pick(...mounts),
  input: pick(undefined, { ...INPUT, modules: 1, moduleChannels: 2 }),
  inputChannel: pick(undefined, 'M1', 'm1', 'M2'),
  localMass: pick(undefined, 0.02, 0.3, 5),
  purpose: pick(undefined, 'modal' as const, 'shock' as const),
});

const told = (channels: readonly Channel[]) =>
  acrossOf(channels)
    .map(({ finding, rows }) => JSON.stringify([finding, rows.map((at) => channels[at]!.location).sort()]))
    .sort();

/** One housing's three rows, so that lists hold whole ones too. */
const housing = pick(['+X', '+Y', '-Z'], ['-X', '-Y', '+Z'], ['+X', '-Y', '+Z']).chain(
  (directions) =>
  fc.tuple(...directions.map((direction) => anyRow.map((any) => ({ ...any, sensor: TRIAX, direction, localAxes: undefined, point: '9', group: 'Wing', run: 'A', serial: '9' })))), // prettier-ignore
);

it('a list in another order is told the same', () => {
  const lists = fc
    .tuple(fc.array(anyRow, { minLength: 2, maxLength: 9 }), fc.option(housing, { nil: [] }))
    .map(([rows, more]) =>
      [...rows, ...more].map(
        ({ localMass, purpose, ...given }, i): Channel =>
        row(`c${i % 7}`, { ...given, cable, location: `row ${i}`, requirement: { purpose, detector: { kind: 'band' }, localMass: localMass === undefined ? [] : [{ model: 'value', mass: localMass }] } }), // prettier-ignore
      ),
    )
    .chain((rows) => fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length })));
  const kinds = new Set<string>();
  fc.assert(
    fc.property(lists, ([rows, shuffled]) => {
      for (const { finding } of acrossOf(rows)) kinds.add(finding.check);
      expect(told(shuffled)).toEqual(told(rows));
    }),
    { numRuns: Number(process.env['RULES_CASES'] ?? 800) },
  );
  // Every rule has been at work.
  expect([...kinds].sort()).toEqual(['added masses', 'calibration due', 'control count', 'control verdict', 'handedness', 'housing axes', 'input modules', 'local axes', 'other point', 'overlapping runs', 'same channel', 'same direction', 'same input channel', 'same sensor']); // prettier-ignore
});

it('a triaxial sensor whose rows name different mounts is as heavy as its heaviest row, whichever comes first', () => {
  const axis = (direction: string, mount: (typeof mounts)[number]) =>
    row(direction, { point: '1', direction, sensor: TRIAX, mount, cable, requirement: { detector: { kind: 'band' }, localMass: [{ model: 'value', mass: 5 }] } }); // prettier-ignore
  const rows = [axis('X', mounts[0]!), axis('Y', mounts[1]!), axis('Z', mounts[0]!), row('+', { ...axis('X', mounts[0]!), id: 'u', sensor: UNI })]; // prettier-ignore
  const totals = [rows, [...rows].reverse()].map((of) => acrossOf(of).map(({ finding }) => finding.check === 'added masses' && finding.total)[0]); // prettier-ignore
  // 10 + 60 + 0.5 gram, and 5 + 0.2 + 0.5 gram beside it.
  expect(totals).toEqual([expect.closeTo(0.0762, 12), expect.closeTo(0.0762, 12)]);
});
