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
  { seed: 'Tide', cores: 2, offsetRangeMm: 0 },
  { seed: 'Tide', cores: 8, offsetRangeMm: 0 },
  { seed: 'Ebb and flow', cores: 4, offsetRangeMm: 3 },
  { seed: 'Ebb and flow', cores: 2, offsetRangeMm: 3 },
];

/** Hangs walls one after another and gives the keys of their prints; runs in the page of any browser. */
async function keysOf(walls: Wall[]): Promise<string[][]> {
  type Room = HTMLElement & { run: { variants: { key: string }[] }; find(): void };
  const root = document.querySelector('app-root') as unknown as HTMLElement & { store: AppStore };
  const room = (): Room | null => root.shadowRoot!.querySelector('wall-room') as unknown as Room | null;
  const ended = async (): Promise<void> => {
    // Two looks: a search that was just asked for may not have begun.
    for (let looks = 0; looks < 2; looks = room()?.dataset['state'] === 'done' ? looks + 1 : 0)
      await new Promise((wait) => setTimeout(wait, 200));
  };
  await ended();
  const found: string[][] = [];
  for (const { seed, cores, offsetRangeMm } of walls) {
    Object.defineProperty(Navigator.prototype, 'hardwareConcurrency', { get: () => cores, configurable: true });
    root.store.dispatch({ kind: 'set-explore', change: { seed, offsetRangeMm, count: 60 } });
    // A wall that would be the same is hung again.
    room()!.find();
    await ended();
    found.push(room()!.run.variants.map(({ key }) => key));
  }
  return found;
}

describe('a wall', () => {
  it('should hang the same prints with any number of cores, and after a reload', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    await page.locator('wall-room').waitFor();
    const first = await page.evaluate(keysOf, WALLS);
    await page.reload();
    await page.locator('wall-room').waitFor();
    expect(await page.evaluate(keysOf, WALLS)).toEqual(first);
    expect(first.map((keys) => keys.length)).toEqual([60, 60, 60, 60]);
    expect(first[1]).toEqual(first[0]);
    expect(first[3]).toEqual(first[2]);
    expect(first[2]).not.toEqual(first[0]);
    await page.context().close();
  });

  it.skipIf(FIREFOX === undefined)(
    'should hang the same prints in Firefox as in Chromium',
    async () => {
      const { page } = await openPage(studio);
      await page.goto(`${studio.url}#wall`);
      await page.locator('wall-room').waitFor();
      const here = await page.evaluate(keysOf, WALLS);
      await page.context().close();
      const firefox = await Firefox.open();
      try {
        await firefox.goto(`${studio.url}#wall`);
        expect(await firefox.evaluate(keysOf, WALLS)).toEqual(here);
      } finally {
        await firefox.close();
      }
    },
    600_000,
  );
});
