import type { UnitId } from '../core/units';
import { PURPOSES, type Purpose } from '../plan/fields';
import { limitNames } from '../plan/limits-table';
import { fixedCell, quoted, sheetPrefix } from './address';
import { particularity, type LimitRow } from './limit-rows';
import type { PlanTables, RowSources } from './row-sources';
import type { ColumnUse } from './tables';

const UNIT_OF = Object.fromEntries(limitNames().map(({ limit, unit }) => [limit, unit])) as Record<
  LimitRow['limit'],
  UnitId
>;

/** A bound whose row states another unit than the limit's own. */
const inLimitUnit = (cell: string, { limit, unitText }: LimitRow): string =>
  unitText === undefined ? cell : `CHAN.CONVERT(${cell},${quoted(unitText)},${quoted(UNIT_OF[limit])})`;

/** Two texts that are equal when a row of the limits sheet holds for a channel row; none: it holds for all. */
interface Match {
  readonly channel: readonly string[];
  readonly limit: readonly string[];
}

/** Chooses among the rows of the limits sheet as `limitsFor` does: each more particular one stands around the wider ones. */
export const limitExpression = (tables: PlanTables, rowCell: (found: ColumnUse) => string): RowSources['limit'] => {
  const { limits, limitRows = [] } = tables;
  const ofRow = (key: string) => {
    const found = tables.channels.columns.get(key);
    return found && rowCell(found);
  };
  const { part } = tables.channels;
  const group = ofRow('group') ?? (part === undefined ? undefined : quoted(part));
  const typed = ofRow('purpose');
  const purposeText = typed ? `IF(${typed}="",${quoted(PURPOSES[0])},TRIM(${typed}))` : quoted(PURPOSES[0]);
  const at = (row: number, key: string): string | undefined => {
    const column = limits?.columns.get(key)?.column;
    return limits && column !== undefined ? `${sheetPrefix(limits.sheet)}${fixedCell(row, column)}` : undefined;
  };
  const matchOf = ({ row, ...of }: LimitRow, purpose: Purpose | undefined): Match => {
    const byGroup = of.group !== undefined && group !== undefined;
    const byPurpose = of.purpose !== undefined && purpose === undefined;
    return {
      channel: [...(byGroup ? [`TRIM(${group})`] : []), ...(byPurpose ? [purposeText] : [])],
      limit: [...(byGroup ? ['group'] : []), ...(byPurpose ? ['purpose'] : [])].map((key) => `TRIM(${at(row, key)})`),
    };
  };
  return (limit, bound, byDefault, purpose) =>
    limitRows
      .filter((row) => row.limit === limit && row.bounds.includes(bound))
      .filter((row) => row.group === undefined || group !== undefined)
      .filter((row) => row.purpose === undefined || purpose === undefined || row.purpose === purpose)
      .sort((a, b) => particularity(a) - particularity(b))
      .reduce((otherwise, found) => {
        const cell = inLimitUnit(at(found.row, bound) ?? '', found);
        const match = matchOf(found, purpose);
        const text = (side: readonly string[]) => side.join('&"; "&');
        return match.channel.length === 0
          ? cell
          : `IF(${text(match.channel)}=${text(match.limit)},${cell},${otherwise})`;
      }, String(byDefault));
};
