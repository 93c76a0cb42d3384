import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../../src/engine/base/random.ts';
import type { Lab } from '../../../../../src/engine/colour/lab.ts';
import { plainColours } from '../../../../../src/engine/explore/measure/colour-areas.ts';
import { plainFar } from '../../../../../src/engine/explore/measure/overprint-colours.ts';
import { ToldRoom } from '../../../../../src/engine/explore/measure/told/told-room.ts';

/** Colours about a few middles all over Lab, bluish and grey ones among them. */
function colours(seed: string, count: number, spread: number): Float64Array {
  const random = randomFrom(seed);
  const at = (half: number): number => (random.int(2 ** 30) / 2 ** 29 - 1) * half;
  const middles = Array.from({ length: 9 }, () => [55 + at(55), at(100), at(100)]);
  return Float64Array.from({ length: count * 3 }, (_, i) => middles[Math.floor(i / 3) % 9]![i % 3]! + at(spread));
}

describe('ToldRoom', () => {
  it.each([
    [2, 6],
    [2, 30],
    [0.01, 0.3],
    [5, 20],
  ])('should tell colours apart as by one comparison after another, ΔE00 %d', (deltaE, spread) => {
    const room = new ToldRoom();
    // More colours than fit in memory at first, then fewer in what is left of them; and none.
    for (const count of [1500, 60, 0]) {
      const lab = colours(`told ${deltaE} ${spread} ${count}`, count, spread);
      const list = Uint32Array.from({ length: count }, (_, i) => (i * 7) % Math.max(1, count));
      room.hold(lab, count);
      const told = room.tell(list, deltaE)!;
      const found = { count: told.count, colourOf: told.colourOf.slice(), cellOf: told.cellOf.slice() };
      expect(found).toEqual(plainColours(lab, list, deltaE));
      if (count === 1500) expect(found.count).toBeGreaterThan(80);
      if (count === 1500 && spread === 30) expect(found.count).toBeGreaterThan(400);
    }
  });

  it.each([10, 45, 130])('should find what is far from all swatches as by one comparison after another, up to %d about', (spread) => {
    const room = new ToldRoom();
    let far = 0;
    // More swatches than there is room for at first; the same with other cells; none of either.
    for (const [count, swatchCount, seed] of [
      [900, 17, 'a'],
      [40, 17, 'a'],
      [700, 90, 'b'],
      [5, 1, 'c'],
      [30, 0, 'd'],
      [0, 3, 'e'],
    ] as const) {
      const lab = colours(`far ${spread} ${count}`, count, spread);
      const swatchLab = colours(`swatches ${spread} ${seed}`, swatchCount, spread);
      const swatches = Array.from({ length: swatchCount }, (_, i): Lab => [
        swatchLab[i * 3]!,
        swatchLab[i * 3 + 1]!,
        swatchLab[i * 3 + 2]!,
      ]);
      swatches.sort((one, other) => one[0] - other[0]);
      const list = Uint32Array.from({ length: count }, (_, i) => count - 1 - i);
      room.hold(lab, count);
      room.tell(list, 2);
      const found = room.farFrom(list, swatches)!.slice();
      expect(found).toEqual(plainFar(lab, list, swatches));
      if (swatchCount > 1) far += found.length;
      if (count === 900) expect(found.length).toBeLessThan(860);
    }
    expect(far).toBeGreaterThan(50);
  });

  it('should leave larger differences to plain code', () => {
    const room = new ToldRoom();
    room.hold(new Float64Array(3), 1);
    expect(room.tell(Uint32Array.of(0), 12)).toBeNull();
  });
});
