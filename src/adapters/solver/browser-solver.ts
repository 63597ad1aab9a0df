import type { Solution, Solver } from '../../plan/assign/solver';
import type { WorkerAnswer, WorkerQuestion } from './worker-messages';

/** Made by the build beside the pages, as is highs.wasm. */
const WORKER_FILE = 'solver.js';

/** HiGHS in a worker of its own, so that the page stays usable. The worker is kept for the next question; cancelling ends it. */
export class BrowserSolver implements Solver {
  private worker?: Worker;
  private asked = 0;
  private queue: Promise<unknown> = Promise.resolve();

  constructor(private readonly start: () => Worker = () => new Worker(new URL(WORKER_FILE, document.baseURI))) {}

  /** One question at a time; others wait. */
  solve(...[model, options = {}]: Parameters<Solver['solve']>): Promise<Solution> {
    const answer = this.queue.then(() => this.ask(model, options));
    this.queue = answer.catch(() => undefined);
    return answer;
  }

  /** Ends the worker and frees its memory. */
  dispose(): void {
    this.worker?.terminate();
    this.worker = undefined;
  }

  private ask(...[model, { signal, onProgress, timeLimit } = {}]: Parameters<Solver['solve']>): Promise<Solution> {
    if (signal?.aborted) return Promise.resolve({ status: 'cancelled' });
    const worker = (this.worker ??= this.start());
    const id = ++this.asked;
    return new Promise((resolve, reject) => {
      const cancel = (): void => {
        this.dispose();
        done(() => resolve({ status: 'cancelled' }));
      };
      const done = (then: () => void): void => {
        signal?.removeEventListener?.('abort', cancel);
        worker.onmessage = null;
        worker.onerror = null;
        then();
      };
      const broken = (reason: string): void => {
        this.dispose();
        done(() => reject(new Error(`the solver cannot run: ${reason}`)));
      };
      signal?.addEventListener?.('abort', cancel);
      worker.onerror = (event) => broken(event.message || `${WORKER_FILE} cannot be loaded`);
      worker.onmessage = ({ data }: MessageEvent<WorkerAnswer>) => {
        if (data.id !== id) return;
        if (data.kind === 'progress') onProgress?.(data.progress);
        else if (data.kind === 'broken') broken(data.reason);
        else done(() => resolve(data.solution));
      };
      worker.postMessage({ id, model, timeLimit } satisfies WorkerQuestion);
    });
  }
}
