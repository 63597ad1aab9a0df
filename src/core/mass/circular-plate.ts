import { newtonRoot } from './beam-modes';

/** Σ (∓1)^k (x/2)^(2k+n)/(k!(k+n)!): Bessel J_n (sign −1) and modified Bessel I_n (sign +1), n = 0 or 1. */
const bessel = (order: 0 | 1, sign: 1 | -1, x: number): number => {
  const square = (sign * x * x) / 4;
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; Math.abs(term) > Number.EPSILON * Math.abs(sum) || k < x; k++) {
    term *= square / (k * (k + order));
    sum += term;
  }
  return sum;
};

/** The alternating series loses digits with the argument; up to this mode nine or more stay. */
export const LAST_CIRCULAR_MODE = 5;

/**
 * Root λ of the clamped circular plate's modes without nodal diameters: J₀(λ)·I₁(λ) + I₀(λ)·J₁(λ) = 0; the frequency
 * goes with λ² (Blevins' tables list 10.2158 for the first).
 */
export const clampedCircularRoot = (mode: number): number =>
  newtonRoot(mode * Math.PI, (x) => {
    const [j0, j1, i0, i1] = [bessel(0, -1, x), bessel(1, -1, x), bessel(0, 1, x), bessel(1, 1, x)];
    return [j0 + (i0 * j1) / i1, -j1 + (i0 * j0) / i1 + j1 * (1 - (i0 / i1) ** 2)];
  });

/** Mode shape over r/R, scaled so that its mean square over the plate is 1; unscaled that mean is 2·J₀(λ)². */
export const clampedCircularShape = (mode: number): ((radius: number) => number) => {
  const root = clampedCircularRoot(mode);
  const rim = bessel(0, -1, root);
  const ratio = rim / bessel(0, 1, root);
  return (radius) =>
    (bessel(0, -1, root * radius) - ratio * bessel(0, 1, root * radius)) / (Math.SQRT2 * Math.abs(rim));
};

/** Modal mass over the plate's mass when the shape is 1 at r/R. */
export const clampedCircularModalMassShare = (mode: number, radius: number): number =>
  1 / clampedCircularShape(mode)(radius) ** 2;
