import { IDependencyManagerService } from '@univerjs/engine-formula';
import type { Injector } from '@univerjs/core';
import { PATCHED_VERSION } from './engine-version';

interface Tree {
  readonly treeId: number;
  readonly rangeList: readonly {
    readonly unitId: string;
    readonly sheetId: string;
    readonly range: { startRow: number; startColumn: number; endRow: number; endColumn: number };
  }[];
}
interface Manager {
  addDependencyRTreeCache(tree: Tree): void;
  getFormulaDependency(unit: string, sheet: string, row: number, column: number): number | undefined;
  removeFormulaDependency(unit: string, sheet: string, row: number, column: number): void;
}

/** After these the index may lack ranges of any formula. */
const FORGETTING = [
  'reset',
  'dispose',
  'clearFormulaDependency',
  'clearOtherFormulaDependency',
  'clearFeatureFormulaDependency',
  'removeOtherFormulaDependency',
  'removeFeatureFormulaDependency',
  'removeFormulaDependencyByDefinedName',
] as const;

const placesOf = (ranges: Tree['rangeList']): string =>
  ranges
    .map(({ sheetId, range }) => `${sheetId}:${range.startRow},${range.startColumn},${range.endRow},${range.endColumn}`)
    .join(';');

/** Puts off the indexing of formulas until it is told to do them, resting in between. */
export interface DependencyIndex {
  defer(): void;
  flush(rest: () => Promise<void>): Promise<void>;
}

/**
 * At each calculation the engine puts the ranges that every formula reads into its index again, each time beside the
 * old ones, so that an edit costs more the longer a workbook is open; and it builds the list of ranges anew for each
 * of its entries. With this the index takes a formula only when it is new or reads other ranges than before.
 * Returns undefined for an engine it was not written for, which then stays as it is.
 */
export const patchDependencyIndex = (injector: Injector, version: string): DependencyIndex | undefined => {
  if (version !== PATCHED_VERSION) return undefined;
  const manager = injector.get(IDependencyManagerService) as unknown as Manager & Record<string, unknown>;
  const methods = [...FORGETTING, 'addDependencyRTreeCache', 'removeFormulaDependency', 'getFormulaDependency'];
  if (methods.some((name) => typeof manager[name] !== 'function')) return undefined;

  const indexed = new Map<number, string>();
  const add = manager.addDependencyRTreeCache.bind(manager);
  let deferred: Tree[] | undefined;
  const addOnce = (tree: Tree) => {
    const ranges = tree.rangeList;
    const places = placesOf(ranges);
    if (indexed.get(tree.treeId) === places) return;
    indexed.set(tree.treeId, places);
    const isComputed = !Object.prototype.hasOwnProperty.call(tree, 'rangeList');
    if (isComputed) Object.defineProperty(tree, 'rangeList', { value: ranges, configurable: true });
    add(tree);
    if (isComputed) Reflect.deleteProperty(tree, 'rangeList');
  };
  manager.addDependencyRTreeCache = (tree) => {
    if (deferred) deferred.push(tree);
    else addOnce(tree);
  };
  const remove = manager.removeFormulaDependency.bind(manager);
  manager.removeFormulaDependency = (unit, sheet, row, column) => {
    const id = manager.getFormulaDependency(unit, sheet, row, column);
    if (id !== undefined) indexed.delete(id);
    remove(unit, sheet, row, column);
  };
  for (const name of FORGETTING) {
    const original = (manager[name] as (...args: unknown[]) => unknown).bind(manager);
    manager[name] = (...args: unknown[]) => {
      indexed.clear();
      return original(...args);
    };
  }
  return {
    defer() {
      deferred = [];
    },
    async flush(rest) {
      const trees = deferred ?? [];
      deferred = undefined;
      for (const tree of trees) {
        addOnce(tree);
        await rest();
      }
    },
  };
};
