import { channelSheets } from '../../workbook/channel-lists';
import { recognise, type SheetToRead } from '../../workbook/recognise';
import type { Mapping } from '../../workbook/tables';
import type { OpenOptions } from './workbook-plan';
import { usageProblem } from './status';

/** Which sheets the channel list is spread over. */
export const SHEETS_OPTIONS = {
  /** A sheet of the channel list; given again for each. */
  list: { type: 'string', multiple: true },
  lists: { type: 'string' },
} as const;

/** Options of every command that judges a plan in a workbook. */
export const LIST_OPTIONS = { ...SHEETS_OPTIONS, stock: { type: 'string' } } as const;

const EVERY = 'all';

/** What was typed: names of sheets, "all", or nothing. */
const listsTyped = (values: Readonly<Record<string, unknown>>): readonly string[] | undefined => {
  const { list, lists } = values as { readonly list?: readonly string[]; readonly lists?: string };
  if (lists !== undefined && lists !== EVERY) throw usageProblem(`--lists ${lists}: expected "${EVERY}".`);
  if (lists !== undefined && list !== undefined) throw usageProblem('--list and --lists cannot be asked together.');
  return lists === EVERY ? [EVERY] : list;
};

/** How the plan is to be opened, as typed. */
export const openTyped = (values: Readonly<Record<string, unknown>>): OpenOptions => ({
  lists: listsTyped(values),
  stock: values['stock'] as string | undefined,
});

/** A JSON plan has neither sheets nor a place for another sensor list. */
export const refuseForJson = (path: string, { lists, stock }: OpenOptions): void => {
  const option = stock !== undefined ? '--stock' : lists !== undefined ? '--list' : undefined;
  if (option) throw usageProblem(`${path}: a JSON plan has no sheets; ${option} is for workbooks.`);
};

/** The mapping with exactly these sheets as parts of the channel list. */
export const mappingWithLists = (
  path: string,
  sheets: readonly SheetToRead[],
  mapping: Mapping,
  typed: readonly string[],
): Mapping => {
  const { sheet: named, lists: before, ...rest } = mapping.channels ?? {};
  const free = recognise(sheets, { mapping: { ...mapping, channels: rest } });
  const known = [...new Set([...channelSheets(free), ...(free.channels?.further ?? []).map(({ sheet }) => sheet)])];
  const isKnown = (name: string): string | undefined =>
    known.find((sheet) => sheet.toLowerCase() === name.trim().toLowerCase()) ??
    sheets.find(({ info }) => !info.visible && info.name.toLowerCase() === name.trim().toLowerCase())?.info.name;
  const wanted =
    typed[0] === EVERY && typed.length === 1
      ? known
      : typed.map((name) => {
          const found = isKnown(name);
          if (found === undefined)
            throw usageProblem(
              `--list ${name}: ${path} has no channel list on a sheet of this name${known.length > 0 ? `; lists stand on ${known.join(', ')}` : ''}.`,
            );
          return found;
        });
  const all = [
    ...new Set([...Object.keys(before ?? {}), ...known, ...wanted, ...(named === undefined ? [] : [named])]),
  ];
  return {
    ...mapping,
    channels: { ...rest, lists: Object.fromEntries(all.map((name) => [name, wanted.includes(name)])) },
  };
};
