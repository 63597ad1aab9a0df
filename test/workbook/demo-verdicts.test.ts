import cases from '../fixtures/cases.json';
import { VERDICTS, type Verdict } from '../../src/core/verdict';
import { readDemoTable } from '../../src/generate/demo-csv';
import { judgePlan } from '../../src/workbook/plan-of';
import { recognise } from '../../src/workbook/recognise';
import { itemsOf, readWorkbook, ROOT } from '../generate/demo-workbook';

const sheets = readWorkbook('assets/demo-plan.xlsx');
const tables = recognise(sheets);
const judged = judgePlan(tables, (name) => sheets.find(({ info }) => info.name === name)!.content);
const channels = itemsOf(sheets, tables.channels);
const firstRow = tables.channels?.firstRow ?? 0;
const verdictAt = (index: number): Verdict | undefined => judged.byRow.get(firstRow + index)?.verdict;
const verdictsWhere = (holds: (item: (typeof channels)[number]) => boolean): (Verdict | undefined)[] =>
  channels.flatMap((item, index) => (holds(item) ? [verdictAt(index)] : []));

describe('the demo plan, read from its file and judged', () => {
  it('passes in most rows and shows every other verdict', () => {
    const share = (verdict: Verdict) => channels.filter((_, i) => verdictAt(i) === verdict).length / channels.length;
    const [pass, warn, incomplete, fail] = VERDICTS.map(share);
    expect(pass).toBeGreaterThan(0.7);
    expect(pass).toBeLessThan(0.85);
    expect(warn).toBeGreaterThan(0.05);
    expect(fail).toBeGreaterThan(0.08);
    expect(incomplete).toBeGreaterThan(0.015);
    expect((pass ?? 0) + (warn ?? 0) + (incomplete ?? 0) + (fail ?? 0)).toBeCloseTo(1, 12);
  });

  it.each(cases.cases.map(({ id, expected }) => [id, expected] as const))(
    '%s has the verdicts of the independent computation',
    (id, expected) => {
      const index = readDemoTable(ROOT, 'channels').findIndex((row) => row['case'] === id);
      const check = judged.byRow.get(firstRow + index);
      expect(
        check && [check.level, check.mass, check.thermal, check.frequency, check].map(({ verdict }) => verdict),
      ).toEqual(
        [expected.level, expected.mass, expected.thermal, expected.frequency, expected].map(({ verdict }) => verdict),
      );
    },
  );

  it.each<[string, Verdict, (item: (typeof channels)[number]) => boolean]>([
    ['wax in the hot chamber', 'FAIL', (c) => c['mount'] === 'Wax' && c['group'] === 'Motor bracket'],
    ['a heavy triax on thin skin', 'FAIL', (c) => c['sensor'] === 'Ce-100 triax' && c['group'] === 'Wing skin'],
    ['a range that drowns the signal', 'FAIL', (c) => c['remarks'] === 'range kept from the drop rig'],
    ['AC coupling on a slow pulse', 'FAIL', (c) => c['input'] === 'AC 10 V'],
    ['a charge sensor on an IEPE input', 'FAIL', (c) => c['remarks'] === 'next free input'],
    ['a missing local mass', 'INCOMPLETE', (c) => c['localMass'] === null],
    ['a number that can be read two ways', 'INCOMPLETE', (c) => c['bandHigh'] === '1,250'],
    ['a type that is not in the list', 'INCOMPLETE', (c) => c['sensor'] === 'Ce-100 genral'],
    ['a decimal comma is read', 'PASS', (c) => c['levelHigh'] === '12,5'],
    ['a temperature range in one cell is read', 'PASS', (c) => c['temperatureLow'] === '15..135 °C'],
  ])('%s: %s', (_, verdict, holds) => {
    const given = verdictsWhere(holds);
    expect(given.length).toBeGreaterThan(0);
    expect(new Set(given)).toEqual(new Set([verdict]));
  });

  it('speaks of the run with a single control channel and not of the one with two', () => {
    const texts = judged.across.map(({ text }) => text).filter((text) => /control/i.test(text));
    expect(texts.some((text) => text.includes('run A'))).toBe(true);
    expect(texts.some((text) => text.includes('run B'))).toBe(false);
  });
});
