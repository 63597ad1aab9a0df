import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { readJsonPlan } from '../../src/plan/json-plan';
import { describeMisread } from '../../src/plan/misread';

type Json = Record<string, unknown>;
const complaints = (json: unknown): string[] => readJsonPlan(json).misreads.map((misread) => describeMisread(misread));
const withSensor = (change: Json): Json => ({
  ...fixture,
  sensors: { ...fixture.sensors, S1: { ...fixture.sensors.S1, ...change } },
});

describe('a JSON plan', () => {
  it.each<[string, Json, string]>([
    ['a misspelt key', { mass_grams: 5 }, 'sensors.S1.mass_grams: read "5", expected one of description'],
    ['a text for a number', { mass_gram: '5' }, 'sensors.S1.mass_gram: read "5", expected a number in gram.'],
    ['a mass below 0', { mass_gram: -5 }, 'sensors.S1.mass_gram: read "-5", expected a number at least 0.'],
    ['an unknown output', { output: 'wireless' }, 'sensors.S1.output: read "wireless", expected one of IEPE'],
    [
      'a curve that runs back',
      { deviation_curve_degC_percent: [[20, 0], [10, 1]] }, // prettier-ignore
      'sensors.S1.deviation_curve_degC_percent[1]: read "[10,1]", expected pairs [°C, %] with rising first numbers.',
    ],
  ])('with %s is told the place, what was read and what was expected', (_what, change, said) => {
    const given = complaints(withSensor(change));
    expect(given).toHaveLength(1);
    expect(given[0]!.startsWith(said)).toBe(true);
  });

  it('with a misspelt list is told so', () => {
    expect(complaints({ sensor: {} })[0]).toMatch(/^sensor: read "{}", expected one of common, sensors/);
  });

  it('takes null for not known', () => {
    const { plan, misreads } = readJsonPlan(withSensor({ mass_gram: null }));
    expect(misreads).toEqual([]);
    expect(plan.sensors.get('S1')!.mass).toBeUndefined();
  });

  it('names a channel’s part that no list has', () => {
    const [first] = fixture.cases;
    expect(complaints({ ...fixture, cases: [{ ...first, sensor: 'S99' }] })).toEqual([
      'cases[0].sensor: read "S99", expected a name from sensors.',
    ]);
  });

  it('keeps a local-mass branch that it cannot read, for it might have been the smallest', () => {
    const [first] = fixture.cases;
    const requirement = { ...first!.requirement, local_mass: [{ model: 'value', mass_gram: 50 }, { model: 'foam' }] };
    const { plan, misreads } = readJsonPlan({ ...fixture, cases: [{ ...first, requirement }] });
    expect(misreads.map((misread) => describeMisread(misread))).toEqual([
      'cases[0].requirement.local_mass[1].model: read "foam", expected one of value, modal, rigid, plate, beam.',
    ]);
    expect(plan.channels[0]!.requirement.localMass).toHaveLength(2);
  });

  it('keeps defaults as defaults and marks what the plan changes', () => {
    const { plan } = readJsonPlan({ common: { limits: { headroom_pass_dB: 6, signal_to_noise_pass_dB: 20 } } });
    expect(plan.limits.headroom).toMatchObject({ pass: 6, origin: 'this plan' });
    expect(plan.limits.signalToNoise.origin).toBe('default, no standard');
  });

  it('never throws, whatever it is given', () => {
    const keys = ['common', 'sensors', 'mounts', 'cables', 'inputs', 'cases', 'limits', 'requirement', 'local_mass'];
    const tree = fc.letrec((tie) => ({
      node: fc.oneof(
        { maxDepth: 4 },
        fc.jsonValue({ maxDepth: 1 }),
        fc.array(tie('node'), { maxLength: 3 }),
        fc.dictionary(fc.oneof(fc.constantFrom(...keys), fc.string()), tie('node'), { maxKeys: 4 }),
      ),
    })).node;
    fc.assert(
      fc.property(tree, (json) => {
        expect(Array.isArray(readJsonPlan(json).misreads)).toBe(true);
      }),
    );
  });
});
