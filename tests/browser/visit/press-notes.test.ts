import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStudio, type Studio, watch } from '../harness.ts';
import { planSmallVisit } from './small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('a set-up at the press', () => {
  it('should be noted, weighed and timed, and its figures be taken up by hand alone', async () => {
    const context = await studio.browser.newContext({ viewport: { width: 1024, height: 768 } });
    const page = await context.newPage();
    const errors: string[] = [];
    watch(page, studio, errors);
    await planSmallVisit(page, studio, 6);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    const tile = press.locator('button.tick').first();
    await tile.click();
    await expect.poll(() => tile.getAttribute('aria-checked')).toBe('true');

    await press.getByRole('button', { name: 'Snap-off, squeegee, ink used…' }).click();
    const notes = page.getByRole('dialog', { name: 'Set-up 1', exact: true });
    await notes.getByLabel('Snap-off, mm').fill('3.5');
    await notes.getByLabel('Register reached at the worst, mm').fill('0.4');
    await notes.getByLabel('Bucket before, g').fill('100');
    await notes.getByLabel('Bucket after, g').fill('200');
    await notes.getByRole('button', { name: 'Keep in the log' }).click();
    await expect.poll(() => notes.getByRole('alert').innerText()).toContain('cannot be heavier after than before');
    await notes.getByLabel('Bucket before, g').fill('400');
    await notes.getByRole('button', { name: 'Keep in the log' }).click();
    await expect.poll(() => press.getByText(/Last noted in .*snap-off 3\.5 mm, register within 0\.4 mm/).count()).toBe(1);

    await press.getByRole('button', { name: 'Leave the press' }).click();
    const register = page.getByRole('row', { name: /Register the table holds/ });
    await expect.poll(() => register.innerText()).toContain('1 set-up');
    expect(await page.getByText('Out of date').count()).toBe(0);
    await register.getByRole('button', { name: 'Take 0.4 mm' }).click();
    await expect.poll(() => register.innerText()).toContain('as yours');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => register.getByRole('button', { name: 'Take 0.4 mm' }).count()).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });
});
