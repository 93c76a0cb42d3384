import { describe, expect, it } from 'vitest';
import { AppStore } from '../../../../src/components/app-store.ts';
import { OpenedStack } from '../../../../src/components/bench/picture/opened-stack.ts';
import { entryAt } from '../../../../src/engine/base/at.ts';
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
    store.dispatch({ kind: 'open-stack', pulls: [...store.project.bench].reverse(), print: { seed: 'slack tide', index: 11 } });
    expect(opened.name).toBe('slack tide 12');
    expect(opened.wallPrint).toEqual({ seed: 'slack tide', index: 11 });
    store.dispatch({ kind: 'change-pull', pull: 'p1', change: { strokes: 3 } });
    expect(opened.name).toBe('slack tide 12, changed');
    expect(opened.wallPrint).toBeNull();
    store.undo();
    expect(opened.name).toBe('slack tide 12');
  });

  it('should be of the print before again when opening another is undone, with its changes', () => {
    const { store, opened } = bench();
    const { bench: pulls } = store.project;
    store.dispatch({ kind: 'open-stack', pulls, print: { seed: 'slack tide', index: 11 } });
    store.dispatch({ kind: 'change-pull', pull: 'p1', change: { strokes: 3 } });
    store.dispatch({ kind: 'open-stack', pulls: [...pulls].reverse(), print: { seed: 'ebb', index: 2 } });
    expect(opened.name).toBe('ebb 3');
    store.undo();
    expect(opened.name).toBe('slack tide 12, changed');
    expect(opened.wallPrint).toBeNull();
    expect(opened.pulls).toEqual(pulls);
  });

  it('should leave out of the stack as it came what the drawer of a project read again lacks', () => {
    const { store, opened } = bench();
    const project = store.project;
    const gone = { ...entryAt(project.bench, 0), ink: 'gone' };
    store.open({ ...project, origin: { source: { kind: 'recipe', title: 'Ebb' }, pulls: [gone, ...project.bench.slice(1)] } });
    expect(opened.pulls).toEqual(project.bench.slice(1));
    expect(opened.name).toBe('Ebb, changed');
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
