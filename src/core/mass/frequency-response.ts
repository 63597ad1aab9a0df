import { complex, plus, reciprocal, scaled, times, type Complex } from './complex';

/** What a measured driving-point or transfer response is: a motion over a force, or a force over a motion. */
export const RESPONSE_QUANTITIES = [
  'accelerance',
  'mobility',
  'receptance',
  'free mass',
  'impedance',
  'dynamic stiffness',
] as const;
export type ResponseQuantity = (typeof RESPONSE_QUANTITIES)[number];

/** Power of jω that turns the motion of the quantity into an acceleration. */
const ORDER: Record<ResponseQuantity, 0 | 1 | 2> = {
  accelerance: 0,
  mobility: 1,
  receptance: 2,
  'free mass': 0,
  impedance: 1,
  'dynamic stiffness': 2,
};
const isForceOverMotion = (quantity: ResponseQuantity): boolean =>
  quantity === 'free mass' || quantity === 'impedance' || quantity === 'dynamic stiffness';

const derivation = (quantity: ResponseQuantity, frequency: number): Complex => {
  const omega = 2 * Math.PI * frequency;
  return [complex(1), complex(0, omega), complex(-(omega ** 2))][ORDER[quantity]]!;
};

/** Accelerance in (m/s²)/N from another quantity in SI: A = jω·Y = −ω²·H, and the reciprocal of F/a. */
export const accelerance = (value: Complex, quantity: ResponseQuantity, frequency: number): Complex =>
  times(isForceOverMotion(quantity) ? reciprocal(value) : value, derivation(quantity, frequency));

/** The quantity in SI from an accelerance. */
export const fromAccelerance = (value: Complex, quantity: ResponseQuantity, frequency: number): Complex => {
  const motion = times(value, reciprocal(derivation(quantity, frequency)));
  return isForceOverMotion(quantity) ? reciprocal(motion) : motion;
};

/** Lines of a response with rising frequencies in Hz. */
export interface FrequencyResponse {
  readonly frequency: readonly number[];
  readonly accelerance: readonly Complex[];
}

/** Value at a frequency inside the lines: real and imaginary part straight between neighbours. */
export const responseAt = (response: FrequencyResponse, frequency: number): Complex => {
  const { frequency: lines, accelerance: values } = response;
  const above = Math.max(
    1,
    lines.findIndex((line) => line >= frequency),
  );
  const [low, high] = [values[above - 1]!, values[above] ?? values[above - 1]!];
  const width = (lines[above] ?? lines[above - 1]!) - lines[above - 1]!;
  const share = width === 0 ? 0 : (frequency - lines[above - 1]!) / width;
  return plus(scaled(low, 1 - share), scaled(high, share));
};

/** Every measured line within low..high and both ends. */
export const responseWithin = (response: FrequencyResponse, low: number, high: number): Complex[] => [
  responseAt(response, low),
  ...response.accelerance.filter((_, i) => response.frequency[i]! > low && response.frequency[i]! < high),
  responseAt(response, high),
];
