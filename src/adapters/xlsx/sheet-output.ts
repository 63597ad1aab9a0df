import type { Packed, Packer } from './codec';
import { SheetCheck } from './sheet-check';
import type { SheetLayout } from './sheet-sections';
import { utf8 } from './xml-text';

/**
 * Where the new bytes of a worksheet go, in pieces: what stands before its rows, the rows, what stands behind them. Each
 * piece is checked, packed and proved as it comes, so that the part never stands in memory whole.
 */
export class SheetOutput {
  readonly check: SheetCheck;
  private before: Uint8Array | undefined;
  private head: Uint8Array | undefined;
  /** Bytes that were the same as before so far; they are not packed until the first difference. */
  private same = 0;
  private isSame = true;
  private packed: Packed | undefined;
  private room = new Uint8Array(0);

  constructor(
    private readonly layout: SheetLayout,
    /** The start tags of the root and of the cell data, and their end tags: rows stand between them when they are checked. */
    private readonly frame: { readonly open: Uint8Array; readonly close: Uint8Array },
    /** The part had `<sheetData/>` and no rows. */
    private readonly wasEmpty: boolean,
    private readonly packer: Packer,
  ) {
    this.check = new SheetCheck(layout.part);
  }

  /** True when anything differs from before. */
  get changed(): boolean {
    return !this.isSame;
  }

  start(before: Uint8Array): void {
    this.before = before;
  }

  rows(rows: Uint8Array): void {
    if (this.before) this.writeHead(this.wasEmpty);
    this.check.rows(this.framed(rows));
    this.write(rows, false);
  }

  private framed(rows: Uint8Array): Uint8Array {
    const { open, close } = this.frame;
    const length = open.length + rows.length + close.length;
    if (this.room.length < length) this.room = new Uint8Array(length);
    this.room.set(open);
    this.room.set(rows, open.length);
    this.room.set(close, open.length + rows.length);
    return this.room.subarray(0, length);
  }

  end(behind: Uint8Array): void {
    let tail = behind;
    if (this.before) this.writeHead(false);
    else if (this.wasEmpty) tail = joined(utf8(`</${this.layout.prefix}sheetData>`), behind);
    this.check.frame(joined(this.head!, tail));
    if (this.isSame && this.same + tail.length !== this.layout.bytes.length) this.differ();
    this.write(tail, true);
    this.packed = this.isSame ? undefined : this.packer.finish();
  }

  /** The new part; undefined when it does not unpack to what was packed. */
  finish(): Packed | undefined {
    return this.packed;
  }

  private writeHead(opened: boolean): void {
    const head = this.before!;
    this.before = undefined;
    this.head = opened ? joined(head.subarray(0, head.lastIndexOf(SLASH)), utf8('>')) : head;
    this.write(this.head, false);
  }

  private write(piece: Uint8Array, isLast: boolean): void {
    if (this.isSame) {
      const { bytes } = this.layout;
      let n = 0;
      while (n < piece.length && piece[n] === bytes[this.same + n]) n++;
      if (n === piece.length) {
        this.same += n;
        return;
      }
      this.differ();
    }
    this.packer.add(piece, isLast);
  }

  private differ(): void {
    this.isSame = false;
    if (this.same > 0) this.packer.add(this.layout.bytes.subarray(0, this.same), false);
  }
}

const SLASH = 47;

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(a.length + b.length);
  bytes.set(a);
  bytes.set(b, a.length);
  return bytes;
}
