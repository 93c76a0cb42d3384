import { describe, expect, it } from 'vitest';
import type { Act } from '../../src/components/acts.ts';
import { AppStore } from '../../src/components/app-store.ts';
import { smallProject } from '../helpers/small-project.ts';

function open() {
  const store = new AppStore(smallProject(), { save() {} });
  const trace: string[] = [];
  const act = (label: string, more: Partial<Act> = {}): void =>
    store.did({ label, undo: () => trace.push(`-${label}`), redo: () => trace.push(`+${label}`), ...more });
  const title = (text: string): boolean => store.dispatch({ kind: 'rename', title: text });
  return { store, trace, act, title };
}

describe('what was done beside the project', () => {
  it('should be taken back and done again in order, between the steps of the project', () => {
    const { store, trace, act, title } = open();
    act('tick 1');
    title('Ebb');
    act('tick 2');
    act('tick 3');
    title('Flood');
    const labels: (string | null)[] = [];
    for (let i = 0; i < 5; i++) {
      labels.push(store.actLabel ?? store.project.title);
      store.undo();
    }
    expect(labels).toEqual(['Flood', 'tick 3', 'tick 2', 'Ebb', 'tick 1']);
    expect(store.undoLabel).toBeNull();
    for (let i = 0; i < 5; i++) store.redo();
    expect(trace).toEqual(['-tick 3', '-tick 2', '-tick 1', '+tick 1', '+tick 2', '+tick 3']);
    expect(store.project.title).toBe('Flood');
    expect(store.redoLabel).toBeNull();
    store.undo();
    expect(store.undoLabel).toBe('tick 3');
  });

  it('should not be done again once something else was done, and leave with its visit', () => {
    const { store, trace, act, title } = open();
    let visit = 1;
    act('of the first visit', { stands: () => visit === 1 });
    act('week');
    store.undo();
    expect(store.redoLabel).toBe('week');
    title('Ebb');
    expect(store.redoLabel).toBeNull();
    store.undo();
    visit = 2;
    expect(store.undoLabel).toBeNull();
    store.undo();
    expect(trace).toEqual(['-week']);
  });

  it('should end a run of like changes: what comes after it is undone by itself', () => {
    const { store, act } = open();
    const nudge = (dxMm: number): boolean => store.dispatch({ kind: 'change-pull', pull: 'p1', change: { dxMm } });
    nudge(1);
    act('tick');
    nudge(2);
    store.undo();
    expect(store.project.bench[0]!.dxMm).toBe(1);
    expect(store.undoLabel).toBe('tick');
  });
});
