import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pullOf, smallProject } from '../../helpers/small-project.ts';
import { openPage, openStudio, type Studio } from '../harness.ts';
import { openProject } from '../visit/small-visit.ts';

const PULLS = 80;

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('a strip of eighty pulls', () => {
  it('should scroll to its end while a state is held still at its edge, and take it there', async () => {
    const { page, context, errors } = await openPage(studio);
    const bench = Array.from({ length: PULLS }, (_, i) => pullOf(`p${i + 1}`, `s${1 + (i % 3)}`, i === 0 ? 'rust' : 'weed'));
    await openProject(page, studio, { ...smallProject(), bench }, 'bench');
    const strip = page.getByRole('listbox', { name: 'State strip, first down to last down' });
    const states = strip.getByRole('option');
    await expect.poll(() => states.count(), { timeout: 30_000 }).toBe(PULLS);
    await expect.poll(() => states.first().getAttribute('aria-label')).toMatch(/^Pull 1: .*Rust/u);
    const scroller = page.locator('ps-state-strip .scroller');
    const frame = (await scroller.boundingBox())!;
    const ticket = (await states.first().boundingBox())!;
    const y = ticket.y + ticket.height / 2;
    await page.mouse.move(ticket.x + ticket.width / 2, y);
    await page.mouse.down();
    // To the edge in two moves, and then still: what scrolls is the strip alone.
    await page.mouse.move(ticket.x + ticket.width, y);
    await page.mouse.move(frame.x + frame.width - 4, y);
    const left = (): Promise<number> =>
      scroller.evaluate((element) => Math.round(element.scrollWidth - element.clientWidth - element.scrollLeft));
    expect(await left()).toBeGreaterThan(frame.width);
    await expect.poll(left, { timeout: 90_000 }).toBeLessThanOrEqual(1);
    await page.mouse.up();
    await expect.poll(() => states.last().getAttribute('aria-label'), { timeout: 30_000 }).toMatch(/^Pull 80: .*Rust/u);
    expect(errors).toEqual([]);
    await context.close();
  }, 180_000);
});
