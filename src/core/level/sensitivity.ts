/** Smallest sensitivity over a temperature range, never above the reference. `low` is the lowest deviation as a fraction. */
export const sensitivityLeastOverTemperature = (reference: number, low: number | undefined): number =>
  reference * (1 + Math.min(0, low ?? 0));

/** Largest sensitivity over a temperature range, never below the reference. `high` is the highest deviation as a fraction. */
export const sensitivityMostOverTemperature = (reference: number, high: number | undefined): number =>
  reference * (1 + Math.max(0, high ?? 0));
