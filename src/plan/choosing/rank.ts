import { worstVerdict, VERDICTS, type Verdict } from '../../core/verdict';
import type { Headline } from '../finding';
import type { Limits } from '../limits';
import type { Channel, SensorType } from '../model';
import type { Fit, Margin, Part, Stock } from './candidate';
import { filteredSensors, partChoices, type CandidateFilter } from './candidate-options';
import { demandsOf } from './rank-demands';
import { inOrder, type CandidateOrder } from './rank-order';
import { CombinationSearch } from './rank-search';

export interface RankOptions {
  /** After the verdict: largest margin (default), lightest, or most in stock first. */
  readonly order?: CandidateOrder;
  readonly filter?: CandidateFilter;
  /** Parts that may change although the row names them. */
  readonly free?: readonly Part[];
}

/** The best combination of a type for the channels that ask the same. */
export interface DemandFit {
  /** Places in the list of channels. */
  readonly channels: readonly number[];
  readonly fit: Fit;
}

/** One sensor type for one channel or several; with several, the worst of them speaks. */
export interface Candidate {
  readonly sensor: SensorType;
  readonly verdict: Verdict;
  readonly headlines: Readonly<Record<Headline, Verdict>>;
  /** Channels by verdict. */
  readonly counts: Readonly<Record<Verdict, number>>;
  /** The fit that sets the verdict and, among those, has the smallest margin. */
  readonly worst: Fit;
  /** dB, of the worst fit; see `marginsOf`. */
  readonly margin?: number;
  readonly limiting?: Margin;
  /** kg added at the point by the heaviest fit: sensor, mount and cable. */
  readonly mass?: number;
  readonly fits: readonly DemandFit[];
  /** Channels of the selection that name this type now. */
  readonly chosenBy: number;
}

export interface Ranking {
  readonly candidates: readonly Candidate[];
  /** How many different demands the channels make. */
  readonly demands: number;
  /** Combinations that were looked at to the end. */
  readonly checked: number;
}

/** Ranks every type of the stock for all channels together. */
export const rankCandidates = (
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  options: RankOptions = {},
): Ranking => {
  const steps = rankingSteps(channels, stock, limits, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};

/** The same in steps, one per different demand, for a page that must stay usable in between. */
export function* rankingSteps(
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  { order = 'margin', filter, free }: RankOptions = {},
): Generator<{ readonly done: number; readonly of: number }, Ranking> {
  const sensors = filteredSensors(stock.sensors, filter);
  const demands = demandsOf(channels, limits);
  const search = new CombinationSearch(limits);
  const fits = sensors.map((): DemandFit[] => []);
  for (const [done, { channel, channels: places }] of demands.entries()) {
    const choices = partChoices(channel, stock, free, filter);
    const asked = search.asked(channel);
    sensors.forEach((sensor, i) => {
      const fit = search.fit(asked, sensor, choices);
      if (fit) fits[i]!.push({ channels: places, fit });
    });
    yield { done: done + 1, of: demands.length };
  }
  const candidates = sensors.flatMap((sensor, i) => {
    const found = fits[i]!;
    return found.length === 0 ? [] : [candidateOf(sensor, found, channels)];
  });
  return { candidates: inOrder(candidates, order), demands: demands.length, checked: search.looked };
}

const HEADLINES: readonly Headline[] = ['level', 'mass', 'thermal', 'frequency'];

const candidateOf = (sensor: SensorType, fits: readonly DemandFit[], channels: readonly Channel[]): Candidate => {
  const worst = fits.map(({ fit }) => fit).reduce((a, b) => (isWorse(b, a) ? b : a));
  const counts: Record<Verdict, number> = { PASS: 0, WARN: 0, INCOMPLETE: 0, FAIL: 0 };
  for (const { fit, channels: places } of fits) counts[fit.check.verdict] += places.length;
  const masses = fits.map(({ fit }) => fit.check.mass.total);
  return {
    sensor,
    verdict: worst.check.verdict,
    headlines: Object.fromEntries(
      HEADLINES.map((headline) => [headline, worstVerdict(fits.map(({ fit }) => fit.check[headline].verdict))]),
    ) as Record<Headline, Verdict>,
    counts,
    worst,
    margin: worst.margin,
    limiting: worst.limiting,
    mass: masses.some((mass) => mass === undefined) ? undefined : Math.max(...masses.map(Number)),
    fits,
    chosenBy: channels.filter((channel) => channel.sensor === sensor).length,
  };
};

const isWorse = (a: Fit, b: Fit): boolean => {
  const severity = VERDICTS.indexOf(a.check.verdict) - VERDICTS.indexOf(b.check.verdict);
  return severity !== 0 ? severity > 0 : (a.margin ?? Infinity) < (b.margin ?? Infinity);
};
