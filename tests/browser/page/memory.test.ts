import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import { records } from '../databases.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** How many lists of pixels of over a million bytes the page holds, once what nothing leads to is gone. */
async function largePictures(page: Page): Promise<number> {
  const client = await page.context().newCDPSession(page);
  const { result } = await client.send('Runtime.evaluate', { expression: 'Uint8ClampedArray.prototype' });
  const { objects } = await client.send('Runtime.queryObjects', { prototypeObjectId: result.objectId! });
  const counted = await client.send('Runtime.callFunctionOn', {
    objectId: objects.objectId!,
    functionDeclaration: 'function () { return this.filter((each) => each.byteLength > 1e6).length; }',
    returnByValue: true,
  });
  await client.detach();
  return counted.result.value as number;
}

describe('recipes that are kept and removed', () => {
  it('should leave no more pictures behind than a stated number, though undo remembers them all', async () => {
    const { page, errors } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('application', { name: /wall/i }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
    await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['recipes']).toHaveLength(1);
    await enter(page, 'Chest');
    await page.locator('chest-print ps-picture').first().waitFor();
    const before = await largePictures(page);
    for (let i = 0; i < 40; i++) {
      await page.evaluate((i) => {
        const { store } = document.querySelector('app-root')! as unknown as { store: AppStore };
        const [kept] = store.project.recipes;
        store.dispatch({
          kind: 'keep-recipe',
          recipe: { ...kept!, id: `again-${i}`, title: `Again ${i}`, pulls: kept!.pulls.map((pull) => ({ ...pull })) },
        });
      }, i);
      await page
        .locator('chest-print')
        .filter({ has: page.getByLabel(`Again ${i}`) })
        .locator('ps-picture')
        .waitFor();
      await page.evaluate((i) => {
        const { store } = document.querySelector('app-root')! as unknown as { store: AppStore };
        store.dispatch({ kind: 'remove-recipe', recipe: `again-${i}` });
      }, i);
    }
    expect((await largePictures(page)) - before).toBeLessThanOrEqual(18);
    expect(errors).toEqual([]);
    await page.context().close();
  });
});
