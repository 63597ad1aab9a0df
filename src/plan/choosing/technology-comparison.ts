import type { UnitId } from '../../core/units';
import type { MissingField } from '../missing';
import { FIELD, type Demands } from './technology-demands';
import type { Reach, Tendency } from './technology-tendencies';
import type { Mark, ReasonCode, Relaxation, SensingElement, Step, TechnologyReason } from './technology-types';

/** One step asked of one element. */
export type Ask = (demands: Demands, tendency: Tendency, element: SensingElement) => readonly TechnologyReason[];

interface Comparison {
  readonly step: Step;
  readonly code: ReasonCode;
  readonly causes: readonly MissingField[];
  readonly mark: Mark;
  readonly unit: UnitId;
  /** What the channel asks; undefined while not known. */
  readonly number: number | undefined;
  readonly reach: Reach;
  /** Which side of the reach is too much to ask. */
  readonly excess: 'above' | 'below';
  /** What the channel may ask of a sensor that reaches so far. */
  readonly relaxed: (reached: number) => Relaxation | undefined;
}

/** A demand beside what is usual and what the best reach; nothing when it is within the usual. */
export const compared = ({ number, reach, excess, relaxed, ...reason }: Comparison): readonly TechnologyReason[] => {
  if (number === undefined) return [];
  const isBeyond = (limit: number) => (excess === 'above' ? number > limit : number < limit);
  if (!isBeyond(reach.usual)) return [];
  const falls = isBeyond(reach.best);
  const limit = falls ? reach.best : reach.usual;
  return [{ ...reason, standing: falls ? 'falls' : 'doubtful', number, limit, relaxation: relaxed(limit) }];
};

/** The hotter or the colder end of what the channel asks. */
export const ofTemperature = ({ bound }: Demands, end: 'hot' | 'cold') => {
  const field = end === 'hot' ? FIELD.temperatureHigh : FIELD.temperatureLow;
  const direction = end === 'hot' ? 'atMost' : 'atLeast';
  return {
    step: 'temperature',
    causes: [field],
    unit: '°C',
    number: bound(end === 'hot' ? 'highest rated temperature' : 'lowest rated temperature').pass,
    excess: end === 'hot' ? 'above' : 'below',
    relaxed: (number: number): Relaxation => ({ field, number, unit: '°C', direction }),
  } as const;
};
