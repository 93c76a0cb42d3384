import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '../../../src/components/rooms.ts';
import { openStudio, type Studio } from '../harness.ts';
import { openProject, orderFound, smallRecipeProject } from '../visit/small-visit.ts';
import { audit, equip, shownHeight, tooSmall, unfoldAll } from './audit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** Something that is opened in a room, and what of the page it then is. */
interface Opened {
  name: string;
  open(page: Page): Promise<unknown>;
  /** A dialog, which Escape shuts, where nothing is said. */
  of?: string;
  /** How many Escapes shut it and what it stands on; 1 where nothing is said. */
  deep?: number;
}

const press = (name: string | RegExp) => (page: Page) => page.getByRole('button', { name }).filter({ visible: true }).first().click();
const key = (name: string) => async (page: Page) => {
  await page.getByRole('application', { name: 'Wall of prints' }).focus();
  await page.keyboard.press(name);
};
const look = (way: string) => async (page: Page) => {
  await press(/^Films apart/)(page);
  await page.getByRole('button', { name: way, exact: true }).click();
};
const atPress = (name: RegExp) => async (page: Page) => {
  await press('At the press')(page);
  await press(name)(page);
};

const OPENED: Record<(typeof ROOMS)[number]['id'], readonly Opened[]> = {
  drawer: [
    { name: 'project menu', open: (page) => page.locator('project-menu button.open').click() },
    { name: 'keys', open: (page) => page.keyboard.press('?') },
  ],
  inks: [
    { name: 'a new ink', open: press('Add an ink'), of: 'add-ink' },
    { name: 'match', open: press('Match a colour'), of: 'match-ink' },
  ],
  wall: [
    { name: 'filter', open: press('Filter'), of: 'wall-filter' },
    { name: 'picture', open: key('s') },
    { name: 'compare', open: key('d') },
    { name: 'contact sheet', open: press('Contact sheet') },
    { name: 'screens to make', open: press('Screens to make') },
    { name: 'this or that', open: press('This one or that one?') },
    { name: 'what was taught', open: press('What was taught') },
  ],
  bench: [
    { name: 'pull', open: (page) => page.locator('ps-state-strip').getByRole('option').first().click(), of: 'bench-pull-panel' },
    { name: 'keep', open: press('Keep as recipe') },
    { name: 'veil', open: press('Find a veil') },
    { name: 'add', open: press('Add a pull') },
    { name: 'films apart', open: press(/^Films apart/) },
    { name: 'two prints', open: look('Two prints') },
    { name: 'from afar', open: look('From afar') },
    { name: 'what next', open: press(/^What next/) },
  ],
  chest: [{ name: 'edition', open: press('Edition…') }],
  press: [
    { name: 'at the press', open: press('At the press') },
    { name: 'differently', open: atPress(/^Pulled differently/), deep: 2 },
    { name: 'what next', open: atPress(/^What next/), deep: 2 },
    { name: 'takers', open: atPress(/^Which other sheets/), deep: 2 },
    { name: 'notes', open: atPress(/^Snap-off/), deep: 2 },
    { name: 'phone', open: press('On a phone…') },
  ],
  lesson: [
    { name: 'handout', open: press('Handout…') },
    { name: 'link', open: press('Link…') },
    { name: 'guess', open: press('Guess'), of: 'lesson-room' },
    { name: 'levels', open: press('Levels'), of: 'lesson-room' },
    { name: 'projector', open: press('Projector'), of: 'lesson-room' },
  ],
};

/** What makes a room show all it has. */
const FILL: Partial<Record<(typeof ROOMS)[number]['id'], (page: Page) => Promise<void>>> = {
  async wall(page) {
    await expect.poll(() => page.locator('wall-room').getAttribute('data-state')).toBe('done');
    await page.getByLabel('Arrange the prints').selectOption({ label: 'as I choose' });
    for (const name of ['Home', ' ', 'h', 'ArrowRight', ' ']) await key(name)(page);
  },
  async press(page) {
    const count = page.getByRole('spinbutton', { name: /^Sheets of/ });
    await count.fill('3');
    await count.press('Tab');
    await press('Find the pull order')(page);
    await orderFound(page);
    await page.getByLabel('What goes on paper').selectOption('set-up');
  },
  async lesson(page) {
    const pulls = page.getByRole('list', { name: /Pulls of the stack/ }).getByRole('checkbox');
    for (const at of [0, 1]) await pulls.nth(at).check();
    await expect
      .poll(() =>
        page
          .getByRole('button', { name: 'Handout…' })
          .isEnabled()
          .catch(() => false),
      )
      .toBe(true);
  },
};

/** What shows the prints of a room. */
const PRINTS: Partial<Record<(typeof ROOMS)[number]['id'], string>> = {
  wall: 'wall-surface',
  bench: 'bench-picture',
  lesson: 'ps-lesson-board ps-lesson-sheet',
};

/** A room as it stands with its folds open, and all that is opened in it. */
async function auditRoom(page: Page, room: (typeof ROOMS)[number]): Promise<string[]> {
  // Loaded anew, the page holds no other room: axe walks all of a page, also for a part of it.
  await page.goto(`${studio.url}${room.address}`);
  await page.reload();
  await equip(page);
  await page.locator(room.element).waitFor();
  await FILL[room.id]?.(page);
  await unfoldAll(page);
  expect(await page.title()).toMatch(new RegExp(`^${room.label} · `));
  expect(await page.getByRole('heading', { level: 1, name: room.label, exact: true }).count()).toBe(1);
  const found = await audit(page, room.label);
  const print = PRINTS[room.id];
  if (print !== undefined) {
    // At 400 % a print is still seen: 150 px is common sense, no source.
    await page.setViewportSize({ width: 320, height: 256 });
    await expect.poll(() => shownHeight(page, print)).toBeGreaterThan(150);
    await page.setViewportSize({ width: 1440, height: 900 });
  }
  for (const { name, open, of = 'dialog[open]', deep = 1 } of OPENED[room.id]) {
    await open(page);
    await unfoldAll(page);
    found.push(...(await audit(page, `${room.label}, ${name}`, of)));
    if (name === 'at the press') found.push(...(await tooSmall(page, of)));
    if (of === 'dialog[open]') for (let i = 0; i < deep; i++) await page.keyboard.press('Escape');
    else if (name === 'filter') await open(page);
  }
  return found;
}

describe('accessibility', () => {
  it('should leave nothing to find in any room, dialog or fold', { timeout: 240_000 }, async () => {
    const context = await studio.browser.newContext({ viewport: { width: 1440, height: 900 }, colorScheme: 'light', bypassCSP: true });
    // A window that fills the screen cannot be made narrower.
    await context.addInitScript(() => Reflect.deleteProperty(Element.prototype, 'requestFullscreen'));
    const page = await context.newPage();
    await openProject(page, studio, smallRecipeProject(), 'chest');
    await page.getByRole('dialog', { name: 'Project' }).waitFor({ state: 'hidden' });

    // The skip link is the first stop of Tab, the doors are the next, and it leads past them.
    await page.locator('chest-room').waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const link = page.getByRole('link', { name: 'Skip to the Chest' });
    await link.focus();
    await page.keyboard.press('Shift+Tab');
    const stops: string[] = [];
    for (let i = 0; i <= ROOMS.length; i++) {
      await page.keyboard.press('Tab');
      stops.push(await page.locator('app-root').evaluate((root) => root.shadowRoot!.activeElement!.textContent!));
    }
    expect(stops).toEqual(['Skip to the Chest', ...ROOMS.map(({ label }) => label)]);
    await link.press('Enter');
    expect(await page.locator('main').evaluate((element) => element.matches(':focus'))).toBe(true);
    expect(page.url()).toMatch(/#chest$/);

    const found: string[] = [];
    for (const room of ROOMS) found.push(...(await auditRoom(page, room)));
    expect(found).toEqual([]);
    await context.close();
  });
});
