import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { DESCRIPTOR_LENGTH, descriptorDistance, descriptorText } from '../../../../src/engine/explore/look/descriptor.ts';
import { spreadOfWall } from '../../../../src/engine/explore/look/spread-of-wall.ts';

/** What a print looks like whose descriptor is 0 but for its first number. */
function look(first: number): string {
  return descriptorText(Uint8Array.from({ length: DESCRIPTOR_LENGTH }, (_, i) => (i === 0 ? first : 0)));
}

describe('spreadOfWall', () => {
  it('should be the mean of the distances to the nearest', () => {
    // By hand: to the nearest 30, 10, 10 and 100 steps, of which 1024 are 1.
    expect(spreadOfWall([look(0), look(30), look(40), look(140)])).toBe(Math.round((150 / 4 / 1024) * 1000) / 1000);
    expect(spreadOfWall([look(7), look(7)])).toBe(0);
    expect(spreadOfWall([look(7)])).toBeNull();
  });

  it('should measure as prints are picked by', () => {
    const random = randomFrom('spread');
    const all = Array.from({ length: 12 }, () => Uint8Array.from({ length: DESCRIPTOR_LENGTH }, () => random.int(256)));
    const nearest = all.map((a) => Math.min(...all.filter((b) => b !== a).map((b) => descriptorDistance(a, b))));
    const mean = nearest.reduce((sum, apart) => sum + apart, 0) / all.length;
    expect(spreadOfWall(all.map(descriptorText))).toBeCloseTo(mean, 3);
  });
});
