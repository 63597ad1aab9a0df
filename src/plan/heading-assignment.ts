/**
 * The assignment of rows to columns with the largest sum of scores; a row may stay without a column (score 0).
 * Hungarian algorithm with potentials (Kuhn 1955, Munkres 1957), rows times rows times columns.
 */
export const assignColumns = (scores: readonly (readonly number[])[], columns: number): (number | undefined)[] => {
  const rows = scores.length;
  const width = columns + rows; // every row has a column of its own that means "none"
  const cost = (row: number, column: number): number =>
    column < columns ? 1 - (scores[row]?.[column] ?? 0) : column - columns === row ? 1 : 2;
  const rowPotential = new Float64Array(rows + 1);
  const columnPotential = new Float64Array(width + 1);
  const rowOf = new Int32Array(width + 1);
  const came = new Int32Array(width + 1);
  for (let row = 1; row <= rows; row++) {
    rowOf[0] = row;
    let at = 0;
    const least = new Float64Array(width + 1).fill(Infinity);
    const used = new Uint8Array(width + 1);
    do {
      used[at] = 1;
      const from = rowOf[at]!;
      let step = Infinity;
      let next = 0;
      for (let column = 1; column <= width; column++) {
        if (used[column]) continue;
        const reduced = cost(from - 1, column - 1) - rowPotential[from]! - columnPotential[column]!;
        if (reduced < least[column]!) [least[column], came[column]] = [reduced, at];
        if (least[column]! < step) [step, next] = [least[column]!, column];
      }
      for (let column = 0; column <= width; column++) {
        if (used[column]) {
          rowPotential[rowOf[column]!]! += step;
          columnPotential[column]! -= step;
        } else least[column]! -= step;
      }
      at = next;
    } while (rowOf[at] !== 0);
    do {
      const previous = came[at]!;
      rowOf[at] = rowOf[previous]!;
      at = previous;
    } while (at !== 0);
  }
  const result: (number | undefined)[] = new Array(rows).fill(undefined);
  for (let column = 1; column <= columns; column++) {
    const row = rowOf[column]!;
    if (row > 0 && (scores[row - 1]?.[column - 1] ?? 0) > 0) result[row - 1] = column - 1;
  }
  return result;
};
