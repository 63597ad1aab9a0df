export const VERDICTS = ['PASS', 'WARN', 'INCOMPLETE', 'FAIL'] as const;
/** In rising severity: a known failure stays one, whatever else is missing. */
export type Verdict = (typeof VERDICTS)[number];

export const worstVerdict = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.reduce<Verdict>((worst, next) => (VERDICTS.indexOf(next) > VERDICTS.indexOf(worst) ? next : worst), 'PASS');
