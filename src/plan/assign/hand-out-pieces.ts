import { joinName } from '../join-name';
import type { Channel, SensorType } from '../model';
import type { Wish } from './pieces';
import type { StockPool } from './stock-pools';

/** Which piece of each pool a serial number is, by its place there. */
export type PoolPieces = readonly (ReadonlyMap<string, number> | undefined)[];

export const poolPieces = (pools: readonly StockPool[]): PoolPieces =>
  pools.map(({ serials }) => {
    if (!serials) return undefined;
    const places = new Map<string, number>();
    serials.forEach((serial, i) => {
      if (serial !== undefined && !places.has(joinName(serial))) places.set(joinName(serial), i);
    });
    return places;
  });

/** The piece that one of a housing's channels names: of the first that keeps its own, else of one with this type already. */
export const wishOf = (
  places: ReadonlyMap<string, number> | undefined,
  sensor: SensorType,
  own: readonly { readonly channel: Channel; readonly isKept: boolean }[],
): Wish | undefined => {
  if (!places) return undefined;
  for (const isKept of [true, false])
    for (const one of own) {
      const { serial, sensor: type } = one.channel;
      if (one.isKept !== isKept || serial === undefined || type !== sensor) continue;
      const piece = places.get(joinName(serial));
      if (piece !== undefined) return { piece, isKept };
    }
  return undefined;
};
