import type { Excess } from './thermal';
import { SAMPLES_PER_TOP_FREQUENCY } from '../core/frequency/analyser';
import { amplitudeRatio } from '../core/level/margin';
import { spanVerdict, thermalBandVerdict, type Verdict } from '../core/verdict';
import type { ChannelCheck } from './check';
import type { Finding, Headline } from './finding';
import type { FrequencyCheck } from './frequency';
import type { Limits } from './limits';
import { limitsFor } from './limits-for';
import { missingField } from './missing';
import type { Requirement } from './model';
import type { ChannelSpan } from './span-memory';

/** Findings of one channel, or of one headline of it, passes included. Built when somebody asks. */
export const findingsOf = (check: ChannelCheck, limits: Limits, headline?: Headline): readonly Finding[] =>
  findingsBy(check, limitsFor(check.channel, limits), headline);

const findingsBy = (check: ChannelCheck, limits: Limits, headline: Headline | undefined): readonly Finding[] =>
  headline ? FINDINGS[headline](check, limits) : Object.values(FINDINGS).flatMap((of) => of(check, limits));

const FINDINGS: Readonly<Record<Headline, (check: ChannelCheck, limits: Limits) => readonly Finding[]>> = {
  level: (check, limits) => levelFindings(check, limits),
  mass: (check, limits) => massFindings(check, limits),
  thermal: (check) => thermalFindings(check),
  frequency: (check) => frequencyFindings(check),
};

const notKnown = (headline: Headline, check: ChannelCheck): readonly Finding[] => {
  const { verdict, missing } = check[headline];
  const { named } = check.channel;
  return missing.length > 0
    ? [{ check: 'missing', headline, fields: missing, named, verdict: verdictOfGap(verdict) }]
    : [];
};

/** A gap beside a known failure is still a gap, never the failure itself. */
const verdictOfGap = (verdict: Verdict): Verdict => (verdict === 'FAIL' ? 'INCOMPLETE' : verdict);

const levelFindings = (check: ChannelCheck, limits: Limits): readonly Finding[] => {
  const { level, channel } = check;
  const found: Finding[] = [];
  const { levelLow, levelHigh, bandLow } = channel.requirement;
  if (level.modeMismatch) found.push({ check: 'input mode', verdict: 'FAIL', ...level.modeMismatch });
  const ratio = level.signalToNoise ?? (level.lowEnd === 'FAIL' ? level.signalToNoiseAtMost : undefined);
  if (ratio !== undefined && !Number.isNaN(limits.signalToNoise.pass)) {
    const { pass, origin } = limits.signalToNoise;
    const { sensorNoise, inputNoise } = level;
    const both = sensorNoise !== undefined && inputNoise !== undefined;
    found.push({
      check: 'signal to noise',
      verdict: level.lowEnd,
      number: ratio,
      isBound: level.signalToNoise === undefined || undefined,
      limit: pass,
      origin,
      noise: level.noise,
      noiseAllowed: levelLow && levelLow / amplitudeRatio(pass),
      cause: both ? (inputNoise > sensorNoise ? 'input' : 'sensor') : undefined,
    });
  }
  if (level.noSwing) found.push({ check: 'no swing', verdict: 'FAIL' });
  const room = level.headroom ?? (level.highEnd === 'FAIL' ? level.headroomAtMost : undefined);
  if (room !== undefined && !Number.isNaN(limits.headroom.pass)) {
    const { pass, origin } = limits.headroom;
    const ceiling = level.ceiling ?? level.ceilingAtMost;
    found.push({
      check: 'headroom',
      verdict: level.highEnd,
      number: room,
      isBound: level.headroom === undefined || undefined,
      limit: pass,
      origin,
      ceiling: ceiling?.value,
      peakAllowed: ceiling && levelHigh && ceiling.value / amplitudeRatio(pass),
      causes: ceiling && [ceiling.limiting, ...ceiling.alsoLimiting],
    });
  }
  const isOpen = level.signalToNoise === undefined && level.sensorNoise === undefined && bandLow === 0;
  if (isOpen && channel.sensor?.noiseDensity) found.push({ check: 'noise at 0 Hz', verdict: 'INCOMPLETE' });
  if (level.restsOnReferenceSensitivity) found.push({ check: 'reference sensitivity', verdict: 'PASS' });
  return [...found, ...notKnown('level', check)];
};

const massFindings = (check: ChannelCheck, limits: Limits): readonly Finding[] => {
  const { mass, channel } = check;
  const found: Finding[] = [];
  const number = mass.ratio ?? (mass.verdict === 'FAIL' ? mass.ratioAtLeast : undefined);
  const bound = mass.limit ?? (mass.verdict === 'PASS' ? limits.massRatio.modal : limits.massRatio.survey);
  if (number !== undefined && (mass.limit || mass.verdict !== 'INCOMPLETE'))
    found.push({
      check: 'mass ratio',
      verdict: mass.verdict,
      number,
      isBound: mass.ratio === undefined || undefined,
      limit: bound.pass,
      origin: channel.requirement.purpose
        ? bound.origin
        : `${bound.origin}; no purpose given, ${limits.purpose ?? 'any'}`,
      allowed: mass.allowed,
    });
  if (mass.holding)
    found.push({
      check: 'holding force',
      verdict: mass.holding.force <= mass.holding.allowed ? 'PASS' : 'WARN',
      number: mass.holding.force,
      limit: mass.holding.allowed,
      origin: `a third of what ${channel.mount?.name ?? 'the mount'} holds; common practice, no source`,
    });
  return [...found, ...notKnown('mass', check)];
};

export const temperatureFinding = ({ part, name, end, needed, limit }: Excess): Finding => ({
  check: 'temperature limit',
  verdict: 'FAIL',
  part,
  name,
  end,
  number: needed,
  limit,
});

const thermalFindings = (check: ChannelCheck): readonly Finding[] => {
  const { thermal } = check;
  const { band, tolerance } = thermal;
  const found: Finding[] = thermal.excesses.map(temperatureFinding);
  if (band && tolerance)
    found.push({
      check: 'thermal deviation',
      verdict: thermalBandVerdict(band, tolerance.pass),
      low: band.low,
      high: band.high,
      limit: tolerance.pass,
      origin: tolerance.origin,
      halfBand: thermal.halfBand,
    });
  const { beyondCurve } = thermal;
  // Beyond an operating limit the curve need not reach.
  if (beyondCurve && !thermal.excesses.some(({ part, needed }) => part === 'sensor' && needed === beyondCurve.needed)) {
    const { needed, from, to } = beyondCurve;
    found.push({ check: 'deviation curve', verdict: 'INCOMPLETE', number: needed, from, to });
  }
  if (thermal.isReversed)
    found.push({ check: 'reversed', verdict: 'INCOMPLETE', low: TEMPERATURE_LOW, high: TEMPERATURE_HIGH });
  return [...found, ...notKnown('thermal', check)];
};

const TEMPERATURE_LOW = missingField('channels', 'temperatureLow');
const TEMPERATURE_HIGH = missingField('channels', 'temperatureHigh');
const BAND_LOW = missingField('channels', 'bandLow');
const BAND_HIGH = missingField('channels', 'bandHigh');

const frequencyFindings = (check: ChannelCheck): readonly Finding[] => {
  const { frequency, channel } = check;
  const found: Finding[] = [];
  const { tolerance, span, wide, widest } = frequency;
  const isBound = span === undefined || undefined;
  const shown = isBound ? widest : span;
  const outer = isBound ? widest : wide;
  if (frequency.isReversed) found.push({ check: 'reversed', verdict: 'INCOMPLETE', low: BAND_LOW, high: BAND_HIGH });
  else if (shown === null || outer === null)
    found.push({ check: 'empty span', verdict: 'FAIL', tolerance: tolerance.pass, origin: tolerance.origin });
  else if (shown && outer) found.push(...edgeFindings(channel.requirement, frequency, shown, outer));
  return [...found, ...notKnown('frequency', check)];
};

/** Each end judged alone; while something is not known only an end that fails already is told. */
const edgeFindings = (
  { bandLow, bandHigh }: Requirement,
  frequency: FrequencyCheck,
  shown: ChannelSpan,
  outer: ChannelSpan,
): readonly Finding[] => {
  const { tolerance, span } = frequency;
  const isBound = span ? undefined : true;
  const shared = { isBound, tolerance: isBound ? tolerance.warn : tolerance.pass, origin: tolerance.origin };
  const found: Finding[] = [];
  const low = spanVerdict({ low: bandLow, high: outer.low }, span ?? undefined, outer);
  const high = spanVerdict({ low: outer.high, high: bandHigh }, span ?? undefined, outer);
  if (bandLow !== undefined && (span || low === 'FAIL'))
    found.push({
      check: 'span low',
      verdict: low,
      number: shown.low,
      limit: bandLow,
      cause: lowCause(frequency),
      ...shared,
    });
  if (bandHigh !== undefined && (span || high === 'FAIL')) {
    const cause = shown.highLimitedBy;
    const sampleRateNeeded = cause === 'analyser' ? bandHigh * SAMPLES_PER_TOP_FREQUENCY : undefined;
    found.push({
      check: 'span high',
      verdict: high,
      number: shown.high,
      limit: bandHigh,
      cause,
      sampleRateNeeded,
      ...shared,
    });
  }
  return found;
};

/** The largest corner sets most of the low end. */
const lowCause = ({ lowPoles, poleCauses }: ChannelCheck['frequency']) => {
  let largest = -1;
  lowPoles?.forEach((corner, i) => {
    if (largest < 0 || corner > lowPoles[largest]!) largest = i;
  });
  return poleCauses?.[largest];
};
