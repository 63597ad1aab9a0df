import { CELL_INVERTED_INDEX_CACHE } from '@univerjs/engine-formula';
import { PATCHED_VERSION } from './engine-version';

type Column = Map<number, unknown>;
interface LookupIndex {
  set(unit: string, sheet: string, column: number, value: unknown, row: number, force?: boolean): void;
  _cache?: unknown;
  _continueBuildingCache?: Map<string, Map<string, Column>>;
}

/**
 * After each computed cell the engine updates its index for lookups and scans all distinct values of the column for it,
 * which makes a calculation quadratic in rows. A column that no lookup has read has no index to keep right, so the
 * update is left out there. Returns whether the patch is in place.
 */
export const patchLookupIndex = (
  version: string,
  index = CELL_INVERTED_INDEX_CACHE as unknown as LookupIndex,
): boolean => {
  const indexed = index._continueBuildingCache;
  if (version !== PATCHED_VERSION || !(indexed instanceof Map) || !(index._cache instanceof Map)) return false;
  if (Object.prototype.hasOwnProperty.call(index, 'set')) return true;
  const original = index.set.bind(index);
  index.set = (unit, sheet, column, value, row, force) => {
    if (force && !indexed.get(unit)?.get(sheet)?.has(column)) return;
    original(unit, sheet, column, value, row, force);
  };
  return true;
};
