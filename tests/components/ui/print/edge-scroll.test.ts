import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EdgeScroll } from '../../../../src/components/ui/print/edge-scroll.ts';

/** A strip 800 px wide at 100 px, with room to scroll to 7000 px; whole pixels only, as some browsers keep. */
function strip(at: number) {
  let scrollLeft = at;
  return {
    getBoundingClientRect: () => ({ left: 100, right: 900 }),
    get scrollLeft() {
      return scrollLeft;
    },
    set scrollLeft(px: number) {
      scrollLeft = Math.max(0, Math.min(7000, Math.trunc(px)));
    },
  };
}

describe('EdgeScroll', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal('requestAnimationFrame', (run: (nowMs: number) => void) => setTimeout(() => run(performance.now()), 16));
    vi.stubGlobal('cancelAnimationFrame', (id: ReturnType<typeof setTimeout>) => clearTimeout(id));
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it.each([
    ['right', 880, 0, 7000],
    ['very edge of the right', 853, 0, 7000],
    ['left', 110, 7000, 0],
  ])('should go on to the end while a pointer is held still at the %s', (_edge, x, from, end) => {
    const scroller = strip(from);
    let moves = 0;
    const edge = new EdgeScroll(
      () => scroller as unknown as HTMLElement,
      () => moves++,
    );
    edge.hold(x);
    vi.runAllTimers();
    expect(scroller.scrollLeft).toBe(end);
    expect(moves).toBeGreaterThan(100);
  });

  it('should stand away from the edges, and when let go', () => {
    const scroller = strip(3000);
    const edge = new EdgeScroll(
      () => scroller as unknown as HTMLElement,
      () => {},
    );
    edge.hold(500);
    vi.runAllTimers();
    expect(scroller.scrollLeft).toBe(3000);
    edge.hold(890);
    edge.stop();
    vi.runAllTimers();
    expect(scroller.scrollLeft).toBe(3000);
  });
});
