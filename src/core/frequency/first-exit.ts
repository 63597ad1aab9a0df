import { gain, peakFrequency, polesGain, resonanceGain, type Response } from './response';

/**
 * Where a response first leaves [lower, upper] on the way from one frequency to another.
 *
 * A response of several poles and a resonance can rise, fall and rise again, so a crossing found by sampling may lie
 * behind an earlier one. Here nothing is sampled: on any interval the poles' gain is monotone, the resonance's gain has
 * its one maximum at a known place, and the slope is a sum of terms with known extremes. That gives closed bounds of
 * the gain and of its slope. An interval whose gain bounds lie inside the band holds no exit; one whose slope keeps its
 * sign holds at most one crossing, found by Newton's method between brackets; any other interval is halved, nearer half
 * first. In the usual channel (poles far below the resonance) the first interval on each side is already monotone.
 */
export const firstExit = (
  response: Response,
  from: number,
  to: number,
  lower: number,
  upper: number,
): number | null => {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  if (isInside(response, low, high, lower, upper)) return null;
  const end = gain(response, to);
  if (isMonotone(response, low, high) || high - low <= NARROW * high) {
    if (end < lower) return crossing(response, lower, from, to);
    return end > upper ? crossing(response, upper, from, to) : null;
  }
  const middle = Math.sqrt(from * to);
  return firstExit(response, from, middle, lower, upper) ?? firstExit(response, middle, to, lower, upper);
};

/** Relative width below which two frequencies are one; a turning point that only just touches a bound ends here. */
const NARROW = 1e-12;

const isInside = (response: Response, low: number, high: number, lower: number, upper: number): boolean => {
  const { lowPoles, resonance, qualityFactor } = response;
  const polesAtLow = polesGain(lowPoles, low);
  const polesAtHigh = polesGain(lowPoles, high);
  const atLow = resonanceGain(resonance, qualityFactor, low);
  const atHigh = resonanceGain(resonance, qualityFactor, high);
  const peak = peakFrequency(response);
  const most = low < peak && peak < high ? resonanceGain(resonance, qualityFactor, peak) : Math.max(atLow, atHigh);
  return polesAtLow * Math.min(atLow, atHigh) >= lower && polesAtHigh * most <= upper;
};

/** dln|H|/dln f of the poles: Σ fc²/(f²+fc²). Falls with f. */
const polesSlope = (lowPoles: readonly number[], frequency: number): number => {
  let slope = 0;
  for (const corner of lowPoles) if (corner > 0) slope += 1 / (1 + (frequency / corner) * (frequency / corner));
  return slope;
};

/** −dln|H|/dln f of the resonance: 2v(v−1+d)/((1−v)²+2dv), v = (f/fr)², d = 1/(2Q²). */
const resonanceFall = (v: number, d: number): number => (2 * v * (v - 1 + d)) / ((1 - v) * (1 - v) + 2 * d * v);

/** Whether the slope keeps its sign from low to high, by bounds of both terms; false when that cannot be told. */
const isMonotone = ({ lowPoles, resonance, qualityFactor }: Response, low: number, high: number): boolean => {
  const d = 1 / (2 * qualityFactor * qualityFactor);
  const v1 = (low / resonance) ** 2;
  const v2 = (high / resonance) ** 2;
  const atLow = resonanceFall(v1, d);
  const atHigh = resonanceFall(v2, d);
  let least = Math.min(atLow, atHigh);
  let most = Math.max(atLow, atHigh);
  if (d < 1) {
    // Extremes of the fall lie where (1−d)·v² − 2v + (1−d) = 0; their product is 1.
    const upperExtreme = (1 + Math.sqrt(d * (2 - d))) / (1 - d);
    const lowerExtreme = 1 / upperExtreme;
    if (v1 < lowerExtreme && lowerExtreme < v2) least = resonanceFall(lowerExtreme, d);
    if (v1 < upperExtreme && upperExtreme < v2) most = resonanceFall(upperExtreme, d);
  }
  return polesSlope(lowPoles, high) > most || polesSlope(lowPoles, low) < least;
};

const MOST_STEPS = 100;
const SAME_FREQUENCY = 1e-15;

/** The one frequency between two others at which a monotone response has the target gain. */
const crossing = (response: Response, target: number, inside: number, outside: number): number => {
  const d = 1 / (2 * response.qualityFactor * response.qualityFactor);
  const rises = gain(response, outside) > target === outside > inside;
  let low = Math.min(inside, outside);
  let high = Math.max(inside, outside);
  let frequency = firstGuess(response, target, inside, outside);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const excess = Math.log(gain(response, frequency) / target);
    if (excess === 0) return frequency;
    if (excess > 0 === rises) high = frequency;
    else low = frequency;
    const slope = polesSlope(response.lowPoles, frequency) - resonanceFall((frequency / response.resonance) ** 2, d);
    let next = frequency * Math.exp(-excess / slope);
    if (!(next > low && next < high)) next = Math.sqrt(low * high);
    if (Math.abs(next - frequency) <= SAME_FREQUENCY * next) return next;
    frequency = next;
  }
  return frequency;
};

/** Above the reference: the crossing if the poles stayed as they are. Below it: the outer end, which span.ts puts close. */
const firstGuess = (response: Response, target: number, inside: number, outside: number): number => {
  if (outside < inside) return outside;
  const b = 1 - 1 / (2 * response.qualityFactor * response.qualityFactor);
  const wanted = target / polesGain(response.lowPoles, inside);
  const root = Math.sqrt(Math.max(0, b * b - 1 + 1 / (wanted * wanted)));
  const near = response.resonance * Math.sqrt(Math.max(0, wanted > 1 ? b - root : b + root));
  return near > inside && near < outside ? near : Math.sqrt(inside * outside);
};
