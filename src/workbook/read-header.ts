import type { Cell } from '../functions/define';
import { TABLES, type TableName } from '../plan/fields';
import { foldWords } from '../plan/heading-text';
import { matchHeadings, type HeadingMatches } from '../plan/headings';
import { LANGUAGES } from '../plan/words/languages';
import { cellAddress } from './address';
import type { HeaderCandidate } from './header-rows';
import type { SheetInfo } from './port';

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
/** Masses and temperatures stand in many lists: these do not. */
const DISTINCT: Readonly<Partial<Record<TableName, readonly string[]>>> = {
  mounts: ['stiffness', 'holdingForce'],
  cables: ['cableCapacitance'],
};
/** Two telling fields as sure as this speak for themselves, whatever names the rows. */
const SURE_TELLING = 0.8;
const EVIDENCE_ROWS = 100;
const ITEMS_ENOUGH = 2;
/** Columns of a list of properties that must be its own. */
const LEAST_SHARE = 0.35;

/** A header tried as one of the tables. */
export interface Reading {
  readonly table: TableName;
  readonly header: HeaderCandidate;
  readonly matches: HeadingMatches;
  readonly strength: number;
  readonly info: SheetInfo;
  /** So much of it is a question that any other list of its kind goes before. */
  readonly isDoubtful: boolean;
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

/** Among other cells a date is something else that became one, and says nothing of its column. */
const withoutStrayDates = (column: readonly Cell[], isDate: (i: number) => boolean): readonly Cell[] => {
  const dates = column.filter((cell, i) => typeof cell === 'number' && isDate(i)).length;
  const isStray = dates > 0 && dates <= column.filter((cell) => cell !== null).length / 2;
  return isStray ? column.map((cell, i) => (isDate(i) ? null : cell)) : column;
};

const columnsBelow = new WeakMap<HeaderCandidate, readonly (readonly Cell[])[]>();

/** The cells below each heading, the same arrays for every table that the header is tried as. */
const cellsBelow = (header: HeaderCandidate): readonly (readonly Cell[])[] => {
  let columns = columnsBelow.get(header);
  if (!columns) {
    const { cells, headerRow, headerRows, lastRow } = header;
    const first = headerRow + headerRows;
    const end = Math.min(cells.endRow, (lastRow ?? Infinity) + 1, first + EVIDENCE_ROWS);
    const places = [...header.headings.keys()];
    const isItem: boolean[] = [];
    for (let row = first, items = 0; row < end; row++) {
      const filled = places.filter((column) => cells.at(row, column) !== null).length;
      // Behind a gap another list may begin; the rows before it say enough.
      if (filled === 0 && items >= ITEMS_ENOUGH && lastRow === undefined) break;
      // A text alone in its row is a caption between the rows and says nothing of its column.
      const is = places.length < 2 || filled > 1;
      if (is) items++;
      isItem.push(is);
    }
    columns = places.map((column) =>
      withoutStrayDates(
        isItem.map((is, i) => (is ? cells.at(first + i, column) : null)),
        (i) => cells.content.dates?.has(cellAddress(first + i, column)) ?? false,
      ),
    );
    columnsBelow.set(header, columns);
  }
  return columns;
};

/** The header read as this table; undefined when it is none. */
export const readAs = (
  table: TableName,
  header: HeaderCandidate,
  info: SheetInfo,
  isAsked: boolean,
): Omit<Reading, 'barred'> | undefined => {
  const matches = matchHeadings(table, [...header.headings.values()], {
    columns: cellsBelow(header),
    own: [...header.headings.keys()].map((column) => header.own?.get(column)),
  });
  const { key, telling, fields } = SHAPE[table];
  const named = [...contextWords(header)].some((word) => TABLE_WORDS.get(table)?.has(word));
  const keyConfidence = matches.columns.get(key)?.confidence ?? 0;
  const hasPoints = table === 'channels' && matches.columns.has('point');
  const confidenceOf = (field: string) => matches.columns.get(field)?.confidence ?? 0;
  const isNamed = keyConfidence > 0 || hasPoints;
  const isTold = telling.some((field) => matches.columns.has(field));
  const isSure = keyConfidence >= SURE_KEY || named || (hasPoints && matches.columns.size >= 2 * fields);
  const isFull =
    (DISTINCT[table] ?? telling).some((field) => confidenceOf(field) >= SURE_TELLING) &&
    matches.columns.size >= fields + 2 &&
    telling.filter((field) => confidenceOf(field) >= SURE_TELLING).length >= 2;
  // A list that happens to name cables and temperatures is no list of cables.
  const isAbout = table === 'channels' || named || matches.columns.size >= LEAST_SHARE * header.headings.size;
  const isTable = isAbout && isNamed && isTold && matches.columns.size >= fields && (isSure || isFull);
  const isDoubtful =
    !isTable &&
    table === 'channels' &&
    matches.columns.size + matches.unsure.size / 2 >= fields &&
    header.headings.size >= fields &&
    telling.some((field) => matches.columns.has(field) || matches.unsure.has(field));
  if (!isTable && !isDoubtful && !isAsked) return undefined;
  const sum = [...matches.columns.values()].reduce((total, { confidence }) => total + confidence, 0);
  const isOnHeader = header.listObject === undefined ? 0 : 0.2;
  return { table, header, matches, info, isDoubtful, strength: sum + keyConfidence + (named ? 0.75 : 0) + isOnHeader };
};
