import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { Sight } from '../../../../src/engine/explore/look/visible.ts';
import { type FilmBands, filmBands, overFilm } from '../../../../src/engine/ink/film/film.ts';
import type { CellMap } from '../../../../src/engine/stack/types.ts';
import { numbersFrom } from '../../stack/fixtures.ts';

const BANDS = 36;

/** Films from glassy to opaque, of uneven curves. */
function films(next: () => number, count: number): FilmBands[] {
  return Array.from({ length: count }, () => {
    const [dense, hiding] = [next() ** 3 * 4, next() ** 3 * 6];
    return filmBands(
      Array.from({ length: BANDS }, () => next() * dense),
      Array.from({ length: BANDS }, () => next() * hiding),
    );
  });
}

/** Each cell is one square millimetre under a random set of screens. */
function randomMap(next: () => number, screens: number, cells: number): CellMap {
  const words = Math.ceil(screens / 32);
  const cover = new Uint32Array(cells * words);
  for (let cell = 1; cell < cells; cell++) {
    for (let bit = 0; bit < screens; bit++) if (next() < 0.3) cover[cell * words + (bit >> 5)]! |= 1 << (bit & 31);
  }
  return {
    widthMm: cells,
    heightMm: 1,
    rows: 1,
    screens,
    cells,
    words,
    cover,
    areaMm2: new Float64Array(cells).fill(1),
    rowStart: Uint32Array.of(0, cells),
    runEndMm: Float64Array.from({ length: cells }, (_, i) => i + 1),
    runCell: Uint32Array.from({ length: cells }, (_, i) => i),
  };
}

/** The same by laying every pile over white and over black, film by film. */
function plainly(map: CellMap, laid: readonly FilmBands[], leastDeltaE: number): { areaMm2: number[]; pairs: number } {
  const areaMm2 = laid.map(() => 0);
  let pairs = 0;
  for (let cell = 1; cell < map.cells; cell++) {
    const over: number[] = [];
    for (let at = laid.length - 1; at >= 0; at--) {
      if (((map.cover[cell * map.words + (at >> 5)]! >>> (at & 31)) & 1) === 0) continue;
      pairs += over.length;
      const [white, black] = [1, 0].map((ground) => {
        const light = new Float64Array(BANDS).fill(ground);
        for (const each of [...over].reverse()) overFilm(laid[each]!, light, light);
        return labD50(light);
      });
      if (over.length > 0 && deltaE2000(white!, black!) < leastDeltaE) continue;
      areaMm2[at]!++;
      over.push(at);
    }
  }
  return { areaMm2, pairs };
}

describe('Sight', () => {
  it('should see what laying every pile over white and black shows', () => {
    const next = numbersFrom('sight');
    let hidden = 0;
    for (const leastDeltaE of [0.5, 1, 3]) {
      const laid = films(next, 40);
      const map = randomMap(next, 40, 120);
      const sight = new Sight((id) => laid[id]!, leastDeltaE);
      const order = laid.map((_, i) => i);
      const seen = sight.of(map, order, order);
      const expected = plainly(map, laid, leastDeltaE);
      expect([...seen.areaMm2]).toEqual(expected.areaMm2);
      expect(seen.pairMm2.reduce((sum, area) => sum + area, 0)).toBe(expected.pairs);
      hidden +=
        map.cover.reduce((sum, word) => sum + word.toString(2).replaceAll('0', '').length, 0) -
        expected.areaMm2.reduce((sum, area) => sum + area, 0);
    }
    // Else nothing was tested.
    expect(hidden).toBeGreaterThan(100);
  });
});
