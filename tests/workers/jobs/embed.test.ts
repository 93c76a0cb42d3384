import { describe, expect, it } from 'vitest';
import { embedSteps } from '../../../src/workers/jobs/embed.ts';

function embed(points: Float32Array, dimensions: number, seed: string): Float32Array {
  const steps = embedSteps(points, dimensions, seed);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** Two heaps of points far apart in six dimensions; whole numbers, so that no chance is needed. */
function heaps(count: number): Float32Array {
  return Float32Array.from({ length: count * 6 }, (_, i) => {
    const point = Math.floor(i / 6);
    return (point % 2) * 40 + (((point + 3) * ((i % 6) + 7) * 31) % 17) / 4;
  });
}

describe('embedSteps', () => {
  it('should give the same layout for the same seed', () => {
    expect(embed(heaps(60), 6, 'tide')).toEqual(embed(heaps(60), 6, 'tide'));
    expect(embed(heaps(60), 6, 'tide')).not.toEqual(embed(heaps(60), 6, 'ebb'));
  });

  it.each([60, 1500])('should keep two heaps of %i points apart', (count) => {
    const places = embed(heaps(count), 6, 'tide');
    const nearestIsOfOwn = Array.from({ length: 60 }, (_, i) => {
      let best = -1;
      let least = Infinity;
      for (let j = 0; j < count; j++) {
        const away = (places[i * 2]! - places[j * 2]!) ** 2 + (places[i * 2 + 1]! - places[j * 2 + 1]!) ** 2;
        if (j !== i && away < least) [least, best] = [away, j];
      }
      return best % 2 === i % 2;
    });
    expect(nearestIsOfOwn.filter((own) => own).length).toBeGreaterThanOrEqual(58);
    expect(places.every((place) => place >= 0 && place <= 1)).toBe(true);
  });

  it('should lay out even a few', () => {
    expect(embed(heaps(1), 6, 'tide').length).toBe(2);
    expect([...embed(heaps(3), 6, 'tide')].every(Number.isFinite)).toBe(true);
  });
});
