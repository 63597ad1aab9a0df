import { FUNCTIONS } from '../../functions/index';
import { isCellError } from '../../functions/define';
import type { HostFacts, Spreadsheet } from '../port';
import { cellsOf, everySheet } from './every-sheet';
import { namedCalls } from './own-calls';
import { compareVersions, writerOf } from './written-by';

/** Which build runs. */
export interface Running {
  readonly version: string;
  /** Date and mark of the sources, where the build says them. */
  readonly built?: string;
}

/** What may be out of date, and how it shows. */
export type Stale =
  | { readonly kind: 'older than the workbook'; readonly writtenBy: string }
  | { readonly kind: 'unknown functions'; readonly names: readonly string[] }
  | { readonly kind: 'other list of functions'; readonly listed: number; readonly known: number };

/** No names of people, no paths and no contents of cells: it is made to be sent to somebody. */
export interface AddInState {
  readonly running: Running;
  readonly host: Spreadsheet['host'];
  readonly facts?: HostFacts;
  readonly can: Spreadsheet['can'];
  readonly functions: { readonly total: number; readonly known?: number };
  readonly formulas: number;
  /** Cells with our functions that show an error, by error. */
  readonly errors: Readonly<Record<string, number>>;
  readonly writtenBy?: string;
  readonly stale: readonly Stale[];
}

/** Ids of the list of functions that the host reads (functions.json), where somebody can say them. */
export type ListedIds = readonly string[] | undefined;

export const staleOf = (given: {
  readonly running: string;
  readonly writtenBy?: string;
  readonly unknownNames: readonly string[];
  readonly listed?: ListedIds;
}): readonly Stale[] => {
  const { running, writtenBy, unknownNames: names, listed } = given;
  const known = new Set(FUNCTIONS.map(({ name }) => name));
  const differs = listed && (listed.length !== known.size || listed.some((id) => !known.has(id)));
  return [
    ...(writtenBy !== undefined && compareVersions(running, writtenBy) < 0
      ? [{ kind: 'older than the workbook', writtenBy } as const]
      : []),
    ...(names.length > 0 ? [{ kind: 'unknown functions', names } as const] : []),
    ...(differs ? [{ kind: 'other list of functions', listed: listed.length, known: known.size } as const] : []),
  ];
};

/** Reads the whole workbook and changes nothing. */
export const readState = async (
  spreadsheet: Spreadsheet,
  running: Running,
  listed?: ListedIds,
): Promise<AddInState> => {
  let formulas = 0;
  const errors: Record<string, number> = {};
  const unknownNames = new Set<string>();
  for (const content of await everySheet(spreadsheet))
    for (const { formula, value } of cellsOf(content)) {
      if (formula === '') continue;
      const calls = namedCalls(formula).filter(({ kind }) => kind !== 'perhaps ours');
      if (calls.length === 0) continue;
      formulas += 1;
      for (const { kind, name } of calls) if (kind === 'unknown to this version') unknownNames.add(name.toUpperCase());
      if (isCellError(value)) errors[value.error] = (errors[value.error] ?? 0) + 1;
    }
  const facts = await spreadsheet.facts?.();
  const writtenBy = await writerOf(spreadsheet);
  return {
    running,
    host: spreadsheet.host,
    facts,
    can: spreadsheet.can,
    functions: { total: FUNCTIONS.length, known: facts?.functionsKnown },
    formulas,
    errors,
    writtenBy,
    stale: staleOf({ running: running.version, writtenBy, unknownNames: [...unknownNames], listed }),
  };
};
