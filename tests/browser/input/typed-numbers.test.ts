import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, openStudio, type Studio, watch } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** What the Drawer says in a language. */
const WORDS = {
  'en-GB': { screen: /^Screen \d+ Fenders\b/, left: 'From left, mm', fraction: '“1/2” is a fraction: write 0' },
  'de-DE': { screen: /^Sieb \d+ Fenders\b/, left: 'Von links, mm', fraction: /„1\/2“ ist ein Bruch/ },
} as const;

async function openIn(locale: keyof typeof WORDS) {
  const context = await studio.browser.newContext({ viewport: { width: 1440, height: 900 }, locale });
  const page = await context.newPage();
  const errors: string[] = [];
  watch(page, studio, errors);
  await page.goto(`${studio.url}#drawer`);
  await page.getByRole('button', { name: WORDS[locale].screen }).click();
  const field = (name: string) => page.getByRole('spinbutton', { name, exact: true });
  const type = async (text: string, name: string = WORDS[locale].left): Promise<void> => {
    await field(name).fill(text);
    await field(name).press('Enter');
  };
  return { page, context, errors, field, type };
}

describe('typed numbers', () => {
  it.each([
    ['en-GB', '2.5', '−3'],
    ['de-DE', '2,5', '−3'],
  ] as const)('should take comma, point and minus, and refuse fractions, in %s', async (locale, shown, minus) => {
    const { page, context, errors, field, type } = await openIn(locale);
    const left = field(WORDS[locale].left);
    for (const text of ['2,5', '2.5']) {
      await type('40');
      await type(text);
      await expect.poll(() => left.inputValue()).toBe(shown);
    }
    await type('−3');
    await expect.poll(() => left.inputValue()).toBe(minus);
    await type('1/2');
    await page.getByRole('alert').filter({ hasText: WORDS[locale].fraction }).waitFor();
    expect(await left.inputValue()).toBe('1/2');
    await left.fill('12');
    await left.press('ArrowUp');
    await expect.poll(() => left.inputValue()).toBe(locale === 'en-GB' ? '12.1' : '12,1');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should show and take inches everywhere, keep mm, and remember it', async () => {
    const { page, context, errors, field, type } = await openIn('en-GB');
    await type('254');
    await page
      .getByRole('button', { name: /show inches/ })
      .first()
      .click();
    await expect.poll(() => field('From left, in').inputValue()).toBe('10');
    await type('2.5', 'From top, in');
    await page.reload();
    await enter(page, 'Drawer');
    await page.getByRole('button', { name: /^Screen \d+ Fenders\b/ }).click();
    await expect.poll(() => field('From top, in').inputValue()).toBe('2.5');
    await page
      .getByRole('button', { name: /show mm/ })
      .first()
      .click();
    await expect.poll(() => field('From top, mm').inputValue()).toBe('63.5');
    expect(await field('From left, mm').inputValue()).toBe('254');
    expect(errors).toEqual([]);
    await context.close();
  });
});
