import { LANGUAGES } from '../../src/core/language';
import fixture from '../fixtures/cases.json';
import { CAUTION_KEYS, cautionsFor } from '../../src/plan/cautions';
import { cautionText, planningAid } from '../../src/plan/words/cautions';
import { checkChannel, checkChannels } from '../../src/plan/check';
import { findingsOf } from '../../src/plan/findings';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Channel } from '../../src/plan/model';
import { reasonText, sentenceOf } from '../../src/plan/sentence';

const { plan } = readJsonPlan({ ...fixture, panel_sums: undefined });
const named = (id: string): Channel => plan.channels.find((channel) => channel.id === id)!;
const reasonOf = (channel: Channel): string => reasonText(findingsOf(checkChannel(channel, plan.limits), plan.limits));
const told = (channel: Channel): string[] =>
  findingsOf(checkChannel(channel, plan.limits), plan.limits).map((finding) => sentenceOf(finding));

// The numbers are those of the worked channels, rounded by hand.
describe('the reason of a row', () => {
  it('puts failures before warnings, each with number, limit, its origin and what is allowed', () => {
    expect(reasonOf(named('C3'))).toBe(
      'Headroom −2.3 dB, limit 3.5 dB (default): the sensor’s full scale ends at 50 g; a peak of at most 33.4 g fits here. ' +
        'Mass ratio 0.271, limit 0.10 (default): at most 1.27 gram of sensor may be added here. ' +
        'Signal to noise 13 dB, limit 20 dB (default): at most 80 µg r.m.s. of noise may remain, it is 178 µg; ' +
        'the sensor makes most of it, a quieter sensor or a narrower detector would help.',
    );
  });

  it('is empty for a row that passes', () => {
    expect(reasonOf(named('C1'))).toBe('');
  });

  it('says so when not even the lightest sensor would do', () => {
    expect(reasonOf(named('C6'))).toContain('mount and cable alone are too heavy');
  });

  it('names the part and the temperature it cannot bear', () => {
    expect(reasonOf(named('C9'))).toBe(
      '135 °C, upper limit of the sensor S5 121 °C: another sensor or a milder place would help.',
    );
  });

  it('names the corner that sets the low end', () => {
    expect(reasonOf(named('C2'))).toContain(
      'Span begins at 1.61 Hz at ±5 % (this row), band at 0.2 Hz: AC coupling sets it',
    );
  });

  it('lists every field that is not known once, by its heading and its table', () => {
    const { requirement, sensor } = named('C12');
    const row = {
      ...named('C12'),
      requirement: { ...requirement, levelHigh: undefined, localMass: [] },
      sensor: { ...sensor!, fullScale: undefined, resonance: undefined },
    };
    expect(reasonOf(row)).toBe('Not known: Highest level, Full scale (sensor), Local mass, Resonance (sensor).');
  });

  it('tells a name that no list has from a blank', () => {
    expect(reasonOf({ ...named('C12'), mount: undefined, named: { mount: 'M99' } })).toBe(
      'Not known: Mount (no “M99” in its list).',
    );
  });

  it('never shows a number like its limit when it is on the other side', () => {
    const { requirement } = named('C5');
    // 3.588673582572379 dB at 65 g; 0.0888 dB more level leaves 3.4999 dB.
    const row = {
      ...named('C5'),
      requirement: { ...requirement, levelHigh: requirement.levelHigh! * 10 ** (0.0888 / 20) },
    };
    expect(reasonOf(row)).toContain('Headroom 3.4999 dB, limit 3.5 dB');
  });

  it('warns of a joint that may let go, beside the verdict', () => {
    const row = { ...named('C12'), mount: { ...named('C12').mount!, holdingForce: 60 } };
    // 3.3 gram at 800 g are 25.9 N by hand; a third of 60 N is 20 N.
    expect(checkChannel(row, plan.limits).verdict).toBe('PASS');
    expect(reasonOf(row)).toMatch(
      /^Caution: 25\.9 N on the joint at the highest level, limit 20 N \(a third of what M9 holds; common practice, no source\)/,
    );
    expect(reasonOf({ ...row, mount: { ...row.mount, holdingForce: 80 } })).toBe('');
  });

  it('says that a range runs backwards instead of judging it', () => {
    const { requirement } = named('C12');
    const row = { ...named('C12'), requirement: { ...requirement, bandLow: 6000 } };
    expect(checkChannel(row, plan.limits).verdict).toBe('INCOMPLETE');
    expect(reasonOf(row)).toContain('Band low is above Band high');
  });

  it('does not take a silent default for the purpose: the limit’s origin says it', () => {
    const { requirement } = named('C5');
    expect(told({ ...named('C5'), requirement: { ...requirement, purpose: undefined } })).toContain(
      'Mass ratio 0.058, limit 0.10 (default; no purpose given, survey).',
    );
  });
});

describe('cautions', () => {
  const keysFor = (...channels: Channel[]) =>
    cautionsFor(checkChannels(channels, plan.limits)).map(({ caution }) => caution.key);

  it.each([
    ['a control channel', { ...named('C10'), role: 'control' as const }, 'control sensor loss'],
    ['135 °C', named('C8'), 'hot and cold surfaces'],
    ['135 °C', named('C8'), 'chamber'],
    ['−5 °C outdoors', named('C1'), 'hot and cold surfaces'],
    ['a drop rig', named('C12'), 'falling and thrown parts'],
    ['charge output', named('C8'), 'electricity'],
    ['an adhesive mount', named('C4'), 'adhesives'],
    ['a skin too light for any contact', named('C6'), 'lasers'],
    ['a ceramic element', named('C4'), 'lead ceramic'],
  ])('%s call up their caution', (_what, channel, key) => {
    expect(keysFor(channel)).toContain(key);
  });

  it('stay away from a row that gives no occasion', () => {
    const { requirement } = named('C11');
    expect(keysFor({ ...named('C11'), requirement: { ...requirement, purpose: 'survey', levelHigh: 1 } })).toEqual([]);
  });

  it('never call anything by the word that a plan cannot promise', () => {
    const texts = [
      ...LANGUAGES.map(planningAid),
      ...CAUTION_KEYS.flatMap((key) => LANGUAGES.flatMap((language) => Object.values(cautionText(key, language)))),
      ...plan.channels.flatMap(told),
    ];
    expect(texts.filter((text) => /\bsafe(ly)?\b|\bsicher\b|\bsûr(e|s|es)?\b/i.test(text))).toEqual([]);
  });
});
