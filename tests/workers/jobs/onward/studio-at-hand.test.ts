import { describe, expect, it } from 'vitest';
import { StudioAtHand } from '../../../../src/workers/jobs/onward/studio-at-hand.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer } = smallProject();

describe('StudioAtHand', () => {
  it('should keep a studio, and what is known of it, for copies of it', () => {
    const hand = new StudioAtHand();
    const first = hand.of(structuredClone(drawer));
    expect(hand.of(structuredClone(drawer))).toBe(first);
  });

  it.each<[string, (copy: typeof drawer) => unknown]>([
    ['a point of a shape', ({ shapes: [shape] }) => (shape!.rings[0]![0]! += 0.1)],
    ['a band of an ink', ({ inks: [ink] }) => ((ink!.kx as number[])[3]! += 1e-6)],
    ['an ink less', ({ inks }) => (inks as unknown[]).pop()],
    ['a wish of the paper', ({ paper }) => Reflect.set(paper, 'widthMm', paper.widthMm + 1)],
  ])('should take a studio anew that differs in %s', (_, change) => {
    const hand = new StudioAtHand();
    const first = hand.of(structuredClone(drawer));
    const other = structuredClone(drawer);
    change(other);
    const found = hand.of(other);
    expect(found).not.toBe(first);
    expect(found.studio).toBe(other);
  });
});
