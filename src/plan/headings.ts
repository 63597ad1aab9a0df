import type { UnitId } from '../core/units';
import { fieldsOf, type TableName } from './fields';

/** A cell as any host hands it over. */
export type CellValue = number | string | boolean | null | { readonly error: string };

export interface ColumnCandidate {
  readonly column: number;
  /** 0..1 */
  readonly confidence: number;
}

export interface ColumnMatch extends ColumnCandidate {
  /** The heading's unit when it is one of ours. */
  readonly unit?: UnitId;
  /** The heading's unit as written, for numbers that must be read as "number unit" (kHz, °F, V/g …). */
  readonly unitText?: string;
  /** The statistic that the heading names. */
  readonly statistic?: 'rms' | 'peak';
  /** Why, in words for the user. */
  readonly evidence: string;
  readonly alternatives: readonly ColumnCandidate[];
}

export interface HeadingMatches {
  /** By field key; at most one field per column. */
  readonly columns: ReadonlyMap<string, ColumnMatch>;
  /** Fields with candidates, none of them sure enough: the user must be asked. */
  readonly unsure: ReadonlyMap<string, readonly (ColumnCandidate & { readonly evidence: string })[]>;
  readonly unused: readonly number[];
}

export interface ColumnEvidence {
  /** The cells below each heading, in the order of the headings. */
  readonly columns: readonly (readonly CellValue[])[];
}

/** Finds for each field of a table the column that holds it. A wrong column is worse than none. */
export const matchHeadings = (
  table: TableName,
  headings: readonly string[],
  _evidence?: ColumnEvidence,
): HeadingMatches => {
  const columns = new Map<string, ColumnMatch>();
  for (const { key, title } of fieldsOf(table)) {
    const column = headings.findIndex((heading) => heading.trim().toLowerCase() === title.toLowerCase());
    if (column >= 0) columns.set(key, { column, confidence: 1, evidence: 'same words', alternatives: [] });
  }
  const taken = new Set([...columns.values()].map(({ column }) => column));
  return { columns, unsure: new Map(), unused: headings.map((_, i) => i).filter((i) => !taken.has(i)) };
};
