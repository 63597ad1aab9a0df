import { VERDICTS, verdictCounts, type Verdict } from '../../core/verdict';
import { checkChannels, type ChannelCheck } from '../check';
import type { Finding, Headline } from '../finding';
import { findingsOf } from '../findings';
import type { Limits } from '../limits';
import type { Cable, Channel, Input, Mount, Requirement, SensorType } from '../model';
import { acrossRows } from '../rules-across';
import { worstMargin } from './candidate-margins';

/** What is tried on a channel; what is left out stays. */
export interface ChannelChange {
  readonly requirement?: Partial<Requirement>;
  readonly sensor?: SensorType;
  readonly mount?: Mount;
  readonly cable?: Cable;
  readonly input?: Input;
}

export const changedChannel = (channel: Channel, { requirement, ...parts }: ChannelChange): Channel => ({
  ...channel,
  ...parts,
  requirement: requirement ? { ...channel.requirement, ...requirement } : channel.requirement,
});

/** One channel before and after. */
export interface ComparedChannel {
  /** Place in the list. */
  readonly place: number;
  readonly before: ChannelCheck;
  readonly after: ChannelCheck;
  /** dB of the smallest margin; see `marginsOf`. */
  readonly marginBefore: number;
  readonly marginAfter: number;
  readonly turn: 'better' | 'worse' | 'same';
  readonly headlines: readonly Headline[];
  /** What keeps it from a PASS now and did not before, and the other way round. */
  readonly came: readonly Finding[];
  readonly gone: readonly Finding[];
}

export interface Comparison {
  readonly before: Readonly<Record<Verdict, number>>;
  readonly after: Readonly<Record<Verdict, number>>;
  readonly channels: readonly ComparedChannel[];
  /** Channels of which a verdict or a margin differs, the worst turn first. */
  readonly changed: readonly ComparedChannel[];
  /** What shows only when rows are taken together, new and gone. */
  readonly across: { readonly came: readonly Finding[]; readonly gone: readonly Finding[] };
}

/** Checks the plan as it is and as it would be. Writes nothing: channels are values. */
export const whatIf = (
  channels: readonly Channel[],
  limits: Limits,
  change: (channel: Channel, place: number) => Channel,
  limitsAfter: Limits = limits,
): Comparison =>
  compareChecks(checkChannels(channels, limits), checkChannels(channels.map(change), limitsAfter), limits, limitsAfter);

const HEADLINES: readonly Headline[] = ['level', 'mass', 'thermal', 'frequency'];

export const compareChecks = (
  before: readonly ChannelCheck[],
  after: readonly ChannelCheck[],
  limits: Limits,
  limitsAfter: Limits = limits,
): Comparison => {
  const channels = before.map((was, place) => compared(place, was, after[place] ?? was, limits, limitsAfter));
  const changed = channels.filter(
    ({ headlines, turn, marginBefore, marginAfter }) =>
      headlines.length > 0 || turn !== 'same' || marginBefore !== marginAfter,
  );
  const together = (checks: readonly ChannelCheck[], by: Limits) =>
    acrossRows(checks, by).flatMap(({ finding }) => (finding.verdict === 'PASS' ? [] : [finding]));
  return {
    before: verdictCounts(before),
    after: verdictCounts(after),
    channels,
    changed: changed.sort((a, b) => ORDER[a.turn] - ORDER[b.turn] || a.place - b.place),
    across: differences(together(before, limits), together(after, limitsAfter), JSON.stringify),
  };
};

const ORDER = { worse: 0, better: 1, same: 2 } as const;

const compared = (
  place: number,
  before: ChannelCheck,
  after: ChannelCheck,
  limits: Limits,
  limitsAfter: Limits,
): ComparedChannel => {
  const difference = VERDICTS.indexOf(after.verdict) - VERDICTS.indexOf(before.verdict);
  const reasons = (check: ChannelCheck, by: Limits) =>
    findingsOf(check, by).filter(({ verdict }) => verdict !== 'PASS');
  return {
    place,
    before,
    after,
    marginBefore: worstMargin(before, limits),
    marginAfter: worstMargin(after, limitsAfter),
    turn: difference > 0 ? 'worse' : difference < 0 ? 'better' : 'same',
    headlines: HEADLINES.filter((headline) => before[headline].verdict !== after[headline].verdict),
    ...differences(reasons(before, limits), reasons(after, limitsAfter), kindOf),
  };
};

/** The same kind of finding at the same severity is the same reason, whatever its number. */
const kindOf = (finding: Finding): string =>
  finding.check === 'missing'
    ? `missing ${finding.fields.map(({ table, key }) => `${table}.${key}`).join()}`
    : `${finding.check} ${finding.verdict}${finding.check === 'temperature limit' ? finding.part + finding.end : ''}`;

const differences = <T extends Finding>(before: readonly T[], after: readonly T[], keyOf: (finding: T) => string) => {
  const had = new Set(before.map(keyOf));
  const has = new Set(after.map(keyOf));
  return {
    came: after.filter((finding) => !had.has(keyOf(finding))),
    gone: before.filter((finding) => !has.has(keyOf(finding))),
  };
};
