import { worstVerdict, type Verdict } from '../core/verdict';
import { CheckMemory } from './check-memory';
import { checkFrequency, type FrequencyCheck } from './frequency';
import { checkLevel, type LevelCheck } from './level';
import type { Limits } from './limits';
import { limitsFor } from './limits-for';
import { checkMass, type MassCheck } from './mass';
import type { Channel } from './model';
import type { ThermalCheck } from './thermal';

export interface ChannelCheck {
  readonly channel: Channel;
  readonly level: LevelCheck;
  readonly mass: MassCheck;
  readonly thermal: ThermalCheck;
  readonly frequency: FrequencyCheck;
  /** Worst of the four headlines. */
  readonly verdict: Verdict;
}

/** The four headlines of one channel. Findings and sentences are made from the result when somebody asks. */
export const checkChannel = (channel: Channel, planLimits: Limits, memory = new CheckMemory()): ChannelCheck => {
  const limits = limitsFor(channel, planLimits);
  const thermal = memory.thermal(channel, limits);
  const level = checkLevel(channel, thermal.band, limits);
  const mass = checkMass(channel, limits);
  const frequency = checkFrequency(channel, level.sensitivityMax, limits, memory.spans);
  const verdict = worstVerdict([level.verdict, mass.verdict, thermal.verdict, frequency.verdict]);
  return { channel, level, mass, thermal, frequency, verdict };
};

/** All channels of a plan; equal responses are solved once. */
export const checkChannels = (channels: readonly Channel[], limits: Limits): ChannelCheck[] => {
  const memory = new CheckMemory();
  return channels.map((channel) => checkChannel(channel, limits, memory));
};
