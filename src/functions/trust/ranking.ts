import { combinedUncertainty, counted, standardUncertainty, type Contribution } from '../../core/trust/budget';
import { fromSi } from '../../core/units';

/** Name, given value, divisor, standard uncertainty, share of the variance, remark; counting rows first, largest first. */
export const rankingRows = (contributions: readonly Contribution[]): (string | number)[][] => {
  const counting = counted(contributions);
  const variance = combinedUncertainty(contributions) ** 2;
  const remarkOn = (one: Contribution): string => {
    if (one.isBias) return 'one-sided: stated as bias';
    if (counting.includes(one)) return '';
    return `not counted: same effect as “${counting.find((other) => other.effect === one.effect)?.name ?? ''}”`;
  };
  const weight = (one: Contribution): number => (counting.includes(one) ? standardUncertainty(one) ** 2 : 0);
  return [...contributions]
    .sort((a, b) => weight(b) - weight(a) || Number(a.isBias) - Number(b.isBias))
    .map((one) => [
      one.name,
      fromSi(one.halfWidth, '%'),
      ...(one.isBias
        ? ['', '', '']
        : [
            one.divisor,
            fromSi(standardUncertainty(one), '%'),
            variance === 0 ? 0 : fromSi(weight(one) / variance, '%'),
          ]),
      remarkOn(one),
    ]);
};
