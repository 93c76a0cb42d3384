/** Whether bytes begin as a zip does. Source: APPNOTE.TXT of the ZIP format, 4.3.7, local file header. */
export function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4;
}
