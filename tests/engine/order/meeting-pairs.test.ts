import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../src/engine/base/at-once.ts';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { surelyMeet } from '../../../src/engine/geometry/meet/surely-meet.ts';
import { dryingPairs, meetingPairs, overlapsOf, pairSteps, prepareStack } from '../../../src/engine/order/overlaps.ts';
import type { Shape } from '../../../src/engine/shapes/types.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { pullOf, screenAt, smallProject } from '../../helpers/small-project.ts';

const { drawer } = smallProject();

/** A star with a hole in it, of so many points; no word for its shape is needed, only many edges that lie near each other. */
function star(id: string, points: number): Shape {
  const ring = (far: number, near: number, way: 1 | -1): number[] =>
    Array.from({ length: 2 * points }, (_, i) => {
      const [turn, r] = [(way * Math.PI * i) / points, i % 2 === 0 ? far : near];
      return [60 + r * Math.cos(turn), 60 + r * Math.sin(turn)];
    }).flat();
  return { id, name: id, rings: [ring(60, 30, 1), ring(25, 15, -1)], fillRule: 'nonzero', widthMm: 120, heightMm: 120 };
}

/** Bars that share edges, or a strip of their ends: 0, 0.04, 0.05, 0.06 and 1 mm of it. */
const BARS: readonly Pull[] = [0, 100, 199.96, 299.91, 399.85, 498.85].map((x, i) =>
  pullOf(`b${i}`, 'bar', i % 2 === 0 ? 'rust' : 'foam', { dxMm: x }),
);

describe('pairs that meet', () => {
  it('should be those whose areas exact clipping finds, on stars with holes, off the sheet and at edges', () => {
    const random = randomFrom('stars');
    const shapes = [star('few', 5), star('many', 16), { ...star('bar', 4), rings: [[0, 0, 100, 0, 100, 20, 0, 20]] }];
    const screens = ['few', 'many', 'bar'].map((id, i) => screenAt(id, i + 1, id, 0, 0));
    const studio = { ...drawer, shapes, screens };
    const stars = Array.from({ length: 20 }, (_, i) =>
      pullOf(`s${i}`, random.pick(['few', 'many']), random.pick(['rust', 'foam', 'tar']), {
        dxMm: random.int(4000) / 10,
        dyMm: random.int(3000) / 10,
        turnDeg: random.int(8) * 11,
      }),
    );
    for (const toleranceMm of [0, 0.05]) {
      const stack = { pulls: [...stars, ...BARS] };
      const options = { toleranceMm, minDeltaE: 2 };
      const exact = dryingPairs(stack, studio, options).map(({ a, b }) => ({ a, b }));
      expect(exact.length).toBeGreaterThan(15);
      expect(meetingPairs(stack, studio, options)).toEqual(exact);
      const outlines = prepareStack(stack, studio);
      const sheet = { xMm: 0, yMm: 0, widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm };
      const sure = exact.filter(({ a, b }) => surelyMeet(outlines[a]!, outlines[b]!, { toleranceMm, within: sheet }));
      expect(sure.length).toBeGreaterThan(0.8 * exact.length);
      const { touching, mattering } = atOnce(pairSteps(stack, studio, options));
      expect(touching.map(({ a, b }) => ({ a, b }))).toEqual(exact);
      expect(mattering.map(({ a, b }) => [a, b])).toEqual(overlapsOf(stack, studio, options).map(({ a, b }) => [a, b]));
    }
  });
});
