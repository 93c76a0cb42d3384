import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, SHOTS, type Studio } from '../harness.ts';

const KIT = fileURLToPath(new URL('../../../src/components/ui/kit', import.meta.url));
const PAGE = 'src/components/ui/kit.html';

/** States that show on the page beside the state of rest. */
const STATES: Record<string, string[]> = {
  'ps-number': ['steps', 'whole', 'disabled', 'problem'],
  'ps-select': ['grouped', 'disabled'],
  'ps-choice': ['disabled'],
  'ps-fold': ['open', 'ruled', 'set'],
  'ps-ink-chip': ['empty'],
  'ps-problem': [],
  'ps-empty': ['centred'],
  'ps-progress': ['busy', 'unstoppable'],
  'ps-key-list': [],
  dialog: [],
};

/** The sizes of type that the theme declares, as computed styles give them. */
const SIZES = [...readFileSync(`${KIT}/../theme.css`, 'utf8').matchAll(/--type-[a-z]+: (\d+px);/g)].map(([, size]) => size);

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
  mkdirSync(SHOTS, { recursive: true });
});

afterAll(async () => {
  await studio?.close();
});

describe('the kit', () => {
  it('should show every element in its states, in both themes and on a phone', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}${PAGE}`);
    await page.locator('ps-kit-page section').first().waitFor();

    const made = readdirSync(KIT).flatMap((name) => /@customElement\('([\w-]+)'\)/.exec(readFileSync(`${KIT}/${name}`, 'utf8'))?.[1] ?? []);
    const shown = await page.locator('section').evaluateAll((all) =>
      all.map((one) => ({
        name: one.getAttribute('data-kit'),
        states: [...one.querySelectorAll('figure')].map((figure) => ({
          name: figure.getAttribute('data-state'),
          // A name that no script knows has no inside of its own; a dialog is the browser's.
          whole: [...figure.querySelectorAll(one.getAttribute('data-kit')!)].some(
            (each) => each.shadowRoot !== null || each.matches('dialog'),
          ),
        })),
      })),
    );
    expect(shown.map(({ name }) => name).toSorted()).toEqual(['dialog', ...made.filter((name) => name !== 'ps-kit-page')].toSorted());
    for (const { name, states } of shown) {
      expect(states.map((state) => state.name)).toEqual(['rest', ...STATES[name!]!]);
      expect(states.every(({ whole }) => whole)).toBe(true);
    }

    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: `${SHOTS}/kit-${colorScheme}.png`, fullPage: true });
    }
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await page.screenshot({ path: `${SHOTS}/kit-phone.png`, fullPage: true });
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should use the sizes of the theme, and change its colours with it', async () => {
    const { page, context } = await openPage(studio);
    await page.goto(`${studio.url}${PAGE}`);
    await page.locator('ps-kit-page section').first().waitFor();
    const look = () =>
      page.evaluate(() => {
        const sizes = new Set<string>();
        const visit = (root: ParentNode): void => {
          for (const element of root.querySelectorAll('*')) {
            if (element.textContent?.trim() !== '') sizes.add(getComputedStyle(element).fontSize);
            if (element.shadowRoot !== null) visit(element.shadowRoot);
          }
        };
        visit(document.querySelector('ps-kit-page')!.shadowRoot!);
        return { sizes: [...sizes], ink: getComputedStyle(document.body).color, wall: getComputedStyle(document.body).backgroundColor };
      });
    expect(SIZES).toHaveLength(8);
    await page.emulateMedia({ colorScheme: 'light' });
    const light = await look();
    await page.emulateMedia({ colorScheme: 'dark' });
    const dark = await look();
    expect(light.sizes.filter((size) => !SIZES.includes(size))).toEqual([]);
    expect(light.ink).not.toBe(dark.ink);
    expect(light.wall).not.toBe(dark.wall);
    await context.close();
  });

  it('should give what is picked, refuse what is out of bounds, and let nothing be picked that is disabled', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}${PAGE}`);
    const copies = page.getByRole('spinbutton', { name: 'Copies, sheets', exact: true });
    const stepped = page.getByRole('spinbutton', { name: 'Copies, stepped' });
    await copies.fill('7');
    await copies.press('Tab');
    await expect.poll(() => stepped.inputValue()).toBe('7');
    await page.getByRole('button', { name: 'More' }).click();
    await expect.poll(() => copies.inputValue()).toBe('8');
    // A live field gives a number while it is typed, and puts back what it cannot hold.
    await stepped.fill('12');
    await expect.poll(() => copies.inputValue()).toBe('12');
    await stepped.fill('99');
    await stepped.press('Tab');
    await expect.poll(() => stepped.inputValue()).toBe('12');
    expect(await page.getByRole('alert').filter({ hasText: 'Give 1 to 20.' }).count()).toBe(1);
    expect(await page.getByRole('spinbutton', { name: 'Copies, not now' }).isDisabled()).toBe(true);

    // What is being typed outlives a redraw of the page around it; half a copy is refused.
    const whole = page.getByRole('spinbutton', { name: 'Copies, whole' });
    await whole.fill('2.5');
    await page.locator('ps-kit-page').evaluate(async (kit) => {
      const element = kit as HTMLElement & { requestUpdate(): void; updateComplete: Promise<boolean> };
      element.requestUpdate();
      await element.updateComplete;
      await new Promise(requestAnimationFrame);
    });
    expect(await whole.inputValue()).toBe('2.5');
    await whole.press('Tab');
    await page.getByRole('alert').filter({ hasText: 'Give a whole number from 1 to 20.' }).waitFor();
    expect(await copies.inputValue()).toBe('12');

    await page.getByRole('group', { name: 'Side', exact: true }).getByRole('button', { name: 'Rough' }).click();
    await expect.poll(() => page.getByLabel('Paper', { exact: true }).inputValue()).toBe('rough');
    expect(await page.getByRole('button', { name: 'None' }).isDisabled()).toBe(true);

    await page.locator('summary').filter({ hasText: 'Figures, ruled' }).click();
    // A fold hears of it by an event that the browser queues.
    await expect.poll(() => page.locator('ps-fold[ruled]').getAttribute('open')).toBe('');

    await page.getByRole('button', { name: 'Stop' }).first().click();
    await page.getByRole('status').filter({ hasText: 'Stopped.' }).waitFor();
    expect(await page.getByRole('progressbar', { name: 'Looking, nobody' }).getAttribute('value')).toBeNull();

    await page.getByRole('button', { name: 'Ask for a title' }).click();
    const dialog = page.getByRole('dialog', { name: 'Keep this print' });
    await dialog.waitFor();
    await page.screenshot({ path: `${SHOTS}/kit-dialog.png` });
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
