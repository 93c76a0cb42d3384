import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import { openPage, openStudio, type Studio } from '../harness.ts';
import { FIREFOX, Firefox } from './firefox.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

interface Wall {
  seed: string;
  cores: number;
  offsetRangeMm: number;
}

const WALLS: Wall[] = [
  { seed: 'Tide', cores: 1, offsetRangeMm: 0 },
  { seed: 'Tide', cores: 8, offsetRangeMm: 0 },
  { seed: 'Ebb and flow', cores: 4, offsetRangeMm: 3 },
];
/** Prints of each. */
const COUNT = 40;

/** Hangs walls one after another and gives the keys of their prints; runs in the page of any browser. */
async function keysOf({ walls, count }: { walls: Wall[]; count: number }): Promise<string[][]> {
  type Room = HTMLElement & { run: { variants: { key: string }[] }; find(): void };
  type Root = HTMLElement & { store: AppStore };
  const root = (): Root | null => document.querySelector('app-root') as unknown as Root | null;
  const room = (): Room | null | undefined => root()?.shadowRoot?.querySelector('wall-room') as unknown as Room | null;
  const ended = async (): Promise<void> => {
    // Two looks: a search that was just asked for may not have begun.
    for (let looks = 0; looks < 2; looks = room()?.dataset['state'] === 'done' ? looks + 1 : 0)
      await new Promise((wait) => setTimeout(wait, 200));
  };
  await ended();
  const found: string[][] = [];
  for (const { seed, cores, offsetRangeMm } of walls) {
    Object.defineProperty(Navigator.prototype, 'hardwareConcurrency', { get: () => cores, configurable: true });
    root()!.store.dispatch({ kind: 'set-explore', change: { seed, offsetRangeMm, count } });
    // A wall that would be the same is hung again.
    room()!.find();
    await ended();
    found.push(room()!.run.variants.map(({ key }) => key));
  }
  return found;
}

describe('a wall', () => {
  it('should hang the same prints with any number of cores, after a reload, and in Firefox where that is installed', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    const here = await page.evaluate(keysOf, { walls: WALLS, count: COUNT });
    expect(here.map((keys) => keys.length)).toEqual(WALLS.map(() => COUNT));
    expect(here[1]).toEqual(here[0]);
    expect(here[2]).not.toEqual(here[0]);
    await page.reload();
    const [, , last] = WALLS;
    expect(await page.evaluate(keysOf, { walls: [last!], count: COUNT })).toEqual([here[2]]);
    await page.context().close();
    if (FIREFOX === undefined) return;
    const firefox = await Firefox.open();
    try {
      await firefox.goto(`${studio.url}#wall`);
      expect(await firefox.evaluate(keysOf, { walls: [WALLS[0]!, last!], count: COUNT })).toEqual([here[0], here[2]]);
    } finally {
      await firefox.close();
    }
  }, 600_000);
});
