import { describe, expect, it } from 'vitest';
import { firstPulls } from '../../../src/engine/project/first-pulls.ts';

describe('firstPulls', () => {
  it('should give each screen a pull, its ink in turn after those that lie already', () => {
    let made = 0;
    const pulls = firstPulls([{ id: 'a' }, { id: 'b' }, { id: 'c' }], [{ id: 'tar' }, { id: 'foam' }], 3, () => `p${made++}`);
    expect(pulls.map(({ id, screen, ink }) => [id, screen, ink])).toEqual([
      ['p0', 'a', 'foam'],
      ['p1', 'b', 'tar'],
      ['p2', 'c', 'foam'],
    ]);
    for (const pull of pulls) expect(pull).toMatchObject({ dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 });
  });
});
