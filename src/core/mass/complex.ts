/** A complex number in rectangular form; phasors are e^{+jωt}. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const fromPolar = (size: number, angle: number): Complex => ({
  re: size * Math.cos(angle),
  im: size * Math.sin(angle),
});
export const modulus = (z: Complex): number => Math.hypot(z.re, z.im);
export const argument = (z: Complex): number => Math.atan2(z.im, z.re);
export const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const scaled = (z: Complex, factor: number): Complex => ({ re: z.re * factor, im: z.im * factor });
export const reciprocal = (z: Complex): Complex => {
  const square = z.re ** 2 + z.im ** 2;
  return { re: z.re / square, im: -z.im / square };
};
export const over = (a: Complex, b: Complex): Complex => times(a, reciprocal(b));
