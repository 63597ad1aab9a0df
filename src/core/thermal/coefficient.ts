/** Deviation of a linear response, a fraction: α·(T − T_cal). */
export const linearDeviation = (perKelvin: number, temperature: number, calibrationTemperature: number): number =>
  perKelvin * (temperature - calibrationTemperature);

/** Slope in 1/K that a deviation at one temperature would have if it were linear. One point is no curve. */
export const impliedCoefficient = (deviation: number, temperature: number, calibrationTemperature: number): number =>
  deviation / (temperature - calibrationTemperature);

/** Largest coefficient in 1/K, either sign, that keeps a tolerance (fraction) over low..high. */
export const allowedCoefficient = (
  tolerance: number,
  low: number,
  high: number,
  calibrationTemperature: number,
): number => tolerance / Math.max(Math.abs(low - calibrationTemperature), Math.abs(high - calibrationTemperature));

/** The same when the reading is scaled to the middle of its band: inverse of halfBand for a signed coefficient. */
export const allowedCoefficientScaled = (
  tolerance: number,
  low: number,
  high: number,
  calibrationTemperature: number,
  sign: 1 | -1,
): number => {
  const middleShift = sign * tolerance * (low + high - 2 * calibrationTemperature);
  const span = high - low - middleShift;
  return span > 0 ? (2 * tolerance) / span : Infinity;
};

/** What a corrected reading can still be wrong by, a fraction: slope (1/K) times the temperature's uncertainty (K). */
export const correctionResidual = (slope: number, temperatureUncertainty: number): number =>
  Math.abs(slope) * temperatureUncertainty;

/** 20·log10(1 + δ). */
export const deviationInDecibel = (deviation: number): number => (20 / Math.LN10) * Math.log1p(deviation);
export const deviationOfDecibel = (decibel: number): number => Math.expm1((decibel * Math.LN10) / 20);
