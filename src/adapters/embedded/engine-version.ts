import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';

/** What the installed engine says of itself. */
export const engineVersion = (): string =>
  String((UniverFormulaEnginePlugin as unknown as { version: unknown }).version);

/** The version whose inner workings the patches were written for; any other one keeps its own behaviour. */
export const PATCHED_VERSION = '0.25.1';
