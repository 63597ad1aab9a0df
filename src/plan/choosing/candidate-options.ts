import type { OutputMode } from '../fields';
import type { Cable, Channel, Input, Mount, SensorType } from '../model';
import { joinName } from '../join-name';
import type { Combination, Part, Stock } from './candidate';

/** Which types and mounts come into question. Nothing given: all. */
export interface CandidateFilter {
  /** Sensing elements; a type comes into question when its own words contain one of these. */
  readonly technology?: readonly string[];
  readonly output?: readonly OutputMode[];
  /** At least so many axes in one housing. */
  readonly axes?: number;
  readonly sensors?: readonly string[];
  /** Names of mounts; they replace what a row names. */
  readonly mounts?: readonly string[];
  /** Leaves types out of which the lab is known to have none. */
  readonly inStock?: boolean;
}

export const filteredSensors = (
  sensors: readonly SensorType[],
  filter: CandidateFilter = {},
): readonly SensorType[] => {
  const { technology, output, axes, inStock } = filter;
  const elements = technology?.map(joinName);
  const names = filter.sensors?.map(joinName);
  return sensors.filter(
    (sensor) =>
      (!elements || elements.some((element) => joinName(sensor.technology ?? '').includes(element))) &&
      (!output || (sensor.output !== undefined && output.includes(sensor.output))) &&
      (axes === undefined || (sensor.axes ?? 1) >= axes) &&
      (!names || names.includes(joinName(sensor.name))) &&
      (!inStock || sensor.quantity !== 0),
  );
};

/** What may stand in each part of a row: its own, unless it has none or is free to change. */
export interface PartChoices {
  readonly mounts: readonly (Mount | undefined)[];
  readonly cables: readonly (Cable | undefined)[];
  readonly inputs: readonly (Input | undefined)[];
}

const UNKNOWN = [undefined] as const;

export const partChoices = (
  channel: Channel,
  stock: Stock,
  free: readonly Part[] = [],
  filter: CandidateFilter = {},
): PartChoices => {
  const choices = <T>(part: Part, own: T | undefined, all: readonly T[]): readonly (T | undefined)[] => {
    const isOwn = own !== undefined || channel.named?.[part] !== undefined;
    if (isOwn && !free.includes(part)) return [own];
    return all.length > 0 ? all : UNKNOWN;
  };
  const wanted = filter.mounts?.map(joinName);
  const mounts = wanted && stock.mounts.filter(({ name }) => wanted.includes(joinName(name)));
  return {
    mounts: mounts ?? choices('mount', channel.mount, stock.mounts),
    cables: choices('cable', channel.cable, stock.cables),
    inputs: choices('input', channel.input, stock.inputs),
  };
};

/** Every combination of one type with these parts, in the order of the lists. */
export function* combinationsOf(sensor: SensorType, { mounts, cables, inputs }: PartChoices): Generator<Combination> {
  for (const mount of mounts)
    for (const cable of cables) for (const input of inputs) yield { sensor, mount, cable, input };
}
