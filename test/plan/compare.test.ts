import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { checkChannels } from '../../src/plan/check';
import { causesOf, differencesOf, withCauseOf } from '../../src/plan/compare-causes';
import { comparePlans, isChanged, type ComparedPlan, type PlanComparison } from '../../src/plan/compare';
import { matchChannels } from '../../src/plan/compare-match';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Channel } from '../../src/plan/model';

// Edited freely, as a person edits the file.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Json = Record<string, any>;
const base = (): Json => structuredClone({ ...fixture, panel_sums: undefined });
const judged = (json: Json): ComparedPlan => {
  const { plan } = readJsonPlan(json);
  return { plan, checks: checkChannels(plan.channels, plan.limits) };
};
const compared = (edit: (json: Json) => void, options = {}): PlanComparison => {
  const after = base();
  edit(after);
  return comparePlans(judged(base()), judged(after), options);
};
const idsOf = ({ after }: PlanComparison, places: readonly number[]) => places.map((i) => after.plan.channels[i]!.id);

describe('two revisions of a plan', () => {
  it('that are the same differ in nothing', () => {
    const comparison = compared(() => undefined);
    expect(isChanged(comparison)).toBe(false);
    expect(comparison.pairs).toHaveLength(12);
    expect(comparison.across).toEqual({ came: [], gone: [] });
  });

  it('in another order differ in nothing', () => {
    expect(isChanged(compared((json) => json['cases'].reverse()))).toBe(false);
  });

  it('tell added and removed channels', () => {
    const comparison = compared((json) => {
      const [gone] = json['cases'].splice(3, 1);
      json['cases'].push({ ...gone, id: 'NEW', point: 'elsewhere', name: 'a new place' });
    });
    expect(comparison.removed).toEqual([3]);
    expect(idsOf(comparison, comparison.added)).toEqual(['NEW']);
    expect(comparison.changed).toEqual([]);
  });

  it('tell which field of a channel changed, from what to what', () => {
    const { changed } = compared((json) => (json['cases'][0].requirement.level_high_peak_gn = 3));
    expect(changed).toHaveLength(1);
    expect(changed[0]!.fields).toEqual([
      expect.objectContaining({ table: 'channels', key: 'levelHigh', after: { value: 3 * 9.80665, isUnread: false, typed: undefined } }), // prettier-ignore
    ]);
  });

  it('propose a rename where point, direction and part are the same, and say by what', () => {
    const edit = (json: Json) => {
      Object.assign(json['cases'][2], { point: 'P7', direction: '+Z', group: 'wing' });
      return json;
    };
    const before = judged(edit(base()));
    const after = edit(base());
    after['cases'][2].id = 'RENAMED';
    const comparison = comparePlans(before, judged(after));
    expect(comparison.changed).toEqual([expect.objectContaining({ before: 2, after: 2, by: 'point', isRename: true })]);
    expect([comparison.added, comparison.removed]).toEqual([[], []]);
    const strict = comparePlans(before, judged(after), { withoutRenames: true });
    expect([strict.added, strict.removed, strict.changed]).toEqual([[2], [2], []]);
  });

  it('tell a changed list item once, with the channels that use it', () => {
    const comparison = compared((json) => (json['sensors'].S1.description = 'another word'));
    const using = fixture.cases.flatMap(({ sensor }, i) => (sensor === 'S1' ? [i] : []));
    expect(comparison.lists).toEqual([
      expect.objectContaining({ table: 'sensors', name: 'S1', kind: 'changed', channels: using }),
    ]);
    expect(comparison.changed).toEqual([]);
  });

  it('tell items that came and went', () => {
    const { lists } = compared((json) => {
      json['mounts'].NEW = { hardware_mass_gram: 1 };
      delete json['cables'][Object.keys(json['cables'])[0]!];
    });
    expect(lists.map(({ table, kind }) => [table, kind])).toEqual(
      expect.arrayContaining([
        ['mounts', 'added'],
        ['cables', 'removed'],
      ]),
    );
  });

  it('do not take a value that could not be read for a blank', () => {
    const { changed } = compared((json) => (json['cases'][0].requirement.band_high_Hz = 'soon'));
    expect(changed[0]!.fields[0]).toMatchObject({ key: 'bandHigh', after: { isUnread: true } });
  });
});

describe('the cause of a changed verdict', () => {
  const causeOf = (comparison: PlanComparison, id: string) => {
    const change = comparison.changed.find(({ after }) => comparison.after.plan.channels[after]!.id === id)!;
    return causesOf(comparison, change);
  };
  const passing = fixture.cases.find(({ expected }) => expected.verdict === 'PASS')!;

  it('is the sensor that became heavier, not the word that was changed with it', () => {
    const comparison = compared((json) => {
      json['sensors'][passing.sensor].mass_gram = 5000;
      json['sensors'][passing.sensor].description = 'another word';
      json['cases'].find(({ id }: Json) => id === passing.id).remarks = 'moved';
    });
    const { causes, onlyTogether } = causeOf(comparison, passing.id);
    expect(onlyTogether).toBe(false);
    expect(causes).toEqual([
      expect.objectContaining({ kind: 'list', table: 'sensors', change: expect.objectContaining({ key: 'mass' }) }),
    ]);
  });

  it('is the limit that was raised', () => {
    const comparison = compared((json) => (json['common'].limits.headroom_pass_dB = 90));
    expect(comparison.limits).toEqual([{ name: 'Headroom', bound: 'pass', before: 3.5, after: 90, unit: 'dB' }]);
    expect(causeOf(comparison, passing.id).causes).toEqual([expect.objectContaining({ kind: 'limit' })]);
  });

  it('is the limit for one purpose that came', () => {
    const purpose = passing.requirement.purpose;
    const comparison = compared(
      (json) => (json['common'].limits.for_some = [{ limit: 'headroom', purpose, pass_dB: 90 }]),
    );
    expect(comparison.limits).toEqual([
      expect.objectContaining({ name: `Headroom, ${purpose}`, bound: 'pass', before: undefined, after: 90 }),
    ]);
    expect(causeOf(comparison, passing.id).causes).toEqual([expect.objectContaining({ kind: 'limit' })]);
  });

  it('is two things together where neither alone turns the verdict', () => {
    const comparison = compared((json) => {
      const channel = json['cases'].find(({ id }: Json) => id === passing.id);
      const { local_mass } = channel.requirement;
      // Both halve what is left: the ratio passes its limit only when both are there.
      const ratio = (passing.expected as Json)['mass'].mass_ratio as number;
      const limit = 0.1;
      const factor = Math.sqrt((1.05 * limit) / ratio);
      channel.requirement.local_mass = [{ model: 'value', mass_gram: (passing.expected as Json)['mass'].local_mass_gram / factor }]; // prettier-ignore
      expect(local_mass).toBeDefined();
      const total = (passing.expected as Json)['mass'].total_gram as number;
      json['sensors'][passing.sensor].mass_gram += total * (factor - 1);
    });
    const change = comparison.changed.find(({ after }) => comparison.after.plan.channels[after]!.id === passing.id)!;
    expect(change.verdict!.headlines).toEqual(['mass']);
    const { causes } = causesOf(comparison, change);
    expect(causes.map(({ change: { ...c } }) => ('key' in c ? c.key : c.name)).sort()).toEqual(['localMass', 'mass']);
  });

  it('is found among differences that, all made in the old plan, give the new numbers', () => {
    const numbers: Json = {
      level_low_rms_gn: 0.5,
      level_high_peak_gn: 40,
      band_low_Hz: 0.3,
      band_high_Hz: 9000,
      temperature_min_degC: -60,
      temperature_max_degC: 150,
      thermal_tolerance_percent: 0.5,
      span_tolerance_percent: 1,
      reference_frequency_Hz: 80,
    };
    const edits = fc.record({
      row: fc.integer({ min: 0, max: 11 }),
      keys: fc.uniqueArray(fc.constantFrom(...Object.keys(numbers)), { maxLength: 4 }),
      part: fc.option(fc.constantFrom('sensor', 'mount', 'cable', 'input')),
      pick: fc.nat(20),
      sensorMass: fc.option(fc.double({ min: 0.1, max: 500, noNaN: true })),
      headroom: fc.option(fc.double({ min: 1, max: 60, noNaN: true })),
      detector: fc.boolean(),
      unread: fc.boolean(),
    });
    fc.assert(
      fc.property(edits, ({ row, keys, part, pick, sensorMass, headroom, detector, unread }) => {
        const comparison = compared((json) => {
          const channel = json['cases'][row];
          for (const key of keys) channel.requirement[key] = numbers[key];
          if (part) channel[part] = Object.keys(json[`${part}s`])[pick % Object.keys(json[`${part}s`]).length];
          if (sensorMass !== null) json['sensors'][channel.sensor].mass_gram = sensorMass;
          if (headroom !== null) json['common'].limits.headroom_pass_dB = headroom;
          if (detector) channel.requirement.detector = { kind: 'line', line_spacing_Hz: 2 };
          if (unread) channel.requirement.local_mass = [{ model: 'value', mass_gram: '?' }];
        });
        for (const pair of comparison.pairs) {
          const change = comparison.changed.find(({ after }) => after === pair.after) ?? { ...pair, fields: [] };
          const was = comparison.before.plan.channels[pair.before]!;
          const is = comparison.after.plan.channels[pair.after]!;
          const fresh = { channel: is, limits: comparison.after.plan.limits };
          const done = differencesOf(comparison, change).reduce((side, cause) => withCauseOf(side, fresh, cause), {
            channel: was,
            limits: comparison.before.plan.limits,
          });
          const [check] = checkChannels([done.channel], done.limits);
          const of = comparison.after.checks[pair.after]!;
          expect({ ...check!, channel: undefined }).toEqual({ ...of, channel: undefined });
        }
      }),
      { numRuns: 60, seed: 4 },
    );
  });
});

describe('rows of two lists', () => {
  const row = (id: string, more: Partial<Channel> = {}): Channel => ({ id, requirement: { detector: { kind: 'band' }, localMass: [] }, ...more }); // prettier-ignore
  const pairsOf = (before: readonly Channel[], after: readonly Channel[]) =>
    matchChannels(before, after).pairs.map(({ before: b, after: a, by, isRename }) => [b, a, by, isRename]);

  it('are one channel by name, whatever case and blanks', () => {
    expect(pairsOf([row('W 1'), row('W2')], [row('w2'), row(' w  1 ')])).toEqual([
      [1, 0, 'name', false],
      [0, 1, 'name', false],
    ]);
  });

  it('with one name twice are told apart by their points', () => {
    const [a, b] = [row('W1', { point: 'P1' }), row('W1', { point: 'P2' })];
    expect(pairsOf([a, b], [b, a])).toEqual([
      [1, 0, 'name', false],
      [0, 1, 'name', false],
    ]);
  });

  it('with one name twice on one side only are not joined by chance', () => {
    const { pairs, removed, added } = matchChannels(
      [row('W1', { panel: 'A' }), row('W1', { panel: 'B' })],
      [row('W1')],
    );
    expect([pairs, removed, added]).toEqual([[], [0, 1], [0]]);
  });

  it('with one name twice are joined when they say the same, wherever they stand', () => {
    const [a, b, c] = [row('W1', { panel: 'A' }), row('W1', { panel: 'B' }), row('W1', { panel: 'C' })];
    expect(pairsOf([a, b, c], [c, a, b])).toEqual([
      [2, 0, 'content', false],
      [0, 1, 'content', false],
      [1, 2, 'content', false],
    ]);
  });

  it('without names are told by point, else by order, which is said', () => {
    const before = [row('row 5', { point: 'P1' }), row('row 6')];
    const after = [row('row 5', { panel: 'A' }), row('row 6', { point: 'P1', panel: 'B' })];
    expect(pairsOf(before, after)).toEqual([
      [1, 0, 'order', false],
      [0, 1, 'point', false],
    ]);
  });

  it('are never joined by a point that several rows have', () => {
    const at = (id: string) => row(id, { point: 'P1' });
    expect(pairsOf([at('A'), at('B')], [at('C'), at('D')])).toEqual([]);
  });

  it('are each joined at most once', () => {
    const name = fc.constantFrom('A', 'B', 'C', 'row 1', 'row 2', '');
    const list = fc.array(fc.record({ id: name, point: fc.constantFrom(undefined, 'P', 'Q'), location: fc.constantFrom(undefined, 'x') }), { maxLength: 8 }); // prettier-ignore
    fc.assert(
      fc.property(list, list, (a, b) => {
        const [before, after] = [a, b].map((rows) => rows.map(({ id, ...more }) => row(id, more)));
        const { pairs, removed, added } = matchChannels(before!, after!);
        const sides = [
          [...pairs.map((pair) => pair.before), ...removed],
          [...pairs.map((pair) => pair.after), ...added],
        ].map((places) => places.sort((x, y) => x - y));
        expect(sides).toEqual([[...before!.keys()], [...after!.keys()]]);
      }),
      { numRuns: 500, seed: 5 },
    );
  });
});
