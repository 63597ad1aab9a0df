import type { Cell } from '../functions/define';
import { TABLES, type TableName } from '../plan/fields';
import { foldWords } from '../plan/heading-text';
import { matchHeadings, type HeadingMatches } from '../plan/headings';
import { LANGUAGES } from '../plan/words/languages';
import { headerCandidates, type HeaderCandidate } from './header-rows';
import { applyCorrections } from './mapping';
import { isOwnHeading } from './own-columns';
import type { SheetContent, SheetInfo } from './port';
import { SheetCells } from './sheet-cells';
import { tableExtent } from './table-extent';
import type { ColumnUse, Mapping, RecognisedTable } from './tables';

export interface SheetToRead {
  readonly info: SheetInfo;
  readonly content: SheetContent;
}
export type RecognisedTables = Partial<Record<TableName, RecognisedTable>>;

/** The field that names a row, those of which one must be there unless the names are sure, and how many fields make a table. */
const SHAPE: Readonly<Record<TableName, { key: string; telling: readonly string[]; fields: number }>> = {
  channels: { key: 'channel', telling: ['levelHigh', 'bandHigh', 'sensor', 'temperatureHigh', 'levelLow'], fields: 4 },
  sensors: { key: 'sensor', telling: ['sensitivity', 'chargeSensitivity', 'fullScale', 'resonance'], fields: 3 },
  mounts: { key: 'mount', telling: ['stiffness', 'holdingForce', 'mountMass', 'mountTemperatureMax'], fields: 2 },
  cables: { key: 'cable', telling: ['cableCapacitance', 'cableMass', 'cableTemperatureMax'], fields: 2 },
  inputs: { key: 'input', telling: ['range', 'sampleRate', 'dynamicRange', 'gain'], fields: 3 },
  limits: { key: 'limit', telling: ['pass'], fields: 2 },
};
/** A key column found by a weak word such as "Name" needs the sheet's name or title to say which table it is. */
const SURE_KEY = 0.85;
const EVIDENCE_ROWS = 100;

interface Reading {
  readonly table: TableName;
  readonly header: HeaderCandidate;
  readonly matches: HeadingMatches;
  readonly strength: number;
  readonly info: SheetInfo;
  /** The user named another sheet for this table. */
  readonly barred: boolean;
}

const TABLE_WORDS = new Map(
  TABLES.map((table) => [
    table,
    new Set(LANGUAGES.flatMap(({ tables }) => (tables[table] ?? []).flatMap((word) => foldWords(word)))),
  ]),
);

/** The sheet's name and the texts in the rows just above the header. */
const contextWords = ({ cells, headerRow, headings, listObject }: HeaderCandidate): Set<string> => {
  const words = foldWords(`${cells.content.sheet} ${listObject ?? ''}`);
  for (let row = Math.max(cells.firstRow, headerRow - 2); row < headerRow; row++)
    for (const column of headings.keys()) {
      const cell = cells.at(row, column);
      if (typeof cell === 'string') words.push(...foldWords(cell.slice(0, 100)));
    }
  return new Set(words);
};

const columnsBelow = new WeakMap<HeaderCandidate, readonly (readonly Cell[])[]>();

/** The cells below each heading, the same arrays for every table that the header is tried as. */
const cellsBelow = (header: HeaderCandidate): readonly (readonly Cell[])[] => {
  let columns = columnsBelow.get(header);
  if (!columns) {
    const { cells, headerRow, headerRows, lastRow } = header;
    const first = headerRow + headerRows;
    const end = Math.min(cells.endRow, (lastRow ?? Infinity) + 1, first + EVIDENCE_ROWS);
    columns = [...header.headings.keys()].map((column) =>
      Array.from({ length: Math.max(0, end - first) }, (_, i) => cells.at(first + i, column)),
    );
    columnsBelow.set(header, columns);
  }
  return columns;
};

const readAs = (
  table: TableName,
  header: HeaderCandidate,
  info: SheetInfo,
  isAsked: boolean,
): Omit<Reading, 'barred'> | undefined => {
  const matches = matchHeadings(table, [...header.headings.values()], { columns: cellsBelow(header) });
  const { key, telling, fields } = SHAPE[table];
  const named = [...contextWords(header)].some((word) => TABLE_WORDS.get(table)?.has(word));
  const keyConfidence = matches.columns.get(key)?.confidence ?? 0;
  const hasPoints = table === 'channels' && matches.columns.has('point');
  const isTable =
    matches.columns.size >= fields &&
    (keyConfidence > 0 || hasPoints) &&
    telling.some((field) => matches.columns.has(field)) &&
    (keyConfidence >= SURE_KEY || named || (hasPoints && matches.columns.size >= 2 * fields));
  if (!isTable && !isAsked) return undefined;
  const sum = [...matches.columns.values()].reduce((total, { confidence }) => total + confidence, 0);
  const isOnHeader = header.listObject === undefined ? 0 : 0.2;
  return { table, header, matches, info, strength: sum + keyConfidence + (named ? 0.75 : 0) + isOnHeader };
};

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
  const columns = applyCorrections(table, found, header.headings, mapping[table]);
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
    sheet: header.cells.content.sheet,
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

/**
 * Finds the tables of a plan in a workbook. The channel table is looked for on the active sheet first.
 * Columns whose heading is ours are never read as the user's data.
 */
export const recognise = (
  sheets: readonly SheetToRead[],
  options: { readonly mapping?: Mapping; readonly ignore?: (heading: string) => boolean } = {},
): RecognisedTables => {
  const { mapping = {}, ignore = isOwnHeading } = options;
  const found: Reading[] = [];
  for (const { info, content } of sheets) {
    const cells = new SheetCells(content);
    const free = headerCandidates(cells, ignore);
    for (const table of TABLES) {
      const { sheet, headerRow } = mapping[table] ?? {};
      const barred = sheet !== undefined && sheet !== info.name;
      if (barred && table !== 'channels') continue;
      const asked = !barred && sheet !== undefined && headerRow !== undefined;
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
      (other) => other.table === 'channels' && other.strength > reading.strength + 1 && overlaps(other, reading),
    );
  const readings = found.filter((reading) => !reading.barred && !isPartOfChannels(reading));
  const rank = ({ info, table }: Reading): number =>
    (info.visible ? 1 : 0) + (table === 'channels' && info.active ? 1 : 0);
  readings.sort((a, b) => {
    const channelsFirst = Number(b.table === 'channels') - Number(a.table === 'channels');
    return channelsFirst || rank(b) - rank(a) || b.strength - a.strength || a.header.headerRows - b.header.headerRows;
  });
  const chosen: Reading[] = [];
  for (const reading of readings)
    if (!chosen.some((other) => other.table === reading.table || overlaps(other, reading))) chosen.push(reading);
  const tables: RecognisedTables = {};
  for (const reading of chosen) {
    const further = furtherOf(reading, readings, chosen);
    tables[reading.table] = { ...toTable(reading, chosen, mapping), ...(further.length > 0 && { further }) };
  }
  return tables;
};

/** Where each limit stands on the limits sheet, by its name in lower case. */
export const limitRowsOf = (limits: RecognisedTable, content: SheetContent): ReadonlyMap<string, number> => {
  const cells = new SheetCells(content);
  const rows = new Map<string, number>();
  const column = limits.columns.get('limit')?.column;
  for (let row = limits.firstRow; column !== undefined && row <= limits.lastRow; row++) {
    const name = cells.at(row, column);
    if (typeof name === 'string' && !rows.has(name.trim().toLowerCase())) rows.set(name.trim().toLowerCase(), row);
  }
  return rows;
};
