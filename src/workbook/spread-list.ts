import { isCellError } from '../functions/define';
import { joinName } from '../plan/join-name';
import { foldWords } from '../plan/heading-text';
import type { SheetContent } from './port';
import { SheetCells } from './sheet-cells';
import type { FurtherList, Mapping, RecognisedTable } from './tables';

/** Fields, headings and what these say of the numbers below: lists that agree in all of it are read the same way. */
export const columnsAsRead = ({ columns }: RecognisedTable): string =>
  JSON.stringify(
    [...columns]
      .map(([key, { heading, unit, unitText, statistic }]) => [key, foldWords(heading), unit, unitText, statistic])
      .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );

const channelNames = (table: RecognisedTable, content: SheetContent): ReadonlySet<string> => {
  const cells = new SheetCells(content);
  const column = table.columns.get('channel')?.column;
  const names = new Set<string>();
  const skipped = new Set(table.skippedRows);
  for (let row = table.firstRow; column !== undefined && row <= table.lastRow; row++) {
    const cell = skipped.has(row) ? null : cells.at(row, column);
    if (cell !== null && !isCellError(cell)) names.add(joinName(String(cell)));
  }
  return names;
};

const furtherOf = ({ sheet, headerRow, firstColumn }: RecognisedTable, because: FurtherList['because']) => ({
  sheet,
  headerRow,
  column: firstColumn,
  because,
});

/**
 * The channel list with its parts on other sheets. Sheets with the same columns and other channels are parts of it by
 * themselves; of every other list that looks like one the user must say whether it belongs. `found` has one list per
 * sheet, in the order of the sheets, so that the plan does not depend on which of them is looked at.
 */
export const spreadList = (
  chosen: RecognisedTable,
  found: readonly RecognisedTable[],
  contentOf: (sheet: string) => SheetContent,
  { sheet: named, lists = {} }: NonNullable<Mapping['channels']> = {},
): RecognisedTable => {
  const said = (sheet: string): boolean | undefined =>
    sheet === named ? true : Object.hasOwn(lists, sheet) ? lists[sheet] : undefined;
  const taken = found.filter(({ sheet }) => said(sheet) === true);
  const main = taken[0] ?? (said(chosen.sheet) === false ? found.find((list) => said(list.sheet) !== false) : chosen);
  if (!main) return chosen;
  const members = new Set([main, ...taken]);
  const names = new Set([...members].flatMap((list) => [...channelNames(list, contentOf(list.sheet))]));
  const columns = columnsAsRead(main);
  const further: FurtherList[] = [];
  for (const list of found) {
    if (members.has(list)) continue;
    const own = channelNames(list, contentOf(list.sheet));
    if (said(list.sheet) === false) further.push(furtherOf(list, 'left out'));
    else if (columnsAsRead(list) !== columns) further.push(furtherOf(list, 'other columns'));
    else if ([...own].some((name) => names.has(name))) further.push(furtherOf(list, 'same channels'));
    else {
      members.add(list);
      own.forEach((name) => names.add(name));
    }
  }
  const parts = found.filter((list) => members.has(list));
  const [first = main, ...rest] = parts.length > 1 ? parts.map(withPart) : parts;
  return { ...first, ...(further.length > 0 && { further }), ...(rest.length > 0 && { parts: rest }) };
};

/** Points and panels of two parts may have the same names: without a column for the part, the sheet tells them apart. */
const withPart = (list: RecognisedTable): RecognisedTable =>
  list.columns.has('group') ? list : { ...list, part: list.sheet };
