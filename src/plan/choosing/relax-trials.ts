import { VERDICTS, type Verdict } from '../../core/verdict';
import { checkChannel, type ChannelCheck } from '../check';
import { CheckMemory } from '../check-memory';
import { modeMismatch } from '../level';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import { AIMS, withCombination, type Aim, type Combination, type Part, type Stock } from './candidate';
import { eachMargin } from './candidate-margins';
import { combinationsOf, filteredSensors, partChoices, type CandidateFilter } from './candidate-options';

/** The worst verdict that still counts as fitting. */
export type Accept = Extract<Verdict, 'PASS' | 'WARN'>;
export const isAccepted = (verdict: Verdict, accept: Accept): boolean =>
  VERDICTS.indexOf(verdict) <= VERDICTS.indexOf(accept);

export interface StockOptions {
  readonly filter?: CandidateFilter;
  /** Parts that may change although the row names them. */
  readonly free?: readonly Part[];
  /** Worst verdict that counts as fitting; PASS. */
  readonly accept?: Accept;
}

/** A combination with the aims it does not meet, one bit for each of AIMS, and those that are not known. */
export interface Trial {
  readonly combination: Combination;
  readonly check: ChannelCheck;
  readonly unmet: number;
  readonly unknown: number;
}

export const bitOf = (aim: Aim): number => 1 << AIMS.indexOf(aim);
export const bitsOf = (aims: readonly Aim[]): number => aims.reduce((bits, aim) => bits | bitOf(aim), 0);
export const aimsIn = (bits: number): readonly Aim[] => AIMS.filter((aim) => (bits & bitOf(aim)) !== 0);

/** Everything that the stock can put on the channel. Inputs of the wrong mode stay only when a type has no other. */
export const combinationsFor = (
  channel: Channel,
  stock: Stock,
  { filter, free }: StockOptions,
): readonly Combination[] => {
  const choices = partChoices(channel, stock, free, filter);
  return filteredSensors(stock.sensors, filter).flatMap((sensor) => {
    const fitting = choices.inputs.filter((input) => !modeMismatch(sensor, input));
    return [...combinationsOf(sensor, { ...choices, inputs: fitting.length > 0 ? fitting : choices.inputs })];
  });
};

export const trialsOf = (
  channel: Channel,
  combinations: readonly Combination[],
  limits: Limits,
  accept: Accept,
): readonly Trial[] => {
  const memory = new CheckMemory();
  return combinations.map((combination) => {
    const check = checkChannel(withCombination(channel, combination), limits, memory);
    let unmet = 0;
    let unknown = 0;
    eachMargin(check, limits, (aim, verdict) => {
      if (!isAccepted(verdict, accept)) unmet |= bitOf(aim);
      if (verdict === 'INCOMPLETE') unknown |= bitOf(aim);
    });
    return { combination, check, unmet, unknown };
  });
};
