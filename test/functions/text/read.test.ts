import { callFunction } from '../../../src/engine/call';
import type { Cell } from '../../../src/functions/define';
import { read } from '../../../src/functions/text/read';

const call = (...cells: Cell[]) => callFunction(read, cells);

describe('READ', () => {
  it('passes numbers through and takes a bare number as the stated unit', () => {
    expect(call(7, 'kHz')).toEqual({ ok: true, value: 7 });
    expect(call('7', 'kHz')).toEqual({ ok: true, value: 7 });
    expect(call('7 Hz', 'kHz')).toEqual({ ok: true, value: 0.007 });
  });

  it('lets the text decide what a stated g or mg means', () => {
    expect(call('0.02 oz', 'mg')).toMatchObject({ ok: true, value: expect.closeTo(566.9904625, 6) });
    expect(call('9.80665 m/s²', 'mg')).toMatchObject({ ok: true, value: expect.closeTo(1000, 9) });
    expect(call('7 g', 'mg')).toMatchObject({ ok: true, value: expect.closeTo(7000, 9) });
  });

  it('says both readings where K may be a temperature or a difference', () => {
    // 5 °F is 258.15 K as a temperature, 2.78 K as a difference.
    expect(call('5 °F', 'K')).toMatchObject({ ok: false, issue: { code: 'ambiguous', arg: 'text' } });
  });

  it.each<[Cell, string, string]>([
    ['10-32', 'Hz', 'not-a-number'],
    ['3 dB', 'g', 'wrong-unit'],
    ['5 Hz', 'g', 'wrong-unit'],
    ['1,250', 'Hz', 'ambiguous'],
    [null, 'Hz', 'missing'],
    [{ error: '#N/A' }, 'Hz', 'cell-error'],
    [true, 'Hz', 'not-a-number'],
  ])('refuses %j in %s', (cell, unit, code) => {
    expect(call(cell, unit)).toMatchObject({ ok: false, issue: { code, arg: 'text' } });
  });

  it('refuses a unit it does not know', () => {
    expect(call('5', 'parsnip')).toMatchObject({ ok: false, issue: { code: 'unknown-choice', arg: 'unit' } });
  });

  it('takes 1,250 by the decimal mark given', () => {
    expect(call('1,250', 'Hz', ',')).toEqual({ ok: true, value: 1.25 });
    expect(call('1,250', 'Hz', '.')).toEqual({ ok: true, value: 1250 });
  });
});
