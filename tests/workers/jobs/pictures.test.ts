import { describe, expect, it } from 'vitest';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { StudioPictures } from '../../../src/workers/jobs/pictures.ts';
import { WallPainter } from '../../../src/workers/jobs/wall-painter.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const ROWS = 128;

function words(pixels: Uint8ClampedArray<ArrayBuffer>): Uint32Array {
  return new Uint32Array(pixels.buffer, pixels.byteOffset, pixels.length / 4);
}

describe('WallPainter', () => {
  it('should share one map between orders and inks of the same placed screens', () => {
    const painter = new WallPainter(new StudioPictures(drawer), { rows: ROWS, relative: true });
    const first = painter.tile(bench);
    const turned = painter.tile([...bench].reverse());
    const shifted = painter.tile(bench.map((pull) => ({ ...pull, dxMm: 1.5 })));
    expect(first.fresh).not.toBeNull();
    expect(turned).toMatchObject({ map: first.map, fresh: null });
    expect(shifted.map).not.toBe(first.map);
  });

  it('should give the colours that the thumbnail has, but for blended edges, also where other pictures come in between', () => {
    const pictures = new StudioPictures(drawer);
    const painter = new WallPainter(pictures, { rows: ROWS, relative: true });
    const lower = (pulls: readonly Pull[]): Pull[] => pulls.map((pull) => ({ ...pull, dyMm: 2 }));
    const { cells } = painter.tile(lower(bench)).fresh!;
    for (const order of [bench, [...bench].reverse(), [bench[1]!, bench[0]!, bench[2]!]]) {
      const { fresh, colours } = painter.tile(lower(order));
      expect(fresh).toBeNull();
      // Of the same placed screens in another order, whose cells have other numbers.
      const { pixels, widthPx } = pictures.thumbnail({ pulls: lower(order), heightPx: ROWS, relative: true });
      const thumbnail = words(pixels);
      const printed = new Set<number>();
      let differ = 0;
      for (let i = 0; i < thumbnail.length; i++) {
        if (thumbnail[i] !== 0xffffffff) printed.add(Math.floor(i / widthPx));
        if (colours[cells[i]!] !== thumbnail[i]) differ++;
      }
      // Three rectangles have at most six upright edges a row.
      expect(differ).toBeLessThanOrEqual(6 * printed.size);
      expect(printed.size).toBeLessThan(ROWS / 2);
      expect(new Set(colours).size).toBeGreaterThan(4);
    }
  });
});

describe('the small picture of a tile', () => {
  it('should be the mean of the thumbnail, field by field', () => {
    const pictures = new StudioPictures(drawer);
    const { small } = new WallPainter(pictures, { rows: ROWS, relative: true }).tile(bench);
    const thumbnail = pictures.thumbnail({ pulls: bench, heightPx: ROWS, relative: true });
    const codes = words(thumbnail.pixels);
    expect(small.rows).toBe(ROWS / 4);
    let far = 0;
    for (let row = 0; row < small.rows; row++) {
      for (let column = 0; column < small.columns; column++) {
        // The fields' own edges may lie a column aside; the mean over a little more is compared.
        const [from, to] = [column, column + 1].map((at) => Math.ceil((at * thumbnail.widthPx) / small.columns));
        let sum = 0;
        for (let y = row * 4; y < row * 4 + 4; y++) for (let x = from!; x < to!; x++) sum += (codes[y * thumbnail.widthPx + x]! & 255) ** 2;
        const mean = Math.sqrt(sum / (4 * (to! - from!)));
        if (Math.abs(mean - (small.words[row * small.columns + column]! & 255)) > 2) far++;
      }
    }
    // The thumbnail blends its edges: fields that one goes through may differ.
    expect(far).toBeLessThan(small.words.length * 0.12);
  });
});

describe('StudioPictures', () => {
  it('should end its states with the whole stack and begin them with bare paper', () => {
    const pictures = new StudioPictures(drawer);
    const states = pictures.allStates({ pulls: bench, heightPx: ROWS, relative: true });
    expect(states).toHaveLength(bench.length + 1);
    expect(new Set(words(states[0]!.pixels))).toEqual(new Set([0xffffffff]));
    expect(states.at(-1)!.pixels).toEqual(pictures.thumbnail({ pulls: bench, heightPx: ROWS, relative: true }).pixels);
  });

  it('should draw reordered stacks as if each were drawn by itself', () => {
    const pictures = new StudioPictures(drawer);
    const orders = [bench, [...bench].reverse()];
    const together = pictures.reordered(orders, { heightPx: ROWS, relative: true });
    for (const [i, order] of orders.entries()) {
      expect(together[i]!.pixels).toEqual(pictures.thumbnail({ pulls: order, heightPx: ROWS, relative: true }).pixels);
    }
    expect(together[0]!.pixels).not.toEqual(together[1]!.pixels);
  });

  it('should say which pull names a screen that is not there', () => {
    expect(() => new StudioPictures(drawer).thumbnail({ pulls: [pullOf('p', 'ghost', 'rust')], heightPx: ROWS, relative: true })).toThrow(
      /ghost/,
    );
  });
});

describe('the states of a stack', () => {
  it('should draw nothing of no stacks', () => {
    expect(new StudioPictures(smallProject().drawer).reordered([], { heightPx: 60, relative: true })).toEqual([]);
  });

  it('should begin with bare paper, and add one pull a state', () => {
    const pictures = new StudioPictures(drawer);
    const states = pictures.allStates({ pulls: bench, heightPx: ROWS, relative: true });
    expect(states).toHaveLength(bench.length + 1);
    expect(new Set(words(states[0]!.pixels))).toEqual(new Set([0xffffffff]));
    states.forEach(({ pixels }, state) => {
      expect(pixels).toEqual(pictures.thumbnail({ pulls: bench.slice(0, state), heightPx: ROWS, relative: true }).pixels);
    });
  });
});
