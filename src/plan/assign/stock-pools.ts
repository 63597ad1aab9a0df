import { joinName } from '../join-name';
import type { Channel, SensorType } from '../model';
import { bySerial } from '../pieces';
import type { AssignOptions, Serial } from './options';
import { isLate } from './test-end';

/** Pieces of one type in one state of calibration. */
export interface StockPool {
  /** Place of the type in the stock. */
  readonly sensor: number;
  /** Pieces that may be used at once. */
  readonly count: number;
  /** Not known to be calibrated to the end of the test. */
  readonly isOverdue: boolean;
  /** The pieces in the order in which they are given out; without a number, undefined. Absent: none has one. */
  readonly serials?: readonly (string | undefined)[];
}

/** What there is of one type, and why not all of it may be used. */
export interface TypeStock {
  /** Absent: no quantity is given anywhere, so there is no limit. */
  readonly quantity?: number;
  readonly kept: number;
  /** Left out because of their calibration. */
  readonly overdue: number;
  /** The serial numbers of those, as far as they have one. */
  readonly late: readonly string[];
  /** Pieces that channels keep although they are late or not in the list. */
  readonly beyond: number;
}

export interface StockCount {
  readonly pools: readonly StockPool[];
  readonly types: readonly TypeStock[];
  /** No type has a quantity: then there is no limit. A single blank one means none. */
  readonly isUnlimited: boolean;
}

/** What counts as the type's pieces one by one: those of the list, and the rest of its quantity without numbers. */
const piecesOf = ({ pieces, quantity = 0 }: SensorType): readonly Serial[] | undefined =>
  pieces && [...pieces, ...Array.from({ length: Math.max(0, Math.floor(quantity) - pieces.length) }, () => ({}))];

const inOrder = (list: readonly Serial[]): readonly (string | undefined)[] =>
  list
    .map(({ serial }) => serial)
    .sort((a, b) => (a === undefined ? Number(b !== undefined) : b === undefined ? -1 : bySerial(a, b)));

/** `kept` are the channels that keep their sensor: what they name is theirs, whatever its calibration. */
export const countStock = (
  sensors: readonly SensorType[],
  options: AssignOptions,
  kept: readonly Channel[] = [],
): StockCount => {
  const serials = new Map([...(options.serials ?? [])].map(([name, list]) => [joinName(name), list]));
  const listOf = (sensor: SensorType) => (options.serials ? serials.get(joinName(sensor.name)) : piecesOf(sensor));
  const isUnlimited = sensors.every((sensor) => sensor.quantity === undefined && !listOf(sensor));
  const held = heldSerials(kept);
  const pools: StockPool[] = [];
  const types = sensors.map((sensor, place): TypeStock => {
    const list = listOf(sensor);
    const whole = Math.max(0, Math.floor(list?.length ?? sensor.quantity ?? (isUnlimited ? Infinity : 0)));
    const isSerialLate = ({ calibrationDue }: Serial): boolean =>
      isLate(calibrationDue ?? (options.serials && sensor.calibrationDue), options);
    const late = list?.filter(isSerialLate) ?? [];
    const lateCount = list ? late.length : isLate(sensor.calibrationDue, options) ? whole : 0;
    const spare = options.spare ?? 0;
    const spared = whole === Infinity || whole === 0 || spare <= 0 ? 0 : Math.min(whole, Math.ceil(spare * whole - 1e-9)); // prettier-ignore
    const good = lateCount === Infinity ? 0 : whole - lateCount;
    const names = list && inOrder(list.filter((piece) => !isSerialLate(piece)));
    const beyond = names ? without(held.get(sensor) ?? [], names) : [];
    const count = Math.max(0, good - spared) + beyond.length;
    pools.push({ sensor: place, count, isOverdue: false, serials: names && [...names, ...beyond] });
    const isAllowed = options.calibration === 'cost' && lateCount > 0;
    if (isAllowed) {
      const left = Math.max(0, lateCount - Math.max(0, spared - good));
      pools.push({ sensor: place, count: left, isOverdue: true, serials: list && inOrder(late) });
    }
    return {
      quantity: whole === Infinity ? undefined : whole,
      kept: spared,
      overdue: isAllowed ? 0 : lateCount,
      late: isAllowed ? [] : inOrder(late).flatMap((serial) => serial ?? []),
      beyond: beyond.length,
    };
  });
  return { pools, types, isUnlimited };
};

/** The serial numbers that channels name, by type, each once. */
const heldSerials = (channels: readonly Channel[]): ReadonlyMap<SensorType, readonly string[]> => {
  const held = new Map<SensorType, Map<string, string>>();
  for (const { sensor, serial } of channels) {
    if (!sensor || serial === undefined) continue;
    const own = held.get(sensor) ?? new Map<string, string>();
    held.set(sensor, own.set(joinName(serial), own.get(joinName(serial)) ?? serial));
  }
  return new Map([...held].map(([sensor, own]) => [sensor, [...own.values()]]));
};

const without = (held: readonly string[], names: readonly (string | undefined)[]): readonly string[] => {
  const known = new Set(names.map((name) => name && joinName(name)));
  return held.filter((serial) => !known.has(joinName(serial)));
};
