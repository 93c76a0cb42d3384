import { describe, expect, it } from 'vitest';
import { AppStore } from '../../../src/components/app-store.ts';
import { followWidening, widenedDeltaE } from '../../../src/components/ui/widening.ts';
import { printError } from '../../../src/engine/stack/print-error.ts';
import { smallProject } from '../../helpers/small-project.ts';

const rest = (): Promise<void> => new Promise((done) => setTimeout(done));

/** A store whose widening is asked of the engine at once. */
function widened() {
  const store = new AppStore(smallProject(), { save: () => undefined });
  const asked: number[] = [];
  const from = store.project.explore.minDeltaE;
  const { drawer, bench } = store.project;
  const error = printError({ pulls: bench }, drawer);
  store.dispatch({ kind: 'set-explore', change: { minDeltaE: widenedDeltaE(from, error), unwidenedDeltaE: from } });
  followWidening(store, async (project) => {
    const now = printError({ pulls: project.bench }, project.drawer);
    asked.push(now.mean);
    return now;
  });
  return { store, from, asked };
}

describe('followWidening', () => {
  it('should follow inks that are known better or worse later, as no step of undo', async () => {
    const { store, from, asked } = widened();
    await rest();
    const wide = store.project.explore.minDeltaE;
    expect(wide).toBeGreaterThan(from);
    const inks = store.project.drawer.inks.map((ink) => ({ ...ink, basis: 'measured' as const }));
    store.dispatch({ kind: 'change-inks', inks });
    const label = store.undoLabel;
    await rest();
    expect(store.project.explore.minDeltaE).toBeLessThan(wide);
    expect(store.project.explore.minDeltaE).toBe(widenedDeltaE(from, { mean: asked.at(-1)! }));
    expect(store.undoLabel).toBe(label);
    store.undo();
    await rest();
    expect(store.project.explore.minDeltaE).toBe(wide);
    store.undo();
    expect(store.project.explore.minDeltaE).toBe(from);
    expect(store.project.explore.unwidenedDeltaE).toBeUndefined();
  });

  it('should leave a number of one’s own alone', async () => {
    const { store, asked } = widened();
    await rest();
    store.dispatch({ kind: 'set-explore', change: { minDeltaE: 2.5 } });
    const before = asked.length;
    store.dispatch({ kind: 'set-trapping', trapping: { factor: 0.7 } });
    await rest();
    expect(store.project.explore).toMatchObject({ minDeltaE: 2.5 });
    expect(store.project.explore.unwidenedDeltaE).toBeUndefined();
    expect(asked.length).toBe(before);
  });
});
