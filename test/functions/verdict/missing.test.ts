import { callFunction } from '../../../src/engine/call';
import { missing } from '../../../src/functions/verdict/missing';
import { INPUT_MODES, OUTPUT_MODES } from '../../../src/plan/fields';
import { causeMode } from '../../../src/functions/verdict/cause-mode';
import { verdictMode } from '../../../src/functions/verdict/verdict-mode';
import type { Block, Cell } from '../../../src/functions/define';

const text = (args: (Cell | Block)[]) => {
  const called = callFunction(missing, args);
  return called.ok ? called.value : called.issue.code;
};

describe('MISSING', () => {
  it('names nothing when every cell says something, zero included', () => {
    expect(text(['a; b; c', 0, 'x', false])).toBe('');
  });
  it.each([null, '', ' ', 'n/a', 'tbd', '–', '?'])('counts %j as no information', (cell) => {
    expect(text(['a', cell])).toBe('a');
  });
  it('names what has no cell at all', () => {
    expect(text(['a; b', 1])).toBe('b');
  });
});

describe('VERDICT.MODE', () => {
  it('refuses a mode it does not know and says which it knows', () => {
    expect(callFunction(verdictMode, ['optical', 'IEPE'])).toMatchObject({
      ok: false,
      issue: { code: 'unknown-choice', arg: 'output' },
    });
  });
  it('never passes an unknown pair', () => {
    for (const [output, mode] of [
      [null, null],
      ['IEPE', null],
      [null, 'charge'],
    ] as const)
      expect(callFunction(verdictMode, [output, mode])).toEqual({ ok: true, value: 'INCOMPLETE' });
  });
});

describe('CAUSE.MODE', () => {
  it('has a cause exactly where the verdict is FAIL, and none for what cannot be read', () => {
    for (const output of [...OUTPUT_MODES, null])
      for (const mode of [...INPUT_MODES, null]) {
        const verdict = callFunction(verdictMode, [output, mode]);
        const cause = callFunction(causeMode, [output, mode]);
        if (!verdict.ok || !cause.ok) throw new Error(`${output} ${mode}`);
        expect([output, mode, cause.value === '–']).toEqual([output, mode, verdict.value !== 'FAIL']);
      }
    expect(callFunction(causeMode, [{ error: '#N/A' }, 'IEPE'])).toEqual({ ok: true, value: '–' });
    expect(callFunction(causeMode, ['optical', 'IEPE'])).toEqual({ ok: true, value: '–' });
  });
});
