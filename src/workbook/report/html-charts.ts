import { escapeXml, svgText } from '../../plots/svg';
import { fitted, TEXT_SIZE, widthOf, type Mark } from '../../plots/plot';
import { TONE_OF } from '../../plots/strips';
import { WORST_FIRST } from './verdict-sections';
import type { Section } from './section';

const WIDTH = 680;
const NAME = 150;
const BAR = 14;
const ROW = 22;
const LEAST_FOR_COUNT = 18;

/** Shares of the verdicts as one bar per line, each piece with its count; the table beside holds the same numbers. */
export const verdictBars = ({ title, columns, lines, hasTotal }: Section): string => {
  const rows = hasTotal ? lines.slice(0, -1) : lines;
  const places = WORST_FIRST.map((verdict) => 2 + columns.indexOf(verdict));
  const numbers = rows.map((line) => places.map((place) => Number(line[place] ?? 0)));
  const most = Math.max(1, ...numbers.map((counts) => counts.reduce((sum, count) => sum + count, 0)));
  const scale = (WIDTH - NAME - 44) / most;
  const legendTop = 4;
  let x = NAME;
  const legend = WORST_FIRST.flatMap((verdict): Mark[] => {
    const at = x;
    x += 20 + widthOf(verdict) + 16;
    return [
      { kind: 'rect', x: at, y: legendTop, width: 14, height: 10, tone: TONE_OF[verdict] },
      { kind: 'text', x: at + 20, y: legendTop + TEXT_SIZE - 1, text: verdict, tone: 'ink' },
    ];
  });
  const marks = rows.flatMap((line, i): Mark[] => {
    const y = 24 + i * ROW;
    let from = NAME;
    const pieces = numbers[i]!.flatMap((count, k): Mark[] => {
      const width = count * scale;
      const at = from;
      from += width;
      const piece: Mark = {
        kind: 'rect',
        x: at,
        y,
        width: Math.max(0, width - 1),
        height: BAR,
        tone: TONE_OF[WORST_FIRST[k]!],
      };
      return count === 0
        ? []
        : width < LEAST_FOR_COUNT
          ? [piece]
          : [
              piece,
              { kind: 'text', x: at + width / 2, y: y + BAR - 3, text: String(count), anchor: 'middle', tone: 'hair' },
            ];
    });
    const total = numbers[i]!.reduce((sum, count) => sum + count, 0);
    return [
      { kind: 'text', x: 0, y: y + BAR - 3, text: fitted(String(line[0]), NAME - 8), tone: 'ink' },
      ...pieces,
      { kind: 'text', x: from + 6, y: y + BAR - 3, text: String(total), tone: 'quiet' },
    ];
  });
  const words = rows
    .map((line, i) => `${line[0]}: ${WORST_FIRST.map((verdict, k) => `${numbers[i]![k]} ${verdict}`).join(', ')}.`)
    .join(' ');
  const height = 24 + rows.length * ROW + 4;
  const drawn = svgText({ width: WIDTH, height, title, inWords: words, marks: [...legend, ...marks] });
  return drawn.replace('<svg ', `<svg class="bars" aria-label="${escapeXml(`${title}. ${words}`)}" `);
};
