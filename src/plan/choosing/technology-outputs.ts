import type { OutputMode } from '../fields';
import { MODE_OF } from '../level';
import { FIELD, type Demands } from './technology-demands';
import { compared, ofTemperature } from './technology-comparison';
import { ELECTRONICS, ELECTRONICS_HEAT, LONG_CHARGE_CABLE } from './technology-tendencies';
import type { Environment, ReasonCode, Standing, TechnologyReason } from './technology-types';

const BY_CIRCUMSTANCE = { field: 'circumstances' } as const;

/** What a surrounding does to an output. */
const SURROUNDINGS: Readonly<
  Record<
    Environment,
    {
      readonly code: ReasonCode;
      readonly outputs: readonly OutputMode[];
      readonly mark: TechnologyReason['mark'];
      readonly number?: number;
      readonly unit?: TechnologyReason['unit'];
    }
  >
> = {
  immersion: { code: 'damp insulation', outputs: ['charge'], mark: 'common practice, no source' },
  vacuum: {
    code: 'no convection',
    outputs: ['IEPE', 'voltage', 'DC'],
    mark: 'common practice, no source',
    number: ELECTRONICS_HEAT,
    unit: 'mW',
  },
  radiation: { code: 'radiation', outputs: ['IEPE', 'voltage', 'DC', 'bridge'], mark: 'from memory' },
  'explosive atmosphere': {
    code: 'explosive atmosphere',
    outputs: ['IEPE', 'charge', 'voltage', 'DC', 'bridge'],
    mark: 'from memory',
  },
  'magnetic field': { code: 'magnetic field', outputs: ['charge', 'bridge'], mark: 'common practice, no source' },
};

/** Everything that speaks against an output, whatever the element behind it. */
export const reasonsAgainstOutput = (output: OutputMode, demands: Demands): readonly TechnologyReason[] => {
  const { circumstances } = demands;
  const electronics = ELECTRONICS[output];
  const found: TechnologyReason[] = [];
  if (electronics)
    found.push(
      ...compared({
        ...ofTemperature(demands, 'hot'),
        code: 'too hot',
        reach: electronics.hottest,
        mark: 'from memory',
      }),
      ...compared({
        ...ofTemperature(demands, 'cold'),
        code: 'too cold',
        reach: electronics.coldest,
        mark: 'from memory',
      }),
    );
  if (output === 'charge') found.push(...againstCharge(demands));
  const { inputs } = circumstances;
  if (inputs && !inputs.some(({ mode }) => mode === undefined || mode === MODE_OF[output]))
    found.push({
      step: 'charge or IEPE',
      code: 'no input',
      standing: 'falls',
      causes: [FIELD.input],
      mark: 'by definition',
      relaxation: { field: FIELD.input },
    });
  for (const surrounding of circumstances.environment ?? []) {
    const { outputs, ...rest } = SURROUNDINGS[surrounding];
    if (outputs.includes(output))
      found.push({ step: 'environment', standing: 'doubtful', causes: [], relaxation: BY_CIRCUMSTANCE, ...rest });
  }
  return found;
};

const againstCharge = ({ channel, circumstances }: Demands): readonly TechnologyReason[] => [
  ...(circumstances.hasSeveralEarths
    ? [
        {
          step: 'grounding',
          code: 'earth loop',
          standing: 'doubtful' satisfies Standing,
          causes: [],
          mark: 'common practice, no source',
          relaxation: BY_CIRCUMSTANCE,
        } as const,
      ]
    : []),
  ...compared({
    step: 'charge or IEPE',
    code: 'cable noise',
    causes: [FIELD.cableCapacitance],
    mark: 'common practice, no source',
    unit: 'pF',
    number: channel.cable?.capacitance,
    reach: { usual: LONG_CHARGE_CABLE, best: Infinity },
    excess: 'above',
    relaxed: (number) => ({ field: FIELD.cableCapacitance, number, unit: 'pF', direction: 'atMost' }),
  }),
];
