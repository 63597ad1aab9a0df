import { OUTPUT_MODES, type OutputMode } from '../fields';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import type { MissingField } from '../missing';
import type { Channel } from '../model';
import { demandsOf, FIELD, type Demands } from './technology-demands';
import { reasonsAgainst } from './technology-elements';
import { reasonsAgainstOutput } from './technology-outputs';
import { LEAST_MASS, MARK_OF, TENDENCIES } from './technology-tendencies';
import {
  ELEMENTS,
  STEPS,
  type Advised,
  type Circumstances,
  type SensingElement,
  type Standing,
  type Step,
  type TechnologyAdvice,
  type TechnologyReason,
} from './technology-types';

/**
 * Which sensing elements and outputs stay admissible at a channel, which fall, why, and what would bring them back.
 * Tendencies of whole kinds, each with its mark: the data of the individual sensor always decides.
 */
export const adviseTechnology = (
  channel: Channel,
  planLimits: Limits,
  circumstances: Circumstances = {},
): TechnologyAdvice => {
  const demands = demandsOf(channel, limitsFor(channel, planLimits), circumstances);
  const ownOutputs = OUTPUT_MODES.map((output) => advised(output, reasonsAgainstOutput(output, demands)));
  const standingOf = new Map(ownOutputs.map(({ kind, standing }) => [kind, standing]));
  const elements = ELEMENTS.map((element) => elementAdvice(element, demands, standingOf));
  const outputs = ownOutputs.map((own) => {
    const isMade = elements.some(({ standing, kind }) => standing !== 'falls' && TENDENCIES[kind].outputs.includes(own.kind)); // prettier-ignore
    return isMade || own.standing === 'falls' ? own : advised(own.kind, [...own.reasons, NOTHING_LEFT]);
  });
  const allowed = demands.bound('sensor mass').pass;
  return {
    channel: channel.id,
    elements,
    outputs,
    nonContact:
      allowed !== undefined && allowed <= LEAST_MASS
        ? { allowed, least: LEAST_MASS, mark: MARK_OF.lightest }
        : undefined,
    missing: notAsked(demands),
  };
};

const advised = <Kind extends string>(kind: Kind, reasons: readonly TechnologyReason[]): Advised<Kind> => ({
  kind,
  standing: worst(reasons),
  reasons: [...reasons].sort((a, b) => STEPS.indexOf(a.step) - STEPS.indexOf(b.step)),
});

const worst = (reasons: readonly TechnologyReason[]): Standing =>
  reasons.some(({ standing }) => standing === 'falls') ? 'falls' : reasons.length > 0 ? 'doubtful' : 'admissible';

const NOTHING_LEFT: TechnologyReason = {
  step: 'charge or IEPE',
  code: 'nothing left',
  standing: 'falls',
  causes: [],
  mark: 'by definition',
};

/** An element none of whose outputs is left falls with them. */
const elementAdvice = (
  element: SensingElement,
  demands: Demands,
  standingOf: ReadonlyMap<OutputMode, Standing>,
): TechnologyAdvice['elements'][number] => {
  const own = reasonsAgainst(element, demands);
  const made = TENDENCIES[element].outputs;
  const outputs = made.filter((output) => standingOf.get(output) !== 'falls');
  const reasons = outputs.length === 0 ? [...own, NOTHING_LEFT] : own;
  return { ...advised(element, reasons), outputs };
};

/** Steps that rest on what is not known. */
const notAsked = ({ bound, channel }: Demands): TechnologyAdvice['missing'] => {
  const { bandLow } = channel.requirement;
  const steps: readonly (readonly [Step, readonly MissingField[]])[] = [
    ['static and low frequency', bandLow === undefined ? [FIELD.bandLow] : []],
    ['temperature', [...bound('lowest rated temperature').missing, ...bound('highest rated temperature').missing]],
    ['thermal tolerance', bound('thermal coefficient').missing],
    ['mass', bound('sensor mass').missing],
    ['low level', bound('white noise density').missing],
    ['full scale and shock', bound('full scale').missing],
    ['band', bound('mounted resonance').missing],
  ];
  return steps.flatMap(([step, fields]) => (fields.length > 0 ? [{ step, fields }] : []));
};
