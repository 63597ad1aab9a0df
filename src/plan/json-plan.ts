import type { LocalMass, Channel, Plan, Requirement, SensorType, Mount, Cable, Input } from './model';
import {
  CABLE_KEYS,
  CHANNEL_KEYS,
  INPUT_KEYS,
  LOCAL_MASS_KEYS,
  MOUNT_KEYS,
  REQUIREMENT_KEYS,
  SENSOR_KEYS,
  type JsonFields,
  type RecordTable,
} from './json-keys';
import { readJsonLimits } from './json-limits';
import { isObject, JsonReader, type JsonObject } from './json-record';
import { DEFAULT_LIMITS } from './limits';
import type { Misread } from './misread';

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
  const sensors = records<SensorType>(reader, given, 'sensors', SENSOR_KEYS);
  const mounts = records<Mount>(reader, given, 'mounts', MOUNT_KEYS);
  const cables = records<Cable>(reader, given, 'cables', CABLE_KEYS);
  const inputs = records<Input>(reader, given, 'inputs', INPUT_KEYS);

  const listKey = given['channels'] === undefined ? 'cases' : 'channels';
  const list = given[listKey] ?? [];
  if (!Array.isArray(list)) reader.report(listKey, list, 'a list of channels in brackets');
  const channels = (Array.isArray(list) ? (list as unknown[]) : []).flatMap((entry, i) => {
    const path = `${listKey}[${i}]`;
    const object = reader.object(entry, path);
    return object ? [readChannel(reader, object, path, { sensors, mounts, cables, inputs })] : [];
  });
  return { plan: { channels, sensors, mounts, cables, inputs, limits }, misreads: reader.misreads };
};

const records = <T extends { readonly name: string }>(
  reader: JsonReader,
  given: JsonObject,
  table: RecordTable,
  fields: JsonFields,
): ReadonlyMap<string, T> => {
  const list = new Map<string, T>();
  const object = reader.object(given[table] ?? {}, table) ?? {};
  for (const [name, value] of Object.entries(object)) {
    const record = reader.object(value, `${table}.${name}`);
    if (record) list.set(name, { name, ...reader.record(record, `${table}.${name}`, table, fields) } as T);
  }
  return list;
};

type Lists = Pick<Plan, 'sensors' | 'mounts' | 'cables' | 'inputs'>;
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
