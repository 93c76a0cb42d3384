import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '../../src/components/rooms.ts';
import { enter, openPage, openStudio, type Studio } from './harness.ts';

/** What works in every room, as the list ends. */
const EVERYWHERE = ['Up and down, in a field of numbers', 'Ctrl or ⌘ and Z', '?'];

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the rooms', () => {
  it('should each open from the navigation with an address, and stay as they were left', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    const links = page.getByRole('navigation', { name: 'Rooms' }).getByRole('link');
    await expect.poll(() => links.allTextContents()).toEqual(ROOMS.map(({ label }) => label));
    for (const { label, element, address, help } of ROOMS) {
      await enter(page, label);
      await expect.poll(() => page.locator(element).isVisible()).toBe(true);
      expect(new URL(page.url()).hash).toBe(address);
      const link = page.getByRole('link', { name: label, exact: true });
      expect([await link.getAttribute('aria-current'), await link.getAttribute('title')]).toEqual(['page', help]);
      expect(await page.locator('main > :not(h1, [hidden])').count()).toBe(1);
    }
    expect(await page.locator('main > :not(h1)').count()).toBe(ROOMS.length);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should each have help that lists their keys, by a key and by a button', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    for (const { label, element, keys } of ROOMS) {
      await enter(page, label);
      await page.locator(element).waitFor();
      const list = page.getByRole('dialog', { name: `Help: ${label}` });
      await page.keyboard.press('?');
      await list.getByRole('button', { name: 'Keys', exact: true }).click();
      await expect.poll(() => list.locator('dt').allTextContents()).toEqual([...keys.map(([key]) => key), ...EVERYWHERE]);
      await page.keyboard.press('Escape');
      await expect.poll(() => list.isVisible()).toBe(false);
      await page.getByRole('button', { name: 'Help', exact: true }).click();
      await expect.poll(() => list.isVisible()).toBe(true);
      await list.getByRole('button', { name: 'Close' }).click();
      await expect.poll(() => list.isVisible()).toBe(false);
    }
    // Where it is typed it is a letter.
    await enter(page, 'Wall');
    const name = page.getByLabel('Name of the wall');
    await name.fill('');
    await name.press('?');
    expect(await name.inputValue()).toBe('?');
    expect(await page.getByRole('dialog', { name: 'Help: Wall' }).isVisible()).toBe(false);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should each open by its address', async () => {
    const { page, context, errors } = await openPage(studio);
    for (const { element, address } of ROOMS) {
      await page.goto(`${studio.url}${address}`);
      await page.reload();
      await page.locator(element).waitFor();
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should follow a link also when the page is drawn between the click and its hashchange', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#chest`);
    await page.locator('chest-room').waitFor();
    await page.evaluate(async () => {
      const root = document.querySelector('app-root')!;
      document.querySelector('app-root')!.shadowRoot!.querySelector<HTMLAnchorElement>('nav a[href="#press"]')!.click();
      root.requestUpdate();
      await root.updateComplete;
    });
    await expect.poll(() => page.locator('press-room').isVisible()).toBe(true);
    expect(new URL(page.url()).hash).toBe('#press');
    // And back, by the browser's own button.
    await page.goBack();
    await expect.poll(() => page.locator('chest-room').isVisible()).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
