/** ln Γ by Stirling's series after raising the argument; about 1e-14 relative for x > 0 (Abramowitz and Stegun 6.1.41). */
const logGamma = (given: number): number => {
  let shift = 0;
  let x = given;
  for (; x < 12; x++) shift += Math.log(x);
  const inverse = 1 / (x * x);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse / 1188)))) / x;
  return (x - 0.5) * Math.log(x) - x + Math.log(2 * Math.PI) / 2 + series - shift;
};

const TERMS = 500;
const TINY = 1e-300;

/** Regularised incomplete beta I_x(a, b) by its continued fraction (Abramowitz and Stegun 26.5.8), modified Lentz. */
const incompleteBeta = (x: number, a: number, b: number): number => {
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  if (x <= 0) return 0;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || TINY);
  let fraction = d;
  for (let m = 1; m <= TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    const before = fraction;
    for (const term of [even, odd]) {
      d = 1 / (1 + term * d || TINY);
      c = 1 + term / c || TINY;
      fraction *= c * d;
    }
    if (Math.abs(fraction - before) <= Number.EPSILON * fraction) break;
  }
  const front = logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x);
  return (Math.exp(front) * fraction) / a;
};

/** Probability that Student's t with ν degrees of freedom lies within ±t. */
const within = (t: number, freedom: number): number =>
  1 - incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);

/** From here on Student's t and the normal distribution agree to about 1e-6 of t. */
const AS_NORMAL = 1e6;
const HALVINGS = 200;

/** Coverage factor k with which ±k·u covers the probability at ν effective degrees of freedom (JCGM 100:2008, G.3). */
export const coverageFactor = (probability: number, freedom: number): number => {
  const degrees = Math.min(freedom, AS_NORMAL);
  let low = 0;
  let high = 1;
  while (within(high, degrees) < probability && high < 1e12) high *= 2;
  for (let i = 0; i < HALVINGS && high - low > Number.EPSILON * high; i++) {
    const middle = (low + high) / 2;
    if (within(middle, degrees) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
