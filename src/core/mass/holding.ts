/** Default share of the holding force that may be used (common practice, no source). */
export const HOLDING_RESERVE = 3;

/** Inertia force on a mount, N: mass in kg times the root of the squared axial and transverse peaks in m/s². */
export const inertiaForce = (mass: number, peak: number, transversePeak = 0): number =>
  mass * Math.hypot(peak, transversePeak);

/** Highest peak in m/s² that keeps the reserve. */
export const peakForHolding = (holdingForce: number, mass: number, reserve: number): number =>
  holdingForce / (reserve * mass);
