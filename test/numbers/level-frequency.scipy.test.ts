import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { settlingTime } from '../../src/core/frequency/corner';
import { polesLimit } from '../../src/core/frequency/poles';
import { pulseError } from '../../src/core/frequency/pulse';
import { pulseOvershoot } from '../../src/core/frequency/pulse-resonance';
import { twoBodyResonance } from '../../src/core/frequency/resonance';
import { usableSpan, type SpanQuery } from '../../src/core/frequency/span';
import { bandNoise } from '../../src/core/level/noise';
import { tableArea } from '../../src/core/level/spectrum';
import { shareOutside } from '../../src/core/level/statistics';

// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Inputs = any;
interface Case {
  readonly kind: string;
  readonly inputs: Inputs;
  readonly expected: number;
  readonly relative: number;
}

const computeCases = (): readonly Case[] => {
  const run = spawnSync('python3', [join(__dirname, 'level_frequency.py')], { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (run.error) throw new Error(`python3 with numpy and scipy is needed: ${run.error.message}`);
  if (run.status !== 0) throw new Error(`python3 with numpy and scipy is needed:\n${run.stderr}`);
  return JSON.parse(run.stdout);
};

const spanEnd = (query: SpanQuery, end: 'low' | 'high'): number => {
  const span = usableSpan(query);
  if (!span) throw new Error('the span is empty');
  return span[end];
};

const CALLS: Readonly<Record<string, (inputs: Inputs) => number>> = {
  'table area': ({ x, y, low, high }) => tableArea({ x, y }, 1, low, high),
  'band noise': ({ x, y, low, high }) => bandNoise({ x, y }, low, high),
  'span low': (query) => spanEnd(query, 'low'),
  'span high': (query) => spanEnd(query, 'high'),
  'poles limit': ({ corners, loss }) => polesLimit(corners, loss),
  'pulse peak': ({ ratio }) => 1 + pulseError('peak', ratio),
  'pulse undershoot': ({ ratio }) => pulseError('undershoot', ratio),
  'pulse velocity': ({ ratio }) => 1 + pulseError('velocity', ratio),
  'pulse overshoot': ({ product, quality }) => 1 + pulseOvershoot(product, quality),
  settling: ({ corner, step, residue }) => settlingTime(corner, step, residue),
  'two bodies': ({ base, seismic, resonance, stiffness }) => twoBodyResonance(base, seismic, resonance, stiffness),
  'share outside': ({ k }) => shareOutside(k),
};

const cases = computeCases();

describe('level and frequency, against random cases computed with scipy by other routes', () => {
  it('cover every kind, more than a hundred in all', () => {
    expect(cases.length).toBeGreaterThan(200);
    expect([...new Set(cases.map(({ kind }) => kind))].sort()).toEqual(Object.keys(CALLS).sort());
  });

  it.each(Object.keys(CALLS).map((kind) => [kind, cases.filter((one) => one.kind === kind)] as const))(
    '%s agrees within what the method of its case allows',
    (kind, ofKind) => {
      const off = ofKind
        .map((one) => ({ ...one, actual: CALLS[kind]!(one.inputs) }))
        .filter(({ actual, expected, relative }) => !(Math.abs(actual - expected) <= relative * Math.abs(expected)));
      expect(off).toEqual([]);
    },
  );
});
