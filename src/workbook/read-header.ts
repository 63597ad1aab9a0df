import type { Cell } from '../functions/define';
import { TABLES, type TableName } from '../plan/fields';
import { foldWords } from '../plan/heading-text';
import { matchHeadings, type HeadingMatches } from '../plan/headings';
import { LANGUAGES } from '../plan/words/languages';
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
const EVIDENCE_ROWS = 100;

/** A header tried as one of the tables. */
export interface Reading {
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
    const places = [...header.headings.keys()];
    // A text alone in its row is a caption between the rows and says nothing of its column.
    const isItem = Array.from(
      { length: Math.max(0, end - first) },
      (_, i) => places.length < 2 || places.filter((column) => cells.at(first + i, column) !== null).length > 1,
    );
    columns = places.map((column) => isItem.map((is, i) => (is ? cells.at(first + i, column) : null)));
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
