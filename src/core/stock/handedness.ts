type Row = readonly [number, number, number];

/** Determinant of a sensor's axes written in the article's axes: +1 for a right-handed set, −1 for a left-handed one. */
export const handedness = ([a, b, c]: readonly [Row, Row, Row]): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
