import type { Limits } from '../limits';
import type { Channel } from '../model';
import { fitOf } from './rank-search';
import { PARTS, type Fit, type Part, type Stock } from './candidate';
import type { Relaxation } from './relax-search';
import {
  bitOf,
  combinationsFor,
  isAccepted,
  trialsOf,
  type Accept,
  type StockOptions,
  type Trial,
} from './relax-trials';
import { splitLevels, type Split } from './split';

/** What helps other than asking for less. */
export type Answer =
  /** The row's own part stands in the way. */
  | { readonly kind: 'other part'; readonly part: Part; readonly fit: Fit }
  /** Two ranges of level: one sensor in two runs, or two sensors. */
  | { readonly kind: 'two runs' | 'two sensors'; readonly split: Split }
  /** Another point, or another direction, with at least this local mass in kg. */
  | { readonly kind: 'other point'; readonly localMass: number; readonly needed: number; readonly fit: Fit }
  /** All but the thermal deviation passes, and half the band stays inside the tolerance once the temperature is logged. */
  | { readonly kind: 'correction'; readonly halfBand: number; readonly tolerance: number; readonly fit: Fit }
  /** Nothing in the stock is light enough: kg that the lightest combination adds, and kg of sensor that may be added. */
  | { readonly kind: 'without contact'; readonly lightest: number; readonly allowed: number };

export interface Stuck {
  readonly channel: Channel;
  readonly stock: Stock;
  readonly limits: Limits;
  readonly options: StockOptions;
  readonly accept: Accept;
  readonly trials: readonly Trial[];
  readonly relaxations: readonly Relaxation[];
}

export const answersFor = (stuck: Stuck): readonly Answer[] => [
  ...otherParts(stuck),
  ...correction(stuck),
  ...twoRanges(stuck),
  ...otherPoint(stuck),
  ...withoutContact(stuck),
];

/** One pinned part at a time, so that the answer names what to change. */
const otherParts = ({ channel, stock, limits, options, accept }: Stuck): readonly Answer[] =>
  PARTS.flatMap((part): Answer[] => {
    const isPinned = channel[part] !== undefined || channel.named?.[part] !== undefined;
    if (!isPinned || options.free?.includes(part)) return [];
    const free = [...(options.free ?? []), part];
    const trials = trialsOf(channel, combinationsFor(channel, stock, { ...options, free }), limits, accept);
    const fit = roomiest(
      trials.filter(({ check }) => isAccepted(check.verdict, accept)),
      limits,
    );
    return fit ? [{ kind: 'other part', part, fit }] : [];
  });

const correction = ({ trials, limits }: Stuck): readonly Answer[] => {
  const corrected = trials.filter(
    ({ unmet, check }) => unmet === bitOf('thermal deviation') && check.verdict === 'WARN',
  );
  const byHalfBand = (trial: Trial) => trial.check.thermal.halfBand ?? Infinity;
  const least = Math.min(...corrected.map(byHalfBand));
  const fit = roomiest(
    corrected.filter((trial) => byHalfBand(trial) === least),
    limits,
  );
  const tolerance = fit?.check.thermal.tolerance?.pass;
  return fit && tolerance !== undefined ? [{ kind: 'correction', halfBand: least, tolerance, fit }] : [];
};

const twoRanges = ({ channel, stock, limits, options }: Stuck): readonly Answer[] =>
  ([1, 2] as const).flatMap((sensors): Answer[] => {
    const split = splitLevels(channel, stock, limits, { ...options, sensors });
    return split ? [{ kind: sensors === 1 ? 'two runs' : 'two sensors', split }] : [];
  });

const otherPoint = ({ relaxations }: Stuck): readonly Answer[] =>
  relaxations
    .filter(({ knob }) => knob === 'local mass')
    .map(({ from, to, fit }) => ({ kind: 'other point', localMass: from, needed: to, fit }));

const withoutContact = ({ trials }: Stuck): readonly Answer[] => {
  const isTooHeavy = ({ check }: Trial) => check.mass.verdict === 'FAIL' && check.mass.total !== undefined;
  if (trials.length === 0 || !trials.every(isTooHeavy)) return [];
  const lightest = trials.reduce((a, b) => (b.check.mass.total! < a.check.mass.total! ? b : a));
  const { total, allowed } = lightest.check.mass;
  return allowed === undefined ? [] : [{ kind: 'without contact', lightest: total!, allowed }];
};

const roomiest = (trials: readonly Trial[], limits: Limits): Fit | undefined =>
  trials
    .map(({ combination, check }) => fitOf(combination, check, limits))
    .reduce<Fit | undefined>((a, b) => (!a || (b.margin ?? -Infinity) > (a.margin ?? -Infinity) ? b : a), undefined);
