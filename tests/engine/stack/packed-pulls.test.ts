import { describe, expect, it } from 'vitest';
import { PullPacker, unpackPrint } from '../../../src/engine/stack/packed-pulls.ts';
import { PullSlots } from '../../../src/engine/stack/pull-slots.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench } = smallProject();
const shifted = bench.map((pull, i): Pull => ({ ...pull, dxMm: 0.1 + 0.2 * i, dyMm: -0, turnDeg: 359.5, strokes: 3 }));
const many = Array.from({ length: 40 }, (_, i): Pull => ({
  id: `m${i}`,
  screen: `s${i % 3}`,
  ink: `s${i}`,
  dxMm: -i / 10,
  dyMm: i,
  turnDeg: -90,
  strokes: 1,
}));

describe('packed pulls', () => {
  it('should come out as they went in, field by field and in their order', () => {
    const prints = [bench, [], shifted, many];
    const packer = new PullPacker();
    for (const pulls of [many, ...prints.toReversed()]) packer.add(pulls);
    packer.take();
    for (const pulls of prints) packer.add(pulls);
    const packed = packer.take();
    expect(prints.map((_, i) => unpackPrint(packed, i))).toEqual(prints);
    // A kept recipe is known by the text of its pulls.
    expect(JSON.stringify(unpackPrint(packed, 0))).toBe(JSON.stringify(bench));
  });
});

describe('PullSlots', () => {
  it('should keep every stack whole while others come, go and are longer', () => {
    const slots = new PullSlots();
    const stacks = [bench, shifted, many];
    const kept = new Map<number, readonly Pull[]>();
    for (let i = 0; i < 200; i++) {
      const stack = stacks[(i * i) % 3]!.slice(i % 2);
      const slot = slots.keep(stack);
      expect(kept.has(slot)).toBe(false);
      kept.set(slot, stack);
      const [first] = kept.keys();
      if (i % 3 === 1) kept.delete(first!);
      if (i % 6 === 1) slots.drop(first!);
      else if (i % 6 === 4) slots.take(first!);
    }
    for (const [slot, stack] of kept) expect(slots.take(slot)).toEqual(stack);
  });
});
