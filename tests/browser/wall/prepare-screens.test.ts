import { readFile } from 'node:fs/promises';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, FEW, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('which screens to have made', () => {
  it.each([
    [1440, 900],
    [390, 844],
  ])('should lead from selected prints to a prep list that the Drawer and the Wall know, at %i × %i', async (width, height) => {
    const { page, context, errors } = await openPage(studio, { width, height });
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('application', { name: 'Wall of prints' }).focus();
    await page.keyboard.press('Home');
    for (let i = 0; i < 5; i++) {
      await page.keyboard.press(' ');
      await page.keyboard.press('ArrowRight');
    }
    await page.getByRole('button', { name: 'Screens to make' }).click();
    const dialog = page.getByRole('dialog', { name: 'Which screens to make' });
    const told = dialog.getByText(/^With \d+ new screens/u);
    await expect.poll(() => told.textContent()).toMatch(/of 5 can be pulled\. No other choice of as many makes more possible\./u);

    // At the end of the slider all can be pulled; a budget of one screen less leaves some out.
    const count = dialog.getByRole('slider');
    const all = Number(await count.getAttribute('max'));
    await count.fill(String(all));
    await expect.poll(() => told.textContent()).toMatch(new RegExp(`^With ${all} new screens, 5 of 5 can be pulled`, 'u'));
    if (width < 1000) await dialog.getByText('At most').click();
    await dialog.getByLabel('New screens', { exact: true }).fill('-3');
    await dialog.getByLabel('New screens', { exact: true }).press('Enter');
    const refused = dialog.getByText('A budget of -3 cannot be kept; give 0 to 1000000000, or nothing.');
    await expect.poll(() => refused.count()).toBe(1);
    expect(await dialog.getByLabel('New screens', { exact: true }).inputValue()).toBe('-3');
    await dialog.getByLabel('New screens', { exact: true }).fill(String(all - 1));
    await dialog.getByLabel('New screens', { exact: true }).press('Enter');
    await expect.poll(() => told.textContent()).toMatch(new RegExp(`^With ${all - 1} new screens, [1-4] of 5 can be pulled`, 'u'));
    expect(await told.textContent()).toContain('More is beyond what you may spend.');
    const rows = dialog.getByRole('region', { name: 'Screens to have' }).getByRole('row');
    await expect.poll(() => rows.count()).toBe(all);
    const [pdf] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      dialog.getByRole('button', { name: 'Save as PDF' }).click(),
    ]);
    expect((await PDFDocument.load(await readFile(await pdf.path()))).getPageCount()).toBe(1);
    await dialog.getByRole('button', { name: 'Put on the prep list' }).click();
    await expect.poll(() => dialog.getByRole('button', { name: 'On the prep list' }).count()).toBe(1);
    // However many prints, the page ends below the list: what is for the ear alone does not lengthen it.
    await dialog.getByRole('checkbox', { name: `all ${FEW} of the wall` }).check();
    await expect.poll(() => dialog.getByRole('region', { name: 'What each print takes' }).getByRole('row').count()).toBeGreaterThan(FEW);
    const end = dialog.locator('.answer');
    const below = (box: { y: number; height: number } | null): number => (box === null ? Infinity : box.y + box.height);
    expect((await dialog.evaluate((page) => page.scrollHeight - page.scrollTop)) - below(await end.boundingBox())).toBeLessThan(2);
    await dialog.getByRole('checkbox', { name: `all ${FEW} of the wall` }).uncheck();
    // No prints chosen is told in one sentence.
    await dialog.getByRole('checkbox', { name: '5 selected' }).uncheck();
    await expect
      .poll(() => dialog.getByRole('alert').textContent())
      .toBe('No prints are chosen; select, pin or keep some, or take the whole wall.');
    await page.keyboard.press('Escape');

    await enter(page, 'Drawer');
    const list = page.getByRole('list', { name: 'Screens' });
    await expect.poll(() => list.getByText(/, to make$/u).count()).toBe(all - 1);
    expect(errors).toEqual([]);
    if (width < 1000) return context.close();
    await page.reload();
    await enter(page, 'Drawer');
    await expect.poll(() => list.getByText(/, to make$/u).count()).toBe(all - 1);
    await list.getByRole('button').first().click();
    const frame = page.getByLabel('The screen is');
    const before = await frame.inputValue();
    await frame.selectOption('made');
    await expect
      .poll(() => page.evaluate(() => (document.querySelector('app-root') as unknown as { store: { undoLabel: string } }).store.undoLabel))
      .toBe('say which screens are made');
    await page.getByRole('button', { name: 'Undo: say which screens are made' }).click();
    await expect.poll(() => frame.inputValue()).toBe(before);

    // What may be spent is the project's, and came back with the page.
    await enter(page, 'Wall');
    await page.getByRole('button', { name: 'Screens to make' }).click();
    await expect.poll(() => dialog.getByLabel('New screens', { exact: true }).inputValue()).toBe(String(all - 1));
    await dialog.getByLabel('Only screens at hand: made, or to make').check();
    await page.keyboard.press('Escape');
    await page.getByText('Which screens', { exact: true }).click();
    await expect.poll(() => page.locator('wall-screens').getByLabel('Only screens at hand: made, or to make').isChecked()).toBe(true);
    await expect.poll(() => page.locator('wall-screens').getByText('not at hand').count()).toBeGreaterThan(0);
    await expect.poll(() => page.getByText(new RegExp(`^${all - 1} of \\d+ screens are at hand\\.$`, 'u')).count()).toBe(1);
    type Room = HTMLElement & {
      run: { variants: { pulls: { screen: string }[] }[] };
      store: { project: { frames: { toMake: string[] } } };
    };
    const others = (): Promise<number> =>
      wall.evaluate((room, least) => {
        const { run, store } = room as Room;
        if (room.getAttribute('data-state') !== 'done' || run.variants.length < least) return Infinity;
        const there = new Set(store.project.frames.toMake);
        return run.variants.flatMap(({ pulls }) => pulls).filter(({ screen }) => !there.has(screen)).length;
      }, FEW / 2);
    await expect.poll(others, { timeout: 60_000 }).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
