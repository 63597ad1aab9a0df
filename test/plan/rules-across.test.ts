import fixture from '../fixtures/cases.json';
import { checkChannels } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Channel } from '../../src/plan/model';
import { acrossRows } from '../../src/plan/rules-across';
import { sumOf } from '../../src/plan/rules/added-masses';
import { sentenceOf } from '../../src/plan/sentence';

const { plan } = readJsonPlan({ ...fixture, panel_sums: undefined });
const named = (id: string, change: Partial<Channel> = {}): Channel => ({
  ...plan.channels.find((channel) => channel.id === id)!,
  ...change,
});
const across = (...channels: Channel[]) => acrossRows(checkChannels(channels, plan.limits), plan.limits);
const kinds = (...channels: Channel[]) =>
  across(...channels).map(({ finding, rows }) => [finding.check, finding.verdict, rows]);

describe('masses added at one panel', () => {
  it.each(fixture.panel_sums.map((sum) => [sum.id, sum] as const))(
    '%s sums as computed independently with Python/scipy',
    (_id, expected) => {
      const sum = sumOf(
        checkChannels(
          expected.channels.map((id) => named(id)),
          plan.limits,
        ),
        plan.limits,
      );
      expect(sum.total! * 1000).toBeCloseTo(expected.total_gram, 9);
      expect(Math.abs(sum.number! / expected.mass_ratio - 1)).toBeLessThan(1e-6);
      expect(sum.verdict).toBe(expected.verdict);
    },
  );

  it('are found by the panel, whatever its case, and told with their rows', () => {
    expect(kinds(named('C4', { panel: 'Wing skin 3' }), named('C1'), named('C5', { panel: 'wing skin 3 ' }))).toEqual([
      ['added masses', 'FAIL', [0, 2]],
    ]);
  });

  it('are found by the point where no panel is given, but not across set-ups', () => {
    expect(kinds(named('C4', { point: '7' }), named('C5', { point: '7' }))).toEqual([['added masses', 'FAIL', [0, 1]]]);
    expect(
      kinds(named('C4', { point: '7', group: 'low run' }), named('C5', { point: '7', group: 'high run' })),
    ).toEqual([]);
  });

  it('count a triaxial sensor once for its three rows', () => {
    const axis = (id: string, direction: string) => ({ ...named('C10'), id, point: '1', direction });
    expect(kinds(axis('a', '+X'), axis('b', '+Y'), axis('c', '+Z'))).toEqual([]);
    const two = across(axis('a', '+X'), axis('b', '+Y'), axis('c', '+Z'), axis('d', '-X'));
    expect(two.map(({ finding }) => finding.check)).toEqual(['added masses', 'same direction', 'housing axes']);
    expect(two[0]!.finding).toMatchObject({ housings: 2 });
    // Two housings of 8.5 gram in all each, on 30 kg.
    expect(two[0]!.finding).toMatchObject({ verdict: 'PASS', total: expect.closeTo(0.017, 9), localMass: 30 });
  });

  it('are INCOMPLETE while a mass is not known, unless the known ones are too much already', () => {
    const light = named('C5', { point: '7', cable: undefined });
    expect(kinds(named('C1', { point: '9' }), named('C2', { point: '9', cable: undefined }))).toEqual([
      ['added masses', 'INCOMPLETE', [0, 1]],
    ]);
    // 5.6 gram of the other sensor alone are 0.27 of 20.7 gram.
    expect(kinds(named('C4', { point: '7' }), light)).toEqual([['added masses', 'FAIL', [0, 1]]]);
  });
});

describe('control channels', () => {
  it('call for a second one, set-up by set-up', () => {
    const control = (id: string, group: string) => ({ ...named('C10'), id, group, role: 'control' as const });
    expect(kinds(control('a', 'shaker'))).toEqual([['control count', 'WARN', [0]]]);
    expect(kinds(control('a', 'shaker'), control('b', 'Shaker'))).toEqual([]);
    expect(kinds(control('a', 'shaker'), control('b', 'slip table'))).toEqual([
      ['control count', 'WARN', [0]],
      ['control count', 'WARN', [1]],
    ]);
  });

  it('are told when their own verdict is not PASS', () => {
    const controls = [named('C10', { role: 'control' }), named('C3', { role: 'control' })];
    expect(kinds(...controls)).toEqual([['control verdict', 'FAIL', [1]]]);
  });

  it('ask for a way to survive their loss', () => {
    const [first] = across(named('C10', { role: 'control', group: 'shaker' }));
    expect(sentenceOf(first!.finding)).toBe(
      '1 control channel in shaker: if it is lost the controller drives harder; a second, independent one would help.',
    );
  });
});

describe('names that rows share', () => {
  it('must not be channel names', () => {
    expect(kinds(named('C1', { id: '17' }), named('C2'), named('C12', { id: ' 17' }))).toEqual([
      ['same channel', 'FAIL', [0, 2]],
    ]);
  });

  it.each([
    ['+X', 'X+'],
    ['12X+', 'x'],
    ['X-', '−X'],
    ['+X', '-X'],
    ['12:+X', '+X12'],
    ['z axis', 'negative Z'],
  ])('at one point make %s and %s one degree of freedom', (first, second) => {
    const rows = kinds(named('C1', { point: '12', direction: first }), named('C2', { point: '12', direction: second }));
    expect(rows).toContainEqual(['same direction', 'WARN', [0, 1]]);
  });

  it.each([
    ['X', 'Y'],
    ['RX', '12RY+'],
    ['X', 'RX'],
  ])('at one point keep %s and %s apart', (first, second) => {
    const rows = kinds(named('C1', { point: '12', direction: first }), named('C2', { point: '12', direction: second }));
    expect(rows.map(([check]) => check)).not.toContain('same direction');
  });
});
