import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readVisit } from '../../../src/engine/visitfile/visit-file.ts';
import { openPage, openStudio, type Studio } from '../harness.ts';
import { planSmallVisit } from './small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** The menu of the project. */
async function openMenu(page: Page) {
  await page.locator('project-menu').getByRole('button').first().click();
  return page.getByRole('dialog', { name: 'Project' });
}

async function savedVisit(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const menu = await openMenu(page);
  const [file] = await Promise.all([page.waitForEvent('download'), menu.getByRole('button', { name: 'Save as a file' }).click()]);
  const buffer = readFileSync(await file.path());
  await menu.getByRole('button', { name: 'Close' }).click();
  return { name: file.suggestedFilename(), mimeType: 'application/zip', buffer };
}

describe('a visit as a file', () => {
  it('should open on another device and go on there, with the ticks brought back before the first one here', async () => {
    const first = await openPage(studio);
    await planSmallVisit(first.page, studio, 4);
    const headline = await first.page
      .getByRole('status')
      .filter({ hasText: /set-ups/ })
      .first()
      .textContent();
    const fresh = await savedVisit(first.page);
    expect(readVisit(fresh.buffer, fresh.name).value!.made!.plan.cards.length).toBeGreaterThan(3);

    const tablet = await openPage(studio, { width: 1024, height: 768 });
    const { page } = tablet;
    await page.goto(`${studio.url}#press`);
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.message());
      void dialog.accept();
    });
    const menu = await openMenu(page);
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), menu.getByRole('button', { name: 'Open a file…' }).click()]);
    await chooser.setFiles(fresh);
    await expect
      .poll(
        () =>
          page
            .getByRole('status')
            .filter({ hasText: /set-ups/ })
            .first()
            .textContent()
            .catch(() => ''),
        { timeout: 30_000 },
      )
      .toBe(headline);
    // It asked first, and says what becomes of the open project.
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatch(/with \d+ set-ups\? The open project and its pull order go into the list of projects/);
    await page
      .getByRole('checkbox', { name: /^Sheet \d+ pulled/ })
      .first()
      .click();
    await page
      .getByRole('checkbox', { name: /^Sheet \d+ pulled/, checked: true })
      .first()
      .waitFor();
    const ticked = await savedVisit(page);
    expect(readVisit(ticked.buffer, ticked.name).value!.log!.events).toHaveLength(1);

    // Back at the first device nothing is ticked yet; the tablet's tick comes in all the same.
    expect(await first.page.getByRole('checkbox', { name: /^Sheet \d+ pulled/, checked: true }).count()).toBe(0);
    const [back] = await Promise.all([
      first.page.waitForEvent('filechooser'),
      first.page.getByRole('button', { name: 'Bring in another device’s log…' }).click(),
    ]);
    await back.setFiles(ticked);
    await first.page
      .getByRole('checkbox', { name: /^Sheet \d+ pulled/, checked: true })
      .first()
      .waitFor();
    // Of the same file nothing is new.
    const [twice] = await Promise.all([
      first.page.waitForEvent('filechooser'),
      first.page.getByRole('button', { name: 'Bring in another device’s log…' }).click(),
    ]);
    await twice.setFiles(ticked);
    await first.page.getByText('nothing new').waitFor();
    expect([...first.errors, ...tablet.errors]).toEqual([]);
    await first.context.close();
    await tablet.context.close();
  });

  it('should bring back a log that this device does not have into the Chest', async () => {
    const first = await openPage(studio);
    await planSmallVisit(first.page, studio, 4);
    await first.page
      .getByRole('checkbox', { name: /^Sheet \d+ pulled/ })
      .first()
      .click();
    await first.page
      .getByRole('checkbox', { name: /^Sheet \d+ pulled/, checked: true })
      .first()
      .waitFor();
    const ticked = await savedVisit(first.page);
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#chest`);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in a log from its file…' }).click(),
    ]);
    await chooser.setFiles(ticked);
    await page.getByRole('heading', { name: 'Visits' }).waitFor();
    expect(errors).toEqual([]);
    await first.context.close();
    await context.close();
  });
});
