/** Relative error, as a fraction, at a level when the data sheet states the error as a fraction of full scale. */
export const errorOfFullScale = (linearity: number, fullScale: number, level: number): number =>
  (linearity * fullScale) / level;

/** Acceleration in m/s² per which data sheets of charge sensors state the growth of sensitivity. */
export const GROWTH_STEP = 1000;

/** Relative error, as a fraction, at a level in m/s² when sensitivity grows by a fraction per 1000 m/s². */
export const errorOfGrowth = (growth: number, level: number): number => (growth * level) / GROWTH_STEP;
