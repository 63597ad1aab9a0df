import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { massAsked, type MassAsked } from '../mass';
import { Missing } from '../missing';
import type { Cable, Channel, Mount } from '../model';

/** Small numbers for texts, the same for the same text. */
class Numbers {
  private readonly known = new Map<string, number>();
  of(...values: readonly unknown[]): number {
    const key = values.join('|');
    let number = this.known.get(key);
    if (number === undefined) this.known.set(key, (number = this.known.size + 1));
    return number;
  }
}

/** One demand made ready: what many rows and many parts have in common is told by equal numbers. */
export interface Asked {
  readonly channel: Channel;
  /** Of the row. */
  readonly limits: Limits;
  readonly mass: MassAsked;
  /** Temperatures and tolerance. */
  readonly thermal: number;
  /** The same, with the band in which noise counts. */
  readonly noise: number;
  /** Reference and tolerance of the usable span. */
  readonly span: number;
}

/** What of a mount or cable the checks look at; 0 where there is no part. */
export interface PartNumbers {
  readonly thermal: number;
  /** Stiffness of a mount, capacitance of a cable. */
  readonly value: number;
}
const NO_PART: PartNumbers = { thermal: 0, value: 0 };

/** Numbers for the demands and parts of one search; they mean nothing in another. */
export class Askings {
  private readonly thermals = new Numbers();
  private readonly noises = new Numbers();
  private readonly spans = new Numbers();
  private readonly ratings = new Numbers();
  private readonly values = new Numbers();
  private readonly parts = new Map<Mount | Cable, PartNumbers>();

  constructor(private readonly planLimits: Limits) {}

  of(channel: Channel): Asked {
    const { requirement } = channel;
    const { bandLow, bandHigh, detector, temperatureLow, temperatureHigh, thermalTolerance, unread } = requirement;
    const limits = limitsFor(channel, this.planLimits);
    const isUnread = (key: string): boolean => unread?.includes(key) === true;
    const thermal = this.thermals.of(temperatureLow, temperatureHigh, thermalTolerance, limits.thermalTolerance.pass, isUnread('thermalTolerance')); // prettier-ignore
    const { pass, warn } = limits.spanTolerance;
    const lines = detector.kind === 'line' ? [detector.lineSpacing] : [];
    return {
      channel,
      limits,
      mass: massAsked(requirement, limits, new Missing()),
      thermal,
      noise: this.noises.of(thermal, bandLow, bandHigh, detector.kind, ...lines),
      span: this.spans.of(requirement.spanTolerance, requirement.referenceFrequency, pass, warn, isUnread('spanTolerance'), isUnread('referenceFrequency')), // prettier-ignore
    };
  }

  mount(mount: Mount | undefined): PartNumbers {
    return mount ? this.part(mount, mount.stiffness) : NO_PART;
  }

  cable(cable: Cable | undefined): PartNumbers {
    return cable ? this.part(cable, cable.capacitance) : NO_PART;
  }

  private part(part: Mount | Cable, value: number | undefined): PartNumbers {
    let found = this.parts.get(part);
    if (!found) {
      const { temperatureMin, temperatureMax, unread } = part;
      found = {
        thermal: this.ratings.of(temperatureMin, temperatureMax, unread),
        value: this.values.of(value, unread),
      };
      this.parts.set(part, found);
    }
    return found;
  }
}
