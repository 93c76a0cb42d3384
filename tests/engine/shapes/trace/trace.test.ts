import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { ringArea } from '../../../../src/engine/geometry/rings.ts';
import { type Grey, greyOf } from '../../../../src/engine/shapes/trace/grey.ts';
import { trace, type TraceSettings } from '../../../../src/engine/shapes/trace/trace.ts';

const SETTINGS: TraceSettings = { widthMm: 100, threshold: null, lightIsInk: false, evenLight: false, speckMm2: 0, errorMm: 0 };

/** A drawing of 100 × 100 units as another renderer's picture of it. */
function drawn(inside: string, width = 400): Grey {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#fff"/>${inside}</svg>`;
  const picture = new Resvg(svg, { fitTo: { mode: 'width', value: width } }).render();
  return greyOf({ width: picture.width, height: picture.height, data: picture.pixels });
}

const areaOf = (rings: readonly ArrayLike<number>[]): number => rings.reduce((sum, ring) => sum + ringArea(ring), 0);

describe('tracing a picture', () => {
  it('should give back circles within a fifth of a pixel, and their area within a thousandth', () => {
    const { shape, pieces, holes, pixelMm, problems } = trace(
      drawn('<path d="M50 10a40 40 0 1 0 .01 0zM50 30a20 20 0 1 1 -.01 0z"/>'),
      'ring.png',
      SETTINGS,
    );
    expect([problems, pieces, holes, pixelMm]).toEqual([[], 1, 1, 0.25]);
    for (const [at, ring] of shape!.rings.entries()) {
      for (let i = 0; i < ring.length; i += 2)
        expect(Math.abs(Math.hypot(ring[i]! - 50, ring[i + 1]! - 50) - (at === 0 ? 40 : 20))).toBeLessThan(pixelMm / 5);
    }
    expect(Math.abs(areaOf(shape!.rings)) / (Math.PI * 1200)).toBeCloseTo(1, 3);
  });

  it('should keep to the error that is allowed, with fewer corners', () => {
    const fine = trace(drawn('<circle cx="50" cy="50" r="40"/>'), 'a.png', SETTINGS);
    const coarse = trace(drawn('<circle cx="50" cy="50" r="40"/>'), 'a.png', { ...SETTINGS, errorMm: 0.2 });
    expect(coarse.corners).toBeLessThan(fine.corners / 10);
    const [ring] = coarse.shape!.rings;
    for (let i = 0; i < ring!.length; i += 2) {
      const [x, y] = [(ring![i]! + ring![(i + 2) % ring!.length]!) / 2, (ring![i + 1]! + ring![(i + 3) % ring!.length]!) / 2];
      // The middle of a chord lies farthest in.
      expect(40 - Math.hypot(x - 50, y - 50)).toBeLessThan(0.2 + 0.025);
    }
  });

  it('should take out a light that falls off by half over the paper, also beside a large dark shape', () => {
    const picture = drawn('<rect x="10" y="20" width="50" height="60"/><circle cx="80" cy="50" r="8"/>');
    const dim = (grey: number, x: number): number => Math.round((20 + grey * 0.85) * (1 - 0.5 * (x / picture.width)));
    const shaded = { ...picture, values: picture.values.map((grey, i) => dim(grey, i % picture.width)) };
    const even = trace(shaded, 'photo.jpg', { ...SETTINGS, evenLight: true });
    expect(even.pieces).toBe(2);
    expect(Math.abs(areaOf(even.shape!.rings)) / (3000 + 64 * Math.PI)).toBeCloseTo(1, 2);
    const [left, right] = even.shape!.rings.map((ring) => Math.abs(ringArea(ring))).sort((a, b) => b - a);
    expect(left).toBeGreaterThan(2950);
    expect(right! / (64 * Math.PI)).toBeCloseTo(1, 1);
  });

  it('should leave out specks and pinholes under a size, and nothing else', () => {
    const picture = drawn('<rect x="10" y="10" width="60" height="60"/><rect x="80" y="80" width="2" height="2"/><rect x="30" y="30" width="2" height="2" fill="#fff"/><rect x="50" y="50" width="4" height="4" fill="#fff"/>');
    expect(trace(picture, 'a.png', SETTINGS)).toMatchObject({ pieces: 2, holes: 2, specks: 0 });
    const clean = trace(picture, 'a.png', { ...SETTINGS, speckMm2: 8 });
    expect(clean).toMatchObject({ pieces: 1, holes: 1, specks: 2 });
    expect(Math.abs(areaOf(clean.shape!.rings))).toBeCloseTo(3600 - 16, 0);
  });

  it('should trace light on dark, and see-through paper as white', () => {
    const light = drawn('<rect width="100" height="100"/><circle cx="50" cy="50" r="30" fill="#fff"/>');
    const { shape } = trace(light, 'a.png', { ...SETTINGS, lightIsInk: true });
    expect(Math.abs(areaOf(shape!.rings)) / (Math.PI * 900)).toBeCloseTo(1, 2);
    const clear = new Resvg('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect x="2" y="2" width="4" height="4"/></svg>', {
      fitTo: { mode: 'width', value: 100 },
    }).render();
    const traced = trace(greyOf({ width: clear.width, height: clear.height, data: clear.pixels }), 'a.png', SETTINGS);
    expect(traced.shape).toMatchObject({ name: 'a', widthMm: 40, heightMm: 40 });
  });

  it('should say in a sentence when nothing is left, or nothing is drawn', () => {
    const blank: Grey = { width: 20, height: 20, values: new Uint8Array(400).fill(200) };
    expect(trace(blank, 'blank.png', SETTINGS).problems.map(({ message }) => message)).toEqual([
      'blank.png: the picture has only one grey; choose one with something drawn in it.',
    ]);
    const dot = drawn('<circle cx="50" cy="50" r="2"/>');
    expect(trace(dot, 'dot.png', { ...SETTINGS, speckMm2: 50 }).problems[0]?.message).toBe(
      'dot.png: nothing is left of it as ink; move the threshold, or leave out smaller specks only.',
    );
  });
});
