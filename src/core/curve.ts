/** Points with strictly increasing x (equal neighbours are allowed where a step is meant). SI values, y per the curve's meaning. */
export interface Curve {
  readonly x: readonly number[];
  readonly y: readonly number[];
}
