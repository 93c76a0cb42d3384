import { describe, expect, it } from 'vitest';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { freeSwaps, overlapsOf } from '../../../src/engine/order/overlaps.ts';
import { pull, rectDrawer } from './drawer.ts';

const OPTIONS = { toleranceMm: 0.05, minDeltaE: 1, minAreaMm2: 25 };
// Two inks that only absorb ('weed', 'dusk'), over each other on bare paper.
const two = rectDrawer([
  [0, 0, 100, 60],
  [50, 0, 100, 60],
]);
const absorbing = { pulls: [pull(0, 'weed'), pull(1, 'dusk')] };

describe('orders with trapping', () => {
  it('should let inks that only absorb change places without trapping only', () => {
    expect(freeSwaps(absorbing, two, OPTIONS)).toHaveLength(1);
    expect(groupOrders(absorbing, two, OPTIONS)).toMatchObject({ count: 1, pairs: [{ reason: 'absorb' }] });
    const trapped = { ...two, trapping: { factor: 0.7 } };
    expect(overlapsOf(absorbing, trapped, OPTIONS)).toHaveLength(1);
    expect(groupOrders(absorbing, trapped, OPTIONS)).toMatchObject({ count: 2, pairs: [{ reason: 'shows' }] });
  });

  it('should not say that they take the same light where they differ by little', () => {
    const trapped = { ...two, trapping: { factor: 0.999 } };
    expect(groupOrders(absorbing, trapped, OPTIONS)).toMatchObject({ count: 1, pairs: [{ reason: 'alike' }] });
  });

  it('should hold two films of one ink apart when they are not as thick', () => {
    const trapped = { ...two, trapping: { factor: 0.6 } };
    const pulls = [pull(0, 'weed'), pull(1, 'weed', { strokes: 3 })];
    expect(freeSwaps({ pulls }, two, OPTIONS)).toHaveLength(1);
    expect(overlapsOf({ pulls }, trapped, OPTIONS)).toHaveLength(1);
    expect(freeSwaps({ pulls: [pull(0, 'weed'), pull(1, 'weed')] }, trapped, OPTIONS)).toHaveLength(1);
  });
});
