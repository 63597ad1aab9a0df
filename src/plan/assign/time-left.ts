/** Seconds that are left of a limit for several steps. */
export class TimeLeft {
  private readonly start = Date.now();
  constructor(private readonly limit: number | undefined) {}
  left(): number | undefined {
    return this.limit === undefined ? undefined : Math.max(0.01, this.limit - (Date.now() - this.start) / 1000);
  }
}
