/** Members with a point mass for which the frequency equation has a closed form. */
export const LOADED_BEAMS = ['cantilever, mass at the tip', 'simply supported beam, mass at mid-span'] as const;
export type LoadedBeam = (typeof LOADED_BEAMS)[number];

type Equation = (root: number, share: number) => number;

/** λ = βL: 1 + cosh λ·cos λ = share·λ·(cosh λ·sin λ − sinh λ·cos λ), divided by cosh λ. */
const tip: Equation = (root, share) =>
  1 / Math.cosh(root) + Math.cos(root) - share * root * (Math.sin(root) - Math.tanh(root) * Math.cos(root));

/** s = βL/2: 2·cos s = share·s·(sin s − cos s·tanh s). */
const midSpan: Equation = (root, share) =>
  2 * Math.cos(root) - share * root * (Math.sin(root) - Math.cos(root) * Math.tanh(root));

/** Above the first root of either equation without a mass, below the second. */
const BEYOND_FIRST_ROOT = 2;
const HALVINGS = 60;

const firstRoot = (equation: Equation, share: number): number => {
  let low = 0;
  let high = BEYOND_FIRST_ROOT;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (equation(middle, share) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * First natural frequency with the mass over that without, exact for a slender beam and a point mass; `share` is the
 * added mass over the beam's mass. 1/√(1+r) is slightly higher because it keeps the mode shape.
 */
export const exactFrequencyRatio = (beam: LoadedBeam, share: number): number => {
  const equation = beam === 'cantilever, mass at the tip' ? tip : midSpan;
  return (firstRoot(equation, share) / firstRoot(equation, 0)) ** 2;
};
