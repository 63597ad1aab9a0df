import { IActiveDirtyManagerService, ICalculateFormulaService } from '@univerjs/engine-formula';
import { FormulaCalculationSessionService } from '@univerjs/sheets-formula';
import type { Services } from './host';
import { LONGEST_CALCULATION_MS } from './open';

/** The engine starts calculating after this much quiet, with some margin for a busy page. */
const STARTS_WITHIN_MS = 160;

/** What the engine holds while it calculates, and for every calculation that waits for its turn. */
interface ExecuteLock {
  isBusy?(): boolean;
}

/** Knows whether formulas still wait for their values. */
export class Calculation {
  private lastChange = -Infinity;

  constructor(private readonly services: Services) {
    services.commands.onCommandExecuted(({ id }, options) => {
      if (!options?.onlyLocal && services.injector.get(IActiveDirtyManagerService).get(id))
        this.lastChange = performance.now();
    });
  }

  /** The grid makes it together with the first workbook. */
  private get session(): FormulaCalculationSessionService {
    return this.services.injector.get(FormulaCalculationSessionService);
  }

  /**
   * The session takes the end of a calculation that an edit stopped for the end of the one that began in its place, so
   * it alone says too early that all is done.
   */
  private isCalculating(): boolean {
    const engine = this.services.injector.get(ICalculateFormulaService) as { _executeLock?: ExecuteLock };
    return engine._executeLock?.isBusy?.() ?? false;
  }

  private isSettled(): boolean {
    const { started, resultApplied, stopped, completed, resultEmitted } = this.session.state;
    const idle = !started || (resultApplied && (stopped || completed || resultEmitted));
    return idle && !this.isCalculating() && performance.now() - this.lastChange > STARTS_WITHIN_MS;
  }

  async settled(): Promise<void> {
    while (!this.isSettled()) await this.session.waitForLatestApplied(LONGEST_CALCULATION_MS, STARTS_WITHIN_MS);
  }
}
