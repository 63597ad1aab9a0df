import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { checkChannels } from '../../src/plan/check';
import { comparePlans, isChanged, type ComparedPlan, type PlanComparison } from '../../src/plan/compare';
import { readJsonPlan } from '../../src/plan/json-plan';

// Edited freely, as a person edits the file.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Json = Record<string, any>;
const judged = (json: Json): ComparedPlan => {
  const { plan } = readJsonPlan(json);
  return { plan, checks: checkChannels(plan.channels, plan.limits) };
};
const base = (): Json => structuredClone({ ...fixture, panel_sums: undefined });
const BEFORE = judged(base());

/** How a field is set in the file, and to what it differs from whatever stood there. */
const NUMBERS: Readonly<Record<string, string>> = {
  level_low_rms_gn: 'levelLow',
  level_high_peak_gn: 'levelHigh',
  band_low_Hz: 'bandLow',
  band_high_Hz: 'bandHigh',
  temperature_min_degC: 'temperatureLow',
  temperature_max_degC: 'temperatureHigh',
  thermal_tolerance_percent: 'thermalTolerance',
  span_tolerance_percent: 'spanTolerance',
  reference_frequency_Hz: 'referenceFrequency',
};
const TEXTS = ['group', 'point', 'direction', 'panel', 'remarks'] as const;
const PARTS = ['sensor', 'mount', 'cable', 'input'] as const;
const FIELDS = [...Object.keys(NUMBERS), ...TEXTS, ...PARTS];
const LISTED: Readonly<Record<string, readonly [table: string, key: string]>> = {
  mass_gram: ['sensors', 'mass'],
  full_scale_gn: ['sensors', 'fullScale'],
  stiffness_N_per_m: ['mounts', 'stiffness'],
  effective_mass_gram: ['cables', 'cableMass'],
  range_V: ['inputs', 'range'],
};

const other = (now: unknown, by: number): number => (typeof now === 'number' ? now * (1 + by) + by : 3 + by);

const plans = fc.record({
  cells: fc.uniqueArray(fc.tuple(fc.nat(11), fc.constantFrom(...FIELDS)), { maxLength: 12, selector: String }),
  listed: fc.uniqueArray(fc.tuple(fc.nat(30), fc.constantFrom(...Object.keys(LISTED))), { maxLength: 4, selector: String }), // prettier-ignore
  headroom: fc.boolean(),
  gone: fc.uniqueArray(fc.nat(11), { maxLength: 3 }),
  added: fc.nat(3),
  by: fc.double({ min: 0.01, max: 2, noNaN: true }),
  order: fc.array(fc.nat(1000), { minLength: 15, maxLength: 15 }),
});
type Edits = typeof plans extends fc.Arbitrary<infer T> ? T : never;

/** The plan with the edits made, and what a comparison has to list, worked out from the edits alone. */
const edited = ({ cells, listed, headroom, gone, added, by, order }: Edits) => {
  const json = base();
  const expected = { fields: new Set<string>(), lists: new Set<string>(), added: [] as string[], removed: [] as string[] }; // prettier-ignore
  for (const [row, key] of cells) {
    const channel = json['cases'][row];
    if (NUMBERS[key]) channel.requirement[key] = other(channel.requirement[key], by);
    else if ((PARTS as readonly string[]).includes(key)) {
      const names = Object.keys(json[`${key}s`]);
      channel[key] = names[(names.indexOf(channel[key]) + 1) % names.length];
    } else channel[key] = `${channel[key] ?? ''} ${row} edited`;
    if (!gone.includes(row)) expected.fields.add(`${channel.id} ${NUMBERS[key] ?? key}`);
  }
  for (const [at, key] of listed) {
    const [table, field] = LISTED[key]!;
    const names = Object.keys(json[table]);
    const name = names[at % names.length]!;
    if (expected.lists.has(`${table} ${name} ${field}`)) continue;
    json[table][name][key] = other(json[table][name][key], by);
    expected.lists.add(`${table} ${name} ${field}`);
  }
  if (headroom) json['common'].limits.headroom_pass_dB = 3.5 + by;
  const all = json['cases'] as Json[];
  expected.removed = gone.map((row) => all[row]!['id'] as string);
  const kept = all.filter((_, row) => !gone.includes(row));
  for (let i = 0; i < added; i++) {
    const id = `NEW${i}`;
    kept.push({ ...structuredClone(all[i]!), id, point: `new point ${i}`, name: `new place ${i}` });
    expected.added.push(id);
  }
  const places = kept.map((_, i) => i).sort((a, b) => order[a]! - order[b]! || a - b);
  json['cases'] = places.map((place) => kept[place]);
  return { after: judged(json), expected };
};

const idsOf = ({ plan }: ComparedPlan, places: readonly number[]) => places.map((i) => plan.channels[i]!.id).sort();
const fieldsOf = ({ changed, after }: PlanComparison) =>
  changed.flatMap((change) => change.fields.map(({ key }) => `${after.plan.channels[change.after]!.id} ${key}`)).sort();

describe('a comparison of any two revisions', () => {
  it('lists exactly what was edited, whatever the order of the rows', () => {
    fc.assert(
      fc.property(plans, (edits) => {
        const { after, expected } = edited(edits);
        const comparison = comparePlans(BEFORE, after);
        expect(fieldsOf(comparison)).toEqual([...expected.fields].sort());
        expect(idsOf(after, comparison.added)).toEqual([...expected.added].sort());
        expect(idsOf(BEFORE, comparison.removed)).toEqual([...expected.removed].sort());
        const lists = comparison.lists.flatMap(({ table, name, kind, fields }) =>
          kind === 'changed' ? fields.map(({ key }) => `${table} ${name} ${key}`) : [`${table} ${name} ${kind}`],
        );
        expect(lists.sort()).toEqual([...expected.lists].sort());
        expect(comparison.limits.map(({ name }) => name)).toEqual(edits.headroom ? ['Headroom'] : []);
        expect(comparison.changed.some(({ isRename }) => isRename)).toBe(false);
      }),
      { numRuns: 100, seed: 21 },
    );
  });

  it('lists every channel of which a verdict differs, and no other, as judging anew says', () => {
    fc.assert(
      fc.property(plans, (edits) => {
        const { after } = edited(edits);
        const verdicts = ({ checks }: ComparedPlan) =>
          new Map(checks.map(({ channel, level, mass, thermal, frequency }) => [channel.id, [level, mass, thermal, frequency].map(({ verdict }) => verdict).join()])); // prettier-ignore
        const [was, is] = [verdicts(BEFORE), verdicts(after)];
        const differing = [...is.keys()].filter((id) => was.has(id) && was.get(id) !== is.get(id)).sort();
        const { changed } = comparePlans(BEFORE, after);
        expect(changed.flatMap(({ verdict, after: at }) => (verdict ? [after.plan.channels[at]!.id] : [])).sort()).toEqual(differing); // prettier-ignore
      }),
      { numRuns: 30, seed: 22 },
    );
  });

  it('mirrors the comparison the other way round', () => {
    fc.assert(
      fc.property(plans, plans, (one, two) => {
        const [a, b] = [edited(one).after, edited(two).after];
        const [there, back] = [comparePlans(a, b), comparePlans(b, a)];
        expect([back.added, back.removed]).toEqual([there.removed, there.added]);
        const turned = { better: 'worse', worse: 'better', same: 'same' } as const;
        const rows = ({ changed }: PlanComparison, isMirrored: boolean) =>
          changed
            .map(({ before, after, fields, verdict, isRename, by }) => ({
              pair: isMirrored ? [after, before] : [before, after],
              by,
              isRename,
              fields: fields.map((f) => (isMirrored ? { ...f, before: f.after, after: f.before } : f)),
              verdict: verdict && [
                isMirrored ? turned[verdict.turn] : verdict.turn,
                isMirrored ? verdict.gone : verdict.came,
                isMirrored ? verdict.came : verdict.gone,
              ],
            }))
            .sort((x, y) => x.pair[0]! - y.pair[0]!);
        expect(rows(back, true)).toEqual(rows(there, false));
        const mirrored = back.limits.map((change) => ({ ...change, before: change.after, after: change.before }));
        expect(mirrored).toEqual(there.limits);
        expect(back.across).toEqual({ came: there.across.gone, gone: there.across.came });
        expect(back.lists).toHaveLength(there.lists.length);
      }),
      { numRuns: 50, seed: 23 },
    );
  });

  it('of a plan with itself lists nothing, in any order', () => {
    fc.assert(
      fc.property(plans, fc.array(fc.nat(1000), { minLength: 15, maxLength: 15 }), (edits, order) => {
        const { after } = edited(edits);
        const places = after.plan.channels.map((_, i) => i).sort((a, b) => order[a]! - order[b]! || a - b);
        const shuffled = {
          plan: { ...after.plan, channels: places.map((i) => after.plan.channels[i]!) },
          checks: places.map((i) => after.checks[i]!),
        };
        const comparison = comparePlans(after, shuffled);
        expect(isChanged(comparison)).toBe(false);
        expect(comparison.respelt).toBe(0);
      }),
      { numRuns: 50, seed: 24 },
    );
  });
});
