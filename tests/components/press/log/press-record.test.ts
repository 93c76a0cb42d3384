import { describe, expect, it } from 'vitest';
import type { AppStore } from '../../../../src/components/app-store.ts';
import type { MadePlan } from '../../../../src/components/output/made-plan.ts';
import { PressKeeper, readRecord } from '../../../../src/components/press/log/press-record.ts';
import type { VisitHead } from '../../../../src/engine/log/types.ts';
import type { Recipe } from '../../../../src/engine/recipe/types.ts';

const recipe = (id: string, title: string): Recipe => ({ id, title, pulls: [] }) as unknown as Recipe;

function made(...recipes: Recipe[]): MadePlan {
  return { plan: { cards: [] }, recipes, input: { runs: recipes.map((each) => ({ recipe: each, sheets: 2 })) } } as unknown as MadePlan;
}

function head(...recipes: Recipe[]): VisitHead {
  return { id: 'v', title: 'Visit', begunMs: 0, recipes, sheets: [] };
}

/** A store that keeps what is saved as a database does: as a copy. */
function studio(recipes: Recipe[]): { store: AppStore; parts: Record<string, unknown> } {
  const parts: Record<string, unknown> = {};
  const saver = {
    openPress: () => Promise.resolve(structuredClone(parts)),
    savePress: (changed: Record<string, unknown>) => Promise.resolve(void Object.assign(parts, structuredClone(changed))),
  };
  return { store: { saver, project: { recipes } } as unknown as AppStore, parts };
}

describe('PressKeeper', () => {
  it('should bring a pull order and its visit back, with the recipes of the project', async () => {
    const kept = recipe('r1', 'Ebb');
    const { store } = studio([kept]);
    const keeper = new PressKeeper(store, (sentence) => expect.fail(sentence));
    keeper.keep(made(kept), head(kept));
    const record = await keeper.read();
    expect(record!.head.id).toBe('v');
    expect(record!.head.recipes[0]).toBe(kept);
    expect(record!.made.recipes[0]).toBe(kept);
    expect(record!.made.input.runs[0]!.recipe).toBe(kept);
  });
  it('should keep the recipe as it was planned when the project has changed it', async () => {
    const { store, parts } = studio([recipe('r1', 'Flood')]);
    const keeper = new PressKeeper(store, (sentence) => expect.fail(sentence));
    keeper.keep(made(recipe('r1', 'Ebb')), head(recipe('r1', 'Ebb')));
    expect(Object.keys(parts)).toContain('made');
    const record = await keeper.read();
    expect(record!.made.recipes[0]!.title).toBe('Ebb');
    expect(record!.made.recipes[0]).not.toBe(store.project.recipes[0]);
    // One object, so that a picture of it is drawn once.
    expect(record!.head.recipes[0]).toBe(record!.made.recipes[0]);
  });
  it('should say when an order cannot be kept', async () => {
    const told: string[] = [];
    const store = { saver: { savePress: () => Promise.reject(new Error('full')) }, project: { recipes: [] } } as unknown as AppStore;
    new PressKeeper(store, (sentence) => told.push(sentence)).keep(made(), head());
    await new Promise((resolve) => setTimeout(resolve));
    expect(told).toHaveLength(1);
  });
});

describe('a kept order that cannot be read', () => {
  async function toldOf(openPress: () => Promise<Record<string, unknown>>): Promise<string[]> {
    const told: string[] = [];
    const store = { saver: { openPress }, project: { recipes: [] } } as unknown as AppStore;
    expect(await new PressKeeper(store, (sentence) => told.push(sentence)).read()).toBeNull();
    return told;
  }
  const { store, parts } = studio([]);
  new PressKeeper(store, (sentence) => expect.fail(sentence)).keep(made(), head());

  it.each([
    ['of another version', { version: 1 }],
    ['half there', { head: null }],
    ['cut', { made: { plan: {} } }],
    ['no order', { made: 'x' }],
  ])('should be told when it is %s', async (_name, change) => {
    const told = await toldOf(() => Promise.resolve({ ...parts, ...change }));
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/pull order .* cannot be read.*find it anew.*Chest\.$/);
  });

  it('should be told when the browser does not give it out', async () => {
    expect(await toldOf(() => Promise.reject(new Error('locked')))).toHaveLength(1);
  });

  it('should not be told of where there was none', async () => {
    expect(await toldOf(() => Promise.resolve({}))).toEqual([]);
    new PressKeeper(store, (sentence) => expect.fail(sentence)).keep(null, null);
    expect(await toldOf(() => Promise.resolve(parts))).toEqual([]);
  });
});

describe('readRecord', () => {
  it('should bring back nothing from nothing or from another build', () => {
    expect(readRecord({}, [])).toBeNull();
    const { store, parts } = studio([]);
    new PressKeeper(store, (sentence) => expect.fail(sentence)).keep(made(), head());
    expect(readRecord(parts, [])).not.toBeNull();
    // One figure of a plan that is another now.
    const junk = { ...parts, made: { ...(parts['made'] as MadePlan), plan: { cards: [], mounts: 'many' } } };
    expect(readRecord(junk, [])).toBeNull();
    const { digest: _, ...before } = parts;
    expect(readRecord(before, [])).not.toBeNull();
    for (const change of [{ version: 0 }, { made: null }, { head: undefined }]) expect(readRecord({ ...parts, ...change }, [])).toBeNull();
  });
});
