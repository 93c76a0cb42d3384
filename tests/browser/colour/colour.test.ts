import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../src/engine/ink/film/film.ts';
import { tellingSquares } from '../../../src/engine/ink/target/telling-squares.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const THREE = ['rust', 'weed', 'shoal'];

/** L, a and b of the few squares of three inks, of a press that lays films on films at 70 % and whose surface throws back 40 %. */
function pulled(): string {
  const inks = demoInks();
  const films = (ids: readonly string[]) => ids.flatMap((id) => inks.filter((ink) => ink.id === id));
  const rows = tellingSquares(films(THREE), DEMO_PAPER, 12).map((ids, i) => {
    const printing = { surface: { k1: 0, k2: 0.4 }, trapping: { factor: 0.7 } };
    return [i + 1, ...labD50(stackReflectance(films(ids), DEMO_PAPER.reflectance, printing)).map((value) => value.toFixed(2))].join('\t');
  });
  const format = ['BEGIN_DATA_FORMAT', 'SAMPLE_ID\tLAB_L\tLAB_A\tLAB_B', 'END_DATA_FORMAT'];
  return ['CGATS.17', ...format, 'BEGIN_DATA', ...rows, 'END_DATA', ''].join('\n');
}

async function openInks(): Promise<Awaited<ReturnType<typeof openPage>>> {
  const opened = await openPage(studio);
  await opened.page.goto(`${studio.url}#inks`);
  return opened;
}

async function onlyThreeInks(page: Page): Promise<void> {
  await page.getByText('All 8 inks on the target').click();
  const inks = page.getByRole('group', { name: 'Inks on the target' });
  for (const name of ['Tar', 'Foam', 'Signal', 'Dusk', 'Clay']) await inks.getByRole('checkbox', { name, exact: true }).uncheck();
}

describe('surface and trapping', () => {
  it('should be set, refused out of range, and undone', async () => {
    const { page, context, errors } = await openInks();
    const surface = page.getByLabel('Instrument, or eye');
    const trapping = page.getByRole('spinbutton', { name: /^Trapping/ });
    await expect.poll(() => surface.inputValue()).toBe('none');
    await expect.poll(() => trapping.inputValue()).toBe('100');
    await surface.selectOption('45-0');
    await page.getByRole('button', { name: 'Undo: change how inks were measured' }).waitFor();
    await trapping.fill('20');
    await trapping.press('Enter');
    await expect.poll(() => page.getByRole('alert').filter({ hasText: /30/ }).count()).toBe(1);
    await trapping.fill('85');
    await trapping.press('Enter');
    await page.getByRole('button', { name: 'Undo: change how thick a film is on a film' }).click();
    await expect.poll(() => trapping.inputValue()).toBe('100');
    await page.getByRole('button', { name: 'Undo: change how inks were measured' }).click();
    await expect.poll(() => surface.inputValue()).toBe('none');
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('a few squares that tell most', () => {
  it('should be chosen, saved as a PDF, read from a file, fitted and taken over as one step', async () => {
    const { page, context, errors } = await openInks();
    await onlyThreeInks(page);
    await page.getByRole('button', { name: 'Pull these 12' }).click();
    const few = page.locator('target-few');
    await few.getByText('0 of 12 squares read').waitFor();
    await few.getByRole('textbox', { name: 'Square 1 Rust alone' }).waitFor();

    const saving = page.waitForEvent('download');
    await few.getByRole('button', { name: 'Save as PDF' }).click();
    expect((await saving).suggestedFilename()).toMatch(/squares-to-pull\.pdf$/);

    // One square tells nothing of films: a sentence, and nothing changes.
    const first = few.getByRole('textbox', { name: 'Square 1 Rust alone' });
    await first.fill('51 33 36');
    await first.press('Enter');
    const fit = page.getByRole('button', { name: 'Fit inks, trapping and surface' });
    await fit.click();
    await page
      .getByRole('alert')
      .filter({ hasText: /One square .+ No ink was changed\./ })
      .waitFor();

    await few
      .getByLabel('Choose a measurement file')
      .setInputFiles({ name: 'pulled.txt', mimeType: 'text/plain', buffer: Buffer.from(pulled()) });
    await few.getByText('12 of 12 squares read').waitFor();
    await fit.click();
    const found = page.getByRole('region', { name: 'What the squares tell' });
    await found.waitFor({ timeout: 120_000 });
    const words = (await found.getByRole('status').textContent())!;
    const [fitted, left] = [/the fit by (\d+\.\d)/, /missed by ΔE ([\d.]+)/].map((form) => Number(form.exec(words)![1])) as [
      number,
      number,
    ];
    // The demo's inks scatter more evenly than the fit expects of pigments.
    expect(fitted).toBeLessThan(2);
    expect(left).toBeGreaterThanOrEqual(fitted);
    expect(left).toBeLessThan(3);
    const thick = Number(/(\d+) % as thick/.exec((await found.textContent())!)![1]);
    expect(Math.abs(thick - 70)).toBeLessThan(12);

    await page.getByRole('button', { name: 'Use inks, trapping and surface' }).click();
    const shelf = page.getByRole('list', { name: 'Inks', exact: true });
    await expect.poll(() => shelf.getByRole('button', { name: /\bmeasured\b/ }).count()).toBe(3);
    const trapping = page.getByRole('spinbutton', { name: /^Trapping/ });
    expect(Math.abs(Number(await trapping.inputValue()) - thick)).toBeLessThan(1);
    await page.getByRole('button', { name: 'Undo: take what the target told' }).click();
    await expect.poll(() => shelf.getByRole('button', { name: /\bmeasured\b/ }).count()).toBe(0);
    await expect.poll(() => trapping.inputValue()).toBe('100');
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('what a print may miss by, and what a screen cannot show', () => {
  it('should be told where a place is read, and hatched when asked for', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#bench`);
    const picture = page.locator('bench-picture canvas.sharp');
    await expect.poll(() => picture.evaluate((canvas: HTMLCanvasElement) => canvas.width)).toBeGreaterThan(300);
    await page.getByRole('application').first().press('Enter');
    const card = page.locator('bench-place-card');
    await card.waitFor();
    await expect.poll(() => card.getByRole('status').textContent()).toMatch(/L [\d.]+, a [\d.−]+, b [\d.−]+/);
    // The middle of the demo is bare; a print lies to the left of it.
    const box = (await page.locator('bench-picture').first().boundingBox())!;
    await page.mouse.click(box.x + box.width / 2 - 120, box.y + box.height * 0.6);
    await expect.poll(() => card.getByRole('status').textContent()).toMatch(/\(pulls? \d.*within about [\d.]+ ΔE/s);

    const bytes = (): Promise<string> => picture.evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
    // The card takes its room from the picture, which is drawn anew at its new size.
    let plain = '';
    const still = async (): Promise<boolean> => {
      const before = plain;
      plain = await bytes();
      return plain === before;
    };
    await expect.poll(still, { interval: 700 }).toBe(true);
    const hatch = page.getByRole('switch', { name: 'Hatch what this screen cannot show' }).first();
    await hatch.check();
    await expect.poll(bytes).not.toBe(plain);
    await hatch.uncheck();
    await expect.poll(bytes).toBe(plain);
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('an ink measured on another day', () => {
  it('should tell its drift, and what becomes of the recipes that pull it', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#bench`);
    await page.getByRole('button', { name: 'Keep as recipe' }).click();
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await enter(page, 'Inks');
    await page.getByRole('list', { name: 'Inks', exact: true }).getByRole('button', { name: /^Rust/ }).click();
    await page.getByText('Measured on other days').click();
    const drift = page.locator('ink-drift');
    await drift.getByRole('button', { name: 'Measured again' }).click();
    const keep = drift.getByRole('button', { name: 'Keep this measurement' });
    expect(await keep.isDisabled()).toBe(true);
    await drift.getByLabel('Date').fill('2026-03-14');
    const light = drift.getByRole('group', { name: 'One stroke over white' }).getByRole('spinbutton', { name: 'L', exact: true });
    await light.fill('56');
    await light.press('Enter');
    await expect.poll(() => keep.isEnabled()).toBe(true);
    await keep.click();
    const told = (await drift.getByRole('status').textContent())!;
    expect(told).toContain('The pot of 2026-03-14 differs from what it was before by ΔE');
    expect(Number(/by ΔE ([\d.]+)/.exec(told)![1])).toBeGreaterThan(2);
    const recipes = drift.getByRole('list', { name: 'Recipes that pull it' });
    await recipes.waitFor({ timeout: 60_000 });
    expect(Number(/ΔE ([\d.]+) where it lies/.exec((await recipes.textContent())!)![1])).toBeGreaterThan(1);
    expect(await recipes.getByRole('img').count()).toBe(2);
    await page.getByRole('button', { name: 'Undo: measure an ink again' }).click();
    await expect.poll(() => drift.getByRole('status').count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('measurement files', () => {
  it('should be read with XYZ alone, and the light of a lamp be refused in words', async () => {
    const { page, context, errors } = await openInks();
    await page.getByRole('button', { name: 'Add an ink' }).click();
    await page.getByRole('button', { name: /^Measured/ }).click();
    const file = page.getByLabel('Choose a measurement file').last();
    const lamp =
      'CGATS.17\nDESCRIPTOR "Spectral Power"\nBEGIN_DATA_FORMAT\nSPEC_400 SPEC_500 SPEC_600 SPEC_700\nEND_DATA_FORMAT\nBEGIN_DATA\n14 59 129 198\nEND_DATA\n';
    await file.setInputFiles({ name: 'lamp.txt', mimeType: 'text/plain', buffer: Buffer.from(lamp) });
    await page
      .getByRole('alert')
      .filter({ hasText: /light of a lamp or a screen.+Nothing was changed/ })
      .waitFor();
    const rows = ['Card_white 80.1 83.2 67.9', 'Card_black 3.1 3.2 2.6', 'Fern_over_white 16.2 24.1 9.9', 'Fern_over_black 3.6 4.7 2.9'];
    const xyz = `CGATS.17\nBEGIN_DATA_FORMAT\nSAMPLE_ID XYZ_X XYZ_Y XYZ_Z\nEND_DATA_FORMAT\nBEGIN_DATA\n${rows.join('\n')}\nEND_DATA\n`;
    await file.setInputFiles({ name: 'fern.txt', mimeType: 'text/plain', buffer: Buffer.from(xyz) });
    await page.getByText('4 samples', { exact: true }).waitFor();
    await expect
      .poll(() => page.getByRole('combobox', { name: 'Ink over black' }).locator('option:checked').textContent())
      .toBe('Fern_over_black');
    await page.getByRole('button', { name: 'Add the ink' }).click();
    await page.getByRole('list', { name: 'Inks', exact: true }).getByRole('button', { name: /^Fern/ }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
