import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '../../../src/components/rooms.ts';
import { enter, openStudio, type Studio } from '../harness.ts';

/** Source: WCAG 2.2, levels A and AA, as far as axe-core can tell them. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** The rules that a theme decides. */
const COLOURS: RunOptions['runOnly'] = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
/** A ticket of the state strip says in signs (2, ×1) what its name says in words (screen 2, 1 stroke): no text that could be spoken. */
const IN_SIGNS = /^label-content-name-mismatch: .*ps-state-strip \.state\[role="option"\]/;
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** Opens every fold that stands in the page. */
async function unfoldAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    const unfold = (root: ParentNode): void => {
      for (const fold of root.querySelectorAll('details')) fold.open = true;
      for (const { shadowRoot } of root.querySelectorAll('*')) if (shadowRoot !== null) unfold(shadowRoot);
    };
    unfold(document);
  });
}

/** What axe finds wrong, a line each. */
async function wrong(page: Page, rules: RunOptions['runOnly'] = TAGS): Promise<string[]> {
  // The page's own policy refuses scripts from elsewhere; axe comes in beneath it, as a debugger's would.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(
    (runOnly) => (window as unknown as { axe: { run(of: Document, how: object): Promise<AxeResults> } }).axe.run(document, { runOnly }),
    rules,
  );
  return violations
    .flatMap(({ id, nodes }) => nodes.map(({ target, html }) => `${id}: ${target.flat().join(' ')} ${html.slice(0, 100)}`))
    .filter((line) => !IN_SIGNS.test(line));
}

/** What a door leads to before its room is looked at: prints, pictures or groups that take a moment. */
async function ready(page: Page, room: (typeof ROOMS)[number]): Promise<void> {
  await page.locator(room.element).waitFor();
  if (room.id === 'wall') await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
}

describe.each([
  { colorScheme: 'light', width: 1440, height: 900 },
  { colorScheme: 'dark', width: 390, height: 844 },
  { colorScheme: 'light', width: 320, height: 640 },
] as const)('accessibility, $colorScheme at $width px', ({ colorScheme, width, height }) => {
  it('should leave nothing for axe to find in any room, folds open', { timeout: 240_000 }, async () => {
    const context = await studio.browser.newContext({ viewport: { width, height }, colorScheme, bypassCSP: true });
    const page = await context.newPage();
    await page.goto(studio.url);
    const found: string[] = [];
    for (const room of ROOMS) {
      await enter(page, room.label);
      await ready(page, room);
      await unfoldAll(page);
      found.push(...(await wrong(page)).map((line) => `${room.label}: ${line}`));
      // The other theme has the same page in other colours.
      await page.emulateMedia({ colorScheme: colorScheme === 'dark' ? 'light' : 'dark' });
      found.push(...(await wrong(page, COLOURS)).map((line) => `${room.label}, other theme: ${line}`));
      await page.emulateMedia({ colorScheme });
      expect(await page.title()).toMatch(new RegExp(`^${room.label} · `));
      expect(await page.getByRole('heading', { level: 1, name: room.label, exact: true }).count()).toBe(1);
    }
    expect(found).toEqual([]);
    await context.close();
  });
});

describe('skip link', () => {
  it('should be the first stop of Tab and lead into the room', async () => {
    const context = await studio.browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto(studio.url);
    await page.locator('wall-room').waitFor();
    await page.keyboard.press('Tab');
    const link = page.getByRole('link', { name: 'Skip to the Wall' });
    expect(await link.evaluate((element) => element.matches(':focus'))).toBe(true);
    await page.keyboard.press('Enter');
    expect(await page.locator('main').evaluate((element) => element.matches(':focus'))).toBe(true);
    expect(page.url()).toMatch(/#wall$/);
    await context.close();
  });
});
