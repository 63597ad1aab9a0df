import type { Verdict } from '../../core/verdict';
import type { ChannelCheck } from '../check';
import type { Headline } from '../finding';
import type { Cable, Channel, Input, Mount, Plan, SensorType } from '../model';

/** What the lab owns. One input per setting: each range of an input is an entry of its own. */
export interface Stock {
  readonly sensors: readonly SensorType[];
  readonly mounts: readonly Mount[];
  readonly cables: readonly Cable[];
  readonly inputs: readonly Input[];
}

export const stockOf = ({ sensors, mounts, cables, inputs }: Omit<Plan, 'channels' | 'limits'>): Stock => ({
  sensors: [...sensors.values()],
  mounts: [...mounts.values()],
  cables: [...cables.values()],
  inputs: [...inputs.values()],
});

/** Parts of a row that a choice may leave as they are. */
export type Part = 'mount' | 'cable' | 'input';
export const PARTS: readonly Part[] = ['mount', 'cable', 'input'];

/** One sensor type with what it needs to become a channel. An absent part is not known. */
export interface Combination {
  readonly sensor: SensorType;
  readonly mount?: Mount;
  readonly cable?: Cable;
  readonly input?: Input;
}

/** What a combination has to meet, one check each. */
export const AIMS = [
  'input mode',
  'signal to noise',
  'headroom',
  'mass ratio',
  'temperature limit',
  'thermal deviation',
  'span low',
  'span high',
] as const;
export type Aim = (typeof AIMS)[number];

export const HEADLINE_OF: Readonly<Record<Aim, Headline>> = {
  'input mode': 'level',
  'signal to noise': 'level',
  headroom: 'level',
  'mass ratio': 'mass',
  'temperature limit': 'thermal',
  'thermal deviation': 'thermal',
  'span low': 'frequency',
  'span high': 'frequency',
};

/** How far one check is from its PASS limit, in dB; see `marginsOf` for the scale. Undefined: not known. */
export interface Margin {
  readonly aim: Aim;
  readonly verdict: Verdict;
  readonly dB?: number;
}

/** A combination judged on one channel. */
export interface Fit {
  readonly combination: Combination;
  readonly check: ChannelCheck;
  /** Smallest first; what is not known comes last. */
  readonly margins: readonly Margin[];
  /** The smallest known margin, and what sets it. */
  readonly margin?: number;
  readonly limiting?: Margin;
}

/** The channel with these parts in place of its own. Written out, for a spread of millions of them costs more than a check. */
export const withCombination = (channel: Channel, { sensor, mount, cable, input }: Combination): Channel => ({
  id: channel.id,
  group: channel.group,
  point: channel.point,
  direction: channel.direction,
  location: channel.location,
  panel: channel.panel,
  role: channel.role,
  remarks: channel.remarks,
  requirement: channel.requirement,
  named: channel.named,
  sensor,
  mount,
  cable,
  input,
});
