import { nearestName } from '../core/text/nearest';
import type { ReadingOptions } from '../core/text/quantity';
import { fieldByKey, type TableName } from './fields';
import { joinName } from './join-name';
import { limitsOf } from './limits-table';
import type { Misread } from './misread';
import type { Cable, Channel, Input, LocalMass, Mount, Plan, Requirement, SensorType } from './model';
import { PieceIndex } from './pieces';
import { sensorList } from './sensor-list';
import type { TableReading } from './table-reading';
import { readRows, type RowReading } from './table-row';

export interface TablePlan {
  readonly plan: Plan;
  readonly misreads: readonly Misread[];
  readonly joins: readonly Join[];
  /** Row number of each channel of the plan, as the user sees it. */
  readonly at: readonly number[];
  /** The sheet of each channel, where the list is spread over several. */
  readonly sheets: readonly (string | undefined)[];
}

/** Builds a plan from recognised tables. A cell that cannot be read is reported and counts as not known. */
export const planFromTables = (tables: readonly TableReading[], options: ReadingOptions = {}): TablePlan => {
  const misreads: Misread[] = [];
  const rowsOf = (name: TableName) =>
    tables.filter((table) => table.name === name).flatMap((table) => readRows(table, misreads, options));
  const limits = limitsOf(rowsOf('limits'), misreads);
  const headingOf: HeadingOf = (name, key, sheet) =>
    tables.find((table) => table.name === name && table.sheet === sheet)?.columns.get(key)?.heading ??
    fieldByKey(name, key).title;
  const report: Report = (table, row, key, read, expected) => {
    const { at, sheet } = row;
    const place = { kind: 'cell', table, sheet, row: at, heading: headingOf(table, key, sheet), key } as const;
    misreads.push({ place, read, expected });
  };
  const sensors = sensorList(rowsOf('sensors'), (...what) => report('sensors', ...what));
  const mounts = listOf('mounts', 'mount', rowsOf('mounts'), report, mountOf);
  const cables = listOf('cables', 'cable', rowsOf('cables'), report, cableOf);
  const inputs = listOf('inputs', 'input', rowsOf('inputs'), report, inputOf);
  const rows = rowsOf('channels');
  const pieces = new PieceIndex(sensors.values());
  const lists: Lists = { sensor: sensors, mount: mounts, cable: cables, input: inputs, pieces };
  const joins: Join[] = [];
  const channels = rows.map((row) => channelOf(row, lists, report, joins));
  const plan = {
    channels,
    sensors: byTypedName(sensors),
    mounts: byTypedName(mounts),
    cables: byTypedName(cables),
    inputs: byTypedName(inputs),
    limits,
  };
  return { plan, misreads, joins, at: rows.map(({ at }) => at), sheets: rows.map(({ sheet }) => sheet) };
};

type HeadingOf = (table: TableName, key: string, sheet: string | undefined) => string;
type Report = (table: TableName, row: RowReading, key: string, read: string, expected: string) => void;

const byTypedName = <T extends { readonly name: string }>(list: ReadonlyMap<string, T>): ReadonlyMap<string, T> =>
  new Map([...list.values()].map((item) => [item.name, item]));

const listOf = <T extends { readonly name: string }>(
  table: TableName,
  key: string,
  rows: readonly RowReading[],
  report: Report,
  build: (name: string, row: RowReading) => T,
): ReadonlyMap<string, T> => {
  const list = new Map<string, T>();
  for (const row of rows) {
    const name = row.values[key] as string | undefined;
    if (name === undefined) report(table, row, key, '', 'a name');
    else if (list.has(joinName(name)))
      report(table, row, key, name, 'a name that no row above has; the first row is used');
    else list.set(joinName(name), build(name, row));
  }
  return list;
};

/** The row's values under the model's keys. */
const renamed = ({ values, unread }: RowReading, keys: Readonly<Record<string, string>>) => {
  const record: Record<string, unknown> = {};
  for (const [key, held] of Object.entries(values)) record[keys[key] ?? key] = held;
  if (unread.length > 0) record['unread'] = unread.map((key) => keys[key] ?? key);
  return record;
};

const mountOf = (name: string, row: RowReading): Mount => ({
  ...renamed(row, {
    mountMass: 'mass',
    mountTemperatureMin: 'temperatureMin',
    mountTemperatureMax: 'temperatureMax',
    mount: 'name',
  }),
  name,
});
const cableOf = (name: string, row: RowReading): Cable => ({
  ...renamed(row, {
    cableCapacitance: 'capacitance',
    cableMass: 'mass',
    cableTemperatureMin: 'temperatureMin',
    cableTemperatureMax: 'temperatureMax',
    cable: 'name',
  }),
  name,
});
const inputOf = (name: string, row: RowReading): Input => ({ ...renamed(row, { input: 'name' }), name });

interface Lists {
  readonly sensor: ReadonlyMap<string, SensorType>;
  readonly mount: ReadonlyMap<string, Mount>;
  readonly cable: ReadonlyMap<string, Cable>;
  readonly input: ReadonlyMap<string, Input>;
  readonly pieces: PieceIndex;
}
const PARTS = ['sensor', 'mount', 'cable', 'input'] as const;
const TABLE_OF = { sensor: 'sensors', mount: 'mounts', cable: 'cables', input: 'inputs' } as const;

/** A row whose type is that of the piece that it names, in place of the type or beside a blank one. */
export interface Join {
  readonly row: RowReading;
  readonly by: 'sensor' | 'serial';
  readonly serial: string;
  readonly type: string;
}

/** The type that a row names, itself or by one of its pieces, and the piece. */
const pieceOf = ({ values, ...row }: RowReading, { sensor, pieces }: Lists, report: Report) => {
  const typed = values['sensor'] as string | undefined;
  const serial = values['serial'] as string | undefined;
  const key = typed ?? serial;
  const isType = typed !== undefined && sensor.has(joinName(typed));
  const joined = isType || key === undefined ? undefined : pieces.ofCell(key);
  const type = joined?.type ?? typed;
  const number = serial ?? (joined && typed);
  const piece = number === undefined ? undefined : pieces.find(number, type);
  if (serial !== undefined && !piece && (typed === undefined ? !pieces.isEmpty : sensor.get(joinName(typed))?.pieces))
    report('channels', { values, ...row }, 'serial', serial, expectedSerial(serial, pieces, type));
  const by = joined && (typed === undefined ? 'serial' : 'sensor');
  return { type, serial: number, piece, by } as const;
};

const expectedSerial = (serial: string, { all }: PieceIndex, type: string | undefined): string => {
  const own = all.filter((piece) => type === undefined || joinName(piece.type) === joinName(type));
  const near = nearestName(
    serial,
    own.map((piece) => piece.serial),
  );
  return `a serial number from sensors${near === undefined ? '' : ` (did you mean "${near}"?)`}`;
};

/** The nearest name, where a typing error alone is between them. */
const expectedName = (
  part: (typeof PARTS)[number],
  typed: string,
  list: ReadonlyMap<string, { readonly name: string }>,
): string => {
  const near = nearestName(
    typed,
    [...list.values()].map(({ name }) => name),
  );
  return `a name from ${TABLE_OF[part]}${near === undefined ? '' : ` (did you mean "${near}"?)`}`;
};

const channelOf = (row: RowReading, lists: Lists, report: Report, joins: Join[]): Channel => {
  const named: Partial<Record<(typeof PARTS)[number], string>> = {};
  const parts: Record<string, unknown> = {};
  const { type, serial, piece, by } = pieceOf(row, lists, report);
  if (type !== undefined && by !== undefined) joins.push({ row, by, serial: serial!, type });
  for (const part of PARTS) {
    const name = part === 'sensor' ? type : (row.values[part] as string | undefined);
    if (name === undefined) continue;
    named[part] = name;
    parts[part] = lists[part].get(joinName(name));
    if (parts[part] === undefined) report('channels', row, part, name, expectedName(part, name, lists[part]));
  }
  const text = (key: string) => row.values[key] as string | undefined;
  const date = (key: string) => row.values[key] as number | undefined;
  return {
    id: text('channel') ?? `${row.sheet === undefined ? '' : `${row.sheet} `}row ${row.at}`,
    group: text('group') ?? row.part,
    run: text('run'),
    runStart: date('runStart'),
    runEnd: date('runEnd'),
    point: text('point'),
    direction: text('direction'),
    localAxes: text('localAxes'),
    sensorAxis: text('sensorAxis'),
    serial,
    ...(piece && { piece }),
    calibrationDue: date('calibrationDue'),
    inputChannel: text('inputChannel'),
    location: text('location'),
    panel: text('panel'),
    role: row.values['role'] as Channel['role'],
    remarks: text('remarks'),
    requirement: requirementOf(row),
    ...parts,
    named,
  };
};

const requirementOf = ({ values, unread }: RowReading): Requirement => {
  const number = (key: string) => values[key] as number | undefined;
  const localMass = number('localMass');
  const lineSpacing = number('lineSpacing');
  const isLine = lineSpacing !== undefined || unread.includes('lineSpacing');
  const branches: readonly LocalMass[] = localMass === undefined ? [] : [{ model: 'value', mass: localMass }];
  return {
    purpose: values['purpose'] as Requirement['purpose'],
    levelLow: number('levelLow'),
    levelHigh: number('levelHigh'),
    bandLow: number('bandLow'),
    bandHigh: number('bandHigh'),
    detector: isLine ? { kind: 'line', lineSpacing } : { kind: 'band' },
    temperatureLow: number('temperatureLow'),
    temperatureHigh: number('temperatureHigh'),
    thermalTolerance: number('thermalTolerance'),
    spanTolerance: number('spanTolerance'),
    signalToNoiseLimit: number('signalToNoiseLimit'),
    headroomLimit: number('headroomLimit'),
    massRatioLimit: number('massRatioLimit'),
    referenceFrequency: number('referenceFrequency'),
    localMass: branches,
    ...(unread.length > 0 && { unread }),
  };
};
