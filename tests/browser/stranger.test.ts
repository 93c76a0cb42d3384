import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, FEW, openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const layer = (number: number, rect: string) => ({
  name: `layer-${number}.svg`,
  mimeType: 'image/svg+xml',
  buffer: Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="500mm" viewBox="0 0 400 500"><rect ${rect}/></svg>`),
});

const LAYERS = [
  layer(10, 'x="40" y="60" width="200" height="300"'),
  layer(2, 'x="120" y="20" width="240" height="200"'),
  layer(1, 'x="0" y="300" width="400" height="120"'),
];

describe('someone with shapes of their own and nothing else', () => {
  it('should get from an empty drawer to a wall of them, in register', async () => {
    const { page, context, errors } = await openPage(studio, undefined, { helpers: true });
    page.on('dialog', (dialog) => void dialog.accept());
    await page.addInitScript(() => localStorage.removeItem('pullstack-first-steps'));
    await page.goto(studio.url);
    const steps = page.getByRole('complementary', { name: 'First steps' });
    await steps.getByText('First steps, 1 of 5').waitFor();
    await steps.getByRole('button', { name: 'Next step' }).click();
    await steps.getByRole('link', { name: 'Bench' }).waitFor();
    await steps.getByRole('button', { name: 'Close the first steps' }).click();
    expect(await steps.count()).toBe(0);
    await page.getByRole('button', { name: 'Help', exact: true }).click();
    const help = page.getByRole('dialog', { name: 'Help: Wall' });
    await help.getByRole('img').waitFor();
    await help.getByRole('button', { name: 'Words', exact: true }).click();
    await help.getByRole('searchbox', { name: 'Look for a word' }).fill('veil');
    await help.getByText(/^1 of \d+ words/u).waitFor();
    await help.getByRole('button', { name: 'Close' }).click();
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');

    await page.getByRole('button', { name: 'Slack tide' }).click();
    await page.getByRole('button', { name: 'New, empty' }).click();
    await enter(page, 'Wall');
    await expect.poll(() => wall.getAttribute('data-found'), { message: 'the demo prints come down' }).toBe('0');
    await page.getByRole('button', { name: 'To the Drawer' }).click();

    const chooser = page.waitForEvent('filechooser');
    await page
      .getByRole('button', { name: /Choose SVG files/ })
      .first()
      .click();
    await (await chooser).setFiles(LAYERS);
    const report = page.getByRole('status', { name: 'What the files came to' });
    await expect.poll(() => report.getByText('drawn on a page of 400 × 500 mm').count()).toBe(1);
    // Read in the order of their numbers, and laid where they were drawn: (560 − 400) ÷ 2 + 400 ÷ 2.
    await page.getByRole('button', { name: /^Screen 1 layer-1 / }).click();
    expect(await page.getByRole('spinbutton', { name: 'From left, mm' }).inputValue()).toBe('280');
    expect(await page.getByRole('spinbutton', { name: 'From top, mm' }).inputValue()).toBe('490');
    await page.getByRole('button', { name: 'Put all 3 on the Bench' }).click();

    await enter(page, 'Wall');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
    expect(Number(await wall.getAttribute('data-found'))).toBe(FEW);
    await page.getByRole('application', { name: 'Wall of prints' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await expect
      .poll(() =>
        page
          .getByRole('listbox', { name: /State strip/ })
          .getByRole('option')
          .count(),
      )
      .toBeGreaterThan(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
