/** Natural frequency in Hz of a mass (kg) on a stiffness (N/m). */
export const naturalFrequency = (stiffness: number, mass: number): number =>
  Math.sqrt(stiffness / mass) / (2 * Math.PI);

/**
 * Mounted resonance in Hz of a sensor (own resonance in Hz, mass in kg) on a joint of axial stiffness (N/m):
 * 1/f² = 1/f_sensor² + 1/f_mount². Without a stiffness the sensor's own resonance holds.
 * Source: Dunkerley's bound (from memory). Reads low, by up to about 13 % in the two-body examples of the tests.
 */
export const mountedResonance = (sensorResonance: number, mass: number, stiffness?: number): number => {
  if (stiffness === undefined) return sensorResonance;
  const mount = naturalFrequency(stiffness, mass);
  return 1 / Math.sqrt(1 / (sensorResonance * sensorResonance) + 1 / (mount * mount));
};

/** Joint stiffness in N/m at which mountedResonance gives the wanted value; the sensor's own must lie above it. */
export const stiffnessNeeded = (wanted: number, sensorResonance: number, mass: number): number => {
  const mountSquared = 1 / (1 / (wanted * wanted) - 1 / (sensorResonance * sensorResonance));
  return mass * 4 * Math.PI * Math.PI * mountSquared;
};

/** Sensor's own resonance in Hz at which mountedResonance gives the wanted value; Infinity when the joint is too soft. */
export const sensorResonanceNeeded = (wanted: number, mass: number, stiffness?: number): number => {
  if (stiffness === undefined) return wanted;
  const mount = naturalFrequency(stiffness, mass);
  return wanted < mount ? 1 / Math.sqrt(1 / (wanted * wanted) - 1 / (mount * mount)) : Infinity;
};

/**
 * Lower natural frequency in Hz of a base (kg) on a joint (N/m) that carries a seismic mass (kg), whose frequency on a
 * fixed base is the sensor's own resonance. Source: two-body eigenvalue problem, λ = (2πf)².
 */
export const twoBodyResonance = (base: number, seismic: number, sensorResonance: number, stiffness: number): number => {
  const spring = seismic * (2 * Math.PI * sensorResonance) ** 2;
  const half = ((stiffness + spring) / base + spring / seismic) / 2;
  const product = (stiffness * spring) / (base * seismic);
  // The smaller root of λ² − 2·half·λ + product, without cancellation.
  return Math.sqrt(product / (half + Math.sqrt(half * half - product))) / (2 * Math.PI);
};

/** Axial stiffness in N/m of a thin layer: modulus (Pa), area (m²), thickness (m). Source: Hooke, k = E·A/t. */
export const layerStiffness = (modulus: number, area: number, thickness: number): number =>
  (modulus * area) / thickness;

/**
 * f/f_r at which a resonance alone has changed by a fraction from its value at low frequency:
 * risen when it is lightly damped, fallen when it never rises so far. Q may be Infinity.
 */
export const frequencyOverResonance = (tolerance: number, qualityFactor: number): number => {
  const b = 1 - 1 / (2 * qualityFactor * qualityFactor);
  const rise = b * b - 1 + 1 / (1 + tolerance) ** 2;
  if (b > 0 && rise >= 0) return Math.sqrt(b - Math.sqrt(rise));
  return Math.sqrt(b + Math.sqrt(b * b - 1 + 1 / (1 - tolerance) ** 2));
};
