import type { Assigner } from '../../plan/assign/assigner';
import { nothingAssigned, type Assignment } from '../../plan/assign/assignment';
import { withObjects, type WorkerAnswer, type WorkerQuestion } from './worker-messages';

/** Made by the build beside the pages, as is highs.wasm. */
const WORKER_FILE = 'solver.js';
const startWorker = (): Worker => new Worker(new URL(WORKER_FILE, document.baseURI));

/** Judging and solving in a worker of their own, so that the page stays usable. Each question has its worker, which ends with it. */
export const browserAssigner: Assigner = (channels, stock, limits, { signal, onProgress, ...options } = {}) => {
  if (signal?.aborted) return Promise.resolve(nothingAssigned('cancelled', channels));
  const worker = startWorker();
  return new Promise<Assignment>((resolve, reject) => {
    const broken = (reason: string): void => reject(new Error(`the solver cannot run: ${reason}`));
    signal?.addEventListener?.('abort', () => resolve(nothingAssigned('cancelled', channels)));
    worker.onerror = (event) => broken(event.message || `${WORKER_FILE} cannot be loaded`);
    worker.onmessage = ({ data }: MessageEvent<WorkerAnswer>) => {
      if (data.kind === 'progress') onProgress?.(data.progress);
      else if (data.kind === 'broken') broken(data.reason);
      else resolve(withObjects(data.assignment, { channels, stock }) as Assignment);
    };
    worker.postMessage({ channels, stock, limits, options } satisfies WorkerQuestion);
  }).finally(() => worker.terminate());
};
