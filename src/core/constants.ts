/** A physical constant with its unit and source. */
export interface Constant {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

export const STANDARD_GRAVITY: Constant = {
  value: 9.80665,
  unit: 'm/s²',
  source: '3rd General Conference on Weights and Measures, 1901, exact',
};
