import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** Source: WCAG 2.2, levels A and AA, as far as axe-core can tell them; and landmarks told apart by their names. */
const ALL = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  rules: { 'landmark-unique': { enabled: true }, 'landmark-one-main': { enabled: true } },
};
/** The rules that a theme decides. */
const COLOURS = { runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] } };
/** A ticket of the state strip says in signs (2, ×1) what its name says in words (screen 2, 1 stroke): no text that could be spoken. */
const IN_SIGNS = /^label-content-name-mismatch: .*ps-state-strip \.state\[role="option"\]/;
/** The last is 1280 px at 400 %, the least that WCAG 2.2, 1.4.10 (reflow) asks for. */
const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
  { width: 320, height: 256 },
];

/** What runs in the page: axe, and what finds elements in shadow roots. */
interface Tools {
  axe: { run(of: Element | Document, how: object): Promise<AxeResults> };
  deep(selector: string): Element[];
}

/** Puts the tools into the page, once a load: beneath its own policy, as a debugger's would come. */
export async function equip(page: Page): Promise<void> {
  await page.evaluate(AXE);
  await page.evaluate(() => {
    const deep = (selector: string, root: ParentNode = document): Element[] =>
      [...root.querySelectorAll('*')].flatMap((element) => [
        ...(element.matches(selector) && element.checkVisibility() ? [element] : []),
        ...(element.shadowRoot === null ? [] : deep(selector, element.shadowRoot)),
      ]);
    Object.assign(window, { deep });
  });
}

/** What axe finds wrong in the last element of a selector, or in the page; a line each. */
async function wrong(page: Page, selector: string, how: object): Promise<string[]> {
  const found = await page.evaluate(
    async ({ of, rules }) => {
      const { axe, deep } = window as unknown as Tools;
      const within = of === '' ? document : deep(of).at(-1);
      if (within === undefined) return [`nothing is ${of}`];
      const { violations } = await axe.run(within, { ...rules, resultTypes: ['violations'] });
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, html }) => `${id}: ${target.flat().join(' ')} ${html.slice(0, 100)}`),
      );
    },
    { of: selector, rules: how },
  );
  return found.filter((line) => !IN_SIGNS.test(line));
}

/** What is wider than the window, and so would have to be scrolled in two directions. */
async function tooWide(page: Page, selector: string): Promise<string[]> {
  return page.evaluate((of) => {
    const { deep } = window as unknown as Tools;
    const scrollers = of.startsWith('dialog') ? deep(of).slice(-1) : [document.documentElement, ...deep('main > :not(h1)')];
    return scrollers
      .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
      .map(({ localName, scrollWidth, clientWidth }) => `${localName} is ${scrollWidth} px wide in ${clientWidth}`);
  }, selector);
}

/** What a person's own few colours make invisible: swatches and bars that lose theirs, choices without a mark. */
async function lostInForcedColours(page: Page): Promise<string[]> {
  const swatches = () =>
    page.evaluate(() =>
      (window as unknown as Tools).deep('[style*="background"]').map((element) => {
        const { backgroundColor, backgroundImage } = getComputedStyle(element);
        return `${element.localName}.${element.className} ${backgroundColor} ${backgroundImage}`;
      }),
    );
  const before = await swatches();
  await page.emulateMedia({ forcedColors: 'active' });
  const after = await swatches();
  const unmarked = await page.evaluate(() =>
    (window as unknown as Tools)
      .deep(':is(button, [role="option"]):is([aria-pressed="true"], [aria-checked="true"], [aria-selected="true"]), .pick:has(:checked)')
      .filter((element) => [element, ...element.children].every((part) => getComputedStyle(part).outlineStyle === 'none'))
      .map((element) => `chosen without a mark: ${element.localName}.${element.className} ${element.textContent!.trim().slice(0, 40)}`),
  );
  await page.emulateMedia({ forcedColors: null });
  return [...before.filter((line, i) => after[i] !== line).map((line) => `loses its colour: ${line}`), ...unmarked];
}

/** All layouts have followed a change of the window. */
async function settled(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/**
 * Everything wrong with what the page shows, in three sizes of window; it is left at the first, in the light theme.
 * A room is looked at in both themes at either size; a part of one in the light theme on a desk and in the dark on a phone.
 * @param selector what of the page is looked at, the last of its kind; '' for the whole page
 */
export async function audit(page: Page, name: string, selector = ''): Promise<string[]> {
  const found: string[] = (await lostInForcedColours(page)).map((line) => `${name}, forced colours: ${line}`);
  for (const [at, size] of SIZES.entries()) {
    const where = `${name}, ${size.width} px`;
    await page.setViewportSize(size);
    if (at === 1) await page.emulateMedia({ colorScheme: 'dark' });
    await settled(page);
    // Names and roles at 400 % are those of a phone.
    if (at < 2) found.push(...(await wrong(page, selector, ALL)).map((line) => `${where}: ${line}`));
    if (at < 2 && selector === '') {
      // The other theme has the same page in other colours.
      await page.emulateMedia({ colorScheme: at === 0 ? 'dark' : 'light' });
      found.push(...(await wrong(page, selector, COLOURS)).map((line) => `${where}, other theme: ${line}`));
    }
    found.push(...(await tooWide(page, selector)).map((line) => `${where}: ${line}`));
  }
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize(SIZES[0]!);
  await settled(page);
  return found;
}

/** Opens every fold that stands in the page. */
export async function unfoldAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of (window as unknown as Tools).deep('details')) (fold as HTMLDetailsElement).open = true;
  });
}

/** Controls that are too small for a wet hand: less than 44 px either way, each with the label that stands for it. */
export async function tooSmall(page: Page, selector: string): Promise<string[]> {
  return page.evaluate((of) => {
    const { deep } = window as unknown as Tools;
    const root = deep(of).at(-1)!;
    const within = (node: Node | null): boolean =>
      node !== null && (node === root || within(node instanceof ShadowRoot ? node.host : node.parentNode));
    return deep('button, select, input, summary')
      .filter(within)
      .flatMap((control) => {
        const { width, height } = (control.closest('label') ?? control).getBoundingClientRect();
        return Math.min(width, height) >= 44 ? [] : [`${control.localName} ${control.textContent!.trim()}: ${width} × ${height} px`];
      });
  }, selector);
}

/** How high the part of an element is that the window can show at once, px. */
export async function shownHeight(page: Page, selector: string): Promise<number> {
  const box = await page.locator(selector).first().boundingBox();
  return Math.min(box?.height ?? 0, page.viewportSize()!.height);
}
