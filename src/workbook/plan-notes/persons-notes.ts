import type { SheetContent } from '../port';
import { readPlanNotes, type PlanNotes } from '../report/plan-notes';
import { findBlock } from './block';
import { unchangedLines } from './merge-lines';
import { HEADINGS } from './note-lines';
import { parseFillings } from './record';

/** What a person says on a sheet of notes; lines that the tool filled in are left out, for every report says them itself. */
export const personsNotes = (content: SheetContent, fillings: string | undefined): PlanNotes => {
  const kept = parseFillings(fillings);
  const topics = new Set(kept.flatMap(({ lines }) => lines.map(({ topic }) => topic)).filter(Boolean));
  const block = findBlock(content, (text) => topics.has(text));
  const filling = block && kept.find(({ number }) => number === block.filling);
  if (!block || !filling) return readPlanNotes(content);
  const headings = new Set(filling.lines.filter(({ key }) => HEADINGS.includes(key)).map(({ topic }) => topic));
  const ours = unchangedLines(block.lines, filling.lines);
  const values = content.values.filter((_, i) => {
    const at = content.row + i - block.row - 1;
    return !ours.has(at) || headings.has(String(block.lines[at]?.topic));
  });
  return readPlanNotes({ values });
};
