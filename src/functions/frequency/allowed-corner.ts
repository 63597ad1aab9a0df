import { cornerAllowed, cornerAllowedByPhase } from '../../core/frequency/corner';
import { failure, outcome, type Outcome } from '../../core/issue';
import type { ArgSpecs, Values } from '../define';

/** What the low end must hold; shared by CORNER.ALLOWED and TIME.CONSTANT.NEEDED. */
export const LOW_END = {
  low: { unit: 'Hz', symbol: 'f₁', text: 'Lower edge of the needed band.', above: 0 },
  loss: { unit: '%', symbol: 'δ', text: 'Largest loss there.', above: 0, below: 100, default: 5 },
  phase: {
    unit: 'deg',
    symbol: 'φ',
    text: 'Largest phase lead there, where one is set.',
    above: 0,
    below: 90,
    optional: true,
  },
  others: {
    kind: 'list',
    unit: 'Hz',
    symbol: 'f_i',
    text: 'Corners of poles already there.',
    atLeast: 0,
    optional: true,
  },
} as const satisfies ArgSpecs;

/** The largest corner that keeps loss and phase beside the other poles. */
export const allowedCorner = ({ low, loss, phase, others = [] }: Values<typeof LOW_END>): Outcome<number> => {
  const byLoss = cornerAllowed(low, loss, others);
  const byPhase = phase === undefined ? Infinity : cornerAllowedByPhase(low, phase, others);
  const corner = Math.min(byLoss, byPhase);
  return corner > 0 ? outcome(corner) : failure({ code: 'no-result', rule: 'the other poles alone take more' });
};
