import { rootBetween } from '../numerics/root';

/**
 * A half-sine pulse of duration T through one high-pass pole of time constant τ, solved exactly with a = πτ/T, θ = πt/T:
 * y = a/(1+a²)·(cos θ + a·sin θ − e^(−θ/a)) for a pulse of height 1. Errors are fractions of the true value.
 */
export const PULSE_ERRORS = ['peak', 'undershoot', 'velocity'] as const;
export type PulseError = (typeof PULSE_ERRORS)[number];

const during = (a: number, angle: number): number =>
  (a / (1 + a * a)) * (Math.cos(angle) + a * Math.sin(angle) - Math.exp(-angle / a));

const errorOf: Readonly<Record<PulseError, (a: number) => number>> = {
  /** The slope a·cos θ − sin θ + e^(−θ/a)/a is positive at θ = 0 and negative at π, so the maximum lies between. */
  peak: (a) => {
    const slope = (angle: number) => a * Math.cos(angle) - Math.sin(angle) + Math.exp(-angle / a) / a;
    return during(a, rootBetween(slope, 0, Math.PI)) - 1;
  },
  /** Still falling at the end of the pulse and decaying afterwards: deepest at the end. */
  undershoot: (a) => during(a, Math.PI),
  /** From τ·y' + y = τ·x': the integral of y over the pulse is −τ·y(T); that of the pulse 2T/π. */
  velocity: (a) => (-a * during(a, Math.PI)) / 2 - 1,
};

/** Error of peak, undershoot after the pulse, or velocity change, for τ/T; each is negative. */
export const pulseError = (kind: PulseError, timeConstantOverDuration: number): number =>
  errorOf[kind](Math.PI * timeConstantOverDuration);

/** Ratios τ/T between which an answer is sought: from a bare differentiator to errors below a millionth. */
const [LEAST_RATIO, MOST_RATIO] = [1e-3, 1e7];

/** τ/T at which an error has the given size, as a positive fraction; undefined when no ratio in reach has it. */
export const pulseRatioNeeded = (kind: PulseError, size: number): number | undefined => {
  const from = kind === 'undershoot' ? UNDERSHOOT_WORST : LEAST_RATIO;
  const excess = (logRatio: number) => -pulseError(kind, Math.exp(logRatio)) - size;
  if (excess(Math.log(from)) < 0 || excess(Math.log(MOST_RATIO)) > 0) return undefined;
  return Math.exp(rootBetween(excess, Math.log(from), Math.log(MOST_RATIO)));
};

/** τ/T of the deepest undershoot, where a·(1+e^(−π/a))/(1+a²) is largest; beyond it the undershoot only shrinks. */
const UNDERSHOOT_WORST = (() => {
  const slope = (a: number) => {
    const fall = Math.exp(-Math.PI / a);
    return ((1 - a * a) / (1 + a * a)) * (1 + fall) + (Math.PI / a) * fall;
  };
  return rootBetween(slope, 0.5, 5) / Math.PI;
})();
