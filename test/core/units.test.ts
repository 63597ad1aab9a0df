import { UNITS, fromSi, toSi, type UnitId } from '../../src/core/units';
import { plainText } from '../../src/core/text/characters';
import { unitFactor } from '../../src/core/text/unit-factor';

// Exact definitions: standard gravity (3rd CGPM 1901) and SI prefixes; angle by π/180; minute 60 s. Written out digit by digit.
const DEFINED: Partial<Record<UnitId, number>> = {
  '%': 0.01,
  g: 9.80665,
  'µg/√Hz': 0.00000980665,
  'g²/Hz': 96.1703842225,
  'mV/g': 0.000101971621297792824,
  'pC/g': 1.01971621297792824e-13,
  'mV/pC': 1_000_000_000,
  'mg/K': 0.00980665,
  gram: 0.001,
  ms: 0.001,
  '%/K': 0.01,
  mA: 0.001,
  pF: 0.000000000001,
  'pF/m': 0.000000000001,
  'nV/√Hz': 0.000000001,
  GPa: 1_000_000_000,
  mm: 0.001,
  'mm²': 0.000001,
  'mm/s': 0.001,
  deg: 0.01745329251994329577,
  'gram/m': 0.001,
  'K/min': 0.01666666666666666667,
  mW: 0.001,
  kPa: 1000,
  MΩ: 1_000_000,
  µε: 0.000001,
  'mg/µε': 9806.65,
};
const ids = Object.keys(UNITS) as UnitId[];

describe('the documented units', () => {
  it.each(ids)('%s has the factor of its definition', (id) => {
    expect(UNITS[id].toSi / (DEFINED[id] ?? 1)).toBeCloseTo(1, 14);
  });

  it('a unit that is not 1 in SI is listed above', () => {
    expect(ids.filter((id) => UNITS[id].toSi !== 1 && !(id in DEFINED))).toEqual([]);
  });

  it.each(ids)('%s there and back is the same number', (id) => {
    expect(fromSi(toSi(3.7, id), id)).toBeCloseTo(3.7, 14);
  });

  // A second route: the unit algebra takes the label apart and multiplies its own base units.
  it.each(ids.filter((id) => id !== '1'))('%s agrees with its label taken apart', (id) => {
    const { label, quantity, toSi: factor } = UNITS[id];
    const found = unitFactor(plainText(label), quantity);
    expect(found.kind === 'factor' ? found.toSi / factor : found).toBeCloseTo(1, 12);
  });
});
