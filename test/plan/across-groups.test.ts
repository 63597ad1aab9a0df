import { LANGUAGES } from '../../src/core/language';
import { acrossLines } from '../../src/plan/across-groups';
import type { AcrossFinding } from '../../src/plan/finding';
import { sentenceOf } from '../../src/plan/sentence';

type Axes = Extract<AcrossFinding, { check: 'housing axes' }>;
const open = (point: number): Axes => ({ check: 'housing axes', verdict: 'WARN', sensor: 'Ce-10 triax', point: String(point), axes: 3, number: 1, housings: 1, directions: ['+Z'], problem: 'missing' }); // prettier-ignore
const heavy = (place: string, verdict: 'FAIL' | 'WARN', number: number): AcrossFinding => ({ check: 'added masses', verdict, place, number, limit: 0.1, total: 0.03, localMass: 0.12, housings: 3 }); // prettier-ignore
const due = (sensor: string): AcrossFinding => ({ check: 'calibration due', verdict: 'FAIL', sensor, run: 'A', number: 45_000, limit: 45_010 }); // prettier-ignore
const along = (point: string): AcrossFinding => ({ check: 'same direction', verdict: 'WARN', point, direction: 'X', channels: ['a', 'b'] }); // prettier-ignore
const rowsOf = (findings: readonly AcrossFinding[]) => findings.map((finding, i) => ({ finding, rows: [i] }));

describe('findings across rows', () => {
  it('of one kind are told in one line that names every place, and kept one by one below it', () => {
    const [line, ...rest] = acrossLines(rowsOf([open(6001), open(6002), open(6105)]));
    expect(rest).toEqual([]);
    expect(line!.text).toBe(
      '3 sensors with two or three axes leave axes open: 6001 (+Z), 6002 (+Z), 6105 (+Z). Add the missing ones, or say that they stay open.',
    );
    expect([line!.verdict, line!.rows, line!.parts.map(({ rows }) => rows[0])]).toEqual(['WARN', [0, 1, 2], [0, 1, 2]]);
  });

  it('of different verdicts are never in one line', () => {
    const found = ['P1', 'P2', 'P3'].flatMap((place) => [heavy(place, 'FAIL', 0.25), heavy(place, 'WARN', 0.125)]);
    expect(acrossLines(rowsOf(found)).map(({ verdict, parts }) => [verdict, parts.length])).toEqual([
      ['FAIL', 3],
      ['WARN', 3],
    ]);
  });

  it('that are two of a kind, or say different things, keep their own sentences', () => {
    const found: AcrossFinding[] = [
      open(1),
      open(2),
      { ...open(3), problem: 'twice' as const, verdict: 'FAIL' as const },
    ];
    expect(acrossLines(rowsOf(found)).map(({ text }) => text)).toEqual(found.map((finding) => sentenceOf(finding)));
  });

  it('that are many name the first twelve and how many more there are', () => {
    const [line] = acrossLines(rowsOf(Array.from({ length: 40 }, (_, i) => open(100 + i))));
    expect(line!.text).toContain('111 (+Z) and 28 more.');
    expect(line!.text).not.toContain('112');
    expect(line!.parts).toHaveLength(40);
  });

  it('hold the same numbers in every language', () => {
    const kinds = [[1, 2, 3].map(open), ['P1', 'P2', 'P3'].map((p) => heavy(p, 'FAIL', 0.248)), ['a', 'b', 'c'].map(due), ['q', 'r', 's'].map(along)]; // prettier-ignore
    for (const found of kinds) {
      const said = LANGUAGES.map((language) => acrossLines(rowsOf(found), language)[0]!.text);
      const numerals = said.map((text) => (text.match(/\d+([.,]\d+)?/g) ?? []).map((n) => n.replace(',', '.')).sort());
      expect(numerals[1]).toEqual(numerals[0]);
      expect(numerals[2]).toEqual(numerals[0]);
      expect(new Set(said).size).toBe(3);
    }
  });
});
