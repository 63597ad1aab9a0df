import fc from 'fast-check';
import type { BlockLine } from '../../../src/workbook/plan-notes/block';
import { mergeLines } from '../../../src/workbook/plan-notes/merge-lines';
import type { NoteLine } from '../../../src/workbook/plan-notes/note-lines';

const filled = (key: string, topic: string, text: string): NoteLine => ({ key, topic, text });
const onSheet = (topic: string | null, text: string | null): BlockLine => ({ topic, text, isFixed: false });
const asWritten = (lines: readonly NoteLine[]) => lines.map(({ topic, text }) => onSheet(topic, text || null));
const said = (merged: ReturnType<typeof mergeLines>) => merged.lines.map(({ topic, text }) => [topic, text]);

const BEFORE = [
  filled('revision', 'Revision', ''),
  filled('assumptions', 'Assumptions taken', ''),
  filled('assumed purpose', 'Purpose', '3 rows name no purpose.'),
  filled('assumed spares', 'Spares', 'One in ten.'),
];
const NOW = BEFORE.map((line) =>
  line.key === 'assumed purpose' ? { ...line, text: '5 rows name no purpose.' } : line,
);
const last = { lines: BEFORE, removed: [] };

describe('lines filled again', () => {
  it('say what the plan says now where nobody touched them', () => {
    expect(said(mergeLines(asWritten(BEFORE), last, NOW))[2]).toEqual(['Purpose', '5 rows name no purpose.']);
  });

  it('stay as a person changed them, and again the next time', () => {
    const lines = asWritten(BEFORE);
    lines[0] = onSheet('Revision', 'D');
    lines[2] = onSheet('Purpose', 'All rows are a survey, agreed in the review.');
    const merged = mergeLines(lines, last, NOW);
    expect(said(merged)).toEqual(
      [
        ['Revision', 'D'],
        ['Assumptions taken', null],
        ['Purpose', 'All rows are a survey, agreed in the review.'],
        ['Spares', 'One in ten.'],
      ].map(([topic, text]) => [topic, topic === 'Assumptions taken' ? '' : text]),
    );
    const again = merged.lines.map(({ topic, text }) => onSheet(topic as string, (text as string) || null));
    expect(said(mergeLines(again, { lines: NOW, removed: merged.removed }, NOW))).toEqual(said(merged));
  });

  it('stay away where a person took them away', () => {
    const lines = asWritten(BEFORE).slice(0, 3);
    const merged = mergeLines(lines, last, NOW);
    expect(merged.lines.map(({ key }) => key)).not.toContain('assumed spares');
    expect(merged.removed).toEqual(['assumed spares']);
  });

  it('go when what they say is no longer so', () => {
    const now = NOW.filter(({ key }) => key !== 'assumed purpose');
    expect(said(mergeLines(asWritten(BEFORE), last, now))).not.toContainEqual(['Purpose', '3 rows name no purpose.']);
  });

  it('do not take lines for ours that a person wrote, without a record either', () => {
    const lines = [...asWritten(NOW), onSheet('Shaker', 'Hired from the neighbour hall.')];
    expect(mergeLines(lines, undefined, NOW).kept).toBe(1);
  });

  it('never lose a line of a person, whatever was changed, added or taken away', () => {
    const text = fc.constantFrom('Revision', 'Spares', 'One in ten.', 'Purpose', 'mine', 'yours', '');
    const line = fc.tuple(text, text).filter(([a, b]) => a + b !== '');
    fc.assert(
      fc.property(
        fc.array(fc.oneof(line, fc.constantFrom(...BEFORE.map((l) => [l.topic, l.text] as const)))),
        (typed) => {
          const merged = said(
            mergeLines(
              typed.map(([a, b]) => onSheet(a || null, b || null)),
              last,
              NOW,
            ),
          );
          const kept = new Set(merged.map(([a, b]) => `${a ?? ''}|${b ?? ''}`));
          const ours = new Set(BEFORE.map(({ topic, text: b }) => `${topic}|${b}`));
          for (const [a, b] of typed) if (!ours.has(`${a}|${b}`)) expect(kept).toContain(`${a}|${b}`);
        },
      ),
      { numRuns: 300, seed: 7 },
    );
  });
});
