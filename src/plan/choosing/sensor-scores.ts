import { VERDICTS, type Verdict } from '../../core/verdict';
import type { Band } from '../../core/thermal/band';
import { capsOf, chainResponse, isResponseUnread, judgeSpan, type ChainResponse } from '../frequency';
import { judgeLevels, levelChain, type LevelChain } from '../level';
import { addedMass, judgeMass } from '../mass';
import { Missing } from '../missing';
import type { Cable, Channel, Input, Mount, SensorType } from '../model';
import type { SpanMemory } from '../span-memory';
import { checkThermal } from '../thermal';
import type { Asked, Askings } from './asked';
import { levelMargins, massMargin, spanMargins, thermalMargins, type Take } from './candidate-margins';

/** One headline, as far as a search must know it. */
export interface Score {
  readonly severity: number;
  /** dB, in the order in which all margins of a check are gone through. */
  readonly margins: readonly (number | undefined)[];
  /** The smallest that is known; infinite when none is. */
  readonly least: number;
}

const scoreOf = (verdict: Verdict, through: (take: Take) => void): Score => {
  const margins: (number | undefined)[] = [];
  let least = Infinity;
  through((_aim, _verdict, dB) => {
    margins.push(dB);
    if (dB !== undefined && dB < least) least = dB;
  });
  return { severity: VERDICTS.indexOf(verdict), margins, least };
};

const within = <T>(all: T[][], place: number): T[] => (all[place] ??= []);

interface Warmth {
  readonly score: Score;
  readonly band?: Band;
}

interface Response {
  readonly chain: ChainResponse;
  readonly isUnread: boolean;
}

/**
 * The four headlines of one sensor type, each worked out once for all rows and parts on which it comes to the same:
 * temperatures by the rated limits of mount and cable, noise and ceiling by input and band, the response by stiffness and
 * input. What is left per row are levels, mass and caps against their limits. The numbers are those of `checkChannel`.
 */
export class SensorScores {
  private readonly warmths: Warmth[][][] = [];
  private readonly chains: LevelChain[][][] = [];
  private readonly responses: Response[][][] = [];
  private readonly inputs = new Map<Input | undefined, number>();

  constructor(
    readonly sensor: SensorType,
    private readonly askings: Askings,
    private readonly spans: SpanMemory,
  ) {}

  thermal(asked: Asked, mount: Mount | undefined, cable: Cable | undefined): Score {
    return this.warmth(asked, mount, cable).score;
  }

  mass({ mass: asked }: Asked, mount: Mount | undefined, cable: Cable | undefined): Score {
    const isComplete = this.totalMass(mount, cable) < Infinity;
    const judged = judgeMass(addedMass(this.sensor, mount, cable), isComplete, asked);
    return scoreOf(judged.verdict, (take) => take('mass ratio', judged.verdict, massMargin(judged)));
  }

  /** kg; infinite while it is not known. */
  totalMass(mount: Mount | undefined, cable: Cable | undefined): number {
    const { sensor } = this;
    const isKnown = sensor.mass !== undefined && mount?.mass !== undefined && cable?.mass !== undefined;
    return isKnown ? addedMass(sensor, mount, cable) : Infinity;
  }

  /** Equal for cables of one number. */
  levelNumber(cable: Cable | undefined): number {
    return this.sensor.output === 'charge' ? this.askings.cable(cable).value : 0;
  }

  level(asked: Asked, cable: Cable | undefined, input: Input | undefined): Score {
    const chain = this.chain(asked, cable, input);
    const judged = judgeLevels(asked.channel.requirement, chain, asked.limits);
    return scoreOf(judged.verdict, (take) => levelMargins(chain.modes, judged, asked.limits, take));
  }

  /** Equal for cables of one number. */
  spanNumber(cable: Cable | undefined): number {
    return this.sensor.output === 'IEPE' ? this.askings.cable(cable).value : 0;
  }

  span(asked: Asked, mount: Mount | undefined, cable: Cable | undefined, input: Input | undefined): Score {
    const { chain, isUnread } = this.response(asked, mount, input);
    const { requirement } = asked.channel;
    const { sensitivityMax } = this.chain(asked, cable, input);
    const caps = capsOf(this.trial(asked, mount, cable, input), sensitivityMax, new Missing());
    const judged = judgeSpan(requirement, chain, caps, isUnread);
    return scoreOf(judged.verdict, (take) => spanMargins(requirement, judged, take));
  }

  private warmth(asked: Asked, mount: Mount | undefined, cable: Cable | undefined): Warmth {
    const known = within(within(this.warmths, asked.thermal), this.askings.mount(mount).thermal);
    return (known[this.askings.cable(cable).thermal] ??= this.warmthOf(this.trial(asked, mount, cable), asked));
  }

  private warmthOf(channel: Channel, { limits }: Asked): Warmth {
    const check = checkThermal(channel, limits);
    const score = scoreOf(check.verdict, (take) => thermalMargins(channel, check, limits, take));
    return { score, band: check.band };
  }

  private chain(asked: Asked, cable: Cable | undefined, input: Input | undefined): LevelChain {
    const known = within(within(this.chains, asked.noise), this.levelNumber(cable));
    // Neither mount nor cable changes what temperatures do to the sensitivity.
    return (known[this.place(input)] ??= levelChain(
      this.trial(asked, undefined, cable, input),
      this.warmth(asked, undefined, undefined).band,
      new Missing(),
    ));
  }

  private response(asked: Asked, mount: Mount | undefined, input: Input | undefined): Response {
    const known = within(within(this.responses, asked.span), this.askings.mount(mount).value);
    return (known[this.place(input)] ??= this.responseOf(this.trial(asked, mount, undefined, input), asked));
  }

  private responseOf(channel: Channel, { limits }: Asked): Response {
    const missing = new Missing();
    const chain = chainResponse(channel, limits, this.spans, missing);
    return { chain, isUnread: isResponseUnread(channel, missing) };
  }

  private place(input: Input | undefined): number {
    let place = this.inputs.get(input);
    if (place === undefined) this.inputs.set(input, (place = this.inputs.size));
    return place;
  }

  private trial({ channel }: Asked, mount?: Mount, cable?: Cable, input?: Input): Channel {
    return { id: channel.id, requirement: channel.requirement, sensor: this.sensor, mount, cable, input };
  }
}
