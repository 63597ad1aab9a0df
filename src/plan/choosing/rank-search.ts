import { VERDICTS, type Verdict } from '../../core/verdict';
import { checkChannel, type ChannelCheck } from '../check';
import { CheckMemory } from '../check-memory';
import { modeMismatch } from '../level';
import type { Limits } from '../limits';
import type { Channel, Input, SensorType } from '../model';
import { Askings, type Asked } from './asked';
import { withCombination, type Combination, type Fit } from './candidate';
import { marginsOf, smallestFirst } from './candidate-margins';
import type { PartChoices } from './candidate-options';
import { SensorScores, type Score } from './sensor-scores';

/** The best combination of one type for one demand. */
export interface Best {
  readonly combination: Combination;
  readonly verdict: Verdict;
  /** dB; see `marginsOf`. Absent: none is known. */
  readonly margin?: number;
}

/** Searching among the combinations of one stock; what was worked out for one demand is known for the next. */
export class CombinationSearch {
  /** Combinations that were looked at to the end. */
  looked = 0;
  private readonly memory = new CheckMemory();
  private readonly askings: Askings;
  private readonly scores = new Map<SensorType, SensorScores>();

  constructor(private readonly limits: Limits) {
    this.askings = new Askings(limits);
  }

  asked(channel: Channel): Asked {
    return this.askings.of(channel);
  }

  /**
   * The best combination of one type: best verdict, then largest worst margin, then lightest, then largest next margin,
   * then first in the lists. Inputs of the wrong mode, and whatever is worse by its level, mass or temperatures alone, are
   * left out early.
   */
  best(asked: Asked, sensor: SensorType, choices: PartChoices): Best | undefined {
    const found = this.winner(asked, sensor, choices);
    return found && { combination: found.combination, verdict: VERDICTS[found.severity]!, margin: found.margin };
  }

  /** The same with its full check and all its margins. */
  fit(asked: Asked, sensor: SensorType, choices: PartChoices): Fit | undefined {
    const found = this.winner(asked, sensor, choices);
    if (!found) return undefined;
    const check = checkChannel(withCombination(asked.channel, found.combination), this.limits, this.memory);
    return fitOf(found.combination, check, this.limits);
  }

  /** Gives back what is known of a type that will not be asked about again. */
  forget(sensor: SensorType): void {
    this.scores.delete(sensor);
  }

  private winner(asked: Asked, sensor: SensorType, { mounts, cables, inputs }: PartChoices): Trial | undefined {
    let scores = this.scores.get(sensor);
    if (!scores) this.scores.set(sensor, (scores = new SensorScores(sensor, this.askings, this.memory.spans)));
    const fitting = fittingInputs(sensor, inputs);
    const levels: (readonly Score[])[] = [];
    const spans = new Map<number, Score[]>();
    let best: Trial | undefined;
    for (const cable of cables) {
      const level = (levels[scores.levelNumber(cable)] ??= fitting.map((input) => scores.level(asked, cable, input)));
      const cableNumber = scores.spanNumber(cable);
      for (const mount of mounts) {
        const thermal = scores.thermal(asked, mount, cable);
        const mass = scores.mass(asked, mount, cable);
        const total = scores.totalMass(mount, cable);
        const part = both(thermal, mass);
        if (best && isBeyondHope(best, part, total)) continue;
        const known = within(spans, this.askings.mount(mount).value * MOST_CABLES + cableNumber);
        for (let i = 0; i < fitting.length; i++) {
          const bound = both(part, level[i]!);
          if (best && isBeyondHope(best, bound, total)) continue;
          const input = fitting[i];
          const span = (known[i] ??= scores.span(asked, mount, cable, input));
          this.looked += 1;
          const whole = both(bound, span);
          if (best && isBeyondHope(best, whole, total)) continue;
          const next = new Trial({ sensor, mount, cable, input }, total, whole, [level[i]!, mass, thermal, span]);
          if (!best || next.isBetterThan(best)) best = next;
        }
      }
    }
    return best;
  }
}

const MOST_CABLES = 2 ** 20;

const within = (all: Map<number, Score[]>, place: number): Score[] => {
  let found = all.get(place);
  if (!found) all.set(place, (found = []));
  return found;
};

export const fitOf = (combination: Combination, check: ChannelCheck, limits: Limits): Fit => {
  const margins = marginsOf(check, limits);
  const [limiting] = margins;
  const isKnown = limiting?.dB !== undefined;
  return { combination, check, margins, margin: limiting?.dB, limiting: isKnown ? limiting : undefined };
};

/** Inputs of the wrong mode fail whatever else holds, so they only count when there is no other. */
const fittingInputs = (sensor: SensorType, inputs: readonly (Input | undefined)[]) => {
  const fitting = inputs.filter((input) => !modeMismatch(sensor, input));
  return fitting.length > 0 ? fitting : inputs.slice(0, 1);
};

/** A combination with its headlines in the order in which margins are gone through. */
class Trial {
  readonly severity: number;
  readonly least: number;
  private margins?: readonly (number | undefined)[];

  constructor(
    readonly combination: Combination,
    readonly mass: number,
    { severity, least }: Bound,
    private readonly scores: readonly Score[],
  ) {
    this.severity = severity;
    this.least = least;
  }

  isBetterThan(other: Trial): boolean {
    if (this.severity !== other.severity) return this.severity < other.severity;
    if (this.least !== other.least) return this.least > other.least;
    if (this.mass !== other.mass) return this.mass < other.mass;
    return this.least < Infinity && isWiderElsewhere(this.sorted(), other.sorted());
  }

  get margin(): number | undefined {
    return this.sorted()[0];
  }

  private sorted(): readonly (number | undefined)[] {
    if (this.margins) return this.margins;
    const margins: (number | undefined)[] = [];
    for (const score of this.scores) for (const dB of score.margins) margins.push(dB);
    return (this.margins = margins.sort(smallestFirst));
  }
}

/** Of two that are equally limited, the one whose next smallest margin is larger. */
const isWiderElsewhere = (a: readonly (number | undefined)[], b: readonly (number | undefined)[]): boolean => {
  const place = a.findIndex((dB, i) => (dB ?? Infinity) !== (b[i] ?? Infinity));
  return place >= 0 && (a[place] ?? Infinity) > (b[place] ?? Infinity);
};

/** No verdict can be better, and no margin larger, than what some headlines leave. */
type Bound = Pick<Score, 'severity' | 'least'>;

const both = (a: Bound, b: Bound): Bound => ({
  severity: a.severity > b.severity ? a.severity : b.severity,
  least: a.least < b.least ? a.least : b.least,
});

/** What is left can at best come to the best one found so far, and not be lighter. */
const isBeyondHope = (best: Trial, { severity, least }: Bound, mass: number): boolean =>
  severity !== best.severity
    ? severity > best.severity
    : least < best.least || (least === best.least && mass > best.mass);
