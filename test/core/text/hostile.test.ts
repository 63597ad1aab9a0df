import fc from 'fast-check';
import { readCurve } from '../../../src/core/text/curve';
import { readList } from '../../../src/core/text/list';
import { readQuantity } from '../../../src/core/text/quantity';
import { readRange } from '../../../src/core/text/range';
import type { Read } from '../../../src/core/issue';
import type { UnitId } from '../../../src/core/units';
import { HOSTILE_PIECES, longText } from '../../fixtures/hostile-texts';

const SEEDS = [
  '±65 g pk',
  '0.8 mg',
  '300 µg/√Hz',
  '10.2 mV/(m/s²)',
  '1 pC/(m/s²)',
  '7gr?',
  '-54..+121 °C',
  '-65 to 250 °F',
  '−40–85',
  '0.03 %/°F',
  '2 Hz - 5 kHz (±5%)',
  '0.5-10k',
  '(m/s²)²/Hz',
  '60 dB re 1e-6 m/s²',
  '18 in-lb',
  '1/4-28',
  'M5x0.8',
  '1.234,5',
  '20:0.026; 50:0.16 | 1k:3',
];
const PIECES = [
  ...'0123456789.,-+±/*^()[]%°√µ²⁻¹ ;:|~…–†?\'"eEkMmgGHzVCFKs',
  'rms',
  'pk',
  ' to ',
  '..',
  ' re ',
  'rt',
  'sqrt(',
];
const FIELDS: readonly UnitId[] = ['g', 'gram', 'Hz', '°C', '%', 'mV/g', 'µg/√Hz', 'N·m', '%/K', '1', 'dB', 's'];

/** A seed with pieces cut out, put in and doubled. */
const mutant = fc
  .tuple(
    fc.constantFrom(...SEEDS),
    fc.array(fc.tuple(fc.nat(40), fc.nat(3), fc.constantFrom('', ...PIECES)), { maxLength: 4 }),
  )
  .map(([seed, edits]) =>
    edits.reduce((text, [at, cut, piece]) => text.slice(0, at) + piece + text.slice(at + cut), seed),
  );
const soup = fc.array(fc.constantFrom(...PIECES), { maxLength: 24 }).map((pieces) => pieces.join(''));
const anything = fc.oneof(
  { weight: 5, arbitrary: mutant },
  { weight: 4, arbitrary: soup },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);

const isSound = <T>(reading: Read<T>, numbers: (value: T) => readonly number[]): boolean =>
  reading.ok ? numbers(reading.value).every(Number.isFinite) : reading.problem.code.length > 0;

describe('whatever is typed', () => {
  it('gives finite numbers or a problem, and never throws', () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(...FIELDS), (text, unit) => {
        const range = readRange(text, unit);
        if (range.ok && range.value.low > range.value.high) return false;
        return (
          isSound(readQuantity(text, unit), ({ si }) => [si]) &&
          isSound(range, ({ low, high }) => [low, high]) &&
          isSound(readCurve(text, 'Hz', unit), ({ x, y }) => [...x, ...y]) &&
          isSound(readList(text, unit), (values) => values)
        );
      }),
      { numRuns: Number(process.env.TEXT_RUNS ?? 30_000) },
    );
  });

  // Two fields of different quantity can both accept a text only if it names no unit, or one whose letter the field decides,
  // or a share of one, which is a fraction and a ratio.
  it('never takes a unit of another quantity', () => {
    const decidedByField = /[gGCF]|lb|oz|°|deg|^[kKM]$|^[%‰]/i;
    fc.assert(
      fc.property(anything, fc.constantFrom(...FIELDS), fc.constantFrom(...FIELDS), (text, one, other) => {
        if (one === other) return true;
        const first = readQuantity(text, one);
        const second = readQuantity(text, other);
        if (!first.ok || !second.ok) return true;
        const unitText = first.value.unitText;
        return unitText === undefined || decidedByField.test(unitText) || text.toUpperCase() === 'DC';
      }),
      { numRuns: Number(process.env.TEXT_RUNS ?? 70_000) },
    );
  });
});

describe('a hostile text of 4,096 characters', () => {
  it.each(HOSTILE_PIECES)('of %j is answered with numbers or a problem', (piece) => {
    const text = longText(piece, 4096);
    for (const unit of ['g', '°C', 'Hz'] as const) {
      expect(isSound(readQuantity(text, unit), ({ si }) => [si])).toBe(true);
      expect(isSound(readRange(text, unit), ({ low, high }) => [low, high])).toBe(true);
      expect(isSound(readCurve(text, 'Hz', unit), ({ x, y }) => [...x, ...y])).toBe(true);
      expect(isSound(readList(text, unit), (values) => values)).toBe(true);
    }
  });

  it('is refused at once when longer', () => {
    expect(readQuantity('1'.repeat(4097), 'g')).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
    expect(readRange(`1..${' '.repeat(5000)}2`, 'g').ok).toBe(false);
    expect(readCurve('1:1;'.repeat(2000), 'Hz', '%')).toMatchObject({ ok: false, problem: { code: 'bad-curve' } });
  });
});
