/** Uniform beams in bending, by their ends at x = 0 and x = L. */
export const BEAMS = [
  'cantilever',
  'simply supported beam',
  'clamped beam',
  'clamped-pinned beam',
  'free beam',
] as const;
export type Beam = (typeof BEAMS)[number];

const NEWTON_STEPS = 50;

/** Root near `start` by Newton's method; the callers' starts lie on the monotone side. */
export const newtonRoot = (start: number, valueAndSlope: (x: number) => readonly [number, number]): number => {
  let x = start;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const [value, slope] = valueAndSlope(x);
    const change = value / slope;
    x -= change;
    if (Math.abs(change) <= Number.EPSILON * Math.abs(x)) break;
  }
  return x;
};

/** Characteristic root βL of a bending mode; rigid-body modes of a free beam are not counted. */
export const beamRoot = (beam: Beam, mode: number): number => {
  const sech = (x: number): number => 1 / Math.cosh(x);
  switch (beam) {
    case 'simply supported beam':
      return mode * Math.PI;
    case 'cantilever':
      return newtonRoot((mode - 0.5) * Math.PI, (x) => [Math.cos(x) + sech(x), -Math.sin(x) - sech(x) * Math.tanh(x)]);
    case 'clamped beam':
    case 'free beam':
      return newtonRoot((mode + 0.5) * Math.PI, (x) => [Math.cos(x) - sech(x), -Math.sin(x) + sech(x) * Math.tanh(x)]);
    case 'clamped-pinned beam':
      return newtonRoot((mode + 0.25) * Math.PI, (x) => [
        Math.sin(x) - Math.cos(x) * Math.tanh(x),
        Math.cos(x) + Math.sin(x) * Math.tanh(x) - Math.cos(x) * sech(x) ** 2,
      ]);
  }
};

/** Mode shape over x/L, scaled so that its mean square over the beam is 1: then M_r equals the beam's mass. */
export const beamShape = (beam: Beam, mode: number): ((position: number) => number) => {
  const root = beamRoot(beam, mode);
  if (beam === 'simply supported beam') return (position) => Math.SQRT2 * Math.sin(root * position);
  // cosh x − σ·sinh x as exponentials with 1 − σ in closed form: no cancellation in high modes
  const { cos, sin, cosh, sinh, exp } = Math;
  const rest =
    beam === 'cantilever'
      ? (exp(-root) + cos(root) + sin(root)) / (cosh(root) + cos(root))
      : (cos(root) - sin(root) - exp(-root)) / (sinh(root) - sin(root));
  const sign = beam === 'free beam' ? 1 : -1;
  return (position) => {
    const x = root * position;
    return (rest * exp(x) + (2 - rest) * exp(-x)) / 2 + sign * (cos(x) - (1 - rest) * sin(x));
  };
};

/** Modal mass over the beam's mass when the shape is 1 at x/L: what a sensor there meets in this mode. */
export const beamModalMassShare = (beam: Beam, mode: number, position: number): number =>
  1 / beamShape(beam, mode)(position) ** 2;

const SCAN_PER_MODE = 64;
const REFINEMENTS = 60;

/** Position x/L of the largest motion in a mode: where a sensor loads most. */
export const beamAntinode = (beam: Beam, mode: number): number => {
  const shape = beamShape(beam, mode);
  const motion = (position: number): number => Math.abs(shape(position));
  const count = SCAN_PER_MODE * mode;
  let best = 0;
  for (let i = 1; i <= count; i++) if (motion(i / count) > motion(best) * (1 + 1e-12)) best = i / count;
  let low = Math.max(0, best - 1 / count);
  let high = Math.min(1, best + 1 / count);
  for (let i = 0; i < REFINEMENTS; i++) {
    const third = (high - low) / 3;
    if (motion(low + third) < motion(high - third)) low += third;
    else high -= third;
  }
  const refined = (low + high) / 2;
  return motion(refined) > motion(best) ? refined : best;
};
