import fc from 'fast-check';
import { callFunction } from '../../../src/engine/call';
import type { Argument } from '../../../src/engine/arguments';
import { VERDICTS } from '../../../src/core/verdict';
import { reason } from '../../../src/functions/verdict/reason';

const PASSING: readonly Argument[] = ['PASS', 48, 10, 'PASS', 0.02, 540, 'PASS', -2.8, 0.2, 'PASS', 0.18, 200, 0.2, 50];
const text = (change: Readonly<Record<number, Argument>> = {}): string => {
  const args = [...PASSING, 20, 3.5, 0.1, 5, null].map((arg, i) => (i in change ? change[i]! : arg));
  const result = callFunction(reason, args);
  if (!result.ok) throw new Error(JSON.stringify(result.issue));
  return String(result.value);
};

describe('REASON', () => {
  it('puts failures before gaps and gaps before warnings', () => {
    const given = text({ 0: 'WARN', 1: 13, 3: 'INCOMPLETE', 4: null, 6: 'FAIL', 8: 12.65, 7: -1.39 });
    expect(given).toBe(
      'Thermal deviation −1.39 to +12.7 %, limit ±5 %: even corrected to its middle it keeps ±6.65 %; a steadier sensing element would help. ' +
        'Not known: mass ratio. ' +
        'Signal to noise 13 dB, limit 20 dB.',
    );
  });

  it('tells the ends of the span that miss the band', () => {
    expect(text({ 9: 'FAIL', 10: 1.609 })).toBe('Span begins at 1.61 Hz, band at 0.2 Hz.');
    expect(text({ 9: 'WARN', 13: 300 })).toBe('Span ends at 200 Hz, band at 300 Hz.');
    expect(text({ 9: 'FAIL', 10: { error: '#NUM!' }, 11: { error: '#NUM!' } })).toMatch(/^No span is left/);
  });

  it('says when no sensor fits at all', () => {
    expect(text({ 3: 'FAIL', 4: 1.66, 5: -0.18 })).toContain('mount and cable alone are too heavy');
  });

  it('does not invent a cause for a failure that no number shows', () => {
    expect(text({ 0: 'FAIL' })).toContain('does the sensor’s output fit the input?');
    expect(text({ 6: 'FAIL', 7: { error: '#N/A' }, 8: { error: '#N/A' } })).toContain(
      'a temperature lies outside an operating limit',
    );
  });

  it('tells the cause that follows a verdict, beside what the numbers say, and only where the verdict needs one', () => {
    const cause = 'charge output on an IEPE input';
    expect(text({ 0: `FAIL ${cause}.` })).toBe(`${cause}.`);
    expect(text({ 0: `FAIL ${cause}.`, 2: -1 })).toBe(`${cause}. Headroom −1 dB, limit 3.5 dB.`);
    expect(text({ 0: `PASS ${cause}.` })).toBe('–');
    expect(text({ 0: 'FAIL –' })).toBe(text({ 0: 'FAIL' }));
    expect(text({ 0: ' –', 1: null })).toBe('Not known: signal to noise.');
  });

  it('repeats the names that it is given, from any of its last arguments', () => {
    const args: Argument[] = [...PASSING, 20, 3.5, 0.1, 5, 'Local mass', [['', 'Range'], [null, { error: '#N/A' }]]]; // prettier-ignore
    args[3] = 'INCOMPLETE';
    expect(callFunction(reason, args)).toEqual({ ok: true, value: 'Not known: Local mass, Range.' });
  });

  it('says nothing of gaps in a row that passes without them', () => {
    expect(text({ 18: 'Capacitance' })).toBe('–');
  });

  it('is a dash for four passes, and for nothing else, whatever the numbers are', () => {
    const cell = fc.oneof(
      fc.constantFrom<Argument>(null, '', 'tbd', { error: '#N/A' }),
      fc.double({ min: -100, max: 1e5, noNaN: true }),
    );
    const verdict = fc.constantFrom<Argument>(...VERDICTS, null, { error: '#VALUE!' });
    fc.assert(
      fc.property(
        fc.array(verdict, { minLength: 4, maxLength: 4 }),
        fc.array(cell, { minLength: 10, maxLength: 10 }),
        (verdicts, cells) => {
          const change = Object.fromEntries([0, 3, 6, 9].map((at, i) => [at, verdicts[i]!]));
          const numbers = [1, 2, 4, 5, 7, 8, 10, 11, 12, 13];
          const given = text({ ...change, ...Object.fromEntries(numbers.map((at, i) => [at, cells[i]!])) });
          expect(given === '–').toBe(verdicts.every((one) => one === 'PASS'));
          expect(given).not.toMatch(/NaN|undefined|Infinity/);
        },
      ),
    );
  });
});
