import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, openPage, openStudio, type Studio, watch } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** Keeps a print of the wall and plans so many sheets of it. */
async function planned(page: Page, sheets: number): Promise<void> {
  await page.goto(studio.url);
  await enter(page, 'Wall');
  await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
  await page.getByRole('application', { name: /wall/i }).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('k');
  await enter(page, 'Press');
  const count = page.getByRole('spinbutton', { name: /^Sheets of/ });
  await expect.poll(() => count.count()).toBe(1);
  await count.fill(String(sheets));
  await count.press('Tab');
  await page.getByRole('button', { name: 'Find the pull order' }).click();
  await expect.poll(() => page.getByRole('button', { name: 'Print the pull sheet' }).isEnabled().catch(() => false), { timeout: 60_000 }).toBe(true);
}

describe('the log at the press', () => {
  it('should lose no tick that it has shown when the tab is killed', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planned(page, 4);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled', checked: true }).waitFor();
    // No goodbye: the renderer dies between two ticks.
    await press.getByRole('checkbox', { name: 'Sheet 4 pulled' }).click({ noWaitAfter: true });
    const died = page.waitForEvent('crash');
    const session = await context.newCDPSession(page);
    void session.send('Page.crash').catch(() => undefined);
    await died;
    await page.close();

    const again = await context.newPage();
    watch(again, studio, errors);
    await again.goto(studio.url);
    await enter(again, 'Press');
    await again.getByRole('button', { name: 'At the press' }).click();
    const back = again.getByRole('dialog', { name: 'At the press' });
    await back.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    expect(await back.getByRole('checkbox', { name: 'Sheet 3 pulled' }).getAttribute('aria-checked')).toBe('true');
    expect(await back.getByRole('checkbox', { name: 'Sheet 2 pulled' }).getAttribute('aria-checked')).toBe('false');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should note what went otherwise and undo it', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planned(page, 3);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('button', { name: 'Otherwise, sheet 2' }).click();
    const sheet = page.getByRole('dialog', { name: 'Sheet 2' });
    await sheet.getByLabel('Strokes').fill('3');
    await sheet.getByLabel('Off to the right, mm').fill('1.5');
    await sheet.getByLabel('A lucky accident: keep it').check();
    await sheet.getByRole('button', { name: 'Pulled like this' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: true }).waitFor();
    await press.getByText(/Sheet 2 must look like this now: 1 of \d+ pulls?, a lucky accident/).waitFor();
    await press.getByRole('img', { name: 'Sheet 2 as it must look now', exact: true }).waitFor();

    await press.getByRole('button', { name: 'Otherwise, sheet 3' }).click();
    await page.getByRole('dialog', { name: 'Sheet 3' }).getByRole('button', { name: 'Spoiled' }).click();
    await expect.poll(() => press.getByRole('checkbox', { name: 'Sheet 3 pulled' }).isDisabled()).toBe(true);

    await press.getByRole('button', { name: 'Otherwise, sheet 2' }).click();
    const happened = sheet.getByRole('list', { name: 'What happened to sheet 2' });
    expect(await happened.getByRole('listitem').first().textContent()).toMatch(/otherwise: 3 strokes, 1\.5 mm right/);
    await happened.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => happened.getByRole('listitem').count()).toBe(1);
    await sheet.getByRole('button', { name: 'Close' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: false }).waitFor();
    // Nothing reaches over the edge of a tablet or a phone.
    for (const width of [1024, 390]) {
      await page.setViewportSize({ width, height: 780 });
      expect(await press.evaluate((element) => element.scrollWidth <= element.clientWidth)).toBe(true);
    }
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('what is left of a visit', () => {
  it('should be planned anew, and a sheet as pulled be kept', async () => {
    const { page, context, errors } = await openPage(studio);
    await planned(page, 3);
    const headline = page.getByRole('status').filter({ hasText: /set-ups/ }).first();
    const before = Number(/(\d+) set-ups/.exec((await headline.textContent())!)![1]);
    const boxes = page.getByRole('checkbox', { name: /^Sheet \d+ pulled/ });
    for (const at of [0, 1, 2]) {
      await boxes.nth(at).click();
      await expect.poll(() => boxes.nth(at).isChecked()).toBe(true);
    }
    await page.getByRole('button', { name: 'Plan the rest around what is done' }).click();
    await expect
      .poll(async () => Number(/(\d+) set-ups/.exec((await headline.textContent().catch(() => '')) ?? '')?.[1]), { timeout: 60_000 })
      .toBe(before - 1);
    await expect.poll(() => page.getByRole('button', { name: 'Print the pull sheet' }).isEnabled().catch(() => false), { timeout: 60_000 }).toBe(true);

    const sheets = page.getByRole('list', { name: 'Sheets as pulled' });
    await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).fill('Box 4');
    await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).press('Tab');
    await page.getByRole('button', { name: 'Keep sheet 2 as a recipe' }).click();

    // The rest and the log are still there after a reload, and the recipe in the Chest.
    await page.reload();
    await expect.poll(() => sheets.getByText(/1 of \d+ pulls/).count().catch(() => 0), { timeout: 30_000 }).toBe(3);
    expect(await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).inputValue()).toBe('Box 4');
    expect(Number(/(\d+) set-ups/.exec((await headline.textContent())!)![1])).toBe(before - 1);

    // The log goes out as a file and comes back without doubling anything.
    const [saved] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the log as a file' }).click()]);
    const path = await saved.path();
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: 'Bring in another device’s log…' }).click()]);
    await chooser.setFiles({ name: 'tablet.log.json', mimeType: 'application/json', buffer: readFileSync(path) });
    await page.getByText('tablet.log.json: nothing new.').waitFor();

    await enter(page, 'Chest');
    await page.getByRole('listitem', { name: /sheet 2 as pulled/ }).waitFor();
    // The visit lies in the Chest with its sheets; following the print opens it.
    const visits = page.getByRole('region', { name: 'Visits' });
    await visits.getByLabel('Sheets of').selectOption({ index: 1 });
    await expect.poll(() => visits.getByRole('listitem', { name: /^Sheet \d/ }).count(), { timeout: 20_000 }).toBe(3);
    expect(await visits.getByRole('textbox', { name: 'Where sheet 2 lies' }).inputValue()).toBe('Box 4');
    await visits.getByRole('img', { name: 'Sheet 2 as pulled', exact: true }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('an edition', () => {
  it('should be numbered, documented and taken to the Press with its proofs', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
    await page.getByRole('application', { name: /wall/i }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
    await enter(page, 'Chest');
    await page.getByRole('button', { name: 'Edition…' }).click();
    const dialog = page.getByRole('dialog', { name: /^Edition of/ });
    await dialog.getByLabel('Artist’s proofs (AP)').fill('9');
    await dialog.getByText(/9 artist’s proofs are 45 % of the edition/).waitFor();
    await dialog.getByLabel('Artist’s proofs (AP)').fill('2');
    expect(await dialog.getByLabel('Numbering').textContent()).toMatch(/1\/20 .* 20\/20 · BAT · AP 1\/2 · AP 2\/2 · PP 1\/1$/);
    await dialog.getByLabel('Dates of printing').fill('3 to 5 May');
    await dialog.getByRole('button', { name: 'Print the documentation sheet' }).click();
    const sheet = page.frameLocator('iframe[title="Documentation sheet"]').locator('body');
    await expect.poll(() => sheet.textContent()).toMatch(/3 to 5 May[\s\S]*threads\/cm[\s\S]*1 stroke[\s\S]*not legal advice/);
    await dialog.getByRole('button', { name: 'Take 24 sheets to the Press' }).click();
    await page.getByText('24 sheets in all').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
