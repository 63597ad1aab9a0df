import type { Curve } from '../../core/curve';
import { failure, outcome, type Outcome } from '../../core/issue';
import { thermalBand, type Band, type Coefficient, type ThermalResponse } from '../../core/thermal/band';
import type { ArgSpecs, Values } from '../define';

/** Shared by every function that evaluates a sensor's thermal response over a range. */
export const RESPONSE_OVER_RANGE = {
  deviation: {
    kind: 'curve',
    x: '°C',
    y: '%',
    optional: true,
    text: 'Deviation of the sensitivity against temperature; goes before the coefficient.',
  },
  low: {
    unit: '°C',
    symbol: 'T₁',
    text: 'Lowest temperature of the sensor itself, or both as a range text.',
    atLeast: -273.15,
    rangeWith: 'high',
  },
  high: { unit: '°C', symbol: 'T₂', text: 'Highest temperature of the sensor itself.', atLeast: -273.15 },
  calibrationTemperature: {
    unit: '°C',
    symbol: 'T_cal',
    text: 'Temperature on the calibration certificate.',
    atLeast: -273.15,
    default: 23,
  },
  coefficient: {
    unit: '%/K',
    symbol: 'α',
    text: 'Linear coefficient, used when there is no curve.',
    atLeast: -100,
    atMost: 100,
    optional: true,
  },
  coefficientSign: {
    kind: 'choice',
    choices: ['signed', 'unsigned'],
    default: 'unsigned',
    text: 'Unsigned: the data sheet gives a size only, so the band is taken both ways.',
  },
} as const satisfies ArgSpecs;

/** The curve if there is one, else the coefficient; neither is a missing input. */
export const responseOf = (
  deviation: Curve | undefined,
  coefficient: number | undefined,
  sign: Coefficient['sign'],
): Outcome<ThermalResponse> => {
  if (deviation) return outcome(deviation);
  return coefficient === undefined
    ? failure({ code: 'missing', arg: 'deviation' })
    : outcome({ perKelvin: coefficient, sign });
};

export const bandOf = (given: Values<typeof RESPONSE_OVER_RANGE>): Outcome<Band> => {
  const response = responseOf(given.deviation, given.coefficient, given.coefficientSign);
  return response.ok ? thermalBand(response.value, given.low, given.high, given.calibrationTemperature) : response;
};
