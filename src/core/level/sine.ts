/** Peak acceleration in m/s² of a sine of given peak displacement in m. Source: a = (2πf)²·x. */
export const accelerationOfDisplacement = (frequency: number, displacement: number): number =>
  (2 * Math.PI * frequency) ** 2 * displacement;

/** Peak acceleration in m/s² of a sine of given peak velocity in m/s. Source: a = 2πf·v. */
export const accelerationOfVelocity = (frequency: number, velocity: number): number =>
  2 * Math.PI * frequency * velocity;

export const displacementOfAcceleration = (frequency: number, acceleration: number): number =>
  acceleration / (2 * Math.PI * frequency) ** 2;

export const velocityOfAcceleration = (frequency: number, acceleration: number): number =>
  acceleration / (2 * Math.PI * frequency);

/** Frequency in Hz at which a displacement (m) and an acceleration (m/s²) are the same sine. */
export const crossoverFrequency = (displacement: number, acceleration: number): number =>
  Math.sqrt(acceleration / displacement) / (2 * Math.PI);
