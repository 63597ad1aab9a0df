import { VERDICTS } from '../../core/verdict';
import { checkChannel, type ChannelCheck } from '../check';
import type { CheckMemory } from '../check-memory';
import { modeMismatch } from '../level';
import type { Limits } from '../limits';
import { checkMass, type MassCheck } from '../mass';
import type { Channel, Input, SensorType } from '../model';
import { withCombination, type Combination, type Fit, type Margin } from './candidate';
import { marginsOf, massMargin, worstMargin } from './candidate-margins';
import type { PartChoices } from './candidate-options';

interface Best {
  readonly combination: Combination;
  readonly check: ChannelCheck;
  readonly severity: number;
  readonly margin: number;
  /** All margins, for equals only. */
  readonly margins: () => readonly Margin[];
}

/**
 * The best combination of one type: best verdict, then largest worst margin, then lightest,
 * then largest next margin, then first in the lists.
 * What cannot beat the best found so far is left out: inputs of the wrong mode, and mounts whose mass alone is worse.
 */
export const bestFit = (
  channel: Channel,
  sensor: SensorType,
  { mounts, cables, inputs }: PartChoices,
  limits: Limits,
  memory: CheckMemory,
  work: { checked: number },
): Fit | undefined => {
  let best: Best | undefined;
  const fitting = fittingInputs(sensor, inputs);
  for (const mount of mounts)
    for (const cable of cables) {
      if (best && isBeyondHope(checkMass({ ...channel, sensor, mount, cable }, limits), best)) continue;
      for (const input of fitting) {
        const combination = { sensor, mount, cable, input };
        const check = checkChannel(withCombination(channel, combination), limits, memory);
        work.checked += 1;
        const severity = VERDICTS.indexOf(check.verdict);
        if (best && severity > best.severity) continue;
        const next = {
          combination,
          check,
          severity,
          margin: worstMargin(check, limits),
          margins: () => marginsOf(check, limits),
        };
        if (!best || isBetter(next, best)) best = next;
      }
    }
  return best && fitOf(best.combination, best.check, limits);
};

export const fitOf = (combination: Combination, check: ChannelCheck, limits: Limits): Fit => {
  const margins = marginsOf(check, limits);
  const [limiting] = margins;
  const isKnown = limiting?.dB !== undefined;
  return { combination, check, margins, margin: limiting?.dB, limiting: isKnown ? limiting : undefined };
};

/** Inputs of the wrong mode fail whatever else holds, so they only count when there is no other. */
const fittingInputs = (sensor: SensorType, inputs: readonly (Input | undefined)[]) => {
  const fitting = inputs.filter((input) => !modeMismatch(sensor, input));
  return fitting.length > 0 ? fitting : inputs.slice(0, 1);
};

const massOf = ({ check }: Best): number => check.mass.total ?? Infinity;

const isBetter = (a: Best, b: Best): boolean => {
  if (a.severity !== b.severity) return a.severity < b.severity;
  if (a.margin !== b.margin) return a.margin > b.margin;
  if (massOf(a) !== massOf(b)) return massOf(a) < massOf(b);
  return a.margin < Infinity && isWiderElsewhere(a.margins(), b.margins());
};

/** Of two that are equally limited, the one whose next smallest margin is larger. */
const isWiderElsewhere = (a: readonly Margin[], b: readonly Margin[]): boolean => {
  const place = a.findIndex(({ dB }, i) => (dB ?? Infinity) !== (b[i]?.dB ?? Infinity));
  return place >= 0 && (a[place]?.dB ?? Infinity) > (b[place]?.dB ?? Infinity);
};

/** The mass bounds the whole: no input makes verdict or margin better than the mass alone allows. */
const isBeyondHope = (mass: MassCheck, best: Best): boolean => {
  const severity = VERDICTS.indexOf(mass.verdict);
  if (severity !== best.severity) return severity > best.severity;
  const margin = massMargin({ mass }) ?? Infinity;
  return (mass.verdict === 'PASS' ? Math.max(0, margin) : margin) < best.margin;
};
