import { expect, it } from 'vitest';
import { mergedRaster } from '../../../src/engine/stack/merged-raster.ts';
import { numbersFrom } from './fixtures.ts';

it('should show the same colours with each of them named once, in bytes where these suffice', () => {
  const next = numbersFrom('merged');
  for (const [cells, kinds] of [
    [700, 256],
    [700, 300],
    [300, 300],
    [5, 1],
  ] as const) {
    // Opaque, so that words are above what 31 bits hold.
    const palette = Array.from({ length: kinds }, (_, i) => (0xff000000 | (i * 7919)) >>> 0);
    const colours = Uint32Array.from({ length: cells }, (_, i) => palette[i < kinds ? i : Math.floor(next() * kinds)]!);
    const indexes = Uint16Array.from({ length: 3000 }, () => Math.floor(next() * cells));
    const merged = mergedRaster({ indexes }, colours);
    expect(Array.from(merged.indexes, (index) => merged.colours[index])).toEqual(Array.from(indexes, (index) => colours[index]));
    expect(merged.colours).toHaveLength(kinds);
    expect(merged.indexes.BYTES_PER_ELEMENT).toBe(kinds <= 256 ? 1 : 2);
  }
});
