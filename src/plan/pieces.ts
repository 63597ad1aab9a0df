import { joinName } from './join-name';
import type { Channel, Piece, SensorType } from './model';

/** The serial numbers of a cell: one, or several with commas, semicolons or line breaks between them. */
export const serialsIn = (text: string | undefined): readonly string[] =>
  (text ?? '').split(/[,;\n]/).flatMap((part) => part.trim() || []);

/** The pieces of all types by their serial numbers. Of two with one number the first of the list counts. */
export class PieceIndex {
  private readonly bySerial = new Map<string, Piece>();
  private readonly byBoth = new Map<string, Piece>();
  private readonly alone = new Map<string, Piece>();

  constructor(sensors: Iterable<SensorType>) {
    for (const { pieces = [] } of sensors)
      for (const piece of pieces) {
        const serial = joinName(piece.serial);
        for (const index of piece.sharesCell ? [this.bySerial] : [this.bySerial, this.alone]) {
          const known = index.get(serial);
          if (known === undefined || piece.line < known.line) index.set(serial, piece);
        }
        this.byBoth.set(bothOf(piece.type, piece.serial), piece);
      }
  }

  get isEmpty(): boolean {
    return this.byBoth.size === 0;
  }

  get all(): readonly Piece[] {
    return [...this.byBoth.values()];
  }

  /** The piece that a row means: of the type that it names, else of any. */
  find(serial: string, type?: string): Piece | undefined {
    const own = type === undefined ? undefined : this.byBoth.get(bothOf(type, serial));
    return own ?? this.bySerial.get(joinName(serial));
  }

  /** The piece whose number stands in a cell of its own, so that a formula finds it as well. */
  ofCell(text: string): Piece | undefined {
    return this.alone.get(joinName(text));
  }
}

const bothOf = (type: string, serial: string): string => `${joinName(type)}\n${joinName(serial)}`;

/** Of the very piece, if the row names one of its type; else of the type. */
export const ownPiece = ({ piece, sensor }: Channel): Piece | undefined =>
  piece && sensor && joinName(piece.type) === joinName(sensor.name) ? piece : undefined;

/**
 * By when the sensor of a row is due for calibration: the row's own date, its piece's, its type's. Of a type with single
 * pieces and none named, the latest counts, since that one can be taken; absent where a piece has no date.
 */
export const dueOf = (channel: Channel): number | undefined => {
  const { calibrationDue, sensor } = channel;
  const piece = ownPiece(channel);
  if (calibrationDue !== undefined) return calibrationDue;
  if (piece) return piece.calibrationDue;
  const dues = sensor?.pieces?.map((one) => one.calibrationDue);
  if (!dues?.length) return sensor?.calibrationDue;
  return dues.some((due) => due === undefined) ? undefined : (dues as number[]).reduce((a, b) => Math.max(a, b));
};

const NUMERAL = /(\d+)/;
/** "S9" before "S10": numbers in serial numbers count as numbers. */
export const bySerial = (a: string, b: string): number => {
  const [left, right] = [a.toLowerCase().split(NUMERAL), b.toLowerCase().split(NUMERAL)];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const [x, y] = [left[i]!, right[i]!];
    const apart = i % 2 === 1 ? Number(x) - Number(y) : 0;
    if (apart !== 0) return apart;
    if (x !== y) return x < y ? -1 : 1;
  }
  return left.length - right.length;
};
