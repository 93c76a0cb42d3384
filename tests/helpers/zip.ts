import { crc32, inflateRawSync } from 'node:zlib';

/**
 * Reads a zip by its central directory, with zlib's inflate and sums, apart from the library that wrote it.
 * Source: APPNOTE.TXT of the ZIP format, 4.3.7 local file header, 4.3.12 central directory, 4.3.16 its end.
 */
export function readZip(bytes: Uint8Array): Map<string, Buffer> {
  const file = Buffer.from(bytes);
  const end = file.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const found = new Map<string, Buffer>();
  let at = file.readUInt32LE(end + 16);
  for (let i = 0; i < file.readUInt16LE(end + 10); i++) {
    if (file.readUInt32LE(at) !== 0x02014b50) throw new Error(`no entry at ${at}`);
    const [method, sum, packed, size] = [
      file.readUInt16LE(at + 10),
      file.readUInt32LE(at + 16),
      file.readUInt32LE(at + 20),
      file.readUInt32LE(at + 24),
    ];
    const [nameLength, extra, comment, local] = [
      file.readUInt16LE(at + 28),
      file.readUInt16LE(at + 30),
      file.readUInt16LE(at + 32),
      file.readUInt32LE(at + 42),
    ];
    const name = file.toString('utf8', at + 46, at + 46 + nameLength);
    if (file.readUInt32LE(local) !== 0x04034b50 || method !== 8) throw new Error(`${name} is not deflated`);
    const from = local + 30 + file.readUInt16LE(local + 26) + file.readUInt16LE(local + 28);
    const content = inflateRawSync(file.subarray(from, from + packed));
    if (content.length !== size || crc32(content) !== sum) throw new Error(`${name} has another sum`);
    found.set(name, content);
    at += 46 + nameLength + extra + comment;
  }
  return found;
}
