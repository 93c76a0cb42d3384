import { describe, expect, it } from 'vitest';
import { CellMapBuilder } from '../../../../src/engine/stack/cell-map.ts';
import { FilmSums } from '../../../../src/engine/stack/films/film-sums.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import { blobRing, numbersFrom, sheetShape, stackOf } from '../fixtures.ts';

describe('FilmLanes', () => {
  it('should give every bit as plain code does, one map after another', () => {
    const lanes = new FilmSums();
    const plain = new FilmSums(true);
    const next = numbersFrom('film lanes');
    const weights = Float64Array.from({ length: 108 }, () => next());
    for (const pulls of [1, 30, 3, 12]) {
      const shapes = Array.from({ length: pulls }, (_, i) =>
        sheetShape(`shape${i}`, [blobRing(next, 80 + next() * 400, 80 + next() * 600, 60 + next() * 80, 30)]),
      );
      const { studio, pulls: stack } = stackOf(shapes, next);
      const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: 128 };
      const map = new CellMapBuilder().build(placedSpans({ pulls: stack }, studio, grid), grid);
      const [over, under] = [stack[0]!.ink, stack.at(-1)!.ink];
      const trapping = { factor: 0.8, pairs: [{ over, under, factor: 0.5 }] };
      for (const printed of [studio, { ...studio, trapping }, studio]) {
        const layers = stackLayers({ pulls: stack }, printed);
        const both = [lanes, plain].map((films) =>
          films.compute(map, layers, studio.paper.reflectance, weights).subarray(0, map.cells * 3),
        );
        const [found, wanted] = both.map((sums) => sums.slice()) as [Float64Array, Float64Array];
        expect(found).toEqual(wanted);
        for (const films of [lanes, plain]) films.toLab(map.cells);
        expect(both[0]!.slice()).toEqual(both[1]!.slice());
        expect(found.every((sum) => sum > 0)).toBe(true);
      }
    }
  });
});
