import type { Curve } from '../core/curve';
import { exactNumber } from './exact-number';
import { dateText } from './json-date';
import {
  CABLE_KEYS,
  CHANNEL_KEYS,
  INPUT_KEYS,
  LOCAL_MASS_KEYS,
  MOUNT_KEYS,
  PIECE_KEYS,
  REQUIREMENT_KEYS,
  SENSOR_KEYS,
  type JsonField,
  type JsonFields,
} from './json-keys';
import { jsonLimits } from './json-limits-export';
import type { JsonObject } from './json-record';
import type { Channel, LocalMass, Plan, Requirement } from './model';

/** Stands for a value that was given and could not be read, so that it does not come back as a blank. */
export const NOT_READ = 'could not be read';

/** A plan under keys that carry their units, as `readJsonPlan` reads it: to the same checks. */
export const planJson = (plan: Plan, title?: string): JsonObject => ({
  schema_version: 1,
  ...(title === undefined ? {} : { title }),
  common: jsonLimits(plan.limits),
  sensors: sensorsJson(plan.sensors),
  mounts: records(plan.mounts, MOUNT_KEYS),
  cables: records(plan.cables, CABLE_KEYS),
  inputs: records(plan.inputs, INPUT_KEYS),
  cases: plan.channels.map(channelJson),
});

const sensorsJson = (sensors: Plan['sensors']): JsonObject => {
  const types = records(sensors, SENSOR_KEYS);
  const piece = (held: object) => recordJson(held as JsonObject, PIECE_KEYS);
  return Object.fromEntries(
    [...sensors].map(([name, { pieces }]) => [name, { ...(types[name] as JsonObject), ...(pieces && { pieces: pieces.map(piece) }) }]), // prettier-ignore
  );
};

const records = (list: ReadonlyMap<string, object>, fields: JsonFields): JsonObject =>
  Object.fromEntries([...list].map(([name, record]) => [name, recordJson(record as JsonObject, fields)]));

const recordJson = (record: JsonObject, fields: JsonFields): JsonObject => {
  const unread = (record['unread'] as readonly string[] | undefined) ?? [];
  const entries = Object.entries(fields).flatMap(([key, field]) => {
    const value = record[field.to];
    if (value !== undefined) return [[key, valueJson(value, field)] as const];
    return unread.includes(field.to) ? [[key, unreadable(field)] as const] : [];
  });
  return Object.fromEntries(entries);
};

/** What the reader refuses for this kind of value. */
const unreadable = (field: JsonField): unknown => (field.kind === 'text' ? [NOT_READ] : NOT_READ);

const valueJson = (value: unknown, field: JsonField): unknown => {
  switch (field.kind) {
    case 'text':
    case 'choice':
      return value;
    case 'date':
      return dateText(value as number);
    case 'number':
      return exactNumber(value as number, field.unit);
    case 'numbers':
      return (value as readonly number[]).map((number) => exactNumber(number, field.unit));
    case 'pairs': {
      const { x, y } = value as Curve;
      return x.map((at, i) => [exactNumber(at, field.x), exactNumber(y[i]!, field.unit)]);
    }
  }
};

const PARTS = ['sensor', 'mount', 'cable', 'input'] as const;

const channelJson = (channel: Channel): JsonObject => {
  const parts = PARTS.flatMap((part) => {
    const name = channel[part]?.name ?? channel.named?.[part];
    return name === undefined ? [] : [[part, name] as const];
  });
  return {
    id: channel.id,
    ...recordJson({ ...channel, unread: channel.requirement.unread } as unknown as JsonObject, CHANNEL_KEYS),
    ...Object.fromEntries(parts),
    requirement: requirementJson(channel.requirement),
  };
};

const requirementJson = (requirement: Requirement): JsonObject => {
  const { detector, localMass, unread = [] } = requirement;
  const spacing = detector.kind === 'line' ? detector.lineSpacing : undefined;
  return {
    ...recordJson(requirement as unknown as JsonObject, REQUIREMENT_KEYS),
    detector:
      detector.kind === 'band'
        ? { kind: 'band' }
        : { kind: 'line', ...(spacing === undefined ? {} : { line_spacing_Hz: exactNumber(spacing, 'Hz') }) },
    ...(localMass.length > 0
      ? { local_mass: localMass.map(branchJson) }
      : unread.includes('localMass')
        ? { local_mass: [{ model: 'value', mass_gram: NOT_READ }] }
        : {}),
  };
};

const branchJson = (branch: LocalMass): JsonObject => ({
  model: branch.model,
  ...recordJson(branch as unknown as JsonObject, LOCAL_MASS_KEYS[branch.model] ?? {}),
});
