import { describe, it, expect } from 'vitest';
import { labD50, xyzD50, xyzD65 } from '../../../src/engine/colour/lab.ts';

describe('labD50', () => {
  it('should refuse another number of bands rather than give NaN', () => {
    for (const bands of [0, 31, 35, 37]) {
      for (const of of [labD50, xyzD50, xyzD65]) {
        expect(() => of(new Array(bands).fill(0.5))).toThrow(
          expect.objectContaining({ code: 'colour.bands', message: expect.stringContaining(`this one has ${bands}`) }),
        );
      }
    }
  });
});
