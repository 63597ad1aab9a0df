import type { LocalMass, Channel, Piece, Plan, Requirement, SensorType, Mount, Cable, Input } from './model';
import {
  CABLE_KEYS,
  CHANNEL_KEYS,
  INPUT_KEYS,
  LOCAL_MASS_KEYS,
  MOUNT_KEYS,
  PIECE_KEYS,
  REQUIREMENT_KEYS,
  SENSOR_KEYS,
  type JsonFields,
  type RecordTable,
} from './json-keys';
import { readJsonLimits } from './json-limits';
import { isObject, JsonReader, type JsonObject } from './json-record';
import { DEFAULT_LIMITS } from './limits';
import type { Misread } from './misread';
import { PieceIndex } from './pieces';

export interface JsonPlan {
  readonly plan: Plan;
  readonly misreads: readonly Misread[];
}

const TOP_KEYS = ['common', 'sensors', 'mounts', 'cables', 'inputs', 'channels', 'cases', 'panel_sums'].concat(
  'title',
  'scenario',
  'rules',
  'provenance',
  'schema_version',
);

/** Reads a plan whose keys carry their units; `cases` and `channels` are the same list. Never throws. */
export const readJsonPlan = (json: unknown): JsonPlan => {
  const reader = new JsonReader();
  const given = reader.object(json, 'plan') ?? {};
  if (given['schema_version'] !== undefined && given['schema_version'] !== 1)
    reader.report('schema_version', given['schema_version'], '1');
  for (const key of Object.keys(given))
    if (!TOP_KEYS.includes(key)) reader.report(key, given[key], `one of ${TOP_KEYS.join(', ')}`);
  const common = reader.object(given['common'] ?? {}, 'common') ?? {};
  const limits = isObject(common) ? readJsonLimits(reader, common) : DEFAULT_LIMITS;
  const sensors = withPieces(
    reader,
    records<SensorType>(reader, given, 'sensors', SENSOR_KEYS, ['pieces']),
    given['sensors'],
  );
  const mounts = records<Mount>(reader, given, 'mounts', MOUNT_KEYS);
  const cables = records<Cable>(reader, given, 'cables', CABLE_KEYS);
  const inputs = records<Input>(reader, given, 'inputs', INPUT_KEYS);

  const pieces = new PieceIndex(sensors.values());

  const listKey = given['channels'] === undefined ? 'cases' : 'channels';
  const list = given[listKey] ?? [];
  if (!Array.isArray(list)) reader.report(listKey, list, 'a list of channels in brackets');
  const channels = (Array.isArray(list) ? (list as unknown[]) : []).flatMap((entry, i) => {
    const path = `${listKey}[${i}]`;
    const object = reader.object(entry, path);
    return object ? [readChannel(reader, object, path, { sensors, mounts, cables, inputs, pieces })] : [];
  });
  return { plan: { channels, sensors, mounts, cables, inputs, limits }, misreads: reader.misreads };
};

const records = <T extends { readonly name: string }>(
  reader: JsonReader,
  given: JsonObject,
  table: RecordTable,
  fields: JsonFields,
  others: readonly string[] = [],
): ReadonlyMap<string, T> => {
  const list = new Map<string, T>();
  const object = reader.object(given[table] ?? {}, table) ?? {};
  for (const [name, value] of Object.entries(object)) {
    const record = reader.object(value, `${table}.${name}`);
    if (record) list.set(name, { name, ...reader.record(record, `${table}.${name}`, table, fields, others) } as T);
  }
  return list;
};

/** The pieces of each type, in the order of the file. */
const withPieces = (
  reader: JsonReader,
  sensors: ReadonlyMap<string, SensorType>,
  given: unknown,
): ReadonlyMap<string, SensorType> => {
  let line = 0;
  return new Map(
    [...sensors].map(([name, sensor]) => {
      const record = isObject(given) ? given[name] : undefined;
      const list = isObject(record) ? record['pieces'] : undefined;
      if (list === undefined) return [name, sensor];
      const path = `sensors.${name}.pieces`;
      if (!Array.isArray(list)) reader.report(path, list, 'a list of pieces in brackets');
      const pieces = (Array.isArray(list) ? (list as unknown[]) : []).flatMap((entry, i): Piece[] => {
        const object = reader.object(entry, `${path}[${i}]`);
        const held = object && reader.record(object, `${path}[${i}]`, 'sensors', PIECE_KEYS);
        line += 1;
        if (typeof held?.['serial'] === 'string') return [{ ...held, serial: held['serial'], type: name, line }];
        if (held && object['serial'] === undefined) reader.report(`${path}[${i}].serial`, undefined, 'a text');
        return [];
      });
      return [name, { ...sensor, quantity: sensor.quantity ?? pieces.length, pieces }];
    }),
  );
};

type Lists = Pick<Plan, 'sensors' | 'mounts' | 'cables' | 'inputs'> & { readonly pieces: PieceIndex };
const REFERENCES = { sensor: 'sensors', mount: 'mounts', cable: 'cables', input: 'inputs' } as const;
const BESIDES = ['id', 'requirement', 'expected', ...Object.keys(REFERENCES)];

const readChannel = (reader: JsonReader, given: JsonObject, path: string, lists: Lists): Channel => {
  const named: Record<string, string> = {};
  const parts: Record<string, unknown> = {};
  for (const [key, table] of Object.entries(REFERENCES)) {
    const name = reader.text(given[key], `${path}.${key}`);
    if (name === undefined) continue;
    named[key] = name;
    parts[key] = lists[table].get(name) ?? reader.report(`${path}.${key}`, name, `a name from ${table}`);
  }
  const requirement = given['requirement'] ?? {};
  const id = given['id'];
  const serial = typeof given['serial'] === 'string' ? given['serial'] : undefined;
  // A piece says its type where the channel does not.
  const joined = serial !== undefined && named['sensor'] === undefined ? lists.pieces.ofCell(serial) : undefined;
  if (joined) [named['sensor'], parts['sensor']] = [joined.type, lists.sensors.get(joined.type)];
  const piece = serial === undefined ? undefined : lists.pieces.find(serial, named['sensor']);
  return {
    id:
      typeof id === 'string' || typeof id === 'number' ? String(id) : (reader.report(`${path}.id`, id, 'a name') ?? ''),
    ...reader.record(given, path, 'channels', CHANNEL_KEYS, BESIDES),
    requirement: readRequirement(
      reader,
      reader.object(requirement, `${path}.requirement`) ?? {},
      `${path}.requirement`,
    ),
    ...parts,
    ...(piece && { piece }),
    named,
  };
};

const readRequirement = (reader: JsonReader, given: JsonObject, path: string): Requirement => {
  const values = reader.record(given, path, 'channels', REQUIREMENT_KEYS, ['detector', 'local_mass']);
  const branches = given['local_mass'] ?? [];
  if (!Array.isArray(branches)) reader.report(`${path}.local_mass`, branches, 'a list of models in brackets');
  return {
    ...values,
    detector: readDetector(reader, given['detector'], `${path}.detector`),
    localMass: (Array.isArray(branches) ? (branches as unknown[]) : []).flatMap((branch, i) =>
      readLocalMass(reader, branch, `${path}.local_mass[${i}]`),
    ),
  };
};

const readDetector = (reader: JsonReader, given: unknown, path: string): Requirement['detector'] => {
  if (given === undefined || given === null) return { kind: 'band' };
  const kind = isObject(given) ? given['kind'] : undefined;
  if (!isObject(given) || (kind !== 'band' && kind !== 'line')) {
    reader.report(path, given, '{"kind": "band"} or {"kind": "line", "line_spacing_Hz": …}');
    return { kind: 'line' };
  }
  const spacing = given['line_spacing_Hz'] ?? null;
  if (kind === 'band') return { kind };
  return {
    kind,
    lineSpacing:
      spacing === null ? undefined : reader.number(spacing, `${path}.line_spacing_Hz`, 'Hz', 'channels', 'lineSpacing'),
  };
};

/** A branch that cannot be read stays in the list without numbers: it might have been the smallest. */
const readLocalMass = (reader: JsonReader, given: unknown, path: string): LocalMass[] => {
  const object = reader.object(given, path);
  if (!object) return [{ model: 'value' }];
  const model = object['model'];
  const fields =
    typeof model === 'string' && Object.hasOwn(LOCAL_MASS_KEYS, model) ? LOCAL_MASS_KEYS[model] : undefined;
  if (!fields) {
    reader.report(`${path}.model`, model, `one of ${Object.keys(LOCAL_MASS_KEYS).join(', ')}`);
    return [{ model: 'value' }];
  }
  return [{ model, ...reader.record(object, path, 'channels', fields, ['model']) } as LocalMass];
};
