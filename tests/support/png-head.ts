import { crc32, deflateSync } from 'node:zlib';

/** A grey PNG that says so many pixels and holds as many rows of one tone as are asked for: with fewer it is cut off. */
export function greyPng(columns: number, rows: number, rowsHeld = rows): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(columns, 0);
  head.writeUInt32BE(rows, 4);
  head[8] = 8;
  const pixels = Buffer.alloc(rowsHeld * (columns + 1), 128);
  for (let row = 0; row < rowsHeld; row++) pixels[row * (columns + 1)] = 0;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(pixels)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}
