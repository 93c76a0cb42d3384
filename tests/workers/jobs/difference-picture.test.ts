import { describe, expect, it } from 'vitest';
import { encodeSrgb8 } from '../../../src/engine/colour/encode.ts';
import { differenceOf } from '../../../src/engine/explore/look/difference.ts';
import { differencePicture, RAMP, RAMP_END } from '../../../src/workers/jobs/difference-picture.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer: studio } = smallProject();
const HEIGHT = 152;
const print = (ink: string) => [pullOf('p1', 's1', ink)];

/** The colours of a picture with their share of its pixels, most first. */
function colours({ pixels }: { pixels: Uint8ClampedArray }): [string, number][] {
  const counts = new Map<string, number>();
  for (let i = 0; i < pixels.length; i += 4) {
    const key = pixels.slice(i, i + 3).join();
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([key, count]): [string, number] => [key, (4 * count) / pixels.length]).sort((a, b) => b[1] - a[1]);
}

describe('differencePicture', () => {
  it('should be the first colour of the ramp all over where nothing differs', () => {
    const same = differencePicture({ studio, a: print('rust'), b: print('rust'), heightPx: HEIGHT, overDeltaE: 1 });
    expect([same.mean, same.greatest, same.share]).toEqual([0, 0, 0]);
    // The sheet is 560 × 760 mm.
    expect([same.picture.widthPx, same.picture.heightPx]).toEqual([112, HEIGHT]);
    expect(colours(same.picture)).toEqual([[RAMP[0]!.join(), 1]]);
  });

  it('should show how far apart two prints are, where they are, by the ramp', () => {
    const a = print('signal');
    const b = print('clay');
    const { picture, mean, greatest, share } = differencePicture({ studio, a, b, heightPx: HEIGHT, overDeltaE: 2 });
    // One rectangle of 200 × 100 mm on the sheet differs, all of it alike.
    const part = (200 * 100) / (560 * 760);
    // Amid the ramp, so that its end is not all that is seen.
    expect(greatest).toBeGreaterThan(2);
    expect(greatest).toBeLessThan(0.8 * RAMP_END);
    expect(share).toBeCloseTo(part, 3);
    expect(mean).toBeCloseTo(greatest * part, 2);
    const [alike, apart] = colours(picture);
    expect(alike![0]).toBe(RAMP[0]!.join());
    expect(apart![1]).toBeCloseTo(part, 2);
    // Between the two stops that its ΔE lies between, in linear light.
    const linear = (code: number): number => (code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4);
    const along = Math.min(1, greatest / RAMP_END) * (RAMP.length - 1);
    const below = Math.min(RAMP.length - 2, Math.floor(along));
    const expected = RAMP[below]!.map((code, i) => {
      const mixed = linear(code) * (1 - (along - below)) + linear(RAMP[below + 1]![i]!) * (along - below);
      return encodeSrgb8(mixed);
    });
    for (const [i, code] of apart![0].split(',').map(Number).entries()) expect(Math.abs(code - expected[i]!)).toBeLessThanOrEqual(1);
    expect(differenceOf(studio, a, b, HEIGHT).greatest).toBe(greatest);
  });

  it('should end its ramp at ΔE 30', () => {
    const { picture, greatest } = differencePicture({ studio, a: print('tar'), b: [], heightPx: HEIGHT, overDeltaE: 2 });
    expect(greatest).toBeGreaterThan(RAMP_END);
    expect(colours(picture)[1]![0]).toBe(RAMP.at(-1)!.join());
  });
});
