/**
 * R.m.s. response of one mode to a spectrum that is flat about its natural frequency: √(π/2·f·Q·P).
 * Base acceleration in, absolute acceleration out; lightly damped. Source: Miles 1954 (from memory).
 */
export const randomResponse = (naturalFrequency: number, qualityFactor: number, psd: number): number =>
  Math.sqrt((Math.PI / 2) * naturalFrequency * qualityFactor * psd);

/** Flat spectrum at which one mode responds with the given r.m.s. value: the inverse of randomResponse. */
export const allowedPsd = (naturalFrequency: number, qualityFactor: number, rms: number): number =>
  (rms * rms) / ((Math.PI / 2) * naturalFrequency * qualityFactor);
