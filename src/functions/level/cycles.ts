import { failure, outcome, type Outcome } from '../../core/issue';

/** Fewer cycles than this have no meaningful largest peak (own choice: the formula is for many). */
export const LEAST_CYCLES = 10;

export const cyclesOf = (frequency: number, duration: number): Outcome<number> =>
  frequency * duration >= LEAST_CYCLES
    ? outcome(frequency * duration)
    : failure({
        code: 'out-of-range',
        arg: 'duration',
        given: duration,
        unit: 's',
        rule: `≥ ${LEAST_CYCLES / frequency}, ten cycles`,
      });
