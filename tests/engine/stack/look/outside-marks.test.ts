import { inGamut } from 'culori';
import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { paintView } from '../../../../src/engine/stack/view.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { blobStack } from '../fixtures.ts';

/** A film that takes all red light and little else: no screen has so clean a cyan. */
const CYAN = { kx: Array.from({ length: 36 }, (_, band) => (band < 18 ? 0.02 : 4)), sx: new Array<number>(36).fill(0.01) };

const inScreen = inGamut('rgb');

function cyanStack(): { studio: Studio; pulls: ReturnType<typeof blobStack>['pulls'] } {
  const { studio, pulls } = blobStack('hatch', 1);
  const inks = studio.inks.map((ink) => ({ ...ink, ...CYAN }));
  return { studio: { ...studio, inks }, pulls };
}

const words = (pixels: Uint8ClampedArray<ArrayBuffer>): Uint32Array => new Uint32Array(pixels.buffer);

describe('a hatched view', () => {
  const { studio, pulls } = cyanStack();
  const { widthMm, heightMm } = studio.paper;
  const view = { xMm: 0, yMm: 0, widthMm, heightMm, widthPx: 160, heightPx: 120, relative: false };
  const plain = words(paintView(studio, { pulls }, view));
  const marked = words(paintView(studio, { pulls }, { ...view, marked: true }));
  const paper = plain[0]!;
  const film = stackReflectance([CYAN], studio.paper.reflectance);

  it('should lie on a colour that culori finds outside sRGB, and nowhere else', () => {
    const [l, a, b] = labD50(film);
    expect(inScreen({ mode: 'lab', l, a, b })).toBe(false);
    const changed = [...plain.keys()].filter((at) => plain[at] !== marked[at]);
    expect(changed.length).toBeGreaterThan(100);
    for (const at of changed) {
      expect(plain[at]).not.toBe(paper);
    }
  });

  it('should leave most of the colour to be seen', () => {
    const printed = [...plain.keys()].filter((at) => plain[at] !== paper);
    const kept = printed.filter((at) => plain[at] === marked[at]).length / printed.length;
    expect(kept).toBeGreaterThan(0.7);
    expect(kept).toBeLessThan(0.85);
  });

  it('should lie still on the sheet when the view moves by whole pixels', () => {
    const step = widthMm / 160;
    const moved = words(paintView(studio, { pulls }, { ...view, xMm: 16 * step, widthMm: 100 * step, widthPx: 100, marked: true }));
    const line = marked.find((word, at) => word !== plain[at] && plain[at] === plain[at + 1])!;
    const black = (pixels: Uint32Array, x: number, y: number, width: number): boolean => pixels[y * width + x] === line;
    let seen = 0;
    for (let y = 0; y < 120; y += 3) {
      for (let x = 0; x < 100; x++) {
        if (!black(marked, x + 16, y, 160)) continue;
        seen++;
        expect(black(moved, x, y, 100)).toBe(true);
      }
    }
    expect(seen).toBeGreaterThan(20);
  });

  it('should change nothing where the screen can show all', () => {
    const grey = {
      ...studio,
      inks: studio.inks.map((ink) => ({ ...ink, kx: new Array<number>(36).fill(1), sx: new Array<number>(36).fill(0.5) })),
    };
    expect(words(paintView(grey, { pulls }, { ...view, marked: true }))).toEqual(words(paintView(grey, { pulls }, view)));
  });
});
