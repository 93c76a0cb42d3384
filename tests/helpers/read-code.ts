import jsQR from 'jsqr';
import { encode } from 'uqr';

/** What another library reads from the code of an address, drawn as black and white squares; null when it reads none. */
export function readCode(address: string, ecc: 'L' | 'M', scale: number): string | null {
  const { data, size } = encode(address, { ecc, border: 4 });
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++)
      if (data[Math.floor(y / scale)]![Math.floor(x / scale)]!) pixels.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  return jsQR(pixels, side, side)?.data ?? null;
}
