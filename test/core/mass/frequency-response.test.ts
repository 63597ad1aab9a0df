import fc from 'fast-check';
import { complex, minus, modulus, type Complex } from '../../../src/core/mass/complex';
import {
  accelerance,
  fromAccelerance,
  RESPONSE_QUANTITIES,
  responseAt,
  responseWithin,
} from '../../../src/core/mass/frequency-response';

const part = fc.double({ min: 0.01, max: 100, noNaN: true });
const isClose = (a: Complex, b: Complex) => modulus(minus(a, b)) <= 1e-9 * (1 + modulus(b));

describe('a measured response', () => {
  it('comes back from an accelerance as the quantity it was', () => {
    fc.assert(
      fc.property(part, part, part, fc.constantFrom(...RESPONSE_QUANTITIES), (re, im, frequency, quantity) => {
        const value = complex(re, im);
        return isClose(fromAccelerance(accelerance(value, quantity, frequency), quantity, frequency), value);
      }),
    );
  });
  it('of a free mass of 2 kg reads ½ (m/s²)/N in every quantity', () => {
    const omega = 2 * Math.PI * 50;
    const readings = [
      accelerance(complex(2), 'free mass', 50),
      accelerance(complex(0, -1 / (2 * omega)), 'mobility', 50),
      accelerance(complex(-1 / (2 * omega ** 2)), 'receptance', 50),
      accelerance(complex(0, 2 * omega), 'impedance', 50),
      accelerance(complex(-2 * omega ** 2), 'dynamic stiffness', 50),
    ];
    for (const reading of readings) expect(isClose(reading, complex(0.5))).toBe(true);
  });
  it('is the measured value on a line and lies between neighbours elsewhere', () => {
    const response = { frequency: [10, 20, 40], accelerance: [complex(1, 0), complex(3, -2), complex(5, 8)] };
    expect(responseAt(response, 20)).toEqual(complex(3, -2));
    expect(responseAt(response, 30)).toEqual(complex(4, 3));
    expect(responseAt({ frequency: [10], accelerance: [complex(1, 2)] }, 10)).toEqual(complex(1, 2));
    expect(responseWithin(response, 10, 40)).toHaveLength(3);
    expect(responseWithin(response, 15, 30)).toEqual([complex(2, -1), complex(3, -2), complex(4, 3)]);
  });
});
