import type { Curve } from '../../../src/core/curve';
import { halfBand, thermalBand } from '../../../src/core/thermal/band';
import {
  allowedCoefficient,
  correctionResidual,
  deviationInDecibel,
  impliedCoefficient,
  linearDeviation,
} from '../../../src/core/thermal/coefficient';
import { cornerForRamp, rampError, sensorHeat, zeroOffset } from '../../../src/core/thermal/transient';
import { curveWindow } from '../../../src/core/thermal/window';
import type { Outcome } from '../../../src/core/issue';
import { describeChecks, type Inputs } from '../published-checks';

const PERCENT = 0.01;
const MILLI_GRAVITY = 9.80665e-3;
const PER_MINUTE = 1 / 60;

const curveOf = (given: Inputs): Curve => ({
  x: given.curve_degC_percent.map(([temperature]: number[]) => temperature),
  y: given.curve_degC_percent.map(([, percent]: number[]) => percent! * PERCENT),
});
const valueOf = <T>(result: Outcome<T>): T => {
  if (!result.ok) throw new Error(`unexpected issue: ${result.issue.code}`);
  return result.value;
};
const bandOf = (given: Inputs) =>
  valueOf(thermalBand(curveOf(given), given.low_degC, given.high_degC, given.calibration_degC));
const windowOf = (given: Inputs) =>
  valueOf(curveWindow(curveOf(given), given.tolerance_percent * PERCENT, given.calibration_degC));
const ramp = (given: Inputs): readonly [number, number] => [
  given.transient_sensitivity_m_per_s2_per_K,
  given.ramp_K_per_min * PER_MINUTE,
];

/** Invented curves of the kind that a laboratory's list holds; the trade's figures judge their order of magnitude. */
const INVENTED: Record<string, Curve> = {
  ceramic: { x: [-54, 0, 23, 50, 85, 121], y: [-0.11, -0.032, 0, 0.036, 0.075, 0.11] },
  quartz: { x: [-54, 23, 50, 121], y: [0.036, 0, -0.013, -0.046] },
};
const ROOM = 23;
const inventedDeviation = ({ technology, temperature_degC: temperature }: Inputs): number =>
  Math.abs(valueOf(thermalBand(INVENTED[technology]!, temperature, temperature, ROOM)).high) / PERCENT;

describeChecks('thermal', {
  'deviation with a linear coefficient': (given) =>
    linearDeviation(given.coefficient_percent_per_K * PERCENT, given.temperature_degC, given.calibration_degC) /
    PERCENT,
  'lowest deviation in a temperature range': (given) => bandOf(given).low / PERCENT,
  'highest deviation in a temperature range': (given) => bandOf(given).high / PERCENT,
  'half band after scaling to the middle': (given) =>
    halfBand({ low: given.low_percent * PERCENT, high: given.high_percent * PERCENT }) / PERCENT,
  'deviation in decibel': (given) => deviationInDecibel(given.deviation_percent * PERCENT),
  'largest coefficient for a tolerance': (given) =>
    allowedCoefficient(given.tolerance_percent * PERCENT, given.low_degC, given.high_degC, given.calibration_degC) /
    PERCENT,
  'upper temperature that keeps a tolerance': (given) => windowOf(given).high,
  'lower temperature that keeps a tolerance': (given) => windowOf(given).low,
  'residual after correction': (given) =>
    correctionResidual(given.slope_percent_per_K * PERCENT, given.temperature_uncertainty_K) / PERCENT,
  'change of the crystal constant of quartz': (given) =>
    linearDeviation(given.coefficient_per_K, given.difference_K, 0) / PERCENT,
  'linear coefficient that a deviation at one temperature implies': (given) =>
    impliedCoefficient(given.deviation_percent, given.temperature_degC, given.calibration_degC),
  'error from a steady temperature ramp through one pole': (given) =>
    rampError(...ramp(given), 1 / (2 * Math.PI * given.time_constant_s)) / MILLI_GRAVITY,
  'lowest corner for a ramp error': (given) => cornerForRamp(...ramp(given), given.allowed_mgn * MILLI_GRAVITY),
  'zero offset over a range': (given) =>
    zeroOffset(given.drift_mgn_per_K * MILLI_GRAVITY, given.low_degC, given.high_degC, given.zero_degC) / MILLI_GRAVITY,
  'heat in a constant-current sensor': (given) => sensorHeat(given.bias_V, given.supply_mA),
  'magnitude of the sensitivity deviation of a ceramic sensor, order only': inventedDeviation,
  'magnitude of the sensitivity deviation of a quartz sensor, order only': inventedDeviation,
});
