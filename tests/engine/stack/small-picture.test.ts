import { describe, expect, it } from 'vitest';
import { smallPicture } from '../../../src/engine/stack/small-picture.ts';

describe('smallPicture', () => {
  it('should average light, not codes', () => {
    const cells = Uint8Array.from({ length: 16 }, (_, i) => i % 2);
    const { columns, rows, words } = smallPicture({ columns: 4, rows: 4, cells }, Uint32Array.of(0xff000000, 0xffffffff), 4);
    expect([columns, rows]).toEqual([1, 1]);
    // Half the light of white, by squares of the codes: 255 ÷ √2.
    expect([...words]).toEqual([0xffb4b4b4]);
  });

  it('should keep each field to its own part of the sheet and each channel apart', () => {
    const cells = Uint8Array.from({ length: 64 }, (_, i) => (i % 8 < 4 ? 0 : 1) + (i < 32 ? 0 : 2));
    const colours = Uint32Array.of(0xff0000ff, 0xff00ff00, 0xffff0000, 0xff112233);
    expect(smallPicture({ columns: 8, rows: 8, cells }, colours, 4)).toEqual({ columns: 2, rows: 2, words: colours });
  });

  it('should leave no field empty where columns do not divide evenly', () => {
    const { words, columns, rows } = smallPicture(
      { columns: 189, rows: 255, cells: new Uint16Array(189 * 255) },
      Uint32Array.of(0xffabcdef),
      4,
    );
    expect(words).toEqual(new Uint32Array(columns * rows).fill(0xffabcdef));
  });
});
