import { reduce } from '../../../src/core/text/unit-algebra';
import { BASES } from '../../../src/core/text/unit-bases';
import { unitFactor } from '../../../src/core/text/unit-factor';
import { UNITS, type QuantityName } from '../../../src/core/units';

// The only quantity each spelling may measure; what g, lb, C and F mean is the field's affair and tested apart.
const MEASURES: Record<string, QuantityName[]> = {
  'm/s^2': ['acceleration'],
  mV: ['voltage'],
  kHz: ['frequency'],
  'mV/(m/s^2)': ['voltage sensitivity'],
  'pC/(m/s^2)': ['charge sensitivity'],
  'mV/pC': ['charge gain'],
  kg: ['mass'],
  gram: ['mass'],
  'kg/m^3': ['density'],
  mm: ['length'],
  'mm^2': ['area'],
  'N/um': ['stiffness'],
  'N*s/m': ['mechanical impedance'],
  lbf: ['force'],
  psi: ['elastic modulus', 'pressure'],
  mA: ['current'],
  pF: ['capacitance'],
  'pF/ft': ['capacitance per length'],
  'nV/rtHz': ['voltage noise density'],
  'mm/s': ['velocity'],
  'in-lb': ['torque'],
  dB: ['level difference'],
  '%': ['fraction', 'ratio'],
  '%/degF': ['temperature coefficient'],
  '(m/s^2)/rtHz': ['acceleration noise density'],
  '(m/s^2)^2/Hz': ['acceleration spectral density'],
  rad: ['angle'],
};
const QUANTITIES = [...new Set(Object.values(UNITS).map(({ quantity }) => quantity))];

describe('a spelled unit', () => {
  it.each(Object.entries(MEASURES))('%s measures %s and nothing else', (text, quantities) => {
    expect(QUANTITIES.filter((quantity) => unitFactor(text, quantity).kind === 'factor').sort()).toEqual(
      [...quantities].sort(),
    );
  });

  it('means by g, lb, oz, C and F what the field measures', () => {
    const factor = (text: string, quantity: QuantityName): number => {
      const found = unitFactor(text, quantity);
      return found.kind === 'factor' ? found.toSi : Number.NaN;
    };
    expect(factor('g', 'acceleration')).toBe(9.80665);
    expect(factor('g', 'mass')).toBe(0.001);
    expect(factor('ug', 'mass')).toBeCloseTo(1e-9, 21);
    expect(factor('lb', 'mass')).toBe(0.45359237);
    expect(factor('lb', 'force')).toBe(4.4482216152605);
    expect(factor('oz*in', 'torque')).toBeCloseTo(0.00706155181422604, 15); // NIST SP 811, from memory
    expect(factor('%/C', 'temperature coefficient')).toBe(0.01);
    expect(factor('pC', 'charge gain')).toBeNaN();
  });

  it('is known to the unit algebra with every prefix it allows', () => {
    for (const { factors, prefixes = '' } of BASES) {
      for (const [name] of factors)
        for (const prefix of ['', ...prefixes]) expect(() => reduce(prefix + name)).not.toThrow();
    }
  });

  it.each(['', '/', 'm/', '(m', 'm)', '((((((m))))))', 'm^', 'm^0', 'm^99', '^2', '*', `${'m'.repeat(61)}`])(
    '%j is no unit',
    (text) => {
      expect(unitFactor(text, 'length').kind).toMatch(/malformed|wrong/);
    },
  );
});
