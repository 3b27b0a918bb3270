// The code of a hold as a picture of the screen that shows it, without a screen: a grey PNG (ISO/IEC 15948).

import { crc32, deflateSync } from "node:zlib";

const PIXELS = 6;

/** Returns the PNG of a code { path, modules } as the core gives it out. */
export function codePicture({ path, modules }) {
  const side = modules * PIXELS;
  // Each row begins with the byte that says that it is not filtered.
  const rows = Array.from({ length: side }, () => Buffer.alloc(side + 1, 255).fill(0, 0, 1));
  for (const [, x, y] of path.matchAll(/M(\d+),(\d+)/g)) {
    for (let line = y * PIXELS; line < (Number(y) + 1) * PIXELS; line += 1) rows[line].fill(0, 1 + x * PIXELS, 1 + (Number(x) + 1) * PIXELS);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head[8] = 8;
  return Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), chunk("IHDR", head), chunk("IDAT", deflateSync(Buffer.concat(rows))), chunk("IEND", Buffer.alloc(0))]);
}

function chunk(kind, bytes) {
  const body = Buffer.concat([Buffer.from(kind), bytes]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(bytes.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}
