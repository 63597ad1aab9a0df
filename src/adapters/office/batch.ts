import { HostProblem, type ApplyOptions } from '../../workbook/port';
import type { OfficeHost } from './host';

/** Excel on the web takes 5 MB per request; a cell of 60 characters costs about 70 bytes, a formatting call about 600. */
const CELLS_PER_REQUEST = 20_000;
const CHARACTERS_PER_REQUEST = 1_200_000;
export const CALL_COST = 600;

/** Collects queued calls and sends them before they grow too large, with progress and a chance to stop in between. */
export class Batch {
  private cells = 0;
  private characters = 0;
  private done = 0;
  private hasPaused = false;

  constructor(
    readonly context: Excel.RequestContext,
    private readonly host: OfficeHost,
    private readonly total: number,
    private readonly options: ApplyOptions,
  ) {}

  /** Call before queueing work of that size; `steps` count towards the progress. */
  async make(room: { cells?: number; characters: number; steps: number }): Promise<void> {
    const { cells = 0, characters, steps } = room;
    if (Batch.isFull(this.cells + cells, this.characters + characters)) await this.send();
    this.cells += cells;
    this.characters += characters;
    this.done += steps;
  }

  static isFull(cells: number, characters: number): boolean {
    return cells > CELLS_PER_REQUEST || characters > CHARACTERS_PER_REQUEST;
  }

  async send(): Promise<void> {
    this.stopIfAsked();
    this.context.application.suspendApiCalculationUntilNextSync();
    // Once in an action at most: repeated suspensions make the window flicker, and the host resumes by itself.
    if (!this.hasPaused) this.context.application.suspendScreenUpdatingUntilNextSync();
    this.hasPaused = true;
    await this.context.sync();
    this.cells = 0;
    this.characters = 0;
    this.options.onProgress?.(this.done, this.total);
    await this.host.pause(0);
  }

  stopIfAsked(): void {
    if (!this.options.signal?.aborted) return;
    const soFar = this.done === 0 ? 'Nothing was changed.' : 'Some of it had been written; undo takes it back.';
    throw new HostProblem(`Stopped as you asked. ${soFar}`, 'cancelled');
  }
}

/** How many rows of a block fit into one request, at least one. */
export const rowsPerRequest = (columns: number): number =>
  Math.max(1, Math.floor(CELLS_PER_REQUEST / Math.max(1, columns)));
