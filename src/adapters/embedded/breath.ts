/** Longest stretch of work before the page gets a turn. */
const STRETCH_MS = 30;

const turn = (): Promise<void> =>
  new Promise((resolve) => {
    if (typeof MessageChannel === 'undefined') return void setTimeout(resolve, 0);
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

/** Lets a long job give way to the page: `if (breath.due()) await breath.take()`. */
export class Breath {
  private since = performance.now();
  constructor(private readonly stretch = STRETCH_MS) {}
  due(): boolean {
    return performance.now() - this.since > this.stretch;
  }
  async take(): Promise<void> {
    await turn();
    this.since = performance.now();
  }
}
