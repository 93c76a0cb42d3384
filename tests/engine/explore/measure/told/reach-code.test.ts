import { describe, expect, it } from 'vitest';
import { CodeRoom } from '../../../../../src/engine/base/code/code-room.ts';
import { randomFrom } from '../../../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../../../src/engine/colour/lab.ts';
import { MOST_DELTA_E, ReachCode } from '../../../../../src/engine/explore/measure/told/reach-code.ts';

const room = new CodeRoom(['colour', 'reach'], (code, lists) => {
  const colour = lists.reals('colour');
  const reach = new ReachCode(code, colour.at(3));
  const { near, far } = reach.inAb(code.real(colour.at(1)), code.real(colour.at(2)));
  [reach.inL(colour.at(0)), near, far].forEach((value, i) => code.put(lists.reals('reach'), i, value));
});

/** How far the function says that a colour reaches: in L, in a and b, and there where a bluish one is among the two. */
function reachOf(lab: Lab, deltaE: number): [inL: number, near: number, far: number] {
  room.begin();
  const [colour, reach] = [room.realList('colour', 4), room.realList('reach', 3)];
  room.fit();
  room.reals.set([...lab, deltaE], colour);
  room.call();
  return [...room.reals.subarray(reach, reach + 3)] as [number, number, number];
}

describe('the reach of a colour', () => {
  it.each([0.1, 1, 8, 40])('should hold all that is within a difference of it, pairs up to %d apart', (far) => {
    const random = randomFrom(`reach ${far}`);
    const at = (least: number, most: number): number => least + ((most - least) * random.int(2 ** 30)) / 2 ** 30;
    let [held, most] = [0, 0];
    for (let i = 0; i < 4000; i++) {
      const one: Lab = [at(-2, 125), at(-110, 110), at(-120, 110)];
      const other = one.map((value) => value + at(-far, far)) as Lab;
      const deltaE = deltaE2000(one, other);
      if (deltaE > MOST_DELTA_E) continue;
      held++;
      const apart = Math.hypot(one[1] - other[1], one[2] - other[2]);
      for (const lab of [one, other]) {
        const [reachL, near, bluish] = reachOf(lab, deltaE);
        const [inL, inAb] = [(one[0] - other[0]) / reachL, apart / (one[2] < 0 || other[2] < 0 ? bluish : near)];
        most = Math.max(most, inL * inL + inAb * inAb);
      }
    }
    expect(held).toBeGreaterThan(50);
    expect(most).toBeLessThanOrEqual(1);
    // And not much more than that.
    expect(most).toBeGreaterThan(0.8);
  });
});
