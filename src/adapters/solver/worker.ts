import loadHighs, { type Highs } from 'highs';
import { runHighs } from './highs-model';
import type { WorkerAnswer, WorkerQuestion } from './worker-messages';

/** The side that computes: one model per message; a person cancels by ending the worker. */
declare const self: {
  onmessage: ((event: { readonly data: WorkerQuestion }) => void) | null;
  postMessage(message: WorkerAnswer, transfer?: readonly ArrayBufferLike[]): void;
  readonly location: { readonly href: string };
};

let loading: Promise<Highs> | undefined;
const REPORT_EVERY = 0.2;

self.onmessage = ({ data: { id, model, timeLimit } }) => {
  loading ??= loadHighs({ locateFile: (file) => new URL(file, self.location.href).href });
  let last = -Infinity;
  loading
    .then((highs) => {
      const solution = runHighs(highs, model, {
        timeLimit,
        onProgress: (progress) => {
          if (progress.seconds - last < REPORT_EVERY) return;
          last = progress.seconds;
          self.postMessage({ kind: 'progress', id, progress });
        },
      });
      self.postMessage({ kind: 'solution', id, solution }, solution.values ? [solution.values.buffer] : []);
    })
    .catch((error: unknown) => self.postMessage({ kind: 'broken', id, reason: String(error) }));
};
