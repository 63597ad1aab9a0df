import type { Curve } from '../core/curve';
import { LOCAL_MASS_KEYS } from './json-keys';
import { exactNumber } from './exact-number';
import { fieldsOf, type TableName } from './fields';
import type { Channel, LocalMass } from './model';

/** What an item of a plan holds in one field: a name or words, a number in SI, a curve, a list. */
export type FieldValue = string | number | Curve | readonly number[];
export type ListName = Exclude<TableName, 'channels' | 'limits'>;

/** Keys of the model where they are not the field's own. */
const MODEL_KEYS: Readonly<Record<ListName, Readonly<Record<string, string>>>> = {
  sensors: { sensor: 'name' },
  mounts: {
    mount: 'name',
    mountMass: 'mass',
    mountTemperatureMin: 'temperatureMin',
    mountTemperatureMax: 'temperatureMax',
  },
  cables: {
    cable: 'name',
    cableCapacitance: 'capacitance',
    cableMass: 'mass',
    cableTemperatureMin: 'temperatureMin',
    cableTemperatureMax: 'temperatureMax',
  },
  inputs: { input: 'name' },
};
export const modelKey = (table: ListName, key: string): string => MODEL_KEYS[table][key] ?? key;

type Held = Readonly<Record<string, FieldValue | undefined>> & { readonly unread?: readonly string[] };

export const itemField = (table: ListName, item: object, key: string): FieldValue | undefined =>
  (item as Held)[modelKey(table, key)];
export const isItemFieldUnread = (table: ListName, item: object, key: string): boolean =>
  (item as Held).unread?.includes(modelKey(table, key)) ?? false;

/** What a row names and what happens with it, which stands with the channel itself. */
const OWN_FIELDS = [
  'sensor',
  'sensorAxis',
  'serial',
  'calibrationDue',
  'mount',
  'cable',
  'input',
  'inputChannel',
  'remarks',
];
/** Fields of a channel that stand in its requirement and decide its checks. */
export const REQUIREMENT_FIELDS = fieldsOf('channels')
  .map(({ key }) => key)
  .slice(fieldsOf('channels').findIndex(({ key }) => key === 'purpose'))
  .filter((key) => !OWN_FIELDS.includes(key));

export const channelField = (channel: Channel, key: string): FieldValue | undefined => {
  const { requirement, named } = channel;
  switch (key) {
    case 'channel':
      return channel.id;
    case 'lineSpacing':
      return requirement.detector.kind === 'line' ? requirement.detector.lineSpacing : undefined;
    case 'localMass':
      return localMassField(requirement.localMass);
    case 'sensor':
    case 'mount':
    case 'cable':
    case 'input':
      return channel[key]?.name ?? named?.[key];
    default:
      return (REQUIREMENT_FIELDS.includes(key) ? (requirement as unknown as Held) : (channel as unknown as Held))[key];
  }
};
export const isChannelFieldUnread = ({ requirement }: Channel, key: string): boolean =>
  requirement.unread?.includes(key) ?? false;

/** One mass is a number; a model is told with its numbers, under the keys that carry their units. */
const localMassField = (branches: readonly LocalMass[]): FieldValue | undefined => {
  const [first] = branches;
  if (first === undefined) return undefined;
  if (branches.length === 1 && first.model === 'value') return first.mass;
  return branches.map(modelWords).join(' | ');
};

const modelWords = (branch: LocalMass): string => {
  const numbers = Object.entries(LOCAL_MASS_KEYS[branch.model] ?? {}).flatMap(([key, field]) => {
    const si = (branch as unknown as Held)[field.to];
    return field.kind === 'number' && typeof si === 'number' ? [`${key} ${exactNumber(si, field.unit)}`] : [];
  });
  return [branch.model, numbers.join(', ')].filter(Boolean).join(': ');
};
