import { adviseTechnology } from '../../../src/plan/choosing/technology';
import { ELEMENTS, MARKS, STEPS, type TechnologyAdvice } from '../../../src/plan/choosing/technology-types';
import { OUTPUT_MODES } from '../../../src/plan/fields';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import type { Channel } from '../../../src/plan/model';
import { SITUATIONS, type Situation } from '../../fixtures/technology-situations';
import { channelOf } from './situation-channel';

const adviceOf = (situation: Situation): TechnologyAdvice =>
  adviseTechnology(channelOf(situation), DEFAULT_LIMITS, situation.circumstances);

const standings = (list: readonly { readonly kind: string; readonly standing: string }[], standing: string) =>
  list.filter((one) => one.standing === standing).map(({ kind }) => kind);
const sorted = (list: readonly string[]) => [...list].sort();

describe('what common practice says of a situation', () => {
  it('covers at least 18 of them, speaks of every element each time, and of each on both sides', () => {
    expect(SITUATIONS.length).toBeGreaterThanOrEqual(18);
    for (const { admissible, doubtful, falls } of SITUATIONS)
      expect(sorted([...admissible, ...doubtful, ...falls])).toEqual(sorted(ELEMENTS));
    for (const element of ELEMENTS) {
      expect(SITUATIONS.some(({ admissible }) => admissible.includes(element))).toBe(true);
      expect(SITUATIONS.some(({ falls }) => falls.includes(element))).toBe(true);
    }
  });

  describe.each(SITUATIONS.map((situation) => [situation.name, situation] as const))('%s', (_, situation) => {
    const advice = adviceOf(situation);

    it.each(['admissible', 'doubtful', 'falls'] as const)('elements: %s', (standing) => {
      expect(sorted(standings(advice.elements, standing))).toEqual(sorted(situation[standing]));
    });
    it.each(['admissible', 'doubtful', 'falls'] as const)('outputs: %s', (standing) => {
      expect(sorted(standings(advice.outputs, standing))).toEqual(sorted(situation.outputs[standing]));
    });
    it('gives the expected reasons with their marks', () => {
      const all = [...advice.elements, ...advice.outputs].flatMap(({ kind, reasons }) =>
        reasons.map(({ code, mark }) => [kind, code, mark]),
      );
      for (const reason of situation.because) expect(all).toContainEqual(reason);
    });
    it('names a sensor without contact only where none with contact can fit', () => {
      expect(advice.nonContact !== undefined).toBe(situation.nonContact === true);
    });
  });
});

describe('advice', () => {
  const everything = SITUATIONS.flatMap((situation) => {
    const { elements, outputs } = adviceOf(situation);
    return [...elements, ...outputs];
  });
  const reasons = everything.flatMap((advised) => advised.reasons);

  it('marks every reason as practice, memory or definition, never as a requirement', () => {
    expect(reasons.length).toBeGreaterThan(100);
    for (const { mark } of reasons) expect(MARKS).toContain(mark);
  });

  it('keeps the order of the steps', () => {
    for (const advised of everything) {
      const order = advised.reasons.map(({ step }) => STEPS.indexOf(step));
      expect(order).toEqual([...order].sort((a, b) => a - b));
    }
  });

  it('puts a number beside its limit on the side that speaks against the kind', () => {
    const compared = reasons.filter(({ number, limit }) => number !== undefined && limit !== undefined);
    expect(compared.length).toBeGreaterThan(60);
    for (const { number, limit } of compared) expect(number).not.toBe(limit);
  });

  it('knows nothing without a requirement, and says which steps it could not ask', () => {
    const nothing = adviseTechnology(
      { id: '1', requirement: { detector: { kind: 'band' }, localMass: [] } },
      DEFAULT_LIMITS,
    );
    expect(nothing.elements.every(({ standing }) => standing === 'admissible')).toBe(true);
    expect(nothing.missing.map(({ step }) => step)).toEqual(STEPS.slice(0, 7));
    expect(nothing.missing.every(({ fields }) => fields.length > 0)).toBe(true);
  });

  it('speaks of every output and every element once', () => {
    const advice = adviceOf(SITUATIONS[0]!);
    expect(advice.elements.map(({ kind }) => kind)).toEqual(ELEMENTS);
    expect(advice.outputs.map(({ kind }) => kind)).toEqual(OUTPUT_MODES);
  });
});

const REQUIREMENT_KEYS = ['levelLow', 'levelHigh', 'bandLow', 'bandHigh', 'temperatureLow', 'temperatureHigh'] as const;

describe('what would bring a kind back', () => {
  const fallen = SITUATIONS.flatMap((situation) =>
    adviceOf(situation).elements.flatMap((advised) =>
      advised.reasons
        .filter(({ standing, relaxation }) => standing === 'falls' && relaxation?.number !== undefined)
        .map(
          (reason) => [`${situation.name}: ${advised.kind}, ${reason.code}`, situation, advised.kind, reason] as const,
        ),
    ),
  );

  it('is known for many fallen kinds', () => expect(fallen.length).toBeGreaterThan(40));

  it.each(fallen)('%s: granting it removes the fall', (_, situation, kind, { code, relaxation }) => {
    const channel = channelOf(situation);
    const field = relaxation!.field;
    // A little more than asked, so that rounding decides nothing; half a per cent covers the reference frequency.
    const more = relaxation!.direction === 'atMost' ? 0.995 : 1.005;
    const value = relaxation!.number! * (relaxation!.number! < 0 ? 1 / more : more);
    const limits =
      field === 'massRatio'
        ? {
            ...DEFAULT_LIMITS,
            massRatio: {
              ...DEFAULT_LIMITS.massRatio,
              [situation.ask.purpose ?? 'survey']: { ...DEFAULT_LIMITS.massRatio.survey, pass: value },
            },
          }
        : DEFAULT_LIMITS;
    const key = typeof field === 'string' ? undefined : field.key;
    const isOfRequirement = key === 'thermalTolerance' || REQUIREMENT_KEYS.some((k) => k === key);
    expect(field === 'massRatio' || isOfRequirement).toBe(true);
    const { temperatureLow: coldest, temperatureHigh: hottest } = channel.requirement;
    const granted = key && {
      temperatureLow: key === 'temperatureHigh' ? Math.min(coldest!, value) : coldest,
      temperatureHigh: key === 'temperatureLow' ? Math.max(hottest!, value) : hottest,
      [key]: value,
    };
    const relaxed: Channel = { ...channel, requirement: { ...channel.requirement, ...granted } };
    const after = adviseTechnology(relaxed, limits, situation.circumstances).elements.find((e) => e.kind === kind)!;
    expect(after.reasons.filter((r) => r.code === code && r.standing === 'falls')).toEqual([]);
  });
});
