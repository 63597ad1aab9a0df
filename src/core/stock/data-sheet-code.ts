/**
 * Value of a code of constant relative resolution, as electronic data sheets in a sensor store it.
 * `start` is the value of code 0, `tolerance` the largest relative error of the coding (fraction).
 * Source: IEEE 1451.4, ConRelRes data type (from memory): value = start·(1 + 2·tolerance)^code.
 */
export const codedValue = (start: number, tolerance: number, code: number): number =>
  start * (1 + 2 * tolerance) ** code;
