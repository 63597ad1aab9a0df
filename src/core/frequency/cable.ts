/**
 * Highest frequency in Hz at which a constant-current (IEPE) sensor still drives its cable at the given peak:
 * currents in A, capacitance in F, peak in V. 0 when the supply leaves no current for the cable.
 * Source: i = C·du/dt of a sine, i = 2πf·C·V.
 */
export const cableDriveLimit = (
  supplyCurrent: number,
  sensorCurrent: number,
  capacitance: number,
  peakVoltage: number,
): number => Math.max(0, supplyCurrent - sensorCurrent) / (2 * Math.PI * capacitance * peakVoltage);
