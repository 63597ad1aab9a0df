/** Points of a table drawn on a logarithmic axis, both ends included. */
export const POINTS = {
  unit: '1',
  text: 'Number of points, evenly spaced on a logarithmic axis.',
  atLeast: 2,
  atMost: 1000,
  default: 25,
} as const;

export const logPoints = (low: number, high: number, points: number): number[] => {
  const last = Math.round(points) - 1;
  return Array.from({ length: last + 1 }, (_, i) => (i === last ? high : low * (high / low) ** (i / last)));
};
