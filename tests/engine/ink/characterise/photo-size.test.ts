import { createCanvas } from '@napi-rs/canvas';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { photoFault, photoSize } from '../../../../src/engine/ink/characterise/photo-size.ts';

const picture = (width: number, height: number, kind: 'png' | 'jpeg' | 'webp'): Uint8Array =>
  new Uint8Array(createCanvas(width, height).encodeSync(kind as 'png'));

describe('photoSize', () => {
  it.each(['png', 'jpeg', 'webp'] as const)('should read what another program wrote: %s', (kind) => {
    for (const [width, height] of [
      [1, 1],
      [640, 481],
      [3000, 17],
    ] as const) {
      expect(photoSize(picture(width, height, kind))).toEqual({ width, height });
    }
  });

  it('should read a GIF', () => {
    // The smallest GIF of GIF89a §18: 1 × 2, no colour table.
    expect(photoSize(Uint8Array.from([...'GIF89a'].map((sign) => sign.charCodeAt(0)).concat(1, 0, 2, 0, 0, 0, 0)))).toEqual({
      width: 1,
      height: 2,
    });
  });

  it('should give nothing, and no fault, for any other bytes and for such that end too soon', () => {
    expect(photoSize(new Uint8Array())).toBeNull();
    for (const kind of ['png', 'jpeg', 'webp'] as const) {
      expect(photoSize(picture(9, 9, kind).subarray(0, 14))).toBeNull();
    }
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.constantFrom(...(['png', 'jpeg', 'webp'] as const)), (bytes, kind) => {
        const whole = picture(5, 5, kind);
        const size = photoSize(Uint8Array.of(...whole.subarray(0, 12), ...bytes));
        expect(size === null || (size.width > 0 && size.height > 0)).toBe(true);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe('photoFault', () => {
  it('should refuse a PNG of some bytes that promises 3.6 GB', () => {
    const bytes = picture(1, 1, 'png');
    new DataView(bytes.buffer).setUint32(16, 30_000);
    new DataView(bytes.buffer).setUint32(20, 30_000);
    expect(photoFault(bytes)).toBe('the picture has 30000 × 30000 pixels, more than 150 million; scale it down and choose it again.');
  });

  it('should let a photo of any camera pass', () => {
    expect(photoFault(picture(4000, 300, 'jpeg'))).toBeNull();
  });
});
