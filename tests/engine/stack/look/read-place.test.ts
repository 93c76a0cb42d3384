import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { filmThickness } from '../../../../src/engine/ink/film/thickness.ts';
import { pullRings } from '../../../../src/engine/shapes/place/placed.ts';
import { readPlace } from '../../../../src/engine/stack/look/read-place.ts';
import { SpanCache } from '../../../../src/engine/stack/screen-spans.ts';
import { blobStack, numbersFrom } from '../fixtures.ts';

/** Even-odd rule by crossings of a ray to the right; the outlines here do not cross themselves. */
function inside(ring: ArrayLike<number>, x: number, y: number): boolean {
  let odd = false;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [xi, yi, xj, yj] = [ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) odd = !odd;
  }
  return odd;
}

describe('readPlace', () => {
  const { studio, pulls } = blobStack('read a place', 14);
  const moved = pulls.map((pull, i) => ({ ...pull, dxMm: i - 7, dyMm: 2 * i - 9, turnDeg: i }));
  const rings = moved.map((pull) =>
    pullRings(
      studio.screens.find(({ id }) => id === pull.screen)!,
      studio.shapes,
      pull,
      studio.paper,
    ),
  );

  it('should give the pulls whose outlines hold the place, and the colour of their films', () => {
    const next = numbersFrom('places');
    const spans = new SpanCache(studio);
    let deepest = 0;
    for (let i = 0; i < 300; i++) {
      const at = { xMm: next() * 560, yMm: next() * 760 };
      const { lab, pulls: found, after } = readPlace(studio, { pulls: moved }, at, spans);
      const there = rings.flatMap((list, pull) => (list.rings.some((ring) => inside(ring, at.xMm, at.yMm)) ? [pull] : []));
      expect(found).toEqual(there);
      deepest = Math.max(deepest, there.length);
      const films = there.map((index) => {
        const ink = studio.inks.find(({ id }) => id === moved[index]!.ink)!;
        const thickness = filmThickness(moved[index]!.strokes, studio.strokeGain);
        return { kx: ink.kx.map((k) => k * thickness), sx: ink.sx.map((s) => s * thickness) };
      });
      labD50(stackReflectance(films, studio.paper.reflectance)).forEach((value, axis) => expect(lab[axis]).toBeCloseTo(value, 9));
      expect(after).toHaveLength(there.length + 1);
      for (const [count, colour] of after.entries()) {
        labD50(stackReflectance(films.slice(0, count), studio.paper.reflectance)).forEach((value, axis) =>
          expect(colour[axis]).toBeCloseTo(value, 9),
        );
      }
    }
    expect(deepest).toBeGreaterThan(2);
  });

  it('should read bare paper off the sheet and under no pulls', () => {
    const paper = labD50(studio.paper.reflectance);
    readPlace(studio, { pulls: [] }, { xMm: 5, yMm: 5 }).lab.forEach((value, axis) => expect(value).toBeCloseTo(paper[axis]!, 9));
    expect(readPlace(studio, { pulls: moved }, { xMm: -900, yMm: 5 }).pulls).toEqual([]);
  });
});
