import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import { records } from '../databases.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const PULLS = 80;

/** Puts 80 pulls of the demo's screens on the Bench. */
async function pileUp(page: Page): Promise<void> {
  await page.evaluate((most) => {
    const { store } = document.querySelector('app-root')! as unknown as { store: AppStore };
    const { screens, inks } = store.project.drawer;
    const pulls = Array.from({ length: most }, (_, i) => ({
      id: `pile-${i}`,
      screen: screens[i % screens.length]!.id,
      ink: inks[(i * 7) % inks.length]!.id,
      dxMm: ((i * 13) % 40) / 10,
      dyMm: ((i * 29) % 40) / 10,
      turnDeg: 0,
      strokes: 1,
    }));
    store.dispatch({ kind: 'open-stack', pulls });
    store.dispatch({ kind: 'set-explore', change: { count: 400, order: true, recolour: true } });
  }, PULLS);
}

/**
 * Asks for work and stops it as soon as there is something to stop it with, then waits until it can be asked for again.
 * @param within what shows the progress; where the button stands when left out
 */
async function askAndStop(ask: Locator, within?: Locator): Promise<void> {
  const host = (await within?.elementHandle()) ?? null;
  await ask.evaluate(async (button: HTMLButtonElement, host) => {
    const room = host?.shadowRoot ?? (button.getRootNode() as ShadowRoot);
    button.click();
    for (;;) {
      const stop = room.querySelector('ps-progress')?.shadowRoot?.querySelector('button');
      if (stop) return stop.click();
      await new Promise((next) => requestAnimationFrame(next));
    }
  }, host);
  await ask.waitFor();
}

/** Twelve squares that are told apart, as a measurement file. */
function squares(): string {
  const rows = Array.from({ length: 12 }, (_, i) => `${i + 1}\t${30 + 4 * i}\t${(i % 5) * 8 - 10}\t${(i % 3) * 9 - 5}`);
  const format = ['BEGIN_DATA_FORMAT', 'SAMPLE_ID\tLAB_L\tLAB_A\tLAB_B', 'END_DATA_FORMAT'];
  return ['CGATS.17', ...format, 'BEGIN_DATA', ...rows, 'END_DATA', ''].join('\n');
}

describe('Stop among the inks', () => {
  it('should stop matching and fitting, and leave each to be asked again', async () => {
    const { page, errors } = await openPage(studio, undefined, { helpers: true });
    await page.goto(`${studio.url}#inks`);
    await page.getByText('All 8 inks on the target').click();
    const inks = page.getByRole('group', { name: 'Inks on the target' });
    for (const name of ['Tar', 'Foam', 'Signal', 'Dusk', 'Clay']) await inks.getByRole('checkbox', { name, exact: true }).uncheck();
    await page.getByRole('button', { name: 'Pull these 12' }).click();
    const few = page.locator('target-few');
    await few
      .getByLabel('Choose a measurement file')
      .setInputFiles({ name: 'pulled.txt', mimeType: 'text/plain', buffer: Buffer.from(squares()) });
    await few.getByText('12 of 12 squares read').waitFor();
    const fit = page.getByRole('button', { name: 'Fit inks, trapping and surface' });
    await askAndStop(fit);
    expect(await page.getByRole('region', { name: 'What the squares tell' }).count()).toBe(0);
    await fit.click();
    const bar = page.getByRole('progressbar', { name: 'Fitting' });
    // Its worker works again.
    await expect.poll(() => bar.evaluate((each: HTMLProgressElement) => each.value).catch(() => 1), { timeout: 60_000 }).toBeGreaterThan(0);

    await page.getByRole('button', { name: 'Match a colour' }).click();
    await page.getByRole('button', { name: 'Bring in the demo stock inks' }).click();
    const match = page.getByRole('button', { name: 'Find mixes' });
    await askAndStop(match);
    const mixes = page.getByRole('region', { name: 'Mixes' });
    expect(await mixes.count()).toBe(0);
    await match.click();
    await expect.poll(() => mixes.getByRole('listitem').count(), { timeout: 60_000 }).toBeGreaterThan(0);
    expect(errors).toEqual([]);
    await page.context().close();
  }, 120_000);
});

describe('Stop, at 80 pulls', () => {
  it('should stop exploring, the search for a veil and for a pull order, and leave each to be asked again', async () => {
    const { page, errors } = await openPage(studio, undefined, { helpers: true });
    await page.goto(`${studio.url}#chest`);
    await page.locator('chest-room').waitFor();
    await pileUp(page);

    await enter(page, 'Bench');
    await askAndStop(page.getByRole('button', { name: 'Find a veil' }), page.locator('bench-veil-finder'));
    const dialog = page.getByRole('dialog').filter({ hasText: 'Veils may go' });
    await dialog.getByText('Stopped.').waitFor();
    await dialog.getByRole('button', { name: 'Look again' }).click();
    // Its worker works again.
    const bar = dialog.getByRole('progressbar', { name: 'Looking for veils' });
    await expect.poll(() => bar.evaluate((each: HTMLProgressElement) => each.value).catch(() => 1), { timeout: 60_000 }).toBeGreaterThan(0);
    await dialog.getByRole('button', { name: 'Cancel' }).click();

    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    const state = () => wall.getAttribute('data-state');
    for (let round = 0; round < 2; round++) {
      if ((await state()) !== 'running') await page.getByRole('button', { name: 'Another wall' }).click();
      await expect.poll(state).toBe('running');
      await expect.poll(async () => Number(await wall.locator('.count b').textContent()), { timeout: 90_000 }).toBeGreaterThan(0);
      await wall.getByRole('button', { name: 'Stop', exact: true }).click();
      await expect.poll(state).toBe('stopped');
    }

    await page.getByRole('application', { name: /wall/i }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
    await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['recipes']).toHaveLength(1);
    await enter(page, 'Press');
    const count = page.getByRole('spinbutton', { name: /^Sheets of/ }).first();
    await count.fill('2');
    await count.press('Tab');
    const press = page.locator('press-room');
    await page.getByRole('button', { name: 'Find the pull order' }).click();
    await press.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByRole('button', { name: 'Find the pull order' }).click();
    await expect
      .poll(() => page.getByRole('region', { name: 'Set-up grid' }).getByRole('rowheader').count(), { timeout: 240_000 })
      .toBeGreaterThan(20);
    expect(errors).toEqual([]);
    await page.context().close();
  }, 600_000);
});
