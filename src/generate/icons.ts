import { deflateSync } from 'node:zlib';

/** One filled rectangle of the drawing, on a field of 16 by 16 units; `round` is the radius of its corners. */
interface Shape {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: string;
  readonly round?: number;
}

const TILE = '#0f5c59';
const STRUCTURE = '#ffffff';
const SENSOR = '#f6c567';
const FIELD = 16;

/**
 * A sensor sits near the free end of a clamped beam; three strokes say that it moves.
 * Every edge lies on a whole unit, so that 16, 32, 64 and 80 pixels are all sharp. Its own dark tile keeps it readable on any ground.
 */
const DRAWING: readonly Shape[] = [
  { x: 0, y: 0, width: 16, height: 16, fill: TILE, round: 3 },
  { x: 2, y: 2, width: 2, height: 12, fill: STRUCTURE },
  { x: 4, y: 10, width: 10, height: 2, fill: STRUCTURE },
  { x: 8, y: 6, width: 5, height: 4, fill: SENSOR },
  { x: 8, y: 3, width: 1, height: 2, fill: STRUCTURE },
  { x: 10, y: 2, width: 1, height: 3, fill: STRUCTURE },
  { x: 12, y: 3, width: 1, height: 2, fill: STRUCTURE },
];

export const ICON_SIZES = [16, 32, 64, 80] as const;

export const iconSvg = (): string => {
  const shapes = DRAWING.map(({ x, y, width, height, fill, round }) => {
    const corner = round === undefined ? '' : ` rx="${round}"`;
    return `  <rect x="${x}" y="${y}" width="${width}" height="${height}"${corner} fill="${fill}"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${FIELD} ${FIELD}">\n${shapes.join('\n')}\n</svg>\n`;
};

const isInside = (shape: Shape, x: number, y: number): boolean => {
  const right = shape.x + shape.width;
  const bottom = shape.y + shape.height;
  if (x < shape.x || x > right || y < shape.y || y > bottom) return false;
  const round = shape.round ?? 0;
  const dx = Math.max(shape.x + round - x, 0, x - (right - round));
  const dy = Math.max(shape.y + round - y, 0, y - (bottom - round));
  return dx * dx + dy * dy <= round * round || round === 0;
};

const channels = (fill: string): [number, number, number] => {
  const rgb = Number.parseInt(fill.slice(1), 16);
  return [rgb >> 16, (rgb >> 8) & 255, rgb & 255];
};

/** Samples per pixel edge: only the rounded corners need any. */
const SAMPLES = 4;

const pixel = (column: number, row: number, size: number): [number, number, number, number] => {
  const sum = [0, 0, 0];
  let covered = 0;
  for (let i = 0; i < SAMPLES * SAMPLES; i++) {
    const x = ((column + ((i % SAMPLES) + 0.5) / SAMPLES) / size) * FIELD;
    const y = ((row + (Math.floor(i / SAMPLES) + 0.5) / SAMPLES) / size) * FIELD;
    const top = DRAWING.findLast((shape) => isInside(shape, x, y));
    if (!top) continue;
    covered += 1;
    channels(top.fill).forEach((value, k) => (sum[k] = (sum[k] ?? 0) + value));
  }
  const mean = (k: number) => (covered === 0 ? 0 : Math.round((sum[k] ?? 0) / covered));
  return [mean(0), mean(1), mean(2), Math.round((covered / (SAMPLES * SAMPLES)) * 255)];
};

/** The raster rows as PNG stores them before compression: a filter byte 0, then red, green, blue, alpha. */
export const iconRaster = (size: number): Buffer => {
  const rows: number[] = [];
  for (let row = 0; row < size; row++) {
    rows.push(0);
    for (let column = 0; column < size; column++) rows.push(...pixel(column, row, size));
  }
  return Buffer.from(rows);
};

/** The remainder that ISO/IEC 15948 (PNG), clause 5.5, asks for at the end of each chunk. */
const crc32 = (bytes: Buffer): number => {
  let remainder = 0xffffffff;
  for (const byte of bytes) {
    remainder ^= byte;
    for (let bit = 0; bit < 8; bit++) remainder = (remainder >>> 1) ^ (remainder & 1 ? 0xedb88320 : 0);
  }
  return (remainder ^ 0xffffffff) >>> 0;
};

const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8 + body.length);
  frame.writeUInt32BE(data.length, 0);
  body.copy(frame, 4);
  frame.writeUInt32BE(crc32(body), 4 + body.length);
  return frame;
};

export const iconPng = (size: number): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(iconRaster(size), { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
