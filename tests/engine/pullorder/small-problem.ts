import type { Random } from '../../../src/engine/base/random.ts';
import type { PlanProblem } from '../../../src/engine/pullorder/types.ts';

/** A random problem small enough for the brute force: kinds share screens and inks, orders are partial. */
export function smallProblem(random: Random): PlanProblem {
  const screens = 1 + random.int(4);
  const inks = 1 + random.int(3);
  const offsets = 1 + random.int(2);
  const density = random.int(11);
  const sheets = 1 + random.int(4);
  return {
    sheets: Array.from({ length: sheets }, () => {
      const count = random.int(sheets > 2 ? 4 : 6);
      const pulls = Array.from({ length: count }, () => ({
        screen: `S${random.int(screens)}`,
        ink: `I${random.int(inks)}`,
        ...(random.chance(1, 2) ? { offset: random.chance(1, 2) ? '' : `O${random.int(offsets)}` } : {}),
      }));
      const overlaps: [number, number][] = [];
      for (let a = 0; a < count; a++) {
        for (let b = a + 1; b < count; b++) if (random.chance(density, 10)) overlaps.push([a, b]);
      }
      return { pulls, overlaps };
    }),
  };
}
