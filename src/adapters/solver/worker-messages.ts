import type { Stock } from '../../plan/choosing/candidate';
import type { AssignOptions, AssignProgress } from '../../plan/assign/options';
import type { Limits } from '../../plan/limits';
import type { Channel } from '../../plan/model';

export interface WorkerQuestion {
  readonly channels: readonly Channel[];
  readonly stock: Stock;
  readonly limits: Limits;
  /** What can be copied of them. */
  readonly options: Omit<AssignOptions, 'signal' | 'onProgress'>;
}

export type WorkerAnswer =
  | { readonly kind: 'progress'; readonly progress: AssignProgress }
  | { readonly kind: 'assignment'; readonly assignment: unknown }
  | { readonly kind: 'broken'; readonly reason: string };

/** Everything of a question that its answer may point to, in an order that both sides know. */
const objectsOf = ({ channels, stock }: Pick<WorkerQuestion, 'channels' | 'stock'>): readonly object[] => {
  const { sensors, mounts, cables, inputs } = stock;
  const own = channels.flatMap(({ sensor, mount, cable, input }) => [sensor, mount, cable, input]);
  const all = [...sensors, ...mounts, ...cables, ...inputs, ...own, ...channels];
  return [...new Set(all.filter((object) => object !== undefined))];
};

const PLACE = 'placeInQuestion';

const mapped = (value: unknown, other: (object: object) => unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  const found = other(value);
  if (found !== undefined) return found;
  if (Array.isArray(value)) return value.map((entry) => mapped(entry, other));
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, mapped(entry, other)]));
};

/** A copied answer would hold copies of sensors and channels: places are sent in their stead. */
export const withPlaces = (answer: unknown, question: Pick<WorkerQuestion, 'channels' | 'stock'>): unknown => {
  const places = new Map(objectsOf(question).map((object, place) => [object, { [PLACE]: place }]));
  return mapped(answer, (object) => places.get(object));
};

export const withObjects = (answer: unknown, question: Pick<WorkerQuestion, 'channels' | 'stock'>): unknown => {
  const objects = objectsOf(question);
  return mapped(answer, (value) => (PLACE in value ? objects[value[PLACE] as number] : undefined));
};
