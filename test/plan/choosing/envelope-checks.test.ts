import { worstVerdict, type Verdict } from '../../../src/core/verdict';
import { envelopeOf } from '../../../src/plan/choosing/envelope';
import { BOUND_KEYS, type BoundKey } from '../../../src/plan/choosing/envelope-bound';
import { checkChannel } from '../../../src/plan/check';
import type { Finding } from '../../../src/plan/finding';
import { findingsOf } from '../../../src/plan/findings';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel, Input, SensorType } from '../../../src/plan/model';
import { randomChannel, seeded } from './random-channels';

/** ENVELOPE_PAIRS asks for more. */
const PAIRS = Number(process.env['ENVELOPE_PAIRS'] ?? 2_000);
const limits = DEFAULT_LIMITS;
const HUGE = 1e12;

const verdictsOf = (
  channel: Channel,
  check: Finding['check'],
  further: (f: Finding) => boolean = () => true,
): Verdict =>
  worstVerdict(
    findingsOf(checkChannel(channel, limits), limits)
      .filter((finding) => finding.check === check && further(finding))
      .map(({ verdict }) => verdict),
  );

const changed = (channel: Channel, sensor: Partial<SensorType>, input: Partial<Input> = {}): Channel => ({
  ...channel,
  sensor: { ...channel.sensor!, ...sensor },
  input: { ...channel.input!, ...input },
});
/** Every term of the ceiling out of the way, but for those put back. */
const onlyTerm = (channel: Channel, sensor: Partial<SensorType>, input: Partial<Input>) =>
  changed(
    channel,
    { fullScale: HUGE, biasMin: HUGE, biasMax: HUGE, ...sensor },
    { range: HUGE, supply: 2 * HUGE, outputLimit: HUGE, ...input },
  );
const withoutCaps = (channel: Channel): Channel => ({
  ...changed(channel, {}, { sampleRate: HUGE }),
  cable: { ...channel.cable!, capacitance: 1e-30 },
});
const withoutPoles = (channel: Channel) =>
  changed(channel, { lowLimit: 1 / HUGE }, { couplingPoles: [], timeConstant: HUGE });
const withoutResonance = (channel: Channel): Channel => ({
  ...changed(channel, { resonance: HUGE }),
  mount: { ...channel.mount!, stiffness: undefined },
});

/** What the checks say of a channel in which nothing but one property can fail. */
const ORACLES: Readonly<Partial<Record<BoundKey, (channel: Channel) => Verdict>>> = {
  'sensor mass': (c) => verdictsOf(c, 'mass ratio'),
  'full scale': (c) => verdictsOf(onlyTerm(c, { fullScale: c.sensor!.fullScale }, {}), 'headroom'),
  noise: (c) => verdictsOf(c, 'signal to noise'),
  'white noise density': (c) => verdictsOf(c, 'signal to noise'),
  'mounted resonance': (c) => resonanceVerdict(c),
  'sensor resonance': (c) => resonanceVerdict(c),
  'low corner': (c) => cornerVerdict(c),
  'low limit': (c) => cornerVerdict(c),
  'thermal coefficient': (c) => verdictsOf(c, 'thermal deviation'),
  'thermal deviation': (c) => verdictsOf(c, 'thermal deviation'),
  'corrected deviation': (c) => (verdictsOf(c, 'thermal deviation') === 'FAIL' ? 'FAIL' : 'PASS'),
  'lowest rated temperature': (c) => verdictsOf(c, 'temperature limit', (f) => 'end' in f && f.end === 'low'),
  'highest rated temperature': (c) => verdictsOf(c, 'temperature limit', (f) => 'end' in f && f.end === 'high'),
  'sensitivity over input noise': (c) =>
    verdictsOf(changed(c, { noiseDensity: { x: [1, 2], y: [1e-30, 1e-30] } }), 'signal to noise'),
  'sensitivity in input range': (c) => verdictsOf(onlyTerm(c, {}, { range: c.input!.range }), 'headroom'),
  'sensitivity in bias swing': (c) =>
    verdictsOf(
      onlyTerm(c, { biasMin: c.sensor!.biasMin, biasMax: c.sensor!.biasMax }, { supply: c.input!.supply }),
      'headroom',
    ),
  'sensitivity in amplifier output': (c) => verdictsOf(onlyTerm(c, {}, { outputLimit: c.input!.outputLimit }), 'headroom'), // prettier-ignore
  'sensitivity in cable drive': (c) =>
    checkChannel(withoutPoles(withoutResonance(changed(c, {}, { sampleRate: HUGE }))), limits).frequency.verdict,
  output: (c) => verdictsOf(c, 'input mode'),
};

/** A level at which `alone` already leaves the band is judged as if that part of the response were away. */
const judgedBeside = (alone: Verdict, beside: Verdict, away: Verdict): Verdict => {
  const isPassed = (alone === 'PASS' ? beside : away) === 'PASS';
  return isPassed ? 'PASS' : (alone === 'FAIL' ? away : beside) === 'FAIL' ? 'FAIL' : 'WARN';
};

const resonanceVerdict = (channel: Channel): Verdict => {
  const open = withoutCaps(channel);
  const [poles, resonance] = [withoutResonance(open), withoutPoles(open)];
  return worstVerdict([
    judgedBeside(verdictsOf(poles, 'span high'), verdictsOf(open, 'span high'), verdictsOf(resonance, 'span high')),
    verdictsOf(resonance, 'span low'),
  ]);
};
const cornerVerdict = (channel: Channel): Verdict => {
  const open = withoutCaps(channel);
  const [poles, resonance] = [withoutResonance(open), withoutPoles(open)];
  return worstVerdict([
    judgedBeside(verdictsOf(resonance, 'span low'), verdictsOf(open, 'span low'), verdictsOf(poles, 'span low')),
    verdictsOf(poles, 'span high'),
  ]);
};

/**
 * A reference frequency within an octave of a well damped resonance: its response turns between reference and edge, so a
 * lower resonance can fit where a higher one does not, and no single least resonance exists.
 */
const isBeyondClosedForm = (channel: Channel): boolean => {
  const { mountedResonance, referenceFrequency } = checkChannel(channel, limits).frequency;
  return channel.sensor!.qualityFactor! < 1.2 && mountedResonance! < 2 * referenceFrequency;
};
const OF_RESPONSE: readonly BoundKey[] = ['mounted resonance', 'sensor resonance', 'low corner', 'low limit'];

const random = seeded(20_260_412);
const channels = Array.from({ length: PAIRS }, () => randomChannel(random));

interface Tally {
  inside: number;
  warned: number;
  outside: number;
}
const tallies = new Map<BoundKey, Tally>(BOUND_KEYS.map((key) => [key, { inside: 0, warned: 0, outside: 0 }]));
const disagreements: string[] = [];
let allInside = 0;
let someOutside = 0;

for (const [i, channel] of channels.entries()) {
  const { bounds } = envelopeOf(channel, limits);
  for (const bound of bounds) {
    const oracle = ORACLES[bound.key];
    if (!oracle || bound.verdict === undefined) continue;
    if (OF_RESPONSE.includes(bound.key) && isBeyondClosedForm(channel)) continue;
    const expected = oracle(channel);
    const tally = tallies.get(bound.key)!;
    if (expected === 'PASS') tally.inside += 1;
    else if (expected === 'WARN') tally.warned += 1;
    else tally.outside += 1;
    if (bound.verdict !== expected) disagreements.push(`pair ${i}, ${bound.key}: ${bound.verdict}, checks ${expected}`);
  }
  if (isBeyondClosedForm(channel)) continue;
  // Mount and cable have no temperature limits here, and the analyser's own limit is no matter of the sensor.
  const { level, mass, thermal } = checkChannel(channel, limits);
  const { frequency } = checkChannel(changed(channel, {}, { sampleRate: HUGE }), limits);
  const isInside = bounds.every(({ key, verdict }) => key === 'dynamic range' || verdict === 'PASS' || verdict === undefined); // prettier-ignore
  const isPassed = [level, mass, thermal, frequency].every(({ verdict }) => verdict === 'PASS');
  if (isInside) allInside += 1;
  else someOutside += 1;
  if (isInside !== isPassed) disagreements.push(`pair ${i} as a whole: inside ${isInside}, passed ${isPassed}`);
  const range = bounds.find(({ key }) => key === 'dynamic range')!;
  if (range.verdict === 'FAIL' && level.verdict === 'PASS') disagreements.push(`pair ${i}: range fails alone`);
}

describe(`${PAIRS} random pairs of a channel and a sensor`, () => {
  it('are inside a bound exactly when no check fails because of it', () => {
    expect(disagreements).toEqual([]);
  });

  it.each(Object.keys(ORACLES) as BoundKey[])('meet the %s from both sides, many times', (key) => {
    const { inside, warned, outside } = tallies.get(key)!;
    expect(inside).toBeGreaterThan(PAIRS / 50);
    expect(warned + outside).toBeGreaterThan(PAIRS / 50);
  });

  it('pass every check exactly when the sensor is inside every bound', () => {
    expect(allInside).toBeGreaterThan(0);
    expect(someOutside).toBeGreaterThan(0);
  });
  if (process.env['ENVELOPE_TALLY']) it('tally', () => console.log(JSON.stringify([...tallies], null, 1), allInside));
});
