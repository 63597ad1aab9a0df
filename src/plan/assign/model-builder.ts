import type { LinearModel } from './solver';

/** Puts a model together; a column's rows must be there before it. */
export class ModelBuilder {
  private readonly cost: number[] = [];
  private readonly lower: number[] = [];
  private readonly upper: number[] = [];
  private readonly whole: number[] = [];
  private readonly starts: number[] = [];
  private readonly indices: number[] = [];
  private readonly values: number[] = [];
  private readonly rowLower: number[] = [];
  private readonly rowUpper: number[] = [];

  /** A row between two bounds; returns its place. */
  row(lower: number, upper: number): number {
    this.rowUpper.push(upper);
    return this.rowLower.push(lower) - 1;
  }

  /** A column from 0 to `upper` with its entries; returns its place. */
  column(
    cost: number,
    upper: number,
    isWhole: boolean,
    entries: readonly (readonly [row: number, value: number])[],
  ): number {
    this.starts.push(this.indices.length);
    for (const [row, value] of entries) {
      this.indices.push(row);
      this.values.push(value);
    }
    this.lower.push(0);
    this.upper.push(upper);
    this.whole.push(isWhole ? 1 : 0);
    return this.cost.push(cost) - 1;
  }

  build(): LinearModel {
    return {
      columns: this.cost.length,
      rows: this.rowLower.length,
      cost: Float64Array.from(this.cost),
      lower: Float64Array.from(this.lower),
      upper: Float64Array.from(this.upper),
      whole: Uint8Array.from(this.whole),
      rowLower: Float64Array.from(this.rowLower),
      rowUpper: Float64Array.from(this.rowUpper),
      starts: Int32Array.from([...this.starts, this.indices.length]),
      indices: Int32Array.from(this.indices),
      values: Float64Array.from(this.values),
    };
  }
}
