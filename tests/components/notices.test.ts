import { describe, expect, it, vi } from 'vitest';
import { AppStore } from '../../src/components/app-store.ts';
import { smallProject } from '../helpers/small-project.ts';

function open(): AppStore {
  return new AppStore(smallProject(), { save() {} });
}

const told = (store: AppStore): string[] => store.notices.map(({ text }) => text);

describe('notices of problems', () => {
  it('should leave with the next change that can be carried out, when one could not', () => {
    const store = open();
    expect(store.dispatch({ kind: 'change-pull', pull: 'nowhere', change: { ink: 'tar' } })).toBe(false);
    expect(store.notices).toHaveLength(1);
    expect(store.notices[0]).toMatchObject({ kind: 'problem' });
    expect(store.dispatch({ kind: 'change-pull', pull: 'p1', change: { ink: 'weed' } })).toBe(true);
    expect(store.notices).toEqual([]);
  });

  it('should stand once for each thing they are about, and leave when that is settled', () => {
    const store = open();
    store.trouble('wall', 'Select two to 12 prints.');
    store.trouble('wall', 'This print cannot be built up.');
    store.trouble('pull order', 'No order was found.');
    store.tell('Print 3 is in the Chest already.', 'news');
    expect(told(store)).toEqual(['This print cannot be built up.', 'No order was found.', 'Print 3 is in the Chest already.']);
    store.settled('wall');
    expect(told(store)).toEqual(['No order was found.', 'Print 3 is in the Chest already.']);
    store.settled('wall');
    expect(told(store)).toHaveLength(2);
  });

  it('should leave with a change a while after, when something was refused, and never when they tell of more', () => {
    vi.useFakeTimers({ toFake: ['performance'] });
    try {
      const store = open();
      store.refuse('shopping.txt is no project.');
      store.refuse('Nothing is chosen.', 'wall');
      store.tell('The visit could not be saved.');
      store.dispatch({ kind: 'change-pull', pull: 'p1', change: { ink: 'weed' } });
      expect(told(store)).toHaveLength(3);
      store.settled('wall');
      expect(told(store)).toHaveLength(2);
      store.refuse('Nothing is chosen.', 'wall');
      vi.advanceTimersByTime(10_000);
      store.undo();
      expect(told(store)).toEqual(['The visit could not be saved.']);
    } finally {
      vi.useRealTimers();
    }
  });

  it('should not go over to another project', () => {
    const store = open();
    store.trouble('pull order', 'No order was found.');
    store.tell('Saved.', 'news');
    store.open(smallProject());
    expect(told(store)).toEqual(['Saved.']);
  });
});
