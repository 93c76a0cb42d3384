import { describe, expect, it } from 'vitest';
import { countOrders } from '../../../../src/engine/explore/search/order-count.ts';
import type { ExploreInput, ExploreSettings, OrderCount } from '../../../../src/engine/explore/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const SETTINGS: ExploreSettings = {
  seed: 'count',
  count: 1,
  order: true,
  recolour: true,
  palette: ['rust'],
  offsetRangeMm: 3,
  leaveOut: 2,
  bringIn: 2,
  holds: [],
  minDeltaE: 0.1,
};

function counted(input: ExploreInput): OrderCount {
  const search = countOrders(input);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

/** Every pull over every other, each in an ink of its own that lets all below show. */
function pile(pulls: number): ExploreInput {
  const drawer = rectDrawer(Array.from({ length: pulls }, (_, i) => [10 + i, 10 + i, 60, 60] as const));
  const inks = Array.from({ length: pulls }, (_, i) => ({
    ...drawer.inks[0]!,
    id: `ink${i}`,
    kx: Array.from({ length: 36 }, (_, band) => (band % pulls === i ? 0.3 : 0.02)),
    sx: Array.from({ length: 36 }, (_, band) => ((band * 7) % pulls === i ? 0.2 : 0.05)),
  }));
  return { drawer: { ...drawer, inks }, bench: inks.map((ink, i) => pull(i, ink.id)), explore: { ...SETTINGS, minDeltaE: 0 } };
}

describe('countOrders', () => {
  it('should count n! for a pile in which every order shows (Stanley 1973: complete graphs)', () => {
    expect(counted(pile(5))).toEqual({ pulls: 5, overlaps: 10, count: '120', oneByOne: true });
    expect(counted(pile(8))).toEqual({ pulls: 8, overlaps: 28, count: '40320', oneByOne: false });
  });

  it('should keep the holds where it counts one by one', () => {
    const input = pile(5);
    const holds = [{ kind: 'first', pull: 'p2' } as const];
    expect(counted({ ...input, explore: { ...input.explore, holds } }).count).toBe('24');
  });

  it('should count the stack as it is, whatever caps and inks ask of prints', () => {
    const input = pile(5);
    const conditions = { maxPulls: 3, maxInks: 2, inkFirst: 'ink4', neverOver: [['ink0', 'ink1']] as [string, string][] };
    expect(counted({ ...input, explore: { ...input.explore, ...conditions } }).count).toBe('120');
  });

  it('should count 1 where no order shows', () => {
    const drawer = rectDrawer([
      [0, 0, 20, 20],
      [50, 0, 20, 20],
      [100, 0, 20, 20],
    ]);
    expect(counted({ drawer, bench: [0, 1, 2].map((i) => pull(i, 'tar')), explore: SETTINGS }).count).toBe('1');
  });

  it('should tell bounds where there are more than can be counted', () => {
    // 80 boxes as large as a third of the sheet, thrown on it: a tangle that neither way of counting unties.
    const at = (i: number, times: number): number => ((i * times) % 97) / 97;
    const boxes = Array.from({ length: 80 }, (_, i) => [at(i + 1, 31) * 140, at(i + 1, 71) * 70, 60, 30] as const);
    const told = counted({
      drawer: rectDrawer(boxes),
      bench: boxes.map((_, i) => pull(i, i % 2 === 0 ? 'rust' : 'foam')),
      explore: SETTINGS,
    });
    expect(told).toMatchObject({ pulls: 80, count: null, oneByOne: false });
    expect(BigInt(told.least!) > 10n ** 20n && BigInt(told.least!) < BigInt(told.most!)).toBe(true);
  });

  // OEIS A048163 for 20 and 20, by Stirling numbers as in tests/engine/order/count: every bar crosses every other one.
  it('should count 20 bars across 20', () => {
    const bars = Array.from({ length: 40 }, (_, i) => (i < 20 ? ([0, i * 4.9, 200, 3] as const) : ([(i - 20) * 9.9, 0, 5, 100] as const)));
    const told = counted({ drawer: rectDrawer(bars), bench: bars.map((_, i) => pull(i, i < 20 ? 'rust' : 'foam')), explore: SETTINGS });
    let sum = 0n;
    let row = [1n];
    for (let n = 1; n <= 21; n++) row = Array.from({ length: n + 1 }, (_, k) => (row[k - 1] ?? 0n) + BigInt(k) * (row[k] ?? 0n));
    for (let k = 0, factorial = 1n; k <= 20; k++, factorial *= BigInt(k)) sum += (factorial * row[k + 1]!) ** 2n;
    expect(told).toMatchObject({ count: String(sum), oneByOne: false });
  });
});
