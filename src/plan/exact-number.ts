import { fromSi, toSi, type UnitId } from '../core/units';

/** Digits that every double holds, and that some need. */
const DIGITS = [15, 16, 17];
const NEIGHBOURS = [1, -1, 2, -2];

/**
 * The shortest number in `unit` that reads back as the same double in SI. Where the unit has no such number, the nearest:
 * one unit in the last place off, a few parts in 10¹⁶.
 */
export const exactNumber = (si: number, unit: UnitId): number => {
  const near = fromSi(si, unit);
  const step = 2 ** (Math.floor(Math.log2(Math.abs(near))) - 52);
  const tried = [
    ...DIGITS.map((digits) => Number(near.toPrecision(digits))),
    ...(step > 0 ? NEIGHBOURS.map((k) => near + k * step) : []),
  ];
  return tried.find((number) => toSi(number, unit) === si) ?? near;
};
