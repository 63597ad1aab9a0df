import { analyserLimit } from '../../core/frequency/analyser';
import { cornerFromLimit, cornerFromTimeConstant } from '../../core/frequency/corner';
import { usableSpan, type Span } from '../../core/frequency/span';
import { failure, outcome, type Outcome } from '../../core/issue';
import { OUTPUT_MODES } from '../../plan/fields';
import type { ArgSpecs, Values } from '../define';

/** Everything that shapes a channel's frequency response; shared by the functions of the usable span. */
export const CHANNEL_RESPONSE = {
  resonance: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance.', above: 0 },
  qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor of the resonance, 1/(2ζ).', above: 0 },
  output: {
    kind: 'choice',
    choices: OUTPUT_MODES,
    text: 'How the signal leaves the sensor. IEPE and voltage need the low limit, charge the time constant.',
  },
  lowLimit: { unit: 'Hz', symbol: 'f_l', text: 'Lower limit by the data sheet.', above: 0, optional: true },
  lowLimitLoss: { unit: '%', symbol: 'δ', text: 'Loss meant by the lower limit.', above: 0, below: 100, default: 5 },
  timeConstant: {
    unit: 's',
    symbol: 'τ',
    text: 'Discharge time constant of the charge amplifier.',
    above: 0,
    optional: true,
  },
  couplingPoles: {
    kind: 'list',
    unit: 'Hz',
    symbol: 'f_c',
    text: 'Corner of each AC-coupling pole (−3 dB); "none" when DC coupled.',
    atLeast: 0,
  },
  tolerance: { unit: '%', symbol: 'ε', text: 'Flatness asked for.', above: 0, below: 100, default: 5 },
  reference: { unit: 'Hz', symbol: 'f_ref', text: 'Frequency of the certified sensitivity.', above: 0, default: 160 },
  sampleRate: {
    unit: 'Hz',
    symbol: 'f_s',
    text: 'Sample rate; the analyser ends at this over 2.56.',
    above: 0,
    optional: true,
  },
  cableLimit: { unit: 'Hz', text: 'Cable drive limit.', above: 0, optional: true },
  dataSheetLimit: { unit: 'Hz', text: 'Upper limit by the data sheet.', above: 0, optional: true },
  riseTolerance: {
    unit: '%',
    symbol: 'ε₊',
    text: 'Largest rise, where it differs from the fall.',
    above: 0,
    optional: true,
  },
} as const satisfies ArgSpecs;

type Channel = Values<typeof CHANNEL_RESPONSE>;

export const FLATNESS = {
  equation:
    'largest interval round f_ref with |H(f)/H(f_ref) − 1| ≤ ε, H = Π 1/√(1+(f_c/f)²) · 1/√((1−x²)²+(x/Q)²), x = f/f_r; cut at f_s/2.56, cable and data-sheet limits',
  validity:
    'First-order low end, one resonance, blocks independent of each other. The real structure lowers the resonance further; f_s/2.56 is common practice.',
  source: {
    kind: 'derivation',
    from: 'one-pole high-pass and one degree of freedom multiplied, solved outward from f_ref',
  },
} as const;

/** Corners of all high-pass poles: the sensor's or charge amplifier's own, then the coupling. */
const polesOf = ({ output, lowLimit, lowLimitLoss, timeConstant, couplingPoles }: Channel): Outcome<number[]> => {
  if (output === 'charge') {
    if (timeConstant === undefined) return failure({ code: 'missing', arg: 'timeConstant' });
    return outcome([cornerFromTimeConstant(timeConstant), ...couplingPoles]);
  }
  if (lowLimit !== undefined) return outcome([cornerFromLimit(lowLimit, lowLimitLoss), ...couplingPoles]);
  const isStatic = output === 'DC' || output === 'bridge';
  return isStatic ? outcome([...couplingPoles]) : failure({ code: 'missing', arg: 'lowLimit' });
};

export const spanOf = (channel: Channel): Outcome<Span> => {
  const poles = polesOf(channel);
  if (!poles.ok) return poles;
  const { resonance, qualityFactor, reference, tolerance, sampleRate, cableLimit, dataSheetLimit } = channel;
  const span = usableSpan({
    lowPoles: poles.value,
    resonance,
    qualityFactor,
    reference,
    tolerance,
    rise: channel.riseTolerance,
    caps: {
      analyser: sampleRate === undefined ? undefined : analyserLimit(sampleRate),
      'cable drive': cableLimit,
      'data sheet': dataSheetLimit,
    },
  });
  return span ? outcome(span) : failure({ code: 'no-result', rule: 'the span is empty' });
};

/** The block whose pole lies highest; "response" when the low end is the far side of the resonance. */
export const lowCauseOf = (channel: Channel, span: Span): string => {
  if (span.low === 0) return 'nothing';
  const poles = polesOf(channel);
  const corners = poles.ok ? poles.value : [];
  const highest = Math.max(0, ...corners);
  if (highest === 0) return 'response';
  if (channel.couplingPoles.includes(highest)) return 'AC coupling';
  return channel.output === 'charge' ? 'charge amplifier' : 'sensor';
};
