import type { Verdict } from '../core/verdict';
import { DEFAULT_ORIGIN } from './limits';

/** Where a limit comes from, in brackets. */
export const from = (origin: string | undefined): string =>
  origin === undefined ? '' : ` (${origin.replace(DEFAULT_ORIGIN, 'default')})`;

/** Only what is not a PASS is explained. */
export const because = (
  { verdict }: { readonly verdict: Verdict },
  ...parts: readonly (string | undefined)[]
): string => {
  const said = verdict === 'PASS' ? [] : parts.filter((part) => part !== undefined);
  return said.length === 0 ? '.' : `: ${said.join('; ')}.`;
};
