import { polesGain, polesPhase, resonanceGain, resonancePhase } from '../../core/frequency/response';
import { failure, outcome, type Outcome } from '../../core/issue';
import type { ArgSpecs, Values } from '../define';

/** The blocks of a channel that shape its response. */
export const BLOCKS = {
  poles: { kind: 'list', unit: 'Hz', symbol: 'f_c', text: 'Corner of each high-pass pole; "none".', atLeast: 0 },
  resonance: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance; blank: none.', above: 0, optional: true },
  qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor of the resonance.', above: 0, optional: true },
  reference: { unit: 'Hz', symbol: 'f_ref', text: 'Frequency where the deviation is 0.', above: 0, default: 160 },
} as const satisfies ArgSpecs;
type Blocks = Values<typeof BLOCKS>;

export const RESPONSE_OF_BLOCKS = {
  equation: 'H = Π 1/(1 − j·f_c/f) · 1/(1 − x² + j·x/Q), x = f/f_r',
  validity: 'First-order poles and one resonance, independent of each other. Phase without delays.',
  source: {
    kind: 'derivation',
    from: 'transfer functions of first-order high-passes and one degree of freedom multiplied',
  },
} as const;

export interface At {
  /** |H/H_ref| and the phase of H in rad. */
  readonly gain: number;
  readonly phase: number;
}

/** The response at a frequency; a resonance without its quality factor is a missing input. */
export const responseAt = (blocks: Blocks): Outcome<(frequency: number) => At> => {
  const { poles, resonance, qualityFactor, reference } = blocks;
  if (resonance !== undefined && qualityFactor === undefined) return failure({ code: 'missing', arg: 'qualityFactor' });
  const fr = resonance ?? Infinity;
  const q = qualityFactor ?? 1;
  const size = (frequency: number) => polesGain(poles, frequency) * resonanceGain(fr, q, frequency);
  const atReference = size(reference);
  return outcome((frequency) => ({
    gain: size(frequency) / atReference,
    phase: polesPhase(poles, frequency) + resonancePhase(fr, q, frequency),
  }));
};
