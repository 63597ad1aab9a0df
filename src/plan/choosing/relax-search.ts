import { checkChannel } from '../check';
import { CheckMemory } from '../check-memory';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import { withCombination, type Combination, type Fit } from './candidate';
import { KNOB_RULES, type Demanded, type Knob } from './relax-knobs';
import { bitsOf, isAccepted, type Accept, type Trial } from './relax-trials';
import { fitOf } from './rank-search';

/** One figure of the demand changed so far that one combination of the stock is accepted, and hardly further. */
export interface Relaxation {
  readonly knob: Knob;
  /** SI (°C, fractions of 1). For a line spacing where the whole band was asked: the spacing of a line as wide as it. */
  readonly from: number;
  readonly to: number;
  /** dB, on the scale of the margins. */
  readonly size: number;
  /** The change is another way to read the lowest level, not a smaller figure of the same kind. */
  readonly isNewKind: boolean;
  /** The channel and limits as relaxed, and a combination that was checked to be accepted there. */
  readonly demanded: Demanded;
  readonly fit: Fit;
}

/** The change is known to this part of itself. */
const RESOLUTION = 1e-4;
const MOST_STEPS = 80;

/** The smallest change of one figure with which something fits; undefined when none does. */
export const relaxationOf = (
  knob: Knob,
  channel: Channel,
  limits: Limits,
  trials: readonly Trial[],
  accept: Accept,
): Relaxation | undefined => {
  const rule = KNOB_RULES[knob];
  const given = { channel, limits };
  const range = rule.range(given);
  if (!range) return undefined;
  const { from, end } = range;
  const helped = bitsOf(rule.helps);
  const at = along(from, end);
  let alive = trials.filter(({ unmet }) => (unmet & ~helped) === 0).map(({ combination }) => combination);
  const survivors = (part: number) => accepted(rule.set(given, at(part)), alive, accept);
  alive = survivors(1);
  if (alive.length === 0) return undefined;
  let low = 0;
  let high = 1;
  for (let step = 0; step < MOST_STEPS && high - low > RESOLUTION * high; step++) {
    const middle = (low + high) / 2;
    const left = survivors(middle);
    if (left.length > 0) {
      alive = left;
      high = middle;
    } else low = middle;
  }
  const to = at(high);
  const demanded = rule.set(given, to);
  const memory = new CheckMemory();
  const fits = alive.map((combination) =>
    fitOf(
      combination,
      checkChannel(withCombination(demanded.channel, combination), demanded.limits, memory),
      demanded.limits,
    ),
  );
  const [fit] = fits.sort((a, b) => (a.check.mass.total ?? Infinity) - (b.check.mass.total ?? Infinity));
  const isNewKind = knob === 'line spacing' && channel.requirement.detector.kind === 'band';
  return fit && { knob, from, to, size: rule.size(from, to, limits), isNewKind, demanded, fit };
};

/** From one end to the other in equal ratios, or in equal steps where a figure may be 0 or below. */
const along = (from: number, end: number): ((part: number) => number) =>
  from > 0 && end > 0
    ? (part) => (part === 1 ? end : from * (end / from) ** part)
    : (part) => from + part * (end - from);

const accepted = ({ channel, limits }: Demanded, combinations: readonly Combination[], accept: Accept) => {
  const memory = new CheckMemory();
  return combinations.filter((combination) =>
    isAccepted(checkChannel(withCombination(channel, combination), limits, memory).verdict, accept),
  );
};
