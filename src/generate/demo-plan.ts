import { writeXlsx, type Cell, type CellStyle, type WriteSheet } from 'hucre/xlsx';
import { UNITS } from '../core/units';
import { fieldsOf, type Field, type TableName } from '../plan/fields';
import { readDemoColumns, readDemoTable, type SourceRow } from './demo-csv';
import { withTrustedMaker } from '../adapters/xlsx/trusted-maker';
import { steadyZip } from './steady-zip';

const INK = '1F2A2E';
const ACCENT = '0F4C4A';
const HEADER_GROUND = 'E6EFEE';
const LINE = 'C9D3D1';
const FONT = 'Calibri';
/** The package writes a date of its own choice; a fixed one keeps the file the same on every run. */
const REVISED = new Date(Date.UTC(2026, 8, 18, 8));
const DAY_ZERO = Date.UTC(1899, 11, 30);
const DAY = 86_400_000;

const header: CellStyle = {
  font: { name: FONT, size: 10, bold: true, color: { rgb: ACCENT } },
  fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb: HEADER_GROUND } },
  alignment: { wrapText: true, vertical: 'center', horizontal: 'left', indent: 1 },
  border: { bottom: { style: 'thin', color: { rgb: ACCENT } } },
};
const numberHeader: CellStyle = {
  ...header,
  alignment: { wrapText: true, vertical: 'center', horizontal: 'right' },
};
const body = (numFmt: string | undefined, horizontal: 'left' | 'right'): CellStyle => ({
  font: { name: FONT, size: 10, color: { rgb: INK } },
  alignment: { horizontal, ...(horizontal === 'left' ? { indent: 1 } : {}) },
  border: { bottom: { style: 'hair', color: { rgb: LINE } } },
  ...(numFmt === undefined ? {} : { numFmt }),
});
const title: CellStyle = { font: { name: FONT, size: 15, bold: true, color: { rgb: ACCENT } } };
const subtitle: CellStyle = { font: { name: FONT, size: 10, color: { rgb: INK } } };

interface Column {
  readonly key: string;
  readonly heading: string;
  readonly width: number;
  readonly numFmt?: string;
  readonly isNumber: boolean;
  readonly isDate: boolean;
}

const WIDTHS: Readonly<Record<string, number>> = {
  channel: 10,
  group: 21,
  point: 7,
  direction: 9,
  location: 34,
  panel: 7,
  role: 10,
  purpose: 10,
  sensor: 20,
  mount: 16,
  cable: 15,
  input: 18,
  remarks: 36,
  description: 34,
  technology: 30,
  noiseDensity: 42,
  deviation: 46,
  calibrationDue: 12,
  origin: 24,
  limit: 22,
};
const FORMATS: Readonly<Record<string, string>> = {
  levelLow: '0.0####',
  localMass: '#,##0.0##',
  stiffness: '0.0E+00',
  resonance: '#,##0',
  qualityFactor: '0.0',
  sampleRate: '#,##0',
  calibrationDue: 'yyyy-mm-dd',
  mass: '0.0',
};

const headingOf = ({ title: words, kind, unit, xUnit, statistic }: Field): string => {
  const label = unit === undefined ? '' : UNITS[unit].label;
  if (label === '') return words;
  if (kind === 'curve' && xUnit !== undefined) return `${words} [${UNITS[xUnit].label}: ${label}]`;
  return `${words} [${label}${statistic === 'rms' ? ' rms' : statistic === 'peak' ? ' pk' : ''}]`;
};

/** The columns that the source names; those of the lists only where some item has a value. */
const columnsOf = (table: TableName, rows: readonly SourceRow[], named: readonly string[]): Column[] => {
  const given = new Set(rows.flatMap((row) => Object.keys(row)));
  const columns = fieldsOf(table)
    .filter(({ key }) => given.has(key) || (table === 'channels' && named.includes(key)))
    .map((field): Column => ({
      key: field.key,
      heading: headingOf(field),
      width: WIDTHS[field.key] ?? 12,
      numFmt: FORMATS[field.key],
      isNumber: field.kind === 'quantity' || field.kind === 'list' || field.key === 'point',
      isDate: field.kind === 'date',
    }));
  if (table === 'sensors' || !given.has('description')) return columns;
  const words = { key: 'description', heading: 'Description', width: 34, isNumber: false, isDate: false };
  return [...columns.slice(0, 1), words, ...columns.slice(1)];
};

/** Plain numbers become numbers; what an engineer typed with a unit or a comma stays the text that it is. */
const valueOf = (text: string | undefined, { isNumber, isDate }: Column): number | string | null => {
  if (text === undefined) return null;
  if (isDate) return (Date.parse(`${text}T00:00:00Z`) - DAY_ZERO) / DAY;
  return isNumber && /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
};

const letters = (column: number): string =>
  column < 26 ? String.fromCharCode(65 + column) : letters(Math.floor(column / 26) - 1) + letters(column % 26);

interface Layout {
  readonly name: string;
  readonly table: TableName;
  readonly above: readonly string[];
  /** Name of the sheet's table object; a plain range without. */
  readonly listObject?: string;
  readonly frozenColumns: number;
}

const sheetOf = (
  source: readonly SourceRow[],
  named: readonly string[],
  { name, table, above, listObject, frozenColumns }: Layout,
): WriteSheet => {
  const columns = columnsOf(table, source, named);
  const headerRow = above.length === 0 ? 0 : above.length + 1;
  const cells = new Map<string, Partial<Cell>>();
  const put = (row: number, column: number, value: number | string | null, style: CellStyle): void => {
    cells.set(`${row},${column}`, { value, style });
  };
  above.forEach((line, row) => put(row, 0, line, row === 0 ? title : subtitle));
  columns.forEach(({ heading, isNumber, isDate }, column) =>
    put(headerRow, column, heading, isNumber || isDate ? numberHeader : header),
  );
  source.forEach((line, i) =>
    columns.forEach((column, c) => {
      const value = valueOf(line[column.key], column);
      const side = column.isNumber || column.isDate ? 'right' : 'left';
      put(headerRow + 1 + i, c, value, body(column.numFmt, side));
    }),
  );
  const lastRow = headerRow + source.length;
  const lastColumn = letters(columns.length - 1);
  const range = `A${headerRow + 1}:${lastColumn}${lastRow + 1}`;
  return {
    name,
    rows: Array.from({ length: lastRow + 1 }, () => []),
    cells,
    columns: columns.map(({ width }) => ({ width })),
    rowDefs: new Map([[headerRow, { height: 42 }]]),
    freezePane: { rows: headerRow + 1, columns: frozenColumns },
    ...(listObject
      ? {
          tables: [
            {
              name: listObject,
              range,
              columns: columns.map(({ heading }) => ({ name: heading })),
              style: 'TableStyleLight1',
              showRowStripes: false,
            },
          ],
        }
      : {}),
    pageSetup: {
      paperSize: 'a3',
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: `$${headerRow + 1}:$${headerRow + 1}`,
      margins: { top: 0.6, bottom: 0.6, left: 0.4, right: 0.4, header: 0.3, footer: 0.3 },
    },
    headerFooter: { oddFooter: '&LRevision C, for review&C&A&RPage &P of &N' },
  };
};

const notesSheet = (root: string): WriteSheet => {
  const cells = new Map<string, Partial<Cell>>();
  const source = readDemoTable(root, 'plan-notes');
  source.forEach(({ topic = '', text = '' }, row) => {
    if (topic === '') return;
    const isHeading = text === '';
    cells.set(`${row},0`, {
      value: topic,
      style: row === 0 ? title : isHeading ? header : { ...subtitle, alignment: { vertical: 'top' } },
    });
    if (!isHeading)
      cells.set(`${row},1`, { value: text, style: { ...subtitle, alignment: { wrapText: true, vertical: 'top' } } });
  });
  return {
    name: 'Plan notes',
    rows: source.map(() => []),
    cells,
    columns: [{ width: 18 }, { width: 110 }],
    rowDefs: new Map(
      source.map(({ text = '' }, row) => [row, { height: row === 0 ? 24 : text.length > 110 ? 28 : 15 }]),
    ),
    pageSetup: { paperSize: 'a4', orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    headerFooter: { oddFooter: '&LRevision C, for review&C&A&RPage &P of &N' },
  };
};

const LAYOUTS: readonly Layout[] = [
  {
    name: 'Channels',
    table: 'channels',
    above: [
      'Solar survey glider, prototype 2: vibration channel plan',
      'Ground vibration campaign: wing, spar, motor bracket, tail boom, drop rig, shaker runs, cowling, instrument tray',
      'Revision C of 2026-09-18, for review. All sensors, structures and levels are invented.',
    ],
    frozenColumns: 1,
  },
  { name: 'Sensors', table: 'sensors', above: [], listObject: 'SensorTypes', frozenColumns: 1 },
  { name: 'Mounts', table: 'mounts', above: [], listObject: 'MountTypes', frozenColumns: 1 },
  { name: 'Cables', table: 'cables', above: [], listObject: 'CableRuns', frozenColumns: 1 },
  { name: 'Inputs', table: 'inputs', above: [], listObject: 'InputSettings', frozenColumns: 1 },
  { name: 'Limits', table: 'limits', above: [], frozenColumns: 1 },
];

/** The source rows, the channels repeated under other names up to a number of rows. */
const sourceOf = (root: string, table: Layout['table'], channels: number | undefined): SourceRow[] => {
  const source = readDemoTable(root, table);
  if (table !== 'channels' || channels === undefined) return source;
  return Array.from({ length: channels }, (_, i) => {
    const row = source[i % source.length] as SourceRow;
    const round = Math.floor(i / source.length);
    return round === 0 ? row : { ...row, channel: `${row['channel']}-${round}`, group: `${row['group']} ${round}` };
  });
};

/** The demo plan as an engineer would keep it, or a longer one. The same bytes on every run. */
export const demoPlan = async (root: string, channels?: number): Promise<Uint8Array> =>
  steadyZip(
    withTrustedMaker(
      await writeXlsx({
        sheets: [
          ...LAYOUTS.map((layout) =>
            sheetOf(sourceOf(root, layout.table, channels), readDemoColumns(root, layout.table), layout),
          ),
          notesSheet(root),
        ],
        properties: {
          title: 'Vibration channel plan of a solar survey glider',
          creator: 'Channelwright demo',
          created: REVISED,
          modified: REVISED,
        },
        defaultFont: { name: FONT, size: 10 },
        activeSheet: 0,
      }),
    ),
    REVISED,
  );
