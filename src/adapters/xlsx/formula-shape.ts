import type { ByteSink } from './byte-sink';
import { escapeXml, utf8 } from './xml-text';

/** A stored formula that many rows have, the same but for the number of the row, which is written into its gaps. */
export class FormulaShape {
  /** Pieces as they stand in XML, the row number to be written between them. */
  private readonly written: readonly Uint8Array[];
  /** Room that it takes in a row with a number of the usual length. */
  readonly bytes: number;

  constructor(private readonly pieces: readonly string[]) {
    this.written = pieces.map((piece) => utf8(escapeXml(piece)));
    this.bytes = this.written.reduce((sum, piece) => sum + piece.length + 6, 0);
  }

  /** The formula of a row (0-based). */
  text(row: number): string {
    return this.pieces.join(String(row + 1));
  }

  write(sink: ByteSink, row: number): void {
    this.written.forEach((piece, n) => {
      if (n > 0) sink.number(row + 1);
      sink.copy(piece, 0, piece.length);
    });
  }

  /** Whether these bytes are the formula of a row (0-based) as it is written here. */
  isWritten(bytes: Uint8Array, from: number, to: number, row: number): boolean {
    const digits = String(row + 1);
    let at = from;
    for (let n = 0; n < this.written.length; n++) {
      if (n > 0) for (let d = 0; d < digits.length; d++) if (bytes[at++] !== digits.charCodeAt(d)) return false;
      const piece = this.written[n]!;
      for (let k = 0; k < piece.length; k++) if (bytes[at++] !== piece[k]) return false;
    }
    return at === to;
  }
}
