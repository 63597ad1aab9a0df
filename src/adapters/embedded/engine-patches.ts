import type { Injector } from '@univerjs/core';
import { patchLookupIndex } from './cache-patch';
import { patchDependencyIndex } from './dependency-patch';
import { patchDependencyTurns } from './dependency-turns';
import { engineVersion } from './engine-version';

/** Makes the engine fast enough for a plan of a thousand channels. The results of formulas stay the same. */
export const patchEngine = (injector: Injector, version = engineVersion()): boolean => {
  const index = patchDependencyIndex(injector, version);
  const turns = index !== undefined && patchDependencyTurns(injector, index, version);
  return patchLookupIndex(version) && turns;
};
