import { createUnitClass } from 'mathjs';

/** A unit reduced to a factor and the powers of the base dimensions. */
export interface Reduced {
  factor: number;
  dimensions: readonly number[];
}

export interface UnitClass {
  new (value: number, unit: string): { value: number; dimensions: number[] };
  createUnitSingle(name: string, options?: { definition?: string; prefixes?: 'none' | 'short' }): unknown;
}
declare module 'mathjs' {
  /** Exported by the library, missing from its types. */
  export function createUnitClass(parts: Record<string, unknown>): UnitClass;
}

class Unused {}

/**
 * Built from its own factory with plain arithmetic: a sixth of the size of the ready-made unit function.
 * A namespace import would put the whole library into the bundle.
 */
const buildUnitClass = (): UnitClass => {
  const Unit = createUnitClass({
    config: { number: 'number', predictable: false },
    addScalar: (a: number, b: number) => a + b,
    subtractScalar: (a: number, b: number) => a - b,
    multiplyScalar: (a: number, b: number) => a * b,
    divideScalar: (a: number, b: number) => a / b,
    pow: Math.pow,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a: number, b: number) => a === b,
    isNumeric: (value: unknown) => typeof value === 'number',
    format: String,
    number: Number,
    Complex: Unused,
    BigNumber: Unused,
    Fraction: Unused,
  });
  for (const [name, definition, prefixes] of TRADE_UNITS) Unit.createUnitSingle(name, { definition, prefixes });
  for (const name of ['decibel', 'part', 'strain', 'octave']) Unit.createUnitSingle(name, { prefixes: 'short' });
  for (const [name, definition] of PARTS) Unit.createUnitSingle(name, { definition });
  return Unit;
};

/** Standard gravity (3rd CGPM 1901) and what hangs on it; the inch is 25.4 mm, the pound 0.45359237 kg, all exact. */
const TRADE_UNITS = [
  ['gn', '9.80665 m s^-2', 'short'],
  ['lbfexact', '4.4482216152605 N', 'short'],
  ['ozfexact', '0.27801385095378125 N', 'none'],
  ['psiexact', '6894.757293168361 Pa', 'short'],
  ['stepC', '1 K', 'none'],
  ['stepF', '0.5555555555555556 K', 'none'],
  ['rpm', '0.016666666666666666 Hz', 'none'],
] as const;
/** A share is not a bare number: 5 % must not pass for 5, nor 3 dB for 3. A decade is log2(10) octaves. */
const PARTS = [
  ['tenfold', '3.3219280948873626 octave'],
  ['percent', '0.01 part'],
  ['permille', '0.001 part'],
  ['ppm', '0.000001 part'],
] as const;

let shared: UnitClass | undefined;

/** `product` is a list of known unit names with powers, as in "mV^1 gn^-1". */
export const reduce = (product: string): Reduced => {
  shared ??= buildUnitClass();
  if (product === '') return { factor: 1, dimensions: [] };
  const unit = new shared(1, product);
  return { factor: unit.value, dimensions: unit.dimensions };
};

export const sameDimensions = (a: Reduced, b: Reduced): boolean => {
  const longest = Math.max(a.dimensions.length, b.dimensions.length);
  for (let i = 0; i < longest; i++) {
    if (Math.abs((a.dimensions[i] ?? 0) - (b.dimensions[i] ?? 0)) > 1e-9) return false;
  }
  return true;
};
