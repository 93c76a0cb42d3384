import type { BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { records, retitle, titleOf } from './databases.ts';
import { enter, openPage, openStudio, type Studio } from './harness.ts';
import { openProject, smallRecipeProject } from './visit/small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const savedTitle = async (page: Page): Promise<unknown> => (await records(page, 'pullstack', 'sections'))['title'];
const strip = (page: Page) => page.getByRole('status', { name: 'Saving' });
const ELSEWHERE = /This project is open in another tab, which saves/;

/** How well the words of a button stand out. Source: WCAG 2.2, contrast ratio of relative luminances. */
function contrast(button: Locator): Promise<number> {
  return button.evaluate((element) => {
    const { color, backgroundColor } = getComputedStyle(element);
    const [words, ground] = [color, backgroundColor].map((colour) => {
      const [r, g, b] = colour.match(/\d+/g)!.map((part) => {
        const value = Number(part) / 255;
        return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r! + 0.7152 * g! + 0.0722 * b! + 0.05;
    });
    return Math.max(words! / ground!, ground! / words!);
  });
}

async function twoTabs(): Promise<{ context: BrowserContext; first: Page; second: Page }> {
  const { page: first, context } = await openPage(studio);
  await first.goto(`${studio.url}#chest`);
  await retitle(first, 'From the first');
  await expect.poll(() => savedTitle(first)).toBe('From the first');
  const second = await context.newPage();
  await second.goto(`${studio.url}#chest`);
  await strip(second).getByText(ELSEWHERE).waitFor();
  return { context, first, second };
}

/** Closes a tab as a user does, and gives whether it asked before. */
async function close(page: Page): Promise<boolean> {
  let asked = false;
  page.once('dialog', (dialog) => {
    asked = dialog.type() === 'beforeunload';
    void dialog.accept();
  });
  const closed = page.waitForEvent('close');
  await page.close({ runBeforeUnload: true });
  await closed;
  return asked;
}

describe('two tabs on one project', () => {
  it('should show in the second what the first saves, as it saves it, until something is changed there', async () => {
    const { context, first, second } = await twoTabs();
    await expect(strip(second).textContent()).resolves.toMatch(/what is changed there shows here/);
    expect(await contrast(strip(second).getByRole('button', { name: 'Save as a file' }))).toBeGreaterThan(4.5);
    await retitle(first, 'Seen from afar');
    await expect.poll(() => titleOf(second)).toBe('Seen from afar');
    await retitle(second, 'Of its own');
    await expect.poll(() => strip(second).textContent()).toMatch(/this tab no longer follows it/);
    await retitle(first, 'Not seen');
    await expect.poll(() => savedTitle(first)).toBe('Not seen');
    expect(await titleOf(second)).toBe('Of its own');
    await context.close();
  });

  it('should show the pull order of the first in the second, and keep to it after the first is closed', async () => {
    const { page: first, context } = await openPage(studio);
    await openProject(first, studio, smallRecipeProject(), 'press');
    await expect.poll(async () => (await records(first, 'pullstack', 'sections'))['recipes']).toHaveLength(1);
    const second = await context.newPage();
    await second.goto(`${studio.url}#press`);
    await strip(second).getByText(ELSEWHERE).waitFor();
    // A column for each sheet, so the grid tells one order from the other.
    const columns = (page: Page): Promise<number> => page.getByRole('region', { name: 'Set-up grid' }).getByRole('columnheader').count();
    const plan = async (sheets: string, before: number): Promise<number> => {
      await enter(first, 'Press');
      const count = first.getByRole('spinbutton', { name: /^Sheets of/ }).first();
      await count.fill(sheets);
      await count.press('Tab');
      await first.getByRole('button', { name: 'Find the pull order' }).click();
      await expect.poll(() => columns(first), { timeout: 60_000 }).toBeGreaterThan(before);
      return columns(first);
    };
    const three = await plan('3', 0);
    await expect.poll(() => columns(second), { timeout: 60_000 }).toBe(three);
    const seven = await plan('7', three);
    await expect.poll(() => columns(second), { timeout: 60_000 }).toBe(seven);
    await close(first);
    await expect.poll(() => strip(second).count()).toBe(0);
    expect(await columns(second)).toBe(seven);
    await second.reload();
    await expect.poll(() => columns(second), { timeout: 60_000 }).toBe(seven);
    await context.close();
  });

  it('should hand saving over to the second when the first closes, with what was saved there last', async () => {
    const { context, first, second } = await twoTabs();
    await retitle(first, 'Changed meanwhile');
    await expect.poll(() => savedTitle(first)).toBe('Changed meanwhile');
    expect(await strip(first).count()).toBe(0);
    expect(await close(first)).toBe(false);
    await expect.poll(() => titleOf(second)).toBe('Changed meanwhile');
    await expect.poll(() => strip(second).count()).toBe(0);
    await retitle(second, 'From the second');
    await expect.poll(() => savedTitle(second)).toBe('From the second');
    await second.reload();
    await expect.poll(() => titleOf(second)).toBe('From the second');
    await context.close();
  });

  it.each([
    ['Keep what is here', 'Edited in the second', 'From the first'],
    ['Take what the other tab saved', 'From the first', 'Edited in the second'],
  ])('should ask which goes on when the second has changes: %s', async (button, stays, aside) => {
    const { context, first, second } = await twoTabs();
    await retitle(second, 'Edited in the second');
    expect(await savedTitle(first)).toBe('From the first');
    await close(first);
    await strip(second)
      .getByText(/which one goes on\?/)
      .waitFor();
    expect(await savedTitle(second)).toBe('From the first');
    await strip(second).getByRole('button', { name: button }).click();
    await expect.poll(() => strip(second).count()).toBe(0);
    expect(await titleOf(second)).toBe(stays);
    await expect.poll(() => savedTitle(second)).toBe(stays);
    const heads = Object.values(await records(second, 'pullstack-kept', 'heads')) as { kind: string; title: string }[];
    expect(heads.filter(({ kind }) => kind === 'replaced').map(({ title }) => title)).toEqual([aside]);
    // From now on this tab saves.
    await retitle(second, 'And on');
    await expect.poll(() => savedTitle(second)).toBe('And on');
    await context.close();
  });

  it('should ask before the second closes with changes that are not saved, and only then', async () => {
    const { context, second } = await twoTabs();
    await retitle(second, 'Edited in the second');
    // Long after the notice has gone, the frame still says it.
    await second.waitForTimeout(8000);
    expect(await strip(second).getByText(ELSEWHERE).isVisible()).toBe(true);
    expect(await close(second)).toBe(true);
    await context.close();
  });
});
