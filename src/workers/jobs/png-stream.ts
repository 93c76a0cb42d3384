import { num, u32, u8 } from '../../engine/base/at.ts';

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const UP = 2;
const MM_PER_INCH = 25.4;

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = (c & 1) !== 0 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

function crc(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = u32(CRC_TABLE, (c ^ byte) & 255) ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

function chunk(type: string, data: Uint8Array): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(data.length + 12);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i++) out[4 + i] = type.charCodeAt(i);
  out.set(data, 8);
  view.setUint32(8 + data.length, crc(out.subarray(4, 8 + data.length)));
  return out;
}

function words(...values: number[]): Uint8Array {
  const out = new Uint8Array(values.length * 4);
  values.forEach((value, i) => new DataView(out.buffer).setUint32(i * 4, value));
  return out;
}

function latin(text: string): Uint8Array {
  return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
}

/** Deflates with a zlib head, as PNG and PDF want it. */
export async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * Writes a PNG of any size band by band, so that the whole picture is never held: 8-bit sRGB
 * without transparency, with its size on paper.
 * Source: PNG specification, third edition (W3C 2025), chunks IHDR, sRGB, pHYs, tEXt, IDAT, IEND.
 * @param size with what is noted in the file, in Latin-1
 * @param band gives rows from a row on, RGBA; no more than `bandRows`
 * @param onBand gets the rows that are done; false stops the work
 * @returns the file's parts; null when stopped
 */
export async function writePng(
  size: { widthPx: number; heightPx: number; dpi: number; note?: { keyword: string; text: string } | undefined },
  bandRows: number,
  band: (fromRow: number, rows: number) => Uint8ClampedArray,
  onBand: (rows: number) => boolean | Promise<boolean>,
): Promise<Blob | null> {
  const { widthPx, heightPx, dpi, note } = size;
  const header = new Uint8Array(13);
  header.set(words(widthPx, heightPx));
  header.set([8, 2, 0, 0, 0], 8);
  const perMetre = Math.round((dpi / MM_PER_INCH) * 1000);
  const physical = new Uint8Array(9);
  physical.set(words(perMetre, perMetre));
  physical[8] = 1;
  const parts: Uint8Array<ArrayBuffer>[] = [SIGNATURE, chunk('IHDR', header), chunk('sRGB', Uint8Array.of(0)), chunk('pHYs', physical)];
  if (note !== undefined) parts.push(chunk('tEXt', latin(`${note.keyword}\0${note.text}`)));

  const compress = new CompressionStream('deflate');
  const writer = compress.writable.getWriter();
  const collected = collect(compress.readable, (bytes) => parts.push(chunk('IDAT', bytes)));
  let before = new Uint8Array(widthPx * 3);
  for (let from = 0; from < heightPx; from += bandRows) {
    const rows = Math.min(bandRows, heightPx - from);
    const pixels = band(from, rows);
    const lines = new Uint8Array(rows * (widthPx * 3 + 1));
    for (let row = 0; row < rows; row++) {
      const now = new Uint8Array(widthPx * 3);
      const base = row * widthPx * 4;
      const at = row * (widthPx * 3 + 1);
      lines[at] = UP;
      for (let x = 0, to = 0; x < widthPx; x++, to += 3) {
        const px = base + x * 4;
        now[to] = num(pixels, px);
        now[to + 1] = num(pixels, px + 1);
        now[to + 2] = num(pixels, px + 2);
      }
      for (let i = 0; i < now.length; i++) lines[at + 1 + i] = u8(now, i) - u8(before, i);
      before = now;
    }
    await writer.write(lines);
    if (!(await onBand(from + rows))) {
      await writer.abort();
      await collected.catch(() => undefined);
      return null;
    }
  }
  await writer.close();
  await collected;
  parts.push(chunk('IEND', new Uint8Array(0)));
  return new Blob(parts, { type: 'image/png' });
}

async function collect(stream: ReadableStream<Uint8Array>, take: (bytes: Uint8Array) => void): Promise<void> {
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    take(value);
  }
}
