import { readRange, type RangeReading } from '../../../src/core/text/range';
import type { UnitId } from '../../../src/core/units';

const range = (text: string, unit: UnitId): RangeReading => {
  const reading = readRange(text, unit);
  if (!reading.ok) throw new Error(`${text}: ${JSON.stringify(reading.problem)}`);
  return reading.value;
};

describe('a range as an engineer types it', () => {
  it.each<[string, UnitId, number, number]>([
    ['-54..+121 °C', '°C', -54, 121],
    ['−54…121', '°C', -54, 121],
    ['-65 to 250 °F', '°C', ((-65 - 32) * 5) / 9, ((250 - 32) * 5) / 9],
    ['-65 °F - 250 °F', '°C', ((-65 - 32) * 5) / 9, ((250 - 32) * 5) / 9],
    ['−40–85', '°C', -40, 85],
    ['-40--20', '°C', -40, -20],
    ['−40 – −20 °C', '°C', -40, -20],
    ['-40 °C-85 °C', '°C', -40, 85],
    ['-54/+121 °C', '°C', -54, 121],
    ['10 - 20', '°C', 10, 20],
    ['±10', '°C', -10, 10],
    ['23 ± 5 °C', '°C', 18, 28],
    ['+/-65g', 'g', -637.43225, 637.43225],
    ['2 Hz - 5 kHz (±5%)', 'Hz', 2, 5000],
    ['2…5000 Hz ±5 %', 'Hz', 2, 5000],
    ['0.5-10k', 'Hz', 0.5, 10_000],
    ['2 ÷ 5000 Hz', 'Hz', 2, 5000],
    ['DC - 1 kHz', 'Hz', 0, 1000],
    ['0,5–12,5 Hz', 'Hz', 0.5, 12.5],
    ['20 – 2 000 Hz', 'Hz', 20, 2000],
    ['10-20 ms-2', 'g', 10, 20],
    ['10-32 Hz', 'Hz', 10, 32],
    ['121..-54 °C', '°C', -54, 121],
    ['-54 to +121 °C (-65 to +250 °F)', '°C', -54, 121],
    ['-54 °C (-65 °F) to 121 °C (250 °F)', '°C', -54, 121],
    ['(−40…+85) °C', '°C', -40, 85],
    ['20 Hz–2 kHz, ±5 %', 'Hz', 20, 2000],
    ['1e-3..1e-2 V', 'V', 0.001, 0.01],
  ])('%s', (text, unit, low, high) => {
    const got = range(text, unit);
    expect(got.low).toBeCloseTo(low, 10);
    expect(got.high).toBeCloseTo(high, 10);
  });

  it('keeps the tolerance and what was taken for granted', () => {
    expect(range('2 Hz - 5 kHz (±5%)', 'Hz')).toEqual({ low: 2, high: 5000, tolerance: 0.05 });
    expect(range('0.5-10k', 'Hz').assumed).toEqual(['k applies to one end only']);
    expect(range('0.5-10 kHz', 'Hz')).toMatchObject({ low: 500, high: 10_000, assumed: ['both ends in kHz'] });
    expect(range('121..-54 °C', '°C').assumed).toEqual(['ends put in order']);
  });

  it('takes a tolerance in dB by its larger side, +12.2 % for 1 dB', () => {
    // 10^(1/20) = 1.12202, by hand; the lower side is only −10.9 %.
    expect(range('1..5000 Hz ±1 dB', 'Hz').tolerance).toBeCloseTo(0.12202, 5);
  });

  it.each<[string, UnitId]>([
    ['10-32', 'Hz'],
    ['5-44', '°C'],
    ['10 -20', '°C'],
    ['-54 -20', '°C'],
    ['-54 to +121 °C (-65 to +350 °F)', '°C'],
    ['1,250-2,500', 'Hz'],
  ])('%s in %s is ambiguous', (text, unit) => {
    expect(readRange(text, unit)).toMatchObject({ ok: false, problem: { code: 'ambiguous', given: text } });
  });

  it.each(['85', '≤ 85', '1/4-28', 'M5x0.8', '-', 'n/a', '', '1-2-3', '1..2..3', 'a to b', '5 - '])(
    '%j is no range',
    (text) => {
      expect(readRange(text, '°C')).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
    },
  );

  it('refuses ends of another quantity', () => {
    expect(readRange('5 g - 3 Hz', 'g')).toMatchObject({ ok: false, problem: { code: 'wrong-unit' } });
  });
});
