/** Input modules that so many channels of one mode fill; the last may stay part empty. */
export const modulesNeeded = (channels: number, moduleSize: number): number => Math.ceil(channels / moduleSize);

/** Full scale for a peak with a margin, in the unit of the peak. The margin of 1.5 is common practice, no source. */
export const fullScaleNeeded = (highestPeak: number, margin = 1.5): number => margin * highestPeak;
