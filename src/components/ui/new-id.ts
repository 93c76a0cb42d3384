/**
 * An id that no other thing has: a random UUID (RFC 9562, version 4). Pages served over plain http on a
 * local address have no `crypto.randomUUID`, so it is then made of random bytes.
 */
export function newId(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const view = new DataView(bytes.buffer);
  view.setUint8(6, (view.getUint8(6) & 0x0f) | 0x40);
  view.setUint8(8, (view.getUint8(8) & 0x3f) | 0x80);
  const digits = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return [digits.slice(0, 8), digits.slice(8, 12), digits.slice(12, 16), digits.slice(16, 20), digits.slice(20)].join('-');
}
