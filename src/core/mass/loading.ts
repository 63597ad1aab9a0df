import { fromPolar, modulus, argument, reciprocal, type Complex } from './complex';

/** How the structure answers at the point: one mode or a rigid part, a large thin plate, a long beam. */
export const LOADING_MODELS = ['mass', 'plate', 'beam'] as const;
export type LoadingModel = (typeof LOADING_MODELS)[number];

/**
 * Argument of the local (free effective) mass relative to a real mass, rad. A plate's point impedance is real, so its
 * F/a = Z/(jω) lags by 90°; a beam's has the argument 45° (Cremer and Heckl, Structure-Borne Sound, point impedances).
 */
const LOCAL_MASS_LAG: Record<LoadingModel, number> = { mass: 0, plate: Math.PI / 2, beam: Math.PI / 4 };

/** Mass added at the point, kg: sensor, mount hardware and adhesive, effective cable mass. */
export const totalAddedMass = (sensorMass: number, mountMass: number, cableMass: number): number =>
  sensorMass + mountMass + cableMass;

/** Added mass over the modulus of the local mass at the highest frequency of interest. */
export const massRatio = (addedMass: number, localMass: number): number => addedMass / localMass;

/** Loaded over free acceleration at the point, 1/(1 + r·e^{jφ}), φ by model. Force-driven structure, rigid point mass. */
export const loadedOverFree = (ratio: number, model: LoadingModel): Complex => {
  const added = fromPolar(ratio, LOCAL_MASS_LAG[model]);
  return reciprocal({ re: 1 + added.re, im: added.im });
};

/** Change of the level (fraction of 1, negative is a drop) and of its phase (rad, negative is a lag). */
export const levelEffect = (ratio: number, model: LoadingModel): { level: number; phase: number } => {
  const change = loadedOverFree(ratio, model);
  return { level: modulus(change) - 1, phase: argument(change) };
};

/** Change of the natural frequency of one mode as a fraction, (1+r)^−½ − 1. One dominant mode whose shape stays; slightly optimistic. */
export const frequencyShift = (ratio: number): number => 1 / Math.sqrt(1 + ratio) - 1;

/** Ratio that lowers a mode's frequency by `drop` (0 ≤ drop < 1). */
export const ratioForFrequencyDrop = (drop: number): number => 1 / (1 - drop) ** 2 - 1;

/** Ratio that lowers the level by `drop` (0 ≤ drop < 1): positive root of 1 + 2r·cos φ + r² = 1/(1−drop)². */
export const ratioForLevelDrop = (drop: number, model: LoadingModel): number => {
  const half = Math.cos(LOCAL_MASS_LAG[model]);
  return Math.sqrt(half ** 2 + ratioForFrequencyDrop(drop)) - half;
};

/** Heaviest sensor in kg within a mass ratio. Negative: mount and cable alone exceed it, no contact sensor fits. */
export const allowedSensorMass = (
  localMass: number,
  ratioLimit: number,
  mountMass: number,
  cableMass: number,
): number => ratioLimit * localMass - mountMass - cableMass;

/** Smallest local mass in kg that takes the added mass within the ratio. */
export const neededLocalMass = (addedMass: number, ratioLimit: number): number => addedMass / ratioLimit;
