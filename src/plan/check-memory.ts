import type { Bound, Limits } from './limits';
import type { Cable, Channel, Mount, SensorType } from './model';
import { SpanMemory } from './span-memory';
import { checkThermal, type ThermalCheck } from './thermal';

/** More variants than this per sensor type cost more to look up than to work out again. */
const MOST_PER_SENSOR = 32;

interface Known {
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly tolerance: number | undefined;
  readonly bound: Bound;
  readonly unread: readonly string[] | undefined;
  readonly mount: Mount | undefined;
  readonly cable: Cable | undefined;
  readonly result: ThermalCheck;
}

/** What the rows of one check run share: many channels have the same sensor at the same temperatures. For one plan’s limits. */
export class CheckMemory {
  readonly spans = new SpanMemory();
  private readonly thermals = new Map<SensorType | undefined, Known[]>();

  thermal(channel: Channel, limits: Limits): ThermalCheck {
    const { requirement, sensor, mount, cable } = channel;
    const { temperatureLow: low, temperatureHigh: high, thermalTolerance: tolerance, unread } = requirement;
    let known = this.thermals.get(sensor);
    if (!known) this.thermals.set(sensor, (known = []));
    for (const entry of known)
      if (
        entry.low === low &&
        entry.high === high &&
        entry.tolerance === tolerance &&
        entry.bound === limits.thermalTolerance &&
        entry.unread === unread &&
        entry.mount === mount &&
        entry.cable === cable
      )
        return entry.result;
    const result = checkThermal(channel, limits);
    if (known.length < MOST_PER_SENSOR)
      known.push({ low, high, tolerance, bound: limits.thermalTolerance, unread, mount, cable, result });
    return result;
  }
}
