import type { SensorType } from '../model';
import { joinName } from '../from-tables';
import type { AssignOptions, Serial } from './options';

/** Pieces of one type in one state of calibration. */
export interface StockPool {
  /** Place of the type in the stock. */
  readonly sensor: number;
  /** Pieces that may be used at once. */
  readonly count: number;
  /** Not known to be calibrated to the end of the test. */
  readonly isOverdue: boolean;
  readonly serials?: readonly string[];
}

/** What there is of one type, and why not all of it may be used. */
export interface TypeStock {
  /** Absent: no quantity is given anywhere, so there is no limit. */
  readonly quantity?: number;
  readonly kept: number;
  /** Left out because of their calibration. */
  readonly overdue: number;
}

export interface StockCount {
  readonly pools: readonly StockPool[];
  readonly types: readonly TypeStock[];
  /** No type has a quantity: then there is no limit. A single blank one means none. */
  readonly isUnlimited: boolean;
}

export const countStock = (sensors: readonly SensorType[], options: AssignOptions): StockCount => {
  const serials = new Map([...(options.serials ?? [])].map(([name, list]) => [joinName(name), list]));
  const serialsOf = ({ name }: SensorType): readonly Serial[] | undefined => serials.get(joinName(name));
  const isUnlimited = sensors.every((sensor) => sensor.quantity === undefined && !serialsOf(sensor));
  const isLate = (due: number | undefined): boolean =>
    options.testEnd !== undefined && (due === undefined || due < options.testEnd);
  const pools: StockPool[] = [];
  const types = sensors.map((sensor, place): TypeStock => {
    const list = serialsOf(sensor);
    const quantity = list?.length ?? sensor.quantity ?? (isUnlimited ? Infinity : 0);
    const whole = Math.max(0, Math.floor(quantity));
    const dueOf = (serial: Serial) => serial.calibrationDue ?? sensor.calibrationDue;
    const late = list ? list.filter((serial) => isLate(dueOf(serial))) : [];
    const lateCount = list ? late.length : isLate(sensor.calibrationDue) ? whole : 0;
    const spare = options.spare ?? 0;
    const kept = whole === Infinity || whole === 0 || spare <= 0 ? 0 : Math.min(whole, Math.ceil(spare * whole - 1e-9));
    const good = lateCount === Infinity ? 0 : whole - lateCount;
    const names = list?.filter((serial) => !isLate(dueOf(serial))).map(({ serial }) => serial);
    pools.push({ sensor: place, count: Math.max(0, good - kept), isOverdue: false, serials: names });
    const isAllowed = options.calibration === 'cost' && lateCount > 0;
    if (isAllowed) {
      const left = Math.max(0, lateCount - Math.max(0, kept - good));
      pools.push({ sensor: place, count: left, isOverdue: true, serials: list && late.map(({ serial }) => serial) });
    }
    return { quantity: whole === Infinity ? undefined : whole, kept, overdue: isAllowed ? 0 : lateCount };
  });
  return { pools, types, isUnlimited };
};
