import { VERDICTS } from '../../core/verdict';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import type { Aim, Fit, Stock } from './candidate';
import { worstMargin } from './candidate-margins';
import { fitOf } from './rank-search';
import { answersFor, type Answer } from './relax-answers';
import { conflictsIn, unknownAims, type Conflict } from './relax-conflicts';
import { KNOBS } from './relax-knobs';
import { relaxationOf, type Relaxation } from './relax-search';
import { combinationsFor, isAccepted, trialsOf, type StockOptions, type Trial } from './relax-trials';

/** Why nothing in the stock fits a channel, and what would change that. */
export interface WaysOut {
  /** What comes nearest: best verdict, then largest margin. */
  readonly nearest?: Fit;
  /** Smallest sets of aims that the stock does not meet together, shortest first. */
  readonly conflicts: readonly Conflict[];
  /** What nothing can be said of, because the row or every type lacks something. */
  readonly unknown: readonly Aim[];
  /** Changes of one figure that are enough, the smallest first; each was checked. */
  readonly relaxations: readonly Relaxation[];
  /** Changes of another kind, each checked. */
  readonly answers: readonly Answer[];
}

/** Undefined when something fits already. */
export const waysOut = (
  channel: Channel,
  stock: Stock,
  limits: Limits,
  options: StockOptions = {},
): WaysOut | undefined => {
  const accept = options.accept ?? 'PASS';
  const trials = trialsOf(channel, combinationsFor(channel, stock, options), limits, accept);
  if (trials.some(({ check }) => isAccepted(check.verdict, accept))) return undefined;
  const relaxations = KNOBS.flatMap((knob) => relaxationOf(knob, channel, limits, trials, accept) ?? []);
  return {
    nearest: nearestOf(trials, limits),
    conflicts: conflictsIn(trials),
    unknown: unknownAims(trials),
    relaxations: relaxations.filter(({ knob }) => knob !== 'local mass').sort((a, b) => a.size - b.size),
    answers: answersFor({ channel, stock, limits, options, accept, trials, relaxations }),
  };
};

const nearestOf = (trials: readonly Trial[], limits: Limits): Fit | undefined => {
  let best: { trial: Trial; severity: number; margin: number } | undefined;
  for (const trial of trials) {
    const severity = VERDICTS.indexOf(trial.check.verdict);
    if (best && severity > best.severity) continue;
    const margin = worstMargin(trial.check, limits);
    if (!best || severity < best.severity || margin > best.margin) best = { trial, severity, margin };
  }
  return best && fitOf(best.trial.combination, best.trial.check, limits);
};
