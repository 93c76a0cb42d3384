import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { AppStore } from '../../src/components/app-store.ts';
import { entryAt } from '../../src/engine/base/at.ts';
import type { PlacedShape } from '../../src/engine/shapes/types.ts';
import { smallProject } from '../helpers/small-project.ts';

function open(): AppStore {
  return new AppStore(smallProject(), { save() {} });
}

function recolour(store: AppStore, ink: string): void {
  store.dispatch({ kind: 'change-pull', pull: 'p1', change: { ink } });
}

function inkOf(store: AppStore): string {
  return entryAt(store.project.bench, 0).ink;
}

function placed(store: AppStore): readonly PlacedShape[] {
  return entryAt(store.project.drawer.screens, 0).placed;
}

function place(store: AppStore, change: Partial<PlacedShape>): void {
  store.dispatch({ kind: 'change-screen', screen: 's1', placed: placed(store).map((one) => ({ ...one, ...change })) });
}

describe('a step of undo', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should take back one of three recolours that came 1.5 s apart', () => {
    const store = open();
    for (const ink of ['weed', 'foam', 'tar']) {
      recolour(store, ink);
      vi.advanceTimersByTime(1500);
    }
    store.undo();
    expect(inkOf(store)).toBe('foam');
    store.undo();
    expect(inkOf(store)).toBe('weed');
    store.undo();
    expect(inkOf(store)).toBe('rust');
    expect(store.undoLabel).toBeNull();
  });

  it('should take back a run of nudges without a rest at once', () => {
    const store = open();
    for (let i = 1; i <= 12; i++) {
      store.dispatch({ kind: 'change-pull', pull: 'p1', change: { dxMm: i / 10 } });
      vi.advanceTimersByTime(300);
    }
    store.undo();
    expect(entryAt(store.project.bench, 0).dxMm).toBe(0);
    expect(store.undoLabel).toBeNull();
  });

  it('should take back a drag, a turn, a size and a further shape one after the other, however quick they were', () => {
    const store = open();
    const start = placed(store);
    place(store, { xMm: 210, yMm: 190 });
    place(store, { xMm: 220 });
    place(store, { turnDeg: 30 });
    place(store, { scale: 1.5 });
    store.dispatch({
      kind: 'change-screen',
      screen: 's1',
      placed: [...placed(store), { shape: 'tall', xMm: 300, yMm: 300, turnDeg: 0, scale: 1 }],
    });
    const [one] = start;
    store.undo();
    expect(placed(store)).toEqual([{ ...one, xMm: 220, yMm: 190, turnDeg: 30, scale: 1.5 }]);
    store.undo();
    expect(placed(store)).toEqual([{ ...one, xMm: 220, yMm: 190, turnDeg: 30 }]);
    store.undo();
    expect(placed(store)).toEqual([{ ...one, xMm: 220, yMm: 190 }]);
    store.undo();
    store.undo();
    expect(placed(store)).toEqual(start);
  });

  it('should begin anew when another field of an ink is changed', () => {
    const store = open();
    const ink = entryAt(store.project.drawer.inks, 0);
    store.dispatch({ kind: 'change-ink', ink: { ...ink, name: 'Brick' } });
    store.dispatch({ kind: 'change-ink', ink: { ...ink, name: 'Brick', notes: 'two coats' } as typeof ink });
    store.undo();
    expect(entryAt(store.project.drawer.inks, 0)).toEqual({ ...ink, name: 'Brick' });
  });
});
