import { readQuantity, type QuantityReading } from '../../../src/core/text/quantity';
import type { UnitId } from '../../../src/core/units';

const value = (text: string, unit: UnitId, decimal?: '.' | ','): QuantityReading => {
  const reading = readQuantity(text, unit, { decimal });
  if (!reading.ok) throw new Error(`${text}: ${JSON.stringify(reading.problem)}`);
  return reading.value;
};
const problem = (text: string, unit: UnitId) => {
  const reading = readQuantity(text, unit);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value.si}`);
  return reading.problem;
};
const relative = (got: number, want: number): number => Math.abs(got - want) / Math.abs(want);

// Expected numbers by hand from exact definitions: standard gravity 9.80665 m/s², inch 25.4 mm, pound 0.45359237 kg.
it('takes a tolerance between the number and its unit', () => {
  for (const text of ['0.8 ±5 % kHz', '0,8 ± 5 % kHz', '0.8 kHz ±5 %'])
    expect(readQuantity(text, 'Hz')).toMatchObject({ ok: true, value: { si: 800, tolerance: 0.05 } });
  expect(readQuantity('0.8 mV ±5 % kHz', 'Hz').ok).toBe(false);
});

describe('a quantity as an engineer types it', () => {
  it.each<[string, UnitId, number]>([
    ['±65 g', 'g', 637.43225],
    ['65 g pk', 'g', 637.43225],
    ['+/-65g', 'g', 637.43225],
    ['65 G', 'g', 637.43225],
    ["65 g's", 'g', 637.43225],
    ['65 gn', 'g', 637.43225],
    ['65 g₀', 'g', 637.43225],
    ['0.8 mg', 'g', 7.84532e-3],
    ['0.8 mG', 'g', 7.84532e-3],
    ['800 µg', 'g', 7.84532e-3],
    ['800 ug', 'g', 7.84532e-3],
    ['0.8 milli-g', 'g', 7.84532e-3],
    ['0.8 mg', 'gram', 8e-7],
    ['9.80665 m/s²', 'g', 9.80665],
    ['9.80665 m/s^2', 'g', 9.80665],
    ['9.80665 m/s2', 'g', 9.80665],
    ['9.80665 m/s/s', 'g', 9.80665],
    ['9.80665 ms-2', 'g', 9.80665],
    ['9.80665 ms⁻²', 'g', 9.80665],
    ['9.80665 ms²', 'g', 9.80665],
    ['9.80665 m·s⁻²', 'g', 9.80665],
    ['386.088582677 in/s²', 'g', 9.80665],
    ['300 ug/rtHz', 'µg/√Hz', 2.941995e-3],
    ['300 µg/√Hz', 'µg/√Hz', 2.941995e-3],
    ['300 μg/√Hz', 'µg/√Hz', 2.941995e-3],
    ['300 micro-g/rt(Hz)', 'µg/√Hz', 2.941995e-3],
    ['300 ug/sqrt(Hz)', 'µg/√Hz', 2.941995e-3],
    ['300 ug/Hz^0.5', 'µg/√Hz', 2.941995e-3],
    ['300 ug/Hz^(1/2)', 'µg/√Hz', 2.941995e-3],
    ['300 ug/Hz½', 'µg/√Hz', 2.941995e-3],
    ['300 ug/root-Hz', 'µg/√Hz', 2.941995e-3],
    ['300 ug per rtHz', 'µg/√Hz', 2.941995e-3],
    ['2.941995e-3 (m/s²)/√Hz', 'µg/√Hz', 2.941995e-3],
    ['100 mV/g', 'mV/g', 100e-3 / 9.80665],
    ['100 mv/G', 'mV/g', 100e-3 / 9.80665],
    ['0.1 V/g', 'mV/g', 100e-3 / 9.80665],
    ['10.2 mV/(m/s²)', 'mV/g', 0.0102],
    ['10.2 mV/ms-2', 'mV/g', 0.0102],
    ['10.2 mV/ms⁻²', 'mV/g', 0.0102],
    ['10.2 mV/m s⁻²', 'mV/g', 0.0102],
    ['10.2 mV·s²/m', 'mV/g', 0.0102],
    ['9.80665 pC/g', 'pC/g', 1e-12],
    ['1 pC/(m/s²)', 'pC/g', 1e-12],
    ['1 pC/ms-2', 'pC/g', 1e-12],
    ['7 gram', 'gram', 0.007],
    ['7 g', 'gram', 0.007],
    ['7 grams', 'gram', 0.007],
    ['0,007 kg', 'gram', 0.007],
    ['0.02 oz', 'gram', 0.02 * 0.028349523125],
    ['1 lb', 'gram', 0.45359237],
    ['7000 grains', 'gram', 0.45359237],
    ['250 °F', '°C', ((250 - 32) * 5) / 9],
    ['−65 deg F', '°C', ((-65 - 32) * 5) / 9],
    ['85 C', '°C', 85],
    ['85 ℃', '°C', 85],
    ['300 K', '°C', 26.85],
    ['0.03 %/°F', '%/K', 0.00054],
    ['0.03 %/deg F', '%/K', 0.00054],
    ['540 ppm/°C', '%/K', 0.00054],
    ['0.1 g²/Hz', 'g²/Hz', 9.61703842225],
    ['0.1 g2/Hz', 'g²/Hz', 9.61703842225],
    ['1 (m/s²)²/Hz', 'g²/Hz', 1],
    ['1 m²/s³', 'g²/Hz', 1],
    ['60 dB re 1e-6 m/s²', 'g', 1e-3],
    ['60 dB (re 1 µm/s²)', 'g', 1e-3],
    ['-20 dB re 1 g', 'g', 0.980665],
    ['18 in-lb', 'N·m', 2.0337269224971],
    ['18 lbf·in', 'N·m', 2.0337269224971],
    ['5 %', '%', 0.05],
    ['0.5 ‰', '%', 0.0005],
    ['10 %', '1', 0.1],
    ['1E3', 'Hz', 1000],
    ['1.2×10⁻³ kHz', 'Hz', 1.2],
    ['10k', 'Hz', 10_000],
    ['5 kHz', 'Hz', 5000],
    ['5 khz', 'Hz', 5000],
    ['0,5', 'Hz', 0.5],
    ['12,5', 'Hz', 12.5],
    ['1.234,5', 'Hz', 1234.5],
    ['1,234.5', 'Hz', 1234.5],
    ['1 234.5', 'Hz', 1234.5],
    ['1\u2009234.5', 'Hz', 1234.5],
    ["1'234.5", 'Hz', 1234.5],
    ['1,234,567', 'Hz', 1234567],
    ['−5', 'Hz', -5],
    ['5*', 'Hz', 5],
    ['5¹', 'Hz', 5],
    ['5 Hz†', 'Hz', 5],
    ['1 N/µm', 'N/m', 1e6],
    ['1 lbf/in', 'N/m', 4.4482216152605 / 0.0254],
    ['5 mil', 'mm', 0.000127],
    ['0.3 mm', 'mm', 0.0003],
    ['70 GPa', 'GPa', 70e9],
    ['10 Msi', 'GPa', 10e6 * 6894.757293168361],
    ['2.7 g/cm³', 'kg/m³', 2700],
    ['2.7 g/cc', 'kg/m³', 2700],
    ['30 pF/ft', 'pF/m', 30e-12 / 0.3048],
    ['260 Ns/m', 'N·s/m', 260],
    ['11 ms', 's', 0.011],
    ['5 min', 's', 300],
    ['1500 rpm', 'Hz', 25],
    ['10 nV/rtHz', 'nV/√Hz', 1e-8],
    ['0.3 g/K', 'mg/K', 2.941995],
    ['0.8 gram (0.028 oz)', 'gram', 0.0008],
    ['100 mV/g (10.2 mV/(m/s²))', 'mV/g', 100e-3 / 9.80665],
    ['(100 ± 10) mV/g', 'mV/g', 100e-3 / 9.80665],
  ])('%s in a field of %s is %s in SI units', (text, unit, expected) => {
    expect(relative(value(text, unit).si, expected)).toBeLessThan(1e-12);
  });

  it.each<[string, UnitId, Partial<QuantityReading>]>([
    ['65 g pk', 'g', { statistic: 'peak' }],
    ['65 gpk', 'g', { statistic: 'peak' }],
    ['65 g peak', 'g', { statistic: 'peak' }],
    ['65 g (0-pk)', 'g', { statistic: 'peak' }],
    ['0.5 grms', 'g', { statistic: 'rms' }],
    ['0.5 g RMS', 'g', { statistic: 'rms' }],
    ['0.5 g r.m.s.', 'g', { statistic: 'rms' }],
    ['130 g p-p', 'g', { statistic: 'peak-to-peak' }],
    ['130 g pk-pk', 'g', { statistic: 'peak-to-peak' }],
    ['20 mVpp', 'V', { statistic: 'peak-to-peak' }],
    ['±65 g', 'g', { symmetric: true }],
    ['≤ 5', 'Hz', { si: 5, bound: 'at most' }],
    ['< 0.1', 'Hz', { si: 0.1, bound: 'at most' }],
    ['5 gram max', 'gram', { si: 0.005, bound: 'at most' }],
    ['100 mV/g ±10 %', 'mV/g', { tolerance: 0.1 }],
    ['100 ± 10 mV/g', 'mV/g', { tolerance: 0.1 }],
    ['23 ± 3 °C', '°C', { si: 23, assumed: ['± 3 left out'] }],
  ])('%s keeps what was said about the number', (text, unit, expected) => {
    expect(value(text, unit)).toMatchObject(expected);
  });

  it.each<[string, UnitId, string, string]>([
    ['7gr', 'gram', '7 gram', '7 grain'],
    ['7gr?', 'gram', '7 gram', '7 grain'],
    ['1,250', 'Hz', '1.25 Hz', '1250 Hz'],
    ['-1,250 g', 'g', '-1.25 g', '-1250 g'],
    ['100 MV/g', 'mV/g', '100 mV/g', '100 MV/g'],
    ['5 mhz', 'Hz', '5 mHz', '5 MHz'],
    ['60 dB re 1e-6', 'g', 're 0.000001 g', 're 0.000001 in SI units'],
    ['65 g (800 m/s²)', 'g', '65 g', '800 m/s^2'],
    ['65²', 'g', '65, with a footnote mark', '4225'],
  ])('%s is ambiguous and says both readings', (text, unit, one, other) => {
    expect(problem(text, unit)).toEqual({ code: 'ambiguous', given: text, readings: [one, other] });
  });

  it('takes 1,250 as the sheet’s decimal mark says', () => {
    expect(value('1,250', 'Hz', ',').si).toBe(1.25);
    expect(value('1,250', 'Hz', '.').si).toBe(1250);
    expect(value('1.250', 'Hz', ',').si).toBe(1250);
    expect(value('0.250', 'Hz', ',').si).toBe(0.25);
  });

  it.each<[string, UnitId]>([
    ['3 dB', 'g'],
    ['24 dB', 'g'],
    ['3 dB', '%'],
    ['5 %', 'dB'],
    ['5 kg', 'g'],
    ['5 g', 'Hz'],
    ['5 Hz', 'gram'],
    ['5 lbf', 'gram'],
    ['5 °C', '%/K'],
    ['7 g pk', 'gram'],
    ['5 parsnip', 'g'],
    ['5 mV', 'mV/g'],
    ['100 mV/g', 'pC/g'],
    ['20 mK', '°C'],
  ])('%s in a field of %s has the wrong unit', (text, unit) => {
    expect(problem(text, unit)).toMatchObject({ code: 'wrong-unit', given: text });
  });

  it.each([
    '10-32',
    '1/4-28',
    '5-44',
    'M3',
    'M5x0.8',
    'UNF 10-32',
    '10–32',
    '1:30',
    '3/8',
    '5.5.2024',
    '1,23,4',
    '0x1F',
  ])('%s is a name and never a number', (text) => {
    for (const unit of ['g', 'Hz', 'gram', 'mm', '1', '°C'] as const) expect(readQuantity(text, unit).ok).toBe(false);
  });

  it.each(['', ' ', 'n/a', 'tbd', '–', '-', '?', '#N/A', 'g', '±', '1e999', '--5', '5 5', '-54..121'])(
    '%j is not a number',
    (text) => {
      expect(problem(text, 'g')).toMatchObject({ code: 'not-a-number' });
    },
  );
});
