import { beforeEach, describe, expect, it, vi } from 'vitest';
import { WallPace } from '../../../../src/components/canvas/camera/wall-pace.ts';
import type { WallFrame } from '../../../../src/components/canvas/draw/print-drawing.ts';
import { WallPrints } from '../../../../src/components/canvas/draw/wall-prints.ts';

/** A drawing whose canvas is nothing but where events come. */
function drawing(name: string, prepare: (canvas: EventTarget) => void = () => {}) {
  const canvas = Object.assign(new EventTarget(), { name, setAttribute() {}, replaceWith() {} });
  const nothing = (): void => {};
  const heard = { clear: nothing, changed: nothing, addCloseUp: vi.fn(), draw: nothing, destroy: vi.fn() };
  return { canvas, ...heard, prepare: () => Promise.resolve(prepare(canvas)) };
}

/** What the graphics card is, one after the other. */
let cards: ReturnType<typeof drawing>[] = [];

vi.mock('../../../../src/components/canvas/draw/plain-drawing.ts', () => ({
  PlainDrawing: function PlainDrawing() {
    return drawing('page');
  },
}));
vi.mock('../../../../src/components/canvas/draw/wall-drawing.ts', () => ({ cardDrawing: () => Promise.resolve(cards.shift()) }));
vi.mock('../../../../src/components/canvas/draw/when-free.ts', () => ({
  coresFree: () => Promise.resolve(),
  nextTask: () => Promise.resolve(),
}));

const lose = (canvas: EventTarget): boolean => canvas.dispatchEvent(new Event('webglcontextlost'));

describe('a card that is taken away before it draws', () => {
  const told = { changed: vi.fn(), lost: vi.fn(), plain: vi.fn() };

  function prints(): WallPrints {
    const found = new WallPrints(new WallPace(() => {}), told);
    found.addCloseUp(3, {} as never);
    found.draw({} as WallFrame);
    return found;
  }

  beforeEach(() => {
    vi.clearAllMocks();
  });

  it('should leave the drawing to the page, and take over when it comes back', async () => {
    const [first, second] = [drawing('lost', lose), drawing('card')];
    cards = [first, second];
    const wall = prints();
    await wall.toCard();
    expect(wall.canvas).toMatchObject({ name: 'page' });
    expect(first.destroy).toHaveBeenCalledOnce();
    expect([told.changed, told.plain, told.lost].map(({ mock }) => mock.calls.length)).toEqual([1, 0, 0]);
    await wall.toCard();
    expect(wall.canvas).toMatchObject({ name: 'card' });
    // Finer pictures go with the one that takes over.
    expect(second.addCloseUp).toHaveBeenCalledWith(3, expect.anything());
    lose(second.canvas);
    expect(told.lost).toHaveBeenCalledWith(true);
  });

  it('should be told when it happens twice', async () => {
    cards = [drawing('lost', lose), drawing('lost', lose)];
    const wall = prints();
    await wall.toCard();
    await wall.toCard();
    await wall.toCard();
    expect(wall.canvas).toMatchObject({ name: 'page' });
    expect(told.plain).toHaveBeenCalledOnce();
    expect(told.plain.mock.calls[0]![0]).toMatchObject({ message: expect.stringContaining('twice') });
  });
});
