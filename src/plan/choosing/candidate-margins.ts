import { decibels } from '../../core/level/margin';
import { temperatureLimitsVerdict, spanVerdict, thermalBandVerdict, type Verdict } from '../../core/verdict';
import type { ChannelCheck } from '../check';
import type { SpanVerdict } from '../frequency';
import { inputModes, type LevelMargins } from '../level';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import type { MassVerdict } from '../mass';
import type { Channel, Requirement } from '../model';
import type { ThermalCheck } from '../thermal';
import type { Aim, Margin } from './candidate';

/**
 * Margins of a checked channel, smallest first. All on one scale, 20·log10 of how many times better than its PASS limit
 * a check is, so that 0 dB is the limit itself and +6 dB is twice as good:
 * - signal to noise, headroom: the number in dB minus its limit in dB;
 * - mass ratio, thermal deviation: limit over number;
 * - span ends: needed edge over the span's lower end, the span's upper end over the needed edge;
 * - operating temperatures: what a part may leave the calibration temperature by, over what it must;
 * - input mode, empty span: works (no limit) or does not (−∞).
 * A check that passes within its slack has 0 dB, never less. Common practice has no such scale: it is ours.
 */
export const marginsOf = (check: ChannelCheck, limits: Limits): readonly Margin[] => {
  const margins: Margin[] = [];
  eachMargin(check, limits, (aim, verdict, dB) => margins.push({ aim, verdict, dB }));
  return margins.sort((a, b) => smallestFirst(a.dB, b.dB));
};

/** What is not known comes last. */
export const smallestFirst = (a: number | undefined, b: number | undefined): number =>
  (a ?? Infinity) - (b ?? Infinity) || (b === undefined ? 0 : 1) - (a === undefined ? 0 : 1);

/** The smallest known margin of those that are gone through, without a list of them all. */
export const smallest = (through: (take: Take) => void): number => {
  let least = Infinity;
  through((_aim, _verdict, dB) => {
    if (dB !== undefined && dB < least) least = dB;
  });
  return least;
};
export const worstMargin = (check: ChannelCheck, limits: Limits): number =>
  smallest((take) => eachMargin(check, limits, take));

export type Take = (aim: Aim, verdict: Verdict, dB: number | undefined) => void;

export const eachMargin = (
  { channel, level, mass, thermal, frequency }: ChannelCheck,
  limits: Limits,
  take: Take,
): void => {
  levelMargins(inputModes(channel.sensor, channel.input), level, limitsFor(channel, limits), take);
  take('mass ratio', mass.verdict, massMargin(mass));
  thermalMargins(channel, thermal, limits, take);
  spanMargins(channel.requirement, frequency, take);
};

/** A pass within its slack has 0 dB, never less. */
const give = (take: Take, aim: Aim, verdict: Verdict, dB: number | undefined): void =>
  take(aim, verdict, verdict === 'PASS' && dB !== undefined ? Math.max(0, dB) : dB);

/** `limits` are those of the row. */
export const levelMargins = (modes: Verdict, level: LevelMargins, limits: Limits, take: Take): void => {
  take('input mode', modes, modes === 'FAIL' ? -Infinity : modes === 'PASS' ? Infinity : undefined);
  const over = (dB: number | undefined, pass: number) => (dB === undefined ? undefined : dB - pass);
  const ratio = level.signalToNoise ?? (level.lowEnd === 'FAIL' ? level.signalToNoiseAtMost : undefined);
  give(take, 'signal to noise', level.lowEnd, over(ratio, limits.signalToNoise.pass));
  const lost = level.noSwing ? -Infinity : level.headroomAtMost;
  const room = level.headroom ?? (level.highEnd === 'FAIL' ? lost : undefined);
  give(take, 'headroom', level.highEnd, over(room, limits.headroom.pass));
};

export const massMargin = (mass: MassVerdict): number | undefined => {
  const ratio = mass.ratio ?? (mass.verdict === 'FAIL' ? mass.ratioAtLeast : undefined);
  if (ratio === undefined || !mass.limit) return undefined;
  const margin = times(mass.limit.pass, ratio);
  return mass.verdict === 'PASS' ? Math.max(0, margin) : margin;
};

/** How many times the first holds the second, in dB; nothing needed leaves no limit. */
const times = (allowed: number, needed: number): number =>
  needed <= 0 ? Infinity : allowed <= 0 ? -Infinity : decibels(allowed, needed);

export const thermalMargins = (
  { requirement, sensor, mount, cable }: Channel,
  thermal: ThermalCheck,
  limits: Limits,
  take: Take,
): void => {
  const needed = { min: requirement.temperatureLow, max: requirement.temperatureHigh };
  const ofPart = (part: typeof sensor | typeof mount | typeof cable) => ({
    min: part?.temperatureMin,
    max: part?.temperatureMax,
  });
  const reference = sensor?.calibrationTemperature ?? limits.calibrationTemperature;
  const parts = [ofPart(sensor), ofPart(mount), ofPart(cable)];
  const verdict = temperatureLimitsVerdict(needed, parts[0]!, parts.slice(1));
  let room: number | undefined = verdict === 'INCOMPLETE' ? undefined : Infinity;
  for (const { min, max } of parts) {
    if (min !== undefined && needed.min !== undefined)
      room = lesser(room, excursion(reference - min, reference - needed.min), verdict);
    if (max !== undefined && needed.max !== undefined)
      room = lesser(room, excursion(max - reference, needed.max - reference), verdict);
  }
  give(take, 'temperature limit', verdict, room);
  const { band, tolerance, worst } = thermal;
  const outcome = thermalBandVerdict(band, tolerance?.pass);
  give(take, 'thermal deviation', outcome, tolerance && worst !== undefined ? times(tolerance.pass, worst) : undefined);
};

const excursion = (allowed: number, needed: number): number => {
  if (allowed >= needed) return times(allowed, needed);
  return needed <= 0 ? -Infinity : times(allowed, needed);
};

/** While the verdict is open nothing can be said of the room. */
const lesser = (room: number | undefined, next: number, verdict: Verdict): number | undefined =>
  verdict === 'INCOMPLETE' ? undefined : Math.min(room ?? Infinity, next);

export const spanMargins = (
  { bandLow, bandHigh }: Pick<Requirement, 'bandLow' | 'bandHigh'>,
  frequency: SpanVerdict,
  take: Take,
): void => {
  const { span, wide, widest, isReversed } = frequency;
  const shown = span ?? (span === undefined ? widest : span);
  const outer = wide ?? (wide === undefined ? widest : wide);
  if (!isReversed && (shown === null || outer === null)) {
    take('span low', 'FAIL', -Infinity);
    take('span high', 'FAIL', -Infinity);
    return;
  }
  const inner = span ?? undefined;
  const low = isReversed || !outer ? 'INCOMPLETE' : spanVerdict({ low: bandLow, high: outer.low }, inner, outer);
  const high = isReversed || !outer ? 'INCOMPLETE' : spanVerdict({ low: outer.high, high: bandHigh }, inner, outer);
  const lowDb = shown && bandLow !== undefined ? times(bandLow, shown.low) : undefined;
  const highDb = shown && bandHigh !== undefined ? times(shown.high, bandHigh) : undefined;
  give(take, 'span low', low, low === 'INCOMPLETE' ? undefined : lowDb);
  give(take, 'span high', high, high === 'INCOMPLETE' ? undefined : highDb);
};
