import { verdictAtLeast, verdictAtMost, type Verdict } from '../../core/verdict';
import type { Bound } from '../limits';
import type { MissingField } from '../missing';
import type { BoundLimit, NumberBound, Slack } from './envelope-bound';

/** A bound before it is judged. */
export interface Demand extends Omit<
  NumberBound,
  'kind' | 'verdict' | 'slack' | 'missing' | 'without' | 'valueMissing'
> {
  readonly missing?: readonly MissingField[];
  readonly without?: readonly MissingField[];
  readonly valueMissing?: readonly MissingField[];
  /** Bounds at which the checks turn, where they leave a slack beyond the number shown. */
  readonly turnsAt?: { readonly pass?: number; readonly warn?: number };
  readonly slackKind?: Slack['kind'];
  /** Whether the channel names a sensor that this bound can judge. */
  readonly isJudged: boolean;
  /** Where the verdict has a rule of its own. */
  readonly ownVerdict?: Verdict;
}

const NOTHING: readonly MissingField[] = [];

export const judged = (demand: Demand): NumberBound => {
  const { turnsAt, slackKind = 'factor', isJudged, ownVerdict, ...bound } = demand;
  const { pass, value, direction, missing = NOTHING, without = NOTHING, valueMissing = NOTHING } = bound;
  const judge = direction === 'atMost' ? verdictAtMost : verdictAtLeast;
  const turn = turnsAt ?? bound;
  return {
    ...bound,
    kind: 'number',
    missing,
    without,
    valueMissing,
    slack: pass === undefined || value === undefined ? undefined : slackOf(slackKind, direction, value, pass),
    verdict: isJudged ? (ownVerdict ?? judge(value, turn.pass, turn.warn)) : undefined,
  };
};

const slackOf = (
  kind: Slack['kind'],
  direction: NumberBound['direction'],
  value: number,
  pass: number,
): Slack | undefined => {
  const [large, small] = direction === 'atMost' ? [pass, value] : [value, pass];
  const amount = kind === 'factor' ? (small > 0 && large >= 0 ? large / small : NaN) : large - small;
  return Number.isFinite(amount) && Number.isFinite(pass) ? { kind, amount } : undefined;
};

export const limitOf = (name: BoundLimit['name'], { pass, warn, origin }: Bound): BoundLimit => ({
  name,
  pass,
  warn,
  origin,
});

/** The fields of those values that are not known. */
export const lacking = (
  ...parts: readonly (readonly [value: unknown, field: MissingField])[]
): readonly MissingField[] => parts.flatMap(([value, field]) => (value === undefined ? [field] : []));
