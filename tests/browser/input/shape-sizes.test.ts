import { createCanvas } from '@napi-rs/canvas';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** An icon of 24 px, drawn 20 px wide and 10 px high, and the same in mm. */
const icon = (size: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="0 0 24 24"><path d="M2 7h20v10H2z"/></svg>`;

describe('drawings of no stated size', () => {
  it('should come large enough to be seen, take another size, and go back by one undo', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#drawer`);
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose SVG files…' }).click();
    await (
      await chooser
    ).setFiles([
      { name: 'icon.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(icon('24')) },
      { name: 'metric.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(icon('240mm')) },
    ]);
    const report = page.getByRole('status', { name: 'What the files came to' });
    const longest = report.getByLabel('Longest side, mm');
    await expect.poll(() => longest.inputValue()).toBe('100');
    await expect.poll(() => report.textContent()).toContain('One file gives no size in mm.');
    // The one that has a size keeps it: 200 of 240 mm.
    const printed = (name: string) => page.locator('screen-editor').getByText(name);
    await page.getByRole('button', { name: /^Screen \d+ icon /u }).click();
    await expect.poll(() => printed('Prints 100 × 50 mm').count()).toBe(1);
    await page.getByRole('button', { name: /^Screen \d+ metric /u }).click();
    await expect.poll(() => printed('Prints 200 × 100 mm').count()).toBe(1);
    await longest.fill('60');
    await longest.press('Enter');
    await page.getByRole('button', { name: /^Screen \d+ icon /u }).click();
    await expect.poll(() => printed('Prints 60 × 30 mm').count()).toBe(1);
    await page.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(() => printed('Prints 100 × 50 mm').count()).toBe(1);
    await expect.poll(() => longest.inputValue()).toBe('100');
    // As a screen draws it, 5.3 mm, it is told to be small.
    await report.getByRole('button', { name: 'As drawn on a screen, 5.3 mm' }).click();
    await expect.poll(() => report.textContent()).toContain('icon prints under 15 mm across');

    // A picture is traced; one that is none is told, and left out.
    const canvas = createCanvas(300, 200);
    const drawing = canvas.getContext('2d');
    drawing.fillStyle = '#eee';
    drawing.fillRect(0, 0, 300, 200);
    drawing.fillStyle = '#222';
    drawing.fillRect(50, 50, 200, 100);
    const pictures = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Trace a picture…' }).click();
    await (
      await pictures
    ).setFiles([
      { name: 'cut.png', mimeType: 'image/png', buffer: canvas.toBuffer('image/png') },
      { name: 'none.png', mimeType: 'image/png', buffer: Buffer.from('none') },
    ]);
    const tracing = page.getByRole('dialog', { name: 'Trace a picture' });
    await tracing.getByText(/^200 × 100 mm: 1 piece, 0 holes, /u).waitFor();
    await tracing.getByRole('button', { name: 'Make a shape of it' }).click();
    await tracing.getByText('none.png: the file cannot be read as a picture; choose a JPEG or PNG photo.').waitFor();
    await tracing.getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => printed('Prints 200 × 100 mm').count()).toBe(1);

    // A shape is drawn point by point with keys, and repeated.
    await page.getByRole('button', { name: 'Draw a shape…' }).click();
    const board = page.getByRole('dialog', { name: 'Draw a shape' });
    await board.getByRole('button', { name: 'Points', exact: true }).click();
    await board.locator('draw-board svg').focus();
    for (const keys of ['Enter', 'Shift+ArrowRight', 'Enter', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Enter'])
      await page.keyboard.press(keys);
    await board.getByText('10 × 20 mm, 3 points.').waitFor();
    await board.getByRole('button', { name: 'Make a shape of it' }).click();
    await page.getByRole('button', { name: 'Cut and join…' }).click();
    const cutting = page.getByRole('dialog', { name: 'Cut and join' });
    await cutting.getByLabel('What to do').selectOption('along');
    await cutting.getByText('From 10 × 20 mm to 85 × 20 mm, 6 pieces.').waitFor();
    await cutting.getByRole('button', { name: 'Replace the shape' }).click();
    await expect.poll(() => printed('Prints 85 × 20 mm').count()).toBe(1);
    await page.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(() => printed('Prints 10 × 20 mm').count()).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('white areas of a drawing', () => {
  it('should be a hole until another way is chosen, and that by one undo again', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#drawer`);
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose SVG files…' }).click();
    const drawing =
      '<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100"><rect width="100" height="100"/><rect x="20" y="20" width="60" height="60" fill="#fff"/><rect x="150" y="20" width="50" height="60" fill="white"/></svg>';
    await (await chooser).setFiles([{ name: 'pane.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(drawing) }]);
    const report = page.getByRole('status', { name: 'What the files came to' });
    const white = report.getByLabel('White in pane is');
    await expect.poll(() => white.inputValue()).toBe('paper');
    await page.getByRole('button', { name: /^Screen \d+ pane /u }).click();
    const printed = (words: string) => page.locator('screen-editor').getByText(words);
    // White beside it prints nothing: what is left is the square with its hole.
    await expect.poll(() => printed('Prints 100 × 100 mm').count()).toBe(1);
    const rings = (): Promise<number> =>
      page.locator('screen-editor path.face').evaluate((path) => path.getAttribute('d')!.split('M').length - 1);
    expect(await rings()).toBe(2);
    await white.selectOption('ink');
    await expect.poll(() => printed('Prints 200 × 100 mm').count()).toBe(1);
    await expect.poll(() => report.textContent()).toContain('its white areas are taken as ink');
    await white.selectOption('nothing');
    await expect.poll(() => printed('Prints 100 × 100 mm').count()).toBe(1);
    await expect.poll(rings).toBe(1);
    await page.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(() => printed('Prints 200 × 100 mm').count()).toBe(1);
    expect(await white.inputValue()).toBe('ink');
    expect(errors).toEqual([]);
    await context.close();
  });
});
