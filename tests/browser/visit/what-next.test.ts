import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { records } from '../databases.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';
import { planSmallVisit } from './small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('what to pull next', () => {
  it('should go on from a sheet as it stands into the log and the order, and be taken back by one undo', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planSmallVisit(page, studio, 3);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    await press.getByRole('button', { name: 'What next for sheet 1?' }).click();
    const next = page.getByRole('dialog', { name: 'What next?' });
    await next.getByRole('heading', { name: 'Sheet 1, 1 down' }).waitFor();
    // Three screens in four inks: each number of pulls has its prints, and the first is chosen.
    await expect.poll(() => next.getByRole('radiogroup', { name: 'Two more pulls' }).getByRole('radio').count()).toBeGreaterThan(3);
    await next.getByRole('button', { name: 'Let it go on so' }).click();
    const kinds = async (): Promise<string[]> =>
      Object.values(await records(page, 'pullstack-log', 'events')).map((event) => (event as { kind: string }).kind);
    await expect.poll(async () => (await kinds()).sort()).toEqual(['goes-on', 'pulled']);

    // The rest is planned anew while one stays at the press.
    await page.locator('press-room').getByText('Three rectangles and 1 more').first().waitFor({ state: 'attached', timeout: 30_000 });

    // The other way round: sheet 1 would take what is on the press for the others.
    await press.getByRole('button', { name: 'Which other sheets would take it?' }).click();
    const takers = page.getByRole('dialog', { name: /^Which sheets would take screen/u });
    await takers.getByRole('checkbox').first().check();
    await takers.getByRole('button', { name: 'What it does to the rest' }).click();
    await expect
      .poll(() => takers.getByRole('status').textContent(), { timeout: 30_000 })
      .toMatch(/^What is left then: \d+ set-ups?, .*at the press, done on day \d+ at \d+:\d\d; .* ink\.$/u);
    await page.keyboard.press('Escape');

    await press.getByRole('button', { name: 'Leave the press' }).click();
    await page.getByRole('button', { name: /^Undo: let sheet 1 go on in another way/u }).click();
    await expect.poll(async () => (await kinds()).sort()).toEqual(['goes-on', 'pulled', 'undone']);
    // What was pulled beyond the plan is logged where it was pulled, and taken back by one undo.
    await page.getByRole('button', { name: 'At the press' }).click();
    await press.getByRole('button', { name: 'Extra pull…' }).click();
    const extra = page.getByRole('dialog', { name: /^Extra pull: screen/u });
    await extra.getByRole('checkbox', { name: '1', exact: true }).check();
    await extra.getByLabel('Off to the right, mm').fill('3');
    await extra.getByRole('button', { name: 'Log it on sheet 1' }).click();
    await expect.poll(async () => (await kinds()).sort()).toEqual(['extra', 'goes-on', 'pulled', 'undone']);
    await press.getByRole('button', { name: 'Leave the press' }).click();
    await page
      .getByRole('listitem', { name: 'Sheet 1', exact: true })
      .getByText(/^2 of \d+ pulls/u)
      .waitFor({ timeout: 30_000 });
    await page.getByRole('button', { name: /^Undo: log an extra pull on sheet 1/u }).click();
    await expect.poll(async () => (await kinds()).sort()).toEqual(['extra', 'goes-on', 'pulled', 'undone', 'undone']);

    await page.reload();
    await enter(page, 'Press');
    await page.getByRole('button', { name: 'At the press' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    expect(await page.locator('press-set-up-grid').getByText('and 1 more').count()).toBe(0);
    // The list of sheets as pulled asks the same.
    await press.getByRole('button', { name: 'Leave the press' }).click();
    await page.getByRole('button', { name: 'What next? For sheet 1' }).click();
    await next.getByRole('heading', { name: 'Sheet 1, 1 down' }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
