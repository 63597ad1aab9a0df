import { TABLES, type TableName } from '../plan/fields';
import { headerCandidates } from './header-rows';
import { withHeldCells } from './held-cells';
import { applyCorrections } from './mapping';
import { isOwnHeading } from './own-columns';
import type { SheetContent, SheetInfo } from './port';
import { readAs, type Reading } from './read-header';
import { SheetCells } from './sheet-cells';
import { spreadList } from './spread-list';
import { tableExtent } from './table-extent';
import type { ColumnUse, Mapping, RecognisedTable, TableCorrection } from './tables';

export interface SheetToRead {
  readonly info: SheetInfo;
  readonly content: SheetContent;
}
export type RecognisedTables = Partial<Record<TableName, RecognisedTable>>;

const overlaps = (a: Reading, b: Reading): boolean =>
  a.header.cells === b.header.cells &&
  a.header.headerRow < b.header.headerRow + b.header.headerRows &&
  b.header.headerRow < a.header.headerRow + a.header.headerRows &&
  [...a.header.headings.keys()].some((column) => b.header.headings.has(column));

/** Lists of the same kind that were left aside, one per place, hidden sheets left out. */
const furtherOf = (reading: Reading, readings: readonly Reading[], chosen: readonly Reading[]) => {
  const further: Reading[] = [];
  for (const other of readings)
    if (
      other.table === reading.table &&
      other.info.visible &&
      ![...chosen, ...further].some((one) => overlaps(one, other))
    )
      further.push(other);
  return further.map(({ header }) => ({
    sheet: header.cells.content.sheet,
    headerRow: header.headerRow,
    column: Math.min(...header.headings.keys()),
  }));
};

const toTable = (reading: Reading, all: readonly Reading[], mapping: Mapping): RecognisedTable => {
  const { table, header, matches } = reading;
  const places = [...header.headings.keys()];
  const place = (column: number): number => places[column] ?? 0;
  const candidates = (list: readonly { column: number; confidence: number }[]) =>
    list.map(({ column, confidence }) => ({ column: place(column), confidence }));
  const found = new Map<string, ColumnUse>();
  for (const [key, match] of matches.columns) {
    const column = place(match.column);
    const heading = header.headings.get(column) ?? '';
    found.set(key, { ...match, column, heading, alternatives: candidates(match.alternatives) });
  }
  const { sheet } = header.cells.content;
  const correction = mapping[table];
  const columns = applyCorrections(table, found, header.headings, correction && correctionOn(correction, sheet));
  const mapped = [...columns.values()].map(({ column }) => column);
  const headersBelow = new Set(
    all
      .filter((other) => other.header.cells === header.cells && other.header.headerRow > header.headerRow)
      .filter((other) => [...other.header.headings.keys()].some((column) => header.headings.has(column)))
      .map((other) => other.header.headerRow),
  );
  const unsure = new Map([...matches.unsure].filter(([key]) => !columns.has(key)).map(([k, v]) => [k, candidates(v)]));
  const confidences = [...columns.values()].map(({ confidence }) => confidence);
  return {
    table,
    sheet,
    headerRow: header.headerRow,
    headerRows: header.headerRows,
    ...tableExtent(header, mapped, headersBelow),
    firstColumn: Math.min(...places),
    lastColumn: Math.max(...places),
    columns,
    headings: header.headings,
    unsure,
    listObject: header.listObject,
    confidence: confidences.reduce((sum, value) => sum + value, 0) / Math.max(1, confidences.length),
  };
};

/** What was said of this sheet goes before what was said of the whole list. */
const correctionOn = (correction: TableCorrection, sheet: string): TableCorrection =>
  correction.fieldsOn && Object.hasOwn(correction.fieldsOn, sheet)
    ? { ...correction, fields: { ...correction.fields, ...correction.fieldsOn[sheet] } }
    : correction;

/** The best reading of each sheet as a channel list, in the order of the sheets. */
const channelReadings = (sheets: readonly SheetToRead[], readings: readonly Reading[], lists: Lists): Reading[] =>
  sheets.flatMap(({ content }) => {
    const best = readings.find(
      ({ table, header, info }) =>
        table === 'channels' && header.cells.content === content && (info.visible || lists?.[info.name] === true),
    );
    return best ? [best] : [];
  });
type Lists = TableCorrection['lists'];

/** A sheet of properties that was named and is gone, as after an undo, is looked for anew. */
const whereSheetsAre = (mapping: Mapping, sheets: readonly SheetToRead[]): Mapping => {
  const isThere = (name: string) => sheets.some(({ info }) => info.name === name);
  const entries = Object.entries(mapping).filter(
    ([table, { sheet }]) => table === 'channels' || sheet === undefined || isThere(sheet),
  );
  return Object.fromEntries(entries);
};

/**
 * Finds the tables of a plan in a workbook. The channel table is looked for on the active sheet first.
 * Columns whose heading is ours are never read as the user's data.
 */
export const recognise = (
  sheets: readonly SheetToRead[],
  options: { readonly mapping?: Mapping; readonly ignore?: (heading: string) => boolean } = {},
): RecognisedTables => {
  const { ignore = isOwnHeading } = options;
  const mapping = whereSheetsAre(options.mapping ?? {}, sheets);
  const found: Reading[] = [];
  for (const { info, content } of sheets) {
    const cells = new SheetCells(content);
    const free = headerCandidates(cells, ignore);
    for (const table of TABLES) {
      const { sheet, headerRow, lists } = mapping[table] ?? {};
      const isOther = sheet !== undefined && sheet !== info.name;
      const barred = isOther && lists?.[info.name] !== true;
      if (barred && table !== 'channels') continue;
      const asked = !isOther && sheet !== undefined && headerRow !== undefined;
      for (const header of asked ? headerCandidates(cells, ignore, headerRow) : free) {
        const reading = readAs(table, header, info, asked);
        if (reading) found.push({ ...reading, barred });
      }
    }
  }
  // A channel list names sensors and mounts with their temperatures: it is no list of these.
  const isPartOfChannels = (reading: Reading): boolean =>
    reading.table !== 'channels' &&
    mapping[reading.table]?.sheet === undefined &&
    found.some(
      (other) =>
        other.table === 'channels' &&
        !other.isDoubtful &&
        other.strength > reading.strength + 1 &&
        overlaps(other, reading),
    );
  const plain = found.filter((reading) => !reading.barred && !isPartOfChannels(reading));
  // What is doubtful gives way to any other list, of its kind or in its place.
  const sure = plain.filter(({ isDoubtful }) => !isDoubtful);
  const readings = plain.filter(
    (reading) =>
      !reading.isDoubtful || !sure.some((other) => other.table === reading.table || overlaps(other, reading)),
  );
  const rank = ({ info, table }: Reading): number =>
    (info.visible ? 1 : 0) + (table === 'channels' && info.active ? 1 : 0);
  readings.sort((a, b) => {
    const channelsFirst = Number(b.table === 'channels') - Number(a.table === 'channels');
    return channelsFirst || rank(b) - rank(a) || b.strength - a.strength || a.header.headerRows - b.header.headerRows;
  });
  const chosen: Reading[] = [];
  for (const reading of readings)
    if (!chosen.some((other) => other.table === reading.table || overlaps(other, reading))) chosen.push(reading);
  const perSheet = channelReadings(sheets, readings, mapping.channels?.lists);
  const tables: RecognisedTables = {};
  for (const reading of chosen) {
    const table = toTable(reading, [...chosen, ...perSheet], mapping);
    const further = furtherOf(reading, readings, [...chosen, ...perSheet]);
    tables[reading.table] = { ...table, ...(further.length > 0 && { further }) };
  }
  if (tables.channels) tables.channels = withParts(tables.channels, perSheet, chosen, sheets, mapping);
  return withHeldCells(tables, (name) => sheets.find(({ content }) => content.sheet === name)!.content);
};

const withParts = (
  channels: RecognisedTable,
  perSheet: readonly Reading[],
  chosen: readonly Reading[],
  sheets: readonly SheetToRead[],
  mapping: Mapping,
): RecognisedTable => {
  const lists = perSheet.map((reading) =>
    chosen.includes(reading) ? channels : toTable(reading, [...chosen, ...perSheet], mapping),
  );
  if (!lists.includes(channels)) lists.push(channels);
  const contentOf = (name: string) => sheets.find(({ content }) => content.sheet === name)!.content;
  const { further: beside = [], ...plain } = channels;
  const spread = spreadList(
    plain,
    lists.map((list) => (list === channels ? plain : list)),
    contentOf,
    mapping.channels,
  );
  const further = [...(spread.further ?? []), ...beside.map((one) => ({ ...one, because: 'same sheet' as const }))];
  return { ...spread, ...(further.length > 0 && { further }) };
};
