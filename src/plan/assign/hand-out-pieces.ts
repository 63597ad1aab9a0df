import type { Stock } from '../choosing/candidate';
import { joinName } from '../join-name';
import type { Channel } from '../model';
import type { Wish } from './pieces';
import type { StockPool } from './stock-pools';

/** The piece that one of a housing's channels names: of the first that keeps its own, else of one with this type already. */
export const wishOf = (
  { serials, sensor }: StockPool,
  { sensors }: Stock,
  own: readonly { readonly channel: Channel; readonly isKept: boolean }[],
): Wish | undefined => {
  if (!serials) return undefined;
  for (const isKept of [true, false])
    for (const one of own) {
      const { serial, sensor: type } = one.channel;
      if (one.isKept !== isKept || serial === undefined || type !== sensors[sensor]) continue;
      const wanted = joinName(serial);
      const piece = serials.findIndex((known) => known !== undefined && joinName(known) === wanted);
      if (piece >= 0) return { piece, isKept };
    }
  return undefined;
};
