import type { LinearModel, Solution, SolveProgress } from '../../plan/assign/solver';

export interface WorkerQuestion {
  readonly id: number;
  readonly model: LinearModel;
  readonly timeLimit?: number;
}

export type WorkerAnswer =
  | { readonly kind: 'progress'; readonly id: number; readonly progress: SolveProgress }
  | { readonly kind: 'solution'; readonly id: number; readonly solution: Solution }
  | { readonly kind: 'broken'; readonly id: number; readonly reason: string };
