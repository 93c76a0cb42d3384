import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, FEW, openPage, openStudio, type Studio, type WatchedPage } from '../harness.ts';

let studio: Studio;
let wide: WatchedPage;

beforeAll(async () => {
  studio = await openStudio();
  wide = await openPage(studio, undefined, { helpers: true });
});

afterAll(async () => {
  await studio?.close();
});

interface Hung {
  keys: string[];
  selected: number[];
  focused: number;
}

function hung(page: Page): Promise<Hung> {
  return page.locator('wall-view').evaluate((view) => {
    const { variants, selected, focused } = view as unknown as { variants: { key: string }[]; selected: Set<number>; focused: number };
    return { keys: variants.map(({ key }) => key), selected: [...selected], focused };
  });
}

async function wallOf(page: Page): Promise<Locator> {
  await page.goto(studio.url);
  await enter(page, 'Wall');
  const wall = page.locator('wall-room');
  await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
  return wall;
}

describe('a wall that one comes back to', () => {
  it('should hang as it hung, with its selection and without a search, after prints from one of its prints', async () => {
    const { page, errors } = wide;
    const wall = await wallOf(page);
    const surface = page.getByRole('application', { name: 'Wall of prints' });
    await surface.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press(' ');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press(' ');
    const before = await hung(page);
    expect(before.selected).toEqual([0, 2]);
    await page.getByRole('button', { name: 'More from this print' }).click();
    await page.getByRole('button', { name: 'Away from this' }).click();
    const fromOne = (): Promise<void> =>
      expect
        .poll(async () => [await wall.getAttribute('data-state'), await wall.getAttribute('data-asked')], { timeout: 60_000 })
        .toEqual(['done', '60']);
    await fromOne();
    await page.getByRole('button', { name: 'Back to all' }).click();
    // There is no state between: what hung hangs again with the next drawing.
    await expect.poll(() => hung(page)).toEqual(before);
    expect(await wall.getAttribute('data-state')).toBe('done');
    expect(await wall.getAttribute('data-found')).toBe(String(FEW));
    // Over a reload of the page as well, each wall with what is selected there.
    await page.keyboard.press('End');
    await page.getByRole('button', { name: 'More from this print' }).click();
    await page.getByRole('button', { name: 'Nearer to this' }).click();
    await fromOne();
    await surface.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press(' ');
    await page.reload();
    await fromOne();
    await expect.poll(async () => (await hung(page)).selected).toEqual([0]);
    await page.getByRole('button', { name: 'Back to all' }).click();
    await expect.poll(async () => (await hung(page)).selected, { timeout: 60_000 }).toEqual([0, 2]);
    expect((await hung(page)).keys).toEqual(before.keys);
    expect(errors).toEqual([]);
    await page.getByRole('button', { name: 'Select none' }).click();
  });

  it.each([
    [1440, 900],
    [390, 844],
  ])('should tell of problems beside all controls at %i × %i, and no longer than there is one', async (width, height) => {
    const { page, errors } = width === 1440 ? wide : await openPage(studio, { width, height });
    if (width !== 1440) await wallOf(page);
    await page.getByRole('application', { name: 'Wall of prints' }).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('d');
    const notice = page.locator('.notice');
    await expect.poll(() => notice.count()).toBe(1);
    const told = (await notice.boundingBox())!;
    for (const name of ['Select', 'Keep', 'Open on Bench', 'Whole wall']) {
      const button = page.getByRole('button', { name, exact: true });
      if (!(await button.isVisible())) continue;
      const box = (await button.boundingBox())!;
      expect(box.y + box.height <= told.y || box.y >= told.y + told.height, name).toBe(true);
    }
    await page.keyboard.press(' ');
    await expect.poll(() => notice.count()).toBe(0);
    await page.keyboard.press('d');
    await expect.poll(() => notice.count()).toBe(1);
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await expect.poll(() => notice.count()).toBe(0);
    expect(errors).toEqual([]);
    if (width !== 1440) await page.context().close();
  });

  // After those who count notices: keeping brings one of its own.
  it('should keep its keys after a click on a button of the rail or the line, and at a button reached by keys', async () => {
    const { page, errors } = wide;
    const surface = page.getByRole('application', { name: 'Wall of prints' });
    await surface.focus();
    await page.keyboard.press('Home');
    for (const name of ['Closer', 'Further', 'Whole wall', 'Select', 'Pin', 'Keep']) {
      await page.getByRole('button', { name, exact: true }).click();
      const { focused } = await hung(page);
      await page.keyboard.press('ArrowRight');
      await expect.poll(async () => (await hung(page)).focused, { message: name }).not.toBe(focused);
    }
    await page.getByRole('button', { name: 'Select none' }).click();
    await page.keyboard.press(' ');
    await expect.poll(async () => (await hung(page)).selected.length).toBe(1);
    // Who came to a button by keys stays there, and arrows still walk.
    await page.getByRole('button', { name: 'Closer', exact: true }).focus();
    const { focused } = await hung(page);
    await page.keyboard.press('ArrowLeft');
    await expect.poll(async () => (await hung(page)).focused).not.toBe(focused);
    expect(errors).toEqual([]);
    await page.getByRole('button', { name: 'Select none' }).click();
    await page.getByRole('button', { name: 'Whole wall' }).click();
  });

  it('should go with its project when another is opened from another room', async () => {
    const { page, errors } = wide;
    const wall = page.locator('wall-room');
    const count = page.getByLabel('How many');
    await count.fill((await count.inputValue()) === '900' ? '901' : '900');
    // Settings that are drawn anew meanwhile leave alone what is typed.
    await page.locator('wall-settings').evaluate(async (settings) => {
      (settings as unknown as { requestUpdate(): void }).requestUpdate();
      await (settings as unknown as { updateComplete: Promise<boolean> }).updateComplete;
    });
    await count.press('Enter');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('running');
    await enter(page, 'Chest');
    const left = await page.evaluate(async () => {
      const { store } = document.querySelector('app-root') as unknown as {
        store: { project: { seen?: unknown }; open(project: unknown): void };
      };
      const { seen: _, ...project } = store.project as { seen?: unknown; title: string };
      store.open({ ...project, title: 'Another' });
      return (store.project as { seen?: unknown[] }).seen?.length ?? 0;
    });
    expect(left).toBe(0);
    // A stopped run tells its end by itself; it must not tell it to this project.
    expect(await wall.getAttribute('data-state')).not.toBeNull();
    const run = await wall.evaluate((room) => {
      const { run } = room as unknown as { run: { state: string; variants: unknown[] } };
      return { state: run.state, prints: run.variants.length };
    });
    expect(run).toEqual({ state: 'idle', prints: 0 });
    expect(errors).toEqual([]);
  });
});
