import { VERDICTS } from '../../core/verdict';
import { checkChannel, type ChannelCheck } from '../check';
import type { CheckMemory } from '../check-memory';
import { checkLevel, modeMismatch } from '../level';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { checkMass } from '../mass';
import type { Channel, Input, SensorType } from '../model';
import { withCombination, type Combination, type Fit, type Margin } from './candidate';
import { levelMargins, marginsOf, massMargin, smallest, thermalMargins, worstMargin } from './candidate-margins';
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
 * The best combination of one type: best verdict, then largest worst margin, then lightest, then largest next margin,
 * then first in the lists. What cannot beat the best found so far is not checked in full: inputs of the wrong mode, and
 * whatever is worse by its level, mass or temperatures alone.
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
  for (const cable of cables) {
    // The level does not depend on the mount.
    const levels = fitting.map((input) =>
      levelBound(trial(channel, { sensor, mount: mounts[0], cable, input }), limits, memory),
    );
    for (const mount of mounts) {
      const part = partBound(trial(channel, { sensor, mount, cable }), limits, memory);
      fitting.forEach((input, i) => {
        if (best && (isBeyondHope(part, best) || isBeyondHope(levels[i]!, best))) return;
        const combination = { sensor, mount, cable, input };
        const check = checkChannel(trial(channel, combination), limits, memory);
        work.checked += 1;
        const severity = VERDICTS.indexOf(check.verdict);
        if (best && severity > best.severity) return;
        const margins = () => marginsOf(check, limits);
        const next = { combination, check, severity, margin: worstMargin(check, limits), margins };
        if (!best || isBetter(next, best)) best = next;
      });
    }
  }
  if (!best) return undefined;
  const { combination } = best;
  return fitOf(combination, checkChannel(withCombination(channel, combination), limits, memory), limits);
};

/** Only what the checks look at: most trials are thrown away. */
const trial = ({ id, requirement }: Channel, { sensor, mount, cable, input }: Combination): Channel => ({
  id,
  requirement,
  sensor,
  mount,
  cable,
  input,
});

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

/** No verdict can be better, and no margin larger, than what one headline alone leaves. */
interface Bound {
  readonly severity: number;
  readonly margin: number;
}

const levelBound = (channel: Channel, planLimits: Limits, memory: CheckMemory): Bound => {
  const limits = limitsFor(channel, planLimits);
  const level = checkLevel(channel, memory.thermal(channel, limits).band, limits);
  const margin = smallest((take) => levelMargins({ channel, level }, limits, take));
  return { severity: VERDICTS.indexOf(level.verdict), margin };
};

const partBound = (channel: Channel, planLimits: Limits, memory: CheckMemory): Bound => {
  const limits = limitsFor(channel, planLimits);
  const mass = checkMass(channel, limits);
  const thermal = memory.thermal(channel, limits);
  const margin = smallest((take) => thermalMargins({ channel, thermal }, limits, take));
  return {
    severity: Math.max(VERDICTS.indexOf(mass.verdict), VERDICTS.indexOf(thermal.verdict)),
    margin: Math.min(margin, massMargin({ mass }) ?? Infinity),
  };
};

const isBeyondHope = (bound: Bound, best: Best): boolean =>
  bound.severity === best.severity ? bound.margin < best.margin : bound.severity > best.severity;
