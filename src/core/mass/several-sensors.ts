import { frequencyShift, massRatio } from './loading';

/** Mass ratio of several units on one mode, Σ m_i·φ_i²/M_r; without shapes all sit where φ = 1. */
export const summedMassRatio = (masses: readonly number[], modalMass: number, shapes?: readonly number[]): number =>
  massRatio(
    masses.reduce((sum, mass, i) => sum + mass * (shapes?.[i] ?? 1) ** 2, 0),
    modalMass,
  );

/** Units of one mass, spread evenly over a member of this mass, that keep the summed ratio. */
export const allowedCount = (memberMass: number, ratioLimit: number, unitMass: number): number =>
  Math.floor((ratioLimit * memberMass) / unitMass + COUNT_ROUNDING);
/** A quotient that is whole on paper may fall short of it in binary. */
const COUNT_ROUNDING = 1e-9;

/** Spread of a mode's frequency, a fraction, when a unit roves from a node to an antinode with this mass ratio. */
export const rovingSpread = (ratio: number): number => -frequencyShift(ratio);

/** Level change at the old peak when a lightly damped mode moves: 1/√(1 + (s/ζ)²) − 1, s the relative shift. */
export const peakDrop = (shift: number, dampingRatio: number): number => 1 / Math.hypot(1, shift / dampingRatio) - 1;

/** Relative shift that costs this drop (a fraction) at the old peak. */
export const shiftForPeakDrop = (drop: number, dampingRatio: number): number =>
  dampingRatio * Math.sqrt(1 / (1 - drop) ** 2 - 1);
