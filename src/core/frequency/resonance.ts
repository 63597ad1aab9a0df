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
