import loadHighs from 'highs';
import { assignChannels } from '../../plan/assign/assign-channels';
import type { Solver } from '../../plan/assign/solver';
import { runHighs } from './highs-model';
import { withPlaces, type WorkerAnswer, type WorkerQuestion } from './worker-messages';

/** The side that computes: one question for each worker; a person cancels by ending it. */
declare const self: {
  onmessage: ((event: { readonly data: WorkerQuestion }) => void) | null;
  postMessage(message: WorkerAnswer): void;
  readonly location: { readonly href: string };
};

const REPORT_EVERY = 0.2;
/** Compiled while types are judged. */
const loading = loadHighs({ locateFile: (file) => new URL(file, self.location.href).href });

const solver: Solver = {
  async solve(model, { onProgress, timeLimit, mayEndEarly } = {}) {
    const highs = await loading;
    let last = -Infinity;
    return runHighs(highs, model, {
      timeLimit,
      mayEndEarly,
      onProgress: (progress) => {
        if (progress.seconds - last < REPORT_EVERY) return;
        last = progress.seconds;
        onProgress?.(progress);
      },
    });
  },
};

self.onmessage = ({ data }) => {
  const { channels, stock, limits, options } = data;
  assignChannels(channels, stock, limits, solver, {
    ...options,
    onProgress: (progress) => self.postMessage({ kind: 'progress', progress }),
  })
    .then((assignment) => self.postMessage({ kind: 'assignment', assignment: withPlaces(assignment, data) }))
    .catch((error: unknown) => self.postMessage({ kind: 'broken', reason: String(error) }));
};
