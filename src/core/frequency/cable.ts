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

/** Largest peak in V that the current still drives into a capacitance (F) at a frequency in Hz. */
export const peakVoltageAllowed = (
  supplyCurrent: number,
  sensorCurrent: number,
  capacitance: number,
  frequency: number,
): number => Math.max(0, supplyCurrent - sensorCurrent) / (2 * Math.PI * capacitance * frequency);

/** Supply current in A that drives a cable (F) at a frequency and peak (V), with what the sensor keeps (A). */
export const currentNeeded = (frequency: number, sensorCurrent: number, capacitance: number, peakVoltage: number) =>
  2 * Math.PI * frequency * capacitance * peakVoltage + sensorCurrent;

/** Largest cable capacitance in F that the current still drives at a frequency and peak (V). */
export const cableCapacitanceAllowed = (
  supplyCurrent: number,
  sensorCurrent: number,
  frequency: number,
  peakVoltage: number,
): number => (supplyCurrent - sensorCurrent) / (2 * Math.PI * frequency * peakVoltage);

/** Fraction of sensitivity a charge amplifier of finite open-loop gain loses to the capacitance (F) at its input. */
export const chargeCableLoss = (inputCapacitance: number, openLoopGain: number, feedbackCapacitance: number): number =>
  inputCapacitance / (openLoopGain * feedbackCapacitance);

/** Corner in Hz of the low-pass that a series resistance (Ω) makes with a cable (F). */
export const seriesCorner = (resistance: number, capacitance: number): number =>
  1 / (2 * Math.PI * resistance * capacitance);
