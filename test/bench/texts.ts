import { readCurve } from '../../src/core/text/curve';
import { readList } from '../../src/core/text/list';
import { readQuantity } from '../../src/core/text/quantity';
import { readRange } from '../../src/core/text/range';
import { tokenize } from '../../src/adapters/xlsx/formula-text';
import { HOSTILE_PIECES, longText, UNENDED } from '../fixtures/hostile-texts';

const timed = (work: () => void): number => {
  work();
  const start = performance.now();
  for (let i = 0; i < 5; i++) work();
  return (performance.now() - start) / 5;
};
const readers = (text: string) => {
  for (const unit of ['g', '°C', 'Hz'] as const) {
    readQuantity(text, unit);
    readRange(text, unit);
    readCurve(text, 'Hz', unit);
    readList(text, unit);
  }
};

/** Twice the length should cost about twice the time, whatever the text: a search that starts over and over shows as four. */
export const run = (): void => {
  console.log('texts: time at twice the length over time at once the length, worst of each kind');
  const worst = (pieces: readonly string[], length: number, work: (text: string) => void) =>
    pieces
      .map((piece) => {
        const [half, whole] = [longText(piece, length / 2), longText(piece, length)];
        const [short, long] = [timed(() => work(half)), timed(() => work(whole))];
        return { piece, long, ratio: long / short };
      })
      .reduce((a, b) => (b.long > a.long ? b : a));
  for (const [name, found] of [
    ['quantities, ranges, curves, lists of 4,096 characters', worst(HOSTILE_PIECES, 4096, readers)],
    ['formulas of 65,000 characters', worst(UNENDED, 65_000, tokenize)],
  ] as const)
    console.log(`  ${name}: slowest ${JSON.stringify(found.piece)}, ${found.long.toFixed(1)} ms, ratio ${found.ratio.toFixed(1)}`); // prettier-ignore
};
