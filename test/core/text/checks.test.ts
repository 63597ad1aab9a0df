import checks from '../../fixtures/checks.json';
import { readQuantity } from '../../../src/core/text/quantity';
import { fromSi, type UnitId } from '../../../src/core/units';

// Each published check says number and unit in a key; the text below is how a person would type it, the unit what is asked for.
const TYPED: Record<string, { text: (n: number) => string; field: UnitId; answer: (si: number) => number }> = {
  'D0-01': { text: (n) => `${n} mg`, field: 'g', answer: (si) => si },
  'D0-02': { text: (n) => `${n} mg`, field: 'gram', answer: (si) => si },
  'D8-01': { text: (n) => `${n} mV/g`, field: 'mV/g', answer: (si) => si },
  'D8-02': { text: (n) => `${n} mV/(m/s²)`, field: 'mV/g', answer: (si) => fromSi(si, 'mV/g') },
  'D8-03': { text: (n) => `${n} pC/(m/s²)`, field: 'pC/g', answer: (si) => fromSi(si, 'pC/g') },
  'D8-04': { text: (n) => `±${n} g`, field: 'g', answer: (si) => si },
  'D8-05': { text: (n) => `${n} ug/rtHz`, field: 'µg/√Hz', answer: (si) => si },
  'D8-06': { text: (n) => `${n} oz`, field: 'gram', answer: (si) => fromSi(si, 'gram') },
  'D8-07': { text: (n) => `${n} °F`, field: '°C', answer: (si) => si },
  'D8-08': { text: (n) => `${n} °F`, field: '°C', answer: (si) => si },
  'D8-09': { text: (n) => `${n} %/°F`, field: '%/K', answer: (si) => fromSi(si, '%/K') },
  'D8-11': { text: (n) => `${n} in-lb`, field: 'N·m', answer: (si) => si },
  'D8-12': { text: (n) => `${n} (m/s²)²/Hz`, field: 'g²/Hz', answer: (si) => fromSi(si, 'g²/Hz') },
};
const family = checks.filter((check) => check.function_family === 'text and units');

describe('published checks of texts and units', () => {
  it.each(family.filter(({ id }) => id in TYPED).map((check) => [check.id, check.quantity, check] as const))(
    '%s: %s',
    (id, _quantity, check) => {
      const { text, field, answer } = TYPED[id]!;
      const [given] = Object.values(check.inputs);
      const reading = readQuantity(text(given as number), field);
      expect(reading.ok).toBe(true);
      const got = answer(reading.ok ? reading.value.si : Number.NaN);
      const expected = check.expected as number;
      expect(Math.abs(got / expected - 1)).toBeLessThan((check.tolerance as { relative: number }).relative);
    },
  );

  it('reads the level of 1 g, 139.83 dB re 1e-6 m/s², back as 1 g', () => {
    const level = family.find(({ id }) => id === 'D8-10')!.expected as number;
    const reading = readQuantity(`${level} dB re 1e-6 m/s²`, 'g');
    expect(reading.ok && fromSi(reading.value.si, 'g')).toBeCloseTo(1, 9);
  });

  it('leaves none out', () => {
    expect(family.map(({ id }) => id).filter((id) => !(id in TYPED))).toEqual(['D8-10']);
  });
});
