import { compared, type Ask } from './technology-comparison';
import { FIELD } from './technology-demands';
import { INTEGRATED_FROM, LONGEST_PULSE, LOWEST_BAND, MARK_OF } from './technology-tendencies';
import type { Mark, Relaxation, TechnologyReason } from './technology-types';

const PRACTICE: Mark = 'common practice, no source';

export const lowFrequency: Ask = ({ channel, circumstances }, { isStatic }) => {
  if (isStatic) return [];
  const { bandLow } = channel.requirement;
  const step = 'static and low frequency';
  const least = (number: number): Relaxation => ({ field: FIELD.bandLow, number, unit: 'Hz', direction: 'atLeast' });
  const shared = { step, causes: [FIELD.bandLow], unit: 'Hz', mark: PRACTICE } as const;
  const edge: readonly TechnologyReason[] =
    bandLow === 0
      ? [{ ...shared, code: 'no static response', standing: 'falls', number: 0, mark: MARK_OF.isStatic, relaxation: least(LOWEST_BAND.best) }] // prettier-ignore
      : compared({ ...shared, code: 'low band edge', number: bandLow, reach: LOWEST_BAND, excess: 'below', relaxed: least }); // prettier-ignore
  const integrated: readonly TechnologyReason[] =
    circumstances.isIntegrated && bandLow !== undefined && bandLow < INTEGRATED_FROM
      ? [{ ...shared, code: 'integration', standing: 'doubtful', number: bandLow, limit: INTEGRATED_FROM, relaxation: least(INTEGRATED_FROM) }] // prettier-ignore
      : [];
  const pulse = compared({
    step,
    code: 'long pulse',
    causes: [],
    mark: PRACTICE,
    unit: 'ms',
    number: circumstances.pulseDuration,
    reach: LONGEST_PULSE,
    excess: 'above',
    relaxed: () => ({ field: 'circumstances' }),
  });
  return [...edge, ...integrated, ...pulse];
};
