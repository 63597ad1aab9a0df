import { FIELDS } from '../../../src/plan/fields';
import { namesIn, TRIABLE, typedValue } from '../../../src/workbook/choosing/tried-value';
import { judgePlan } from '../../../src/workbook/plan-of';
import { readCases } from './read-cases';

const cases = readCases();
const { channels } = cases.tables;
const judged = judgePlan(cases.tables, cases.contentOf);

describe('what a person types for a try', () => {
  it('is a number where a number stands alone, with either decimal mark', () => {
    expect(typedValue(channels, 'levelLow', ' 0,5 ')).toEqual({ ok: true, value: 0.5 });
    expect(typedValue(channels, 'levelLow', '1.5e-3')).toEqual({ ok: true, value: 0.0015 });
  });

  it('stays as typed where it carries its own unit', () =>
    expect(typedValue(channels, 'temperatureHigh', '300 K')).toEqual({ ok: true, value: '300 K' }));

  it('empties the cell where nothing is typed', () =>
    expect(typedValue(channels, 'lineSpacing', '  ')).toEqual({ ok: true, value: null }));

  it.each([
    ['levelLow', 'loud'],
    ['bandHigh', '5 kg'],
    ['levelHigh', '-3'],
    ['purpose', 'holiday'],
  ])('is refused with what is expected where %s could not be read as "%s"', (key, text) => {
    const typed = typedValue(channels, key, text);
    expect(typed.ok).toBe(false);
    expect(typed.ok ? '' : typed.expected).not.toBe('');
  });
});

it('names come from the lists of the plan, as they are written there', () => {
  expect(namesIn(judged.plan, 'mount')).toEqual([...judged.plan.mounts.values()].map(({ name }) => name));
  expect(namesIn(judged.plan, 'mount').length).toBeGreaterThan(0);
  expect(namesIn(judged.plan, 'levelLow')).toEqual([]);
});

it('only fields of the channel list can be tried, each of them once', () => {
  const keys = FIELDS.filter(({ table }) => table === 'channels').map(({ key }) => key);
  expect(keys).toEqual(expect.arrayContaining([...new Set(TRIABLE)]));
  expect(new Set(TRIABLE).size).toBe(TRIABLE.length);
});
