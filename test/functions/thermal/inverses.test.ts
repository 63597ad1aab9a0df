import { describeInverses, number as n, block } from '../inverse';
import { cornerForRamp } from '../../../src/functions/thermal/corner-for-ramp';
import { decibelDeviation } from '../../../src/functions/thermal/decibel-deviation';
import { deviationDecibel } from '../../../src/functions/thermal/deviation-decibel';
import { rampAllowed } from '../../../src/functions/thermal/ramp-allowed';
import { sensorHeat } from '../../../src/functions/thermal/sensor-heat';
import { thermalCoefficientAllowed } from '../../../src/functions/thermal/thermal-coefficient-allowed';
import { thermalCoefficientImplied } from '../../../src/functions/thermal/thermal-coefficient-implied';
import { thermalDeviation } from '../../../src/functions/thermal/thermal-deviation';
import { thermalDriftAllowed } from '../../../src/functions/thermal/thermal-drift-allowed';
import { thermalRamp } from '../../../src/functions/thermal/thermal-ramp';
import { thermalResidual } from '../../../src/functions/thermal/thermal-residual';
import { thermalUncertaintyAllowed } from '../../../src/functions/thermal/thermal-uncertainty-allowed';
import { thermalWindow } from '../../../src/functions/thermal/thermal-window';
import { thermalWorst } from '../../../src/functions/thermal/thermal-worst';
import { thermalZero } from '../../../src/functions/thermal/thermal-zero';

/** Low and high end of a range and a reference temperature outside it by some kelvin. */
const TEMPERATURES = [
  [-60, 20],
  [25, 200],
  [-100, 100],
] as const;

describeInverses('thermal', [
  {
    title: 'THERMAL.COEFFICIENT.ALLOWED keeps THERMAL.WORST',
    inputs: [[0.5, 10], ...TEMPERATURES],
    target: ([tolerance]) => tolerance!,
    reached: ([tolerance, ...range]) =>
      n(thermalWorst, [null, ...range, n(thermalCoefficientAllowed, [tolerance, ...range])]),
  },
  {
    title: 'THERMAL.WINDOW keeps THERMAL.WORST, with a coefficient',
    inputs: [
      [0.5, 10],
      [0.05, 0.2],
      [-20, 60],
    ],
    target: ([tolerance]) => tolerance!,
    reached: ([tolerance, coefficient, calibration]) => {
      const [window] = block(thermalWindow, [null, tolerance, calibration, coefficient]) as [[number, number]];
      return n(thermalWorst, [null, ...window, calibration, coefficient]);
    },
  },
  {
    title: 'THERMAL.WINDOW keeps THERMAL.WORST, with a curve',
    inputs: [
      [0.5, 6],
      [-20, 60],
    ],
    target: ([tolerance]) => tolerance!,
    reached: ([tolerance, calibration]) => {
      const curve = '-100:-14; 0:-4; 25:0; 75:5; 125:9; 250:22';
      const [window] = block(thermalWindow, [curve, tolerance, calibration]) as [[number, number]];
      return n(thermalWorst, [curve, ...window, calibration]);
    },
  },
  {
    title: 'THERMAL.COEFFICIENT.IMPLIED gives THERMAL.DEVIATION back',
    inputs: [
      [-20, 20],
      [30, 200],
    ],
    target: ([deviation]) => deviation!,
    reached: ([deviation, temperature]) =>
      n(thermalDeviation, [null, temperature, 23, n(thermalCoefficientImplied, [deviation, temperature, 23])]),
  },
  {
    title: 'DECIBEL.DEVIATION gives DEVIATION.DECIBEL back',
    inputs: [[-90, 500]],
    target: ([deviation]) => deviation!,
    reached: ([deviation]) => n(decibelDeviation, [n(deviationDecibel, [deviation])]),
  },
  {
    title: 'CORNER.FOR.RAMP keeps THERMAL.RAMP',
    inputs: [
      [0.1, 100],
      [0.1, 50],
      [1e-5, 1],
    ],
    target: ([, , error]) => error!,
    reached: ([sensitivity, rate, error]) =>
      n(thermalRamp, [sensitivity, rate, n(cornerForRamp, [sensitivity, rate, error])]),
  },
  {
    title: 'RAMP.ALLOWED keeps THERMAL.RAMP',
    inputs: [
      [0.1, 100],
      [0.01, 50],
      [1e-5, 1],
    ],
    target: ([, , error]) => error!,
    reached: ([sensitivity, corner, error]) =>
      n(thermalRamp, [sensitivity, n(rampAllowed, [sensitivity, corner, error]), corner]),
  },
  {
    title: 'THERMAL.DRIFT.ALLOWED keeps THERMAL.ZERO',
    inputs: [[1e-4, 1], ...TEMPERATURES],
    target: ([offset]) => offset!,
    reached: ([offset, ...range]) => n(thermalZero, [n(thermalDriftAllowed, [offset, ...range]), ...range]),
  },
  {
    title: 'THERMAL.UNCERTAINTY.ALLOWED keeps THERMAL.RESIDUAL',
    inputs: [
      [0.01, 1],
      [0.1, 5],
    ],
    target: ([, tolerance]) => tolerance!,
    reached: ([slope, tolerance]) => n(thermalResidual, [slope, n(thermalUncertaintyAllowed, [slope, tolerance])]),
  },
  {
    title: 'SENSOR.HEAT over the current is the bias',
    inputs: [
      [1, 30],
      [0.5, 20],
    ],
    target: ([bias]) => bias!,
    reached: ([bias, current]) => n(sensorHeat, [bias, current]) / current!,
  },
]);
