import { describe, expect, it } from 'vitest';
import { AppStore } from '../../../../src/components/app-store.ts';
import { OpenedStack } from '../../../../src/components/bench/picture/opened-stack.ts';
import { smallProject } from '../../../helpers/small-project.ts';

function bench(): { store: AppStore; opened: OpenedStack } {
  const store = new AppStore(smallProject(), { save() {} });
  const opened = new OpenedStack(store);
  store.addEventListener('change', () => opened.follow());
  return { store, opened };
}

describe('OpenedStack', () => {
  it('should name a wall print as the Wall numbers it, and say when it was changed', () => {
    const { store, opened } = bench();
    store.dispatch({ kind: 'open-stack', pulls: [...store.project.bench].reverse() });
    store.origin = { seed: 'slack tide', index: 11 };
    expect(opened.name).toBe('slack tide 12');
    expect(opened.wallPrint).toEqual({ seed: 'slack tide', index: 11 });
    store.dispatch({ kind: 'change-pull', pull: 'p1', change: { strokes: 3 } });
    expect(opened.name).toBe('slack tide 12, changed');
    expect(opened.wallPrint).toBeNull();
    store.undo();
    expect(opened.name).toBe('slack tide 12');
  });

  it('should keep the stack as it came, with its drawer, while it is changed', () => {
    const { store, opened } = bench();
    const { bench: before, drawer } = store.project;
    store.dispatch({ kind: 'move-pull', pull: 'p1', to: 2 });
    store.dispatch({ kind: 'set-stroke-gain', strokeGain: 0.1 });
    expect(opened.pulls).toBe(before);
    expect(opened.drawer).toBe(drawer);
    expect(opened.changed).toBe(true);
  });

  it('should be called after the project when it came from no wall', () => {
    expect(bench().opened.name).toBe('Three rectangles');
  });
});
