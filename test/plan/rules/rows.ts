import { checkChannels } from '../../../src/plan/check';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel, Input, SensorType } from '../../../src/plan/model';
import { acrossRows } from '../../../src/plan/rules-across';

export const TRIAX: SensorType = { name: 'Tri 10', axes: 3, mass: 0.01 };
export const UNI: SensorType = { name: 'Uni 5', axes: 1, mass: 0.005 };
export const INPUT: Input = { name: 'IEPE 10 V', mode: 'IEPE', modules: 2, moduleChannels: 4 };

/** A row that says no more than a rule needs. */
export const row = (id: string, given: Partial<Channel> = {}): Channel => ({
  id,
  requirement: { detector: { kind: 'band' }, localMass: [] },
  ...given,
});

export const acrossOf = (channels: readonly Channel[]) =>
  acrossRows(checkChannels(channels, DEFAULT_LIMITS), DEFAULT_LIMITS);
/** Findings of one kind, with the names of their channels. */
export const found = (check: string, ...channels: readonly Channel[]) =>
  acrossOf(channels)
    .filter(({ finding }) => finding.check === check)
    .map(({ finding, rows }) => ({ ...finding, of: rows.map((at) => channels[at]!.id).sort() }));
export const verdicts = (check: string, ...channels: readonly Channel[]) =>
  found(check, ...channels).map(({ verdict, of }) => [verdict, of.join(' ')]);
