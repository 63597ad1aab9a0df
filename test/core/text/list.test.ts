import { readList } from '../../../src/core/text/list';

describe('a list in one cell', () => {
  it.each<[string, number[]]>([
    ['0.16; 0.5 Hz', [0.16, 0.5]],
    ['0,16; 0,5', [0.16, 0.5]],
    ['0.16, 0.5', [0.16, 0.5]],
    ['0.5', [0.5]],
    ['100 mHz; 1 kHz', [0.1, 1000]],
    ['none', []],
    ['DC', []],
    ['–', []],
    ['-', []],
  ])('%s', (text, expected) => {
    expect(readList(text, 'Hz')).toEqual({ ok: true, value: expected });
  });

  it('asks which unit a bare number beside another unit has', () => {
    expect(readList('100; 5 kHz', 'Hz')).toEqual({
      ok: false,
      problem: { code: 'ambiguous', given: '100; 5 kHz', readings: ['100 Hz', '100 kHz'] },
    });
  });

  it.each(['n/a', '?', ';;', '0.5; x'])('refuses %j', (text) => {
    expect(readList(text, 'Hz')).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
  });
});
