import { crc32, deflateRawSync } from 'node:zlib';

/** One entry of a container whose headers may lie. */
export interface RawEntry {
  readonly name: string;
  readonly content?: Uint8Array;
  readonly localName?: string;
  readonly size?: number;
  readonly method?: number;
  readonly flags?: number;
  readonly crc?: number;
  /** Points at the data of the entry with this number instead of its own. */
  readonly sameAs?: number;
}

/** A zip container written field by field, as in APPNOTE.TXT 4.3, so that single fields can be wrong. */
export function rawZip(entries: readonly RawEntry[]): Uint8Array {
  const bodies: Buffer[] = [];
  const headers: Buffer[] = [];
  const places: { offset: number; packed: number; crc: number; size: number }[] = [];
  let offset = 0;
  for (const entry of entries) {
    const content = entry.content ?? new Uint8Array();
    const method = entry.method ?? 8;
    const data = method === 8 ? deflateRawSync(content, { level: 9 }) : Buffer.from(content);
    const own = { offset, packed: data.length, crc: entry.crc ?? crc32(content), size: entry.size ?? content.length };
    const place = entry.sameAs === undefined ? own : places[entry.sameAs]!;
    places.push(place);
    const fields = (name: Buffer): Buffer => {
      const head = Buffer.alloc(26);
      head.writeUInt16LE(20, 0);
      head.writeUInt16LE(entry.flags ?? 0, 2);
      head.writeUInt16LE(method, 4);
      head.writeUInt32LE(place.crc, 10);
      head.writeUInt32LE(place.packed, 14);
      head.writeUInt32LE(place.size, 18);
      head.writeUInt16LE(name.length, 22);
      return head;
    };
    const name = Buffer.from(entry.name);
    if (entry.sameAs === undefined) {
      const localName = Buffer.from(entry.localName ?? entry.name);
      const body = Buffer.concat([Buffer.from('PK\x03\x04'), fields(localName), localName, data]);
      bodies.push(body);
      offset += body.length;
    }
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(place.offset, 10);
    headers.push(Buffer.concat([Buffer.from('PK\x01\x02\x14\x00'), fields(name), tail, name]));
  }
  const directory = Buffer.concat(headers);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(offset, 16);
  return new Uint8Array(Buffer.concat([...bodies, directory, end]));
}
