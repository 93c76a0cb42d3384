import type { CDPSession, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { itInChromium, openStudio, type Studio, watch } from '../harness.ts';
import { planSmallVisit } from '../visit/small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** A tablet at the press with a visit of six sheets, a proof and an over. */
async function atPress() {
  const context = await studio.browser.newContext({ viewport: { width: 1024, height: 768 }, hasTouch: true });
  const page = await context.newPage();
  const errors: string[] = [];
  watch(page, studio, errors);
  await planSmallVisit(page, studio, 6);
  return { page, context, errors, touch: await context.newCDPSession(page) };
}

/** A finger on the middle of something, as the browser itself takes it. */
async function tap(touch: CDPSession, on: Locator): Promise<void> {
  await on.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = (await on.boundingBox())!;
  const point = { x: box.x + box.width / 2, y: box.y + box.height / 2, id: 1 };
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [point] });
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

const tile = (of: Locator, number: number): Locator => of.getByRole('checkbox', { name: `Sheet ${number} pulled`, exact: true });

/** Where every tile and button to tick stands on the page that is scrolled. */
function placesOf(press: Locator): Promise<string[]> {
  return press.locator('press-sheet-tiles li > button, press-sheet-tiles .all > button').evaluateAll((all) => {
    const first = all[0]!;
    const dialog = ((first.getRootNode() as ShadowRoot).host as HTMLElement).closest('dialog')!;
    return all.map((each) => {
      const { left, top, width, height } = each.getBoundingClientRect();
      return [each.getAttribute('aria-label'), left, top + dialog.scrollTop, width, height].join();
    });
  });
}

/** Goes on to the first set-up on whose tiles something speaks against a tick. */
async function goToDoubt(page: Page, press: Locator): Promise<void> {
  const doubt = press.locator('button.tick small.warn').filter({ hasText: /\S/ });
  const head = press.getByRole('heading', { level: 2 });
  for (;;) {
    const now = await head.innerText();
    if ((await doubt.count()) > 0) return;
    await press.getByRole('button', { name: 'Next', exact: true }).click();
    await expect.poll(() => head.innerText()).not.toBe(now);
    await page.waitForFunction(() => true);
  }
}

describe('ticks at the press by finger', () => {
  itInChromium('should move no tile, and ask where a sheet is not ready', async () => {
    const { page, context, errors, touch } = await atPress();
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await tile(press, 1).waitFor();

    // After a tick every tile lies where it lay, until the printer leaves the set-up.
    const before = await placesOf(press);
    for (const number of [1, 2]) {
      await tap(touch, tile(press, number));
      await expect.poll(() => tile(press, number).getAttribute('aria-checked')).toBe('true');
    }
    await press.getByRole('img', { name: 'Sheet 2 as it must look now', exact: true }).waitFor();
    expect(await placesOf(press)).toEqual(before);
    await tap(touch, press.getByRole('button', { name: 'The other 6 pulled' }));
    await press.getByText('Set-up 1 is done.').waitFor();
    expect(await placesOf(press)).toEqual(before);

    // Another pull over those films, which are wet: it is asked at the tile, and nothing moves for that either.
    await goToDoubt(page, press);
    const there = await placesOf(press);
    const question = press.getByRole('alertdialog');
    await tap(touch, tile(press, 1));
    await question
      .getByText(/^Sheet 1: /)
      .first()
      .waitFor();
    expect(await tile(press, 1).getAttribute('aria-checked')).toBe('false');
    expect(await placesOf(press)).toEqual(there);
    expect(errors).toEqual([]);
    await context.close();
  });

  itInChromium('should ask beside the grid too, and put an over in the place of a spoiled sheet in one step', async () => {
    const { page, context, errors, touch } = await atPress();
    const box = (number: number): Locator => page.getByRole('checkbox', { name: `Sheet ${number} pulled`, exact: true });
    await page.locator('press-set-up-card').scrollIntoViewIfNeeded();
    await tap(touch, page.locator('press-set-up-card').getByRole('button', { name: 'Tick all' }));
    await expect.poll(() => box(1).isChecked()).toBe(true);
    const card = page.locator('press-set-up-card');
    const question = card.getByRole('alertdialog');
    // Until a set-up asks: one of the next prints over the first.
    for (;;) {
      await card.getByRole('button', { name: 'Next', exact: true }).click();
      await tap(touch, box(1));
      const settled = async (): Promise<string> => ((await question.count()) > 0 ? 'asked' : (await box(1).isChecked()) ? 'ticked' : '');
      await expect.poll(settled).not.toBe('');
      if ((await settled()) === 'asked') break;
    }
    expect(await box(1).isChecked()).toBe(false);
    await tap(touch, question.getByRole('button', { name: 'Pulled all the same' }));
    await expect.poll(() => box(1).isChecked()).toBe(true);

    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('button', { name: 'Pulled differently, sheet 3' }).click();
    await page.getByRole('dialog', { name: 'Sheet 3' }).getByRole('button', { name: 'Spoiled, over 8 takes its place' }).click();
    await expect.poll(() => tile(press, 3).isDisabled()).toBe(true);
    await press.getByRole('button', { name: 'Leave the press' }).click();
    await page.getByText(/in place of sheet 3/).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
