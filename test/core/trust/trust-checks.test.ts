import {
  combinedUncertainty,
  effectiveFreedom,
  expandedUncertainty,
  standardUncertainty,
  type Contribution,
} from '../../../src/core/trust/budget';
import { divisorOf } from '../../../src/core/trust/distribution';
import { statisticalUncertainty, strainError, transverseUncertainty } from '../../../src/core/trust/sources';
import { describeChecks, type Inputs } from '../published-checks';

const PERCENT = 0.01;
const GRAVITY = 9.80665;

const contribution = (halfWidth: number, divisor: number, freedom = Infinity): Contribution => ({
  name: '',
  halfWidth,
  divisor,
  freedom,
  isBias: false,
});
const budget = (given: Inputs): Contribution[] =>
  given.half_width_percent_and_divisor.map(([percent, divisor]: [number, number]) =>
    contribution(percent * PERCENT, divisor),
  );

describeChecks('trust', {
  'standard uncertainty of a rectangular half-width': (given) =>
    standardUncertainty(contribution(given.half_width_percent, divisorOf('rectangular'))),
  'standard uncertainty of a triangular half-width': (given) =>
    standardUncertainty(contribution(given.half_width_percent, divisorOf('triangular'))),
  'transverse contribution, unknown angle': (given) =>
    transverseUncertainty(given.transverse_percent * PERCENT, given.level_ratio) / PERCENT,
  'base strain contribution': (given) =>
    strainError(given.strain_sensitivity_m_per_s2_per_ustrain / 1e-6, given.strain_ustrain * 1e-6) / GRAVITY,
  'statistical uncertainty of an r.m.s. value': (given) =>
    statisticalUncertainty(given.bandwidth_Hz, given.duration_s) / PERCENT,
  'combined standard uncertainty': (given) => combinedUncertainty(budget(given)) / PERCENT,
  'expanded uncertainty': (given) => expandedUncertainty(budget(given), given.coverage_factor) / PERCENT,
  'effective degrees of freedom': (given) =>
    effectiveFreedom(
      given.uncertainty_and_freedom.map(([uncertainty, freedom]: [number, number | null]) =>
        contribution(uncertainty, 1, freedom ?? Infinity),
      ),
    ),
});
