import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawdownFromPhoto } from '../../src/engine/ink/characterise/drawdown-photo.ts';
import { filmBands, overFilm } from '../../src/engine/ink/film/film.ts';
import { openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const bands = Array.from({ length: 36 }, (_, band) => 380 + 10 * band);

/** One invented ink over an invented card, as an instrument writes it: tabs, quoted names, per cent. */
function measurements(value = (reflectance: number): string => (reflectance * 100).toFixed(3)): string {
  const film = filmBands(
    bands.map((nm) => 0.05 + 1.6 * Math.exp(-(((nm - 520) / 60) ** 2))),
    bands.map(() => 0.25),
  );
  const over = (ground: number): number[] =>
    Array.from(
      overFilm(
        film,
        bands.map(() => ground),
        new Float64Array(36),
      ),
    );
  const rows: [string, number[]][] = [
    ['Card white', bands.map(() => 0.86)],
    ['Card black', bands.map(() => 0.04)],
    ['Heron over white', over(0.86)],
    ['Heron over black', over(0.04)],
  ];
  const fields = ['SAMPLE_ID', 'SAMPLE_NAME', ...bands.map((nm) => `SPECTRAL_NM_${nm}`)];
  return [
    'CGATS.17',
    'ORIGINATOR "invented"',
    `NUMBER_OF_FIELDS ${fields.length}`,
    'BEGIN_DATA_FORMAT',
    fields.join('\t'),
    'END_DATA_FORMAT',
    `NUMBER_OF_SETS ${rows.length}`,
    'BEGIN_DATA',
    ...rows.map(([name, curve], i) => [i + 1, `"${name}"`, ...curve.map(value)].join('\t')),
    'END_DATA',
    '',
  ].join('\n');
}

const file = (name: string, text: string) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

describe('the inks', () => {
  it('should take a measured ink from a file, match a colour, keep the mix and find both again', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#inks`);
    const shelf = page.getByRole('list', { name: 'Inks', exact: true });
    await expect.poll(() => shelf.getByRole('listitem').count()).toBe(8);

    await page.getByRole('button', { name: 'Add an ink' }).click();
    const side = page.getByRole('complementary');
    await side.getByRole('button', { name: /^Measured/ }).click();

    // A file without one good reading says where it is wrong and changes nothing.
    await side.getByLabel('Choose a measurement file').setInputFiles(
      file(
        'torn.txt',
        measurements(() => 'NaN'),
      ),
    );
    await expect
      .poll(() => side.getByRole('alert').allTextContents())
      .toEqual([expect.stringMatching(/torn\.txt, line 9, column \d+: .*NaN.*Nothing was changed\.$/s)]);
    expect(await side.getByRole('button', { name: 'Add the ink' }).count()).toBe(0);
    expect(await shelf.getByRole('listitem').count()).toBe(8);

    await side.getByLabel('Choose a measurement file').setInputFiles(file('drawdowns.txt', measurements()));
    await expect.poll(() => side.getByLabel('Ink over white').locator('option:checked').textContent()).toBe('3 Heron over white');
    expect(await side.getByLabel('Bare black').locator('option:checked').textContent()).toBe('2 Card black');
    expect(await side.getByText('No band had to be moved.').count()).toBe(1);

    // Readings the wrong way round are no ink.
    await side.getByLabel('Ink over white').selectOption({ label: '4 Heron over black' });
    await side.getByLabel('Ink over black').selectOption({ label: '3 Heron over white' });
    await expect.poll(() => side.getByRole('alert').textContent()).toMatch(/brighter over black/);
    expect(await side.getByRole('button', { name: 'Add the ink' }).isDisabled()).toBe(true);
    await side.getByLabel('Ink over black').selectOption({ label: '4 Heron over black' });
    await side.getByLabel('Ink over white').selectOption({ label: '3 Heron over white' });
    await side.getByRole('button', { name: 'Add the ink' }).click();
    await expect.poll(() => shelf.getByRole('button', { name: 'Heron measured' }).count()).toBe(1);

    await page.getByRole('button', { name: 'Match a colour' }).click();
    await side.getByRole('button', { name: 'Bring in the demo stock inks' }).click();
    await expect.poll(() => page.getByRole('list', { name: 'Stock inks' }).getByRole('listitem').count()).toBe(12);
    // They are for mixing, so the shelf to print from stays as it was.
    expect(await shelf.getByRole('listitem').count()).toBe(9);
    await side.getByLabel('Colour wanted: hex').fill('#7a9450');
    await side.getByLabel('Colour wanted: hex').press('Tab');
    await side.getByRole('button', { name: 'Find mixes' }).click();
    const mixes = side.getByRole('region', { name: 'Mixes' });
    await expect.poll(() => mixes.getByRole('listitem').count(), { timeout: 30_000 }).toBeGreaterThan(2);
    const first = mixes.getByRole('listitem').first();
    const grams = (await first.getByRole('cell').allTextContents())
      .filter((text) => text.endsWith(' g'))
      .map((text) => Number.parseFloat(text));
    expect(grams.reduce((sum, each) => sum + each, 0)).toBeCloseTo(100, 0);
    expect(Number(/ΔE (\d+\.\d)/.exec((await first.getAttribute('aria-label'))!)![1])).toBeLessThan(3);
    await first.getByRole('button', { name: /^Keep the mix/ }).click();
    await expect.poll(() => shelf.getByRole('listitem').count()).toBe(10);
    const mix = await page.getByLabel('Name of the ink').inputValue();
    const parts = await side.getByRole('region', { name: 'Mix' }).getByRole('rowheader').allTextContents();
    expect(parts.length).toBe(grams.length);

    await page.reload();
    await expect.poll(() => shelf.getByRole('button', { name: `${mix} mix, invented` }).count()).toBe(1);
    expect(await shelf.getByRole('button', { name: 'Heron measured' }).count()).toBe(1);
    await shelf.getByRole('button', { name: `${mix} mix, invented` }).click();
    expect(await side.getByRole('region', { name: 'Mix' }).getByRole('rowheader').allTextContents()).toEqual(parts);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should offer the nearest ink in place of one that cannot be', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#inks`);
    const side = page.getByRole('complementary');
    await page.getByRole('button', { name: 'Add an ink' }).click();
    await side.getByRole('button', { name: /^Drawdown/ }).click();
    const hex = side.getByLabel('One stroke over white: hex');
    await hex.fill('#00ffff');
    await hex.press('Tab');
    await expect.poll(() => side.getByRole('alert').textContent()).toMatch(/cannot have both colours/);
    expect(await side.getByRole('button', { name: 'Add the ink' }).isDisabled()).toBe(true);
    await side.getByRole('button', { name: 'Take the nearest' }).click();
    await expect.poll(() => side.getByRole('button', { name: 'Add the ink' }).isEnabled()).toBe(true);
    expect(await side.getByRole('alert').count()).toBe(0);
    await side.getByRole('button', { name: 'Add the ink' }).click();
    await expect.poll(() => page.getByRole('button', { name: 'New ink from two colours' }).count()).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should pick the colours of a drawdown from a photo, by keyboard too', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#inks`);
    // A card in warm, dim light; drawn by the browser, as nothing else here writes PNG.
    const photo = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(400, 300);
      const context = canvas.getContext('2d')!;
      const fill = (colour: string, x: number, y: number, width: number, height: number): void => {
        context.fillStyle = colour;
        context.fillRect(x, y, width, height);
      };
      fill('#e6e0d2', 0, 0, 400, 150);
      fill('#26241f', 0, 150, 400, 150);
      fill('#b8604a', 200, 0, 200, 150);
      fill('#4a2f26', 200, 150, 200, 150);
      return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer())];
    });
    const side = page.getByRole('complementary');
    await page.getByRole('button', { name: 'Add an ink' }).click();
    await side.getByRole('button', { name: /^Drawdown/ }).click();
    const before = await side.getByLabel('One stroke over white: hex').inputValue();
    await side.getByRole('button', { name: 'Pick them from a photo' }).click();
    await side.getByLabel('Choose a photo').setInputFiles({ name: 'card.png', mimeType: 'image/png', buffer: Buffer.from(photo) });
    const canvas = side.getByRole('application', { name: /^Photo/ });
    await expect.poll(() => canvas.count()).toBe(1);
    const box = (await canvas.boundingBox())!;
    const click = (x: number, y: number) => canvas.click({ position: { x: (x / 400) * box.width, y: (y / 300) * box.height } });
    await click(100, 75);
    await click(100, 225);
    await click(300, 75);
    // The last one by keyboard: the loupe stands on the ink over white, 150 px above.
    await canvas.focus();
    for (let step = 0; step < 5; step++) await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => side.getByLabel('One stroke over white: hex').inputValue()).not.toBe(before);
    const lightness = async (which: string): Promise<number> =>
      Number(await side.getByRole('group', { name: which }).getByRole('spinbutton', { name: 'L', exact: true }).inputValue());
    // Flat patches are their own averages, so the room must show what the engine makes of the colours painted above.
    const { colours } = drawdownFromPhoto({
      white: [0xe6, 0xe0, 0xd2],
      black: [0x26, 0x24, 0x1f],
      overWhite: [0xb8, 0x60, 0x4a],
      overBlack: [0x4a, 0x2f, 0x26],
    });
    expect(await lightness('One stroke over white')).toBeCloseTo(colours!.overWhite[0], 0);
    expect(await lightness('One stroke over black')).toBeCloseTo(colours!.overBlack[0], 0);
    expect(await side.getByRole('button', { name: 'Add the ink' }).isEnabled()).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
